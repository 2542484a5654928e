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
// halfway number marked and a hop to the nearer one.
//
//	             halfway   /--\
//	---+----+----+----+----+--v-->
//	  340            345  347 350
func planRounding(p arithmetic.Problem) (*plan, error) {
	w, t, err := arithmetic.RoundOnLine(p)
	if err != nil {
		if errors.Is(err, arithmetic.ErrOverflow) {
			return nil, errors.New(words.LineLarge)
		}
		return nil, errors.New(words.LineRoundingKinds)
	}
	n := p.Left.(arithmetic.Number)
	around, half, nearer := w.Moves[0].(arithmetic.Neighbors), w.Moves[1].(arithmetic.FindHalfway), w.Moves[2].(arithmetic.GoNearer)
	pl := &plan{problem: p, working: w, title: scene.Telling{Shown: p.String() + ": " + words.LineAnswer(w.Answer), Hidden: p.String()}}
	k := pl.layPoints(t, n, half.At)
	sign := notation.S("≈")
	if nearer.Already {
		sign = notation.S("=")
	}
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
	if at == t.Lo {
		point.label = nil
	}
	if half := t.Scale.Count(half.At); half != at {
		k.stops = append(k.stops, stop{at: half, label: runsOf("", w.Moves[1].(arithmetic.FindHalfway).At), step: 1})
	}
	k.stops = append(k.stops, point)
	k.flags = append(k.flags, flag{t.Scale.Count(half.At), words.LineHalfway, 1})
	if !nearer.Already {
		k.hops = append(k.hops, hop{from: at, to: goal, label: []scene.Run{{Text: words.LineAway(nearer.Gap)}}, role: scene.Result,
			when: scene.ShownOnly, step: 2})
	}
	pl.sketches = []*sketch{k}
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	pl.step(words.LineNeighbors(p, n, around), betweenLine(n, around, nearer.Already))
	pl.step(words.LineFindHalfway(n, half), halfwayLine(n, half))
	pl.step(words.LineGoNearer(p, nearer), pl.answered)
	pl.desc = words.LineRoundingDesc(p, n, around, half, nearer)
	return pl, nil
}

func betweenLine(n arithmetic.Number, m arithmetic.Neighbors, already bool) notation.Line {
	sign := "<"
	if already {
		sign = "="
	}
	return telling.Join(telling.Numeral(m.Low, scene.Ink), notation.S(sign), telling.Numeral(n, scene.First), notation.S("<"), telling.Numeral(m.High, scene.Ink))
}

func halfwayLine(n arithmetic.Number, m arithmetic.FindHalfway) notation.Line {
	if m.Side == 0 {
		return telling.Join(telling.Numeral(n, scene.First), notation.W(words.LineIsHalfway))
	}
	sign := [...]string{"<", "", ">"}[m.Side+1]
	return telling.Join(telling.Numeral(n, scene.First), notation.S(sign), telling.Numeral(m.At, scene.Ink))
}
