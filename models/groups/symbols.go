package groups

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

func number(n int64) notation.Term { return telling.Count(n, scene.Ink) }

func minus(a, b, c int64) notation.Line {
	return telling.Join(number(a), "−", telling.Count(b, scene.Moved), "=", number(c))
}

// The longest lines: so many addends, or so many numbers counted.
const longestSum, longestCount = 6, 12

// making writes groups as repeated addition when they are made, and as repeated
// subtraction when they are measured off.
func (a *story) making(m arithmetic.MakeGroups) notation.Block {
	switch all := a.totals[len(a.totals)-1]; {
	case a.pairs != nil && m.Before > 0 && m.Groups <= longestCount:
		return notation.Lines(telling.Counts(",", scene.Ink, a.totals...))
	case a.set.Story == arithmetic.Measuring:
		return notation.Lines(minus(m.Took+m.Left, m.Took, m.Left))
	case m.Groups == 1:
		return notation.Lines(notation.Line{telling.Count(m.Each, scene.Moved)})
	case m.Groups > longestSum:
		return notation.Lines(telling.Counts(",", scene.Ink, a.totals...))
	default:
		addends := slices.Repeat([]int64{m.Each}, int(m.Groups))
		return notation.Lines(telling.Join(telling.Counts("+", scene.First, addends...), "=", number(all)))
	}
}

// answerLines are the answer, and the multiplication that says the same as a
// division.
func (a *story) answerLines() notation.Block {
	if a.taken != nil {
		return notation.Lines(telling.Join(number(a.read.Total), "÷", number(a.read.Groups), "=", number(a.read.Each)))
	}
	b := notation.Lines(a.answered)
	if len(a.read.Totals) > 1 {
		b.Lines = append([]notation.Line{telling.Counts(",", scene.Ink, a.read.Totals...)}, b.Lines...)
	}
	if a.set.Story == arithmetic.Making || a.said.Rest != arithmetic.LeftOver && a.read.Left > 0 {
		return b
	}
	back := telling.Join(number(a.read.Groups), "×", number(a.read.Each))
	if a.read.Left > 0 {
		back = telling.Join(back, "+", telling.Count(a.read.Left, scene.First))
	}
	b.Lines = append(b.Lines, telling.Join(back, "=", number(a.read.Total)))
	return b
}

func (a *story) oneMore(m arithmetic.RoundUp) notation.Line {
	full := a.read.Each
	if m.Story == arithmetic.Measuring {
		full = a.read.Groups
	}
	return telling.Join(number(full), "+", number(1), "=", telling.Count(m.Found, scene.Moved))
}

// taking writes that some of the equal groups are taken.
func (a *story) taking(m arithmetic.TakeGroups) notation.Block {
	if m.Groups == 1 {
		return notation.Lines(a.answered)
	}
	return notation.Lines(telling.Join(number(m.Groups), "×", number(m.Each), "=", telling.Count(m.Sum, scene.Result)), a.answered)
}

// evenLines write an even number as a sum of two equal addends, and an odd one as
// that and 1 (CCSS 2.OA.C.3).
func (a *story) evenLines(m arithmetic.ReadPairs) notation.Block {
	sum := telling.Join(number(m.Total), "=", number(m.Pairs), "+", number(m.Pairs))
	if m.Left > 0 {
		sum = telling.Join(sum, "+", telling.Count(m.Left, scene.First))
	}
	return notation.Lines(sum, a.answered)
}
