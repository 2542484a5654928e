package arithmetic

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"modeler/fraction"
)

func TestEvaluate(t *testing.T) {
	for _, c := range []struct {
		expr   Expr
		want   fraction.Fraction
		source string
	}{
		{with(Int(2), Multiply, with(Int(8), Add, Int(7))), fraction.Whole(30), "CCSS 5.OA.A.2"},
		{with(Int(2), Add, with(Int(1), Multiply, Int(3))), fraction.Whole(5), "National curriculum in England, Year 6"},
		{with(with(Int(2), Add, Int(1)), Multiply, Int(3)), fraction.Whole(9), "National curriculum in England, Year 6"},
		{with(common(2, 3), Add, common(5, 4)), fraction.Must(23, 12), "CCSS 5.NF.A.1"},
		{with(Int(3), Divide, Int(4)), fraction.Must(3, 4), "CCSS 5.NF.B.3"},
		{with(common(1, 2), Of, Int(6)), fraction.Must(6, 2), "National curriculum in England, Year 2"},
		{with(InPlaces(83, 2), Add, InPlaces(17, 2)), fraction.Must(100, 100), "National curriculum in England, Year 5"},
		{with(common(1, 4), Add, common(1, 4)), fraction.Must(2, 4), "no source: the sum is not simplified"},
		{Int(7), fraction.Whole(7), "no source"},
	} {
		got, err := Evaluate(c.expr)
		if err != nil || got != c.want {
			t.Errorf("%s is %s, %v, want %s (%s)", c.expr, got, err, c.want, c.source)
		}
	}
}

func TestCheckSaysWhyThereIsNoAnswer(t *testing.T) {
	large := Int(math.MaxInt64)
	for _, c := range []struct {
		problem Problem
		want    error
	}{
		{Problem{Kind: Subtraction, Left: with(Int(402), Subtract, Int(178))}, nil},
		{Problem{Kind: Subtraction, Left: with(Int(5), Subtract, Int(5))}, nil},
		{Problem{Kind: Subtraction, Left: with(Int(5), Subtract, Int(8))}, ErrNegative},
		{Problem{Kind: Division, Left: with(Int(7), Divide, Int(0))}, ErrDivideByZero},
		{Problem{Kind: Division, Left: with(Int(7), Divide, common(0, 3))}, ErrDivideByZero},
		{Problem{Kind: Expression, Left: with(Int(7), Divide, with(Int(3), Subtract, Int(3)))}, ErrDivideByZero},
		{Problem{Kind: Product, Left: with(large, Multiply, Int(2))}, ErrOverflow},
		{Problem{Kind: Claim, Left: with(Int(2), Subtract, Int(3)), Rel: Equal, Right: Int(1)}, ErrNegative},
		{Problem{Kind: Claim, Left: Int(1), Rel: Equal, Right: with(Int(2), Subtract, Int(3))}, ErrNegative},
		{Problem{Kind: Expression, Left: with(with(Int(2), Subtract, Int(3)), Add, Int(5))}, ErrNegative},
		{Problem{Kind: Missing, Left: with(Int(8), Divide, Unknown{}), Rel: Equal, Right: Int(4)}, nil},
		{Problem{Kind: Missing, Left: with(Unknown{}, Divide, Int(0)), Rel: Equal, Right: Int(4)}, ErrDivideByZero},
		{Problem{Kind: Show, Left: Int(7)}, nil},
		{Problem{Kind: Ordering, List: []Number{Int(1), Int(2)}}, nil},
	} {
		if got := Check(c.problem); !errors.Is(got, c.want) {
			t.Errorf("Check(%q) = %v, want %v", c.problem, got, c.want)
		}
	}
}

func TestAnUnknownHasNoValue(t *testing.T) {
	for _, e := range []Expr{Unknown{}, with(Int(8), Add, Unknown{}), with(Unknown{}, Multiply, Int(3))} {
		if got, err := Evaluate(e); err == nil {
			t.Errorf("%s is %s", e, got)
		}
	}
}

// deal makes a random expression and its value by the standard library, which is
// nil where something is divided by 0.
func deal(r *rand.Rand, depth int) (Expr, *big.Rat) {
	if depth == 0 || r.IntN(4) == 0 {
		f := fraction.Must(r.Int64N(1000), 1+r.Int64N(20))
		if r.IntN(2) == 0 {
			f = fraction.Whole(f.Num())
		}
		return Number{Value: f}, big.NewRat(f.Num(), f.Den())
	}
	left, x := deal(r, depth-1)
	right, y := deal(r, depth-1)
	op := Op(r.IntN(5))
	if x == nil || y == nil || op == Divide && y.Sign() == 0 {
		return with(left, op, right), nil
	}
	z := new(big.Rat)
	switch op {
	case Add:
		z.Add(x, y)
	case Subtract:
		z.Sub(x, y)
	case Divide:
		z.Quo(x, y)
	default:
		z.Mul(x, y)
	}
	return with(left, op, right), z
}

func TestEvaluateAgreesWithBigRat(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 9))
	worked := 0
	for range 20_000 {
		e, want := deal(r, 4)
		got, err := Evaluate(e)
		switch {
		case errors.Is(err, ErrOverflow):
		case want == nil:
			if !errors.Is(err, ErrDivideByZero) {
				t.Fatalf("%s is %s, %v, want %v", e, got, err, ErrDivideByZero)
			}
		case err != nil || want.Cmp(big.NewRat(got.Num(), got.Den())) != 0:
			t.Fatalf("%s is %s, %v, want %s", e, got, err, want)
		default:
			worked++
		}
	}
	if worked < 10_000 {
		t.Errorf("only %d expressions were worked", worked)
	}
}
