package measure

import (
	"math/big"
	"slices"
	"strings"
)

// Fraction is a number with a bar: one text above a level line, one below it,
// all about one middle.
type Fraction struct {
	Num, Den Text
	X, Y     int // the middle of the bar
}

// Fractions are the stacked fractions of a drawing.
func (d Drawing) Fractions() []Fraction {
	var list []Fraction
	for _, p := range d.Paths {
		if len(p.Points) != 2 || p.Points[0].Y != p.Points[1].Y {
			continue
		}
		f := Fraction{X: (p.Points[0].X + p.Points[1].X) / 2, Y: p.Points[0].Y}
		for _, t := range d.Texts {
			near := t.X >= f.X-2 && t.X <= f.X+2
			switch {
			case near && t.Y < f.Y && f.Y-t.Y < t.Size/2:
				f.Num = t
			case near && t.Y > f.Y && t.Y-f.Y < t.Size+t.Size/10:
				f.Den = t
			}
		}
		if f.Num.Words != "" && f.Den.Words != "" {
			list = append(list, f)
		}
	}
	return list
}

// Mark is a number written at a place.
type Mark struct {
	X, Y  int
	Value *big.Rat
}

// Marks are the numbers of a drawing that stand alone and in the middle of their
// place, fractions included, from left to right.
func (d Drawing) Marks() []Mark {
	var list []Mark
	inFraction := map[int]bool{}
	stacked := d.Fractions()
	for _, f := range stacked {
		v, ok := new(big.Rat).SetString(f.Num.Words + "/" + f.Den.Words)
		inFraction[f.Num.Order], inFraction[f.Den.Order] = true, true
		if ok && d.alone(f.Num.Size*7/4, f.X, (f.Num.Y+f.Den.Y)/2, f.Num.Order, f.Den.Order) {
			list = append(list, Mark{f.X, f.Y, v})
		}
	}
	for _, t := range d.Texts {
		if slices.ContainsFunc(stacked, func(f Fraction) bool {
			dx, dy := f.X-t.X, (f.Num.Y+f.Den.Y)/2-t.Y
			return dx > 0 && dx < max(t.Size*7/4, t.Size*(3*len(t.Words)+3*len(f.Den.Words)+5)/10) && max(dy, -dy) < t.Size/4
		}) {
			continue // the wholes of a mixed number
		}
		v, ok := new(big.Rat).SetString(strings.ReplaceAll(strings.TrimPrefix(t.Words, "$"), ",", ""))
		if ok && t.Words[0] != '+' && t.Anchor == "middle" && !inFraction[t.Order] && d.alone(t.Size*5/4, t.X, t.Y, t.Order) {
			list = append(list, Mark{t.X, t.Y, v})
		}
	}
	slices.SortStableFunc(list, func(a, b Mark) int { return a.X - b.X })
	return list
}

// alone reports whether no other text stands on the same baseline so near that the
// two are read as one, as in 1 2/3 or 8/4 = 2.
func (d Drawing) alone(near, x, y int, but ...int) bool {
	return !slices.ContainsFunc(d.Texts, func(t Text) bool {
		dx, dy, near := t.X-x, t.Y-y, near
		if strings.Contains(t.Words, "=") {
			near = t.Size * 5 / 2 // it may hold the number behind the sign too
		}
		return !slices.Contains(but, t.Order) && max(dx, -dx) < near && max(dy, -dy) < t.Size/4
	})
}

// Scale maps places along a line to values.
type Scale struct {
	X    int      // a place
	At   *big.Rat // its value
	Unit *big.Rat // value of one unit of length
}

// Value is the value at x.
func (s Scale) Value(x int) *big.Rat {
	v := big.NewRat(int64(x-s.X), 1)
	return v.Add(v.Mul(v, s.Unit), s.At)
}

// ScaleOf is the scale on which two marks stand. They must be at two places.
func ScaleOf(a, b Mark) Scale {
	unit := new(big.Rat).Sub(b.Value, a.Value)
	unit.Quo(unit, big.NewRat(int64(b.X-a.X), 1))
	return Scale{a.X, a.Value, unit}
}

// Jumps are the curves that leave and land on one height: from where to where.
func (d Drawing) Jumps() []Jump {
	var list []Jump
	for _, p := range d.Paths {
		if len(p.Curves) == 1 && !p.Closed && p.Curves[0][0].Y == p.Curves[0][3].Y {
			c := p.Curves[0]
			list = append(list, Jump{c[0].X, c[3].X, c[0].Y, p.Paint, c[1].Y > c[0].Y})
		}
	}
	return list
}

// Jump is a curve from X1 to X2, both on height Y.
type Jump struct {
	X1, X2, Y int
	Paint
	Below bool // it goes below that height, and not above it
}

// Lattice is how many different places a set of circles has across and down;
// full is whether every crossing has one.
func Lattice(circles []Circle) (cols, rows int, full bool) {
	xs, ys, at := map[int]bool{}, map[int]bool{}, map[Point]bool{}
	for _, c := range circles {
		xs[c.X], ys[c.Y], at[Point{c.X, c.Y}] = true, true, true
	}
	return len(xs), len(ys), len(at) == len(circles) && len(at) == len(xs)*len(ys)
}
