package telling

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// Columns is a written calculation in columns as it grows: the two numbers, the
// small digits above them, what is struck, and the answer from the right.
//
//	  9
//	3 10 12
//	4  0  2      every digit of the first row with what replaced it above
//	1  7  8
//	-------
//	2  2  4
type Columns struct {
	Sign          string // "" for a comparison, which has no answer row
	Top           int    // the largest place that has a column
	First, Second arithmetic.Counts
	More          []arithmetic.Counts             // the numbers under these two, of a sum of a list
	above         [arithmetic.PlaceNames][]string // small digits, the lowest first
	replaced      [arithmetic.PlaceNames]bool     // whether they replace what is below them
	raised        [arithmetic.PlaceNames]bool     // places with ten more, in the writing of equal additions
	answer        [arithmetic.PlaceNames]string
	touched       [arithmetic.PlaceNames]bool // columns whose digits the move reads
	fresh         [arithmetic.PlaceNames]bool // columns with a new small digit
	written       [arithmetic.PlaceNames]bool // columns with a new answer digit
}

// Digits writes a whole number without commas.
func Digits(n int64) string { return strconv.FormatInt(n, 10) }

// Settle ends a move: nothing is new any more.
func (c *Columns) Settle() {
	c.touched, c.fresh, c.written = [arithmetic.PlaceNames]bool{}, [arithmetic.PlaceNames]bool{}, [arithmetic.PlaceNames]bool{}
}

// Touch marks the column of a place as the one that the move reads.
func (c *Columns) Touch(power int) { c.touched[power] = true }

// Replace strikes the digit of a place and writes another above it.
func (c *Columns) Replace(power int, n int64) {
	c.above[power] = append(c.above[power], Digits(n))
	c.replaced[power], c.fresh[power] = true, true
}

// Carry writes a small digit above a place.
func (c *Columns) Carry(power int, n int64) {
	c.above[power] = append(c.above[power], Digits(n))
	c.fresh[power] = true
}

// Write puts a digit in the answer.
func (c *Columns) Write(power int, n int64) {
	c.answer[power], c.written[power] = Digits(n), true
}

// Block is the calculation as it stands.
func (c *Columns) Block() notation.Block {
	b := notation.Block{Columns: true}
	tallest := 0
	for power := range c.Top + 1 {
		tallest = max(tallest, len(c.above[power]))
	}
	for level := tallest - 1; level >= 0; level-- {
		b.Lines = append(b.Lines, c.line("", func(power int) notation.Term { return c.small(power, level) }))
	}
	b.Lines = append(b.Lines,
		c.line("", func(power int) notation.Term {
			t := c.digit(c.First, power, scene.First)
			if c.replaced[power] {
				t.Struck, t.Role = true, scene.Gone
			}
			return t
		}))
	for i, number := range append([]arithmetic.Counts{c.Second}, c.More...) {
		sign := ""
		if i == len(c.More) {
			sign = c.Sign
		}
		b.Lines = append(b.Lines, c.line(sign, func(power int) notation.Term { return c.digit(number, power, scene.Second) }))
	}
	if c.Sign == "" {
		return b
	}
	b.Rule = len(b.Lines)
	b.Lines = append(b.Lines, c.line("", c.answered))
	return b
}

// answered is the digit of the answer in a place.
func (c *Columns) answered(power int) notation.Term {
	role := scene.Result
	if c.written[power] {
		role = scene.Moved
	}
	return notation.N(c.answer[power], role)
}

func (c *Columns) line(sign string, cell func(power int) notation.Term) notation.Line {
	var l notation.Line
	if c.Sign != "" {
		l = append(l, notation.S(sign))
	}
	for power := c.Top; power >= 0; power-- {
		l = append(l, cell(power))
	}
	return l
}

// digit is one digit of a number; what stands left of its first digit is empty.
func (c *Columns) digit(number arithmetic.Counts, power int, role scene.Role) notation.Term {
	if power > number.Top() {
		return notation.Term{}
	}
	if c.touched[power] {
		role = scene.Moved
	}
	return notation.N(Digits(number[power]), role)
}

// small is the digit at a level above a column, 0 the lowest.
func (c *Columns) small(power, level int) notation.Term {
	if level >= len(c.above[power]) {
		return notation.Term{}
	}
	t := notation.N(c.above[power][level], scene.First)
	t.Small = true
	switch last := level == len(c.above[power])-1; {
	case !last:
		t.Struck, t.Role = true, scene.Gone
	case c.fresh[power] || c.touched[power]:
		t.Role = scene.Moved
	case !c.replaced[power]:
		t.Role = scene.Ink
	}
	return t
}
