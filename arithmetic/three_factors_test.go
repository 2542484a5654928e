package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"
)

func TestThreeFactorsAreMultipliedInTheOrderOfTheirBrackets(t *testing.T) {
	times := func(a, b Expr) Expr { return operation(Multiply, a, b) }
	for _, c := range []struct {
		e      Expr
		want   []Move
		source string
	}{
		{
			times(times(Int(3), Int(5)), Int(2)),
			[]Move{
				LayBlocks{Blocks{3, 5, 2}}, PairFactors{RowsInAll, 3, 5, 15}, CountPairs{RowsInAll, 15, 2, 30},
				EasierPair{InABlock, 5, 2, 10, 3, 30},
			}, "CCSS 3.OA.B.5: 3 × 5 × 2 is 15 × 2 or 3 × 10, and both are 30",
		},
		{
			times(Int(3), times(Int(5), Int(2))),
			[]Move{LayBlocks{Blocks{3, 5, 2}}, PairFactors{InABlock, 5, 2, 10}, CountPairs{InABlock, 3, 10, 30}},
			"CCSS 3.OA.B.5",
		},
		{
			times(times(Int(5), Int(7)), Int(2)),
			[]Move{
				LayBlocks{Blocks{5, 7, 2}}, PairFactors{RowsInAll, 5, 7, 35}, CountPairs{RowsInAll, 35, 2, 70},
				EasierPair{InALine, 5, 2, 10, 7, 70},
			}, "common practice, no source",
		},
		{
			times(times(Int(4), Int(12)), Int(5)),
			[]Move{
				LayBlocks{Blocks{4, 12, 5}}, PairFactors{RowsInAll, 4, 12, 48}, CountPairs{RowsInAll, 48, 5, 240},
				EasierPair{InABlock, 12, 5, 60, 4, 240},
			}, "common practice, no source",
		},
	} {
		w, ok, err := ThreeFactors(expression(c.e))
		if !ok || err != nil || !reflect.DeepEqual(w.Moves, c.want) {
			t.Errorf("%v is worked %+v (%t, %v), want %+v (%s)", c.e, w.Moves, ok, err, c.want, c.source)
		}
	}
}

func TestThreeFactorsAgreeWithBigIntegers(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 7))
	for range 4000 {
		a, b, c := r.Int64N(power(r)), r.Int64N(power(r)), r.Int64N(power(r))
		want := new(big.Int).Mul(big.NewInt(a), big.NewInt(b))
		want.Mul(want, big.NewInt(c))
		for _, e := range []Expr{
			operation(Multiply, operation(Multiply, Int(a), Int(b)), Int(c)), operation(Multiply, Int(a), operation(Multiply, Int(b), Int(c))),
		} {
			w, ok, err := ThreeFactors(expression(e))
			switch {
			case !ok:
				t.Fatalf("%v is not worked", e)
			case a*b*c == 0 && (a == 0 || b == 0 || c == 0):
				if !errors.Is(err, ErrNothing) {
					t.Fatalf("%v: %v", e, err)
				}
			case err != nil:
				if !errors.Is(err, ErrOverflow) || want.BitLen() < 60 {
					t.Fatalf("%v: %v", e, err)
				}
			case w.Answer.Number != Int(want.Int64()):
				t.Fatalf("%v = %v, want %v", e, w.Answer.Number, want)
			}
		}
	}
}

func TestAnAssociativeClaimIsJudged(t *testing.T) {
	left := operation(Multiply, operation(Multiply, Int(2), Int(3)), Int(4))
	right := operation(Multiply, Int(2), operation(Multiply, Int(3), Int(4)))
	w, ok, err := AssociateClaim(Problem{Kind: Claim, Rel: Equal, Left: left, Right: right})
	want := CompareBlocks{Sides: [2]BlockSide{
		{Blocks{2, 3, 4}, true, PairFactors{RowsInAll, 2, 3, 6}, 24}, {Blocks{2, 3, 4}, true, PairFactors{InABlock, 3, 4, 12}, 24},
	}, Relation: Equal}
	if !ok || err != nil || !w.Answer.True || !reflect.DeepEqual(w.Moves[2], want) {
		t.Errorf("(2 × 3) × 4 = 2 × (3 × 4) is worked %+v (%t, %v)", w, ok, err)
	}
	w, ok, err = AssociateClaim(Problem{Kind: Claim, Rel: Equal, Left: left, Right: operation(Multiply, Int(6), Int(5))})
	if !ok || err != nil || w.Answer.True || w.Answer.Relation != Less || w.Moves[2].(CompareBlocks).Gap != 6 {
		t.Errorf("2 × 3 × 4 = 6 × 5 is worked %+v (%t, %v)", w, ok, err)
	}
	if _, ok, _ := AssociateClaim(Problem{Kind: Claim, Rel: Equal, Left: left, Right: Int(24)}); ok {
		t.Error("a side that is a number is no block")
	}
}
