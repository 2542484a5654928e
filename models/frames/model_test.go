package frames

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
		{"8 + 6", "", telling.Leads}, {"14 - 6", "", telling.Leads}, {"20", "", telling.Leads}, {"is 39 even or odd", "", telling.Leads},
		{"21", "", telling.Serves}, {"40", "", telling.Serves}, {"8 + ? = 11", "", telling.Follows}, {"2 + 6 + 4", "", telling.Follows},
		{"ways to make 10", "", telling.Follows},
		{"41", "to 40", telling.Serves}, {"is 41 even or odd", "to 40", telling.Serves}, {"15 + 6", "to 20", telling.Serves},
		{"21 - 4", "to 20", telling.Serves}, {"4 - 5", "less than is to be taken", telling.Serves}, {"12 + ? = 11", "less than 0", telling.Serves},
		{"ways to make 11", "to 10", telling.Serves}, {"9,999,999 + 9,999,999", "to 20", telling.Serves},
	} {
		r, err := reading.Read(c.problem)
		if err != nil {
			continue // a problem that is refused before any model is asked
		}
		why := fits(r.Problem)
		if (why == nil) != (c.why == "") || why != nil && !strings.Contains(why.Error(), c.why) {
			t.Errorf("%s: %v, want a reason with %q", c.problem, why, c.why)
		}
		if got := turn(r.Problem); got != c.turn {
			t.Errorf("%s: turn %d, want %d", c.problem, got, c.turn)
		}
	}
	for _, other := range []string{"1/2 + 1/4", "0.5", "3 × 4", "8 - ? = 3", "2 + 3 + 4 + 5", "how many more is 9 than 4"} {
		r, err := reading.Read(other)
		if err != nil {
			t.Fatal(err)
		}
		if why := fits(r.Problem); !errors.Is(why, telling.ErrNotMine) {
			t.Errorf("%s: %v, want a problem of another kind", other, why)
		}
	}
}
