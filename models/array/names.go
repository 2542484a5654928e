package array

import (
	"modeler/models/scene"
	"modeler/models/telling"
)

// caption is a label in a role and a version.
type caption struct {
	words string
	role  scene.Role
	when  scene.When
}

// revealed and blanked are a number that the answer gives away and the question mark
// that stands in for it.
func revealed(words string, role scene.Role) caption {
	return caption{words, role, scene.ShownOnly}
}
func blanked(words string) caption { return caption{words, scene.Hidden, scene.HiddenOnly} }

// beside draws a bracket along some height to the left of the array, and beside
// it a number with a word under it. word may be empty.
func (p *plot) beside(s *scene.Scene, y1, y2 int, word string, names ...caption) {
	p.besideBy(s, 0, y1, y2, word, names...)
}

// besideBy is beside, with the bracket so much further left.
func (p *plot) besideBy(s *scene.Scene, out, y1, y2 int, word string, names ...caption) {
	x := p.x[0] - bandEdge - toBrace - out
	s.Draw(scene.Note, scene.Fine, scene.Polyline{{X: x, Y: y1 + 2}, {X: x - braceDeep, Y: y1 + 2}, {X: x - braceDeep, Y: y2 - 2}, {X: x, Y: y2 - 2}})
	wide := scene.Advance(word, scene.Small, false)
	for _, n := range names {
		wide = max(wide, scene.Advance(n.words, scene.Middle, true))
	}
	x -= braceDeep + toName + wide/2
	y := (y1 + y2) / 2
	if word != "" {
		y -= 18
		s.Add(telling.Text(scene.Ink, x, y+38, scene.Small, word))
	}
	for _, n := range names {
		s.Add(captionAt(n, x, y))
	}
}

// rowsBeside names the number of all rows.
func (p *plot) rowsBeside(s *scene.Scene, names ...caption) {
	b := p.box()
	word := rowsName
	if len(names) > 0 && names[0].words == "1" {
		word = "row"
	}
	p.besideBy(s, p.outerLeft(), b.Y, b.Bottom(), word, names...)
}

// above draws a bracket over some width of the array, and a name over it.
func (p *plot) above(s *scene.Scene, x1, x2 int, size int, names ...caption) {
	p.aboveBy(s, 0, x1, x2, size, names...)
}

// aboveAll names the length of a row.
func (p *plot) aboveAll(s *scene.Scene, names ...caption) {
	b := p.box()
	p.aboveBy(s, p.outerUp(), b.X, b.Right(), scene.Small, names...)
}

// aboveBy is above, with the bracket so much higher.
func (p *plot) aboveBy(s *scene.Scene, up, x1, x2, size int, names ...caption) {
	y := p.y[0] - toBrace - up
	s.Draw(scene.Note, scene.Fine, scene.Polyline{{X: x1 + 2, Y: y}, {X: x1 + 2, Y: y - braceDeep}, {X: x2 - 2, Y: y - braceDeep}, {X: x2 - 2, Y: y}})
	y -= braceDeep + toName + size*62/100
	for _, n := range names {
		it := captionAt(n, (x1+x2)/2, y)
		t := it.Shape.(scene.Text)
		t.Size, t.Bold = size, size == scene.Middle
		// A long name over a narrow array stays on the paper.
		half := (t.Width() + 1) / 2
		t.X = min(max(t.X, scene.Margin+half), scene.PaperW-scene.Margin-half)
		it.Shape = t
		s.Add(it)
	}
}

// reach draws on the brackets of both sides to the array, across the room where
// the parts will be named.
func (p *plot) reach(s *scene.Scene) {
	b := p.box()
	if up := p.outerUp(); up > 0 {
		y := p.y[0] - toBrace
		s.Draw(scene.Note, scene.Fine, scene.Line{X1: b.X + 2, Y1: y - up, X2: b.X + 2, Y2: y}, scene.Line{X1: b.Right() - 2, Y1: y - up, X2: b.Right() - 2, Y2: y})
	}
	if out := p.outerLeft(); out > 0 {
		x := p.x[0] - bandEdge - toBrace
		s.Draw(scene.Note, scene.Fine, scene.Line{X1: x - out, Y1: b.Y + 2, X2: x, Y2: b.Y + 2}, scene.Line{X1: x - out, Y1: b.Bottom() - 2, X2: x, Y2: b.Bottom() - 2})
	}
}

// captionAt is a name as a label of the story.
func captionAt(n caption, x, y int) scene.Item {
	t := scene.Words(x, y, scene.Middle, n.words)
	t.Bold = true
	return scene.Item{Shape: t, Role: n.role, When: n.when}
}

// spread moves places apart, so that labels of the given lengths around them
// keep a gap, and inside low and high. It keeps their order. Where there is not
// room for them all, they stand as they would.
func spread(places, lengths []int, gap, low, high int) []int {
	sides := make([]int, len(lengths))
	for i, l := range lengths {
		sides[i] = (l + 1) / 2
	}
	if at, ok := telling.Spread(places, sides, gap, low, high); ok {
		return at
	}
	return places
}
