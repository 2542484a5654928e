package laws

import (
	"testing"

	"modeler/arithmetic"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/words"
)

// TestModelsAgree: whichever model tells a problem, its answer reads the same.
func TestModelsAgree(t *testing.T) {
	d := problems.Deal(*seed)
	told := 0
	for range *count / 10 {
		p := d.Next()
		answers := map[string]string{}
		for _, m := range models.All {
			if m.Fits(p) != nil {
				continue
			}
			l, err := Tell(m, p)
			if err != nil {
				continue // another test says so
			}
			answers[m.Name] = words.Answer(p, l.Answer)
			told++
		}
		if differ(answers) && !renames(p) {
			t.Errorf("%s: %v", p, answers)
		}
	}
	t.Logf("%d answers", told)
}

func differ(answers map[string]string) bool {
	seen := map[string]bool{}
	for _, a := range answers {
		seen[a] = true
	}
	return len(seen) > 1
}

// renames reports whether a problem has fractions, whose answers may be named in
// several ways.
func renames(p arithmetic.Problem) bool {
	t, err := problems.Work(p)
	if err != nil {
		return false
	}
	for _, n := range t.Numbers {
		if !n.IsInt() {
			return true
		}
	}
	return false
}
