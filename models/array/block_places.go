package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// Equal blocks of rows on the paper, in one line or more:
//
//	           2
//	        ┌─────┐
//	     ┌ ┌───────┐  ┌───────┐  ┌───────┐
//	     │ │  o o  │  │  o o  │  │  o o  │
//	5    │ │  o o  │  │  o o  │  │  o o  │
//	     │ │  o o  │  │  o o  │  │  o o  │
//	     └ └───────┘  └───────┘  └───────┘
//
// Where single counters are too many, the blocks are squared paper, and then
// rectangles that are not to scale.
type blockPlaces struct {
	arithmetic.Blocks
	look          look
	size, step    int // of a counter or square, and from one to the next along a row
	rise          int // and from row to row: more, so that rows read as rows
	perLine       int // blocks beside each other
	wide, tall    int // of a block without its surface
	left, top     int // of the first block
	right, bottom int // of all of them, with their surfaces
	role          scene.Role
	of            scene.Of
}

const (
	blockEdge  = 10 // from the things to the edge of the surface under them
	blockApart = 14 // between two surfaces
	blockTop   = 64 // for the length of a row over it
	blockFoot  = 56 // for the number of blocks under them all
	rowRise    = 6  // between two rows of counters
)

// laidIn places blocks in an area, with the largest counters that fit, else as
// squared paper, else as a sketch.
func (p *blockPlaces) laidIn(area scene.Box, largest int) {
	const least, leastSquare, mostCounters = 18, 6, 240
	avail, high := area.W-p.rowsRoom(), area.H-blockTop-blockFoot
	best := 0
	for k := int(p.Blocks.Blocks); k >= 1; k-- {
		lines := (int(p.Blocks.Blocks) + k - 1) / k
		w := (avail-blockApart*(k-1))/k - 2*blockEdge
		h := (high-blockApart*(lines-1))/lines - 2*blockEdge
		if p.Rows > 200 || p.Cols > 200 {
			break
		}
		if step := min(w/int(p.Cols), h/int(p.Rows)-rowRise); step > best {
			best, p.perLine = step, k
		}
	}
	count := p.Blocks.Blocks * p.Rows * p.Cols
	gap := max(6, best/6)
	switch size := min(best-gap, largest) &^ 1; {
	case size >= least && count <= mostCounters:
		p.look, p.size, p.step = inCounters, size, size+max(6, size/6)
		p.rise = p.step + rowRise
	case best >= leastSquare:
		p.look, p.step = inSquares, min(best, 28)
		p.rise = p.step
	default:
		p.sketch(avail, high)
		p.put(area)
		return
	}
	p.wide, p.tall = int(p.Cols)*p.step, int(p.Rows)*p.rise
	p.put(area)
}

// rowsRoom is the room for the number of rows beside the first block.
func (p *blockPlaces) rowsRoom() int {
	wide := max(scene.Advance(rowsName, scene.Small, false), scene.Advance(arithmetic.Grouped(p.Rows), scene.Middle, true))
	return wide + toName + braceDeep + toBrace
}

// sketch makes blocks of one size, whatever they hold.
func (p *blockPlaces) sketch(avail, high int) {
	const most, tall = 6, 110
	p.look, p.perLine = inSketch, min(most, int(p.Blocks.Blocks))
	lines := (int(p.Blocks.Blocks) + p.perLine - 1) / p.perLine
	p.wide = min(200, (avail-blockApart*(p.perLine-1))/p.perLine-2*blockEdge)
	p.tall = min(tall, (high-blockApart*(lines-1))/lines-2*blockEdge)
}

// put centres the blocks in the width of their area.
func (p *blockPlaces) put(area scene.Box) {
	lines := (int(p.Blocks.Blocks) + p.perLine - 1) / p.perLine
	w := p.perLine*(p.wide+2*blockEdge) + (p.perLine-1)*blockApart
	p.left = area.X + p.rowsRoom() + (area.W-p.rowsRoom()-w)/2
	if middle := area.X + (area.W-w)/2; middle >= area.X+p.rowsRoom() {
		p.left = middle
	}
	p.top = area.Y + blockTop
	p.right, p.bottom = p.left+w, p.top+lines*(p.tall+2*blockEdge)+(lines-1)*blockApart
}

// block is the surface of the k-th block, from 0.
func (p *blockPlaces) block(k int) scene.Box {
	w, h := p.wide+2*blockEdge, p.tall+2*blockEdge
	return scene.Box{X: p.left + k%p.perLine*(w+blockApart), Y: p.top + k/p.perLine*(h+blockApart), W: w, H: h}
}

