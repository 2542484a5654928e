package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// adding draws a sum or a difference as lengths, end to end.
//
//	|<------ 1 whole ------>|          |<------ 1 whole ------>|
//	   1/2       1/3                           3/4
//	/-------\ /-----\                  /-----------------\
//	+---+---+---+---+---+              +-----+-----+-----+-----+
//	|///|///|\\\|\\\|   |              |/////|     |     |     |
//	+---+---+---+---+---+              +-----+-----+-----+-----+
//	|xxx|xxx|xxx|xxx|   |              |xxxxx|\\\\\|\\\\\|     |
//	+---+---+---+---+---+              +-----+-----+-----+-----+
//	\---------------/                  \-----/ \---------/
//	      5/6                             1/4       2/4
//
// The upper bar has what there is at first, the lower what it comes to. Of a
// difference the lower bar has what is left and, after it, what was taken.
type adding struct {
	strip
	working arithmetic.Working
	numbers [2]arithmetic.Number
	laid    [2]arithmetic.Strips // as they were written
	minus   bool
	take    arithmetic.TakeStrips // of a difference: the end of the first that is taken away
	piled   bool                  // it is taken piece by piece: wholes from wholes, parts from parts
	length  int64                 // how long the result is
}

// added is what the picture shows after a move.
type added struct {
	amounts  [2]arithmetic.Strips // the two numbers, as they are cut now
	old      [2]int64             // parts to a whole before the last cut
	fresh    int                  // the number that has just been cut, from 1; 0 for none
	on       int                  // how many numbers lie there
	together bool                 // the second lies after the first
	moving   bool                 // it has just been moved there
	before   int64                // whole strips of the first before those that were cut
	loose    int64                // and how many parts those were cut in; 0 while none are
	opened   int                  // the number of which whole strips have just been cut, from 1; 0 for none
	taken    *arithmetic.TakeStrips
	total    *arithmetic.Strips // what has been counted
	joined   int64              // new wholes in it
	merged   bool               // its parts have just been joined
}

func tellSum(w arithmetic.Working) telling.Telling {
	d := adding{working: w, minus: w.Problem.Kind == arithmetic.Subtraction}
	d.numbers[0], d.numbers[1], _ = w.Problem.Operands()
	den, wholes, _, _ := extent(w)
	d.strip = layStrip(den, wholes, 0)
	d.foresee()
	var t telling.Telling
	var now added
	for _, move := range w.Moves {
		now.fresh, now.moving, now.opened, now.joined, now.merged = 0, false, 0, 0, false
		step := d.tell(move, &now)
		step.Scene = d.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.fresh, now.moving, now.opened, now.joined, now.merged = 0, false, 0, 0, false
	t.Whole = d.picture(now, true)
	asked, answered := telling.SumEquations(w)
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, answered)
	t.Pieces = stripPieces(d.laid[:]...)
	if d.length > 0 {
		t.Pieces = append(t.Pieces, telling.Piece{Name: words.BarAnswerStrip, Count: 1})
	}
	return t
}

// foresee sees from the moves where what is taken away will lie, so that it lies
// there from the first. Without a whole cut where the cut falls, whole strips are
// taken from whole strips and parts from parts, and what is left would lie on
// both sides of what is gone.
func (d *adding) foresee() {
	opened := false
	for _, move := range d.working.Moves {
		switch m := move.(type) {
		case arithmetic.OpenWholes:
			opened = opened || m.Nth == 0
		case arithmetic.TakeStrips:
			d.take = m
			d.piled = !opened && m.Taken.Wholes > 0 && m.Left.Part.Num() > 0
		case arithmetic.CountParts:
			d.length = d.long(m.Total)
		}
	}
}

