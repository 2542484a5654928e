package telling

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// Raise writes a trade as an equal addition: ten more for the digit of a place in
// the first number, and one more for the digit of the next place in the second. The
// difference stays as it is, and so does the order of the trades (taught in parts
// of Europe; from memory).
//
//	      +10 +10
//	   4    0   2
//	−  1    7   8
//	  +1   +1
//	-------------
//	   2    2   4
func (c *Columns) Raise(power int) {
	c.raised[power], c.fresh[power] = true, true
}

// Raised reports whether there is an equal addition: without one, all write alike.
func (c *Columns) Raised() bool { return c.raised != [arithmetic.PlaceNames]bool{} }

// Europe is the calculation as it stands, with equal additions in place of what
// was struck. It is the same as [Columns.Block] where there are none.
func (c *Columns) Europe() notation.Block {
	if !c.Raised() {
		plain := *c
		plain.above, plain.replaced = [arithmetic.PlaceNames][]string{}, [arithmetic.PlaceNames]bool{}
		return plain.Block()
	}
	more := func(text string, from int) func(power int) notation.Term {
		return func(power int) notation.Term {
			added := power - from // the place whose trade it is
			if added < 0 || !c.raised[added] {
				return notation.Term{}
			}
			t := notation.Term{Text: text, Small: true, Role: scene.First}
			if from == 1 {
				t.Role = scene.Second
			}
			if c.fresh[added] || c.touched[power] {
				t.Role = scene.Moved
			}
			return t
		}
	}
	b := notation.Block{Columns: true, Lines: []notation.Line{
		c.line("", more("+10", 0)),
		c.line("", func(power int) notation.Term { return c.digit(c.First, power, scene.First) }),
		c.line(c.Sign, func(power int) notation.Term { return c.digit(c.Second, power, scene.Second) }),
		c.line("", more("+1", 1)),
	}}
	b.Rule = len(b.Lines)
	b.Lines = append(b.Lines, c.line("", c.answered))
	return b
}