// lit says which things of the blocks are marked as counted just now.
type lit func(block, row, col int) bool

// litBy marks what is counted when two factors are multiplied first: a thing in
// every row, all of one block, or one row of every block.
func litBy(pair arithmetic.Pair) lit {
	switch pair {
	case arithmetic.RowsInAll:
		return func(_, _, col int) bool { return col == 0 }
	case arithmetic.InABlock:
		return func(block, _, _ int) bool { return block == 0 }
	}
	return func(_, row, _ int) bool { return row == 0 }
}

func noneLit(int, int, int) bool { return false }

// draw draws the blocks, and names the sides of the first one.
func (p *blockPlaces) draw(s *scene.Scene, mark lit) {
	for k := range int(p.Blocks.Blocks) {
		b := p.block(k)
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H, Round: 12})
	}
	for k := range int(p.Blocks.Blocks) {
		b := p.block(k)
		x, y := b.X+blockEdge, b.Y+blockEdge
		switch p.look {
		case inCounters:
			for r := range int(p.Rows) {
				for c := range int(p.Cols) {
					it := scene.Item{Role: p.role, Of: p.of, Finish: scene.Deep}
					if mark(k, r, c) {
						it.Role, it.Finish = scene.Moved, scene.Plain
					}
					it.Shape = scene.Circle{X: x + c*p.step + p.step/2, Y: y + r*p.rise + p.rise/2, R: p.size / 2}
					s.Add(worth(it, 1))
				}
			}
		case inSquares:
			p.squares(s, k, x, y, mark)
		default:
			it := scene.Item{Role: p.role, Of: p.of, Shape: scene.Rect{X: x, Y: y, W: p.wide, H: p.tall}}
			if mark(k, 1, 1) {
				it.Role = scene.Moved
			}
			s.Add(worth(it, p.Rows*p.Cols))
		}
	}
	b := p.block(0)
	names := plot{x: []int{b.X + blockEdge}, w: []int{p.wide}, y: []int{b.Y + blockEdge}, h: []int{p.tall}}
	names.beside(s, b.Y+blockEdge, b.Y+blockEdge+p.tall, rowsName, caption{words: arithmetic.Grouped(p.Rows)})
	names.above(s, b.X+blockEdge, b.X+blockEdge+p.wide, scene.Middle, caption{words: arithmetic.Grouped(p.Cols)})
	p.count(s)
}

// count names the number of blocks, with a bracket under them all.
func (p *blockPlaces) count(s *scene.Scene) {
	y := p.bottom + 6
	s.Draw(scene.Note, scene.Fine, scene.Polyline{{X: p.left + 2, Y: y}, {X: p.left + 2, Y: y + braceDeep}, {X: p.right - 2, Y: y + braceDeep}, {X: p.right - 2, Y: y}})
	s.Add(telling.Text(scene.Ink, (p.left+p.right)/2, y+braceDeep+20, scene.Small, words.ArrayBlockCount(p.Blocks.Blocks)))
}

// squares draws one block of squared paper, the part that is marked apart.
func (p *blockPlaces) squares(s *scene.Scene, k, x, y int, mark lit) {
	grid := func(row, col, rows, cols int, role scene.Role) {
		if rows > 0 && cols > 0 {
			it := scene.Item{Role: role, Of: p.of, Shape: scene.Grid{X: x + col*p.step, Y: y + row*p.step, W: cols * p.step, H: rows * p.step, Cols: cols, Rows: rows}}
			s.Add(worth(it, int64(rows*cols)))
		}
	}
	rows, cols := int(p.Rows), int(p.Cols)
	first, last := mark(k, 0, 0), mark(k, rows-1, cols-1)
	switch {
	case !first || last:
		role := p.role
		if first {
			role = scene.Moved
		}
		grid(0, 0, rows, cols, role)
	case mark(k, rows-1, 0): // the first column
		grid(0, 1, rows, cols-1, p.role)
		grid(0, 0, rows, 1, scene.Moved)
		s.Draw(scene.Moved, scene.Bold, scene.Rect{X: x, Y: y, W: p.step, H: rows * p.step})
	default: // the first row
		grid(1, 0, rows-1, cols, p.role)
		grid(0, 0, 1, cols, scene.Moved)
		s.Draw(scene.Moved, scene.Bold, scene.Rect{X: x, Y: y, W: cols * p.step, H: p.step})
	}
}

// note is what the picture says of its scale.
func (p *blockPlaces) note(s *scene.Scene, y int) {
	if p.look == inSketch {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, y, scene.Small, words.ArrayNotToScale))
	}
}
