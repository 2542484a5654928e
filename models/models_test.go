package models

import (
	"strings"
	"testing"

	"modeler/arithmetic/reading"
)

func TestOnlyModelsOfTheKindGiveAReason(t *testing.T) {
	for _, c := range []struct{ problem, why string }{
		{"33 = 5 × ?", "no whole number"}, // and nothing of sums and hops
		{"9,999 × 99,999", "an array has sides up to"},
		{"9,999,999 + 1", ""}, // a number line has it
		{"8 + ? = 5", "less than 0"},
		{"5/4 of 12", "a fraction up to one whole"},
		{"30 × 40 = 1,200", "two arrays are compared"},
		{"2 + 3 + 4", ""},
		{"1/4 × 1/2", ""},
	} {
		r, err := reading.Read(c.problem)
		if err != nil {
			t.Errorf("%s: %v", c.problem, err)
			continue
		}
		fit, why := Fitting(r.Problem)
		switch {
		case c.why == "" && why != nil && len(fit) == 0:
			t.Errorf("%s: %v, want no reason", c.problem, why)
		case c.why != "" && (len(fit) > 0 || why == nil || !strings.Contains(why.Error(), c.why)):
			t.Errorf("%s: %d models fit, %v, want a reason with %q", c.problem, len(fit), why, c.why)
		}
	}
}

func TestEveryModelHasAName(t *testing.T) {
	for _, m := range All {
		if Named(m.Name) != m {
			t.Errorf("%q names another model too", m.Name)
		}
		if m.Title == "" || m.Doc == "" || len(m.Kinds) == 0 || len(m.Examples) == 0 {
			t.Errorf("%s: a part of what is said of it is missing", m.Name)
		}
	}
	if Named("no such model") != nil {
		t.Error("a name that no model has gives one")
	}
}
