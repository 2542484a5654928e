package arithmetic_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

func TestJudgeAgreesWithBigRat(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	signs := map[int]arithmetic.Relation{-1: arithmetic.Less, 0: arithmetic.Equal, 1: arithmetic.Greater}
	for range 2000 {
		a, b := fraction.Must(r.Int64N(30), 1+r.Int64N(12)), fraction.Must(r.Int64N(30), 1+r.Int64N(12))
		rel := arithmetic.Relation(1 + r.IntN(3))
		got, err := arithmetic.Judge(arithmetic.Problem{Kind: arithmetic.Claim, Left: arithmetic.Frac(a), Rel: rel, Right: arithmetic.Frac(b)})
		if err != nil {
			t.Fatalf("judging %s %s %s: %v", a, rel, b, err)
		}
		x, y := big.NewRat(a.Num(), a.Den()), big.NewRat(b.Num(), b.Den())
		gap := new(big.Rat).Sub(x, y)
		gap.Abs(gap)
		if want := signs[x.Cmp(y)]; got.Relation != want || got.True != (rel == want) {
			t.Errorf("%s %s %s: got %v between them and true %v, want %v", a, rel, b, got.Relation, got.True, want)
		}
		if big.NewRat(got.Gap.Num(), got.Gap.Den()).Cmp(gap) != 0 {
			t.Errorf("%s and %s: got %s apart, want %s", a, b, got.Gap, gap)
		}
	}
}

func TestJudgeRefusesWhatItCannotWorkExactly(t *testing.T) {
	big := arithmetic.Int(math.MaxInt64)
	for _, p := range []arithmetic.Problem{
		{Kind: arithmetic.Show, Left: arithmetic.Int(3)},
		{Kind: arithmetic.Claim, Rel: arithmetic.Equal, Right: arithmetic.Int(1),
			Left: arithmetic.Operation{Op: arithmetic.Multiply, Left: big, Right: big}},
		{Kind: arithmetic.Claim, Rel: arithmetic.Equal, Left: arithmetic.Unknown{}, Right: arithmetic.Int(1)},
	} {
		if a, err := arithmetic.Judge(p); err == nil {
			t.Errorf("judging %v: got %+v, want an error", p, a)
		}
	}
}
