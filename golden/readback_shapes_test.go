package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// outline is a surface by its corners.
type outline struct {
	corners []measure.Point
	measure.Paint
}

// area is twice the area inside, by the shoelace formula.
func (o outline) area() int64 {
	sum := int64(0)
	for i, a := range o.corners {
		b := o.corners[(i+1)%len(o.corners)]
		sum += int64(a.X)*int64(b.Y) - int64(b.X)*int64(a.Y)
	}
	return max(sum, -sum)
}

// holds reports whether a place lies inside corners that turn one way, or on their
// edge. The place is given times finePlaces.
func (o outline) holds(x, y int, edge bool) bool {
	left, right := false, false
	for i, a := range o.corners {
		b := o.corners[(i+1)%len(o.corners)]
		side := (b.X-a.X)*(y-finePlaces*a.Y) - (b.Y-a.Y)*(x-finePlaces*a.X)
		left, right = left || side < 0, right || side > 0
		if side == 0 && !edge {
			return false
		}
	}
	return !(left && right)
}

// within reports whether all corners of a surface lie inside another or on its edge.
func (o outline) within(whole outline) bool {
	for _, c := range o.corners {
		if !whole.holds(finePlaces*c.X, finePlaces*c.Y, true) {
			return false
		}
	}
	return true
}

// finePlaces is how many places to a unit there are inside a surface.
const finePlaces = 48

// inner are places just inside the corners of a surface, times finePlaces.
func (o outline) inner() []measure.Point {
	x, y := 0, 0 // the middle of the first three corners, times three
	for _, c := range o.corners[:3] {
		x, y = x+c.X, y+c.Y
	}
	var list []measure.Point
	for _, c := range o.corners {
		list = append(list, measure.Point{X: finePlaces*c.X + x - 3*c.X, Y: finePlaces*c.Y + y - 3*c.Y})
	}
	return list
}

// outlines are the rectangles and polygons of a picture.
func (s sight) outlines() []outline {
	var list []outline
	for _, r := range s.Rects {
		list = append(list, outline{[]measure.Point{{X: r.X, Y: r.Y}, {X: r.Right(), Y: r.Y}, {X: r.Right(), Y: r.Bottom()}, {X: r.X, Y: r.Bottom()}}, r.Paint})
	}
	for _, p := range s.Paths {
		if p.Closed && len(p.Curves) == 0 && len(p.Points) >= 3 {
			corners := p.Points
			if last := len(corners) - 1; corners[last] == corners[0] {
				corners = corners[:last]
			}
			list = append(list, outline{corners, p.Paint})
		}
	}
	return list
}

// cutShape is a shape with its parts: how many there are, and how many are shaded.
type cutShape struct {
	whole         outline
	parts, shaded int64
}

// cutShapes are the shapes with a heavy edge, from the left. The parts of each are of
// equal area and fill it.
func (s sight) cutShapes() ([]cutShape, error) {
	var list []cutShape
	all := s.outlines()
	used := 0
	for _, w := range all {
		if w.Filled() || w.Width != "5" || w.Stroke != s.paint[scene.Ink][2] {
			continue
		}
		c := cutShape{whole: w}
		var inside []outline
		for _, o := range all {
			shaded := o.Filled() && s.is(o.Paint, scene.First)
			if !shaded && !s.empty(o.Paint, scene.Guide) || !o.within(w) {
				continue
			}
			inside = append(inside, o)
			if shaded {
				c.shaded++
			}
		}
		used += len(inside)
		c.parts = int64(len(inside))
		for i, o := range inside {
			if o.area()*c.parts != w.area() {
				return nil, fmt.Errorf("a part of %d is %d of %d square units", c.parts, o.area()/2, w.area()/2)
			}
			for k, other := range inside {
				if k != i && slices.ContainsFunc(o.inner(), func(p measure.Point) bool { return other.holds(p.X, p.Y, false) }) {
					return nil, errors.New("two parts lie on one another")
				}
			}
		}
		list = append(list, c)
	}
	slices.SortFunc(list, func(a, b cutShape) int { return a.whole.corners[0].X - b.whole.corners[0].X })
	if len(list) == 0 {
		return nil, errors.New("no whole is marked")
	}
	for _, o := range all {
		if o.Filled() && s.is(o.Paint, scene.First) || s.empty(o.Paint, scene.Guide) {
			used--
		}
	}
	if used != 0 {
		return nil, errors.New("a part lies in no whole")
	}
	return list, nil
}

// readShapes: each shape has as many equal parts as the lower number says, and as many
// shaded as the upper.
func readShapes(s sight, t problems.Truth) error {
	list, err := s.cutShapes()
	if err != nil {
		return err
	}
	n, ok := s.problem.Left.(arithmetic.Number)
	if !ok {
		return errUnread
	}
	for _, c := range list {
		if c.whole.area() != list[0].whole.area() {
			return errors.New("the shapes are not of one size")
		}
		if c.parts != n.Value.Den() {
			return fmt.Errorf("%d parts for %s", c.parts, n)
		}
		if err := agree("what is shaded", big.NewRat(c.shaded, c.parts), t.Numbers[0]); err != nil {
			return err
		}
	}
	for _, line := range s.Lines() {
		for _, w := range line {
			if v, ok := w.Value(); ok && w.Size == scene.Middle {
				if err := agree("the number under a shape", v, t.Numbers[0]); err != nil {
					return err
				}
			}
		}
	}
	return s.readFractionNames(t)
}

// stepsOfShapes: a shape is cut in equal parts and then shaded, one after the other.
func stepsOfShapes(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		list, err := s.cutShapes()
		if err == nil && len(list) != i/2+1 {
			err = fmt.Errorf("%d shapes", len(list))
		}
		for k, c := range list {
			want := t.Numbers[0]
			if k == i/2 && i%2 == 0 {
				want = new(big.Rat) // it has just been cut
			}
			if err == nil {
				err = agree("what is shaded", big.NewRat(c.shaded, max(1, c.parts)), want)
			}
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return nil
}
