package array

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// The written forms that go with an area: all partial products under each other,
// and a division by partial quotients.

// digits are the cells of a number in so many columns, right-aligned.
func digits(n int64, columns int, role scene.Role) []notation.Term {
	cells := make([]notation.Term, columns)
	text := strconv.FormatInt(n, 10)
	for i := range text {
		cells[columns-len(text)+i] = notation.N(text[i:i+1], role)
	}
	return cells
}

// digitsOf is how many digits a number has.
func digitsOf(n int64) int { return len(strconv.FormatInt(n, 10)) }

// partialProducts is the column form of a product: the factors, every partial
// product in the role of its part, and their sum.
//
//	      3 6
//	×     9 4
//	─────────
//	  2 7 0 0
//	    1 2 0
//	    5 4 0
//	+     2 4
//	─────────
//	  3 3 8 4
func (a *story) partialProducts() notation.Block {
	wide := max(digitsOf(a.sum), digitsOf(a.whole.Rows), digitsOf(a.whole.Cols))
	line := func(sign notation.Term, n int64, role scene.Role) notation.Line {
		return append(notation.Line{sign}, digits(n, wide, role)...)
	}
	b := notation.Block{Columns: true, Rule: 2, Rules: []int{2 + len(a.parts)}}
	b.Lines = []notation.Line{line(notation.Term{}, a.whole.Rows, scene.Ink), line(notation.S("×"), a.whole.Cols, scene.Ink)}
	for k, role := range a.roles() {
		sign := notation.Term{}
		if k == len(a.parts)-1 {
			sign = notation.S("+")
		}
		b.Lines = append(b.Lines, line(sign, a.parts[k], role))
	}
	b.Lines = append(b.Lines, line(notation.Term{}, a.sum, scene.Result))
	return b
}

// partialQuotients is the division as far as it is written after so many parts:
// each part beside what it takes.
//
//	  9 6 6
//	− 7 0 0   100
//	───────
//	  2 6 6
func (d *division) partialQuotients(count int) notation.Block {
	wide := digitsOf(d.set.Total)
	b := notation.Block{Columns: true}
	b.Lines = append(b.Lines, append(append(notation.Line{{}}, digits(d.set.Total, wide, scene.Ink)...), notation.Term{}, notation.Term{}))
	for k, part := range d.lines[:count] {
		role := roleAt(k, 0)
		line := append(notation.Line{notation.S("−")}, digits(part.Area, wide, role)...)
		b.Lines = append(b.Lines, append(line, notation.Term{}, telling.Count(part.Part, role)))
		b.Rules = append(b.Rules, len(b.Lines))
		b.Lines = append(b.Lines, append(append(notation.Line{{}}, digits(part.Left, wide, scene.Ink)...), notation.Term{}, notation.Term{}))
	}
	return b
}

// continental is the same written as in much of Europe: the dividend, the sign,
// the divisor and the quotient on one line, with its digits as they are found, and
// the differences below (from memory).
func (d *division) continental(count int) notation.Block {
	wide := digitsOf(d.set.Total)
	found := strconv.FormatInt(d.read.Found, 10)
	shown := ""
	for k, digit := range found {
		unit := arithmetic.Power10(len(found) - 1 - k)
		if k > 0 && digit == '0' && count == len(d.lines) || d.took(unit, count) {
			shown = found[:k+1]
		}
	}
	first := append(notation.Line(digits(d.set.Total, wide, scene.Ink)), notation.S("÷"), telling.Count(d.set.Side, scene.Ink), notation.S("="))
	for k := range shown {
		first = append(first, notation.N(shown[k:k+1], scene.Result))
	}
	b := notation.Block{Columns: true, Lines: []notation.Line{first}}
	for k, part := range d.lines[:count] {
		b.Lines = append(b.Lines, digits(part.Area, wide, roleAt(k, 0)))
		b.Rules = append(b.Rules, len(b.Lines))
		b.Lines = append(b.Lines, digits(part.Left, wide, scene.Ink))
	}
	return b
}

// took reports whether one of the first parts is a digit of this unit.
func (d *division) took(unit int64, count int) bool {
	for _, part := range d.lines[:count] {
		if part.Part >= unit && part.Part < 10*unit {
			return true
		}
	}
	return false
}
