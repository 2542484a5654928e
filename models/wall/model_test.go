package wall

import (
	"strings"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/models/scene"
)

func TestWallsSayWhyTheyDoNotFit(t *testing.T) {
	for _, c := range []struct{ problem, because string }{
		{"402 − 178", "other names"},
		{"1/2 + 1/3", "other names"},
		{"fractions equal to 3/2", "less than one whole"},
		{"fractions equal to 1", "other names"},
		{"3/4 in simplest form", "already"},
		{"1/2 = ?/3", "no whole number"},
		{"fractions equal to 1/29", "at most 24"},
	} {
		r, err := reading.Read(c.problem)
		if err != nil {
			t.Errorf("%s: %v", c.problem, err)
			continue
		}
		if err = Model.Fits(r.Problem); err == nil || !strings.Contains(err.Error(), c.because) {
			t.Errorf("%s: %v, want a reason with %q", c.problem, err, c.because)
		}
	}
}

// A cut is on the line in the lit rows and in no other: what the wall is for.
func TestTheLineMeetsACutInLitRowsOnly(t *testing.T) {
	for _, problem := range []string{"fractions equal to 1/2", "fractions equal to 4/6", "fractions equal to 5/12"} {
		r, err := reading.Read(problem)
		if err != nil {
			t.Fatal(err)
		}
		v := Model.Tell(r.Problem).Whole.View(false)
		line, lit := 0, map[int]bool{}
		for _, it := range v.Items {
			if l, ok := it.Shape.(scene.Line); ok && it.Finish == scene.Bold {
				line = l.X1
			}
			if it.Worth.Sign() > 0 {
				lit[it.Shape.Box().Y] = true
			}
		}
		for _, it := range v.Items {
			g, ok := it.Shape.(scene.Grid)
			if !ok {
				continue
			}
			if meets := (line-g.X)%(g.W/g.Cols) == 0; meets != lit[g.Y] {
				t.Errorf("%s: in the row of %d a cut on the line is %v, and it is lit: %v", problem, g.Cols, meets, lit[g.Y])
			}
		}
	}
}
