package arithmetic_test

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// CCSS 4.NF.C.6 (0.62 is 62/100), National curriculum in England 2013, year 6 (3/8 is
// 0.375); percents from memory.
func TestNumbersInOtherForms(t *testing.T) {
	f := func(num, den int64) arithmetic.Number { return arithmetic.Frac(fraction.Must(num, den)) }
	for _, c := range []struct {
		n                arithmetic.Number
		decimal, percent string
	}{
		{f(3, 8), "0.375", "37.5%"},
		{f(62, 100), "0.62", "62%"},
		{f(1, 2), "0.5", "50%"},
		{f(5, 4), "1.25", "125%"},
		{f(6, 3), "2", "200%"},
		{f(0, 5), "0", "0%"},
		{arithmetic.AsMixed(fraction.Must(7, 4)), "1.75", "175%"},
		{arithmetic.InPercent(62, 0), "0.62", "62%"},
		{arithmetic.InPercent(125, 1), "0.125", "12.5%"},
		{arithmetic.InPlaces(30, 2), "0.30", "30%"},
		{f(1, 1000), "0.001", "0.1%"},
	} {
		d, err := arithmetic.DecimalOf(c.n)
		if err != nil || d.String() != c.decimal {
			t.Errorf("%s as a decimal is %s, %v; want %s", c.n, d, err, c.decimal)
		}
		p, err := arithmetic.PercentOf(c.n)
		if err != nil || p.String() != c.percent {
			t.Errorf("%s as a percent is %s, %v; want %s", c.n, p, err, c.percent)
		}
	}
	for _, n := range []arithmetic.Number{f(1, 3), f(5, 6), f(1, 7), f(2, 30), arithmetic.AsMixed(fraction.Must(10, 9))} {
		if d, err := arithmetic.DecimalOf(n); !errors.Is(err, arithmetic.ErrEndless) {
			t.Errorf("%s as a decimal is %s, %v; want %v", n, d, err, arithmetic.ErrEndless)
		}
		if err := arithmetic.Check(arithmetic.Problem{Kind: arithmetic.PercentForm, Left: n}); !errors.Is(err, arithmetic.ErrEndless) {
			t.Errorf("Check of %s as a percent: %v", n, err)
		}
	}
}

func TestOtherFormsAgreeWithBigRat(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 5000 {
		n := arithmetic.Frac(fraction.Must(r.Int64N(5000), 1+r.Int64N(1000)))
		want := big.NewRat(n.Value.Num(), n.Value.Den())
		for _, form := range []func(arithmetic.Number) (arithmetic.Number, error){arithmetic.DecimalOf, arithmetic.PercentOf} {
			got, err := form(n)
			ends := new(big.Int).Mod(new(big.Int).Exp(big.NewInt(10), big.NewInt(18), nil), want.Denom()).Sign() == 0
			if ends != (err == nil) {
				t.Fatalf("%s: %v", n, err)
			}
			if err == nil && want.Cmp(big.NewRat(got.Value.Num(), got.Value.Den())) != 0 {
				t.Fatalf("%s is %s", n, got)
			}
		}
	}
}

func TestWhichIsCloser(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 2000 {
		a, b, to := fraction.Must(r.Int64N(30), 1+r.Int64N(12)), fraction.Must(r.Int64N(30), 1+r.Int64N(12)), r.Int64N(2)
		got, err := arithmetic.Judge(arithmetic.Problem{Kind: arithmetic.Closer, Left: arithmetic.Frac(a), Right: arithmetic.Frac(b), To: to})
		if err != nil {
			t.Fatal(err)
		}
		away := func(f fraction.Fraction) *big.Rat {
			v := new(big.Rat).Sub(big.NewRat(f.Num(), f.Den()), big.NewRat(to, 1))
			return v.Abs(v)
		}
		x, y := away(a), away(b)
		want := map[int]arithmetic.Relation{-1: arithmetic.Less, 0: arithmetic.Equal, 1: arithmetic.Greater}[x.Cmp(y)]
		gap := new(big.Rat).Sub(x, y)
		if gap.Abs(gap); got.Relation != want || gap.Cmp(big.NewRat(got.Gap.Num(), got.Gap.Den())) != 0 {
			t.Errorf("%s and %s from %d: %+v, want %v by %s", a, b, to, got, want, gap)
		}
		if closer := map[arithmetic.Relation]fraction.Fraction{arithmetic.Less: a, arithmetic.Greater: b}[want]; want != arithmetic.Equal && got.Number.Value != closer {
			t.Errorf("%s or %s is closer to %d: %s", a, b, to, got.Number)
		}
	}
}

// CCSS 5.NBT.A.4; the numbers are worked by hand.
func TestDecimalsRoundToPlaces(t *testing.T) {
	for _, c := range []struct {
		units        int64
		places, to   int
		low, goes    string
		already, has bool
	}{
		{347, 2, 1, "3.4", "3.5", false, true},
		{345, 2, 1, "3.4", "3.5", false, true},
		{343, 2, 1, "3.4", "3.4", false, true},
		{12_996, 3, 2, "12.99", "13.00", false, true},
		{34, 1, 1, "", "3.4", true, true},
		{340, 2, 1, "", "3.4", true, true},
		{34, 1, 2, "", "3.40", true, true},
		{1_234_567, 6, 5, "", "", false, false},
	} {
		p := arithmetic.Problem{Kind: arithmetic.Rounding, Left: arithmetic.InPlaces(c.units, c.places), Places: c.to}
		w, _, err := arithmetic.RoundOnLine(p)
		if (err == nil) != c.has {
			t.Errorf("%s: %v", p, err)
			continue
		}
		if err != nil {
			continue
		}
		if got := w.Answer.Number.String(); got != c.goes {
			t.Errorf("%s is %s, want %s", p, got, c.goes)
		}
		if near, ok := w.Moves[0].(arithmetic.Neighbors); ok == c.already || ok && near.Low.String() != c.low {
			t.Errorf("%s: the first move is %+v", p, w.Moves[0])
		}
	}
}
