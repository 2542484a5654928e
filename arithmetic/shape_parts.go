package arithmetic

import "errors"

// ErrParts says that a shape has no such equal parts.
var ErrParts = errors.New("arithmetic: the shape has no such equal parts")

// Way is how a shape is cut in equal parts.
type Way uint8

const (
	InGrid      Way = iota // in Rows × Cols rectangles
	Diagonal               // from corner to corner, in two triangles
	FromCorners            // from the center, the first cut to a corner
	FromSides              // from the center, the first cut to the middle of a side
)

// ShapeCut is one way to cut a shape in Parts equal parts; Rows and Cols are set
// InGrid.
type ShapeCut struct {
	Way               Way
	Rows, Cols, Parts int64
}

// The moves of a part of a shape. Nth is 0 for the first shape and 1 for another of
// the same kind and size that is cut in another way.
type (
	// CutShape cuts a shape in equal parts.
	CutShape struct {
		Nth int
		Cut ShapeCut
	}
	// ShadeShapeParts shades Count of the parts.
	ShadeShapeParts struct {
		Nth    int
		Number Number
		Count  int64
		Cut    ShapeCut
	}
)

func (CutShape) move()        {}
func (ShadeShapeParts) move() {}

// mostShapeParts is how many parts of a shape can be told apart.
const mostShapeParts = 24

// corners is how many corners a regular shape has that is cut from its center; 0 for
// the others.
var corners = map[Shape]int64{Triangle: 3, Pentagon: 5, Hexagon: 6, Octagon: 8}

// ShapeWays are the ways in which a shape comes out in so many equal parts, at most
// two that look different; none where it does not.
//
// A rectangle is cut in rows and columns. A regular shape of k corners is the same
// to look at in 2k ways, which are its turns and flips: the cuts from the center to
// the corners and to the middles of the sides make 2k equal parts, and these join
// evenly in n where n divides 2k. (Symmetries of a regular polygon: common knowledge,
// no source. Equal parts need not have one shape: CCSS 2.G.A.3.)
func ShapeWays(s Shape, parts int64) []ShapeCut {
	if parts < 2 || parts > mostShapeParts {
		return nil
	}
	if k := corners[s]; k > 0 {
		return aroundCenter(k, parts)
	}
	if s != Square && s != Rectangle {
		return nil
	}
	strips := ShapeCut{Way: InGrid, Rows: 1, Cols: parts, Parts: parts}
	rows := int64(1)
	for r := int64(2); r*r <= parts; r++ {
		if parts%r == 0 {
			rows = r
		}
	}
	switch {
	case rows > 1:
		return []ShapeCut{{Way: InGrid, Rows: rows, Cols: parts / rows, Parts: parts}, strips}
	case parts == 2:
		return []ShapeCut{strips, {Way: Diagonal, Parts: 2}}
	case s == Rectangle:
		return []ShapeCut{strips, {Way: InGrid, Rows: parts, Cols: 1, Parts: parts}}
	}
	return []ShapeCut{strips}
}

func aroundCenter(k, parts int64) []ShapeCut {
	switch {
	case 2*k%parts != 0:
		return nil
	case k%parts != 0: // begun at the middle of a side it looks the same
		return []ShapeCut{{Way: FromCorners, Parts: parts}}
	}
	return []ShapeCut{{Way: FromCorners, Parts: parts}, {Way: FromSides, Parts: parts}}
}

// PartsOfShape lists in how many equal parts a shape can be cut.
func PartsOfShape(s Shape) []int64 {
	var list []int64
	for n := int64(2); n <= mostShapeParts; n++ {
		if len(ShapeWays(s, n)) > 0 {
			list = append(list, n)
		}
	}
	return list
}

// ShadeShape works a [ShapePart] of at most one whole: the shape is cut in equal parts
// and some are shaded; where it can be cut in another way, so is a second one. (CCSS
// 2.G.A.3, 3.G.A.2, 3.NF.A.1) [ErrParts] says that the parts do not come out equal.
func ShadeShape(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok || n.Form != Common || n.Value.Sign() < 0 || n.Value.Num() > n.Value.Den() {
		return Working{}, ErrParts
	}
	ways := ShapeWays(p.Shape, n.Value.Den())
	if len(ways) == 0 {
		return Working{}, ErrParts
	}
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: AsMixed(n.Value.Simplest())}}
	for i, cut := range ways {
		w.Moves = append(w.Moves, CutShape{i, cut}, ShadeShapeParts{i, n, n.Value.Num(), cut})
	}
	return w, nil
}
