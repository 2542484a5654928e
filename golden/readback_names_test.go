package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
)

// readNames reads a line on which too few numbers stand for a scale, or that is
// not to scale, by what is written: every point has a name that is one of the
// values of the problem, every value has a point, and every jump leads as far as
// its name says from the name of one place to that of the next.
func (s sight) readNames(a axis, t problems.Truth) error {
	points := slices.Clone(a.points)
	is := func(x int, v *big.Rat) bool {
		return slices.ContainsFunc(a.named[x], func(n *big.Rat) bool { return n.Cmp(v) == 0 })
	}
	for _, x := range points {
		if len(a.named[x]) == 0 {
			return errUnread
		}
	}
	ends := t.Sides
	switch n := t.Numbers; s.problem.Kind {
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Expression, arithmetic.Rounding:
		ends = []*big.Rat{n[0], t.Value}
		if s.problem.Kind == arithmetic.Subtraction && !slices.ContainsFunc(points, func(x int) bool { return is(x, t.Value) }) {
			ends = n
		}
	case arithmetic.Missing:
		for _, v := range append(slices.Clone(n), t.Value) {
			if slices.ContainsFunc(points, func(x int) bool { return is(x, v) }) {
				ends = append(ends, v)
			}
		}
		if len(ends) < 2 {
			return fmt.Errorf("%d points for a jump", len(ends))
		}
	case arithmetic.Show, arithmetic.Ordering:
		ends = n
	}
	for _, x := range points {
		if !slices.ContainsFunc(ends, func(v *big.Rat) bool { return is(x, v) }) {
			if !a.exact[x] {
				return errUnread // the name may be that of a neighbor
			}
			return fmt.Errorf("a point is called %s", a.named[x][0].RatString())
		}
	}
	for _, v := range ends {
		if !slices.ContainsFunc(points, func(x int) bool { return is(x, v) }) {
			return fmt.Errorf("no point is called %s", v.RatString())
		}
	}
	return s.namedJumps(a, t)
}

// namedJumps: a jump between two places with names is as long as they are apart.
func (s sight) namedJumps(a axis, t problems.Truth) error {
	var jumps []measure.Jump
	for _, j := range s.Jumps() {
		if j.Y == a.y {
			jumps = append(jumps, j)
		}
	}
	if k := s.problem.Kind; len(jumps) == 0 && len(a.points) > 1 && (k == arithmetic.Addition || k == arithmetic.Subtraction || k == arithmetic.Missing) {
		return errNoJump
	}
	for i, j := range jumps {
		if k := s.problem.Kind; i > 0 && (k == arithmetic.Addition || k == arithmetic.Subtraction) && jumps[i-1].X2 != j.X1 {
			return fmt.Errorf("a jump ends at %d and the next begins at %d", jumps[i-1].X2, j.X1)
		}
	}
	slices.SortStableFunc(jumps, func(a, b measure.Jump) int { return a.X1 + a.X2 - b.X1 - b.X2 })
	names := s.namesOf(0, a.y, jumps)
	if len(names) != len(jumps) {
		return nil
	}
	sum := new(big.Rat)
	for _, n := range names {
		sum.Add(sum, n.v)
	}
	sum.Abs(sum)
	switch s.problem.Kind {
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Missing:
		if len(names) > 0 && !slices.ContainsFunc(append(slices.Clone(t.Numbers), t.Value), func(v *big.Rat) bool { return v.Cmp(sum) == 0 }) {
			return fmt.Errorf("the jumps come to %s", sum.RatString())
		}
	}
	for i, j := range jumps {
		from, to := a.named[j.X1], a.named[j.X2]
		if len(from) != 1 || len(to) != 1 || !a.exact[j.X1] || !a.exact[j.X2] {
			continue
		}
		if way := new(big.Rat).Sub(to[0], from[0]); way.Cmp(names[i].v) != 0 {
			return fmt.Errorf("the jump from %s to %s is called %s", from[0].RatString(), to[0].RatString(), names[i].v.RatString())
		}
	}
	return nil
}
