package golden

import (
	"errors"
	"fmt"
	"slices"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readPairs reads every array of a number: one rectangle for each pair, all to
// one scale, ruled in as many squares as the number or not ruled at all.
func (s sight) readPairs(t problems.Truth) error {
	n := t.Numbers[0].Num().Int64()
	drawn, cell, ruled := map[[2]int64]bool{}, int64(0), map[bool]bool{}
	for _, f := range s.Faces() {
		if !s.is(f.Paint, scene.First, scene.Second, scene.Result) {
			continue
		}
		if got := int64(f.Cells()); got != n && got != 1 {
			return fmt.Errorf("an array of %d × %d for %d", f.Rows(), f.Cols(), n)
		}
		if ruled[f.Cells() > 1] = true; n > 1 && len(ruled) > 1 {
			return errors.New("only some of the arrays are ruled")
		}
		at := slices.IndexFunc(t.Pairs, func(p [2]int64) bool { return int64(f.W)*p[0] == int64(f.H)*p[1] })
		if at < 0 {
			return fmt.Errorf("an array of %d by %d units for %d", f.W, f.H, n)
		}
		side := int64(f.W) / t.Pairs[at][1]
		if cell != 0 && side != cell {
			return fmt.Errorf("squares of %d and of %d", side, cell)
		}
		cell = side
		drawn[t.Pairs[at]] = true
	}
	for _, pair := range t.Pairs {
		turned := [2]int64{pair[1], pair[0]}
		if drawn[pair] == drawn[turned] && pair != turned || !drawn[pair] && !drawn[turned] {
			return fmt.Errorf("%d × %d is not drawn once", pair[0], pair[1])
		}
	}
	return nil
}

// touching are the faces that hang together with the largest, and the others.
func touching(faces []measure.Face) (together, apart []measure.Face) {
	apart = slices.Clone(faces)
	slices.SortStableFunc(apart, func(a, b measure.Face) int { return b.Area() - a.Area() })
	for found := len(apart) > 0; found; {
		found = false
		for i, f := range apart {
			grown := measure.Box{X: f.X - 1, Y: f.Y - 1, W: f.W + 2, H: f.H + 2}
			if len(together) == 0 || slices.ContainsFunc(together, func(t measure.Face) bool { return grown.Overlaps(t.Box) }) {
				together, apart, found = append(together, f), slices.Delete(apart, i, i+1), true
				break
			}
		}
	}
	return together, apart
}

// around is the smallest box that holds both.
func around(a, b measure.Box) measure.Box {
	x, y := min(a.X, b.X), min(a.Y, b.Y)
	return measure.Box{X: x, Y: y, W: max(a.Right(), b.Right()) - x, H: max(a.Bottom(), b.Bottom()) - y}
}

// crate is the number that stands on every one of the faces, where they are all
// alike and it is the same on all; 0 otherwise.
func (s sight) crate(faces []measure.Face) int64 {
	var worth int64
	for i, f := range faces {
		on := int64(0)
		for _, m := range s.Marks() {
			if f.Contains(measure.Box{X: m.X, Y: m.Y}) && m.Value.IsInt() {
				on = m.Value.Num().Int64()
			}
		}
		if on == 0 || i > 0 && (on != worth || f.W != faces[0].W || f.H != faces[0].H) {
			return 0
		}
		worth = on
	}
	if len(faces) == 1 && worth < 10 {
		return 0
	}
	return worth
}
