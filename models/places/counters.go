package places

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// laid says how counters are drawn and whose they are. Counters of no number are
// worth nothing, because worth is what a counter adds to its number.
type laid struct {
	role   scene.Role
	finish scene.Finish
	of     scene.Of
}

var (
	ofFirst  = laid{scene.First, scene.Deep, scene.OfFirst}
	ofSecond = laid{scene.Second, scene.Deep, scene.OfSecond}
	ofAnswer = laid{scene.Result, scene.Deep, scene.OfAnswer}
	traded   = laid{scene.Result, scene.Deep, scene.OfNothing} // what a trade has brought belongs to neither number
	ghost    = laid{scene.Gone, scene.Dashed, scene.OfNothing}
)

// moved is the same counters in the step in which they arrive.
func (l laid) moved() laid { return laid{scene.Moved, scene.Deep, l.of} }

// gone is the same counters in the step in which they are taken away.
func (l laid) gone() laid { return laid{scene.Gone, scene.Dashed, l.of} }

// empty is what stays to be seen of counters that were traded: whose they were.
func (l laid) empty() laid { return laid{l.role, scene.Dashed, l.of} }

// lay draws one counter of a place.
func (t *table) lay(s *scene.Scene, power int, at scene.Circle, as laid) {
	it := scene.Item{Shape: at, Role: as.role, Finish: as.finish, Of: as.of}
	if it.Finish == scene.Dashed && t.r < smallest {
		it.Finish = scene.Fine // a dash would be as long as a side
	}
	if as.of != scene.OfNothing {
		it.Worth = fraction.Must(arithmetic.Power10(power), arithmetic.Power10(t.places))
	}
	s.Add(it)
}

// layPlace draws the counters of a place from slot from up to slot to.
func (t *table) layPlace(s *scene.Scene, power, band int, from, to int64, as laid) {
	for i := from; i < to; i++ {
		t.lay(s, power, t.slot(power, band, int(i)), as)
	}
}

// layAll draws all counters of a number.
func (t *table) layAll(s *scene.Scene, band int, counts arithmetic.Counts, as laid) {
	for power := t.top; power >= 0; power-- {
		t.layPlace(s, power, band, 0, counts[power], as)
	}
}

// strike draws one stroke through each line of the given counters, which stand in
// order. A stroke that belongs to a number is worth what it strikes.
func (t *table) strike(s *scene.Scene, power int, list []scene.Circle, of scene.Of) {
	const over = 4
	for len(list) > 0 {
		n := 1
		for n < len(list) && t.inLine(list[0], list[n]) {
			n++
		}
		a, b, reach := list[0], list[n-1], t.r+over
		it := scene.Item{Shape: scene.Line{X1: a.X, Y1: a.Y - reach, X2: b.X, Y2: b.Y + reach}, Role: scene.Gone, Finish: scene.Bold, Of: of}
		if t.wide {
			it.Shape = scene.Line{X1: a.X - reach, Y1: a.Y, X2: b.X + reach, Y2: b.Y}
		}
		if of != scene.OfNothing {
			it.Worth = fraction.Whole(int64(n) * arithmetic.Power10(power))
		}
		s.Add(it)
		list = list[n:]
	}
}

// inLine reports whether two counters stand in one line of five.
func (t *table) inLine(a, b scene.Circle) bool {
	if t.wide {
		return a.Y == b.Y
	}
	return a.X == b.X && max(a.Y-b.Y, b.Y-a.Y) < fives*t.step
}

// around is a line round counters.
func (t *table) around(list []scene.Circle) scene.Rect {
	const air, round = 5, 10
	b := list[0].Box()
	for _, c := range list {
		d := c.Box()
		x, y := min(b.X, d.X), min(b.Y, d.Y)
		b = scene.Box{X: x, Y: y, W: max(b.Right(), d.Right()) - x, H: max(b.Bottom(), d.Bottom()) - y}
	}
	return scene.Rect{X: b.X - air, Y: b.Y - air, W: b.W + 2*air, H: b.H + 2*air, Round: round}
}

// light draws a heavy line round the column of a place.
func (t *table) light(s *scene.Scene, power int, role scene.Role) { t.lightFrom(s, power, power, role) }

// head is the length of an arrow's head, and half of it the half of its width.
const head = 12

