package words

import (
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// Inverse operations are the check that CCSS 3.OA.B.6 and 2.NBT.B.5 build on; the
// problems are worked by hand.
func TestCheckUsesTheOppositeOperation(t *testing.T) {
	n := arithmetic.Int
	for _, c := range []struct {
		p    arithmetic.Problem
		a    arithmetic.Answer
		want string
	}{
		{arithmetic.Problem{Kind: arithmetic.Subtraction, Left: op(n(402), arithmetic.Subtract, n(178))},
			arithmetic.Answer{Number: n(224)}, "224 + 178"},
		{arithmetic.Problem{Kind: arithmetic.Addition, Left: op(n(345), arithmetic.Add, n(278))},
			arithmetic.Answer{Number: n(623)}, "623 − 278"},
		{arithmetic.Problem{Kind: arithmetic.Product, Left: op(n(7), arithmetic.Multiply, n(8))},
			arithmetic.Answer{Number: n(56)}, "56 ÷ 7"},
		{arithmetic.Problem{Kind: arithmetic.Product, Left: op(n(0), arithmetic.Multiply, n(8))}, arithmetic.Answer{}, ""},
		{arithmetic.Problem{Kind: arithmetic.Division, Left: op(n(56), arithmetic.Divide, n(8))},
			arithmetic.Answer{Number: n(7)}, "8 × 7"},
		{arithmetic.Problem{Kind: arithmetic.Division, Grouping: true, Left: op(n(56), arithmetic.Divide, n(8))},
			arithmetic.Answer{Number: n(7)}, "7 × 8"},
		{arithmetic.Problem{Kind: arithmetic.Division, Left: op(n(50), arithmetic.Divide, n(8))},
			arithmetic.Answer{Number: n(6), Remainder: 2}, "8 × 6 + 2"},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: n(706)}, arithmetic.Answer{Number: n(706)}, ""},
		{arithmetic.Problem{Kind: arithmetic.Claim, Left: frac(3, 4), Rel: arithmetic.Equal, Right: frac(6, 8)}, arithmetic.Answer{True: true}, ""},
	} {
		got, ok := Check(c.p, c.a)
		if got.Problem != c.want || ok != (c.want != "") {
			t.Errorf("checking %s: got %q, want %q", c.p, got.Problem, c.want)
		}
	}
}

func TestTopicsSortProblems(t *testing.T) {
	n := arithmetic.Int
	for _, c := range []struct {
		p    arithmetic.Problem
		want string
	}{
		{arithmetic.Problem{Kind: arithmetic.Show, Left: n(706)}, "Hundreds, tens and ones"},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: frac(3, 4)}, "Fractions"},
		{arithmetic.Problem{Kind: arithmetic.Addition, Left: op(n(1), arithmetic.Add, n(2))}, "Adding and taking away"},
		{arithmetic.Problem{Kind: arithmetic.Addition, Left: op(frac(1, 2), arithmetic.Add, frac(3, 4))}, "Working with fractions"},
		{arithmetic.Problem{Kind: arithmetic.Addition, Left: op(arithmetic.InPlaces(3, 1), arithmetic.Add, n(2))}, "Decimals and money"},
		{arithmetic.Problem{Kind: arithmetic.Missing, Left: n(5), Right: op(arithmetic.Unknown{}, arithmetic.Divide, n(3))}, "Sharing and grouping"},
		{arithmetic.Problem{Kind: arithmetic.Ordering, List: []arithmetic.Number{frac(1, 2), frac(1, 3)}}, "True, more, less"},
		{arithmetic.Problem{Kind: arithmetic.Factors, Left: n(24)}, "Factors and multiples"},
	} {
		if got := Topics[TopicOf(c.p)].Title; got != c.want {
			t.Errorf("%s stands under %q, want %q", c.p, got, c.want)
		}
	}
}

func TestCautionsGoByThePieces(t *testing.T) {
	if got := Cautions([]string{"paper strips"}, false); got != nil {
		t.Errorf("paper to fold: got %q, want no caution", got)
	}
	got := Cautions([]string{"hundreds", "ones"}, true)
	if len(got) != 2 || !strings.Contains(got[0], "under 3") || !slices.ContainsFunc(got, func(s string) bool { return strings.Contains(s, "Scissors") }) {
		t.Errorf("small pieces and cutting: got %q, want both cautions", got)
	}
}

func TestStandSaysHowFarAndWhichWay(t *testing.T) {
	claim := func(rel arithmetic.Relation) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Claim, Left: frac(5, 8), Rel: rel, Right: frac(3, 4)}
	}
	for _, c := range []struct {
		a    arithmetic.Answer
		want string
	}{
		{arithmetic.Answer{Relation: arithmetic.Less, Gap: fraction.Must(1, 8)}, "5/8 is 1/8 less than 3/4."},
		{arithmetic.Answer{Relation: arithmetic.Greater, Gap: fraction.Must(1, 8)}, "5/8 is 1/8 more than 3/4."},
		{arithmetic.Answer{Relation: arithmetic.Equal}, "Both sides are the same amount."},
		{arithmetic.Answer{Relation: arithmetic.Greater, Gap: fraction.Whole(2)}, "5/8 is 2 more than 3/4."},
	} {
		if got := Stand(claim(arithmetic.Greater), c.a); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}
