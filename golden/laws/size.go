package laws

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// measured is a piece with an area: a rectangle or a grid that is worth something.
type measured struct {
	scene.Item
	box  scene.Box
	cube bool // the front of a cube, which is worth more than its face shows
}

// pieces are the rectangles and grids of a picture that are worth something.
func (p Picture) pieces() []measured {
	var list []measured
	items := p.visible()
	for _, it := range items {
		if it.Worth.Sign() == 0 {
			continue
		}
		switch it.Shape.(type) {
		case scene.Rect, scene.Grid:
			cube := slices.ContainsFunc(items, func(side scene.Item) bool { return isSide(side, it) })
			list = append(list, measured{it, it.Shape.Box(), cube})
		}
	}
	return list
}

// isSide reports whether a shape is a side face of the cube whose front is given,
// or the outline of both: it has two corners in common with it.
func isSide(side, front scene.Item) bool {
	var corners []scene.Point
	switch sh := side.Shape.(type) {
	case scene.Polygon:
		corners = sh
	case scene.Polyline:
		corners = sh
	}
	b, shared := front.Shape.Box(), 0
	for _, q := range corners {
		if (q.X == b.X || q.X == b.Right()) && (q.Y == b.Y || q.Y == b.Bottom()) {
			shared++
		}
	}
	return shared == 2
}

// sketched reports whether the picture says that it is not to scale, where a
// person who looks at it reads it.
func (p Picture) sketched() bool {
	for _, it := range p.visible() {
		if t, ok := it.Shape.(scene.Text); ok && strings.Contains(label(t), "not to scale") {
			return true
		}
	}
	return false
}

// EqualSize: what is worth as much is as large, and what is worth n times as much
// is n times as large. The front of a cube is compared with other cubes only.
// Along a line with numbers and in a bar diagram the ends are rounded to whole units;
// nowhere else.
func EqualSize(p Picture) error {
	if p.sketched() {
		return nil
	}
	var first [2]*measured
	line, list := p.hasScale(), p.pieces()
	slices.SortStableFunc(list, func(a, b measured) int { return int(area(b.box) - area(a.box)) })
	for _, m := range list {
		sort := 0
		if m.cube {
			sort = 1
		}
		if first[sort] == nil {
			first[sort] = &m
			continue
		}
		ref := first[sort]
		a := new(big.Rat).Mul(rat(m.Worth), big.NewRat(area(ref.box), 1))
		b := new(big.Rat).Mul(rat(ref.Worth), big.NewRat(area(m.box), 1))
		rounds := line || p.Model.Name == roundsLengths
		if a.Cmp(b) != 0 && !(rounds && m.box.H == ref.box.H && inRatio(m.Item, ref.Item)) {
			return fmt.Errorf("%s is worth %s and %s is worth %s", describe(m.Item), m.Worth, describe(ref.Item), ref.Worth)
		}
	}
	if p.Model.Name == roundsLengths {
		if err := alike(list); err != nil {
			return err
		}
	}
	return errors.Join(circles(p), polygons(p))
}

// roundsLengths is the model whose bars are rounded to whole units: amounts as 1,423
// and 5,033 have no exact lengths on the paper.
const roundsLengths = "bar-diagram"

// alike: pieces worth as much are exactly as wide.
func alike(list []measured) error {
	wide := map[fraction.Fraction]int{}
	for _, m := range list {
		if w, seen := wide[m.Worth]; seen && w != m.box.W {
			return fmt.Errorf("%s is not as wide as the others worth %s", describe(m.Item), m.Worth)
		}
		wide[m.Worth] = m.box.W
	}
	return nil
}

// circles: counters of one worth are of one size, and wedges worth as much are as
// much of discs of one size.
func circles(p Picture) error {
	var first *scene.Wedge
	var worth fraction.Fraction
	for _, it := range p.visible() {
		w, ok := it.Shape.(scene.Wedge)
		if !ok || it.Worth.Sign() == 0 {
			continue
		}
		if first == nil {
			first, worth = &w, it.Worth
		}
		a := new(big.Rat).Mul(rat(it.Worth), big.NewRat(int64(first.Count), int64(first.Parts)))
		b := new(big.Rat).Mul(rat(worth), big.NewRat(int64(w.Count), int64(w.Parts)))
		if w.R != first.R || a.Cmp(b) != 0 {
			return fmt.Errorf("%s is worth %s, and %d of %d parts are worth %s", describe(it), it.Worth, first.Count, first.Parts, worth)
		}
	}
	size := map[fraction.Fraction]int{}
	for _, it := range p.visible() {
		if c, ok := it.Shape.(scene.Circle); ok && it.Worth.Sign() != 0 {
			if r, seen := size[it.Worth]; seen && r != c.R {
				return fmt.Errorf("%s is not as large as the others", describe(it))
			}
			size[it.Worth] = c.R
		}
	}
	return nil
}

func area(b scene.Box) int64 { return int64(b.W) * int64(b.H) }

