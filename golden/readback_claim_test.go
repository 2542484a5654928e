package golden

import (
	"errors"
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
			if !s.Says(n.String()) {
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
		o := side.(arithmetic.Operation)
		a, okA := o.Left.(arithmetic.Number)
		b, okB := o.Right.(arithmetic.Number)
		if !okA || !okB {
			continue
		}
		cols, rows, full := measure.Lattice(list)
		if !full {
			return errors.New("the rows of an array are not full")
		}
		err := both(agree("the rows", whole(int64(rows)), big.NewRat(a.Value.Num(), 1)), agree("the columns", whole(int64(cols)), big.NewRat(b.Value.Num(), 1)))
		if err != nil {
			return err
		}
	}
	return nil
}

// readPairNames reads the arrays of a number that are not to scale by what is
// written under them: 4 × 26 or 26 × 4.
func (s sight) readPairNames(t problems.Truth, all bool) error {
	named := 0
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
	if want := (len(t.Pairs) + 1) / 2; all && named != want {
		return errors.New("an array has no name, or two")
	}
	return nil
}
