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

// readLine finds the number line: the longest level stroke, the points and ticks
// on it, and the numbers that stand under them. A claim about two sums has a line
// for each side.
func readLine(s sight, t problems.Truth) error {
	switch s.problem.Kind {
	case arithmetic.Product, arithmetic.Division, arithmetic.Counting, arithmetic.Multiples, arithmetic.CommonMultiples:
		return s.readRows(t)
	case arithmetic.Estimate:
		return s.readEstimated(t)
	}
	ys := s.lines()
	_, isLeft := s.problem.Left.(arithmetic.Operation)
	_, isRight := s.problem.Right.(arithmetic.Operation)
	if len(ys) == 2 && (isLeft || isRight) && s.problem.Kind != arithmetic.Missing {
		for i, side := range []arithmetic.Expr{s.problem.Left, s.problem.Right} {
			p := aloneProblem(side)
			truth, err := problems.Work(p)
			if err == nil {
				err = sight{s.part(ys, i == 0), p, s.paint}.readOne(ys[i], truth)
			}
			if err != nil {
				return err
			}
		}
		return nil
	}
	if len(ys) != 1 {
		return fmt.Errorf("%d lines", len(ys))
	}
	if s.problem.Kind == arithmetic.Closer {
		return s.readCloser(ys[0], t)
	}
	return s.readOne(ys[0], t)
}

// aloneProblem is one side of a statement as a problem of its own.
func aloneProblem(side arithmetic.Expr) arithmetic.Problem {
	p := arithmetic.Problem{Kind: arithmetic.Show, Left: side}
	if o, is := side.(arithmetic.Operation); is {
		p.Kind = arithmetic.KindOf(o.Op)
		if _, chain := o.Left.(arithmetic.Operation); chain {
			p.Kind = arithmetic.Expression
		}
	}
	return p
}

// lines are the heights of the longest level strokes, from the top.
func (s sight) lines() []int {
	longest := 0
	var ys []int
	for _, p := range s.Paths {
		if len(p.Points) < 2 || len(p.Curves) > 0 || p.Closed || p.Points[0].Y != p.Points[1].Y {
			continue
		}
		if w := p.Box().W; w > longest {
			ys, longest = nil, w
		} else if w < longest {
			continue
		}
		ys = append(ys, p.Points[0].Y)
	}
	slices.Sort(ys)
	return slices.Compact(ys)
}

// part is what of a drawing belongs to the upper or the lower of two lines. The
// numbers of the upper one reach down to the lower one where that has no jumps.
func (s sight) part(ys []int, upper bool) measure.Drawing {
	d := s.Drawing
	middle := (ys[0] + ys[1]) / 2
	between := ys[1] - 10
	if slices.ContainsFunc(s.Jumps(), func(j measure.Jump) bool { return j.Y == ys[1] }) {
		between = middle
	}
	out := func(y, at int) bool { return y < at != upper }
	d.Rects = slices.DeleteFunc(slices.Clone(d.Rects), func(r measure.Rect) bool { return out(r.Y, middle) })
	d.Circles = slices.DeleteFunc(slices.Clone(d.Circles), func(c measure.Circle) bool { return out(c.Y, middle) })
	d.Paths = slices.DeleteFunc(slices.Clone(d.Paths), func(p measure.Path) bool {
		b := p.Box()
		return b.H == 0 && out(b.Y, between) || b.H > 0 && out(b.Y, middle)
	})
	d.Texts = slices.DeleteFunc(slices.Clone(d.Texts), func(t measure.Text) bool { return out(t.Y, between) })
	return d
}

func (s sight) readOne(y int, t problems.Truth) error {
	a, err := s.axis(y)
	if err == nil && !s.unscaled() {
		err = both(s.compareLine(a, t), s.namedJumps(a, t))
	}
	if (err != nil || s.unscaled()) && !a.sure {
		return s.readNames(a, t)
	}
	return err
}

