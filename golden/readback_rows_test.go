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

// readRows reads rows of equal jumps: so many on each line, all equally long, each
// landing with its number under it.
func (s sight) readRows(t problems.Truth) error {
	ys := s.lines()
	want := s.rowsWanted(t)
	if len(ys) != len(want) {
		return fmt.Errorf("%d lines for %d rows", len(ys), len(want))
	}
	for i, y := range ys {
		part := s
		if len(ys) == 2 {
			part = sight{s.part(ys, i == 0), s.problem, s.paint}
		}
		if err := part.readRow(y, want[i]); err != nil {
			return err
		}
	}
	switch s.problem.Kind {
	case arithmetic.Division:
		if t.Quotient == nil {
			return s.readFractionTotal(ys[0])
		}
		return s.readRest(ys[0], t)
	case arithmetic.CommonMultiples:
		return both(s.readMeeting(ys, t), s.readList(t.List))
	}
	jumps := s.Jumps()
	ends := []int{jumps[len(jumps)-1].X2}
	if s.problem.Kind == arithmetic.Counting {
		ends = append(ends, jumps[0].X1)
	}
	for _, c := range s.Circles {
		if c.Y != ys[0] || !slices.Contains(ends, c.X) {
			return fmt.Errorf("a point stands at %d, %d", c.X, c.Y)
		}
	}
	if len(s.Circles) != len(ends) {
		return fmt.Errorf("%d points for the ends of a row", len(s.Circles))
	}
	if s.problem.Kind == arithmetic.Product {
		return nil
	}
	return s.readList(t.List)
}

// readList: the large numbers at the foot, if there are any, are those of the list,
// or its first ones and the last.
func (s sight) readList(want []int64) error {
	parts := max(1, s.problem.Run.Parts)
	var list []*big.Rat
	for _, line := range s.Lines() {
		for _, w := range line {
			if v, ok := w.Value(); ok && w.Size >= scene.Large {
				list = append(list, v)
			}
		}
	}
	for i, v := range list {
		at := i
		if i == len(list)-1 {
			at = len(want) - 1
		}
		if at >= len(want) || v.Cmp(big.NewRat(want[at], parts)) != 0 {
			return fmt.Errorf("%s stands at the foot", v.RatString())
		}
	}
	return nil
}

// rowsWanted are the numbers from which the rows begin and on which they land.
func (s sight) rowsWanted(t problems.Truth) [][]*big.Rat {
	steps := func(by *big.Rat, count int64) []*big.Rat {
		list := []*big.Rat{new(big.Rat)}
		for range count {
			list = append(list, new(big.Rat).Add(list[len(list)-1], by))
		}
		return list
	}
	parts := max(1, s.problem.Run.Parts)
	var listed []*big.Rat
	for _, n := range t.List {
		listed = append(listed, big.NewRat(n, parts))
	}
	n := make([]int64, len(t.Numbers))
	for i, v := range t.Numbers {
		n[i] = v.Num().Int64()
	}
	switch s.problem.Kind {
	case arithmetic.Product:
		return [][]*big.Rat{steps(t.Numbers[1], n[0])}
	case arithmetic.Division:
		if t.Quotient == nil {
			return [][]*big.Rat{steps(t.Numbers[1], t.Value.Num().Int64())}
		}
		return [][]*big.Rat{steps(t.Numbers[1], t.Quotient.Int64())}
	case arithmetic.Counting:
		return [][]*big.Rat{listed}
	case arithmetic.Multiples:
		return [][]*big.Rat{append([]*big.Rat{new(big.Rat)}, listed...)}
	}
	// Both rows go as far as the third number of both, or only to the first.
	last := t.List[2]
	if last/min(n[0], n[1]) > 12 {
		last = t.List[0]
	}
	return [][]*big.Rat{steps(t.Numbers[0], last/n[0]), steps(t.Numbers[1], last/n[1])}
}

