package words

import "testing"

func TestAloud(t *testing.T) {
	for text, want := range map[string]string{
		"3/4 = 6/8":         "three fourths equals six eighths",
		"1 1/2 > 3/4":       "1 and one half is more than three fourths",
		"7 × 8 = 54?":       "7 times 8 equals 54?",
		"1/0 is no number.": "1/0 is no number.",
		"402 − 178":         "402 minus 178",
	} {
		if got := Aloud(text); got != want {
			t.Errorf("%q is said %q, want %q", text, got, want)
		}
	}
}
