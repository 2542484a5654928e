package cubes

import (
	"errors"
	"strings"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/models/telling"
)

func TestFitsAndTurns(t *testing.T) {
	for _, c := range []struct {
		problem, why string // "" when it fits
		turn         int
	}{
		{"compare 7 and 12", "", telling.Leads}, {"20 > 3", "", telling.Leads}, {"8 + 6", "", telling.Serves}, {"14 - 6", "", telling.Serves},
		{"how many more is 9 than 4", "", telling.Follows}, {"28 + 14", "", telling.Serves}, {"47", "", telling.Serves}, {"4 × 6", "", telling.Serves},
		{"compare 7 and 21", "up to 20", telling.Serves}, {"99 + 2", "to 100", telling.Serves}, {"101", "to 100", telling.Serves},
		{"13 × 2", "up to 12 trains", telling.Serves}, {"0 × 4", "nothing to build", telling.Serves}, {"is 41 even or odd", "to 40", telling.Serves},
	} {
		r, err := reading.Read(c.problem)
		if err != nil {
			t.Fatal(err)
		}
		why := fits(r.Problem)
		if (why == nil) != (c.why == "") || why != nil && !strings.Contains(why.Error(), c.why) {
			t.Errorf("%s: %v, want a reason with %q", c.problem, why, c.why)
		}
		if got := turn(r.Problem); got != c.turn {
			t.Errorf("%s: turn %d, want %d", c.problem, got, c.turn)
		}
	}
	for _, other := range []string{"1/2 = 2/4", "0.5", "7 = 8 - 1", "8 + ? = 11", "4 times as many as 6"} {
		r, err := reading.Read(other)
		if err != nil {
			t.Fatal(err)
		}
		if why := fits(r.Problem); !errors.Is(why, telling.ErrNotMine) {
			t.Errorf("%s: %v, want a problem of another kind", other, why)
		}
	}
}
