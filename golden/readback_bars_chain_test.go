package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readChain reads lengths that lie end to end: a brace over each, as long as the number
// says that stands over it, from the left edge on without a gap; the shaded parts reach
// as far; and one length under them that is as long as all.
func (s sight) readChain(t problems.Truth) error {
	left, right, top, bottom, whole := s.shadedFrom(scene.First)
	var braces []measure.Box
	for _, role := range []scene.Role{scene.First, scene.Second} {
		if role == scene.Second {
			l, r, _, _, _ := s.shadedFrom(role)
			left, right = min(left, l), max(right, r)
		}
		braces = append(braces, s.bracesIn(role, 0, top)...)
	}
	slices.SortFunc(braces, func(a, b measure.Box) int { return a.X - b.X })
	if len(braces) != len(t.Numbers) {
		return fmt.Errorf("%d lengths are marked, not %d", len(braces), len(t.Numbers))
	}
	at := big.NewRat(int64(left), 1)
	inset := braces[0].X - left
	for i, b := range braces {
		n := t.Numbers[i]
		from := whole64(at)
		at.Add(at, new(big.Rat).Mul(n, big.NewRat(int64(whole), 1)))
		if b.X-inset != from || b.X+b.W+inset != whole64(at) {
			return fmt.Errorf("length %d is marked from %d to %d", i+1, b.X, b.X+b.W)
		}
		role := [2]scene.Role{scene.First, scene.Second}[i%2]
		if !slices.ContainsFunc(s.pieces(), func(f measure.Face) bool {
			return f.X == from && f.Y == top && s.is(f.Paint, role, scene.Moved)
		}) {
			return fmt.Errorf("length %d does not begin at %d", i+1, from)
		}
		name := s.nameOver(b)
		if name == nil || name.Cmp(n) != 0 {
			return fmt.Errorf("length %d is called %v", i+1, name)
		}
	}
	if whole64(at) != right {
		return errors.New("the lengths end elsewhere")
	}
	under := append(s.bracesIn(scene.Result, bottom, s.H), s.bracesIn(scene.Hidden, bottom, s.H)...)
	if len(under) == 0 {
		return nil
	}
	if _, _, high, low, _ := s.shadedFrom(scene.Result); low > 0 && low-high != bottom-top {
		return errors.New("the length of all is not as high as the others")
	}
	for _, line := range s.Lines() {
		if y := line[0].Y; len(under) == 1 && y > under[0].Y && y < under[0].Y+90 {
			sum := new(big.Rat)
			for _, w := range line {
				if v, ok := w.Value(); ok {
					sum.Add(sum, v)
				}
			}
			if sum.Sign() > 0 && sum.Cmp(t.Value) != 0 {
				return fmt.Errorf("all together are called %s", sum.RatString())
			}
		}
	}
	if len(under) != 1 || under[0].X-inset != left || under[0].X+under[0].W+inset != right {
		return errors.New("what is under them is not as long as all")
	}
	return nil
}

// nameOver is the number over the middle of a brace, or beside it where its neighbors
// need the room.
func (s sight) nameOver(b measure.Box) *big.Rat {
	best, off := (*big.Rat)(nil), 1<<30
	for _, f := range s.Fractions() {
		d := f.X - b.X - b.W/2
		if d = max(d, -d); f.Y < b.Y && f.Y > b.Y-100 && d < off {
			if v, ok := (measure.Word{Text: f.Num.Words + "/" + f.Den.Words}).Value(); ok {
				best, off = v, d
			}
		}
	}
	return best
}
