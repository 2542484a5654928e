package reading

import "testing"

// Common practice, no source: what parents type beside the spellings of a book.
func TestSpokenFormsAreTheSameProblem(t *testing.T) {
	for text, want := range map[string]string{
		"order 1/2 1/3 1/4":             "order 1/2; 1/3; 1/4",
		"put 1/2 2/3 3/8 in order":      "order 1/2; 2/3; 3/8",
		"order 3 1/2 2 4":               "order 3 1/2; 2; 4",
		"3/4 on a number line":          "3/4",
		"show 3/4 on the number line":   "3/4",
		"402 - 178 on a number line":    "402 − 178",
		"3 over 4":                      "3/4",
		"5 over 4":                      "5/4",
		"how many eighths in 1/2":       "1/2 = ?/8",
		"How many eighths are in 1/2?":  "1/2 = ?/8",
		"how many tens in 340":          "340 in groups of 10",
		"one hundred and five minus 6":  "105 − 6",
		"two thousand and forty":        "2,040",
		"a dozen minus 3":               "12 − 3",
		"2 dozen + 5":                   "24 + 5",
		"two dozen":                     "24",
		"one hundred and three fourths": "100 3/4",
		"add one hundred and five":      "100 + 5",
		"sum of two hundred and 30":     "200 + 30",
		"how many is 3 + 4":             "3 + 4",
		"array 6 by 4":                  "6 × 4",
		"6 by 4 array":                  "6 × 4",
		"draw a 6 by 4 array":           "6 × 4",
		"6 x 4 array":                   "6 × 4",
	} {
		r, err := Read(text)
		if err != nil {
			t.Errorf("Read(%q): %v", text, err)
		} else if got := r.Problem.String(); got != want {
			t.Errorf("Read(%q) = %q, want %q", text, got, want)
		}
	}
}
