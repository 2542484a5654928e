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
}

// added is what the picture shows after a move.
type added struct {
	amounts  [2]arithmetic.Strips // the two numbers, as they are cut now
	old      [2]int64             // parts to a whole before the last cut
	fresh    int                  // the number that has just been cut, from 1; 0 for none
	on       int                  // how many numbers lie there
	together bool                 // the second lies after the first
	moving   bool                 // it has just been moved there
	opened   int64                // whole strips that have just been cut, or joined when negative
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
	asked, answered := d.equations()
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, answered)
	t.Pieces = stripPieces(2, wholes)
	return t
}

// tell makes a move and tells it, all but its picture.
func (d *adding) tell(move arithmetic.Move, now *added) telling.Step {
	switch m := move.(type) {
	case arithmetic.LayStrips:
		d.laid[m.Nth], now.amounts[m.Nth], now.on = m.Strips, m.Strips, m.Nth+1
		return telling.Step{
			Title:   words.BarLayTitle(m.Number),
			Hands:   words.BarLayTerm(bothRoles[m.Nth], m.Number, m.Strips, d.minus && m.Nth > 0),
			Ask:     words.BarAskLay(m.Strips),
			Symbols: notation.Lines(telling.Numeral(m.Number, bothRoles[m.Nth])),
		}
	case arithmetic.PutTogether:
		now.together, now.moving = true, true
		return telling.Step{
			Title:   words.BarTogetherTitle,
			Hands:   words.BarTogether(d.numbers[0], d.numbers[1], m),
			Ask:     words.BarAskTogether(d.numbers[0], d.numbers[1], m),
			Symbols: notation.Lines(d.sum(telling.Numeral(d.numbers[0], scene.First), telling.Numeral(d.numbers[1], scene.Second))),
		}
	case arithmetic.CutParts:
		now.amounts[m.Nth], now.old[m.Nth], now.fresh = m.To, m.From.Part.Den(), m.Nth+1
		return telling.Step{
			Title:   words.BarCutTitle(m),
			Hands:   words.BarCut(bothRoles[m.Nth], m),
			Ask:     words.BarAskCut(m),
			Symbols: notation.Lines(cutLine(m, bothRoles[m.Nth])),
		}
	case arithmetic.OpenWholes:
		now.amounts[0], now.opened, now.old[0] = m.To, m.Wholes, 0
		return telling.Step{
			Title:   words.BarOpenTitle(m),
			Hands:   words.BarOpen(scene.First, m),
			Ask:     words.BarAskOpen(now.amounts[1], m),
			Symbols: notation.Lines(telling.Join(stripsLine(m.From, scene.First), notation.S("="), stripsLine(m.To, scene.First))),
		}
	case arithmetic.TakeStrips:
		now.taken = &m
		return telling.Step{
			Title:   words.BarTakeTitle(m),
			Hands:   words.BarTake(d.numbers[1], m),
			Ask:     words.BarAskTake(d.numbers[1]),
			Symbols: notation.Lines(d.sum(stripsLine(m.From, scene.First), stripsLine(m.Taken, scene.Second))),
		}
	}
	return d.tellTotal(move, now)
}

// tellTotal tells a move that counts the result or gives it another name. It
// joins parts of the first number, too, before whole strips are taken from it.
func (d *adding) tellTotal(move arithmetic.Move, now *added) telling.Step {
	switch m := move.(type) {
	case arithmetic.CountParts:
		now.total = &m.Total
		left := d.sum(stripsLine(now.amounts[0], scene.First), stripsLine(now.amounts[1], scene.Second))
		return telling.Step{
			Title:   words.BarCountTitle(d.minus),
			Hands:   words.BarCount(m, d.minus),
			Ask:     words.BarAskCount(m, d.minus),
			Symbols: notation.Lines(telling.Join(left, notation.S("="), stripsLine(m.Total, scene.Result))),
		}
	case arithmetic.MakeWholes:
		role := scene.Result
		if now.total == nil {
			role, now.amounts[0], now.opened, now.old[0] = scene.First, m.To, -m.Wholes, 0
		} else {
			now.total, now.joined = &m.To, m.Wholes
		}
		return telling.Step{
			Title:   words.BarMakeTitle(m),
			Hands:   words.BarMake(role, m),
			Ask:     words.BarAskMake(m),
			Symbols: notation.Lines(telling.Join(stripsLine(m.From, role), notation.S("="), stripsLine(m.To, role))),
		}
	case arithmetic.MergeParts:
		now.total, now.merged = &m.To, true
		return telling.Step{
			Title:   words.BarMergeTitle(m),
			Hands:   words.BarMerge(scene.Result, m),
			Ask:     words.BarAskMerge(m),
			Symbols: notation.Lines(telling.Join(stripsLine(m.From, scene.Result), notation.S("="), stripsLine(m.To, scene.Result))),
		}
	}
	panic("bars: not a move of a sum of bars")
}

// sum joins two terms by the sign of the problem.
func (d *adding) sum(a, b notation.Line) notation.Line {
	sign := arithmetic.Add
	if d.minus {
		sign = arithmetic.Subtract
	}
	return telling.Join(a, notation.S(sign.String()), b)
}

// equations are the problem with a question mark, and all its names up to the
// last; names in between are left out when the line is wider than the paper.
func (d *adding) equations() (asked, answered notation.Line) {
	problem := d.sum(telling.Numeral(d.numbers[0], scene.First), telling.Numeral(d.numbers[1], scene.Second))
	var between, results []notation.Line
	amounts := d.laid
	for _, move := range d.working.Moves {
		switch m := move.(type) {
		case arithmetic.CutParts:
			amounts[m.Nth] = m.To
			between = []notation.Line{d.sum(stripsLine(amounts[0], scene.First), stripsLine(amounts[1], scene.Second))}
		case arithmetic.OpenWholes:
			amounts[0] = m.To
			between = []notation.Line{d.sum(stripsLine(amounts[0], scene.First), stripsLine(amounts[1], scene.Second))}
		case arithmetic.CountParts:
			results = append(results, stripsLine(m.Total, scene.Result))
		case arithmetic.MakeWholes:
			if len(results) > 0 {
				results = append(results, stripsLine(m.To, scene.Result))
			}
		case arithmetic.MergeParts:
			results = append(results, stripsLine(m.To, scene.Result))
		}
	}
	if d.working.Answer.Simplest.Value.Num() == 0 {
		results = append(results, telling.Numeral(d.working.Answer.Simplest, scene.Result))
	}
	last := results[len(results)-1:]
	for _, names := range [][]notation.Line{append(between, results...), results, append(results[:1:1], last...), last} {
		answered = problem
		for i, name := range names {
			if i == 0 || name.Text() != names[i-1].Text() {
				answered = telling.Join(answered, notation.S("="), name)
			}
		}
		if telling.EquationFits(answered) {
			break
		}
	}
	return telling.Join(problem, notation.S("="), telling.Unknown()), answered
}
