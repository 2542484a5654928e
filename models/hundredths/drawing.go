package hundredths

import (
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// run is some small squares of a row, shaded for a number.
type run struct {
	from, to int64
	role     scene.Role
	of       scene.Of
	fresh    bool // they have just been shaded or cut
}

// row is what is drawn on the squares of one number.
type row struct {
	hidden bool  // it is not there yet
	parts  int64 // in which a whole is cut: 1, 10 or 100
	each   int64 // small squares in each of the equal parts that are marked; 0 for none
	runs   []run
	name   notation.Line
}

// state is what there is after a move.
type state struct {
	rows    []row
	caption notation.Line // under one row
	sign    notation.Line // between two squares
	gap     [2]int64      // small squares that one number has more
	gapRow  int           // on whose squares they are missing
	more    string        // how much that is
}

// draw paints a state.
func (b board) draw(s *scene.Scene, st state) {
	for r, row := range st.rows {
		if row.hidden {
			continue
		}
		b.wholeMarks(s, r)
		b.rule(s, r, row)
		for _, run := range row.runs {
			b.shade(s, r, row, run)
		}
		b.frame(s, r, row)
		if len(row.name) > 0 {
			b.name(s, r, row.name)
		}
	}
	b.missing(s, st)
	if len(st.caption) > 0 {
		s.Add(line(scene.PaperW/2, b.bottom()+below+b.tall/2, st.caption, scene.Middle))
	}
	if len(st.sign) > 0 && b.beside {
		left, right := b.boxes[0][0], b.boxes[1][0]
		s.Add(line((left.Right()+right.X)/2, left.Y+left.H/2, st.sign, scene.Large))
	}
}

func line(x, y int, l notation.Line, size int) scene.Item {
	return scene.Item{Shape: scene.Text{X: x, Y: y, Size: size, Runs: l.Runs()}}
}

// rule cuts the squares of a row: ten columns, and the small squares finer.
func (b board) rule(s *scene.Scene, r int, row row) {
	for _, box := range b.boxes[r] {
		if row.parts == 100 {
			s.Draw(scene.Guide, scene.Fine, scene.Grid{X: box.X, Y: box.Y, W: box.W, H: box.H, Cols: 10, Rows: 10})
		}
		if row.parts == 10 {
			s.Draw(scene.Guide, scene.Outline, scene.Grid{X: box.X, Y: box.Y, W: box.W, H: box.H, Cols: 10, Rows: 1})
		}
	}
}

// frame draws the outline of every whole, and of the parts in which it is marked.
func (b board) frame(s *scene.Scene, r int, row row) {
	for i, box := range b.boxes[r] {
		for k := int64(0); row.each > 0 && k < 100/row.each && row.each != scattered; k++ {
			from := int64(i)*100 + k*row.each
			s.Draw(scene.Ink, scene.Plain, closed(b.outline(r, from, from+row.each)))
		}
		s.Draw(scene.Ink, scene.Bold, scene.Rect{X: box.X, Y: box.Y, W: box.W, H: box.H})
	}
}

// scattered is the size of a part whose small squares do not hang together when they
// are counted down the columns: a twenty-fifth has 4.
const scattered = 4

// closed is the outline of a polygon as a line, which has no inside.
func closed(p scene.Polygon) scene.Polyline {
	return scene.Polyline(append(append(scene.Polygon{}, p...), p[0]))
}

// shade draws the pieces of a run in the parts of their row.
func (b board) shade(s *scene.Scene, r int, row row, run run) {
	for _, sp := range b.spans(r, run.from, run.to) {
		it := scene.Item{Role: run.role, Of: run.of}
		if run.fresh && run.role != scene.Gone {
			it.Role = scene.Moved
		}
		if run.role == scene.Gone {
			it.Finish = scene.Dashed
		}
		if run.of != scene.OfNothing {
			it.Worth = fraction.Must(sp.count, 100)
		}
		cols, rows := sp.cols, sp.rows
		if row.parts < 100 {
			rows = 1
		}
		if row.parts == 1 {
			cols = 1
		}
		it.Shape = scene.Grid{X: sp.X, Y: sp.Y, W: sp.W, H: sp.H, Cols: cols, Rows: rows}
		s.Add(it)
	}
	switch run.role {
	case scene.Gone:
		b.strike(s, r, run)
	case scene.Second:
		b.rim(s, r, run)
	}
}

// rim goes round the second amount where it lies behind the first, so that the two are
// told apart without their colors.
func (b board) rim(s *scene.Scene, r int, run run) {
	role := run.role
	if run.fresh {
		role = scene.Moved
	}
	for from := run.from; run.from > 0 && from < run.to; {
		to := min(run.to, (from/100+1)*100)
		s.Draw(role, scene.Bold, closed(b.outline(r, from, to)))
		from = to
	}
}

// strike goes round what is gone on every large square and puts one stroke through
// the largest block of it.
func (b board) strike(s *scene.Scene, r int, run run) {
	const inset = 4
	for from := run.from; from < run.to; {
		to := min(run.to, (from/100+1)*100)
		largest := span{}
		for _, block := range b.blocks(r, from, to) {
			if block.count > largest.count {
				largest = block
			}
		}
		s.Draw(scene.Gone, scene.Bold, b.round(r, from, to)...)
		s.Add(scene.Item{
			Shape: scene.Line{X1: largest.X + inset, Y1: largest.Bottom() - inset, X2: largest.Right() - inset, Y2: largest.Y + inset},
			Role:  scene.Gone, Finish: scene.Bold, Of: scene.OfSecond, Worth: fraction.Must(to-from, 100),
		})
		from = to
	}
}

// round is a line round small squares of one large square: one line, or two where
// they do not hang together.
func (b board) round(r int, from, to int64) []scene.Shape {
	if edge := (from/10 + 1) * 10; from%10 > 0 && edge < to && to-edge <= from%10 && to-edge < 10 {
		return []scene.Shape{closed(b.outline(r, from, edge)), closed(b.outline(r, edge, to))}
	}
	return []scene.Shape{closed(b.outline(r, from, to))}
}

// missing marks where one number has less, at the end of what it has.
func (b board) missing(s *scene.Scene, st state) {
	if st.gap[0] == st.gap[1] {
		return
	}
	for _, block := range b.blocks(st.gapRow, st.gap[0], st.gap[1]) {
		s.Add(scene.Item{Shape: scene.Rect{X: block.X, Y: block.Y, W: block.W, H: block.H}, Role: scene.Result, Finish: scene.Bold, When: scene.ShownOnly})
	}
	if !b.beside {
		return
	}
	larger := b.boxes[1-st.gapRow][0]
	text := scene.Words(larger.X+larger.W/2, b.bottom()+below+b.tall+moreDown/2, scene.Small, st.more)
	s.Add(scene.Item{Shape: telling.OnPaper(text), Role: scene.Result, When: scene.ShownOnly})
}

// name writes a number under its square, or at the left of its row.
func (b board) name(s *scene.Scene, r int, name notation.Line) {
	box := b.boxes[r][0]
	if b.beside {
		s.Add(line(box.X+box.W/2, box.Bottom()+below+b.tall/2, name, scene.Middle))
		return
	}
	s.Add(scene.Item{Shape: scene.Text{X: box.X - gutter, Y: box.Y + box.H/2, Anchor: scene.Right, Size: scene.Middle, Runs: name.Runs()}})
}
