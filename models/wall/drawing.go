package wall

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// wall says where the rows of a lesson lie. All begin at the same left edge, and a
// unit is so small that all parts of all rows are made of them.
//
//	     |<--------- 1 whole --------->|
//	     +-----------------------------+
//	     |              1              |
//	     +--------------+--------------+
//	1    |//////////////|              |
//	-    |//////////////|     1/2      |
//	2    +---------+----+----+---------+
//	     |         |    |    |   1/3   |
//	     +------+--+----+----+--+------+
//	2/4  |//////|///////|       |  1/4 |
//	     +------+-------+-------+------+
type wall struct {
	arithmetic.Wall
	left, unit int
}

const (
	top  = scene.Margin + 48 // of the first row, under the mark of the whole
	tall = 66                // of a row: a fraction stands in it
)

// lay puts the wall, with room for names at its left, in the middle of the paper.
func lay(rows arithmetic.Wall) wall {
	const (
		names = 64 // room for a fraction of two digits and a gap
		paper = scene.PaperW - 2*scene.Margin
	)
	w := wall{Wall: rows, unit: room / int(rows.Units)}
	w.left = scene.Margin + names + (paper-names-w.length())/2
	return w
}

func (w wall) length() int { return w.unit * int(w.Units) }
func (w wall) bottom() int { return top + tall*len(w.Rows) }

// part is how wide one of den parts of a whole is.
func (w wall) part(den int64) int { return w.length() / int(den) }

// end is where an amount ends.
func (w wall) end(f fraction.Fraction) int { return w.left + w.part(f.Den())*int(f.Num()) }

// y is the upper edge of the row of so many parts.
func (w wall) y(den int64) int {
	for i, row := range w.Rows {
		if row == den {
			return top + i*tall
		}
	}
	panic("wall: there is no row of " + strconv.FormatInt(den, 10) + " parts")
}

// rows draws all rows, with the name of one part in each. Until names are lit, the
// line at the end of an amount must not run through those names.
func (w wall) rows(st *telling.Story, line fraction.Fraction) {
	w.wholeMark(st)
	for _, den := range w.Rows {
		g := scene.Grid{X: w.left, Y: w.y(den), W: w.length(), H: tall, Cols: int(den), Rows: 1}
		st.Add(0, scene.Item{Shape: g, Role: scene.Guide, Finish: scene.Outline})
		st.Add(0, scene.Item{Shape: scene.Rect{X: g.X, Y: g.Y, W: g.W, H: g.H}, Finish: scene.Bold})
		w.partName(st, den, line)
	}
}

// partName writes in a row what each of its parts is: in the last part, or in the
// first where the line runs through the last.
func (w wall) partName(st *telling.Story, den int64, line fraction.Fraction) {
	const air = 8 // beside the name
	name := scene.Text{Size: scene.Small, Runs: []scene.Run{{Num: "1", Den: strconv.FormatInt(den, 10)}}}
	if den == 1 {
		name.Runs = []scene.Run{{Text: "1"}}
	}
	right := w.left + w.length()
	from, to, cut := right-w.part(den), right, w.end(line)
	switch inside := from < cut && cut < to; {
	case inside && den > 1:
		from, to = w.left, w.left+w.part(den)
	case inside && cut-from > to-cut:
		to = cut
	case inside:
		from = cut
	}
	if name.Width()+air > to-from {
		return
	}
	name.X, name.Y = (from+to)/2, w.y(den)+tall/2
	it := scene.Item{Shape: name, Role: scene.Note}
	if line.Equal(fraction.Must(1, den)) {
		it.When = scene.ShownOnly // it may be the name that is asked for
	}
	st.Add(0, it)
}

// wholeMark says above the wall how long one whole is.
func (w wall) wholeMark(st *telling.Story) {
	const (
		y    = scene.Margin + 18 // middle of the words
		tick = 12                // half the height of the end marks
		gap  = 10                // between the words and the line
	)
	x1, x2 := w.left, w.left+w.length()
	label := telling.Text(scene.Note, (x1+x2)/2, y, scene.Small, words.BarWhole)
	box := label.Shape.Box()
	st.Add(0, label)
	for _, l := range []scene.Line{{X1: x1, Y1: y - tick, X2: x1, Y2: y + tick}, {X1: x2, Y1: y - tick, X2: x2, Y2: y + tick},
		{X1: x1, Y1: y, X2: box.X - gap, Y2: y}, {X1: box.Right() + gap, Y1: y, X2: x2, Y2: y}} {
		st.Add(0, scene.Item{Shape: l, Role: scene.Note, Finish: scene.Fine})
	}
}

// shade shades the parts of a number in the row of its parts from a step on, and
// writes its name at the left.
func (w wall) shade(st *telling.Story, step int, n arithmetic.Number, role scene.Role, of scene.Of, when scene.When) {
	f := n.Value
	wide, y := w.part(f.Den()), w.y(f.Den())
	for i := range int(f.Num()) {
		part := scene.Item{Shape: scene.Rect{X: w.left + i*wide, Y: y, W: wide, H: tall}, Role: role, Of: of, Worth: fraction.Must(1, f.Den()), When: when}
		w.arrive(st, step, part)
	}
	w.arrive(st, step, scene.Item{Shape: scene.Rect{X: w.left, Y: y, W: w.length(), H: tall}, Finish: scene.Bold, When: when})
	w.beside(st, step, n.Value.Den(), scene.Item{Shape: scene.Text{Runs: telling.Numeral(n, role).Runs()}, Role: role, When: when})
}

// arrive draws a piece that moves in the step in which it comes.
func (w wall) arrive(st *telling.Story, step int, it scene.Item) {
	if it.Role == scene.Result {
		moved := it
		moved.Role = scene.Moved
		st.Until(step, step+1, moved)
		st.Add(step+1, it)
		return
	}
	st.Add(step, it)
}

// beside writes at the left of a row.
func (w wall) beside(st *telling.Story, step int, den int64, it scene.Item) {
	const gap = 14
	t := it.Shape.(scene.Text)
	t.X, t.Y, t.Anchor, t.Size = w.left-gap, w.y(den)+tall/2, scene.Right, scene.Small
	it.Shape = t
	st.Add(step, it)
}

// ask draws a dashed outline with a question mark in a row, as long as the amount.
func (w wall) ask(st *telling.Story, step int, f fraction.Fraction) {
	const inset = 7
	y := w.y(f.Den())
	st.Add(step, scene.Item{Shape: scene.Rect{X: w.left + inset, Y: y + inset, W: w.end(f) - w.left - 2*inset, H: tall - 2*inset},
		Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly})
}

// endLine draws a line through all rows where an amount ends.
func (w wall) endLine(st *telling.Story, step int, f fraction.Fraction) {
	const over = 8 // beyond the wall on each side
	x := w.end(f)
	st.Add(step, scene.Item{Shape: scene.Line{X1: x, Y1: top - over, X2: x, Y2: w.bottom() + over}, Role: scene.First, Finish: scene.Bold})
}
