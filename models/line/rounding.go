package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planRounding lays out a number between its two round neighbors, with the
// halfway number marked and a hop to each: the nearer one is the answer.
//
//	     /------- 7 away ----\ 3 away
//	---+----+----+----+----+---+---->
//	  340            345  347 350
//	               halfway
func planRounding(p arithmetic.Problem) (*plan, error) {
	w, t, err := arithmetic.RoundOnLine(p)
	if err != nil {
		if errors.Is(err, arithmetic.ErrOverflow) {
			return nil, errors.New(words.LineLarge)
		}
		return nil, errors.New(words.LineRoundingKinds)
	}
	n := p.Left.(arithmetic.Number)
	if len(w.Moves) == 1 {
		return planRound(p, w, t, n)
	}
	around, half, nearer := w.Moves[0].(arithmetic.Neighbors), w.Moves[1].(arithmetic.FindHalfway), w.Moves[2].(arithmetic.GoNearer)
	pl := &plan{problem: p, working: w, title: scene.Telling{Shown: p.String() + ": " + words.LineAnswer(w.Answer), Hidden: p.String()}}
	k := pl.layPoints(t, n, half.At)
	sign := notation.S("≈")
	pl.asked = telling.Join(telling.Numeral(n, scene.First), sign, telling.Unknown())
	pl.answered = telling.Join(telling.Numeral(n, scene.First), sign, telling.Numeral(w.Answer.Number, scene.Result))

	at, goal := t.Scale.Count(n), t.Scale.Count(nearer.To)
	for _, end := range []arithmetic.Number{around.Low, around.High} {
		// With the answer hidden both neighbors are for the child to name.
		name := stop{at: t.Scale.Count(end), label: runsOf("", end), asked: true, size: scene.Middle}
		if name.at == goal {
			name.turn, name.turned = 2, scene.Result
			k.stops = append(k.stops, stop{at: goal, role: scene.Result, of: scene.OfAnswer, worth: nearer.To.Value, dot: true,
				when: scene.ShownOnly, step: 2})
		}
		k.stops = append(k.stops, name)
	}
	point := stop{at: at, label: runsOf("", n), role: scene.First, of: scene.OfFirst, worth: n.Value, dot: true}
	halfway := []name{{[]scene.Run{{Text: words.LineHalfway}}, scene.Note, scene.Always, 1}}
	if middle := t.Scale.Count(half.At); middle != at {
		k.stops = append(k.stops, stop{at: middle, label: runsOf("", half.At), also: halfway, step: 1})
	} else {
		point.also = halfway
	}
	k.stops = append(k.stops, point)
	k.distances(at, goal, t.Lo+t.Hi-goal, nearer)
	pl.sketches = []*sketch{k}
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	pl.step(words.LineNeighbors(p, n, around), betweenLine(n, around))
	pl.step(words.LineFindHalfway(n, half), halfwayLine(n, half))
	pl.step(words.LineGoNearer(p, nearer), pl.answered)
	pl.desc = words.LineRoundingDesc(p, n, around, half, nearer)
	return pl, nil
}

// distances draws how far it is to both neighbors. The nearer one stands out; when
// both are as near, both do.
func (k *sketch) distances(at, goal, other int64, m arithmetic.GoNearer) {
	near := hop{from: at, to: goal, label: []scene.Run{{Text: words.LineAway(m.Gap)}}, role: scene.Result, when: scene.ShownOnly, step: 2}
	far := hop{from: at, to: other, label: []scene.Run{{Text: words.LineAway(m.OtherGap)}}, role: scene.Note, when: scene.ShownOnly, step: 2}
	if m.Halfway {
		far.role = scene.Result
	}
	k.hops = append(k.hops, far, near)
}

// planRound lays out a number that is round already, among the round numbers
// around it.
func planRound(p arithmetic.Problem, w arithmetic.Working, t arithmetic.Stretch, n arithmetic.Number) (*plan, error) {
	pl := &plan{problem: p, working: w, title: scene.Telling{Shown: p.String() + ": " + words.LineAnswer(w.Answer), Hidden: p.String()}}
	k := pl.layPoints(t, n)
	k.stops = append(k.stops, stop{at: t.Scale.Count(n), label: runsOf("", n), role: scene.First, of: scene.OfFirst, worth: n.Value, dot: true})
	pl.sketches = []*sketch{k}
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	pl.asked = telling.Join(telling.Numeral(n, scene.First), "≈", telling.Unknown())
	pl.answered = telling.Join(telling.Numeral(n, scene.First), "=", telling.Numeral(w.Answer.Number, scene.Result))
	if n.String() == w.Answer.Number.String() {
		pl.answered = telling.Join(telling.Numeral(n, scene.First), notation.W(words.LineAlready(p)))
	}
	told := words.LineRound(p, n, w.Answer.Number)
	pl.step(told, pl.answered)
	pl.desc = told.Desc
	return pl, nil
}

func betweenLine(n arithmetic.Number, m arithmetic.Neighbors) notation.Line {
	return telling.Join(telling.Numeral(m.Low, scene.Ink), "<", telling.Numeral(n, scene.First), notation.S("<"), telling.Numeral(m.High, scene.Ink))
}

func halfwayLine(n arithmetic.Number, m arithmetic.FindHalfway) notation.Line {
	if m.Side == 0 {
		return telling.Join(telling.Numeral(n, scene.First), notation.W(words.LineIsHalfway))
	}
	sign := [...]string{"<", "", ">"}[m.Side+1]
	return telling.Join(telling.Numeral(n, scene.First), notation.S(sign), telling.Numeral(m.At, scene.Ink))
}
