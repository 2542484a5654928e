package discs

import (
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

func read(t *testing.T, text string) arithmetic.Problem {
	t.Helper()
	r, err := reading.Read(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return r.Problem
}

func tellingOf(t *testing.T, text string) telling.Telling {
	t.Helper()
	p := read(t, text)
	if err := Model.Fits(p); err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return Model.Tell(p)
}

func TestDiscsSayWhyTheyDoNotFit(t *testing.T) {
	for _, test := range []struct{ problem, because string }{
		{"402 − 178", "no fraction"},
		{"2/3 × 4/5", "one number on each side"},
		{"1/2 + 1/4 = 3/4", "one number on each side"},
		{"1/8 + 1/9", "at most 24 equal parts"},
		{"5/32", "at most 24 equal parts"},
		{"3 1/2 + 1/4", "at most 3 wholes"},
		{"2 3/4 + 1 1/2", "at most 4 wholes"},
		{"3/4 as a mixed number", "one whole or more"},
		{"1/2 = ?/3", "no whole number"},
		{"$0.50 + 1/2", "one number on each side"},
	} {
		r, err := reading.Read(test.problem)
		if err != nil {
			continue // the reader has its own bounds
		}
		if err := Model.Fits(r.Problem); err == nil || !strings.Contains(err.Error(), test.because) {
			t.Errorf("%s: %v, want a reason with %q", test.problem, err, test.because)
		}
	}
}

// pieces counts what is worth something, by role.
func pieces(s *scene.Scene) map[scene.Role]int {
	count := map[scene.Role]int{}
	for _, it := range s.View(false).Items {
		if it.Worth.Sign() > 0 {
			count[it.Role]++
		}
	}
	return count
}

// Both numbers lie on the new disc in their own colors before they are counted.
// (1/2 + 1/3 is 3 sixths and 2 sixths: common practice, no source.)
func TestWedgesAreJoinedOnOneDisc(t *testing.T) {
	lesson := tellingOf(t, "1/2 + 1/3")
	joined := lesson.Steps[4].Scene
	discs := map[scene.Point]int{}
	for _, it := range joined.View(false).Items {
		if w, ok := it.Shape.(scene.Wedge); ok && it.Of == scene.OfAnswer {
			if w.Parts != 6 || w.Count != 1 {
				t.Errorf("a part is %d of %d", w.Count, w.Parts)
			}
			discs[scene.Point{X: w.X, Y: w.Y}]++
		}
	}
	if len(discs) != 1 || pieces(joined)[scene.First] != 6 || pieces(joined)[scene.Second] != 4 {
		t.Errorf("the parts lie on %v: %v", discs, pieces(joined))
	}
	if got := pieces(lesson.Whole)[scene.Result]; got != 5 {
		t.Errorf("the sum has %d sixths", got)
	}
}

func TestARegroupedWholeStaysInItsPlace(t *testing.T) {
	lesson := tellingOf(t, "2 1/4 − 3/4")
	if got := pieces(lesson.Steps[2].Scene)[scene.Moved]; got != 4 {
		t.Errorf("%d fourths are cut, want 4", got)
	}
	if got := pieces(lesson.Whole)[scene.Gone]; got != 3 {
		t.Errorf("%d fourths are gone, want 3", got)
	}
}

// Whatever fits can be told, whatever the parts.
func TestDiscsTellWhateverFits(t *testing.T) {
	var numbers []arithmetic.Number
	for _, den := range []int64{1, 2, 3, 5, 8, 12} {
		for num := int64(0); num <= 2*den; num += max(1, den/3) {
			numbers = append(numbers, arithmetic.Frac(fraction.Must(num, den)))
		}
	}
	numbers = append(numbers, arithmetic.Int(0), arithmetic.Int(3), arithmetic.Number{Value: fraction.Must(7, 4), Form: arithmetic.Mixed}, arithmetic.InPlaces(5, 1))
	told := 0
	for _, a := range numbers {
		for _, b := range numbers {
			for _, p := range []arithmetic.Problem{
				{Kind: arithmetic.Claim, Left: a, Rel: arithmetic.Equal, Right: b},
				{Kind: arithmetic.Comparison, Left: a, Right: b},
				{Kind: arithmetic.Addition, Left: arithmetic.Operation{Op: arithmetic.Add, Left: a, Right: b}},
				{Kind: arithmetic.Subtraction, Left: arithmetic.Operation{Op: arithmetic.Subtract, Left: a, Right: b}},
			} {
				if Model.Fits(p) != nil {
					continue
				}
				told++
				lesson := Model.Tell(p)
				for _, it := range lesson.Whole.Items {
					if w, ok := it.Shape.(scene.Wedge); ok && it.Worth.Sign() > 0 && !it.Worth.Equal(fraction.Must(int64(w.Count), int64(w.Parts))) {
						t.Fatalf("%s: %d of %d parts are worth %s", p, w.Count, w.Parts, it.Worth)
					}
				}
			}
		}
	}
	if told < 1000 {
		t.Errorf("only %d problems were told", told)
	}
}
