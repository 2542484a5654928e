package words

import (
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

func frac(num, den int64) arithmetic.Number { return arithmetic.Frac(fraction.Must(num, den)) }

func op(left arithmetic.Expr, o arithmetic.Op, right arithmetic.Expr) arithmetic.Operation {
	return arithmetic.Operation{Op: o, Left: left, Right: right}
}

// The readings follow the interpretations of CCSS 3.OA.A.1 (groups first, then
// their size) and 3.OA.A.2 (shares, or groups of a size); the wording is our own.
func TestReadBackSaysWhatEachKindAsks(t *testing.T) {
	n := arithmetic.Int
	for _, c := range []struct {
		p    arithmetic.Problem
		want string
	}{
		{arithmetic.Problem{Kind: arithmetic.Show, Left: n(706)}, "seven hundred six"},
		{arithmetic.Problem{Kind: arithmetic.Addition, Left: op(n(345), arithmetic.Add, n(278))},
			"three hundred forty-five plus two hundred seventy-eight"},
		{arithmetic.Problem{Kind: arithmetic.Subtraction, Left: op(n(402), arithmetic.Subtract, n(178))},
			"four hundred two, take away one hundred seventy-eight"},
		{arithmetic.Problem{Kind: arithmetic.Product, Left: op(n(7), arithmetic.Multiply, n(8))}, "7 groups of 8: how many in all?"},
		{arithmetic.Problem{Kind: arithmetic.Product, Left: op(n(1), arithmetic.Multiply, n(8))}, "1 group of 8: how many in all?"},
		{arithmetic.Problem{Kind: arithmetic.Product, Left: op(frac(2, 3), arithmetic.Multiply, frac(4, 5))},
			"two thirds times four fifths"},
		{arithmetic.Problem{Kind: arithmetic.Division, Left: op(n(56), arithmetic.Divide, n(8))},
			"56 shared equally among 8: how many in each?"},
		{arithmetic.Problem{Kind: arithmetic.Division, Grouping: true, Left: op(n(56), arithmetic.Divide, n(8))},
			"56 in groups of 8: how many groups?"},
		{arithmetic.Problem{Kind: arithmetic.Division, Left: op(frac(3, 4), arithmetic.Divide, n(2))},
			"three fourths shared equally among 2: how much in each?"},
		{arithmetic.Problem{Kind: arithmetic.Division, Left: op(n(4), arithmetic.Divide, frac(1, 5))},
			"how many times does one fifth fit in four?"},
		{arithmetic.Problem{Kind: arithmetic.PartOf, Left: op(frac(1, 3), arithmetic.Of, n(12))}, "one third of twelve"},
		{arithmetic.Problem{Kind: arithmetic.Expression, Left: op(n(2), arithmetic.Multiply, op(n(8), arithmetic.Add, n(7)))},
			"2 × (8 + 7): the part in brackets first"},
		{arithmetic.Problem{Kind: arithmetic.Expression, Left: op(n(2), arithmetic.Add, op(n(8), arithmetic.Multiply, n(7)))},
			"2 + 8 × 7: multiplying and dividing first"},
		{arithmetic.Problem{Kind: arithmetic.Expression, Left: op(op(n(9), arithmetic.Subtract, n(4)), arithmetic.Add, n(1))},
			"9 − 4 + 1: from left to right"},
		{arithmetic.Problem{Kind: arithmetic.Missing, Left: op(n(8), arithmetic.Multiply, arithmetic.Unknown{}), Rel: arithmetic.Equal, Right: n(48)},
			"which number makes 8 × ? = 48 true?"},
		{arithmetic.Problem{Kind: arithmetic.Claim, Left: frac(3, 4), Rel: arithmetic.Equal, Right: frac(6, 8)},
			"is three fourths the same as six eighths?"},
		{arithmetic.Problem{Kind: arithmetic.Claim, Left: frac(5, 8), Rel: arithmetic.Greater, Right: frac(2, 3)},
			"is five eighths more than two thirds?"},
		{arithmetic.Problem{Kind: arithmetic.Claim, Left: op(n(4), arithmetic.Add, n(1)), Rel: arithmetic.Less, Right: op(n(5), arithmetic.Add, n(2))},
			"is 4 + 1 less than 5 + 2?"},
		{arithmetic.Problem{Kind: arithmetic.Comparison, Left: frac(3, 4), Right: frac(5, 8)},
			"which is more, three fourths or five eighths?"},
		{arithmetic.Problem{Kind: arithmetic.Ordering, List: []arithmetic.Number{frac(1, 2), frac(3, 4), frac(1, 3)}},
			"put 1/2, 3/4 and 1/3 in order, the least first"},
		{arithmetic.Problem{Kind: arithmetic.Rounding, Left: n(347), To: 10}, "three hundred forty-seven to the nearest ten"},
		{arithmetic.Problem{Kind: arithmetic.Factors, Left: n(24)}, "every pair of whole numbers that multiply to make 24"},
		{arithmetic.Problem{Kind: arithmetic.MixedForm, Left: frac(7, 4)}, "seven fourths as wholes and a part: a mixed number"},
		{arithmetic.Problem{Kind: arithmetic.SimplestForm, Left: frac(6, 8)}, "six eighths in as few parts as can be: the simplest form"},
		{arithmetic.Problem{Kind: arithmetic.Renaming, Left: frac(1, 2), Blank: arithmetic.Blank{Den: 8}}, "one half is how many eighths?"},
		{arithmetic.Problem{Kind: arithmetic.Renaming, Left: frac(1, 2), Blank: arithmetic.Blank{Num: 4}}, "one half is 4 of how many equal parts?"},
	} {
		if got := ReadBack(c.p); got != c.want {
			t.Errorf("%s reads back as %q, want %q", c.p.Kind, got, c.want)
		}
	}
}

// The answers are worked by hand.
func TestAnswerWritesEachKind(t *testing.T) {
	n := arithmetic.Int
	for _, c := range []struct {
		p    arithmetic.Problem
		a    arithmetic.Answer
		want string
	}{
		{arithmetic.Problem{Kind: arithmetic.Subtraction}, arithmetic.Answer{Number: n(224), Simplest: n(224)}, "224"},
		{arithmetic.Problem{Kind: arithmetic.Subtraction}, arithmetic.Answer{Number: n(0)}, "0"},
		{arithmetic.Problem{Kind: arithmetic.Addition}, arithmetic.Answer{Number: frac(5, 4), Simplest: arithmetic.AsMixed(fraction.Must(5, 4))}, "5/4 = 1 1/4"},
		{arithmetic.Problem{Kind: arithmetic.Addition}, arithmetic.Answer{Number: frac(2, 4), Simplest: frac(1, 2)}, "2/4 = 1/2"},
		{arithmetic.Problem{Kind: arithmetic.Addition}, arithmetic.Answer{Number: frac(4, 4), Simplest: n(1)}, "4/4 = 1"},
		{arithmetic.Problem{Kind: arithmetic.Addition}, arithmetic.Answer{Number: frac(5, 6)}, "5/6"},
		{arithmetic.Problem{Kind: arithmetic.Division}, arithmetic.Answer{Number: n(6), Remainder: 2}, "6 remainder 2"},
		{arithmetic.Problem{Kind: arithmetic.Division}, arithmetic.Answer{Number: n(7)}, "7"},
		{arithmetic.Problem{Kind: arithmetic.Claim}, arithmetic.Answer{True: true}, "true"},
		{arithmetic.Problem{Kind: arithmetic.Claim}, arithmetic.Answer{}, "false"},
		{arithmetic.Problem{Kind: arithmetic.Comparison, Left: frac(3, 4), Right: frac(5, 8)},
			arithmetic.Answer{Relation: arithmetic.Greater}, "3/4 > 5/8"},
		{arithmetic.Problem{Kind: arithmetic.Ordering}, arithmetic.Answer{Order: []arithmetic.Number{frac(1, 2), frac(2, 4), frac(3, 4)}}, "1/2 = 2/4 < 3/4"},
		{arithmetic.Problem{Kind: arithmetic.Factors}, arithmetic.Answer{Pairs: [][2]int64{{1, 9}, {3, 3}, {9, 1}}}, "1 × 9, 3 × 3"},
	} {
		if got := Answer(c.p, c.a); got != c.want {
			t.Errorf("%s answers %q, want %q", c.p.Kind, got, c.want)
		}
	}
}
