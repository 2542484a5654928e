package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// unitSquares are the heavy outlines of a picture, each one whole: equal squares that
// fill a rectangle of columns and rows.
func (s sight) unitSquares() (side int, all measure.Box, err error) {
	const heavy = "5"
	var list []measure.Box
	for _, r := range s.Rects {
		if r.Filled() || r.Width != heavy || r.Stroke != s.paint[scene.Ink][2] {
			continue
		}
		if r.W != r.H || len(list) > 0 && r.W != list[0].W {
			return 0, all, fmt.Errorf("a whole of %d × %d", r.W, r.H)
		}
		list = append(list, r.Box)
	}
	if len(list) == 0 {
		return 0, all, errors.New("no whole is marked")
	}
	all = list[0]
	for _, b := range list[1:] {
		all = around(all, b)
	}
	side = list[0].W
	if all.W%side != 0 || all.H%side != 0 || all.W/side*(all.H/side) != len(list) {
		return 0, all, errors.New("the wholes do not stand in rows and columns")
	}
	return side, all, nil
}

// areaOf is the room of the faces in some roles, which fill it without a gap and lie
// in the upper left corner of the wholes.
func (s sight) areaOf(all measure.Box, roles ...scene.Role) (room measure.Box, faces []measure.Face, err error) {
	area := 0
	for _, f := range s.pieces() {
		if !s.is(f.Paint, roles...) || !all.Contains(f.Box) {
			continue
		}
		if len(faces) == 0 {
			room = f.Box
		}
		room, area = around(room, f.Box), area+f.W*f.H
		faces = append(faces, f)
	}
	switch {
	case len(faces) == 0:
		return room, nil, errors.New("nothing is shaded")
	case area != room.W*room.H:
		return room, nil, errors.New("what is shaded is no rectangle")
	case room.X != all.X || room.Y != all.Y:
		return room, nil, errors.New("what is shaded does not begin in the corner")
	}
	return room, faces, nil
}

// readFractionArea reads a product off a rectangle on unit squares: its sides are the
// factors, and its area is the product; its cells are equal, and as many in a whole as
// its last name says.
func readFractionArea(s sight, t problems.Truth) error {
	side, all, err := s.unitSquares()
	if err != nil {
		return err
	}
	room, faces, err := s.areaOf(all, scene.Result)
	if err != nil {
		return err
	}
	shaded, _, err := s.areaOf(all, scene.Result, scene.Second)
	if err != nil {
		return err
	}
	long := func(n int) *big.Rat { return big.NewRat(int64(n), int64(side)) }
	product := new(big.Rat).Mul(long(room.W), long(room.H))
	if err := both(agree("the height", long(room.H), t.Numbers[0]), agree("the width", long(shaded.W), t.Numbers[1])); err != nil {
		return err
	}
	if err := both(agree("the area", product, t.Value), agree("the height of what is shaded", long(shaded.H), long(all.H))); err != nil {
		return err
	}
	a, b, _ := s.problem.Operands()
	for _, f := range append(slices.Clone(faces), s.bareFaces(all)...) {
		if f.Cols() != cellsAlong(f.X-all.X, f.W, side, b) || f.Rows() != cellsAlong(f.Y-all.Y, f.H, side, a) {
			return fmt.Errorf("a part of %d × %d is cut in %d columns and %d rows", f.W, f.H, f.Cols(), f.Rows())
		}
	}
	if err := s.sideNames(all, t.Numbers); err != nil {
		return err
	}
	return both(s.partNames(faces, all, side), s.areaNames(faces, product, side))
}

// bareFaces are the ruled parts of the squares that are not shaded.
func (s sight) bareFaces(all measure.Box) (list []measure.Face) {
	for _, f := range s.Faces() {
		if !f.Filled() && f.Stroke == s.paint[scene.Guide][2] && all.Contains(f.Box) {
			list = append(list, f)
		}
	}
	return list
}

// cellsAlong is in how many cells a length is cut: the wholes of a mixed number are
// not cut, and what is written in parts is cut in them.
func cellsAlong(from, length, side int, n arithmetic.Number) int {
	if wholes := int(n.Value.Num() / n.Value.Den()); n.Form == arithmetic.Mixed && from < wholes*side {
		return length / side
	}
	return length * int(n.Value.Den()) / side
}

