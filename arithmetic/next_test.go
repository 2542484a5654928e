package arithmetic_test

import (
	"testing"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
)

func read(t *testing.T, text string) arithmetic.Problem {
	t.Helper()
	r, err := reading.Read(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return r.Problem
}

// Common practice, no source: the next problem has the same trades and a number
// that is a little larger, or something left over.
func TestNextIsASmallStepHarder(t *testing.T) {
	for text, want := range map[string]string{
		"402 - 178":                   "502 − 179",
		"345 + 278":                   "445 + 279",
		"3,000 - 1,456":               "4,000 − 1,457",
		"$5.00 - $3.27":               "$6.00 − $3.28",
		"7 x 8":                       "7 × 9",
		"5 x 60":                      "6 × 60",
		"7 x 0":                       "8 × 0",
		"56 ÷ 8":                      "58 ÷ 8",
		"1/3 of 12":                   "2/3 of 12",
		"1/4 + 2/4":                   "2/4 + 3/4",
		"3/4 + 3/4":                   "3/5 + 3/5",
		"7/8 - 3/8":                   "7/9 − 3/9",
		"1/2 + 1/3":                   "2/3 + 1/4",
		"2 1/4 - 3/4":                 "3 1/4 − 3/4",
		"2 1/4 as a fraction":         "3 1/4 as a fraction",
		"1/2 = ?/8":                   "1/2 = ?/10",
		"3/4 = 6/8":                   "3/4 = 9/12",
		"8 x ? = 48":                  "8 × ? = 56",
		"round 45 to the nearest ten": "round 55 to the nearest 10",
		"order 1/2, 3/4":              "order 1/2; 3/4; 4/5",
		"4 + 1 = 5 + 2":               "5 + 2 = 6 + 3",
		"6/8 in simplest form":        "9/12 in simplest form",
	} {
		next, ok := arithmetic.Next(read(t, text))
		if got := next.String(); !ok || got != want {
			t.Errorf("after %s comes %s, want %s", text, got, want)
		}
	}
}

// The kind stays, so that a parent finds what was asked for; each is worked by
// hand.
func TestNearbyStaysClose(t *testing.T) {
	for text, want := range map[string]string{
		"7 + ? = 5":             "7 + ? = 12",
		"8 x ? = 50":            "8 × ? = 48",
		"50 ÷ ? = 8":            "48 ÷ ? = 8",
		"1/2 of 7":              "1/2 of 8",
		"3/4 of 0":              "3/4 of 16",
		"2/3 = 5/?":             "2/3 = 4/?",
		"2 x 3/4":               "3/4 + 3/4",
		"1/2 x 3/4":             "1/2 of 8",
		"4 ÷ 1/5":               "4 = ?/5",
		"7 ÷ 0":                 "7 ÷ 1",
		"5 - 8":                 "8 − 5",
		"factors of 1000":       "factors of 100",
		"3.14159 + 1":           "3.14 + 1",
		"2.5 x 4":               "2 × 4",
		"1/4 + 1/4 + 1/4":       "1/4 + 1/4",
		"order 1, 2, 3":         "order 1; 2",
		"12 ÷ 4 = 3":            "12 ÷ 4",
		"3/4 as a mixed number": "7/4 as a mixed number",
	} {
		near := arithmetic.Nearby(read(t, text))
		if len(near) == 0 || near[0].String() != want {
			t.Errorf("near %s is %v, want %s first", text, near, want)
		}
	}
}
