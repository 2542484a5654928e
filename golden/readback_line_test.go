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

// axis is a number line as it was measured: its height, the places that are
// marked on it and the scale that the numbers under them give.
type axis struct {
	y      int
	points []int        // where round points stand
	places map[int]bool // those and the ticks
	measure.Scale
	sure  bool               // more than two numbers stand along the line, and all agree
	named map[int][]*big.Rat // what is written at the places of the line
	exact map[int]bool       // whether that stands just at the place
}

// readLine finds the number line: the longest level stroke, the points and ticks
// on it, and the numbers that stand under them. A claim about two sums has a line
// for each side.
func readLine(s sight, t problems.Truth) error {
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

// axis measures the line on a height.
func (s sight) axis(y int) (axis, error) {
	places := map[int]bool{}
	a := axis{y: y, places: places}
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
	// The scale comes from the numbers that stand just under their places, or
	// where there are not two of them from those beside their places too.
	var marks []measure.Mark
	a.named, a.exact = map[int][]*big.Rat{}, map[int]bool{}
	for _, m := range s.Marks() {
		if places[m.X] && m.Y < a.y && m.Y > a.y-60 && len(s.Jumps()) == 0 {
			a.named[m.X] = append(a.named[m.X], m.Value)
			a.exact[m.X] = true
		}
		if x, ok := s.place(m, a.y, places, beside); ok {
			a.named[x] = append(a.named[x], m.Value)
			near, _ := s.place(m, a.y, places, 0) // straight above it, or led to
			a.exact[x] = a.exact[x] || near == x
		}
	}
	for _, reach := range []int{1, nudge} {
		marks = nil
		for _, m := range s.Marks() {
			if x, ok := s.place(m, a.y, places, reach); ok {
				m.X = x
				marks = append(marks, m)
			}
		}
		if a.fit(marks) {
			if reach == 1 && !a.sure && len(marks) > 2 && !s.unscaled() && sparse(places) {
				a.sure = true
				return a, errors.New("the numbers that stand at their ticks are not on one scale")
			}
			break
		}
	}
	if a.At == nil {
		return a, errUnread
	}
	if a.Unit.Sign() <= 0 {
		return a, errors.New("the numbers fall from left to right")
	}
	for _, m := range marks {
		if s.unscaled() {
			a.sure = false
			break
		}
		if !a.within(nudge, m.X, m.Value) {
			return a, fmt.Errorf("%s stands under %s", m.Value.RatString(), a.Value(m.X).RatString())
		}
	}
	return a, nil
}

// sparse reports whether places lie so far apart that a number does not stand at
// another one's by chance.
func sparse(places map[int]bool) bool {
	const apart = 12
	for x := range places {
		for d := 1; d < apart; d++ {
			if places[x+d] {
				return false
			}
		}
	}
	return true
}

// nudge is how far, in units, a number may stand beside its place without a line
// to it, where its neighbours leave no room.
const nudge = 12

// beside is how far a name may stand from its place on a line that has no scale.
const beside = 16

// fit takes the scale of the two marks with which most of the others agree, and
// among several the one with which they agree best.
func (a *axis) fit(marks []measure.Mark) bool {
	best, least := 0, new(big.Rat)
	for i, m := range marks {
		for _, n := range marks[i+1:] {
			if m.X == n.X || m.Value.Cmp(n.Value) == 0 {
				continue
			}
			try, agreed, off := axis{Scale: measure.ScaleOf(m, n)}, 0, new(big.Rat)
			for _, o := range marks {
				if try.near(o.X, o.Value) {
					agreed++
					d := new(big.Rat).Sub(try.Value(o.X), o.Value)
					off.Add(off, d.Quo(d.Abs(d), new(big.Rat).Abs(try.Unit)))
				}
			}
			if agreed > best || agreed == best && off.Cmp(least) < 0 {
				a.Scale, best, least = try.Scale, agreed, off
			}
		}
	}
	a.sure = best > 2 && 2*best > len(marks)
	return best > 0
}

// place is where on the line a number belongs that stands under it: straight
// above it or within reach, or at the other end of the thin line that leads up
// from it.
func (s sight) place(m measure.Mark, y int, places map[int]bool, reach int) (x int, ok bool) {
	const row = 120 // the numbers of a line stand no further under it
	if m.Y <= y || m.Y > y+row {
		return 0, false
	}
	lowest := 0 // the leader that ends nearest to the number is its own
	for _, p := range s.Paths {
		ends := [2]measure.Point{p.Points[0], p.Points[len(p.Points)-1]}
		if len(p.Curves) > 0 || p.Closed || max(ends[0].Y, ends[1].Y) >= m.Y || min(ends[0].Y, ends[1].Y) < y || ends[0].Y == ends[1].Y {
			continue
		}
		if ends[0].Y > ends[1].Y {
			ends[0], ends[1] = ends[1], ends[0]
		}
		if off := ends[1].X - m.X; max(off, -off) <= 2 && places[ends[0].X] && ends[1].Y > lowest {
			x, ok, lowest = ends[0].X, true, ends[1].Y
		}
	}
	if ok {
		return x, true
	}
	for off := range reach + 1 {
		for _, x := range []int{m.X + off, m.X - off} {
			if places[x] {
				return x, true
			}
		}
	}
	return 0, false
}

// near reports whether a value belongs at x: to within two units of length, one
// for its own rounding and one for that of the marks that gave the scale.
func (a axis) near(x int, v *big.Rat) bool { return a.within(2, x, v) }

func (a axis) within(units int64, x int, v *big.Rat) bool {
	off, unit := new(big.Rat).Sub(a.Value(x), v), new(big.Rat).Abs(a.Unit)
	return off.Abs(off).Cmp(unit.Mul(unit, big.NewRat(units, 1))) <= 0
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
