package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"
)

func sum(op Op, a, b Expr) Operation { return Operation{Op: op, Left: a, Right: b} }

func TestABlankIsFoundOnBothSides(t *testing.T) {
	for _, c := range []struct {
		p    Problem
		want int64
		took int64
	}{
		// CCSS 1.OA.D.8 asks for the unknown in 8 + ? = 11, 5 = ? − 3 and 6 + 6 = ?; of
		// these a balance has the first.
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Add, Int(8), Unknown{}), Right: Int(11)}, 3, 8},
		// 8 + 4 = ? + 5 is the item of Falkner, Levi and Carpenter 1999 (the number is
		// 7, and 12 and 17 are the usual errors; from memory).
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Add, Int(8), Int(4)), Right: sum(Add, Unknown{}, Int(5))}, 7, 5},
		{Problem{Kind: Missing, Rel: Equal, Left: Int(12), Right: sum(Add, Unknown{}, Int(5))}, 7, 5},
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Add, Int(5), Unknown{}), Right: sum(Multiply, Int(3), Int(4))}, 7, 5},
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Subtract, Int(9), Int(2)), Right: sum(Add, Int(7), Unknown{})}, 0, 7},
	} {
		w, err := FindOnBalance(c.p)
		if err != nil {
			t.Errorf("%s: %v", c.p, err)
			continue
		}
		took := int64(0)
		for _, m := range w.Moves {
			if m, ok := m.(TakeBoth); ok {
				took = m.By
			}
		}
		if got, _ := w.Answer.Number.Int64(); got != c.want || took != c.took {
			t.Errorf("%s: %d after taking %d, want %d after %d", c.p, got, took, c.want, c.took)
		}
	}
}

func TestWhatCannotBeWeighedIsRefused(t *testing.T) {
	half := InPlaces(5, 1)
	for _, c := range []struct {
		p   Problem
		err error
	}{
		{Problem{Kind: Claim, Rel: Equal, Left: half, Right: Int(1)}, ErrNotOnBalance},
		{Problem{Kind: Claim, Rel: Equal, Left: sum(Subtract, Int(3), Int(5)), Right: Int(1)}, ErrNegative},
		{Problem{Kind: Claim, Rel: Equal, Left: sum(Multiply, Int(1<<40), Int(1<<40)), Right: Int(1)}, ErrOverflow},
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Add, Int(8), Unknown{}), Right: Int(5)}, ErrNegative},
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Subtract, Int(8), Unknown{}), Right: Int(5)}, ErrNotOnBalance},
		{Problem{Kind: Addition, Left: sum(Add, Int(8), Int(5))}, ErrNotOnBalance},
	} {
		_, err := WeighSides(c.p)
		if c.p.Kind == Missing {
			_, err = FindOnBalance(c.p)
		}
		if !errors.Is(err, c.err) {
			t.Errorf("%s: %v, want %v", c.p, err, c.err)
		}
	}
}

// What is weighed is what math/big makes of both sides.
func TestTheHeavierSideIsTheLarger(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	side := func() (Expr, *big.Int) {
		a, b := r.Int64N(12), r.Int64N(12)
		x, y := big.NewInt(a), big.NewInt(b)
		switch r.IntN(4) {
		case 0:
			return sum(Add, Int(a), Int(b)), x.Add(x, y)
		case 1:
			return sum(Multiply, Int(a), Int(b)), x.Mul(x, y)
		case 2:
			return sum(Subtract, Int(a+b), Int(b)), x
		}
		return Int(a), x
	}
	for range 2000 {
		a, x := side()
		b, y := side()
		w, err := WeighSides(Problem{Kind: Comparison, Left: a, Right: b})
		if err != nil {
			t.Fatalf("%s and %s: %v", a, b, err)
		}
		look := w.Moves[2].(Weigh)
		order := map[Relation]int{Less: -1, Equal: 0, Greater: 1}[look.Relation]
		gap := new(big.Int).Sub(x, y)
		if order != x.Cmp(y) || gap.Abs(gap).Cmp(big.NewInt(look.Gap)) != 0 {
			t.Errorf("%s and %s: %s by %d", a, b, look.Relation, look.Gap)
		}
	}
}

func TestTheSameNumbersInAnotherOrder(t *testing.T) {
	for _, c := range []struct {
		a, b Expr
		want bool
	}{
		{sum(Add, Int(8), Int(6)), sum(Add, Int(6), Int(8)), true},
		{sum(Multiply, Int(3), Int(4)), sum(Multiply, Int(4), Int(3)), true},
		{sum(Add, Int(8), Int(6)), sum(Add, Int(8), Int(6)), false},
		{sum(Add, Int(8), Int(6)), sum(Add, Int(7), Int(7)), false},
		{sum(Add, Int(2), Int(3)), sum(Multiply, Int(3), Int(2)), false},
	} {
		w, err := WeighSides(Problem{Kind: Claim, Rel: Equal, Left: c.a, Right: c.b})
		if err != nil {
			t.Fatal(err)
		}
		if got := w.Moves[2].(Weigh).SameNumbers; got != c.want {
			t.Errorf("%s = %s: the same numbers: %v", c.a, c.b, got)
		}
	}
}
