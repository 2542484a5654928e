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

// gathered is a picture of equal groups as it was measured: how much lies in each
// ring, how many places are free there, and how much lies outside.
type gathered struct {
	rings   []measure.Rect
	in      []*big.Rat
	marked  []bool // drawn as taken
	free    []int64
	outside *big.Rat
}

// gather finds the rings and what lies in them. A counter is worth 1, and a wedge
// as much of one as it is of its disc.
func (s sight) gather(t problems.Truth) (g gathered, err error) {
	for _, r := range s.Rects {
		if s.empty(r.Paint, scene.Guide, scene.Moved, scene.Result) && r.Dash == "" {
			g.rings = append(g.rings, r)
			g.in, g.free = append(g.in, new(big.Rat)), append(g.free, 0)
			g.marked = append(g.marked, s.empty(r.Paint, scene.Result))
			if r.W != g.rings[0].W || r.H != g.rings[0].H {
				return g, errors.New("the rings are not of one size")
			}
		}
	}
	g.outside = new(big.Rat)
	put := func(b measure.Box, worth *big.Rat) error {
		for i, r := range g.rings {
			if r.Contains(b) {
				g.in[i].Add(g.in[i], worth)
				return nil
			}
			if r.Overlaps(b) {
				return fmt.Errorf("what lies at %v lies on a ring", b)
			}
		}
		g.outside.Add(g.outside, worth)
		return nil
	}
	size, at := 0, []measure.Point{}
	for _, c := range s.Circles {
		b := measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}
		if size == 0 {
			size = c.R
		}
		switch {
		case c.R != size:
			return g, errors.New("the counters are not of one size")
		case s.is(c.Paint, scene.First, scene.Result, scene.Moved):
			at = append(at, measure.Point{X: c.X, Y: c.Y})
			err = put(b, whole(1))
		case s.empty(c.Paint, scene.Note):
			at = append(at, measure.Point{X: c.X, Y: c.Y})
			i := slices.IndexFunc(g.rings, func(r measure.Rect) bool { return r.Contains(b) })
			if i < 0 {
				return g, errors.New("a free place lies in no ring")
			}
			g.free[i]++
		}
		if err != nil {
			return g, err
		}
	}
	for _, w := range s.Wedges {
		parts := int(t.Numbers[1].Num().Int64())
		if size == 0 {
			size = w.R
		}
		_, n, ok := w.Cut(parts)
		if !ok || w.R != size {
			return g, fmt.Errorf("a wedge at %v is not one of %d equal parts of a counter", w.Box(), parts)
		}
		if p := (measure.Point{X: w.X, Y: w.Y}); !slices.Contains(at, p) {
			at = append(at, p)
		}
		if err := put(w.Box(), big.NewRat(int64(n), int64(parts))); err != nil {
			return g, err
		}
	}
	return g, g.seated(at)
}

// equal reports whether every ring holds so much.
func (g gathered) equal(rings, each *big.Rat) error {
	if err := agree("the groups", whole(int64(len(g.rings))), rings); err != nil {
		return err
	}
	for _, in := range g.in {
		if err := agree("what is in a group", in, each); err != nil {
			return err
		}
	}
	return nil
}

// butLast is what there is without the last ring.
func (g gathered) butLast() gathered {
	n := len(g.rings) - 1
	g.rings, g.in, g.free, g.marked = g.rings[:n], g.in[:n], g.free[:n], g.marked[:n]
	return g
}

// readGroups compares the groups of a finished picture with the truth.
func readGroups(s sight, t problems.Truth) error {
	g, err := s.gather(t)
	if err == nil {
		err = both(s.readGroupTags(g, t), s.readGroupNames(g))
	}
	if err != nil {
		return err
	}
	if s.problem.Kind == arithmetic.Division {
		return s.compareShares(g, t)
	}
	if g.outside.Sign() > 0 && s.problem.Kind != arithmetic.Parity {
		return errors.New("something lies outside the groups")
	}
	switch s.problem.Kind {
	case arithmetic.Product:
		return g.equal(t.Numbers[0], t.Numbers[1])
	case arithmetic.Missing:
		groups, each := filledIn(s.problem, t)
		return g.equal(groups, each)
	case arithmetic.PartOf:
		f, each := t.Numbers[0], new(big.Rat)
		den := s.problem.Left.(arithmetic.Operation).Left.(arithmetic.Number).Value.Den()
		marked := new(big.Rat)
		for i := range g.rings {
			if g.marked[i] {
				marked.Add(marked, g.in[i])
			}
		}
		each.Quo(t.Numbers[1], whole(den))
		return both(g.equal(whole(den), each), both(agree("the part", marked, t.Value), agree("the part", marked, each.Mul(f, t.Numbers[1]))))
	case arithmetic.Parity:
		n := t.Numbers[0].Num().Int64()
		return both(agree("what has no partner", g.outside, whole(n%2)), g.equal(whole(n/2), whole(2)))
	}
	return errUnread
}

// filledIn are the groups and the size of each in a problem with a blank, once it
// is filled: the first factor counts the groups (CCSS 3.OA.A.1), a divisor too, and
// the quotient is the size of each.
func filledIn(p arithmetic.Problem, t problems.Truth) (groups, each *big.Rat) {
	o, left := p.Left.(arithmetic.Operation)
	other := p.Right
	if !left {
		o, other = p.Right.(arithmetic.Operation), p.Left
	}
	value := func(e arithmetic.Expr) *big.Rat {
		if n, ok := e.(arithmetic.Number); ok {
			return big.NewRat(n.Value.Num(), n.Value.Den())
		}
		return t.Value
	}
	if o.Op == arithmetic.Multiply {
		return value(o.Left), value(o.Right)
	}
	return value(o.Right), value(other)
}

// compareShares compares shares, or groups that were measured off, and what is left
// over.
func (s sight) compareShares(g gathered, t problems.Truth) error {
	by, full, left := t.Numbers[1], new(big.Rat).SetInt(t.Quotient), new(big.Rat).SetInt(t.Remainder)
	rest := s.problem.Rest
	if left.Sign() == 0 {
		rest = arithmetic.LeftOver
	}
	if rest == arithmetic.LeftOver {
		if err := agree("what is left over", g.outside, left); err != nil {
			return err
		}
		if s.problem.Grouping {
			return g.equal(full, by)
		}
		return g.equal(by, full)
	}
	if g.outside.Sign() != 0 {
		return errors.New("something lies outside the groups")
	}
	if s.problem.Grouping {
		last := len(g.rings) - 1
		if last < 0 {
			return errors.New("there is no group for what is left over")
		}
		empty := new(big.Rat).Sub(by, left)
		return both(both(agree("what is in the last group", g.in[last], left), agree("what has room in it", whole(g.free[last]), empty)),
			g.butLast().equal(full, by))
	}
	if rest == arithmetic.AsPart {
		return g.equal(by, new(big.Rat).Quo(t.Numbers[0], by))
	}
	more := int64(0)
	for i, in := range g.in {
		if g.free[i] == 0 {
			more++
			in.Sub(in, whole(1))
		} else if g.free[i] > 1 {
			return errors.New("more than one place is free on a plate")
		}
	}
	return both(agree("the plates with one more", whole(more), left), g.equal(by, full))
}
