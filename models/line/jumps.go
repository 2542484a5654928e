package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planJumps lays out a sum or a difference as hops.
func planJumps(p arithmetic.Problem, open bool) (*plan, error) {
	a, b, ok := p.Operands()
	if !ok {
		return nil, notMine
	}
	if mixesForms(a, b) {
		return nil, errors.New(words.LineMixes)
	}
	work, op := arithmetic.AddByJumps, arithmetic.Add
	if p.Kind == arithmetic.Subtraction {
		work, op = arithmetic.SubtractByJumps, arithmetic.Subtract
	}
	w, err := work(p)
	if err != nil {
		return nil, reason(err)
	}
	s, err := arithmetic.CommonScale(a, b)
	if err != nil {
		return nil, reason(err)
	}
	for _, m := range w.Moves {
		if m, ok := m.(arithmetic.Recut); ok && m.Parts > mostCommon {
			return nil, errors.New(words.LineFineCommon)
		}
	}
	pl := &plan{problem: p, working: w, open: open, title: told(p, w.Answer)}
	pl.asked = telling.Join(telling.Numeral(a, scene.First), notation.S(op.String()), telling.Numeral(b, scene.Second), notation.S("="), telling.Unknown())
	pl.answered = telling.Join(pl.asked[:len(pl.asked)-1], resultLine(w.Answer))
	k, err := pl.lay(s, a, b)
	if err != nil {
		return nil, err
	}
	if jumps := jumpsOf(w); p.Kind == arithmetic.Subtraction && len(jumps) > 0 && !jumps[0].Back {
		pl.countUp(k, p, a, b)
	} else {
		pl.jumpAlong(k, p, a, b)
	}
	pl.sketches = []*sketch{k}
	k.nameWholes()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// mixesForms reports whether a decimal and a fraction stand together.
func mixesForms(numbers ...arithmetic.Number) bool {
	var fractions, decimals bool
	for _, n := range numbers {
		fractions = fractions || n.Form == arithmetic.Common || n.Form == arithmetic.Mixed
		decimals = decimals || n.Form == arithmetic.Decimal || n.Form == arithmetic.Money
	}
	return fractions && decimals
}

// reason says in words why a problem cannot be worked on a line.
func reason(err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNegative):
		return errors.New(words.LineNegative)
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New(words.LineLarge)
	}
	return notMine
}

// told is the title of every picture of a problem: the problem and its answer.
func told(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + " = " + words.LineAnswer(a), Hidden: p.String() + " = ?"}
}

// jumpAlong tells hops from the first number: every landing is named, the last
// one is the answer.
func (pl *plan) jumpAlong(k *sketch, p arithmetic.Problem, a, b arithmetic.Number) {
	jumps := jumpsOf(pl.working)
	k.turns(jumps)
	k.addStop(k.fromZero(a, scene.First, scene.OfFirst))
	done, cut := 0, scene.Telling{}
	for i, m := range pl.working.Moves {
		switch m := m.(type) {
		case arithmetic.StartAt:
			pl.step(words.LineStart(m, p, b, jumps), pl.asked, inPlacesLine(m, a), splitLine(b, m))
		case arithmetic.Recut:
			told := words.LineRecut(m, pl.recut(k, m, i))
			cut = told.Desc
			pl.step(told, renamedLine(m.First, m.FirstAs, scene.First), renamedLine(m.Second, m.SecAs, scene.Second))
		case arithmetic.Jump:
			done++
			last, sign := done == len(jumps), sign(m)
			worth := m.By.Value
			if m.Back != jumps[0].Back {
				worth = fraction.Must(-worth.Num(), worth.Den()) // it takes back what was too much
			}
			k.hops = append(k.hops, hop{from: k.scale.Count(m.From), to: k.scale.Count(m.To), label: runsOf(sign, m.By),
				role: scene.Second, of: scene.OfSecond, worth: worth, step: i, tells: words.LineTells(m, pl.working.Answer)})
			k.addStop(k.landing(m, i, last, pl.working.Answer))
			pl.step(words.LineJump(m, last, pl.working.Answer), jumpLine(m, sign, last))
		}
	}
	if len(jumps) == 0 {
		pl.step(words.LineStay(p, a), telling.Join(pl.answered))
	}
	pl.desc = words.LineJumpsDesc(p, cut, jumps, pl.working.Answer, k.broken)
}

// recut begins with the parts of the first fraction and marks the common parts in
// the step for it; then the first fraction has two names. It reports whether the
// common parts are marked: there may be too many.
func (pl *plan) recut(k *sketch, m arithmetic.Recut, step int) (marked bool) {
	k.mark = 0
	if own := m.First.Value.Den(); own > 1 && own < m.Parts && (k.hi-k.lo)/m.Parts*own <= mostCommon {
		k.cuts = append(k.cuts, cut{every: m.Parts / own})
	}
	if marked = k.hi-k.lo <= mostCommon; marked {
		common := arithmetic.CutStretch{Parts: m.Parts, Each: m.Each, Of: m.First}
		k.cuts = append(k.cuts, cut{every: 1, move: common, step: step, named: true})
	}
	for i := range k.stops {
		if s := &k.stops[i]; s.role == scene.First && m.FirstAs != m.First {
			s.also = []name{{runs: runsOf("", m.FirstAs), role: scene.First, from: step}}
		}
	}
	a, b, sign := telling.Numeral(m.FirstAs, scene.First), telling.Numeral(m.SecAs, scene.Second), pl.asked[len(pl.asked)-2]
	op := arithmetic.Add
	if pl.problem.Kind == arithmetic.Subtraction {
		op = arithmetic.Subtract
	}
	pl.answered = telling.Join(pl.asked[:len(pl.asked)-1], a, notation.S(op.String()), b, sign, resultLine(pl.working.Answer))
	return marked
}

// mostCommon is how many common parts are still marked one by one, on a line and
// in one whole: with more, no one could see how many there are.
const mostCommon = 100

// landing is where a hop lands; the last one is the answer.
func (k *sketch) landing(m arithmetic.Jump, step int, last bool, a arithmetic.Answer) stop {
	point := stop{at: k.scale.Count(m.To), label: runsOf("", m.To), role: scene.Ink, step: step}
	if last {
		point.role, point.of, point.dot, point.asked, point.worth = scene.Result, scene.OfAnswer, true, true, a.Number.Value
		// A landing on a whole number has the name of the whole number.
		if point.label = runsOf("", a.Number); a.Number.Form == arithmetic.Common && a.Number.Value.IsWhole() {
			point.label = runsOf("", a.Simplest)
		}
	}
	return point
}

func jumpsOf(w arithmetic.Working) []arithmetic.Jump {
	var jumps []arithmetic.Jump
	for _, m := range w.Moves {
		if j, ok := m.(arithmetic.Jump); ok {
			jumps = append(jumps, j)
		}
	}
	return jumps
}
