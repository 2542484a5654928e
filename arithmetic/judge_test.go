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

// The nearest true equation keeps the form that stands on the right, or the left.
func TestTrueEquality(t *testing.T) {
	f := func(n, d int64) arithmetic.Number { return arithmetic.Frac(fraction.Must(n, d)) }
	seven := arithmetic.Operation{Op: arithmetic.Multiply, Left: arithmetic.Int(7), Right: arithmetic.Int(8)}
	for _, c := range []struct {
		left, right arithmetic.Expr
		want        string // "" is none
	}{
		{f(3, 4), f(5, 8), "3/4 = 6/8"},
		{f(5, 8), f(3, 4), "6/8 = 3/4"},
		{seven, arithmetic.Int(54), "7 × 8 = 56"},
		{arithmetic.InPlaces(5, 1), f(1, 4), "0.5 = 2/4"},
		{f(2, 3), f(3, 5), ""},
		{arithmetic.Operation{Op: arithmetic.Add, Left: f(1, 2), Right: f(1, 4)}, f(2, 6), "1/2 + 1/4 = 3/4"},
		{arithmetic.Operation{Op: arithmetic.Add, Left: f(3, 4), Right: f(1, 2)}, f(2, 6), "3/4 + 1/2 = 1 1/4"},
		{f(1, 3), arithmetic.InPlaces(3, 1), ""},
	} {
		got, ok := arithmetic.TrueEquality(arithmetic.Problem{Kind: arithmetic.Claim, Left: c.left, Rel: arithmetic.Less, Right: c.right})
		if ok != (c.want != "") || ok && got.String() != c.want {
			t.Errorf("%s and %s: got %s, %v; want %s", c.left, c.right, got, ok, c.want)
		}
	}
}
