package frames

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// board is where the frames lie, in every picture of a lesson:
//
//	┌──┬──┬──┬──┬──┐   ┌──┬──┬──┬──┬──┐
//	│ o│ o│ o│ o│ o│   │ o│  │  │  │  │
//	├──┼──┼──┼──┼──┤   ├──┼──┼──┼──┼──┤
//	│ o│ o│ o│ o│ o│   │  │  │  │  │  │
//	└──┴──┴──┴──┴──┘   └──┴──┴──┴──┴──┘
//	       10                 1           the labels
type board struct {
	frames []scene.Box
	side   int // of a cell
	bottom int // of the labels
}

// Sizes, in units.
const (
	cols, rows = arithmetic.FrameRow, arithmetic.TenFrame / arithmetic.FrameRow
	aloneSide  = 84 // of a cell where there is one frame
	sideBySide = 68 // and where there are two beside each other
	frameGap   = scene.PaperW - 2*scene.Margin - 2*cols*sideBySide
	labelTall  = 54 // the line under a frame
	lineGap    = 10 // from the labels to the next frames
	ringEdge   = 5  // from the edge of a cell to the ring around a pair
)

// lay places so many frames, two in a line.
func lay(n int) board {
	b := board{side: sideBySide}
	if n == 1 {
		b.side = aloneSide
	}
	w, h := cols*b.side, rows*b.side
	beside := min(n, 2)
	x := scene.PaperW/2 - (beside*(w+frameGap)-frameGap)/2
	for i := range n {
		b.frames = append(b.frames, scene.Box{X: x + i%2*(w+frameGap), Y: scene.Margin + i/2*(h+labelTall+lineGap), W: w, H: h})
	}
	b.bottom = b.frames[n-1].Bottom() + labelTall
	return b
}

// at is the box of a cell; paired is the order of columns.
func (b board) at(i int, paired bool) scene.Box {
	f := b.frames[i/arithmetic.TenFrame]
	in := i % arithmetic.TenFrame
	col, row := in%cols, in/cols
	if paired {
		col, row = in/rows, in%rows
	}
	return scene.Box{X: f.X + col*b.side, Y: f.Y + row*b.side, W: b.side, H: b.side}
}

func middle(c scene.Box) (x, y int) { return c.X + c.W/2, c.Y + c.H/2 }

func (b board) radius() int { return b.side * 36 / 100 }

// finishOf tells counters apart without their colors: the second number is pale where
// the first is solid, and an answer is unlike the known number that lies first.
func finishOf(nth, first int) scene.Finish {
	if nth%2 == 0 || nth == arithmetic.Asked && first == 1 {
		return scene.Deep
	}
	return scene.Plain
}

// arrive marks a counter that has just come: it has a ring in it.
func (b board) arrive(s *scene.Scene, it scene.Item) {
	it.Role, it.Finish = scene.Moved, scene.Plain
	s.Add(it)
	disc := it.Shape.(scene.Circle)
	disc.R /= 2
	s.Add(scene.Item{Shape: disc, Role: scene.Moved, Finish: scene.Outline, When: it.When})
}

// empty draws the frames with nothing in them.
func (b board) empty(s *scene.Scene) {
	for _, f := range b.frames {
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: f.X, Y: f.Y, W: f.W, H: f.H})
		s.Draw(scene.Guide, scene.Outline, scene.Grid{X: f.X, Y: f.Y, W: f.W, H: f.H, Cols: cols, Rows: rows})
	}
}

// draw draws the frames as they lie. The counters of a result belong to the answer.
func (b board) draw(s *scene.Scene, now state, result bool) {
	b.empty(s)
	for i, c := range now.cells {
		if c.mark == free {
			continue
		}
		x, y := middle(b.at(i, now.paired))
		disc := scene.Circle{X: x, Y: y, R: b.radius()}
		it := scene.Item{Shape: disc, Role: telling.RoleOf(c.nth), Finish: finishOf(c.nth, now.cells[0].nth), Of: scene.OfAnswer, Worth: fraction.Whole(1)}
		if c.nth != arithmetic.Asked {
			it.Of = scene.OfNth(c.nth)
		}
		switch {
		case c.mark == left:
			s.Draw(scene.Gone, scene.Dashed, disc)
			continue
		case c.mark == taken:
			it.Role, it.Finish = scene.Gone, scene.Dashed
		case c.mark == moved:
			b.arrive(s, it)
			continue
		case result:
			it.Role, it.Of, it.Finish = scene.Result, scene.OfAnswer, scene.Deep
		}
		s.Add(it)
	}
	b.strike(s, now)
	if now.double != nil {
		b.double(s, *now.double)
	}
}

// strike crosses out what is taken away, one stroke for each row of a frame.
func (b board) strike(s *scene.Scene, now state) {
	for row := 0; row < len(b.frames)*rows; row++ {
		first, n := 0, 0
		for i := row * cols; i < (row+1)*cols; i++ {
			if now.cells[i].mark == taken {
				if n == 0 {
					first = i
				}
				n++
			}
		}
		if n == 0 {
			continue
		}
		x1, y := middle(b.at(first, false))
		x2, _ := middle(b.at(first+n-1, false))
		r := b.radius()
		s.Add(scene.Item{
			Shape: scene.Line{X1: x1 - r, Y1: y + r/2, X2: x2 + r, Y2: y - r/2},
			Role:  scene.Gone, Finish: scene.Bold, Of: scene.OfSecond, Worth: fraction.Whole(int64(n)),
		})
	}
}

// double marks the same number twice, or the two full rows in it.
func (b board) double(s *scene.Scene, m arithmetic.SeeDouble) {
	n := int(min(m.Each, arithmetic.FrameRow))
	second := scene.Box{X: b.frames[0].X, Y: b.frames[0].Y + b.side}
	if len(b.frames) > 1 {
		second = b.frames[1]
	}
	for _, from := range []scene.Box{b.frames[0], second} {
		s.Draw(scene.Moved, scene.Bold, scene.Rect{X: from.X + ringEdge, Y: from.Y + ringEdge, W: n*b.side - 2*ringEdge, H: b.side - 2*ringEdge, Round: b.side / 2})
	}
}

// rings draws a ring around every pair.
func (b board) rings(s *scene.Scene, pairs int64) {
	for i := range int(pairs) {
		c := b.at(rows*i, true)
		s.Draw(scene.Result, scene.Outline, scene.Rect{X: c.X + ringEdge, Y: c.Y + ringEdge, W: b.side - 2*ringEdge, H: rows*b.side - 2*ringEdge, Round: b.side / 2})
	}
}

// lonely marks the place where the last counter would have a partner.
func (b board) lonely(s *scene.Scene, pairs int64) {
	x, y := middle(b.at(rows*int(pairs)+1, true))
	s.Draw(scene.Note, scene.Dashed, scene.Circle{X: x, Y: y, R: b.radius()})
}

// label writes a line under a frame.
func (b board) label(s *scene.Scene, frame int, when scene.When, role scene.Role, line notation.Line) {
	f := b.frames[frame]
	s.Add(scene.Item{
		Shape: scene.Text{X: f.X + f.W/2, Y: f.Bottom() + labelTall/2 + 2, Size: scene.Middle, Runs: line.Runs()},
		Role:  role, When: when,
	})
}
