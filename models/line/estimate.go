package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planEstimate lays out an estimate on three lines: each number goes to the nearer
// of its neighbors on a line of its own, and the round numbers are put together on
// the third.
//
//	340 ------- 350 ·348        the first, to scale
//	230 · 231 - 240             the second, to scale
//	350 ---- +230 ---- 580      both round numbers
func planEstimate(p arithmetic.Problem) (*plan, error) {
	w, err := arithmetic.EstimateOnLine(p)
	switch {
	case errors.Is(err, arithmetic.ErrOverflow), errors.Is(err, arithmetic.ErrNegative):
		return nil, reason(err)
	case err != nil:
		return nil, telling.NotMine(errors.New(words.LineEstimateKinds))
	}
	pl := &plan{problem: p, working: w, title: words.LineEstimateTitle(p, w.Answer)}
	ones := [2]arithmetic.RoundOne{w.Moves[0].(arithmetic.RoundOne), w.Moves[1].(arithmetic.RoundOne)}
	both := w.Moves[2].(arithmetic.CombineRounded)
	for i, m := range ones {
		pl.sketches = append(pl.sketches, pl.roundOn(m, i))
		pl.step(words.LineRoundOne(p, m), roundLine(m))
	}
	k, err := pl.combineOn(both)
	if err != nil {
		return nil, err
	}
	pl.sketches = append(pl.sketches, k)
	o := p.Left.(arithmetic.Operation)
	exact := telling.Join(telling.Numeral(ones[0].From, scene.First), o.Op.String(), telling.Numeral(ones[1].From, scene.Second))
	round := telling.Join(telling.Numeral(both.From, scene.First), o.Op.String(), telling.Numeral(both.By, scene.Second), "=", telling.Numeral(both.To, scene.Result))
	pl.step(words.LineCombineRounded(p, both), round)
	pl.asked = telling.Join(exact, "≈", telling.Unknown())
	pl.answered = telling.Join(exact, "≈", telling.Numeral(both.To, scene.Result))
	pl.desc = words.LineEstimateDesc(p, ones, both)
	for _, k := range pl.sketches {
		if !k.arrange() {
			return nil, errors.New(words.LineCrowded)
		}
	}
	return pl, nil
}

// roundOn draws a number between its neighbors and the hop to the nearer one. The
// number belongs to no sum: the round numbers on the last line do.
func (pl *plan) roundOn(m arithmetic.RoundOne, step int) *sketch {
	role := roleOf(m.Nth)
	k := pl.layPoints(m.Stretch, m.From, m.Half)
	k.numbered = 0
	at, goal := k.scale.Count(m.From), k.scale.Count(m.To)
	if m.Low == m.High {
		k.mark, k.numbered = 0, k.long // it stands among the round numbers
		k.stops = append(k.stops, stop{at: at, label: runsOf("", m.From), role: role, dot: true})
		return k
	}
	for _, end := range []arithmetic.Number{m.Low, m.High} {
		name := stop{at: k.scale.Count(end), label: runsOf("", end), size: scene.Middle, asked: true}
		if name.at == goal && step > 0 {
			name.turn, name.turned = step, role
		}
		if name.at == goal && step == 0 {
			name.role, name.bold = role, true
		}
		k.stops = append(k.stops, name)
	}
	k.stops = append(k.stops, stop{at: at, label: runsOf("", m.From), role: role, dot: true})
	k.hops = append(k.hops, hop{from: at, to: goal, label: []scene.Run{{Text: words.LineAway(m.Away)}}, role: role, when: scene.ShownOnly, step: step})
	return k
}

// combineOn puts the round numbers together.
func (pl *plan) combineOn(m arithmetic.CombineRounded) (*sketch, error) {
	s := arithmetic.Scale{Parts: 1}
	from, to := s.Count(m.From), s.Count(m.To)
	t, ok := arithmetic.JumpStretch(s, []int64{from, to}, lineRoom, brokenRoom, leastHop)
	if !ok {
		return nil, errors.New(words.LineCrowded)
	}
	const last = 2
	k := &sketch{ruler: rulerFor(t, endSides(t)), mark: t.Mark, long: t.Long, scale: s, hush: -1}
	if k.lo == 0 && from > 0 && to > 0 {
		k.stops = append(k.stops, stop{label: runsOf("", arithmetic.Int(0)), role: scene.Note})
	}
	k.stops = append(k.stops, stop{at: from, label: runsOf("", m.From), role: scene.First, of: scene.OfFirst, worth: m.From.Value, dot: true, when: scene.ShownOnly, step: last})
	if from == to {
		k.stops = append(k.stops, stop{at: to, role: scene.Result, of: scene.OfAnswer, worth: m.To.Value, dot: true, when: scene.ShownOnly, step: last})
		return k, nil
	}
	k.hops = append(k.hops, hop{from: from, to: to, label: runsOf(sign(m.Jump), m.By), role: scene.Second, of: scene.OfSecond, worth: m.By.Value, when: scene.ShownOnly, step: last})
	k.stops = append(k.stops, stop{at: to, label: runsOf("", m.To), role: scene.Result, of: scene.OfAnswer, worth: m.To.Value, dot: true, when: scene.ShownOnly, step: last})
	return k, nil
}

func roleOf(nth int) scene.Role { return [...]scene.Role{scene.First, scene.Second}[nth] }

// roundLine is a number and what it is rounded to: 348 ≈ 350.
func roundLine(m arithmetic.RoundOne) notation.Line {
	if m.Low == m.High {
		return telling.Numeral(m.From, roleOf(m.Nth))
	}
	return telling.Join(telling.Numeral(m.From, roleOf(m.Nth)), "≈", telling.Numeral(m.To, roleOf(m.Nth)))
}