// compareLine looks for the points and jumps that the problem has.
func (s sight) compareLine(a axis, t problems.Truth) error {
	ends := a.ends(s.problem, t)
	switch s.problem.Kind {
	case arithmetic.Claim, arithmetic.Comparison, arithmetic.Ordering:
		if len(a.points) < len(ends) {
			return fmt.Errorf("%d points for %d numbers", len(a.points), len(ends))
		}
	case arithmetic.Missing:
		zero := slices.ContainsFunc(append(slices.Clone(t.Numbers), t.Value), func(v *big.Rat) bool { return v.Sign() == 0 })
		if len(ends) < 2 && !zero {
			return fmt.Errorf("%d points for a jump", len(ends))
		}
	}
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
	if err := s.lengths(a, append(slices.Clone(t.Within), ends...)); err != nil {
		return err
	}
	return s.jumps(a, ends)
}

// lengths: the strips that lie along the line from 0 have no gaps, and end at one
// of the values.
func (s sight) lengths(a axis, values []*big.Rat) error {
	rows := map[int][]measure.Box{}
	for _, r := range s.Rects {
		if s.is(r.Paint, scene.First, scene.Second, scene.Result) {
			rows[r.Y] = append(rows[r.Y], r.Box)
		}
	}
	for _, row := range rows {
		slices.SortFunc(row, func(p, q measure.Box) int { return p.X - q.X })
		for i := range row[1:] {
			if row[i].Right() != row[i+1].X {
				return fmt.Errorf("a gap in the strips at %d", row[i].Right())
			}
		}
		if from := row[0].X; !a.near(from, new(big.Rat)) {
			return fmt.Errorf("the strips begin at %s", a.Value(from).RatString())
		}
		to := row[len(row)-1].Right()
		if !slices.ContainsFunc(values, func(v *big.Rat) bool { return a.near(to, v) }) {
			return fmt.Errorf("the strips end at %s", a.Value(to).RatString())
		}
	}
	return nil
}

// ends are the values at which points must stand: where the jumps begin and end,
// or the numbers to be compared.
func (a axis) ends(p arithmetic.Problem, t problems.Truth) []*big.Rat {
	n := t.Numbers
	switch p.Kind {
	case arithmetic.Addition:
		return []*big.Rat{n[0], t.Value}
	case arithmetic.Expression:
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
		return t.Sides
	}
	return n
}

// jumps: every jump begins where the last one ended, and together they lead from
// one of the ends to the other.
func (s sight) jumps(a axis, ends []*big.Rat) error {
	jumps := s.Jumps()
	if k := s.problem.Kind; len(jumps) == 0 && len(ends) == 2 && (k == arithmetic.Addition || k == arithmetic.Subtraction || k == arithmetic.Missing) && ends[0].Cmp(ends[1]) != 0 {
		return errNoJump
	}
	if len(jumps) == 0 || len(ends) > 2 {
		return nil
	}
	if len(ends) == 1 {
		// A number is jumped from 0, or from a round number before it.
		if to := jumps[len(jumps)-1].X2; !a.near(to, ends[0]) {
			return fmt.Errorf("the jumps lead to %s", a.Value(to).RatString())
		}
		return nil
	}
	if k := s.problem.Kind; k == arithmetic.Claim || k == arithmetic.Comparison {
		return nil // jumps from 0 to either side
	}
	if s.problem.Kind == arithmetic.Rounding && len(jumps) > 1 {
		return s.distances(a, jumps, ends)
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

// distances: of the two jumps from a number to its neighbors one leads to what it
// is rounded to, and the other is not shorter.
func (s sight) distances(a axis, jumps []measure.Jump, ends []*big.Rat) error {
	to := slices.IndexFunc(jumps, func(j measure.Jump) bool { return a.near(j.X2, ends[1]) })
	if len(jumps) != 2 || to < 0 || !a.near(jumps[0].X1, ends[0]) || jumps[0].X1 != jumps[1].X1 {
		return errors.New("no jump leads from the number to what it is rounded to")
	}
	long := func(j measure.Jump) int { return max(j.X2-j.X1, j.X1-j.X2) }
	if long(jumps[to]) > long(jumps[1-to])+1 {
		return errors.New("it is rounded to the neighbor that is farther away")
	}
	return nil
}
