package line

import (
	"errors"
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planPoints lays out one number as a point, or a list of numbers on one line.
func planPoints(p arithmetic.Problem) (*plan, error) {
	numbers := p.List
	if p.Kind == arithmetic.Show {
		n, ok := p.Left.(arithmetic.Number)
		if !ok {
			return nil, notMine
		}
		numbers = []arithmetic.Number{n}
	}
	if len(numbers) == 0 || len(numbers) > mostPoints {
		return nil, errors.New(words.LineManyPoints)
	}
	w, t, err := arithmetic.PlaceOnLine(p, lineRoom)
	if err != nil || !drawable(t) {
		return nil, errors.New(words.LineFine)
	}
	pl := &plan{problem: p, working: w}
	k := pl.layPoints(t, numbers...)
	if pl.uneven && fractional(t.Scale) {
		return nil, errors.New(words.LineClose)
	}
	pl.sketches = []*sketch{k}
	if p.Kind == arithmetic.Show {
		pl.showPoint(k, t, numbers[0])
	} else {
		pl.orderPoints(k, t)
	}
	k.nameWholes()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// drawable reports whether a stretch can be drawn: points of fractions must come
// out on whole steps.
func drawable(t arithmetic.Stretch) bool {
	if t.Lo == 0 {
		return t.Exact(lineRoom) || !fractional(t.Scale)
	}
	return t.Exact(brokenRoom) || !fractional(t.Scale)
}

// mostPoints is how many points one line can have.
const mostPoints = 6

func fractional(s arithmetic.Scale) bool {
	return s.Form == arithmetic.Common || s.Form == arithmetic.Mixed
}

// cutAtAll reports whether a working marks equal parts.
func cutAtAll(w arithmetic.Working) bool {
	for _, m := range w.Moves {
		if _, ok := m.(arithmetic.CutStretch); ok {
			return true
		}
	}
	return false
}

// showPoint tells one number: the line, its parts, the hops that lead to it. With
// the answer hidden the number is there to be placed.
func (pl *plan) showPoint(k *sketch, t arithmetic.Stretch, n arithmetic.Number) {
	draw := pl.working.Moves[0].(arithmetic.DrawStretch)
	if cutAtAll(pl.working) {
		k.mark = 0
	}
	pl.step(words.LineDraw(draw, words.LineWhereabouts(draw, n), k.broken), telling.Numeral(n, scene.First))
	for _, m := range pl.working.Moves[1:] {
		step := len(pl.steps)
		switch m := m.(type) {
		case arithmetic.CutStretch:
			if pl.uneven {
				continue // what is not to scale has no equal parts
			}
			k.cut(t, cut{every: t.Scale.Count(m.Each), move: m, step: step, named: true})
			pl.step(words.LineCut(m, draw), partsLine(m))
		case arithmetic.MarkOnLine:
			k.countTo(m, step)
			pl.step(words.LineMark(m), countLine(m, scene.First))
			k.point(n, draw, step)
			pl.answered = countLine(m, scene.First)
			if whole := pl.working.Answer.Simplest; whole.Value.IsWhole() && n.Form == arithmetic.Common {
				pl.answered = telling.Join(pl.answered, "=", telling.Numeral(whole, scene.First))
			}
		}
	}
	pl.asked = telling.Join(notation.W(words.LineWhere), telling.Numeral(n, scene.First), notation.S("?"))
	pl.title = words.LineShowTitle(n, pl.working.Answer)
	pl.desc = words.LineShowDesc(pl.working, n, k.broken)
	k.ends(draw)
}

// point marks the number. Where it is an end of the line, the end has another name
// from then on.
func (k *sketch) point(n arithmetic.Number, draw arithmetic.DrawStretch, step int) {
	at := k.scale.Count(n)
	it := stop{at: at, label: runsOf("", n), role: scene.First, of: scene.OfFirst, worth: n.Value, dot: true, when: scene.ShownOnly, step: step}
	for _, end := range []arithmetic.Number{draw.Lo, draw.Hi} {
		if k.scale.Count(end) != at {
			continue
		}
		point := stop{at: at, label: runsOf("", end), size: scene.Middle}
		if n.String() == end.String() {
			point.turn, point.turned = step, scene.First
		} else {
			point.also = []name{{it.label, scene.First, scene.ShownOnly, step}}
		}
		it.label = nil
		k.stops = append(k.stops, point)
	}
	k.stops = append(k.stops, it)
}

// countTo draws the counts of a number as hops, or as one where they are many.
func (k *sketch) countTo(m arithmetic.MarkOnLine, step int) {
	const most = 12 // hops that can still be counted at a glance
	at := k.scale.Count(m.From)
	var total int64
	for _, c := range m.Counts {
		total += c.Times
	}
	for _, c := range m.Counts {
		if !k.scale.Has(c.Each) {
			// The parts are too small to be drawn: one hop goes all the way.
			k.hops = append(k.hops, hop{from: at, to: k.scale.Count(m.Number), label: timesLabel(c), role: scene.First,
				when: scene.ShownOnly, step: step})
			break
		}
		each, times := k.scale.Count(c.Each), c.Times
		label := runsOf("", c.Each)
		if total > most || k.uneven() || int64(k.width)*each/(k.hi-k.lo) < leastHop {
			label = timesLabel(c)
			each, times = each*times, 1
		}
		for range times {
			k.hops = append(k.hops, hop{from: at, to: at + each, label: label, role: scene.First, when: scene.ShownOnly, step: step})
			at += each
		}
	}
}

// timesLabel is a count in one label: 23 × 1/60.
func timesLabel(c arithmetic.Count) []scene.Run {
	if c.Times == 1 {
		return runsOf("", c.Each)
	}
	return append([]scene.Run{{Text: arithmetic.Grouped(c.Times) + " × "}}, runsOf("", c.Each)...)
}

// orderPoints tells a list: each number is placed in the order given, and then
// all are read from left to right. Equal numbers are one point with two names.
func (pl *plan) orderPoints(k *sketch, t arithmetic.Stretch) {
	draw := pl.working.Moves[0].(arithmetic.DrawStretch)
	k.mark = 0
	for i, n := range pl.problem.List {
		if i > 0 {
			pl.asked = telling.Join(pl.asked, notation.W(","))
		}
		pl.asked = telling.Join(pl.asked, telling.Numeral(n, scene.First))
	}
	pl.step(words.LineDraw(draw, words.LineLeast(), k.broken), pl.asked)
	var parts *arithmetic.CutStretch // those of the number to come
	for _, m := range pl.working.Moves[1:] {
		step := len(pl.steps)
		switch m := m.(type) {
		case arithmetic.CutStretch:
			if pl.uneven {
				continue // what is not to scale has no equal parts
			}
			// Parts of several sizes on one line would not be equal parts.
			k.cuts = append(k.cuts, cut{every: t.Scale.Count(m.Each), move: m, step: step, until: step + 1})
			parts = &m
		case arithmetic.MarkOnLine:
			k.name(stop{at: t.Scale.Count(m.Number), label: runsOf("", m.Number), role: scene.First, of: scene.OfNth(m.Nth), worth: m.Number.Value,
				dot: true, when: scene.ShownOnly, step: step})
			told := words.LinePoint(m, parts, draw)
			if slices.Contains(pl.problem.List[:m.Nth], m.Number) {
				told = words.LineAgain(m)
			}
			if parts != nil {
				pl.step(told, partsLine(*parts), countLine(m, scene.First))
			} else {
				pl.step(told, countLine(m, scene.First))
			}
			parts = nil
		case arithmetic.ReadPoints:
			pl.answered = telling.InOrder(m.Order, scene.First)
			pl.step(words.LineReadOrder(m), pl.answered)
		}
	}
	pl.title, pl.desc = words.LineOrderTitle(pl.problem, pl.working.Answer), words.LineOrderDesc(pl.problem, pl.working.Answer)
	k.ends(draw)
}
