package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// region is a stretch of full lines: its first row and column, and how many of
// each, all from 0.
type region struct{ row, col, rows, cols int }

// regions are what stays and what is taken away.
func (a *taking) regions() (kept, gone []region) {
	m, cols := a.take, int(a.lay.Cols)
	count, keep, rows := int(m.Count), int(m.Kept), int(a.lay.Rows)
	add := func(list []region, r region) []region {
		if r.rows > 0 && r.cols > 0 {
			return append(list, r)
		}
		return list
	}
	switch m.Lines {
	case arithmetic.FirstRows:
		gone = add(gone, region{0, 0, count, cols})
		kept = add(kept, region{count, 0, keep, cols})
		kept = add(kept, region{rows, 0, 1, int(a.lay.Rest)})
	case arithmetic.LastRows:
		kept = add(kept, region{0, 0, keep, cols})
		gone = add(gone, region{keep, 0, count, cols})
	case arithmetic.LastCols:
		kept = add(kept, region{0, 0, rows, keep})
		gone = add(gone, region{0, keep, rows, count})
	default: // single ones, from the end back
		ones := int(m.Each)
		full, some := ones/cols, ones%cols
		cut := rows - full
		if some > 0 {
			cut--
			kept = add(kept, region{cut, 0, 1, cols - some})
			gone = add(gone, region{cut, cols - some, 1, some})
		}
		kept = add(kept, region{0, 0, cut, cols})
		gone = add(gone, region{rows - full, 0, full, cols})
	}
	return kept, gone
}

// at is the left top corner of a place, counted in rows and columns from 0.
func (p *plot) at(row, col int) scene.Point {
	pt := scene.Point{}
	for j, c := range p.cols {
		if col < int(c) || j == len(p.cols)-1 {
			pt.X = p.x[j] + col*p.step
			break
		}
		col -= int(c)
	}
	for i, r := range p.rows {
		if row < int(r) || i == len(p.rows)-1 {
			pt.Y = p.y[i] + row*p.rise
			break
		}
		row -= int(r)
	}
	return pt
}

// boxOf is the room of a region, which lies within one part.
func (p *plot) boxOf(r region) scene.Box {
	from := p.at(r.row, r.col)
	if p.look == inSketch { // a bar for each row, as many units long as it holds, or a multiple
		cols, wide := int(sumOf(p.cols)), p.width()
		x := p.x[0] + r.col*wide/cols
		return scene.Box{X: x, Y: from.Y, W: r.cols * wide / cols, H: r.rows * p.rise}
	}
	return scene.Box{X: from.X, Y: from.Y, W: r.cols * p.step, H: r.rows * p.rise}
}

// things draws what lies in a region; it says role, finish and number.
func (p *plot) things(s *scene.Scene, r region, it scene.Item) {
	b := p.boxOf(r)
	switch p.look {
	case inCounters:
		if it.Of != scene.OfNothing {
			it.Worth = fraction.Whole(1)
		}
		for y := range r.rows {
			for x := range r.cols {
				c := it
				c.Shape = scene.Circle{X: b.X + x*p.step + p.step/2, Y: b.Y + y*p.rise + p.rise/2, R: p.size / 2}
				if c.Finish == scene.Plain && c.Role != scene.Moved {
					c.Finish = scene.Deep
				}
				s.Add(c)
			}
		}
		return
	case inSquares:
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: r.cols, Rows: r.rows}
	case inSketch:
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: 1, Rows: r.rows}
	default:
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: 1, Rows: 1}
	}
	if it.Finish == scene.Dashed {
		it.Shape = scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H}
	}
	if it.Of != scene.OfNothing {
		it.Worth = fraction.Whole(int64(r.rows * r.cols))
	}
	s.Add(it)
}
