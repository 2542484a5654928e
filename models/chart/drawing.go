package chart

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

// The chart, and the place of 0 before 1 where it is needed:
//
//	                                      +----+
//	                                      |  0 |
//	+----+----+----+----+----+----+----+----+----+----+
//	|  1 |  2 |  3 | ...                          | 10 |
//	+----+----+----+                              +----+
//	| 11 | 12 | ...                               | 20 |
const (
	side  = 10
	cellW = 73
	cellH = 60
	left  = (scene.PaperW - side*cellW) / 2
)

// board is a hundred chart while it is told. What lies under the numbers, the
// numbers themselves and what lies over them are kept apart, since they are painted
// in this order.
type board struct {
	top         int // of the row that begins with 1
	under, over telling.Story
	bold        [arithmetic.OnChart + 1]int // the step from which a number is bold, or 0
	veiled      [arithmetic.OnChart + 1]bool
	crossed     [arithmetic.OnChart + 1]int // the step, from 1, in which a number is crossed out, or 0
	open        int64                       // the number of which it is asked whether it is crossed out, or 0
}

// lay places a chart, with a place for 0 where it is asked for.
func lay(zero bool) *board {
	b := &board{top: scene.Margin}
	if zero {
		b.top += cellH
		b.under.Add(0, scene.Item{Shape: corners(b.box(0), 0), Role: scene.Guide, Finish: scene.Fine})
	}
	return b
}

func (b *board) bottom() int { return b.top + side*cellH }

// box is the cell of a number from 0 to 100.
func (b *board) box(n int64) scene.Box {
	at := int(n) + side - 1 // counted from the row before the first
	return scene.Box{X: left + at%side*cellW, Y: b.top + (at/side-1)*cellH, W: cellW, H: cellH}
}

func middle(c scene.Box) (x, y int) { return c.X + c.W/2, c.Y + c.H/2 }

// corners is the outline of a cell, so far inside it.
func corners(c scene.Box, in int) scene.Polygon {
	return scene.Polygon{{X: c.X + in, Y: c.Y + in}, {X: c.Right() - in, Y: c.Y + in}, {X: c.Right() - in, Y: c.Bottom() - in}, {X: c.X + in, Y: c.Bottom() - in}}
}

// tile lights the cell of a number. It is a polygon, so that no lines are drawn under
// the number where there is no color.
func (b *board) tile(n int64, role scene.Role, of scene.Of, worth int64) scene.Item {
	const in = 4
	return scene.Item{Shape: corners(b.box(n), in), Role: role, Of: of, Worth: fraction.Whole(worth)}
}

// frame is a heavy outline around the cell of a number.
func (b *board) frame(n int64, role scene.Role) scene.Item {
	return scene.Item{Shape: corners(b.box(n), 2), Role: role, Finish: scene.Bold}
}

// light lights a number in a step, as new in that step and at home from the next one
// on. Where it is part of what is asked, it is not lit while the answer is hidden: in
// no picture when it is veiled, and else not in the whole story.
func (b *board) light(step int, n int64, role scene.Role, of scene.Of, worth int64, veiled bool) {
	at, home := b.tile(n, scene.Moved, of, worth), b.tile(n, role, of, worth)
	shown := home
	shown.When = scene.ShownOnly
	if veiled {
		at.When, home.When = scene.ShownOnly, scene.ShownOnly
	}
	if step == 0 {
		b.under.Add(0, home) // it is given
	} else {
		b.under.Until(step, step+1, at)
		b.under.Only(step+1, home)
		b.under.Finally(shown)
	}
	b.bold[n], b.veiled[n] = step+1, veiled || step > 0
}

// number is a number of the chart.
func (b *board) number(n int64, bold bool) scene.Item {
	x, y := middle(b.box(n))
	text := scene.Words(x, y, scene.Small, strconv.FormatInt(n, 10))
	text.Bold = bold
	return scene.Item{Shape: text, Role: scene.Ink}
}

// story puts the layers on one another.
func (b *board) story(zero bool) *telling.Story {
	var s telling.Story
	s.Join(&b.under)
	s.Add(0, scene.Item{Shape: scene.Grid{X: left, Y: b.top, W: side * cellW, H: side * cellH, Cols: side, Rows: side}, Role: scene.Guide, Finish: scene.Fine})
	first := int64(1)
	if zero {
		first = 0
	}
	for n := first; n <= arithmetic.OnChart; n++ {
		b.write(&s, n)
	}
	s.Join(&b.over)
	return &s
}

// write writes a number, bold from the step on in which it is lit, or crossed out.
func (b *board) write(s *telling.Story, n int64) {
	plain, marked := b.number(n, false), b.number(n, true)
	from := b.bold[n] - 1
	switch {
	case b.crossed[n] > 0 || b.open > 0 && n == b.open:
		b.writeCrossed(s, n)
	case from < 0:
		s.Add(0, plain)
	case !b.veiled[n]:
		before(s, from, plain)
		s.Add(from, marked)
	default:
		before(s, from, plain)
		plain.When, marked.When = scene.HiddenOnly, scene.ShownOnly
		s.Add(from, plain, marked)
	}
}

// before draws an item in the steps before another one takes its place.
func before(s *telling.Story, step int, it scene.Item) {
	if step > 0 {
		s.Until(0, step, it)
	}
}

// writeCrossed writes a number of a sieve. While the answer is hidden, the whole story
// has nothing crossed out, and the steps do not show what becomes of the number that
// is asked about.
func (b *board) writeCrossed(s *telling.Story, n int64) {
	plain := b.number(n, false)
	text := plain.Shape.(scene.Text)
	text.Runs = []scene.Run{{Text: text.Runs[0].Text, Struck: true}}
	struck := scene.Item{Shape: text, Role: scene.Note}
	posed, asked := plain, plain
	posed.When = scene.HiddenOnly
	if b.crossed[n] == 0 {
		struck, b.crossed[n] = plain, 1 // it stays
	}
	from := b.crossed[n] - 1
	before(s, from, plain)
	if n == b.open {
		x, y := middle(b.box(n))
		asked = telling.Question(x, y)
		struck.When = scene.ShownOnly
		s.Only(from, asked)
	}
	s.Only(from, struck)
	struck.When = scene.ShownOnly
	s.Finally(struck, posed)
}
