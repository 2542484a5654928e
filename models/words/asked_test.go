package words

import (
	"testing"

	"modeler/arithmetic"
)

func TestAskedPosesTheProblem(t *testing.T) {
	n := arithmetic.Int
	for want, p := range map[string]arithmetic.Problem{
		"402 − 178 = ?": {Kind: arithmetic.Subtraction, Left: op(n(402), arithmetic.Subtract, n(178))},
		"56 ÷ 8 = ?":    {Kind: arithmetic.Division, Grouping: true, Left: op(n(56), arithmetic.Divide, n(8))},
		"3/4 = 6/8?":    {Kind: arithmetic.Claim, Left: frac(3, 4), Rel: arithmetic.Equal, Right: frac(6, 8)},
		"3/4 ? 5/8":     {Kind: arithmetic.Comparison, Left: frac(3, 4), Right: frac(5, 8)},
		"8 + ? = 11":    {Kind: arithmetic.Missing, Left: op(n(8), arithmetic.Add, arithmetic.Unknown{}), Rel: arithmetic.Equal, Right: n(11)},
		"factors of 24": {Kind: arithmetic.Factors, Left: n(24)},
	} {
		if got := Asked(p); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
