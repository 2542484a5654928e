package shapes

import (
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

func shapePart(num, den int64, s arithmetic.Shape) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.ShapePart, Left: arithmetic.Frac(fraction.Must(num, den)), Shape: s}
}

func TestShapesSayWhyTheyDoNotFit(t *testing.T) {
	for _, test := range []struct {
		problem arithmetic.Problem
		because string
	}{
		{shapePart(3, 4, arithmetic.Circle), "square, rectangle"},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: arithmetic.Frac(fraction.Must(3, 4))}, "square, rectangle"},
		{shapePart(5, 4, arithmetic.Square), "at most the whole square"},
		{shapePart(2, 5, arithmetic.Hexagon), "has 2, 3, 4, 6 or 12 equal parts"},
		{shapePart(2, 3, arithmetic.Octagon), "an octagon cut from its center has 2, 4, 8 or 16 equal parts"},
		{shapePart(1, 25, arithmetic.Square), "a square is cut into 2 to 24 equal parts"},
		{shapePart(1, 1, arithmetic.Square), "a square is cut into 2 to 24 equal parts"},
		{arithmetic.Problem{Kind: arithmetic.ShapePart, Left: arithmetic.Int(1), Shape: arithmetic.Square}, "only a fraction"},
	} {
		if err := Model.Fits(test.problem); err == nil || !strings.Contains(err.Error(), test.because) {
			t.Errorf("%s: %v, want a reason with %q", test.problem, err, test.because)
		}
	}
}

// area is twice the area of a part, by the shoelace formula.
func area(sh scene.Shape) int {
	switch sh := sh.(type) {
	case scene.Rect:
		return 2 * sh.W * sh.H
	case scene.Polygon:
		sum := 0
		for i, a := range sh {
			b := sh[(i+1)%len(sh)]
			sum += a.X*b.Y - b.X*a.Y
		}
		return max(sum, -sum)
	}
	return 0
}

// Every part of every shape, however it is cut, is exactly as large as the others, and
// all of them are the whole.
func TestPartsAreExactlyEqual(t *testing.T) {
	for _, s := range []arithmetic.Shape{arithmetic.Square, arithmetic.Rectangle, arithmetic.Triangle, arithmetic.Pentagon, arithmetic.Hexagon, arithmetic.Octagon} {
		for _, n := range arithmetic.PartsOfShape(s) {
			for _, cut := range arithmetic.ShapeWays(s, n) {
				f := figureOf(s, n).at(400, 300)
				all := area(f.outline())
				for i := range int(n) {
					if got := area(f.part(cut, i)); got*int(n) != all {
						t.Errorf("part %d of %v of a %s is %d of %d", i, cut, s, got, all)
					}
				}
			}
		}
	}
}

// The sides of a regular shape are equal: to within 1 in 40, which is what keeps
// every area exact.
func TestRegularShapesLookRegular(t *testing.T) {
	for s, corners := range cornersOf {
		low, high := 1<<60, 0
		for i, a := range corners {
			b := corners[(i+1)%len(corners)]
			side := (a.X-b.X)*(a.X-b.X) + (a.Y-b.Y)*(a.Y-b.Y)
			low, high = min(low, side), max(high, side)
		}
		if high*39*39 > low*40*40 {
			t.Errorf("the sides of a %s, squared, are from %d to %d", s, low, high)
		}
	}
}
