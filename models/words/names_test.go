package words

import (
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// US number names, without "and" (common practice, no source).
func TestName(t *testing.T) {
	for n, want := range map[int64]string{
		0: "zero", 7: "seven", 12: "twelve", 20: "twenty", 21: "twenty-one", 99: "ninety-nine",
		100: "one hundred", 402: "four hundred two", 706: "seven hundred six", 1000: "one thousand",
		1204: "one thousand two hundred four", 9999: "nine thousand nine hundred ninety-nine",
		40_000: "forty thousand", 1_000_001: "one million one",
		9_999_999: "nine million nine hundred ninety-nine thousand nine hundred ninety-nine",
	} {
		if got := Name(n); got != want {
			t.Errorf("Name(%d) = %q, want %q", n, got, want)
		}
	}
}

// Names of unit fractions as US schools say them: halves, thirds, fourths
// (CCSS 1.G.A.3, 2.G.A.3 use halves, thirds, fourths, quarters).
func TestParts(t *testing.T) {
	for _, c := range []struct {
		den, count int64
		want       string
	}{
		{1, 3, "wholes"}, {2, 1, "half"}, {2, 3, "halves"}, {3, 1, "third"}, {4, 3, "fourths"}, {5, 1, "fifth"},
		{8, 2, "eighths"}, {9, 2, "ninths"}, {12, 5, "twelfths"}, {15, 2, "fifteenths"}, {20, 1, "twentieth"},
		{24, 7, "twenty-fourths"}, {100, 45, "hundredths"}, {120, 2, "120ths"},
	} {
		if got := Parts(c.den, c.count); got != c.want {
			t.Errorf("Parts(%d, %d) = %q, want %q", c.den, c.count, got, c.want)
		}
	}
}

func TestNumberName(t *testing.T) {
	for want, n := range map[string]arithmetic.Number{
		"four hundred two":    arithmetic.Int(402),
		"three fourths":       arithmetic.Frac(fraction.Must(3, 4)),
		"one half":            arithmetic.Frac(fraction.Must(1, 2)),
		"one and one half":    arithmetic.AsMixed(fraction.Must(3, 2)),
		"six wholes":          arithmetic.Frac(fraction.Must(6, 1)),
		"0.45":                arithmetic.InPlaces(45, 2),
		"two and five sixths": arithmetic.AsMixed(fraction.Must(17, 6)),
	} {
		if got := NumberName(n); got != want {
			t.Errorf("NumberName(%v) = %q, want %q", n, got, want)
		}
	}
}

func TestCountKeepsZeroVisible(t *testing.T) {
	for want, got := range map[string]string{"no tens": Count(0, "ten"), "1 ten": Count(1, "ten"), "12 ones": Count(12, "one")} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
