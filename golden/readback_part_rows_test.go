package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
)

// Rows of equal jumps of a fraction or a decimal.

// partTicks: on a line of fractions or decimals every tick stands where a whole
// number of parts ends.
func (s sight) partTicks(a axis, first measure.Jump, want []*big.Rat) error {
	parts := big.NewRat(max(1, s.problem.Run.Parts), 1)
	for _, v := range append(slices.Clone(want), s.total()) {
		if den := new(big.Rat).SetInt(v.Denom()); !new(big.Rat).Quo(parts, den).IsInt() {
			parts.Mul(parts, den)
		}
	}
	if o, is := s.problem.Left.(arithmetic.Operation); is {
		if b := o.Right.(arithmetic.Number).Value.Den(); !new(big.Rat).Quo(parts, big.NewRat(b, 1)).IsInt() {
			parts.Mul(parts, big.NewRat(b, 1))
		}
	}
	if parts.Cmp(whole(1)) == 0 {
		return nil
	}
	each := new(big.Rat).Quo(big.NewRat(int64(first.X2-first.X1), 1), new(big.Rat).Mul(new(big.Rat).Sub(want[1], want[0]), parts))
	for x := range a.places {
		// Coordinates are whole numbers: a tick may be half a unit off.
		off := new(big.Rat).Quo(big.NewRat(int64(x-first.X1), 1), each)
		near := floor(new(big.Rat).Add(off, big.NewRat(1, 2)))
		if off.Sub(off, near).Mul(off, each).Abs(off).Cmp(big.NewRat(1, 2)) > 0 {
			return fmt.Errorf("a tick at %d ends no part", x)
		}
	}
	return nil
}

// between reports whether a number stands at x on the line on which two others stand
// at x1 and x2, to within a unit of the paper.
func between(x1, x2 int, v1, v2 *big.Rat, x int, v *big.Rat) bool {
	slope := new(big.Rat).Quo(big.NewRat(int64(x2-x1), 1), new(big.Rat).Sub(v2, v1))
	at := new(big.Rat).Mul(slope, new(big.Rat).Sub(v, v1))
	off := at.Sub(at, big.NewRat(int64(x-x1), 1))
	return off.Abs(off).Cmp(big.NewRat(1, 1)) <= 0
}

// readFractionTotal: the jumps of a division by a fraction end on the one point, which
// is the total.
func (s sight) readFractionTotal(y int) error {
	jumps := s.Jumps()
	for _, c := range s.Circles {
		if c.Y != y || c.X != jumps[len(jumps)-1].X2 {
			return fmt.Errorf("a point stands at %d, %d", c.X, c.Y)
		}
	}
	if len(s.Circles) != 1 {
		return fmt.Errorf("%d points for the total", len(s.Circles))
	}
	return nil
}