// sideNames: the numbers left of the squares and those over them make the factors.
func (s sight) sideNames(all measure.Box, factors []*big.Rat) error {
	down, across := new(big.Rat), new(big.Rat)
	for _, m := range s.Marks() {
		switch {
		case m.Y < all.Y:
			across.Add(across, m.Value)
		case m.X < all.X && m.Y < all.Bottom():
			down.Add(down, m.Value)
		}
	}
	return both(agree("the numbers at the left", down, factors[0]), agree("the numbers at the top", across, factors[1]))
}

// partNames: where the rectangle has several parts, each has its area for a name.
func (s sight) partNames(faces []measure.Face, all measure.Box, side int) error {
	if len(faces) < 2 {
		return nil
	}
	const low = 84 // how far under the squares a name may stand
	var said, seen []string
	plain := s.Drawing // the equation at the foot is bold
	plain.Texts = slices.DeleteFunc(slices.Clone(plain.Texts), func(t measure.Text) bool { return t.Bold })
	const tall = 50 // a line of the squares that passes behind a name looks like one more fraction bar
	var known []measure.Mark
	for _, m := range plain.Marks() {
		if slices.ContainsFunc(known, func(o measure.Mark) bool {
			return o.X == m.X && max(o.Y-m.Y, m.Y-o.Y) < tall && o.Value.Cmp(m.Value) == 0
		}) {
			continue
		}
		known = append(known, m)
		if m.X > all.X && m.Y > all.Y && m.Y < all.Bottom()+low {
			said = append(said, m.Value.RatString())
		}
	}
	for _, t := range s.Texts {
		var n int64
		if k, _ := fmt.Sscanf(t.Words, "%d whole", &n); k == 1 && strings.Contains(t.Words, "whole") && t.Y < all.Bottom() {
			said = append(said, big.NewRat(n, 1).RatString())
		}
	}
	for _, f := range faces {
		area := big.NewRat(int64(f.W)*int64(f.H), int64(side)*int64(side))
		seen = append(seen, area.RatString())
	}
	slices.Sort(said)
	slices.Sort(seen)
	if !slices.Equal(said, seen) {
		return fmt.Errorf("the parts are called %v, and are %v", said, seen)
	}
	return nil
}

// areaNames compares what is written on and under the squares with the faces.
func (s sight) areaNames(faces []measure.Face, product *big.Rat, side int) error {
	for _, text := range s.Texts {
		line := text.Words
		var parts, whole int64
		if n, _ := fmt.Sscanf(line, "%d parts, and %d make 1 whole", &parts, &whole); n != 2 {
			if n, _ = fmt.Sscanf(line, "%d part, and %d make 1 whole", &parts, &whole); n != 2 {
				continue
			}
		}
		cells := int64(0)
		for _, f := range faces {
			cells += int64(f.Cells())
			one := big.NewRat(int64(f.W/f.Cols()*(f.H/f.Rows())), int64(side*side))
			if err := agree("a cell", one, big.NewRat(1, whole)); err != nil {
				return err
			}
		}
		return both(agree("the count of parts", big.NewRat(cells, 1), big.NewRat(parts, 1)), agree("the parts", big.NewRat(parts, whole), product))
	}
	return nil
}

// stepsOfFractionArea: first the second factor is shaded in every row of squares, then
// the rectangle of both moves, and at the end it is there.
func stepsOfFractionArea(steps []sight, t problems.Truth) error {
	first, last := steps[0], steps[len(steps)-1]
	side, all, err := first.unitSquares()
	if err != nil {
		return err
	}
	room, _, err := first.areaOf(all, scene.Second)
	if err != nil {
		return err
	}
	if err := both(agree("the width", big.NewRat(int64(room.W), int64(side)), t.Numbers[1]), agree("the height", big.NewRat(int64(room.H), 1), big.NewRat(int64(all.H), 1))); err != nil {
		return err
	}
	for i, s := range steps[1:] {
		moved := slices.ContainsFunc(s.pieces(), func(f measure.Face) bool { return s.is(f.Paint, scene.Moved) })
		if !moved {
			continue
		}
		taken, _, err := s.areaOf(all, scene.Moved)
		if err != nil {
			return fmt.Errorf("step %d: %w", i+2, err)
		}
		if err := agree("what is taken", big.NewRat(int64(taken.W)*int64(taken.H), int64(side)*int64(side)), t.Value); err != nil {
			return fmt.Errorf("step %d: %w", i+2, err)
		}
	}
	return readFractionArea(last, t)
}
