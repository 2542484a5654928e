package models

import (
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/models/words"
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

// 98 ÷ 4 in the forms of the national curriculum in England (2013, year 5, p. 130):
// 24 r 2, 24 1/2, 24.5, 25. A model that cannot tell a form leaves it alone.
func TestNoModelForgetsWhatToDoWithTheRest(t *testing.T) {
	for text, want := range map[string][]string{
		"98 ÷ 4": {"24 remainder 2"}, "98 ÷ 4 as a mixed number": {"24 1/2", "24 2/4"}, "98 ÷ 4 as a decimal": {"24.5"}, "98 ÷ 4 rounded up": {"25"},
	} {
		r, err := reading.Read(text)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range All {
			if m.Fits(r.Problem) != nil {
				continue
			}
			got := words.Answer(r.Problem, m.Tell(r.Problem).Answer)
			if !slices.ContainsFunc(want, func(w string) bool {
				return got == w || strings.Contains(got, " = "+w) || strings.HasPrefix(got, w+" = ")
			}) {
				t.Errorf("%s: %s answers %s, want one of %v", text, m.Name, got, want)
			}
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
