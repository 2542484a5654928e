package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planTrains lays out a statement about two sums or differences as two lines with
// the same 0 and the same unit: the first number of each is a length from 0, the
// others are hops, and the ends are compared.
func planTrains(p arithmetic.Problem) (*plan, error) {
	w, s, err := arithmetic.CompareTrains(p)
	if err != nil {
		return nil, reason(err)
	}
	t, numbers, err := trainStretch(w, s)
	if err != nil {
		return nil, err
	}
	if mixesForms(numbers...) {
		return nil, errors.New(words.LineMixes)
	}
	pl := &plan{problem: p, working: w}
	look := w.Moves[2].(arithmetic.LookAtPoints)
	sides := [2]trainSide{{0, scene.First, p.Left}, {1, scene.Second, p.Right}}
	nth := 0
	pl.step(words.LineTwoLines(p, fractional(s)), telling.Join(exprLine(p.Left, scene.First), notation.N("?", scene.Hidden), exprLine(p.Right, scene.Second)))
	for i, side := range sides {
		k := &sketch{ruler: rulerFor(t, endSides(t)), mark: t.Mark, long: t.Long, numbered: t.Long, scale: s, hush: -1}
		m := w.Moves[i].(arithmetic.HopTrain)
		if fractional(s) {
			k.mark = 0
		}
		marked := m.Parts.Parts > 0 && (k.hi-k.lo)/s.Parts*m.Parts.Parts <= mostCommon
		if marked {
			k.cut(t, cut{every: s.Count(m.Parts.Each), move: m.Parts, step: i + 1, named: true})
		}
		nth = pl.trainOn(k, m, side, nth, i+1)
		k.nameWholes()
		if k.numbered == 0 {
			k.addStop(stop{label: runsOf("", s.WriteShort(0)), role: scene.Note})
		}
		pl.step(words.LineTrain(m, marked), trainLine(m, side))
		pl.sketches = append(pl.sketches, k)
	}
	short, from, to := pl.sketches[0], s.Count(look.First), s.Count(look.Second)
	if from > to {
		short, from, to = pl.sketches[1], to, from
	}
	if from < to {
		short.gaps = append(short.gaps, gap{from: from, to: to, size: look.Gap, step: 3, covered: short.covers(from)})
	}
	for _, k := range pl.sketches {
		if !k.arrange() {
			return nil, errors.New(words.LineCrowded)
		}
	}
	pl.step(words.LineLook(p, look), telling.Join(exprLine(p.Left, scene.First), notation.S(look.Relation.String()), exprLine(p.Right, scene.Second)))
	pl.claims(look, exprLine(p.Left, scene.First), exprLine(p.Right, scene.Second))
	pl.desc = words.LineTrainsDesc(p, w)
	return pl, nil
}

// covers reports whether a length on the line goes on beyond a place.
func (k *sketch) covers(at int64) bool {
	for _, l := range k.lengths {
		if l.to > at {
			return true
		}
	}
	return false
}

type trainSide struct {
	n    int
	role scene.Role
	expr arithmetic.Expr
}

// trainStretch is the stretch of line for both trains, from 0.
func trainStretch(w arithmetic.Working, s arithmetic.Scale) (t arithmetic.Stretch, numbers []arithmetic.Number, err error) {
	stops := []int64{0}
	for _, m := range w.Moves[:2] {
		train := m.(arithmetic.HopTrain)
		numbers = append(numbers, train.First)
		stops = append(stops, s.Count(train.First))
		backs := 0
		for _, j := range train.Hops {
			numbers = append(numbers, j.By)
			stops = append(stops, s.Count(j.To))
			if j.Back {
				backs++
			}
		}
		if len(train.Hops) > 2 || backs > 0 && len(train.Hops) > 1 {
			return t, nil, errors.New(words.LineLongTrain)
		}
	}
	t, ok := arithmetic.JumpStretch(s, stops, lineRoom, brokenRoom, 1)
	if !ok || t.Lo != 0 {
		return t, nil, errors.New(words.LineTrainTooFine)
	}
	r := rulerFor(t, endSides(t))
	for _, m := range w.Moves[:2] {
		for _, j := range m.(arithmetic.HopTrain).Hops {
			if gap := abs(r.x(s.Count(j.To)) - r.x(s.Count(j.From))); gap > 0 && gap < leastHop {
				return t, nil, errors.New(words.LineTrainTooFine)
			}
		}
	}
	return t, numbers, nil
}

// trainOn draws one side on its line. nth is the place of its first number in the
// problem; it returns that of the next side's.
func (pl *plan) trainOn(k *sketch, m arithmetic.HopTrain, side trainSide, nth, step int) int {
	first := k.scale.Count(m.First)
	if first > 0 {
		k.lengths = append(k.lengths, length{to: first, role: side.role, of: scene.OfNth(nth), worth: m.First.Value, step: step})
	}
	if len(m.Hops) > 0 {
		k.addStop(stop{at: first, label: runsOf("", m.First), role: side.role, dot: true, step: step})
	}
	nth++
	for i, j := range m.Hops {
		sign := "+"
		if j.Back {
			sign = "−"
		}
		if j.By.Value.Sign() > 0 {
			k.hops = append(k.hops, hop{from: k.scale.Count(j.From), to: k.scale.Count(j.To), label: runsOf(sign, j.By), role: side.role,
				of: scene.OfNth(nth), worth: j.By.Value, step: step})
		}
		nth++
		if i < len(m.Hops)-1 {
			k.addStop(stop{at: k.scale.Count(j.To), label: runsOf("", j.To), step: step})
		}
	}
	end := stop{at: k.scale.Count(m.End), label: runsOf("", m.End), role: scene.Result, dot: true, asked: true, when: scene.ShownOnly, step: step}
	if len(m.Hops) == 0 {
		end.role, end.asked, end.when = side.role, false, scene.Always // it is given
	}
	k.addStop(end)
	return nth
}

// trainLine is a side worked out: 8 + 4 = 12.
func trainLine(m arithmetic.HopTrain, side trainSide) notation.Line {
	if len(m.Hops) == 0 {
		return exprLine(side.expr, side.role)
	}
	return telling.Join(exprLine(side.expr, side.role), notation.S("="), telling.Numeral(m.End, scene.Result))
}

// exprLine is a chain of sums and differences in one role.
func exprLine(e arithmetic.Expr, role scene.Role) notation.Line {
	switch e := e.(type) {
	case arithmetic.Number:
		return telling.Numeral(e, role)
	case arithmetic.Operation:
		return telling.Join(exprLine(e.Left, role), notation.S(e.Op.String()), exprLine(e.Right, role))
	}
	return notation.Line{telling.Unknown()}
}
