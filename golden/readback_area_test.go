package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// area is an array drawn as an area in parts, with numbers along its sides and on
// its parts.
type area struct {
	faces      []measure.Face
	box        measure.Box
	rows, cols []int64 // the numbers along the sides, from the top and from the left
	parts      []int64 // the numbers on the parts or led to them
}

// bare are the texts that are a whole number and nothing else, but for the equation
// at the foot.
func (s sight) bare() []measure.Mark { return s.bareOf(scene.Large) }

// bareOf are the texts that are a whole number and nothing else, below a size.
func (s sight) bareOf(size int) []measure.Mark {
	var list []measure.Mark
	for _, t := range s.Texts {
		n, err := strconv.ParseInt(strings.ReplaceAll(t.Words, ",", ""), 10, 64)
		if err == nil && t.Size < size {
			list = append(list, measure.Mark{X: t.X, Y: t.Y - t.Size*36/100, Value: whole(n)})
		}
	}
	return list
}

// readArea reads an area by its numbers and checks that the numbers on the parts
// are the products of those beside them, and the lengths as the numbers say.
func (s sight) readArea() (a area, err error) {
	for _, f := range s.Faces() {
		if s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			a.faces = append(a.faces, f)
		}
	}
	if len(a.faces) == 0 || len(s.bare()) == 0 {
		return a, errUnread
	}
	a.box = a.faces[0].Box
	for _, f := range a.faces {
		a.box = around(a.box, f.Box)
	}
	xs, ys := starts(a.faces, func(f measure.Face) int { return f.X }), starts(a.faces, func(f measure.Face) int { return f.Y })
	if len(xs)*len(ys) != len(a.faces) {
		return a, fmt.Errorf("%d parts in %d × %d places", len(a.faces), len(ys), len(xs))
	}
	a.cols, a.rows = s.above(a.box, len(xs)), s.beside(a.box, len(ys))
	if a.cols == nil || a.rows == nil {
		return a, errUnread
	}
	if err := both(a.toScale(s.unscaled(), xs, ys), s.readSplits()); err != nil {
		return a, err
	}
	return a, s.partial(&a, xs, ys)
}

// starts are the different places where faces begin, in order.
func starts(faces []measure.Face, at func(measure.Face) int) []int {
	var list []int
	for _, f := range faces {
		list = append(list, at(f))
	}
	slices.Sort(list)
	return slices.Compact(list)
}

// above are the n numbers over an area, from the left: those of its parts, or the
// one in "12 in each row".
func (s sight) above(box measure.Box, n int) []int64 {
	var list []measure.Mark
	for _, m := range s.bare() {
		if m.Y < box.Y && m.X > box.X-20 && m.X < box.Right()+20 {
			list = append(list, m)
		}
	}
	if len(list) == 0 && n == 1 {
		for _, t := range s.Texts {
			if number, ok := strings.CutSuffix(t.Words, " in each row"); ok {
				if v, err := strconv.ParseInt(strings.ReplaceAll(number, ",", ""), 10, 64); err == nil {
					return []int64{v}
				}
			}
		}
	}
	slices.SortFunc(list, func(a, b measure.Mark) int { return a.X - b.X })
	return values(list, n)
}

// beside are the n numbers to the left of an area, from the top: those nearest to
// it where there are two columns of them.
func (s sight) beside(box measure.Box, n int) []int64 {
	var list []measure.Mark
	nearest := 0
	for _, m := range s.bare() {
		if m.X < box.X && m.Y > box.Y-20 && m.Y < box.Bottom()+20 {
			list = append(list, m)
			nearest = max(nearest, m.X)
		}
	}
	list = slices.DeleteFunc(list, func(m measure.Mark) bool { return m.X < nearest-64 && n > 1 })
	slices.SortFunc(list, func(a, b measure.Mark) int { return a.Y - b.Y })
	return values(list, n)
}

func values(list []measure.Mark, n int) []int64 {
	if len(list) != n {
		return nil
	}
	var v []int64
	for _, m := range list {
		v = append(v, m.Value.Num().Int64())
	}
	return v
}

// toScale: the parts lie side by side without a gap and, unless the picture says
// that it is not to scale, they are as long and as high as their numbers say, to
// a unit.
func (a area) toScale(unscaled bool, xs, ys []int) error {
	for _, side := range []struct {
		from    []int
		to      int
		numbers []int64
	}{{xs, a.box.Right(), a.cols}, {ys, a.box.Bottom(), a.rows}} {
		all := int64(0)
		for _, n := range side.numbers {
			all += n
		}
		length, ends := int64(side.to-side.from[0]), append(slices.Clone(side.from), side.to)
		for i, n := range side.numbers {
			if unscaled || all == 0 {
				continue
			}
			off := int64(ends[i+1]-ends[i])*all - n*length
			if max(off, -off) > all {
				return fmt.Errorf("a part of %d of %d is %d of %d units long", n, all, ends[i+1]-ends[i], length)
			}
		}
	}
	covered := 0
	for _, f := range a.faces {
		covered += f.Area()
	}
	if covered != a.box.Area() {
		return errors.New("the parts leave a gap or lie on one another")
	}
	return nil
}

// partial: where parts have numbers, every part has the right one.
func (s sight) partial(a *area, xs, ys []int) error {
	products := map[measure.Point]int64{}
	var want []int64
	for i, y := range ys {
		for j, x := range xs {
			products[measure.Point{X: x, Y: y}] = a.rows[i] * a.cols[j]
			want = append(want, a.rows[i]*a.cols[j])
		}
	}
	for _, m := range s.bare() {
		if !s.inPlate(m) {
			continue
		}
		v := m.Value.Num().Int64()
		a.parts = append(a.parts, v)
		for _, f := range a.faces {
			if f.Contains(measure.Box{X: m.X, Y: m.Y}) && products[measure.Point{X: f.X, Y: f.Y}] != v {
				return fmt.Errorf("the part of %d is called %d", products[measure.Point{X: f.X, Y: f.Y}], v)
			}
		}
	}
	if len(a.parts) == 0 {
		return nil
	}
	left := slices.Clone(want)
	for _, v := range a.parts {
		at := slices.Index(left, v)
		if at < 0 {
			return fmt.Errorf("no part is %d", v)
		}
		left = slices.Delete(left, at, at+1)
	}
	return nil
}

// count is what the area comes to.
func (a area) count() int64 {
	rows, cols := int64(0), int64(0)
	for _, r := range a.rows {
		rows += r
	}
	for _, c := range a.cols {
		cols += c
	}
	return rows * cols
}

// compareArea compares an area that was read by its numbers with the problem.
func (s sight) compareArea(t problems.Truth, all bool) error {
	a, err := s.readArea()
	if err != nil {
		return err
	}
	if all && len(a.parts) > 0 && len(a.parts) != len(a.faces) {
		return errors.New("a partial product is missing")
	}
	want := t.Value
	if t.Quotient != nil {
		want = new(big.Rat).SetInt(new(big.Int).Mul(t.Quotient, t.Numbers[1].Num()))
	}
	return agree("the area", whole(a.count()), want)
}
