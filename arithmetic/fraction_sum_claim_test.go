package arithmetic

import (
	"math/big"
	"testing"
)

func TestClaimsAboutASum(t *testing.T) {
	sum := func(a, b Number) Expr { return Operation{Op: Add, Left: a, Right: b} }
	for _, test := range []struct {
		left, right    Expr
		rel, relation  Relation
		gap, total     string
		moves, instead string
		source         string
	}{
		{sum(parts(1, 2), parts(1, 4)), parts(3, 4), Equal, Equal, "0/4", "3/4",
			"LayStrips LayStrips LayStrips CutParts CountParts CompareEnds", "", "common practice, no source"},
		{sum(parts(1, 2), parts(1, 3)), parts(2, 5), Equal, Greater, "13/30", "5/6",
			"LayStrips LayStrips LayStrips CutParts CutParts CountParts CompareEnds", "1/2 + 1/3 = 5/6",
			"upper and lower numbers added apart: a common error; the sum of 1/2 and 1/3 is 5/6 in CCSS 5.NF.A.1's way"},
		{sum(parts(2, 5), parts(1, 2)), parts(3, 7), Equal, Greater, "33/70", "9/10",
			"LayStrips LayStrips LayStrips CutParts CutParts CountParts CompareEnds", "2/5 + 1/2 = 9/10", "CCSS 5.NF.A.2: 2/5 + 1/2 = 3/7 is not right"},
		{parts(3, 4), sum(parts(1, 2), parts(3, 8)), Less, Less, "1/8", "7/8",
			"LayStrips LayStrips LayStrips CutParts CountParts CompareEnds", "", "common practice, no source"},
		{Int(1), sum(parts(1, 2), parts(1, 2)), Greater, Equal, "0/2", "2/2",
			"LayStrips LayStrips LayStrips CountParts CompareEnds", "", "common practice, no source"},
	} {
		p := Problem{Kind: Claim, Left: test.left, Rel: test.rel, Right: test.right}
		w, err := CompareSumByCutting(p)
		if err != nil {
			t.Errorf("%s: %v", p, err)
			continue
		}
		ends := w.Moves[len(w.Moves)-1].(CompareEnds)
		if w.Answer.Relation != test.relation || w.Answer.True != (test.rel == test.relation) {
			t.Errorf("%s: %v, %v (%s)", p, w.Answer.Relation, w.Answer.True, test.source)
		}
		if want, _ := new(big.Rat).SetString(test.gap); want.Cmp(big.NewRat(ends.Gap.Num(), ends.Gap.Den())) != 0 {
			t.Errorf("%s: the ends are %s apart, want %s (%s)", p, ends.Gap, test.gap, test.source)
		}
		if total := w.Moves[len(w.Moves)-2].(CountParts).Total; Frac(total.Part).String() != test.total {
			t.Errorf("%s: the sum is counted as %v, want %s", p, total, test.total)
		}
		if got := written(w.Moves); got != test.moves {
			t.Errorf("%s is worked by\n%s, want\n%s", p, got, test.moves)
		}
		if test.instead != "" && ends.Instead.String() != test.instead {
			t.Errorf("%s: instead %s, want %s", p, ends.Instead, test.instead)
		}
	}
	for _, p := range []Problem{
		{Kind: Claim, Left: parts(1, 2), Rel: Equal, Right: parts(2, 4)},
		{Kind: Claim, Left: Operation{Op: Subtract, Left: parts(1, 2), Right: parts(1, 4)}, Rel: Equal, Right: parts(1, 4)},
		sumOf(parts(1, 2), parts(1, 4)),
	} {
		if _, err := CompareSumByCutting(p); err == nil {
			t.Errorf("%s is taken for a sum beside a number", p)
		}
	}
}