// tell makes a move and tells it, all but its picture.
func (d *adding) tell(move arithmetic.Move, now *added) telling.Step {
	switch m := move.(type) {
	case arithmetic.LayStrips:
		d.laid[m.Nth], now.amounts[m.Nth], now.on = m.Strips, m.Strips, m.Nth+1
		return telling.Step{
			Title:   words.BarLayTitle(m.Number),
			Hands:   d.layTerm(m),
			Ask:     words.BarAskLay(m.Strips),
			Symbols: notation.Lines(telling.Numeral(m.Number, bothRoles[m.Nth])),
		}
	case arithmetic.PutTogether:
		now.together, now.moving = true, true
		return telling.Step{
			Title:   words.BarTogetherTitle,
			Hands:   words.BarTogether(d.numbers[0], d.numbers[1], m),
			Ask:     words.BarAskTogether(d.numbers[0], d.numbers[1], m),
			Symbols: notation.Lines(telling.SumOfStrips(d.working.Problem, telling.Numeral(d.numbers[0], scene.First), telling.Numeral(d.numbers[1], scene.Second))),
		}
	case arithmetic.CutParts:
		now.amounts[m.Nth], now.old[m.Nth], now.fresh = m.To, m.From.Part.Den(), m.Nth+1
		return telling.Step{
			Title:   words.BarCutTitle(m),
			Hands:   words.BarCut(bothRoles[m.Nth], m, true),
			Ask:     words.BarAskCut(m),
			Symbols: notation.Lines(telling.CutStrips(m, bothRoles[m.Nth])),
		}
	case arithmetic.OpenWholes:
		now.amounts[m.Nth], now.opened, now.old[m.Nth] = m.To, m.Nth+1, 0
		role, ask := bothRoles[m.Nth], words.BarAskOpenAll(m)
		if m.Nth == 0 {
			now.before, now.loose = m.Before, m.Wholes*m.To.Part.Den()
			ask = words.BarAskOpen(now.amounts[1], m)
		}
		return telling.Step{
			Title:   words.BarOpenTitle(m),
			Hands:   words.BarOpen(role, role, m, true),
			Ask:     ask,
			Symbols: notation.Lines(telling.Join(telling.Strips(m.From, role), notation.S("="), telling.Strips(m.To, role))),
		}
	case arithmetic.TakeStrips:
		now.taken = &m
		return telling.Step{
			Title:   words.BarTakeTitle(m),
			Hands:   words.BarTake(d.numbers[1], m),
			Ask:     words.BarAskTake(d.numbers[1]),
			Symbols: notation.Lines(telling.SumOfStrips(d.working.Problem, telling.Strips(m.From, scene.First), telling.Strips(m.Taken, scene.Second))),
		}
	}
	return d.tellTotal(move, now)
}

// layTerm says how a number of the problem is laid out.
func (d *adding) layTerm(m arithmetic.LayStrips) words.Phrase {
	switch {
	case !d.minus || m.Nth == 0:
		return words.BarLay(bothRoles[m.Nth], m.Number, m.Strips, false)
	case d.piled:
		return words.BarLayUnderPieces(m.Number, m.Strips)
	}
	return words.BarLayUnderEnd(m.Number, m.Strips)
}

// tellTotal tells a move that counts the result or gives it another name.
func (d *adding) tellTotal(move arithmetic.Move, now *added) telling.Step {
	switch m := move.(type) {
	case arithmetic.CountParts:
		now.total = &m.Total
		counted := telling.Join(telling.SumOfStrips(d.working.Problem, telling.Strips(now.amounts[0], scene.First), telling.Strips(now.amounts[1], scene.Second)),
			notation.S("="), telling.Strips(m.Total, scene.Result))
		if d.length == 0 && m.Total.Part.Den() > 1 {
			counted = telling.Join(counted, notation.S("="), telling.Count(0, scene.Result))
		}
		return telling.Step{
			Title:   words.BarCountTitle(d.minus),
			Hands:   words.BarCount(m, d.minus, true),
			Ask:     words.BarAskCount(m, d.minus),
			Symbols: notation.Lines(counted),
		}
	case arithmetic.MakeWholes:
		now.total, now.joined = &m.To, m.Wholes
		return telling.Step{
			Title:   words.BarMakeTitle(m),
			Hands:   words.BarMake(scene.Result, m),
			Ask:     words.BarAskMake(m),
			Symbols: notation.Lines(telling.Join(telling.Strips(m.From, scene.Result), notation.S("="), telling.Strips(m.To, scene.Result))),
		}
	case arithmetic.MergeParts:
		now.total, now.merged = &m.To, true
		return telling.Step{
			Title:   words.BarMergeTitle(m),
			Hands:   words.BarMerge(scene.Result, m, true),
			Ask:     words.BarAskMerge(m),
			Symbols: notation.Lines(telling.Join(telling.Strips(m.From, scene.Result), notation.S("="), telling.Strips(m.To, scene.Result))),
		}
	}
	panic("bars: not a move of a sum of bars")
}
