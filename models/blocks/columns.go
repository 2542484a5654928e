package blocks

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// columns is a written calculation in columns as it grows: the two numbers, the
// small digits above them, what is struck, and the answer from the right.
//
//	  9
//	3 10 12
//	4  0  2      every digit of the first row with what replaced it above
//	1  7  8
//	-------
//	2  2  4
type columns struct {
	sign          string
	top           int
	first, second arithmetic.Counts
	above         [arithmetic.PlaceNames][]string // small digits, the lowest first
	replaced      [arithmetic.PlaceNames]bool     // whether they replace what is below them
	answer        [arithmetic.PlaceNames]string
	touched       [arithmetic.PlaceNames]bool // columns whose digits the move reads
	fresh         [arithmetic.PlaceNames]bool // columns with a new small digit
	written       [arithmetic.PlaceNames]bool // columns with a new answer digit
}

func digits(n int64) string { return strconv.FormatInt(n, 10) }

// settle ends a move: nothing is new any more.
func (c *columns) settle() {
	c.touched, c.fresh, c.written = [arithmetic.PlaceNames]bool{}, [arithmetic.PlaceNames]bool{}, [arithmetic.PlaceNames]bool{}
}

// replace strikes the digit of a place and writes another above it.
func (c *columns) replace(power int, n int64) {
	c.above[power] = append(c.above[power], digits(n))
	c.replaced[power], c.fresh[power] = true, true
}

// carry writes a small digit above a place.
func (c *columns) carry(power int, n int64) {
	c.above[power] = append(c.above[power], digits(n))
	c.fresh[power] = true
}

// write puts a digit in the answer.
func (c *columns) write(power int, n int64) {
	c.answer[power], c.written[power] = digits(n), true
}

// block is the calculation as it stands.
func (c *columns) block() notation.Block {
	b := notation.Block{Columns: true}
	tallest := 0
	for power := range c.top + 1 {
		tallest = max(tallest, len(c.above[power]))
	}
	for level := tallest - 1; level >= 0; level-- {
		b.Lines = append(b.Lines, c.line("", func(power int) notation.Term { return c.small(power, level) }))
	}
	b.Lines = append(b.Lines,
		c.line("", func(power int) notation.Term {
			t := c.digit(c.first, power, scene.First)
			if c.replaced[power] {
				t.Struck, t.Role = true, scene.Gone
			}
			return t
		}),
		c.line(c.sign, func(power int) notation.Term { return c.digit(c.second, power, scene.Second) }))
	if c.sign == "" {
		return b
	}
	b.Rule = len(b.Lines)
	b.Lines = append(b.Lines, c.line("", func(power int) notation.Term {
		role := scene.Result
		if c.written[power] {
			role = scene.Moved
		}
		return notation.N(c.answer[power], role)
	}))
	return b
}

func (c *columns) line(sign string, cell func(power int) notation.Term) notation.Line {
	var l notation.Line
	if c.sign != "" {
		l = append(l, notation.S(sign))
	}
	for power := c.top; power >= 0; power-- {
		l = append(l, cell(power))
	}
	return l
}

// digit is one digit of a number; what stands left of its first digit is empty.
func (c *columns) digit(number arithmetic.Counts, power int, role scene.Role) notation.Term {
	if power > number.Top() {
		return notation.Term{}
	}
	if c.touched[power] {
		role = scene.Moved
	}
	return notation.N(digits(number[power]), role)
}

// small is the digit at a level above a column, 0 the lowest.
func (c *columns) small(power, level int) notation.Term {
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
