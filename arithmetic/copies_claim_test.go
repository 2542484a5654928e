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
