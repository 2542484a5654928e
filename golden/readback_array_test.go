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

// rectangle is an array as it was measured: how many things it has, how many of
// them are marked as the answer or lie apart, and its rows and columns.
type rectangle struct {
	count, marked, apart int64
	rows, cols           int64 // 0 when they do not come out
	box                  measure.Box
}

// readArray finds the array in the picture: counters, crates with a number on
// them, squares of squared paper, or the sides of an area to scale.
func readArray(s sight, t problems.Truth) error {
	if r, is := arrayOf(s.problem, t); is {
		return r.whole(s, t)
	}
	switch s.problem.Kind {
	case arithmetic.Factors:
		if s.unscaled() {
			return s.readPairNames(t, true)
		}
		return s.readPairs(t)
	case arithmetic.Claim, arithmetic.Comparison:
		return s.readArrayClaim(t)
	}
	if t.Quotient != nil && t.Quotient.Sign() == 0 && t.Remainder.Sign() > 0 {
		return s.readNoLine(t)
	}
	if s.unscaled() {
		return s.compareArea(t, true)
	}
	if r, ok := s.counters(); ok && (r.count > r.apart || s.problem.Kind != arithmetic.Division) {
		return s.compareArray(r, t)
	}
	r, err := s.squares()
	if err != nil {
		return err
	}
	if s.problem.Kind == arithmetic.Product && len(s.pieces()) > 1 {
		if err := s.compareArea(t, true); err != nil && err != errUnread {
			return err
		}
	}
	return s.compareArray(r, t)
}

// counters are the circles. Those that lie apart are lighter than those in rows.
func (s sight) counters() (r rectangle, ok bool) {
	var inside []measure.Circle
	for _, c := range s.Circles {
		switch {
		case s.is(c.Paint, scene.Moved), c.Fill == s.paint[scene.First][0]:
			r.apart++
		case s.is(c.Paint, scene.First, scene.Second, scene.Result):
			inside = append(inside, c)
			if s.is(c.Paint, scene.Result) {
				r.marked++
			}
		}
	}
	cols, rows, full := measure.Lattice(inside)
	if full {
		r.rows, r.cols = int64(rows), int64(cols)
	}
	r.count = int64(len(inside)) + r.apart
	for i, c := range inside {
		b := measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}
		if i == 0 {
			r.box = b
		}
		r.box = around(r.box, b)
	}
	return r, len(inside) > 0
}

// squares are the cells of ruled faces, which must be one square grid. An area
// that is not ruled in ones has the ratio of its sides instead of a count.
func (s sight) squares() (r rectangle, err error) {
	var all measure.Box
	cell := 0
	// Where the picture says so, it is ruled in stripes of ten or not at all.
	ruled := !slices.ContainsFunc(s.Texts, func(t measure.Text) bool { return strings.Contains(t.Words, "without the single squares") })
	var faces []measure.Face
	for _, f := range s.Faces() {
		if !s.is(f.Paint, scene.First, scene.Second, scene.Result) {
			continue
		}
		if len(faces) == 0 {
			all = f.Box
		}
		all = around(all, f.Box)
		faces = append(faces, f)
		if f.Cells() > 1 {
			cell = f.W / f.Cols()
		}
	}
	if worth := s.crate(faces); worth > 0 {
		xs, ys := map[int]bool{}, map[int]bool{}
		for _, f := range faces {
			xs[f.X], ys[f.Y] = true, true
			if s.is(f.Paint, scene.Result) {
				r.marked += worth
			}
		}
		r.count, r.box = worth*int64(len(faces)), all
		if len(xs)*len(ys) == len(faces) {
			r.rows, r.cols = int64(len(ys)), int64(len(xs))*worth
		}
		return r, nil
	}
	area := 0
	if s.problem.Kind == arithmetic.Division {
		// What is left over lies apart from the array.
		var apart []measure.Face
		faces, apart = touching(faces)
		for i, f := range faces {
			if i == 0 {
				all = f.Box
			}
			all = around(all, f.Box)
		}
		for _, f := range apart {
			r.apart += int64(f.Cells())
		}
	}
	for _, f := range faces {
		n := f.Cells()
		ruled = ruled && cell > 0 && n > 0 && n*cell*cell == f.Area()
		area += f.Area()
		if s.is(f.Paint, scene.Result) {
			r.marked += int64(n)
		}
		r.count += int64(n)
	}
	r.count += r.apart
	if len(faces) == 0 {
		return r, nil
	}
	if area > all.Area() {
		return r, errors.New("the parts lie on one another")
	}
	if !ruled && !slices.ContainsFunc(s.Texts, func(t measure.Text) bool {
		return strings.Contains(t.Words, "to scale") || strings.Contains(t.Words, "without the single squares")
	}) {
		return r, errors.New("it is not ruled, and does not say so")
	}
	if !ruled && area < all.Area() {
		return r, errors.New("a part is missing")
	}
	if !ruled {
		g := new(big.Int).GCD(nil, nil, big.NewInt(int64(all.W)), big.NewInt(int64(all.H))).Int64()
		return rectangle{count: -1, rows: int64(all.H) / g, cols: int64(all.W) / g, box: all}, nil
	}
	r.box = all
	if area == all.Area() {
		r.rows, r.cols = int64(all.H/cell), int64(all.W/cell)
	}
	return r, nil
}