// arrow leads from the left edge of one thing to a counter in the column on its
// left, round what lies between them.
func (t *table) arrow(s *scene.Scene, from scene.Box, to scene.Circle, power int) {
	tip := scene.Point{X: to.X + to.R + 4, Y: to.Y}
	start := scene.Point{X: from.X, Y: min(max(tip.Y, from.Y+head), from.Bottom()-head)}
	bend := t.columns[power].X - t.gap(power+1)/2
	line := scene.Polyline{start, {X: tip.X + head, Y: tip.Y}}
	if start.Y != tip.Y {
		line = scene.Polyline{start, {X: bend, Y: start.Y}, {X: bend, Y: tip.Y}, {X: tip.X + head, Y: tip.Y}}
	}
	s.Draw(scene.Moved, scene.Plain, line)
	s.Draw(scene.Moved, scene.Deep, scene.Polygon{tip, {X: tip.X + head, Y: tip.Y - head/2}, {X: tip.X + head, Y: tip.Y + head/2}})
}

// slant draws a straight arrow.
func (t *table) slant(s *scene.Scene, from, to scene.Point) {
	dx, dy := to.X-from.X, to.Y-from.Y
	long := root(dx*dx + dy*dy)
	along := func(n, d int) int { return n * d / long } // so far in the direction of the arrow
	base := scene.Point{X: to.X - along(head, dx), Y: to.Y - along(head, dy)}
	s.Draw(scene.Moved, scene.Plain, scene.Line{X1: from.X, Y1: from.Y, X2: base.X, Y2: base.Y})
	s.Draw(scene.Moved, scene.Deep, scene.Polygon{to,
		{X: base.X - along(head/2, dy), Y: base.Y + along(head/2, dx)},
		{X: base.X + along(head/2, dy), Y: base.Y - along(head/2, dx)}})
}

// root is the whole number whose square comes nearest to n from below, at least 1.
func root(n int) int {
	r := 1
	for (r+1)*(r+1) <= n {
		r++
	}
	return r
}

// lightFrom draws a heavy line round the columns from one place down to another,
// its corners cut as those of a column are round.
func (t *table) lightFrom(s *scene.Scene, from, to int, role scene.Role) {
	const cut = 4
	c := t.columns[from]
	l, u, r, b := c.X, c.Y, t.columns[to].Right(), c.Bottom()
	s.Draw(role, scene.Bold, scene.Polygon{
		{X: l + cut, Y: u}, {X: r - cut, Y: u}, {X: r, Y: u + cut}, {X: r, Y: b - cut},
		{X: r - cut, Y: b}, {X: l + cut, Y: b}, {X: l, Y: b - cut}, {X: l, Y: u + cut},
	})
}

// write puts a line in a row under a column.
func (t *table) write(s *scene.Scene, power, row int, line notation.Line) {
	s.Add(scene.Item{Shape: scene.Text{X: t.middle(power), Y: t.row(row), Size: scene.Middle, Runs: line.Runs()}})
}

// writeAll puts the digits of a number in a row under the table.
func (t *table) writeAll(s *scene.Scene, row int, counts arithmetic.Counts, role scene.Role) {
	for power := counts.Top(); power >= 0; power-- {
		t.write(s, power, row, digit(counts[power], role))
	}
}

// writeUnder puts the digits of a number under its band, inside the columns.
func (t *table) writeUnder(s *scene.Scene, band int, counts arithmetic.Counts, role scene.Role) {
	y := t.bands[band].Bottom() + digitH/2
	for power := counts.Top(); power >= 0; power-- {
		s.Add(scene.Item{Shape: scene.Text{X: t.middle(power), Y: y, Size: scene.Middle, Runs: digit(counts[power], role).Runs()}})
	}
}

// sign puts a sign left of a row under the table.
func (t *table) sign(s *scene.Scene, row int, sign string) {
	s.Add(telling.Text(scene.Ink, t.left+signWidth/2-3, t.row(row), scene.Middle, sign))
}

// rule draws the line over a result, above a row under the table.
func (t *table) rule(s *scene.Scene, row int) {
	y := t.row(row) - rowStep/2
	s.Draw(scene.Ink, scene.Plain, scene.Line{X1: t.left, Y1: y, X2: t.columns[0].Right(), Y2: y})
}

func digit(n int64, role scene.Role) notation.Line {
	return notation.Line{notation.N(telling.Digits(n), role)}
}

// number is a number with its commas.
func number(n int64, role scene.Role) notation.Line { return notation.Line{telling.Count(n, role)} }
