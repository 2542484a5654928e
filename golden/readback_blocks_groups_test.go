package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// ground is what a picture with a mat and boxes shows, in ones: what is solid and
// what is only an outline, on the mat and in every box, in reading order.
type ground struct {
	sight
	one   int
	trays []measure.Rect // of the mat, from the left
	boxes []measure.Rect
}

var placeNames = []string{"ones", "tens", "hundreds", "thousands"}

// ground finds the trays of the mat, which have the names of places over them, and
// the boxes, which have none. Every piece must lie in one of them, and on the mat
// among those of its own size.
func (s sight) ground(one int) (ground, error) {
	g := ground{sight: s, one: one}
	var names []string
	for _, r := range s.trays() {
		name := ""
		for _, t := range s.Texts {
			const over = 40 // from the baseline of a name to its tray
			if slices.Contains(placeNames, t.Words) && t.Y < r.Y && t.Y > r.Y-over && t.X > r.X && t.X < r.Right() {
				name = t.Words
			}
		}
		if name == "" {
			g.boxes = append(g.boxes, r)
			continue
		}
		g.trays, names = append(g.trays, r), append(names, name)
	}
	slices.SortFunc(g.boxes, func(a, b measure.Rect) int {
		if a.Y != b.Y {
			return a.Y - b.Y
		}
		return a.X - b.X
	})
	for i, name := range names {
		if name != placeNames[len(names)-1-i] {
			return g, fmt.Errorf("the trays are called %v", names)
		}
	}
	for _, f := range g.faces() {
		in := slices.IndexFunc(g.trays, func(r measure.Rect) bool { return r.Contains(f.Box) })
		if in < 0 && !slices.ContainsFunc(g.boxes, func(r measure.Rect) bool { return r.Contains(f.Box) }) {
			return g, fmt.Errorf("the block at %v lies neither on the mat nor in a box", f.Box)
		}
		if n := g.weigh(f); in >= 0 && n != arithmetic.Power10(len(g.trays)-1-in) {
			return g, fmt.Errorf("a block of %d lies among the %s", n, names[in])
		}
	}
	return g, nil
}

// faces are the blocks, solid or only outlined.
func (g ground) faces() []measure.Face {
	return slices.DeleteFunc(slices.Clone(g.Faces()), func(f measure.Face) bool {
		return !g.solid(f) && !g.hollow(f)
	})
}

func (g ground) solid(f measure.Face) bool {
	return g.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved)
}

func (g ground) hollow(f measure.Face) bool {
	return g.empty(f.Paint, scene.Gone, scene.First, scene.Second)
}

// weigh is how many ones a block is as large as; 0 when it is no block.
func (g ground) weigh(f measure.Face) int64 {
	area := f.Area()
	n := int64(area / (g.one * g.one))
	if area%(g.one*g.one) != 0 || n != 1 && n != 10 && n != 100 || f.Filled() && n > 1 && int64(f.Cells()) != n {
		return 0
	}
	if g.Cube(f) {
		return 10 * n
	}
	return n
}

// in adds up the blocks of a sort in a room.
func (g ground) in(room measure.Rect, sort func(measure.Face) bool) int64 {
	sum := int64(0)
	for _, f := range g.faces() {
		if sort(f) && room.Contains(f.Box) {
			sum += g.weigh(f)
		}
	}
	return sum
}

// onMat adds up the solid blocks of the mat.
func (g ground) onMat() int64 {
	sum := int64(0)
	for _, tray := range g.trays {
		sum += g.in(tray, g.solid)
	}
	return sum
}

// inBoxes is what every box holds.
func (g ground) inBoxes(sort func(measure.Face) bool) []int64 {
	var list []int64
	for _, b := range g.boxes {
		list = append(list, g.in(b, sort))
	}
	return list
}

