package models

import (
	"os"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
)

// offers checks that what an error offers has a lesson and is not false.
func offers(t *testing.T, text string) {
	t.Helper()
	_, err := Teach(text, "")
	if err == nil {
		return
	}
	e, ok := err.(*reading.Error)
	if !ok {
		t.Fatalf("%q: a strange error: %v", text, err)
	}
	l, err := Teach(e.Try, "")
	if err != nil {
		t.Errorf("%q: %q is proposed, which has no lesson: %v", text, e.Try, err)
	} else if l.Problem.Kind == arithmetic.Claim && !l.Answer.True {
		t.Errorf("%q: %q is proposed, which is false", text, e.Try)
	}
}

// What errors offer can be taught: of every text that is known to be unreadable,
// and of every example with a slip in it.
func TestWhatAnErrorOffersHasALesson(t *testing.T) {
	list, err := os.ReadFile("../golden/testdata/unreadable.txt")
	if err != nil {
		t.Fatal(err)
	}
	for text := range strings.SplitSeq(string(list), "\n") {
		offers(t, text)
	}
	for _, m := range All {
		for _, example := range m.Examples {
			r := []rune(example)
			for i := range r {
				head, tail := string(r[:i]), string(r[i:])
				offers(t, head)
				offers(t, head+string(r[i+1:]))
				for _, slip := range []string{" ", "0", "/0", "?", "x ", "- ", "%", " cm ", " of "} {
					offers(t, head+slip+tail)
				}
			}
		}
	}
}

func TestErrorsOfferAProblemOfTheSameKind(t *testing.T) {
	for text, want := range map[string]string{
		"5 - 8":                 "8 − 5",
		"5 m - 30 cm":           "402 − 178",
		"402 - 178 x":           "402 − 178",
		"7 8 9":                 "7 + 8 + 9",
		"8 + ? = ?":             "8 + ? = 13",
		"factors of 1000":       "factors of 100",
		"1/2 of 7":              "1/2 of 8",
		"2/3 = 5/?":             "2/3 = 4/?",
		"10% of 50":             "1/10 of 50",
		"24 is a multiple of 6": "24 ÷ 6",
		"57 ÷ 8 = 7 r 1":        "57 ÷ 8",
		"7 x 8 == 54":           "7 × 8",
	} {
		_, err := Teach(text, "")
		if e, ok := err.(*reading.Error); !ok || e.Try != want {
			t.Errorf("%q: %+v, want %q to try", text, err, want)
		}
	}
}

// The reason is one sentence of one model, or what is missing.
func TestOneReasonIsGiven(t *testing.T) {
	for text, want := range map[string]string{
		"9 ÷ 1/5":         "fraction bars show at most 8 wholes",
		"1/4 + 1/2 × 1/3": "take one step at a time: two numbers and one sign",
		"7 + ? = 5":       "the missing number would be less than 0",
		"factors of 1000": "all arrays are shown for numbers up to 200, and 1,000 is more",
	} {
		_, err := Teach(text, "")
		if e, ok := err.(*reading.Error); !ok || e.Hint != want {
			t.Errorf("%q: %+v, want the hint %q", text, err, want)
		}
	}
}

func TestNextHasALessonOfTheSameKind(t *testing.T) {
	told := 0
	for _, m := range All {
		for _, example := range m.Examples {
			l, err := Teach(example, m.Name)
			if err != nil {
				t.Errorf("%s: %v", example, err)
				continue
			}
			problem, ok := Next(l)
			if !ok {
				continue
			}
			told++
			next, err := Teach(problem, m.Name)
			if err != nil || next.Problem.Kind != l.Problem.Kind || !arithmetic.Alike(next.Problem, l.Problem) {
				t.Errorf("after %s comes %s: %v", example, problem, err)
			}
		}
	}
	if told < 60 {
		t.Errorf("only %d examples have a next one", told)
	}
}
