package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// ordering draws the numbers of a list on one whole, a bar each, and sorts the
// bars by length.
//
//	      |<-------- 1 whole --------->|
//	1/4   |///////|                    |
//	1/2   |///////////////|            |
//	2/3   |////////////////////|       |
type ordering struct {
	strip
	working arithmetic.Working
	list    []arithmetic.Number
	laid    []arithmetic.Strips // as they were written
}

// ordered is what the picture shows after a move.
type ordered struct {
	strips []arithmetic.Strips
	old    []arithmetic.Strips // before the parts were cut; nil when they were not
	fresh  bool                // they have just been cut
	order  []int               // which number stands in each row; nil for the order given
	moving bool                // the rows have just been sorted
}

func tellOrdered(w arithmetic.Working) telling.Telling {
	o := ordering{working: w, list: w.Problem.List}
	den, wholes, _, _ := extent(w)
	names := make([]notation.Line, len(o.list))
	for i, n := range o.list {
		names[i] = telling.Numeral(n, scene.First)
	}
	o.strip = layStrip(den, wholes, besideRoom(names...))
	t := telling.Telling{}
	sorted := telling.InOrder(w.Answer.Order, scene.Result)
	var now ordered
	for _, move := range w.Moves {
		now.fresh = false
		var step telling.Step
		switch m := move.(type) {
		case arithmetic.LayAll:
			o.laid, now.strips = m.Strips, m.Strips
			step = telling.Step{Title: words.BarLayAllTitle, Hands: words.BarLayAll(o.list), Ask: words.BarAskLayAll(), Symbols: notation.Lines(telling.Chain(",", names...))}
		case arithmetic.CutAll:
			now.old, now.strips, now.fresh = m.From, m.To, true
			step = telling.Step{Title: words.BarCutAllTitle(m), Hands: words.BarCutAll(m), Ask: words.BarAskCutAll(m)}
			for i := range m.To {
				if m.From[i] != m.To[i] {
					step.Symbols.Lines = append(step.Symbols.Lines, telling.Join(names[i], notation.S("="), telling.Strips(m.To[i], scene.First)))
				}
			}
		case arithmetic.SortByLength:
			now.order, now.moving = m.Order, true
			step = telling.Step{Title: words.BarSortTitle, Hands: words.BarSort(w.Answer.Order, m.SameCount), Ask: words.BarAskSort(), Symbols: notation.Lines(sorted)}
			t.Why = words.BarOrderWhy(w.Answer.Order, now.strips, m)
		}
		step.Scene = o.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.moving = false
	t.Pieces = stripPieces(o.laid...)
	t.Whole = o.picture(now, true)
	asked := make([]notation.Line, len(names))
	for i := range asked {
		asked[i] = telling.Join(telling.Unknown())
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Chain("<", asked...), sorted)
	return t
}

func (o ordering) picture(now ordered, story bool) *scene.Scene {
	const (
		top   = scene.Margin + 48
		tall  = 60
		pitch = 82 // from bar to bar: a fraction beside each
	)
	s := &scene.Scene{
		W: scene.PaperW, H: top + (len(o.list)-1)*pitch + tall + 24 + scene.Margin,
		Title: words.BarOrderTitle(o.working.Problem, o.working.Answer),
		Desc:  words.BarOrderDesc(o.list, o.laid, now.strips, o.working.Answer, now.order != nil),
	}
	o.wholeMark(s)
	row := func(at, which int, when scene.When) {
		y := top + at*pitch
		b := o.shaded(y, tall, now.strips[which], scene.First, scene.OfNth(which))
		if now.old != nil {
			b.runs = cutFiner(b.runs, now.old[which].Part.Den(), now.fresh)
		}
		if now.moving && at != which {
			for i := range b.runs {
				b.runs[i].role = scene.Moved
			}
		}
		o.draw(s, b, when)
		o.beside(s, y+tall/2, scene.First, telling.Numeral(o.list[which], scene.First), when)
	}
	for at := range o.list {
		if now.order == nil {
			row(at, at, scene.Always)
			continue
		}
		row(at, now.order[at], scene.ShownOnly)
	}
	if now.order != nil {
		// The picture that asks has the list as it was given.
		now.moving = false
		if story {
			now.strips, now.old = o.laid, nil
		}
		for at := range o.list {
			row(at, at, scene.HiddenOnly)
		}
	}
	return s
}
