package laws

import (
	"math/big"

	"modeler/models/scene"
)

// mark is a number written along a scale.
type mark struct {
	y, x int64
	v    *big.Rat
}

// marks are the plain numbers of a picture: those that are neither bold nor in
// the role of a quantity.
func (p Picture) marks() []mark {
	var list []mark
	for _, it := range p.visible() {
		t, ok := it.Shape.(scene.Text)
		if !ok || t.Bold || it.Role != scene.Ink && it.Role != scene.Note && it.Role != scene.Guide {
			continue
		}
		if m, ok := markOf(t); ok {
			list = append(list, m)
		}
	}
	return list
}

func markOf(t scene.Text) (mark, bool) {
	v, ok := valueOf(t)
	return mark{int64(t.Y), int64(t.X), v}, ok
}

// hasScale reports whether the picture has a line with numbers along it.
func (p Picture) hasScale() bool {
	list := p.marks()
	for _, m := range list {
		if onScale(list, m) {
			return true
		}
	}
	return false
}

// onScale reports whether a mark is one of a scale: two others stand on its
// height, and the three are as far apart as their values say, to a unit.
func onScale(list []mark, m mark) bool {
	for i, a := range list {
		for _, b := range list[i+1:] {
			if a.y != m.y || b.y != m.y || a.x == m.x || b.x == m.x || a.x == b.x || a.v.Cmp(b.v) == 0 {
				continue
			}
			// Where m would stand on the scale of a and b.
			x := new(big.Rat).Sub(m.v, a.v)
			x.Quo(x, new(big.Rat).Sub(b.v, a.v))
			x.Mul(x, big.NewRat(b.x-a.x, 1))
			off := x.Sub(x, big.NewRat(m.x-a.x, 1))
			if off.Abs(off).Cmp(big.NewRat(1, 1)) <= 0 {
				return true
			}
		}
	}
	return false
}

// onUprightScale is onScale for numbers that stand one above the other, as those at
// the left edge of a table.
func onUprightScale(list []mark, m mark) bool {
	turned := make([]mark, len(list))
	for i, n := range list {
		turned[i] = mark{n.x, n.y, n.v}
	}
	return onScale(turned, mark{m.x, m.y, m.v})
}
