package cubes

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// bench is where the trains lie, in rows under each other:
//
//	┌─┬─┬─┬─┬─┬─┬─┬─┬─┬─┐┐
//	└─┴─┴─┴─┴─┴─┴─┴─┴─┴─┘┘  10
//	┌─┬─┬─┬─┐┐
//	└─┴─┴─┴─┘┘              14    their labels
//
// The peg at the right end of a train is where the next cube snaps on.
type bench struct {
	x, y  int // the left upper corner of the first train
	side  int // of a cube
	pitch int // from a train to the next
}

// Sizes, in units.
const (
	inner     = scene.PaperW - 2*scene.Margin
	largest   = 60 // the side of a cube
	pegWide   = 8
	trainGap  = 14
	labelGap  = 18 // from a peg to a label
	labelRoom = 96 // for the label of a train
	labelTall = 50 // for a line of labels
)

// column is a bench for so many trains, the longest of so many cubes, with labels at
// their right.
func column(trains, longest int64) bench {
	b := bench{y: scene.Margin, side: largest}
	switch {
	case trains > 6:
		b.side = 36
	case trains > 1:
		b.side = 46
	}
	b.pitch = b.side + trainGap
	b.x = scene.PaperW/2 - (int(longest)*b.side+labelRoom)/2
	return b
}

// bottom is where so many trains end.
func (b bench) bottom(trains int64) int { return b.y + max(1, int(trains))*b.pitch - trainGap }

func (b bench) top(row int64) int   { return b.y + int(row)*b.pitch }
func (b bench) left(cube int64) int { return b.x + int(cube)*b.side }
func (b bench) box(row, n int64) scene.Box {
	return scene.Box{X: b.x, Y: b.top(row), W: int(n) * b.side, H: b.side}
}

// cubes draws a piece of a train: n cubes from one on.
func (b bench) cubes(s *scene.Scene, row, from, n int64, it scene.Item) {
	if n == 0 {
		return
	}
	it.Shape = scene.Grid{X: b.left(from), Y: b.top(row), W: int(n) * b.side, H: b.side, Cols: int(n), Rows: 1}
	if it.Of != scene.OfNothing {
		it.Worth = fraction.Whole(n)
	}
	s.Add(it)
}

// peg draws the end of a train after so many cubes.
func (b bench) peg(s *scene.Scene, row, after int64) {
	if after == 0 {
		return
	}
	x, y, third := b.left(after), b.top(row), b.side/3
	s.Draw(scene.Ink, scene.Plain, scene.Polygon{{X: x, Y: y + third}, {X: x + pegWide, Y: y + third}, {X: x + pegWide, Y: y + b.side - third}, {X: x, Y: y + b.side - third}})
}

// train draws a train with its peg.
func (b bench) train(s *scene.Scene, row, n int64, it scene.Item) {
	b.cubes(s, row, 0, n, it)
	b.peg(s, row, n)
}

// number draws all the trains of a number.
func (b bench) number(s *scene.Scene, m arithmetic.LayTrains, it scene.Item) {
	for row := range m.Tens {
		b.train(s, row, arithmetic.CubeTrain, it)
	}
	b.train(s, m.Tens, m.Ones, it)
}

// ghost draws cubes that are taken away, with one stroke through them.
func (b bench) ghost(s *scene.Scene, row, from, n int64) {
	if n == 0 {
		return
	}
	b.cubes(s, row, from, n, scene.Item{Role: scene.Gone, Finish: scene.Dashed, Of: scene.OfFirst})
	in, y := b.side/5, b.top(row)+b.side/2
	s.Add(scene.Item{
		Shape: scene.Line{X1: b.left(from) + in, Y1: y + b.side/5, X2: b.left(from+n) - in, Y2: y - b.side/5},
		Role:  scene.Gone, Finish: scene.Bold, Of: scene.OfSecond, Worth: fraction.Whole(n),
	})
}

// label writes a line at the right of a row, after so many cubes.
func (b bench) label(s *scene.Scene, row, after int64, role scene.Role, line notation.Line) {
	s.Add(scene.Item{
		Shape: scene.Text{X: b.left(after) + pegWide + labelGap, Y: b.top(row) + b.side/2, Anchor: scene.Left, Size: scene.Middle, Runs: line.Runs()},
		Role:  role,
	})
}

func itemOf(nth int) scene.Item { return scene.Item{Role: telling.RoleOf(nth), Of: scene.OfNth(nth)} }

func arrived(it scene.Item) scene.Item {
	it.Role = scene.Moved
	return it
}

var ofAnswer = scene.Item{Role: scene.Result, Of: scene.OfAnswer}

func count(n int64, role scene.Role) notation.Line { return notation.Line{telling.Count(n, role)} }
