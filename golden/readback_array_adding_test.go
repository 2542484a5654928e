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

// readAdding: each of the two terms has as many things as it comes to, in full rows
// or in lines of five, or its number stands on a bowl; and no other number is
// written than their sides and that.
func readAdding(s sight, t problems.Truth) error {
	o := s.problem.Left.(arithmetic.Operation)
	var written []int64
	for i, e := range []arithmetic.Expr{o.Left, o.Right} {
		want := worthOf(e)
		product, isProduct := e.(arithmetic.Operation)
		err := error(nil)
		if isProduct {
			written = append(written, worthOf(product.Left).Num().Int64(), worthOf(product.Right).Num().Int64())
			err = s.readTerm([]scene.Role{scene.First, scene.Second}[i], written[len(written)-2], written[len(written)-1])
		} else {
			written = append(written, want.Num().Int64())
			err = s.readLoose([]scene.Role{scene.First, scene.Second}[i], want.Num().Int64())
		}
		if err != nil {
			return err
		}
	}
	var found []int64
	for _, m := range s.bare() {
		if !s.inSum(m) {
			found = append(found, m.Value.Num().Int64())
		}
	}
	if lowest := s.lowest(); !slices.ContainsFunc(s.Texts, func(text measure.Text) bool { return text.Words == "+" && text.Y < lowest+20 }) {
		return errors.New("no plus stands between the terms")
	}
	slices.Sort(found)
	slices.Sort(written)
	if !slices.Equal(found, written) {
		return fmt.Errorf("the numbers %v are written, not %v", found, written)
	}
	return nil
}

// even: the counters of a line lie as far apart as any two of the picture that are
// next to each other.
func (s sight) even(circles []measure.Circle) error {
	least := 0
	next := func(list []measure.Circle, look func(d int)) {
		for i, c := range list {
			if i > 0 && list[i-1].Y == c.Y && c.X > list[i-1].X {
				look(c.X - list[i-1].X)
			}
		}
	}
	next(s.Circles, func(d int) {
		if least == 0 || d < least {
			least = d
		}
	})
	var err error
	next(circles, func(d int) {
		if d != least {
			err = fmt.Errorf("a counter lies %d from the next, others %d", d, least)
		}
	})
	return err
}

// lowest is where the counters and faces end.
func (s sight) lowest() int {
	y := 0
	for _, c := range s.Circles {
		y = max(y, c.Y+c.R)
	}
	for _, f := range s.pieces() {
		y = max(y, f.Bottom())
	}
	return y
}

// inSum reports whether a number stands on a line of numbers and signs that are
// texts of their own; a fact under an array is one text.
func (s sight) inSum(m measure.Mark) bool {
	return slices.ContainsFunc(s.Texts, func(t measure.Text) bool {
		dy := t.Y - t.Size*36/100 - m.Y
		return t.Words == "=" && max(dy, -dy) <= 2
	})
}

// inRole are the counters and faces in the paint of a role.
func (s sight) inRole(role scene.Role) (circles []measure.Circle, faces []measure.Face) {
	for _, c := range s.Circles {
		if s.is(c.Paint, role) {
			circles = append(circles, c)
		}
	}
	for _, f := range s.Faces() {
		if s.is(f.Paint, role) {
			faces = append(faces, f)
		}
	}
	return circles, faces
}

// readTerm reads one array of counters, squares, an area to scale or a sketch.
func (s sight) readTerm(role scene.Role, rows, cols int64) error {
	circles, faces := s.inRole(role)
	if len(circles) > 0 {
		c, r, full := measure.Lattice(circles)
		if !full || int64(r) != rows || int64(c) != cols {
			return fmt.Errorf("%d counters in %d rows for %d rows of %d", len(circles), r, rows, cols)
		}
		return both(s.even(circles), s.overAndBeside(circles, rows, cols))
	}
	if len(faces) != 1 {
		return fmt.Errorf("%d faces for an array", len(faces))
	}
	f := faces[0]
	if err := s.bracketed(f); err != nil {
		return err
	}
	const reach = 90
	if above := s.above(f.Box, 1); !slices.Equal(above, []int64{cols}) {
		return fmt.Errorf("%v over an array of %d columns", above, cols)
	}
	if !slices.ContainsFunc(s.bare(), func(m measure.Mark) bool {
		return m.X < f.X && m.X > f.X-reach && m.Y > f.Y-20 && m.Y < f.Bottom()+20 && m.Value.Cmp(whole(rows)) == 0
	}) {
		return fmt.Errorf("%d does not stand beside an array of as many rows", rows)
	}
	switch {
	case s.unscaled():
		return nil
	case f.Cells() > 1 && (int64(f.Rows()) != rows || int64(f.Cols()) != cols):
		return fmt.Errorf("an array of %d × %d for %d × %d", f.Rows(), f.Cols(), rows, cols)
	}
	return agree("rows to columns", big.NewRat(int64(f.H), int64(f.W)), big.NewRat(rows, cols))
}

// bracketed: the bracket over a face begins and ends where the face does.
func (s sight) bracketed(f measure.Face) error {
	const reach = 40
	for _, p := range s.Paths {
		b := p.Box()
		if len(p.Points) != 4 || p.Closed || b.H > 20 || b.Bottom() > f.Y || b.Bottom() < f.Y-reach {
			continue
		}
		if off := b.X - f.X; off >= 0 && off <= 2 && f.Right()-b.Right() == off {
			return nil
		}
	}
	return fmt.Errorf("no bracket stands over the array at %v", f.Box)
}

// readLoose reads a number: counters in lines of five, or a bowl.
func (s sight) readLoose(role scene.Role, n int64) error {
	circles, _ := s.inRole(role)
	if len(circles) == 0 {
		if !slices.ContainsFunc(s.Paths, func(p measure.Path) bool { return p.Closed && len(p.Points) == 4 && s.is(p.Paint, role) }) {
			return errors.New("there is neither a bowl nor a counter")
		}
		return nil // its number is among those written
	}
	line := map[int]int64{}
	for _, c := range circles {
		line[c.Y]++
	}
	if err := s.even(circles); err != nil {
		return err
	}
	if int64(len(circles)) != n || int64(len(line)) != (n+4)/5 {
		return fmt.Errorf("%d counters in %d lines for %d", len(circles), len(line), n)
	}
	return nil
}
