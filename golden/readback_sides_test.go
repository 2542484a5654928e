package golden

import (
	"fmt"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readSides: the numbers over an array and beside it are its columns and rows.
func (s sight) readSides(box measure.Box, rows, cols int64) error {
	if rows == 0 || cols == 0 {
		return nil
	}
	over, left := int64(0), int64(0)
	for _, m := range s.bare() {
		v := m.Value.Num().Int64()
		switch {
		case m.Y < box.Y && m.Y > box.Y-60 && m.X > box.X-20 && m.X < box.Right()+20:
			over += v
		case m.X < box.X && m.Y > box.Y-30 && m.Y < box.Bottom()+30:
			left += v
		}
	}
	if over != 0 && over != cols {
		return fmt.Errorf("%d columns under the number %d", cols, over)
	}
	if left != 0 && left != rows && left != 2*rows { // the parts, the whole side or both
		return fmt.Errorf("%d rows beside numbers that come to %d", rows, left)
	}
	for _, t := range s.Texts {
		if n, ok := strings.CutSuffix(t.Words, " in each row"); ok && n != "?" && n != arithmetic.Grouped(cols) {
			return fmt.Errorf("%d columns under %q", cols, t.Words)
		}
	}
	return nil
}

// readSplits: a line that splits an array runs between its counters or along the
// edges of its parts.
func (s sight) readSplits() error {
	for _, p := range s.Paths {
		if len(p.Points) != 2 || p.Closed || p.Stroke != s.paint[scene.Ink][2] || p.Box().W+p.Box().H < 60 {
			continue
		}
		b := p.Box()
		for _, c := range s.Circles {
			if b.X < c.X+c.R && b.Right() > c.X-c.R && b.Y < c.Y+c.R && b.Bottom() > c.Y-c.R {
				return fmt.Errorf("a line runs through the counter at %d, %d", c.X, c.Y)
			}
		}
		for _, f := range s.pieces() {
			upright := b.W == 0 && b.X > f.X && b.X < f.Right() && b.Y < f.Bottom() && b.Bottom() > f.Y
			level := b.H == 0 && b.Y > f.Y && b.Y < f.Bottom() && b.X < f.Right() && b.Right() > f.X
			if upright && b.Y <= f.Y && b.Bottom() >= f.Bottom() || level && b.X <= f.X && b.Right() >= f.Right() {
				return fmt.Errorf("a line runs through the part at %v", f.Box)
			}
		}
	}
	return nil
}

// readTotals: a number to the right of a row is what there is up to that row, or
// the answer.
func (s sight) readTotals(r rectangle, t problems.Truth) error {
	for _, m := range s.bare() {
		if r.rows == 0 || m.X < r.box.Right() || m.Y < r.box.Y || m.Y > r.box.Bottom() || s.inPlate(m) {
			continue
		}
		row := int64(m.Y-r.box.Y)*r.rows/int64(r.box.H) + 1
		if m.Value.Cmp(t.Value) != 0 && m.Value.Cmp(whole(row*r.cols)) != 0 {
			return fmt.Errorf("%s is written at row %d of %d", m.Value.RatString(), row, r.cols)
		}
	}
	return nil
}

// inPlate reports whether a number stands on a plate of its own.
func (s sight) inPlate(m measure.Mark) bool {
	return slices.ContainsFunc(s.Rects, func(r measure.Rect) bool {
		return r.Fill == s.paint[scene.Ink][0] && r.Stroked() && r.Contains(measure.Box{X: m.X, Y: m.Y})
	})
}
