package bars

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

func TestFractionBarsSayWhyTheyDoNotFit(t *testing.T) {
	tests := []struct{ problem, because string }{
		{"402 − 178", "no fraction"},
		{"compare 4 and 5", "no fraction"},
		{"0.3 + 0.45", "no fraction"},
		{"2/3 × 4/5", "a sum of two on one side"},
		{"1/2 + 1/4 = 1/4 + 1/2", "a sum of two on one side"},
		{"1/60 + 1/7", "420 to a whole"},
		{"59/60 = 58/59", "3,540 to a whole"},
		{"1/1000000007 + 1/1000000009", "too thin"},
		{"8 1/2 + 1/4", "at most 8 wholes"},
		{"7 3/4 + 3/4", "at most 8 wholes"},
		{"order 1/2; 1/3; 1/4; 1/5; 1/6; 2/3; 3/4; 5/6; 2/5", "at most 8 fractions"},
		{"3/4 as a mixed number", "one whole or more"},
		{"1/2 = ?/3", "no whole number"},
	}
	for _, test := range tests {
		r, err := reading.Read(test.problem)
		if err != nil {
			continue // the reader has its own bounds
		}
		err = Model.Fits(r.Problem)
		if err == nil || !strings.Contains(err.Error(), test.because) {
			t.Errorf("%s: %v, want a reason with %q", test.problem, err, test.because)
		}
	}
}

// whole is the length and left edge of the first whole of a picture: its heavy
// outline.
func whole(t *testing.T, s *scene.Scene) scene.Rect {
	t.Helper()
	for _, it := range s.Items {
		if r, ok := it.Shape.(scene.Rect); ok && it.Role == scene.Ink && it.Finish == scene.Bold {
			return r
		}
	}
	t.Fatal("no whole is marked")
	return scene.Rect{}
}

// reach is how far the pieces of a number reach from the left edge, and how many
// there are.
func reach(s *scene.Scene, of scene.Of, left int, hidden bool) (length, count int) {
	for _, it := range s.View(hidden).Items {
		if it.Of == of && it.Worth.Sign() > 0 {
			length, count = max(length, it.Shape.Box().Right()-left), count+1
		}
	}
	return length, count
}

func TestEqualFractionsEndAtOneLine(t *testing.T) {
	s := tellingOf(t, "3/4 = 6/8").Whole
	w := whole(t, s)
	for _, of := range []scene.Of{scene.OfFirst, scene.OfSecond} {
		length, count := reach(s, of, w.X, false)
		if length*4 != w.W*3 || count != 6 {
			t.Errorf("%s reaches %d of %d in %d parts, want 3/4 of it in 6", of, length, w.W, count)
		}
	}
	lines := 0
	for _, it := range s.View(false).Items {
		if l, ok := it.Shape.(scene.Line); ok && it.Role == scene.Result && it.Finish == scene.Bold {
			lines++
			if l.X1 != l.X2 || (l.X1-w.X)*4 != w.W*3 {
				t.Errorf("the line of the ends is at %d", l.X1)
			}
		}
	}
	if lines != 1 {
		t.Errorf("%d lines join the ends, want 1", lines)
	}
	if _, count := reach(s, scene.OfFirst, w.X, true); count != 3 {
		t.Errorf("with the answer hidden 3/4 has %d parts, want 3", count)
	}
}

func TestTheGapOfAFalseClaimIsDrawnToScale(t *testing.T) {
	s := tellingOf(t, "5/8 > 2/3").Whole
	w := whole(t, s)
	for _, it := range s.View(false).Items {
		if r, ok := it.Shape.(scene.Rect); ok && it.Role == scene.Result && it.Finish == scene.Dashed {
			if r.W*24 != w.W || (r.X-w.X)*8 != w.W*5 {
				t.Errorf("the gap is %d wide from %d, a whole %d from %d", r.W, r.X, w.W, w.X)
			}
			return
		}
	}
	t.Error("the gap is not drawn")
}

