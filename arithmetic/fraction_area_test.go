package arithmetic

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"modeler/fraction"
)

func frac(num, den int64) Number { return Frac(fraction.Must(num, den)) }

func mixedNumber(num, den int64) Number {
	return Number{Value: fraction.Must(num, den), Form: Mixed}
}

func TestAreasOfTheStandards(t *testing.T) {
	for _, c := range []struct {
		a, b     Number
		op       Op
		want     Number
		simplest Number
		source   string
	}{
		{frac(2, 3), frac(4, 5), Multiply, frac(8, 15), frac(8, 15), "CCSS 5.NF.B.4a"},
		{frac(2, 3), Int(4), Multiply, frac(8, 3), mixedNumber(8, 3), "CCSS 5.NF.B.4a"},
		{frac(1, 4), frac(1, 2), Multiply, frac(1, 8), frac(1, 8), "National curriculum in England, Year 6"},
		{frac(1, 2), frac(3, 4), Of, frac(3, 8), frac(3, 8), "common practice, no source"},
		{frac(3, 4), frac(5, 3), Multiply, frac(15, 12), mixedNumber(5, 4), "5.NF.B.5, common practice, no source, for the numbers"},
		{Int(5), frac(1, 4), Multiply, frac(5, 4), mixedNumber(5, 4), "CCSS 4.NF.B.4a"},
		{mixedNumber(3, 2), mixedNumber(7, 3), Multiply, mixedNumber(21, 6), mixedNumber(7, 2), "5.NF.B.6, common practice, no source, for the numbers"},
		{InPlaces(3, 1), InPlaces(4, 1), Multiply, InPlaces(12, 2), InPlaces(12, 2), "5.NBT.B.7, common practice, no source, for the numbers"},
	} {
		p := Problem{Kind: KindOf(c.op), Left: sum(c.op, c.a, c.b)}
		w, err := MultiplyByArea(p)
		if err != nil || w.Answer.Number != c.want || w.Answer.Simplest != c.simplest {
			t.Errorf("%s: %s = %s, %v, want %s = %s (%s)", p, w.Answer.Number, w.Answer.Simplest, err, c.want, c.simplest, c.source)
		}
	}
}

func TestAreasAgreeWithBigRat(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	number := func() Number {
		den := 1 + r.Int64N(12)
		f := fraction.Must(1+r.Int64N(3*den), den)
		if r.IntN(3) == 0 {
			return AsMixed(f)
		}
		return Frac(f)
	}
	for range 20_000 {
		a, b := number(), number()
		if a.Form == Whole && b.Form == Whole {
			continue
		}
		p := Problem{Kind: Product, Left: sum(Multiply, a, b)}
		w, err := MultiplyByArea(p)
		if err != nil {
			t.Fatalf("%s: %v", p, err)
		}
		want := new(big.Rat).Mul(big.NewRat(a.Value.Num(), a.Value.Den()), big.NewRat(b.Value.Num(), b.Value.Den()))
		rat := func(n Number) *big.Rat { return big.NewRat(n.Value.Num(), n.Value.Den()) }
		if rat(w.Answer.Number).Cmp(want) != 0 || rat(w.Answer.Simplest).Cmp(want) != 0 {
			t.Fatalf("%s is %s = %s, want %s", p, w.Answer.Number, w.Answer.Simplest, want)
		}
		for _, m := range w.Moves {
			switch m := m.(type) {
			case CountSmall:
				if m.Rows*m.Columns != m.Count || big.NewRat(m.Count, m.Whole).Cmp(want) != 0 {
					t.Fatalf("%s: %+v", p, m)
				}
			case SplitArea:
				all := new(big.Rat)
				for _, part := range m.Parts {
					each := new(big.Rat).Mul(rat(part.Down), rat(part.Across))
					if each.Cmp(rat(part.Product)) != 0 {
						t.Fatalf("%s: %+v", p, part)
					}
					all.Add(all, each)
				}
				if all.Cmp(want) != 0 {
					t.Fatalf("%s: the parts come to %s", p, all)
				}
			case AddAreas:
				all := big.NewRat(m.Wholes, 1)
				for _, f := range m.Cut {
					all.Add(all, big.NewRat(f.Num(), f.Den()))
				}
				if all.Cmp(want) != 0 || rat(m.Sum).Cmp(want) != 0 {
					t.Fatalf("%s: %+v", p, m)
				}
			}
		}
	}
}

func TestWhatHasNoArea(t *testing.T) {
	for _, c := range []struct {
		a, b Number
		want error
	}{
		{Int(2), Int(3), ErrNoArea}, {frac(0, 3), frac(1, 2), ErrNoArea}, {frac(1, 2), Int(0), ErrNoArea},
		{frac(math.MaxInt64, 2), frac(3, 2), ErrOverflow},
	} {
		if _, err := MultiplyByArea(Problem{Kind: Product, Left: sum(Multiply, c.a, c.b)}); !errors.Is(err, c.want) {
			t.Errorf("%s × %s: %v, want %v", c.a, c.b, err, c.want)
		}
	}
}
