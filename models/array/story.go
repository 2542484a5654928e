package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// foot is where the picture ends: under the names of the parts and the total.
func (a *story) foot(withTotal bool) int {
	y := a.box().Bottom() + a.air + 8
	switch low, below := a.lowNames(), a.namesBelow(); {
	case !below:
		y += low
	case a.inCells():
		y += max(low, factsTall)
	default:
		y += low + factsTall
	}
	if a.note() != "" {
		y += 40
	}
	if withTotal {
		y += factsTall
	}
	return y
}

// lowNames is how far the names beside a low array, or beside its low last part,
// reach below it.
func (a *story) lowNames() int {
	const rowsTall = 84 // the number of rows and the word under it
	low := lineTall
	if a.inCells() {
		low = plateTall
	}
	return max(0, low-a.h[len(a.h)-1], (rowsTall-a.box().H)/2)
}

// namesBelow reports whether anything is named under the array.
func (a *story) namesBelow() bool {
	if !a.split {
		return false
	}
	last := len(a.rows) - 1
	return a.look != inSketch && (len(a.rows) == 1 || len(a.cols) > 1 && a.part(last, 0).H < insideTall)
}

// note is what the picture says of its scale.
func (a *story) note() string {
	switch a.look {
	case inScale:
		return words.ArrayTensToScale
	case inSketch:
		return words.ArrayNotToScale
	}
	return ""
}

// drawNote writes the note under the picture.
func (a *story) drawNote(s *scene.Scene) {
	if a.note() != "" {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, a.foot(false)-18, scene.Small, a.note()))
	}
}

// drawLaid draws the array before it is split.
func (a *story) drawLaid(s *scene.Scene) {
	a.bands(s, int(a.whole.Rows))
	a.undivided(s, scene.Item{Role: scene.First, Of: a.of})
	a.rowsBeside(s, caption{words: arithmetic.Grouped(a.whole.Rows)})
	a.aboveAll(s, caption{words: words.ArrayEach(arithmetic.Grouped(a.whole.Cols))})
	a.reach(s)
	a.drawNote(s)
}

// drawParts draws the array split, the cut in a role.
func (a *story) drawParts(s *scene.Scene, cut scene.Role) {
	a.bands(s, int(a.whole.Rows))
	for i := range a.rows {
		for j := range a.cols {
			a.fill(s, i, j, scene.Item{Role: roleAt(i, j), Of: a.of})
		}
	}
	a.cuts(s, cut)
	a.sides(s)
	a.drawNote(s)
}

// sides names the parts of both sides with their numbers, and, unless the
// problem gives the parts, both sides whole.
func (a *story) sides(s *scene.Scene) {
	if len(a.rows) == 1 || a.outerRows {
		a.rowsBeside(s, caption{words: arithmetic.Grouped(a.whole.Rows)})
	}
	if len(a.rows) > 1 {
		for i, r := range a.rows {
			a.beside(s, a.y[i], a.y[i]+a.h[i], "", caption{words: arithmetic.Grouped(r)})
		}
	}
	if len(a.cols) == 1 || a.outer {
		a.aboveAll(s, caption{words: words.ArrayEach(arithmetic.Grouped(a.whole.Cols))})
	}
	if len(a.cols) > 1 {
		for j, c := range a.cols {
			a.above(s, a.x[j], a.x[j]+a.w[j], scene.Middle, caption{words: arithmetic.Grouped(c)})
		}
	}
}

// drawOne draws the parts of a split array as one: the cut is gone, and both
// sides are named whole.
func (a *story) drawOne(s *scene.Scene) {
	a.bands(s, int(a.whole.Rows))
	for i := range a.rows {
		for j := range a.cols {
			a.fill(s, i, j, scene.Item{Role: roleAt(i, j), Of: a.of})
		}
	}
	a.rowsBeside(s, caption{words: arithmetic.Grouped(a.whole.Rows)})
	a.aboveAll(s, caption{words: words.ArrayEach(arithmetic.Grouped(a.whole.Cols))})
	a.inAll(s, a.sum)
	a.drawNote(s)
}

// totals writes the running total to the right of every row.
func (a *story) totals(s *scene.Scene, totals []int64) {
	if a.look > inCrates {
		return
	}
	for k, b := range a.bandBoxes(len(totals)) {
		role := scene.Note
		if k == len(totals)-1 {
			role = scene.Result
		}
		t := scene.Words(b.Right()+12, b.Y+b.H/2, scene.Small, arithmetic.Grouped(totals[k]))
		t.Anchor = scene.Left
		s.Add(scene.Item{Shape: t, Role: role, When: scene.ShownOnly})
	}
}

// inAll writes the total under the array.
func (a *story) inAll(s *scene.Scene, sum int64) {
	y := a.foot(true) - 24
	for _, n := range []caption{
		revealed(words.ArrayInAll(arithmetic.Grouped(sum)), scene.Result), blanked(words.ArrayInAll("?")),
	} {
		s.Add(captionAt(n, scene.PaperW/2, y))
	}
}
