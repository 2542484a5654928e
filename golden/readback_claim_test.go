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

// readArrayClaim reads two arrays of counters beside each other, or one and a
// number on a plate.
func (s sight) readArrayClaim(t problems.Truth) error {
	roles := []scene.Role{scene.First, scene.Second}
	for i, side := range []arithmetic.Expr{s.problem.Left, s.problem.Right} {
		if n, alone := side.(arithmetic.Number); alone {
			if !slices.ContainsFunc(s.Texts, func(text measure.Text) bool { return text.Words == n.String() && text.Size < scene.Large }) {
				return errors.New("the number beside the array is not there")
			}
			continue
		}
		var list, moved []measure.Circle
		for _, c := range s.Circles {
			if s.is(c.Paint, roles[i]) {
				list = append(list, c)
			}
		}
		for _, c := range s.Circles {
			if len(list) == 0 && s.is(c.Paint, scene.Moved) {
				moved = append(moved, c) // an array that is turned
			}
		}
		if len(list) == 0 {
			list = moved
		}
		if err := agree("the things in an array", whole(int64(len(list))), t.Sides[i]); err != nil {
			return err
		}
		cols, rows, full := measure.Lattice(list)
		if !full {
			return errors.New("the rows of an array are not full")
		}
		if err := both(s.readSplits(), s.overAndBeside(list, int64(rows), int64(cols))); err != nil {
			return err
		}
		o := side.(arithmetic.Operation)
		a, okA := o.Left.(arithmetic.Number)
		b, okB := o.Right.(arithmetic.Number)
		if !okA || !okB {
			continue
		}
		err := both(agree("the rows", whole(int64(rows)), big.NewRat(a.Value.Num(), 1)), agree("the columns", whole(int64(cols)), big.NewRat(b.Value.Num(), 1)))
		if err != nil {
			return err
		}
	}
	return nil
}

// overAndBeside reads the numbers over an array of counters and beside it, which
// another array may stand on the left of.
func (s sight) overAndBeside(list []measure.Circle, rows, cols int64) error {
	lo, hi := list[0], list[0]
	for _, c := range list {
		lo.X, lo.Y, hi.X, hi.Y = min(lo.X, c.X), min(lo.Y, c.Y), max(hi.X, c.X), max(hi.Y, c.Y)
	}
	const reach = 90
	over, beside := int64(0), int64(0)
	row := 0 // of the numbers just above it: those further up belong to another
	for _, m := range s.bare() {
		if m.Y < lo.Y && m.X >= lo.X && m.X <= hi.X {
			row = max(row, m.Y)
		}
	}
	for _, m := range s.bare() {
		v := m.Value.Num().Int64()
		if m.Y < lo.Y && m.Y >= row-2 && m.X >= lo.X && m.X <= hi.X {
			over += v
		}
		if m.Y >= lo.Y && m.Y <= hi.Y && m.X < lo.X && m.X > lo.X-reach {
			beside += v
		}
	}
	if over != 0 && over != cols || beside != 0 && beside != rows {
		return fmt.Errorf("%d rows of %d beside %d and under %d", rows, cols, beside, over)
	}
	return nil
}

// readPairNames reads the arrays of a number that are not to scale by what is
// written under them: 4 × 26 or 26 × 4.
func (s sight) readPairNames(t problems.Truth, all bool) error {
	named, drawn := 0, len(s.pieces())
	for _, text := range s.Texts {
		first, _, _ := strings.Cut(text.Words, " or ")
		first, turned := strings.CutSuffix(first, ", turned")
		a, b, ok := strings.Cut(first, " × ")
		if !ok {
			continue
		}
		if turned {
			a, b = b, a
		}
		if !slices.ContainsFunc(t.Pairs, func(p [2]int64) bool {
			return arithmetic.Grouped(p[0]) == a && arithmetic.Grouped(p[1]) == b
		}) {
			return errors.New("an array is called " + text.Words)
		}
		named++
	}
	if named != drawn {
		return fmt.Errorf("%d names for %d arrays", named, drawn)
	}
	if want := (len(t.Pairs) + 1) / 2; all && named != want {
		return errors.New("an array has no name, or two")
	}
	return nil
}
