package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
)

// axis is a number line as it was measured: its height, the places that are
// marked on it and the scale that the numbers under them give.
type axis struct {
	y      int
	points []int // where round points stand
	measure.Scale
}

// readLine finds the number line: the longest level stroke, the points and ticks
// on it, and the numbers that stand straight under them.
func readLine(s sight, t problems.Truth) error {
	for _, text := range s.Texts {
		if text.Words == "not to scale" {
			return errUnread
		}
	}
	a, err := s.axis()
	if err != nil {
		return err
	}
	ends := a.ends(s.problem, t)
	for _, x := range a.points {
		if !slices.ContainsFunc(ends, func(v *big.Rat) bool { return a.near(x, v) }) {
			return fmt.Errorf("a point stands at %s", a.Value(x).RatString())
		}
	}
	for _, v := range ends {
		if !slices.ContainsFunc(a.points, func(x int) bool { return a.near(x, v) }) {
			return fmt.Errorf("no point stands at %s", v.RatString())
		}
	}
	return s.jumps(a, ends)
}

// ends are the values at which points must stand: where the jumps begin and end,
// or the numbers to be compared.
func (a axis) ends(p arithmetic.Problem, t problems.Truth) []*big.Rat {
	n := t.Numbers
	switch p.Kind {
	case arithmetic.Addition:
		return []*big.Rat{n[0], t.Value}
	case arithmetic.Subtraction:
		// Taken away from the first, or counted up from the second: either is
		// how the difference is found.
		if slices.ContainsFunc(a.points, func(x int) bool { return a.near(x, t.Value) }) {
			return []*big.Rat{n[0], t.Value}
		}
		return n
	case arithmetic.Missing:
		// The jump lies between two of the three numbers of the equation.
		var two []*big.Rat
		for _, v := range append(slices.Clone(n), t.Value) {
			if slices.ContainsFunc(a.points, func(x int) bool { return a.near(x, v) }) {
				two = append(two, v)
			}
		}
		return two
	case arithmetic.Rounding:
		return []*big.Rat{n[0], t.Value}
	case arithmetic.Claim, arithmetic.Comparison:
		if o, ok := p.Left.(arithmetic.Operation); ok && o.Op == arithmetic.Add {
			return []*big.Rat{n[0], t.Sides[0]} // the upper of two lines
		}
		return t.Sides
	}
	return n
}

// axis measures the line.
func (s sight) axis() (axis, error) {
	var a axis
	longest := 0
	for _, p := range s.Paths {
		if len(p.Points) >= 2 && len(p.Curves) == 0 && !p.Closed && p.Points[0].Y == p.Points[1].Y {
			if w := p.Box().W; w > longest {
				a.y, longest = p.Points[0].Y, w
			}
		}
	}
	places := map[int]bool{}
	for _, c := range s.Circles {
		if c.Y == a.y {
			a.points = append(a.points, c.X)
			places[c.X] = true
		}
	}
	for _, p := range s.Paths {
		if p.Closed {
			continue // the head of the arrow
		}
		for i := range p.Points[1:] {
			q, r := p.Points[i], p.Points[i+1]
			if q.X == r.X && min(q.Y, r.Y) < a.y && a.y < max(q.Y, r.Y) {
				places[q.X] = true
			}
		}
	}
	var marks []measure.Mark
	for _, m := range s.Marks() {
		if x, ok := s.place(m, a.y, places); ok {
			m.X = x
			marks = append(marks, m)
		}
	}
	if len(marks) < 2 || marks[0].X == marks[len(marks)-1].X || marks[0].Value.Cmp(marks[len(marks)-1].Value) == 0 {
		return a, errUnread
	}
	a.Scale = measure.ScaleOf(marks[0], marks[len(marks)-1])
	if a.Unit.Sign() <= 0 {
		return a, errors.New("the numbers fall from left to right")
	}
	for _, m := range marks {
		if !a.near(m.X, m.Value) {
			return a, fmt.Errorf("%s stands under %s", m.Value.RatString(), a.Value(m.X).RatString())
		}
	}
	return a, nil
}

// place is where on the line a number belongs that stands under it: straight
// above it, or at the other end of the thin line that leads up from it.
func (s sight) place(m measure.Mark, y int, places map[int]bool) (x int, ok bool) {
	const row = 90 // the numbers of a line stand no further under it
	if m.Y <= y || m.Y > y+row {
		return 0, false
	}
	for _, p := range s.Paths {
		ends := [2]measure.Point{p.Points[0], p.Points[len(p.Points)-1]}
		if len(p.Curves) > 0 || p.Closed || max(ends[0].Y, ends[1].Y) >= m.Y || min(ends[0].Y, ends[1].Y) < y || ends[0].Y == ends[1].Y {
			continue
		}
		if ends[0].Y > ends[1].Y {
			ends[0], ends[1] = ends[1], ends[0]
		}
		if off := ends[1].X - m.X; max(off, -off) <= 2 && places[ends[0].X] {
			return ends[0].X, true
		}
	}
	return m.X, places[m.X]
}

// near reports whether a value belongs at x, to within one unit of length.
func (a axis) near(x int, v *big.Rat) bool {
	off := new(big.Rat).Sub(a.Value(x), v)
	return off.Abs(off).Cmp(a.Unit) <= 0
}

// jumps: every jump begins where the last one ended, and together they lead from
// one of the ends to the other.
func (s sight) jumps(a axis, ends []*big.Rat) error {
	jumps := s.Jumps()
	if len(jumps) == 0 || len(ends) != 2 {
		return nil
	}
	if k := s.problem.Kind; k == arithmetic.Claim || k == arithmetic.Comparison {
		return nil // jumps from 0 to either side
	}
	for i := range jumps[1:] {
		if jumps[i].X2 != jumps[i+1].X1 {
			return fmt.Errorf("a jump ends at %d and the next begins at %d", jumps[i].X2, jumps[i+1].X1)
		}
	}
	from, to := jumps[0].X1, jumps[len(jumps)-1].X2
	for _, turn := range [][2]*big.Rat{{ends[0], ends[1]}, {ends[1], ends[0]}} {
		if a.near(from, turn[0]) && a.near(to, turn[1]) {
			return nil
		}
	}
	return fmt.Errorf("the jumps lead from %s to %s", a.Value(from).RatString(), a.Value(to).RatString())
}