// readLabels: the number under a box is what it holds, solid or not, and the number
// under a tray is how many blocks are solid there, if it is a count.
func (g ground) readLabels(sort func(measure.Face) bool) error {
	const under = 40 // from a box or a tray to the middle of the number under it
	for _, m := range g.bare() {
		if g.inStatement(m) {
			continue // 3 × 2 = 6
		}
		for _, b := range g.boxes {
			if m.X == b.X+b.W/2 && m.Y > b.Bottom() && m.Y < b.Bottom()+under {
				if err := agree("the number under a box", m.Value, whole(g.in(b, sort))); err != nil {
					return err
				}
			}
		}
		for i, tray := range g.trays {
			if m.X == tray.X+tray.W/2 && m.Y > tray.Bottom() && m.Y < tray.Bottom()+under {
				n := g.in(tray, g.solid) / arithmetic.Power10(len(g.trays)-1-i)
				if err := agree("the number under a tray", m.Value, whole(n)); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

// readFloor reads the whole story of a product, a sum of a list or a division.
func (s sight) readFloor(t problems.Truth) error {
	one := s.one(0)
	if one == 0 {
		one = s.least()
	}
	g, err := s.ground(one)
	if err != nil {
		return err
	}
	sort := g.hollow
	if s.problem.Kind == arithmetic.Division {
		sort = g.solid
	}
	if err := g.readLabels(sort); err != nil {
		return err
	}
	boxes := g.inBoxes(sort)
	switch s.problem.Kind {
	case arithmetic.Expression:
		for i, n := range t.Numbers {
			if i >= len(boxes) || n.Cmp(whole(boxes[i])) != 0 {
				return fmt.Errorf("the boxes hold %v", boxes)
			}
		}
		return agree("what lies on the mat", whole(g.onMat()), t.Value)
	case arithmetic.Product:
		if err := groupsOfOne(boxes, t.Numbers); err != nil {
			return err
		}
		return agree("what lies on the mat", whole(g.onMat()), t.Value)
	}
	if err := groupsOfOne(boxes, []*big.Rat{t.Numbers[1], new(big.Rat).SetInt(t.Quotient)}); err != nil {
		return err
	}
	if err := agree("what is left on the mat", whole(g.onMat()), new(big.Rat).SetInt(t.Remainder)); err != nil {
		return err
	}
	return g.readShared(t)
}

// groupsOfOne: there are as many boxes as one of two numbers says, and each holds
// the other.
func groupsOfOne(boxes []int64, numbers []*big.Rat) error {
	if len(slices.Compact(slices.Clone(boxes))) != 1 {
		return fmt.Errorf("the boxes hold %v", boxes)
	}
	count, each := whole(int64(len(boxes))), whole(boxes[0])
	if count.Cmp(numbers[0]) == 0 && each.Cmp(numbers[1]) == 0 || count.Cmp(numbers[1]) == 0 && each.Cmp(numbers[0]) == 0 {
		return nil
	}
	return fmt.Errorf("%d boxes hold %d each", len(boxes), boxes[0])
}

// readShared: on the mat of a division there lie, solid or not, as many blocks in
// each tray as there were to share, where each is drawn.
func (g ground) readShared(t problems.Truth) error {
	rest, divisor := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
	for i, tray := range g.trays {
		unit := arithmetic.Power10(len(g.trays) - 1 - i)
		have := rest / unit
		rest -= have / divisor * divisor * unit
		drawn := slices.ContainsFunc(g.Paths, func(p measure.Path) bool { return p.Closed && p.Dash != "" && tray.Contains(p.Box()) })
		n := (g.in(tray, g.solid) + g.in(tray, g.hollow)) / unit
		if !drawn && n != have {
			return fmt.Errorf("%d of %d blocks of %d are drawn", n, have, unit)
		}
	}
	return nil
}

// hasFloor reports whether a problem is told with a mat and boxes.
func hasFloor(p arithmetic.Problem) bool {
	return slices.Contains([]arithmetic.Kind{arithmetic.Expression, arithmetic.Product, arithmetic.Division}, p.Kind)
}
