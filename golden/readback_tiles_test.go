package golden

import (
	"cmp"
	"math/big"
	"slices"

	"modeler/golden/measure"
)

// tile is an upright rectangle drawn as an outline of four corners, with what is
// written in it.
type tile struct {
	measure.Box
	measure.Paint
	words []measure.Word
}

// value is the one number in a tile, or nil.
func (t tile) value() *big.Rat {
	if len(t.words) != 1 {
		return nil
	}
	v, ok := t.words[0].Value()
	if !ok {
		return nil
	}
	return v
}

// asks reports whether there is nothing but a question mark in a tile.
func (t tile) asks() bool { return len(t.words) == 1 && t.words[0].Text == "?" && t.Dash != "" }

// tiles are the tiles of a picture, from the top down and from left to right.
func (s sight) tiles() []tile {
	var list []tile
	for _, p := range s.Paths {
		if b, is := upright(p); is {
			list = append(list, tile{Box: b, Paint: p.Paint})
		}
	}
	for _, line := range s.Lines() {
		for _, w := range line {
			for i := range list {
				if b := list[i]; w.Left >= b.X && w.Right <= b.Right() && w.Y > b.Y && w.Y < b.Bottom() {
					list[i].words = append(list[i].words, w)
				}
			}
		}
	}
	slices.SortStableFunc(list, func(a, b tile) int { return cmp.Or(a.Y-b.Y, a.X-b.X) })
	return list
}

// upright reports whether a path is a rectangle that stands upright.
func upright(p measure.Path) (b measure.Box, is bool) {
	if len(p.Curves) > 0 || !p.Closed {
		return b, false
	}
	b = p.Box()
	corners := slices.CompactFunc(slices.Clone(p.Points), func(a, b measure.Point) bool { return a == b })
	if n := len(corners); n == 5 && corners[0] == corners[4] {
		corners = corners[:4]
	}
	if len(corners) != 4 {
		return b, false
	}
	for i, q := range corners {
		next := corners[(i+1)%4]
		if q.X != next.X && q.Y != next.Y || q.X != b.X && q.X != b.Right() || q.Y != b.Y && q.Y != b.Bottom() {
			return b, false
		}
	}
	return b, b.W > 0 && b.H > 0
}

// heads are the arrow heads of a picture: small filled triangles. Each points from
// the middle of its base to its tip.
type head struct{ tip, from measure.Point }

func (s sight) heads() []head {
	var list []head
	for _, p := range s.Paths {
		if !p.Closed || !p.Filled() || len(p.Curves) > 0 {
			continue
		}
		q := slices.Compact(slices.Clone(p.Points))
		if len(q) == 4 && q[0] == q[3] {
			q = q[:3]
		}
		if len(q) == 3 {
			list = append(list, head{q[0], measure.Point{X: (q[1].X + q[2].X) / 2, Y: (q[1].Y + q[2].Y) / 2}})
		}
	}
	return list
}
