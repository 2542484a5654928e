package words

import "testing"

// British names of numbers as schools there say them, common practice, no source.
func TestBritishNamesHaveAnAnd(t *testing.T) {
	for n, want := range map[int64]string{
		0: "zero", 17: "seventeen", 100: "one hundred", 101: "one hundred and one", 402: "four hundred and two",
		178: "one hundred and seventy-eight", 1000: "one thousand", 2006: "two thousand and six", 3456: "three thousand four hundred and fifty-six",
		27_305: "twenty-seven thousand three hundred and five", 410_000: "four hundred and ten thousand",
		402_011: "four hundred and two thousand and eleven", 4_027_305: "four million twenty-seven thousand three hundred and five",
		1_000_001: "one million and one", 2_345_600: "two million three hundred and forty-five thousand six hundred",
	} {
		if got := British.Text(Name(n)); got != want {
			t.Errorf("%d: got %q, want %q", n, got, want)
		}
	}
}

func TestBritishSaysQuarterAndColour(t *testing.T) {
	for text, want := range map[string]string{
		"three fourths":        "three quarters",
		"Each fourth cut in 2": "Each quarter cut in 2",
		"Make fourths.":        "Make quarters.",
		"1 fourth and 1 half":  "1 quarter and 1 half",
		"7 twenty-fourths":     "7 twenty-fourths",
		"Share to the fourth group, and a fourth time.": "Share to the fourth group, and a fourth time.",
		"counters of two colors":                        "counters of two colours",
		"Fourths":                                       "Quarters",
		"one hundred twenty-fifths":                     "one hundred twenty-fifths",
		"one hundred and one half":                      "one hundred and one half",
		"1 hundred for 10 tens, two of them":            "1 hundred for 10 tens, two of them",
		"a hundred. Two hundreds, ten tens":             "a hundred. Two hundreds, ten tens",
		"402 − 178 = 224":                               "402 − 178 = 224",
	} {
		if got := British.Text(text); got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
		if got := American.Text(text); got != text {
			t.Errorf("%q becomes %q in its own wording", text, got)
		}
	}
}