func (s sight) readRow(y int, want []*big.Rat) error {
	var jumps []measure.Jump
	for _, j := range s.Jumps() {
		if j.Y == y && j.Dash == "" {
			jumps = append(jumps, j)
		}
	}
	if len(jumps) != len(want)-1 {
		return fmt.Errorf("%d jumps where %d are made", len(jumps), len(want)-1)
	}
	if !alike(jumps) {
		return errors.New("the jumps are not equally long")
	}
	if up := jumps[0].X2 > jumps[0].X1; up != (want[1].Cmp(want[0]) > 0) {
		return errors.New("the jumps go the wrong way")
	}
	a, err := s.axis(y)
	if err != nil && !errors.Is(err, errUnread) {
		return err
	}
	parts := slices.ContainsFunc(want, func(v *big.Rat) bool { return !v.IsInt() })
	if _, b, ok := s.problem.Operands(); ok && b.Form == arithmetic.Decimal {
		parts = true
	}
	if parts {
		s.nameParts(a, jumps)
	}
	if err := s.partTicks(a, jumps[0], want); err != nil {
		return err
	}
	for i, n := range want {
		x := jumps[0].X1
		if i > 0 {
			if x = jumps[i-1].X2; i < len(jumps) && jumps[i].X1 != x {
				return fmt.Errorf("a jump ends at %d and the next begins at %d", x, jumps[i].X1)
			}
		}
		if !slices.ContainsFunc(a.named[x], func(v *big.Rat) bool { return v.Cmp(n) == 0 }) {
			return fmt.Errorf("%s is not written where a jump lands, but %v", n.RatString(), a.named[x])
		}
		if len(a.named[x]) > 1 && !a.named[x][0].IsInt() {
			return fmt.Errorf("%v are written at one place", a.named[x])
		}
	}
	// Among fractions and decimals the wholes have names too, each at its place.
	for x, names := range a.named {
		for _, v := range names {
			wanted := slices.ContainsFunc(append(slices.Clone(want), s.total()), func(w *big.Rat) bool { return w.Cmp(v) == 0 })
			if wanted || parts && v.IsInt() && between(jumps[0].X1, jumps[0].X2, want[0], want[1], x, v) {
				continue
			}
			return fmt.Errorf("%s is written at %d", v.RatString(), x)
		}
	}
	return nil
}

// nameParts adds the numbers, in both rows and mixed ones too, that stand under the ends of jumps to what is
// written there.
func (s sight) nameParts(a axis, jumps []measure.Jump) {
	const row = 200
	for _, line := range s.Lines() {
		for _, w := range line {
			v, ok := w.Value()
			if !ok || w.Y <= a.y || w.Y > a.y+row || w.Size >= scene.Large {
				continue
			}
			middle := (w.Left + w.Right) / 2
			nearest := jumps[0].X1
			for _, j := range jumps {
				if max(j.X2-middle, middle-j.X2) < max(nearest-middle, middle-nearest) {
					nearest = j.X2
				}
			}
			known := slices.ContainsFunc(a.named[nearest], func(u *big.Rat) bool { return u.Cmp(v) == 0 })
			if !known && max(nearest-middle, middle-nearest) <= beside {
				a.named[nearest] = append(a.named[nearest], v)
			}
		}
	}
}

// total is the number that a division begins with, or -1.
func (s sight) total() *big.Rat {
	o, is := s.problem.Left.(arithmetic.Operation)
	if n, number := o.Left.(arithmetic.Number); is && number && s.problem.Kind == arithmetic.Division {
		return big.NewRat(n.Value.Num(), n.Value.Den())
	}
	return whole(-1)
}

// readRest: from the last landing of a division to its total lies a dashed stretch
// as long as what is left over, with how much that is.
func (s sight) readRest(y int, t problems.Truth) error {
	jumps := s.Jumps()
	last := jumps[len(jumps)-1]
	long := (last.X2 - last.X1) * int(t.Remainder.Int64()) / int(t.Numbers[1].Num().Int64())
	end := last.X2
	for _, r := range s.Rects {
		if r.Dash == "" || r.Y > y || r.Bottom() < y {
			continue
		}
		if off := r.W - long; r.X != last.X2 || max(off, -off) > 1 {
			return fmt.Errorf("what is left over goes from %d to %d", r.X, r.Right())
		}
		end = r.Right()
	}
	if t.Remainder.Sign() > 0 && end == last.X2 {
		return errors.New("what is left over is not drawn")
	}
	said := slices.ContainsFunc(s.Texts, func(text measure.Text) bool {
		return text.Words == t.Remainder.String()+" left over"
	})
	other := slices.ContainsFunc(s.Texts, func(text measure.Text) bool { return strings.Contains(text.Words, "left over") })
	if said != (t.Remainder.Sign() > 0) || other != said {
		return errors.New("what is left over is not said")
	}
	if !slices.ContainsFunc(s.Circles, func(c measure.Circle) bool { return c.Y == y && max(c.X-end, end-c.X) <= 1 }) {
		return errors.New("there is no point at the total")
	}
	return nil
}

// readMeeting: points stand on both lines where both rows land, one over the other,
// and nowhere else.
func (s sight) readMeeting(ys []int, t problems.Truth) error {
	at := [2][]int{}
	for _, c := range s.Circles {
		for i, y := range ys {
			if c.Y == y {
				at[i] = append(at[i], c.X)
			}
		}
	}
	slices.Sort(at[0])
	slices.Sort(at[1])
	if !slices.Equal(at[0], at[1]) {
		return fmt.Errorf("points stand at %v on one line and at %v on the other", at[0], at[1])
	}
	upper := sight{s.part(ys, true), s.problem, s.paint}
	a, _ := upper.axis(ys[0])
	for i, x := range at[0] {
		if len(a.named[x]) != 1 || a.named[x][0].Cmp(whole(t.List[i])) != 0 {
			return fmt.Errorf("the point at %d is called %v", x, a.named[x])
		}
	}
	if len(at[0]) != 1 && len(at[0]) != 3 {
		return fmt.Errorf("%d points for the numbers of both rows", len(at[0]))
	}
	return nil
}

