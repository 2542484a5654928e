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

// bracesIn are the braces between two heights in the color of a role, from the left.
func (s sight) bracesIn(role scene.Role, above, below int) (list []measure.Box) {
	for _, l := range s.Paths {
		b := l.Box()
		if len(l.Points) == 4 && b.Y >= above && b.Y+b.H <= below && l.Stroke == s.paint[role][2] {
			list = append(list, b)
		}
	}
	slices.SortFunc(list, func(a, b measure.Box) int { return a.X - b.X })
	return list
}

// readApart reads an amount that is taken apart: braces over it as long as its pieces
// and named as them, and where a second row lies under it two braces that make it too.
func (s sight) readApart(t problems.Truth) error {
	left, _, top, bottom, whole := s.shadedFrom(scene.First)
	over := s.bracesIn(scene.Result, 0, top)
	if len(over) != len(t.Names) {
		return fmt.Errorf("%d pieces are marked, not %d", len(over), len(t.Names))
	}
	// long is the length of a value on this paper.
	long := func(v *big.Rat) *big.Rat { return new(big.Rat).Mul(v, big.NewRat(int64(whole), 1)) }
	at := big.NewRat(int64(left), 1)
	for i, b := range over {
		piece, _ := new(big.Rat).SetString(t.Names[i])
		inset := b.X - whole64(at)
		at.Add(at, long(piece))
		if inset < 0 || b.X+b.W+inset != whole64(at) {
			return fmt.Errorf("piece %d is marked from %d to %d", i+1, b.X, b.X+b.W)
		}
		for _, m := range s.Marks() {
			if m.Y < b.Y && m.Y > b.Y-90 && b.X <= m.X && m.X <= b.X+b.W {
				if m.Value.Cmp(piece) != 0 {
					return fmt.Errorf("a piece of %s has the name %s", t.Names[i], m.Value.RatString())
				}
			}
		}
	}
	under := s.bracesIn(scene.Result, bottom, s.H)
	if len(under) == 0 {
		return nil
	}
	if len(under) != 2 {
		return fmt.Errorf("%d parts are marked under it", len(under))
	}
	cut := under[0].X + under[0].W + under[0].X - left
	if !slices.ContainsFunc(s.Paths, func(l measure.Path) bool {
		b := l.Box()
		return len(l.Points) == 2 && l.Width == "5" && b.W == 0 && b.X == cut && b.Y >= bottom && b.Y+b.H >= under[0].Y
	}) {
		return errors.New("no cut is where the two parts meet")
	}
	sum := new(big.Rat)
	for i, b := range under {
		inset := under[0].X - left
		part := big.NewRat(int64(b.W+2*inset), int64(whole))
		if i == 1 && b.X-inset != under[0].X+under[0].W+inset {
			return errors.New("the two parts do not meet")
		}
		sum.Add(sum, part)
	}
	var names []*big.Rat
	for _, m := range s.Marks() {
		if m.Y > under[0].Y && m.Y < under[0].Y+100 && m.Y > bottom {
			names = append(names, m.Value)
		}
	}
	for i, b := range under {
		part := big.NewRat(int64(b.W+2*(under[0].X-left)), int64(whole))
		if len(names) != 2 || names[i].Cmp(part) != 0 {
			return fmt.Errorf("the two parts have the names %v, and one is %s long", names, part.RatString())
		}
	}
	return agree("the two parts", sum, t.Value)
}
