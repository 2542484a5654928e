package area

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

// squares draws the unit squares in all steps: first with the columns of the second
// factor, then cut in rows, then with the rectangle that both have in common.
func (t *told) squares() {
	shaded := t.stretches(t.across, t.x, t.column())
	bare := t.rest(t.across, t.x, t.column())
	if t.cut == nil {
		t.lies(0, t.countAt, shaded, bare, t.wholeRows())
		t.taken(t.countAt)
		t.story.Add(t.countAt, t.bareCells(bare, t.wholeRows())...)
		t.outlines()
		return
	}
	t.lies(0, t.cutAt, shaded, bare, t.wholeRows())
	t.lies(t.cutAt, t.takeAt, shaded, bare, t.cutRows())
	left := t.rest(t.down, t.y, t.row())
	t.story.Add(t.takeAt, t.bareCells(bare, t.cutRows())...)
	for _, d := range left {
		for _, a := range shaded {
			t.story.Still(t.takeAt, 0, scene.Item{Shape: cells(a, d), Role: scene.Second})
		}
	}
	for _, d := range t.stretches(t.down, t.y, t.row()) {
		for _, a := range shaded {
			t.story.Until(t.takeAt, t.countAt, scene.Item{Shape: cells(a, d), Role: scene.Moved})
		}
	}
	t.taken(t.countAt)
	t.outlines()
}

// lies draws the squares from a step on, and no more in another: the columns of the
// second factor shaded, the others bare.
func (t *told) lies(from, until int, shaded, bare, rows []stretch) {
	t.story.Until(from, until, t.bareCells(bare, rows)...)
	for _, d := range rows {
		for _, a := range shaded {
			t.story.Still(from, until, scene.Item{Shape: cells(a, d), Role: scene.Second})
		}
	}
}

// bareCells are the lines of the columns that are not shaded.
func (t *told) bareCells(bare, rows []stretch) []scene.Item {
	var list []scene.Item
	for _, d := range rows {
		for _, a := range bare {
			list = append(list, scene.Item{Shape: cells(a, d), Role: scene.Guide, Finish: scene.Fine})
		}
	}
	return list
}

// taken draws the rectangle of the product, part by part where it is split, with the
// names of the parts.
func (t *told) taken(from int) {
	i := 0
	for _, d := range t.stretches(t.down, t.y, t.row()) {
		for _, a := range t.stretches(t.across, t.x, t.column()) {
			it := scene.Item{Shape: cells(a, d), Role: scene.Result, Of: scene.OfAnswer}
			if t.split != nil {
				it.Worth = worth(t.split.Parts[i])
			} else {
				it.Worth = t.count.Product.Value
			}
			t.story.Add(from, it)
			i++
		}
	}
	t.rim(from)
	if t.split == nil {
		return
	}
	for _, n := range t.names() {
		s := &scene.Scene{}
		n.draw(s)
		for _, it := range s.Items {
			it.When = scene.ShownOnly
			t.story.Add(from, it)
		}
	}
}

// rim is a heavy line round the rectangle, so that it is seen without its color too.
func (t *told) rim(from int) {
	r := t.rectangle()
	t.story.Add(from, scene.Item{Shape: scene.Rect{X: r.X, Y: r.Y, W: r.W, H: r.H}, Role: scene.Result, Finish: scene.Bold})
}

// outlines draws the edge of every unit square.
func (t *told) outlines() {
	for j := range int(t.down.Squares) {
		for i := range int(t.across.Squares) {
			t.story.Add(0, scene.Item{Role: scene.Ink, Finish: scene.Bold,
				Shape: scene.Rect{X: t.x + i*t.unit, Y: t.y + j*t.unit, W: t.unit, H: t.unit}})
		}
	}
}

func cells(a, d stretch) scene.Grid {
	return scene.Grid{X: a.from, Y: d.from, W: a.long, H: d.long, Cols: a.cells, Rows: d.cells}
}

// wholeRows are the rows of squares before they are cut.
func (p *plan) wholeRows() []stretch {
	return []stretch{{p.y, p.high(), int(p.down.Squares), true}}
}

// cutRows are all rows of the squares once they are cut.
func (p *plan) cutRows() []stretch {
	den := int(p.down.Parts.Den())
	if !p.down.Split {
		return []stretch{{p.y, p.high(), int(p.down.Squares) * den, false}}
	}
	wholes := int(p.down.Wholes())
	return []stretch{{p.y, wholes * p.unit, wholes, true}, {p.y + wholes*p.unit, p.unit, den, false}}
}

// rest is what a side leaves of its last square; it is empty when nothing is left.
func (p *plan) rest(side arithmetic.AreaSide, from, part int) []stretch {
	used := int(side.Parts.Num()) * part
	left := int(side.Squares)*p.unit - used
	if left == 0 {
		return nil
	}
	return []stretch{{from + used, left, left / part, false}}
}

// sides names the factors along the top and down the left of the squares, each over
// a bracket: a split one by its wholes and its part.
func (t *told) sides() {
	tops := t.stretches(t.across, t.x, t.column())
	for i, piece := range t.sidePieces(t.across) {
		s := tops[i]
		y := t.y - braceGap
		line := scene.Polyline{{X: s.from + braceAir, Y: y}, {X: s.from + braceAir, Y: y - braceDepth}, {X: s.from + s.long - braceAir, Y: y - braceDepth}, {X: s.from + s.long - braceAir, Y: y}}
		label := scene.Text{X: s.from + s.long/2, Size: scene.Middle, Runs: telling.Numeral(piece, scene.Second).Runs()}
		label.Y = y - braceDepth - labelGap - label.Box().Bottom()
		t.story.Add(0, scene.Item{Shape: line, Role: scene.Note, Finish: scene.Fine}, scene.Item{Shape: label, Role: scene.Second})
	}
	lefts := t.stretches(t.down, t.y, t.row())
	for i, piece := range t.sidePieces(t.down) {
		s := lefts[i]
		x := t.x - braceGap
		line := scene.Polyline{{X: x, Y: s.from + braceAir}, {X: x - braceDepth, Y: s.from + braceAir}, {X: x - braceDepth, Y: s.from + s.long - braceAir}, {X: x, Y: s.from + s.long - braceAir}}
		label := scene.Text{Y: s.from + s.long/2, Size: scene.Middle, Runs: telling.Numeral(piece, scene.First).Runs()}
		label.X = x - braceDepth - labelGap - label.Box().W/2
		t.story.Add(t.takeAt, scene.Item{Shape: line, Role: scene.Note, Finish: scene.Fine}, scene.Item{Shape: label, Role: scene.First})
	}
}
