package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"

	"modeler/fraction"
)

func TestHopsOfAFraction(t *testing.T) {
	quarter, third := Frac(fraction.Must(1, 4)), Frac(fraction.Must(1, 3))
	for _, c := range []struct {
		p                    Problem
		answer, last, source string
	}{
		{Problem{Kind: Product, Left: Operation{Multiply, Int(5), quarter}}, "5/4", "5/4", "CCSS 4.NF.B.4a"},
		{Problem{Kind: Product, Left: Operation{Multiply, Int(3), Frac(fraction.Must(2, 5))}}, "6/5", "6/5", "CCSS 4.NF.B.4b"},
		{Problem{Kind: Division, Left: Operation{Divide, Int(2), third}}, "6", "2", "CCSS 5.NF.B.7c"},
		{Problem{Kind: Division, Left: Operation{Divide, Int(4), third}}, "12", "4", "NF Progression, grade 5 (from memory)"},
		{Problem{Kind: Product, Left: Operation{Multiply, Int(3), InPlaces(4, 1)}}, "1.2", "1.2", "no source"},
	} {
		w, row, err := HopEqually(c.p)
		if err != nil || w.Answer.Number.String() != c.answer || row.Number(row.Land(row.Count)).String() != c.last {
			t.Errorf("%s: %s, the last hop lands on %s, %v; want %s and %s (%s)", c.p, w.Answer.Number, row.Number(row.Land(row.Count)), err, c.answer, c.last, c.source)
		}
	}
}

func TestHopsOfAFractionThatAreRefused(t *testing.T) {
	for _, c := range []struct {
		p    Problem
		want error
	}{
		{Problem{Kind: Division, Left: Operation{Divide, Int(1), Frac(fraction.Must(2, 5))}}, ErrUneven},
		{Problem{Kind: Product, Left: Operation{Multiply, Int(0), Frac(fraction.Must(2, 5))}}, ErrNothing},
		{Problem{Kind: Division, Left: Operation{Divide, Frac(fraction.Must(3, 4)), Int(2)}}, errNotOnLine}, // that is sharing
	} {
		if _, _, err := HopEqually(c.p); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", c.p, err, c.want)
		}
	}
}

// Count hops of By reach the product, and the total of a division, by math/big.
func TestHopsOfAFractionAgreeWithBigRat(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 7))
	rat := func(f fraction.Fraction) *big.Rat { return big.NewRat(f.Num(), f.Den()) }
	for range 5_000 {
		f := fraction.Must(1+r.Int64N(20), 1+r.Int64N(12))
		n := 1 + r.Int64N(12)
		want := new(big.Rat).Mul(big.NewRat(n, 1), rat(f))
		w, row, err := HopEqually(Problem{Kind: Product, Left: Operation{Multiply, Int(n), Frac(f)}})
		if err != nil || rat(w.Answer.Number.Value).Cmp(want) != 0 || rat(row.Worth(row.Land(row.Count))).Cmp(want) != 0 {
			t.Fatalf("%d × %s: %s, %v, want %s", n, f, w.Answer.Number, err, want)
		}
		total := fraction.Must(want.Num().Int64(), want.Denom().Int64())
		w, row, err = HopEqually(Problem{Kind: Division, Left: Operation{Divide, Frac(total), Frac(f)}})
		if err != nil || row.Count != n || w.Answer.Number != Int(n) {
			t.Fatalf("%s ÷ %s: %s in %d hops, %v, want %d", total, f, w.Answer.Number, row.Count, err, n)
		}
	}
}
