package arithmetic

import (
	"errors"
	"math/big"
	"testing"

	"modeler/fraction"
)

func ratOf(n Number) *big.Rat { return big.NewRat(n.Value.Num(), n.Value.Den()) }

// CCSS 5.NF.B.7a, b and c; the last three by common parts, common practice, no source.
func TestFractionsAreMeasuredAndShared(t *testing.T) {
	f := func(num, den int64) Number { return Frac(fraction.Must(num, den)) }
	for _, test := range []struct {
		a, b Number
		want string
		work func(Problem) (Working, error)
	}{
		{f(1, 3), Int(4), "1/12", ShareByCutting}, {f(1, 2), Int(3), "1/6", ShareByCutting}, {f(1, 3), Int(2), "1/6", ShareByCutting},
		{f(2, 3), Int(2), "1/3", ShareByCutting}, {f(3, 4), Int(6), "1/8", ShareByCutting},
		{Int(4), f(1, 5), "20", MeasureByCutting}, {Int(2), f(1, 3), "6", MeasureByCutting}, {Int(4), f(1, 3), "12", MeasureByCutting},
		{f(3, 4), f(1, 8), "6", MeasureByCutting}, {f(2, 3), f(1, 4), "2 2/3", MeasureByCutting}, {AsMixed(fraction.Must(3, 2)), f(3, 4), "2", MeasureByCutting},
	} {
		p := Problem{Kind: Division, Left: Operation{Divide, test.a, test.b}}
		if w, err := test.work(p); err != nil || w.Answer.Simplest.String() != test.want {
			t.Errorf("%s: %s, %v; want %s", p, w.Answer.Simplest, err, test.want)
		}
	}
}

func TestWhatCannotBeMeasuredOrShared(t *testing.T) {
	f := func(num, den int64) Number { return Frac(fraction.Must(num, den)) }
	for _, test := range []struct {
		a, b Number
		want error
		work func(Problem) (Working, error)
	}{
		{f(1, 5), f(1, 4), ErrNoGroup, MeasureByCutting}, {f(0, 5), f(1, 4), ErrNothing, MeasureByCutting}, {f(1, 5), f(0, 4), ErrNothing, MeasureByCutting},
		{f(1, 3), Int(1), ErrSame, ShareByCutting}, {f(0, 3), Int(4), ErrNothing, ShareByCutting}, {f(1, 3), Int(0), ErrNothing, ShareByCutting},
		{f(1, 1<<40), Int(1 << 40), ErrOverflow, ShareByCutting}, {f(1, 1<<40), f(1, 1<<40-1), ErrNoGroup, MeasureByCutting}, {Int(1 << 40), f(1, 1<<40), ErrOverflow, MeasureByCutting},
	} {
		p := Problem{Kind: Division, Left: Operation{Divide, test.a, test.b}}
		if _, err := test.work(p); !errors.Is(err, test.want) {
			t.Errorf("%s: %v, want %v", p, err, test.want)
		}
	}
}

// Every quotient agrees with math/big, and the moves keep the amount: the groups and
// what is left make all, the shares together too.
func TestEveryQuotientOfFractionsIsExact(t *testing.T) {
	for num := int64(1); num < 10; num++ {
		for den := int64(1); den < 9; den++ {
			a := Frac(fraction.Must(num, den))
			for n := int64(2); n < 9; n++ {
				p := Problem{Kind: Division, Left: Operation{Divide, a, Int(n)}}
				w, err := ShareByCutting(p)
				if err != nil {
					t.Fatal(p, err)
				}
				want := new(big.Rat).Quo(ratOf(a), big.NewRat(n, 1))
				if ratOf(w.Answer.Number).Cmp(want) != 0 || ratOf(w.Answer.Simplest).Cmp(want) != 0 {
					t.Errorf("%s: %s = %s", p, w.Answer.Number, w.Answer.Simplest)
				}
			}
			for of := int64(1); of < 9; of++ {
				for size := int64(1); size < 9; size++ {
					b := Frac(fraction.Must(of, size))
					p := Problem{Kind: Division, Left: Operation{Divide, a, b}}
					w, err := MeasureByCutting(p)
					if errors.Is(err, ErrNoGroup) && ratOf(a).Cmp(ratOf(b)) < 0 {
						continue
					}
					if err != nil {
						t.Fatal(p, err)
					}
					want := new(big.Rat).Quo(ratOf(a), ratOf(b))
					if ratOf(w.Answer.Number).Cmp(want) != 0 {
						t.Errorf("%s: %s", p, w.Answer.Number)
					}
					m := w.Moves[len(w.Moves)-1].(MeasureOff)
					all := new(big.Rat).Mul(big.NewRat(m.Count, 1), ratOf(Frac(m.Each.Part)))
					if all.Add(all, ratOf(Frac(m.Left.Part))); all.Cmp(ratOf(a)) != 0 || m.Left.Part.Cmp(m.Each.Part) >= 0 {
						t.Errorf("%s: %d groups and %s left", p, m.Count, m.Left.Part)
					}
				}
			}
		}
	}
}

// CCSS 4.NF.B.3b has the first two; the others common practice, no source.
func TestAmountsAreTakenApart(t *testing.T) {
	f := func(num, den int64) Number { return Frac(fraction.Must(num, den)) }
	for _, test := range []struct {
		n     Number
		parts string
		two   string
	}{
		{f(3, 8), "1/8 1/8 1/8 ", "1/8 2/8"}, {AsMixed(fraction.Must(17, 8)), "1 1 1/8 ", "2 1/8"}, {f(2, 3), "1/3 1/3 ", ""}, {f(7, 4), "1/4 1/4 1/4 1/4 1/4 1/4 1/4 ", "4/4 3/4"},
	} {
		w, err := TakeApart(Problem{Kind: AsSum, Left: test.n})
		if err != nil {
			t.Fatal(test.n, err)
		}
		parts, two := "", ""
		for _, n := range w.Answer.Order {
			parts += n.String() + " "
		}
		if m, ok := w.Moves[len(w.Moves)-1].(SplitInTwo); ok {
			two = m.First.Number().String() + " " + m.Second.Number().String()
		}
		if parts != test.parts || two != test.two {
			t.Errorf("%s: %q, %q", test.n, parts, two)
		}
	}
	for n, want := range map[Number]error{f(1, 8): ErrSame, f(0, 8): ErrNothing, f(30, 31): ErrOverflow} {
		if _, err := TakeApart(Problem{Kind: AsSum, Left: n}); !errors.Is(err, want) {
			t.Errorf("%s: %v, want %v", n, err, want)
		}
	}
}
