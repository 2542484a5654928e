package scene

import (
	"math"
	"testing"
)

// The sine of the standard library is the second opinion.
func TestSine(t *testing.T) {
	for parts := 1; parts <= 400; parts++ {
		for part := -parts; part <= 2*parts; part++ {
			got, want := float64(sine(part, parts))/unit, math.Sin(2*math.Pi*float64(part)/float64(parts))
			if math.Abs(got-want) > 1e-7 {
				t.Fatalf("sine of %d/%d of a turn is %v, want %v", part, parts, got, want)
			}
		}
	}
}

func TestRim(t *testing.T) {
	for _, c := range []struct {
		part, parts int
		want        Point
	}{
		{0, 4, Point{1000, 0}}, {1, 4, Point{2000, 1000}}, {2, 4, Point{1000, 2000}}, {3, 4, Point{0, 1000}},
		{1, 12, Point{1500, 134}}, // half the radius across, and 100 - 50√3 = 13.4 down
		{1, 8, Point{1707, 293}},
	} {
		if got := Rim(100, 100, 100, c.part, c.parts); got != c.want {
			t.Errorf("%d/%d of a turn is at %v, want %v", c.part, c.parts, got, c.want)
		}
	}
}

// Neighbours meet in one point, and what is opposite is opposite.
func TestWedgesTile(t *testing.T) {
	for parts := 2; parts <= 100; parts++ {
		for i := range parts {
			_, end := Wedge{300, 200, 150, i, 1, parts}.Ends()
			from, _ := Wedge{300, 200, 150, i + 1, 1, parts}.Ends()
			if end != from {
				t.Fatalf("part %d of %d ends at %v and the next begins at %v", i, parts, end, from)
			}
		}
	}
}
