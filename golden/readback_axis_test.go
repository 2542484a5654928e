package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/golden/measure"
)

// axis is a number line as it was measured: its height, the places that are
// marked on it and the scale that the numbers under them give.
type axis struct {
	y      int
	points []int        // where round points stand
	places map[int]bool // those and the ticks
	measure.Scale
	sure  bool               // more than two numbers stand along the line, and most agree
	named map[int][]*big.Rat // what is written at the places of the line
	exact map[int]bool       // whether that stands just at the place
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
				if try.within(1, o.X, o.Value) {
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
	row := 120 // the numbers of a line stand no further under it
	if slices.ContainsFunc(s.Jumps(), func(j measure.Jump) bool { return j.Y == y && j.Below }) {
		row = 180 // but beyond the names of the jumps that go below it
	}
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
	nearest := func(from, to int, is func(x int) bool) (int, bool) {
		for off := from; off <= to; off++ {
			for _, x := range []int{m.X + off, m.X - off} {
				if is(x) {
					return x, true
				}
			}
		}
		return 0, false
	}
	marked := func(x int) bool { return places[x] }
	if x, ok := nearest(0, min(1, reach), marked); ok {
		return x, true
	}
	// A number that stands beside its place is that of a round point rather than that
	// of a bare tick.
	round := func(x int) bool {
		return slices.ContainsFunc(s.Circles, func(c measure.Circle) bool { return c.X == x && c.Y == y })
	}
	if x, ok := nearest(2, min(nudge, reach), round); ok {
		return x, true
	}
	return nearest(2, reach, marked)
}

// near reports whether a value belongs at x: to within two units of length, one
// for its own rounding and one for that of the marks that gave the scale.
func (a axis) near(x int, v *big.Rat) bool { return a.within(2, x, v) }

func (a axis) within(units int64, x int, v *big.Rat) bool {
	off, unit := new(big.Rat).Sub(a.Value(x), v), new(big.Rat).Abs(a.Unit)
	return off.Abs(off).Cmp(unit.Mul(unit, big.NewRat(units, 1))) <= 0
}
