package arithmetic

import (
	"errors"
	"math/big"
	"testing"

	"modeler/fraction"
)

func timesPart(count, num, den int64) Expr {
	return Operation{Multiply, Int(count), Frac(fraction.Must(num, den))}
}

// CCSS 4.NF.B.4b has the first; the others common practice, no source.
func TestCopiesAreCompared(t *testing.T) {
	for _, test := range []struct {
		left, right Expr
		want        Relation
		gap         string
	}{
		{timesPart(3, 2, 5), timesPart(6, 1, 5), Equal, "0"}, {timesPart(5, 1, 4), Int(1), Greater, "1/4"}, {Frac(fraction.Must(1, 2)), timesPart(2, 3, 8), Less, "1/4"},
		{timesPart(4, 2, 3), timesPart(2, 3, 4), Greater, "7/6"},
	} {
		p := Problem{Kind: Claim, Left: test.left, Rel: Equal, Right: test.right}
		w, err := CompareCopies(p)
		if err != nil || w.Answer.Relation != test.want || w.Answer.Gap.String() != test.gap || w.Answer.True != (test.want == Equal) {
			t.Errorf("%s: %v, %s, %v", p, w.Answer.Relation, w.Answer.Gap, err)
		}
	}
	for _, test := range []struct {
		p    Problem
		want error
	}{
		{Problem{Kind: Claim, Left: timesPart(0, 1, 2), Right: Int(1)}, ErrNothing},
		{Problem{Kind: Claim, Left: timesPart(1<<62, 3, 2), Right: Int(1)}, ErrOverflow},
		{Problem{Kind: Claim, Left: Int(1), Right: Frac(fraction.Must(1, 2))}, errNotCopies},
	} {
		if _, err := CompareCopies(test.p); !errors.Is(err, test.want) {
			t.Errorf("%s: %v, want %v", test.p, err, test.want)
		}
	}
}

func TestEveryClaimAboutCopiesIsExact(t *testing.T) {
	for a := int64(1); a < 7; a++ {
		for b := int64(1); b < 7; b++ {
			for den := int64(1); den < 9; den++ {
				p := Problem{Kind: Claim, Left: timesPart(a, 2, den), Rel: Less, Right: timesPart(b, 1, 6)}
				w, err := CompareCopies(p)
				if err != nil {
					t.Fatal(p, err)
				}
				left, right := big.NewRat(2*a, den), big.NewRat(b, 6)
				gap := new(big.Rat).Sub(left, right)
				got := big.NewRat(w.Answer.Gap.Num(), w.Answer.Gap.Den())
				if want := [...]Relation{Less, Equal, Greater}[left.Cmp(right)+1]; w.Answer.Relation != want || got.Cmp(gap.Abs(gap)) != 0 {
					t.Errorf("%s: %v, %s", p, w.Answer.Relation, w.Answer.Gap)
				}
			}
		}
	}
}

// CCSS 5.NF.A.1; the first is a hexagon filled with a trapezoid, a rhombus and a
// triangle (common classroom pieces, from memory).
func TestSeveralFractionsAreAddedEndToEnd(t *testing.T) {
	sum := func(parts ...[2]int64) Problem {
		var e Expr = Frac(fraction.Must(parts[0][0], parts[0][1]))
		for _, p := range parts[1:] {
			e = Operation{Add, e, Frac(fraction.Must(p[0], p[1]))}
		}
		return Problem{Kind: Expression, Left: e}
	}
	for _, test := range []struct {
		p                Problem
		number, simplest string
	}{
		{sum([2]int64{1, 2}, [2]int64{1, 3}, [2]int64{1, 6}), "6/6", "1"},
		{sum([2]int64{1, 4}, [2]int64{2, 3}, [2]int64{5, 6}), "21/12", "1 3/4"},
		{sum([2]int64{3, 4}, [2]int64{3, 4}, [2]int64{3, 4}), "9/4", "2 1/4"},
		{sum([2]int64{1, 2}, [2]int64{1, 4}, [2]int64{1, 8}, [2]int64{1, 16}), "15/16", "15/16"},
	} {
		w, ok, err := AddEndToEnd(test.p)
		if !ok || err != nil || w.Answer.Number.String() != test.number || w.Answer.Simplest.String() != test.simplest {
			t.Errorf("%s: %s, %s, %v, %v", test.p, w.Answer.Number, w.Answer.Simplest, ok, err)
		}
	}
	if _, ok, err := AddEndToEnd(sum([2]int64{1, 2}, [2]int64{0, 3}, [2]int64{1, 6})); !ok || !errors.Is(err, ErrNothing) {
		t.Errorf("nothing is added: %v, %v", ok, err)
	}
	if _, ok, err := AddEndToEnd(sum([2]int64{1, 1 << 31}, [2]int64{1, 1<<31 - 1}, [2]int64{1, 1<<31 - 3})); !ok || !errors.Is(err, ErrOverflow) {
		t.Errorf("too fine: %v, %v", ok, err)
	}
	if _, ok, _ := AddEndToEnd(sum([2]int64{1, 2}, [2]int64{1, 3})); ok {
		t.Error("two are no chain")
	}
}
