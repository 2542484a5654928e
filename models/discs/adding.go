package discs

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// adding draws a sum or a difference: the two numbers, and on discs of its own what
// they come to.
//
//	1 whole
//	(( ))   +   (( ))   =   (( )) (( ))
//	 3/4         3/4           1 1/2
//
// Of a difference the first number keeps what is taken away as ghosts.
type adding struct {
	sheet
	working arithmetic.Working
	numbers [2]arithmetic.Number
	laid    [2]arithmetic.Strips // as they were written
	minus   bool
}

// added is what the picture shows after a move.
type added struct {
	amounts  [2]arithmetic.Strips // the two numbers, as they are cut now
	old      [2]int64             // parts to a whole before the last cut
	fresh    int                  // the number that has just been cut, from 1; 0 for none
	on       int                  // how many numbers lie there
	together bool                 // both lie on the discs of the result
	before   int64                // whole discs of the first before those that were cut
	loose    int64                // and how many parts those were cut in; 0 while none are
	opened   int                  // the number of which whole discs have just been cut, from 1; 0 for none
	taken    *arithmetic.TakeStrips
	total    *arithmetic.Strips // what has been counted
	joined   int64              // new wholes in it
	merged   bool               // its parts have just been joined
}

func tellSum(w arithmetic.Working) telling.Telling {
	e, _ := extentOf(w)
	d := adding{sheet: layDiscs(e.den, e.discs[0], e.discs[1], e.discs[2]), working: w, minus: w.Problem.Kind == arithmetic.Subtraction}
	d.numbers[0], d.numbers[1], _ = w.Problem.Operands()
	t := telling.Telling{Pieces: paper(e.discs[0] + e.discs[1] + e.discs[2])}
	var now added
	for _, move := range w.Moves {
		now.fresh, now.opened, now.joined, now.merged = 0, 0, 0, false
		step := d.tell(move, &now)
		step.Scene = d.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.fresh, now.opened, now.joined, now.merged = 0, 0, 0, false
	t.Whole = d.picture(now, true)
	asked, answered := telling.SumEquations(w)
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, answered)
	return t
}

// tell makes a move and tells it, all but its picture.
func (d *adding) tell(move arithmetic.Move, now *added) telling.Step {
	switch m := move.(type) {
	case arithmetic.LayStrips:
		d.laid[m.Nth], now.amounts[m.Nth], now.on = m.Strips, m.Strips, m.Nth+1
		step := layStep(m)
		if d.minus && m.Nth > 0 {
			step.Hands = words.DiscLayToTake(m.Number, m.Strips)
		}
		return step
	case arithmetic.CutParts:
		now.amounts[m.Nth], now.old[m.Nth], now.fresh = m.To, m.From.Part.Den(), m.Nth+1
		return cutStep(m)
	case arithmetic.PutTogether:
		now.together = true
		return telling.Step{
			Title:   words.DiscTogetherTitle,
			Hands:   words.DiscTogether(m),
			Ask:     words.DiscAskTogether(m),
			Symbols: notation.Lines(telling.SumOfStrips(d.working.Problem, telling.Strips(m.First, scene.First), telling.Strips(m.Second, scene.Second))),
		}
	case arithmetic.OpenWholes:
		now.amounts[m.Nth], now.opened, now.old[m.Nth] = m.To, m.Nth+1, 0
		role, ask := bothRoles[m.Nth], words.DiscAskOpenAll(m)
		if m.Nth == 0 {
			now.before, now.loose = m.Before, m.Wholes*m.To.Part.Den()
			ask = words.BarAskOpen(now.amounts[1], m)
		}
		return telling.Step{
			Title:   words.BarOpenTitle(m),
			Hands:   words.DiscOpen(role, role, m, true),
			Ask:     ask,
			Symbols: notation.Lines(telling.Join(telling.Strips(m.From, role), notation.S("="), telling.Strips(m.To, role))),
		}
	case arithmetic.TakeStrips:
		now.taken = &m
		return telling.Step{
			Title:   words.DiscTakeTitle(m),
			Hands:   words.DiscTake(d.numbers[1], m),
			Ask:     words.BarAskTake(d.numbers[1]),
			Symbols: notation.Lines(telling.SumOfStrips(d.working.Problem, telling.Strips(m.From, scene.First), telling.Strips(m.Taken, scene.Second))),
		}
	}
	return d.tellTotal(move, now)
}

// tellTotal tells a move that counts the result or gives it another name.
func (d *adding) tellTotal(move arithmetic.Move, now *added) telling.Step {
	same := func(from, to arithmetic.Strips) notation.Block {
		return notation.Lines(telling.Join(telling.Strips(from, scene.Result), notation.S("="), telling.Strips(to, scene.Result)))
	}
	switch m := move.(type) {
	case arithmetic.CountParts:
		now.total = &m.Total
		sum := telling.SumOfStrips(d.working.Problem, telling.Strips(now.amounts[0], scene.First), telling.Strips(now.amounts[1], scene.Second))
		counted := telling.Join(sum, notation.S("="), telling.Strips(m.Total, scene.Result))
		if m.Total.Wholes == 0 && m.Total.Part.Num() == 0 && m.Total.Part.Den() > 1 {
			counted = telling.Join(counted, notation.S("="), telling.Count(0, scene.Result))
		}
		return telling.Step{
			Title:   words.BarCountTitle(d.minus),
			Hands:   words.DiscCount(m, d.minus),
			Ask:     words.DiscAskCount(m, d.minus),
			Symbols: notation.Lines(counted),
		}
	case arithmetic.MakeWholes:
		now.total, now.joined = &m.To, m.Wholes
		return telling.Step{Title: words.BarMakeTitle(m), Hands: words.BarMake(scene.Result, m), Ask: words.BarAskMake(m), Symbols: same(m.From, m.To)}
	case arithmetic.MergeParts:
		now.total, now.merged = &m.To, true
		return telling.Step{Title: words.BarMergeTitle(m), Hands: words.DiscMerge(scene.Result, m, true), Ask: words.BarAskMerge(m), Symbols: same(m.From, m.To)}
	}
	panic("discs: not a move of a sum")
}
