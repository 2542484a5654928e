package arithmetic

import (
	"errors"
	"slices"
	"testing"

	"modeler/fraction"
)

func TestWaysToCutAShape(t *testing.T) {
	for _, test := range []struct {
		shape  Shape
		parts  int64
		ways   []ShapeCut
		source string
	}{
		{Rectangle, 2, []ShapeCut{{InGrid, 1, 2, 2}, {Diagonal, 0, 0, 2}}, "CCSS 2.G.A.3: halves of a rectangle, equal shares that need not have one shape"},
		{Rectangle, 3, []ShapeCut{{InGrid, 1, 3, 3}, {InGrid, 3, 1, 3}}, "CCSS 2.G.A.3: thirds"},
		{Square, 4, []ShapeCut{{InGrid, 2, 2, 4}, {InGrid, 1, 4, 4}}, "CCSS 2.G.A.3: fourths; 3.G.A.2: parts of equal area"},
		{Square, 3, []ShapeCut{{InGrid, 1, 3, 3}}, "common practice, no source"},
		{Square, 12, []ShapeCut{{InGrid, 3, 4, 12}, {InGrid, 1, 12, 12}}, "common practice, no source"},
		{Hexagon, 6, []ShapeCut{{FromCorners, 0, 0, 6}, {FromSides, 0, 0, 6}}, "a regular hexagon has 6 lines of symmetry, 3 through corners"},
		{Hexagon, 4, []ShapeCut{{FromCorners, 0, 0, 4}}, "two lines of symmetry at right angles"},
		{Hexagon, 5, nil, "5 does not divide 12"},
		{Triangle, 2, []ShapeCut{{FromCorners, 0, 0, 2}}, "a line of symmetry through each corner"},
		{Pentagon, 4, nil, "4 does not divide 10"},
		{Octagon, 16, []ShapeCut{{FromCorners, 0, 0, 16}}, "8 lines of symmetry"},
		{Square, 1, nil, "no parts"}, {Square, 25, nil, "too many to tell apart"}, {Circle, 4, nil, "a circle is cut elsewhere"},
	} {
		if got := ShapeWays(test.shape, test.parts); !slices.Equal(got, test.ways) {
			t.Errorf("%s in %d: %v, want %v (%s)", test.shape, test.parts, got, test.ways, test.source)
		}
	}
	if got := PartsOfShape(Hexagon); !slices.Equal(got, []int64{2, 3, 4, 6, 12}) {
		t.Errorf("a hexagon has %v equal parts", got)
	}
}

func TestShadeShape(t *testing.T) {
	part := func(num, den int64, s Shape) Problem {
		return Problem{Kind: ShapePart, Left: Frac(fraction.Must(num, den)), Shape: s}
	}
	w, err := ShadeShape(part(3, 4, Square))
	if err != nil || written(w.Moves) != "CutShape ShadeShapeParts CutShape ShadeShapeParts" || w.Answer.Number.String() != "3/4" {
		t.Errorf("3/4 of a square: %v, %s", err, written(w.Moves))
	}
	for _, p := range []Problem{part(5, 4, Square), part(1, 5, Hexagon), part(1, 25, Square), {Kind: ShapePart, Left: Int(1), Shape: Square}} {
		if _, err := ShadeShape(p); !errors.Is(err, ErrParts) {
			t.Errorf("%s: %v", p, err)
		}
	}
}