func TestASumReachesPastTheFirstWhole(t *testing.T) {
	lesson := tellingOf(t, "3/4 + 3/4")
	w := whole(t, lesson.Whole)
	for _, of := range []scene.Of{scene.OfSecond, scene.OfAnswer} {
		if length, _ := reach(lesson.Whole, of, w.X, false); length*2 != w.W*3 {
			t.Errorf("%s reaches %d, a whole is %d", of, length, w.W)
		}
	}
	if _, count := reach(lesson.Whole, scene.OfAnswer, w.X, true); count > 0 {
		t.Error("the sum is drawn while the answer is hidden")
	}
	if got := lesson.Whole.Title.Shown; got != "3/4 + 3/4 = 6/4 = 1 1/2" {
		t.Errorf("title %q", got)
	}
}

func TestRegroupingCutsOneWhole(t *testing.T) {
	lesson := tellingOf(t, "2 1/4 − 3/4")
	var moved []fraction.Fraction
	for _, it := range lesson.Steps[2].Scene.Items {
		if it.Role == scene.Moved {
			moved = append(moved, it.Worth)
		}
	}
	if len(moved) != 4 || moved[0] != fraction.Must(1, 4) {
		t.Errorf("the step %q makes %v, want four fourths", lesson.Steps[2].Title, moved)
	}
	taken := 0
	for _, it := range lesson.Whole.View(false).Items {
		if it.Role == scene.Gone && it.Worth.Sign() > 0 {
			taken++
		}
	}
	if taken != 3 {
		t.Errorf("%d fourths are taken, want 3", taken)
	}
}

// TestFractionBarsTellWhateverFits goes through every pair of small fractions,
// so that nothing that fits can fail to be told, and every length is exact.
func TestFractionBarsTellWhateverFits(t *testing.T) {
	var numbers []arithmetic.Number
	for _, den := range []int64{1, 2, 3, 5, 8, 12} {
		for num := int64(0); num <= 2*den; num += max(1, den/3) {
			numbers = append(numbers, arithmetic.Frac(fraction.Must(num, den)))
		}
	}
	numbers = append(numbers, arithmetic.Int(0), arithmetic.Int(3),
		arithmetic.Number{Value: fraction.Must(7, 4), Form: arithmetic.Mixed}, arithmetic.InPlaces(5, 1))
	told := 0
	for _, a := range numbers {
		for _, b := range numbers {
			for _, p := range []arithmetic.Problem{
				{Kind: arithmetic.Claim, Left: a, Rel: arithmetic.Equal, Right: b},
				{Kind: arithmetic.Claim, Left: a, Rel: arithmetic.Less, Right: b},
				{Kind: arithmetic.Comparison, Left: a, Right: b},
				{Kind: arithmetic.Addition, Left: arithmetic.Operation{Op: arithmetic.Add, Left: a, Right: b}},
				{Kind: arithmetic.Subtraction, Left: arithmetic.Operation{Op: arithmetic.Subtract, Left: a, Right: b}},
				{Kind: arithmetic.Ordering, List: []arithmetic.Number{b, a, b}},
				{Kind: arithmetic.Claim, Left: arithmetic.Operation{Op: arithmetic.Add, Left: a, Right: b}, Rel: arithmetic.Equal, Right: numbers[2]},
				{Kind: arithmetic.Claim, Left: a, Rel: arithmetic.Less, Right: arithmetic.Operation{Op: arithmetic.Add, Left: a, Right: b}},
			} {
				if Model.Fits(p) != nil {
					continue
				}
				told++
				exactLengths(t, p, Model.Tell(p).Whole)
			}
		}
	}
	if told < 1000 {
		t.Errorf("only %d problems were told", told)
	}
}

// exactLengths checks that every piece is as long as its worth says.
func exactLengths(t *testing.T, p arithmetic.Problem, s *scene.Scene) {
	t.Helper()
	w := whole(t, s)
	for _, it := range s.Items {
		if n := it.Worth.Num(); n > 0 && int64(it.Shape.Box().W)*it.Worth.Den() != n*int64(w.W) {
			t.Errorf("%s: a piece worth %s is %d long, a whole %d", p, it.Worth, it.Shape.Box().W, w.W)
			return
		}
	}
}
