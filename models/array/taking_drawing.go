package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
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

// draw draws the array with its product counted or not, and the lines that are
// taken there or gone.
func (a *taking) draw(s *scene.Scene, counted, taken bool) {
	rows := int(sumOf(a.rows))
	a.bands(s, rows)
	kept, gone := a.regions()
	for _, r := range kept {
		a.things(s, r, scene.Item{Role: scene.First, Of: scene.OfAnswer})
	}
	// In the parts of the number that it belongs to, until it is gone.
	less := scene.Item{Role: scene.First, Of: a.lessOf()}
	if a.take.Lines == arithmetic.FirstRows && counted {
		less.Role = scene.Second
	}
	if taken {
		less = scene.Item{Role: scene.Gone, Finish: scene.Dashed}
	}
	for _, r := range gone {
		a.things(s, r, less)
		if taken {
			a.strike(s, r)
		}
	}
	if a.look == inScale {
		a.tens(s, a.box(), scene.Always)
	}
	a.named(s, taken)
	a.counted(s, counted, taken)
}

// lessOf is the number that the lines to be taken belong to: of 20 − 3 × 4 the
// first, which they are a part of, else the last one.
func (a *taking) lessOf() scene.Of {
	if a.take.Lines == arithmetic.FirstRows {
		return scene.OfFirst
	}
	return scene.OfSecond
}

// strike draws one calm stroke through lines that are gone: along a single line,
// from corner to corner of many.
func (a *taking) strike(s *scene.Scene, r region) {
	const in = 4
	b := a.boxOf(r)
	l := scene.Line{X1: b.X + in, Y1: b.Bottom() - in, X2: b.Right() - in, Y2: b.Y + in}
	if r.rows == 1 {
		l.Y1, l.Y2 = b.Y+b.H/2, b.Y+b.H/2
	}
	if r.cols == 1 {
		l.X1, l.X2 = b.X+b.W/2, b.X+b.W/2
	}
	s.Draw(scene.Gone, scene.Bold, l)
}

// named names the sides of the array.
func (a *taking) named(s *scene.Scene, taken bool) {
	cols := caption{words: words.ArrayEach(arithmetic.Grouped(a.lay.Cols))}
	switch a.take.Lines {
	case arithmetic.LastCols:
		a.rowsBeside(s, caption{words: arithmetic.Grouped(a.lay.Rows)})
		a.aboveAll(s, cols)
		if taken {
			a.above(s, a.x[0], a.x[0]+a.w[0], scene.Middle, caption{words: arithmetic.Grouped(a.take.Kept)})
			a.above(s, a.x[1], a.x[1]+a.w[1], scene.Middle, caption{words: arithmetic.Grouped(a.take.Count)})
		}
		return
	case arithmetic.LastOnes:
		a.rowsBeside(s, caption{words: arithmetic.Grouped(a.lay.Rows)})
	case arithmetic.FirstRows:
		if a.lay.Rest == 0 && (!taken || a.outerRows) {
			a.rowsBeside(s, caption{words: arithmetic.Grouped(a.lay.Rows)})
		}
		if taken {
			a.beside(s, a.y[0], a.y[0]+a.h[0], "", caption{words: arithmetic.Grouped(a.take.Count)})
		}
	default:
		if !taken || a.outerRows {
			a.rowsBeside(s, caption{words: arithmetic.Grouped(a.lay.Rows)})
		}
		if taken {
			a.beside(s, a.y[0], a.y[0]+a.h[0], "", caption{words: arithmetic.Grouped(a.take.Kept)})
			a.beside(s, a.y[1], a.y[1]+a.h[1], "", caption{words: arithmetic.Grouped(a.take.Count)})
		}
	}
	a.aboveAll(s, cols)
}

// counted writes what was found so far: the product, and what is taken away.
func (a *taking) counted(s *scene.Scene, counted, taken bool) {
	b := a.box()
	kept, gone := a.regions()
	if taken && a.first {
		less := telling.Text(scene.Gone, 0, 0, scene.Middle, a.lessName())
		t := less.Shape.(scene.Text)
		t.Bold = true
		end := a.boxOf(gone[len(gone)-1])
		t.Anchor, t.X, t.Y = scene.Left, b.Right()+bandEdge+outside, end.Y+end.H/2
		if a.take.Lines == arithmetic.LastCols {
			t.Anchor, t.X, t.Y = scene.Centre, end.X+end.W/2, b.Bottom()+8+factsTall/2
		}
		less.Shape = telling.OnPaper(t)
		s.Add(less)
	}
	switch {
	case !counted:
	case a.take.Lines == arithmetic.FirstRows && !taken:
		end := a.boxOf(gone[0])
		a.write(s, scene.Second, b.Right()+bandEdge+outside, end.Y+end.H/2, scene.Left, scene.Small, scene.Always, a.factName())
	case a.take.Lines == arithmetic.FirstRows:
	case a.first && !taken:
		a.write(s, scene.First, b.X+b.W/2, b.Bottom()+8+factsTall/2, scene.Centre, scene.Middle, scene.Always, a.productName(arithmetic.Grouped(a.term.Total)))
	case !a.first:
		x := b.X + b.W/2
		if a.take.Lines == arithmetic.LastCols {
			first := a.boxOf(kept[0])
			// Beside a low array stand the names of its rows.
			x = max(first.X+first.W/2, b.X+scene.Advance(a.productName(arithmetic.Grouped(a.term.Total)), scene.Middle, true)/2)
		}
		a.write(s, scene.Result, x, b.Bottom()+8+factsTall/2, scene.Centre, scene.Middle, scene.ShownOnly, a.productName(arithmetic.Grouped(a.term.Total)))
		a.write(s, scene.Hidden, x, b.Bottom()+8+factsTall/2, scene.Centre, scene.Middle, scene.HiddenOnly, a.productName("?"))
	}
	if a.note() != "" {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, a.bottom()-20, scene.Small, a.note()))
	}
}

func (a *taking) productName(total string) string { return factOf(a.term.Rows, a.term.Cols, total) }

func (a *taking) write(s *scene.Scene, role scene.Role, x, y int, anchor scene.Anchor, size int, when scene.When, text string) {
	t := scene.Words(x, y, size, text)
	t.Anchor, t.Bold = anchor, true
	s.Add(scene.Item{Shape: telling.OnPaper(t), Role: role, When: when})
}

// low is where a whole story ends: the fact that came before what was taken away
// stands in the steps only.
func (a *taking) low() int {
	if a.first && (a.take.Lines == arithmetic.LastRows || a.take.Lines == arithmetic.LastOnes) && a.note() == "" {
		return a.bottom() - factsTall
	}
	return a.bottom()
}

// leaves writes, under a last step, what is left.
func (a *taking) leaves(s *scene.Scene) {
	if !a.first {
		return
	}
	y := a.bottom() + factsTall/2
	minus := func(left string) string {
		return arithmetic.Grouped(a.take.Before) + " − " + arithmetic.Grouped(a.take.Taken) + " = " + left
	}
	a.write(s, scene.Result, scene.PaperW/2, y, scene.Centre, scene.Middle, scene.ShownOnly, minus(arithmetic.Grouped(a.take.Left)))
	a.write(s, scene.Hidden, scene.PaperW/2, y, scene.Centre, scene.Middle, scene.HiddenOnly, minus("?"))
}

// bottom is where the array and what stands under it end, in a step.
func (a *taking) bottom() int {
	y := a.box().Bottom() + 16
	if a.take.Lines != arithmetic.FirstRows {
		y += factsTall
	}
	if a.note() != "" {
		y += 40
	}
	return y
}
