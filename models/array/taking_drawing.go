package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

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
