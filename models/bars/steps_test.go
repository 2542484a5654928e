package bars

import (
	"maps"
	"strings"
	"testing"

	"modeler/models/scene"
)

// What is left lies over the result, and what is gone over what was to be taken
// away, piece for piece.
func TestWhatIsLeftLiesOverTheResult(t *testing.T) {
	for _, problem := range []string{
		"3 1/4 − 1 3/4", "5 − 2 3/8", "2 1/4 − 3/4", "3 3/4 − 1 1/4", "3 3/4 − 1", "1 3/4 − 1 1/4", "9/4 − 1 3/4", "9/4 − 2",
		"7/8 − 3/8", "3/4 − 1/3", "3 − 3/4", "4 1/2 − 2 1/2", "11/4 − 1 1/4", "3 − 7/4",
	} {
		stays, result, gone, taken := map[int]bool{}, map[int]bool{}, map[int]bool{}, map[int]bool{}
		for _, it := range tellingOf(t, problem).Whole.View(false).Items {
			if it.Worth.Sign() == 0 {
				continue
			}
			over := map[bool]map[int]bool{false: stays, true: gone}[it.Role == scene.Gone]
			switch it.Of {
			case scene.OfSecond:
				over = taken
			case scene.OfAnswer:
				over = result
			}
			for x := it.Shape.Box().X; x < it.Shape.Box().Right(); x++ {
				over[x] = true
			}
		}
		if !maps.Equal(stays, result) || !maps.Equal(gone, taken) || len(gone) == 0 {
			t.Errorf("%s: %d units stay over %d, %d are gone over %d", problem, len(stays), len(result), len(gone), len(taken))
		}
	}
}

// A name that the first fraction has after its cut is the second number when it
// is written as that is.
func TestEachSideOfTheEquationHasItsOwnColour(t *testing.T) {
	for _, problem := range []string{"3/4 = 6/8", "6/8 = 3/4", "1/2 = 2/4"} {
		for _, it := range tellingOf(t, problem).Whole.View(false).Items {
			if eq, ok := it.Shape.(scene.Text); ok && eq.Bold {
				first, last := eq.Runs[0], eq.Runs[len(eq.Runs)-1]
				if first.Role != scene.First || last.Role != scene.Second {
					t.Errorf("%s: %v to %v", problem, first, last)
				}
			}
		}
	}
}

func TestStripsAreCountedAsTheyAreLaid(t *testing.T) {
	for _, test := range []struct {
		problem string
		strips  int64
	}{
		{"3/4", 1}, {"2 3/4", 3}, {"3/4 = 6/8", 2}, {"5/4 > 3/4", 3}, {"order 1/2; 1/3; 3/2", 4},
		{"1 1/2 + 3/4", 3}, {"3 − 3/4", 4}, {"2 1/4 as a fraction", 3}, {"7/4 as a mixed number", 2},
	} {
		if got := tellingOf(t, test.problem).Pieces[0].Count; got != test.strips {
			t.Errorf("%s: %d strips, want %d", test.problem, got, test.strips)
		}
	}
}

func TestTheAnswerIsNotToldBeforeItIsAsked(t *testing.T) {
	for _, test := range []struct{ problem, answer string }{
		{"1/2 = ?/8", "4/8"}, {"4/6 = ?/3", "2/3"}, {"1 1/2 = ?/4", "6/4"}, {"1/2 = 4/?", "4/8"}, {"2 1/4 as a fraction", "9/4"},
	} {
		steps := tellingOf(t, test.problem).Steps
		for i, step := range steps {
			said := step.Title + step.Hands.String() + step.Symbols.Text() + step.Scene.Desc.Shown
			for _, it := range step.Scene.View(false).Items {
				if text, ok := it.Shape.(scene.Text); ok {
					for _, r := range text.Runs {
						said += " " + r.Num + "/" + r.Den
					}
				}
			}
			if last := i == len(steps)-1; strings.Contains(said, test.answer) != last {
				t.Errorf("%s, step %d of %d: %q", test.problem, i+1, len(steps), said)
			}
		}
	}
}

func TestARowIsDrawnFromTheStepThatUsesIt(t *testing.T) {
	for _, problem := range []string{"1 1/2 + 3/4", "3 − 3/4", "3/4 = 6/8", "1/2 = ?/8"} {
		heights := map[int]bool{}
		for _, it := range tellingOf(t, problem).Steps[0].Scene.View(false).Items {
			if r, ok := it.Shape.(scene.Rect); ok && it.Role == scene.Ink {
				heights[r.Y] = true
			}
		}
		if len(heights) != 1 {
			t.Errorf("%s: %d rows in the first step", problem, len(heights))
		}
	}
}