// compareArray compares the array with the numbers of the problem.
func (s sight) compareArray(r rectangle, t problems.Truth) error {
	n := func(i int) *big.Rat { return t.Numbers[i] }
	if r.count < 0 {
		if err := s.compareArea(t, true); s.problem.Kind != arithmetic.Product || err != nil && err != errUnread {
			return err
		}
		return agree("rows to columns", big.NewRat(r.rows, r.cols), new(big.Rat).Quo(n(0), n(1)))
	}
	if r.rows == 0 && r.count > r.apart {
		return errors.New("the rows are not full")
	}
	if err := both(s.readTotals(r, t), both(s.readSides(r.box, r.rows, r.cols), s.readSplits())); err != nil {
		return err
	}
	switch s.problem.Kind {
	case arithmetic.Product:
		if t.Value.Sign() == 0 {
			for _, m := range s.bare() {
				if !slices.ContainsFunc(append(slices.Clone(t.Numbers), t.Value), func(v *big.Rat) bool { return v.Cmp(m.Value) == 0 }) {
					return fmt.Errorf("%s is written beside the rows", m.Value.RatString())
				}
			}
			return agree("the things in the array", whole(r.count), t.Value)
		}
		return both(agree("the rows", whole(r.rows), n(0)), agree("the columns", whole(r.cols), n(1)))
	case arithmetic.Expression:
		return agree("the things in the array", whole(r.count), t.Value)
	case arithmetic.PartOf:
		return both(agree("the amount", whole(r.count), n(1)), agree("the part", whole(r.marked), t.Value))
	case arithmetic.Division:
		left := whole(0).SetInt(t.Remainder)
		if r.apart == 0 && left.Sign() > 0 {
			if !s.Says(left.RatString() + " left over") {
				return errors.New("what is left over is not there")
			}
			r.count += t.Remainder.Int64()
		}
		if r.rows == 0 {
			return agree("the things in the array", whole(r.count), n(0))
		}
		known, found := r.rows, r.cols
		if s.problem.Grouping {
			known, found = found, known
		}
		return both(agree("the things in the array", whole(r.count), n(0)),
			both(agree("the known side", whole(known), n(1)), agree("the found side", whole(found), whole(0).SetInt(t.Quotient))))
	case arithmetic.Missing:
		most := n(0)
		for _, v := range append(t.Numbers, t.Value) {
			if v.Cmp(most) > 0 {
				most = v
			}
		}
		return agree("the things in the array", whole(r.count), most)
	}
	return errUnread
}

// both is the first of two errors.
func both(a, b error) error {
	if a != nil {
		return a
	}
	return b
}