// readEstimated reads three lines: on each of the first two a point goes to the
// round number nearest to it, on the last those two are put together.
func (s sight) readEstimated(t problems.Truth) error {
	var ys []int
	const long = 500
	for _, p := range s.Paths {
		if !p.Closed && len(p.Curves) == 0 && len(p.Points) > 1 && p.Box().W > long && p.Points[0].Y == p.Points[1].Y {
			ys = append(ys, p.Points[0].Y)
		}
	}
	slices.Sort(ys)
	ys = slices.Compact(ys)
	if len(ys) != 3 {
		return fmt.Errorf("%d lines for an estimate", len(ys))
	}
	for _, c := range s.Circles {
		if !slices.Contains(ys, c.Y) {
			return fmt.Errorf("a point stands beside its line, at %d, %d", c.X, c.Y)
		}
	}
	for i, y := range ys[:2] {
		if err := s.band(y, ys, i).readRounded(y, t.Numbers[i], t.Rounded[i]); err != nil {
			return err
		}
	}
	last := s.band(ys[2], ys, 2)
	a, err := last.axis(ys[2])
	if err != nil && !errors.Is(err, errUnread) {
		return err
	}
	jumps := last.Jumps()
	if t.Rounded[1].Sign() == 0 {
		if len(jumps) > 0 {
			return errors.New("there is nothing to jump")
		}
		return nil
	}
	if len(jumps) != 1 {
		return fmt.Errorf("%d jumps put the round numbers together", len(jumps))
	}
	from, to := a.named[jumps[0].X1], a.named[jumps[0].X2]
	if len(from) != 1 || len(to) != 1 || from[0].Cmp(t.Rounded[0]) != 0 || to[0].Cmp(t.Value) != 0 {
		return fmt.Errorf("a jump leads from %v to %v", from, to)
	}
	return nil
}

// band is what of a drawing belongs to one of several lines.
func (s sight) band(y int, ys []int, nth int) sight {
	d := s.Drawing
	above := func(y int) int {
		const jump, bare = 98, 20 // what stands above a line, with a jump and without
		if slices.ContainsFunc(s.Jumps(), func(j measure.Jump) bool { return j.Y == y }) {
			return y - jump
		}
		return y - bare
	}
	top, bottom := 0, d.H
	if nth > 0 {
		top = above(y)
	}
	if nth+1 < len(ys) {
		bottom = above(ys[nth+1])
	}
	out := func(at int) bool { return at < top || at >= bottom }
	d.Rects = slices.DeleteFunc(slices.Clone(d.Rects), func(r measure.Rect) bool { return out(r.Y) })
	d.Circles = slices.DeleteFunc(slices.Clone(d.Circles), func(c measure.Circle) bool { return c.Y != y })
	d.Paths = slices.DeleteFunc(slices.Clone(d.Paths), func(p measure.Path) bool { return out(p.Box().Y) })
	d.Texts = slices.DeleteFunc(slices.Clone(d.Texts), func(t measure.Text) bool {
		said := strings.Contains(t.Words, "not to scale") // of every line
		return !said && (out(t.Y) || t.Size >= scene.Large)
	})
	return sight{d, s.problem, s.paint}
}

// readRounded: a point stands between two round numbers, and the jump goes to the
// one that is nearer.
func (s sight) readRounded(y int, n, rounded *big.Rat) error {
	a, err := s.axis(y)
	switch {
	case err == nil, errors.Is(err, errUnread):
	case a.sure:
		return err
	default:
		return errUnread // two numbers that stand beside their places give no scale
	}
	// A name may stand nearer to a tick beside its point; then the scale tells.
	is := func(x int, v *big.Rat) bool {
		return slices.ContainsFunc(a.named[x], func(w *big.Rat) bool { return w.Cmp(v) == 0 }) || err == nil && a.near(x, v)
	}
	if len(a.points) != 1 || !is(a.points[0], n) {
		return fmt.Errorf("the points at %v are not %s", a.points, n.RatString())
	}
	jumps := s.Jumps()
	if n.Cmp(rounded) == 0 {
		if len(jumps) > 0 {
			return errors.New("a round number jumps")
		}
		return nil
	}
	if len(jumps) != 1 || jumps[0].X1 != a.points[0] || !is(jumps[0].X2, rounded) {
		return fmt.Errorf("%s does not go to %s", n.RatString(), rounded.RatString())
	}
	return nil
}
