package arithmetic

import (
	"testing"

	"modeler/fraction"
)

func common(num, den int64) Number { return Frac(fraction.Must(num, den)) }

func with(left Expr, op Op, right Expr) Operation { return Operation{Op: op, Left: left, Right: right} }

func TestBracketsStandWhereTheyAreNeeded(t *testing.T) {
	a, b, c := Int(9), Int(4), Int(3)
	for _, e := range []struct {
		expr Expr
		want string
	}{
		{with(a, Subtract, b), "9 − 4"},
		{with(with(a, Subtract, b), Subtract, c), "9 − 4 − 3"},
		{with(a, Subtract, with(b, Subtract, c)), "9 − (4 − 3)"},
		{with(a, Add, with(b, Multiply, c)), "9 + 4 × 3"},
		{with(with(a, Add, b), Multiply, c), "(9 + 4) × 3"},
		{with(a, Multiply, with(b, Add, c)), "9 × (4 + 3)"},
		{with(a, Divide, with(b, Divide, c)), "9 ÷ (4 ÷ 3)"},
		{with(with(a, Divide, b), Multiply, c), "9 ÷ 4 × 3"},
		{with(a, Multiply, with(b, Multiply, c)), "9 × (4 × 3)"},
		{with(common(1, 3), Of, a), "1/3 of 9"},
		{with(common(1, 2), Of, with(common(1, 3), Of, a)), "1/2 of 1/3 of 9"},
		{with(common(1, 2), Of, with(a, Add, b)), "1/2 of (9 + 4)"},
		{with(common(1, 2), Of, with(a, Multiply, b)), "1/2 of (9 × 4)"},
		{with(with(common(1, 2), Of, a), Multiply, b), "1/2 of 9 × 4"},
		{with(Unknown{}, Divide, c), "? ÷ 3"},
	} {
		if got := e.expr.String(); got != e.want {
			t.Errorf("%+v is written %q, want %q", e.expr, got, e.want)
		}
	}
}

func TestProblemsAreWrittenAsABookPrintsThem(t *testing.T) {
	for _, c := range []struct {
		problem Problem
		want    string
	}{
		{Problem{Kind: Show, Left: Int(1204)}, "1,204"},
		{Problem{Kind: Subtraction, Left: with(Int(402), Subtract, Int(178))}, "402 − 178"},
		{Problem{Kind: Division, Left: with(Int(56), Divide, Int(8))}, "56 ÷ 8"},
		{Problem{Kind: Division, Left: with(Int(56), Divide, Int(8)), Grouping: true}, "56 in groups of 8"},
		{Problem{Kind: Claim, Left: common(3, 4), Rel: Less, Right: common(5, 6)}, "3/4 < 5/6"},
		{Problem{Kind: Claim, Left: common(5, 6), Rel: Greater, Right: common(3, 4)}, "5/6 > 3/4"},
		{Problem{Kind: Missing, Left: Int(5), Rel: Equal, Right: with(Unknown{}, Divide, Int(3))}, "5 = ? ÷ 3"},
		{Problem{Kind: Comparison, Left: common(3, 4), Right: common(5, 8)}, "compare 3/4 and 5/8"},
		{Problem{Kind: Ordering, List: []Number{Int(1204), common(1, 2), Int(3)}}, "order 1,204; 1/2; 3"},
		{Problem{Kind: Rounding, Left: Int(2871), To: 1000}, "round 2,871 to the nearest 1,000"},
		{Problem{Kind: Factors, Left: Int(24)}, "factors of 24"},
		{Problem{Kind: MixedForm, Left: common(7, 4)}, "7/4 as a mixed number"},
		{Problem{Kind: FractionForm, Left: AsMixed(fraction.Must(9, 4))}, "2 1/4 as a fraction"},
		{Problem{Kind: SimplestForm, Left: common(6, 8)}, "6/8 in simplest form"},
		{Problem{Kind: Renaming, Left: common(1, 2), Blank: Blank{Den: 8}}, "1/2 = ?/8"},
		{Problem{Kind: Renaming, Left: common(2, 5), Blank: Blank{Num: 6}}, "2/5 = 6/?"},
		{Problem{Kind: Renaming, Left: common(1, 2), Blank: Blank{Den: 8, First: true}}, "?/8 = 1/2"},
	} {
		if got := c.problem.String(); got != c.want {
			t.Errorf("%+v is written %q, want %q", c.problem, got, c.want)
		}
	}
}

func TestOperands(t *testing.T) {
	for _, c := range []struct {
		problem Problem
		a, b    Number
		ok      bool
	}{
		{Problem{Kind: Subtraction, Left: with(Int(402), Subtract, Int(178))}, Int(402), Int(178), true},
		{Problem{Kind: Claim, Left: common(3, 4), Rel: Equal, Right: common(6, 8)}, common(3, 4), common(6, 8), true},
		{Problem{Kind: Comparison, Left: common(3, 4), Right: common(5, 8)}, common(3, 4), common(5, 8), true},
		{Problem{Kind: Expression, Left: with(with(Int(9), Add, Int(4)), Add, Int(3))}, Number{}, Int(3), false},
		{Problem{Kind: Missing, Left: with(Int(8), Add, Unknown{}), Rel: Equal, Right: Int(11)}, Number{}, Int(11), false},
		{Problem{Kind: Show, Left: Int(7)}, Int(7), Number{}, false},
		{Problem{Kind: Ordering, List: []Number{Int(1), Int(2)}}, Number{}, Number{}, false},
	} {
		a, b, ok := c.problem.Operands()
		if ok != c.ok || ok && (a != c.a || b != c.b) {
			t.Errorf("the operands of %q are %v and %v, %v", c.problem, a, b, ok)
		}
	}
}
