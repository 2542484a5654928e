package models

import (
	"testing"

	"modeler/arithmetic"
)

// What is offered after a lesson is of its kind, has a lesson, and is more or less
// work as it says.
func TestSimilarProblemsAreEasierAndHarder(t *testing.T) {
	offered := 0
	for _, m := range All {
		for _, text := range m.Examples {
			l, err := Teach(text, "")
			if err != nil {
				t.Fatal(err)
			}
			s, here := LikeIt(l), loadOf(l.Problem, l.leading())
			for name, other := range map[string]string{"easier": s.Easier, "like": s.Like, "harder": s.Harder} {
				if other == "" {
					continue
				}
				offered++
				o, err := Teach(other, "")
				if err != nil || o.Problem.Kind != l.Problem.Kind || o.Problem.String() == l.Problem.String() {
					t.Errorf("%s: %s is offered as %s: %v", text, other, name, err)
					continue
				}
				there := loadOf(o.Problem, o.leading())
				order := there.compare(here)
				if name == "easier" && (order >= 0 || !there.within(here)) || name == "harder" && (order <= 0 || !here.within(there)) {
					t.Errorf("%s: %s is offered as %s", text, other, name)
				}
				if o.Problem.Kind == arithmetic.Claim && name != "like" && !o.Answer.True {
					t.Errorf("%s: %s is offered, which is false", text, other)
				}
			}
		}
	}
	if offered < 100 {
		t.Errorf("only %d problems are offered", offered)
	}
}

// A teacher's order of these, from memory: no trade, one trade, a trade across a zero,
// four digits.
func TestLoadFollowsATeachersOrder(t *testing.T) {
	var before load
	for i, text := range []string{"14 - 6", "45 - 23", "402 - 178", "3000 - 1456"} {
		l, err := Teach(text, "")
		if err != nil {
			t.Fatal(err)
		}
		here := loadOf(l.Problem, l.leading())
		if i > 0 && here.compare(before) <= 0 {
			t.Errorf("%s is not more work than the one before", text)
		}
		before = here
	}
}