// NoOverlap: no two pieces of one number lie on one another, so that each is
// seen and counted.
func NoOverlap(p Picture) error {
	var list []scene.Item
	for _, it := range p.visible() {
		if it.Worth.Sign() == 0 {
			continue
		}
		switch it.Shape.(type) {
		case scene.Rect, scene.Grid, scene.Circle, scene.Wedge:
		default:
			continue
		}
		for _, other := range list {
			if other.Of == it.Of && overlap(other.Shape, it.Shape) {
				return fmt.Errorf("%s lies on %s", describe(it), describe(other))
			}
		}
		list = append(list, it)
	}
	return nil
}

// overlap goes by the boxes of two shapes; of two wedges of one disc, by their cuts.
func overlap(a, b scene.Shape) bool {
	v, isV := a.(scene.Wedge)
	w, isW := b.(scene.Wedge)
	if !isV || !isW || v.X != w.X || v.Y != w.Y {
		return a.Box().Overlaps(b.Box())
	}
	turn := v.Parts * w.Parts
	gap := ((w.From*v.Parts-v.From*w.Parts)%turn + turn) % turn // from the start of v to that of w
	return gap < v.Count*w.Parts || turn-gap < w.Count*v.Parts
}

// JumpsToScale: all jumps of a picture have one scale, as near as whole units
// come, and a jump back goes to the left.
func JumpsToScale(p Picture) error {
	if p.sketched() {
		return nil
	}
	var longest *scene.Item // the one that says the scale best
	for _, it := range p.visible() {
		if hop, ok := it.Shape.(scene.Hop); ok && it.Worth.Sign() != 0 {
			if p.backwards(it) != (hop.X2 < hop.X1) {
				return fmt.Errorf("%s goes the wrong way", describe(it))
			}
			if longest == nil || it.Shape.Box().W > longest.Shape.Box().W {
				longest = &it
			}
		}
	}
	for _, it := range p.visible() {
		if _, ok := it.Shape.(scene.Hop); ok && it.Worth.Sign() != 0 && !inRatio(it, *longest) {
			return fmt.Errorf("%s is worth %s and %s is worth %s", describe(it), it.Worth, describe(*longest), longest.Worth)
		}
	}
	return nil
}

// backwards reports whether a jump takes away: that of a number behind a minus
// sign does, and that of an unknown there. What is jumped to find a difference
// goes forward.
func (p Picture) backwards(it scene.Item) bool {
	nth := 0
	var away func(e arithmetic.Expr, behind bool) (found, answer bool)
	away = func(e arithmetic.Expr, behind bool) (found, answer bool) {
		switch e := e.(type) {
		case arithmetic.Operation:
			f1, a1 := away(e.Left, behind)
			f2, a2 := away(e.Right, e.Op == arithmetic.Subtract)
			return f1 || f2, a1 || a2
		case arithmetic.Number:
			found = behind && it.Of == scene.OfNth(nth)
			nth++
		case arithmetic.Unknown:
			answer = behind && it.Of == scene.OfAnswer
		}
		return found, answer
	}
	back := p.Problem.Kind == arithmetic.Counting && p.Problem.Run.Op == arithmetic.Subtract
	f1, a1 := away(p.Problem.Left, false)
	f2, a2 := away(p.Problem.Right, false)
	return (f1 || f2 || a1 || a2 || back && it.Worth.Sign() > 0) != (it.Worth.Sign() < 0)
}

// inRatio reports whether two widths are as their worths, with both ends of each
// rounded to whole units: w is as wide as its worth to within a unit and as much
// of a unit as the rounding of the reference comes to.
func inRatio(it, ref scene.Item) bool {
	ideal := new(big.Rat).Quo(rat(it.Worth), rat(ref.Worth))
	ideal.Mul(ideal.Abs(ideal), big.NewRat(int64(ref.Shape.Box().W), 1))
	off := ideal.Sub(ideal, big.NewRat(int64(it.Shape.Box().W), 1))
	return off.Abs(off).Cmp(big.NewRat(2, 1)) < 0
}

// OneScale: every step of a lesson has the same paper, and what is worth as much
// is as large in all of them.
func OneScale(l *Lesson) error {
	size := map[fraction.Fraction]int64{}
	for _, p := range l.Pictures() {
		if p.Step == 0 || p.Scene == nil {
			continue
		}
		if a, b := l.Steps[0].Scene, p.Scene; a.W != b.W || a.H != b.H {
			return fmt.Errorf("step 1 is %d × %d and step %d is %d × %d", a.W, a.H, p.Step, b.W, b.H)
		}
		if p.sketched() {
			continue
		}
		line := p.hasScale()
		for _, m := range p.pieces() {
			if was, seen := size[m.Worth]; seen && was != area(m.box) && !line {
				return fmt.Errorf("step %d: %s has another size than before", p.Step, describe(m.Item))
			}
			size[m.Worth] = area(m.box)
		}
	}
	return nil
}
