package groups

import (
	"errors"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

func problem(kind arithmetic.Kind, op arithmetic.Op, a, b arithmetic.Expr) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: a, Right: b}}
}

func product(a, b int64) arithmetic.Problem {
	return problem(arithmetic.Product, arithmetic.Multiply, arithmetic.Int(a), arithmetic.Int(b))
}

func division(a, b int64, grouping bool, rest arithmetic.Rest) arithmetic.Problem {
	p := problem(arithmetic.Division, arithmetic.Divide, arithmetic.Int(a), arithmetic.Int(b))
	p.Grouping, p.Rest = grouping, rest
	return p
}

// every is all problems within the bounds, and some beyond.
func every() []arithmetic.Problem {
	var list []arithmetic.Problem
	for a := range int64(104) {
		list = append(list, arithmetic.Problem{Kind: arithmetic.Parity, Left: arithmetic.Int(a)})
		for b := range int64(26) {
			list = append(list, product(b, a))
			for _, rest := range []arithmetic.Rest{arithmetic.LeftOver, arithmetic.AsPart, arithmetic.OneMore} {
				list = append(list, division(a, b, false, rest), division(a, b, true, rest))
			}
			if b > 1 {
				f := arithmetic.Frac(fraction.Must(a%(b+1), b))
				list = append(list, problem(arithmetic.PartOf, arithmetic.Of, f, arithmetic.Int(a)))
			}
		}
	}
	return list
}

func TestWhatFitsIsToldWithEqualRingsAndCountersThatCanBeSeen(t *testing.T) {
	told := 0
	for _, p := range every() {
		if Model.Fits(p) != nil {
			continue
		}
		told++
		lesson := Model.Tell(p)
		if n := len(lesson.Steps); n < 2 || n > 12 {
			t.Errorf("%s has %d steps", p, n)
		}
		pictures := []*scene.Scene{lesson.Whole}
		for _, st := range lesson.Steps {
			pictures = append(pictures, st.Scene)
		}
		for _, s := range pictures {
			if s.H > 800 {
				t.Errorf("%s: a picture is %d high", p, s.H)
			}
			for _, it := range s.Items {
				if c, ok := it.Shape.(scene.Circle); ok && c.R < leastCounter/2 {
					t.Errorf("%s: a counter is %d across", p, 2*c.R)
				}
			}
		}
	}
	if told < 3000 {
		t.Errorf("only %d problems are told", told)
	}
}

func TestFitsSaysWhyNot(t *testing.T) {
	n := arithmetic.Int
	decimals := division(17, 5, false, arithmetic.AsDecimal)
	stretched := product(3, 4)
	stretched.Story = arithmetic.TimesAsMany
	for _, c := range []struct {
		problem arithmetic.Problem
		why     string // a part of the reason
		notMine bool
	}{
		{product(13, 2), "12 groups", false},
		{product(11, 10), "100 counters", false},
		{product(1, 1<<62), "100 counters", false},
		{division(39, 13, false, arithmetic.LeftOver), "12 groups", false},
		{division(42, 2, true, arithmetic.LeftOver), "20 groups", false},
		{division(1<<62, 3, true, arithmetic.LeftOver), "too large", false},
		{division(7, 0, false, arithmetic.LeftOver), "0 groups", false},
		{division(19, 9, false, arithmetic.AsPart), "8 parts", false},
		{problem(arithmetic.PartOf, arithmetic.Of, arithmetic.Frac(fraction.Must(1, 3)), n(10)), "equal groups", false},
		{arithmetic.Problem{Kind: arithmetic.Parity, Left: n(62)}, "30 groups", false},
		{arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: arithmetic.Operation{Op: arithmetic.Multiply, Left: n(5), Right: arithmetic.Unknown{}}, Right: n(12)}, "no whole number", false},
		{decimals, "whole numbers", true},
		{stretched, "equal groups show", true},
		{problem(arithmetic.Addition, arithmetic.Add, n(2), n(3)), "equal groups show", true},
		{problem(arithmetic.Product, arithmetic.Multiply, arithmetic.Frac(fraction.Must(1, 2)), n(3)), "whole numbers", true},
	} {
		err := Model.Fits(c.problem)
		if err == nil || !strings.Contains(err.Error(), c.why) || errors.Is(err, telling.ErrNotMine) != c.notMine {
			t.Errorf("%s: %v, want a reason with %q (not mine: %v)", c.problem, err, c.why, c.notMine)
		}
	}
}

func TestTurnLeadsForLittleThatIsSharedOrGrouped(t *testing.T) {
	for _, c := range []struct {
		problem arithmetic.Problem
		want    int
	}{
		{division(40, 8, false, arithmetic.LeftOver), telling.Leads},
		{division(40, 8, true, arithmetic.LeftOver), telling.Leads},
		{division(41, 8, false, arithmetic.LeftOver), telling.Serves},
		{division(966, 7, false, arithmetic.LeftOver), telling.Serves},
		{product(5, 8), telling.Follows},
		{product(7, 8), telling.Serves},
	} {
		if got := Model.Turn(c.problem); got != c.want {
			t.Errorf("the turn for %s is %d, want %d", c.problem, got, c.want)
		}
	}
}

// Sharing has its plates from the start; measuring has its groups one by one.
func TestTheTwoStoriesOfADivisionLookDifferent(t *testing.T) {
	rings := func(s *scene.Scene) (n int) {
		for _, it := range s.Items {
			if _, ok := it.Shape.(scene.Rect); ok && it.Finish == scene.Outline {
				n++
			}
		}
		return n
	}
	shared, measured := Model.Tell(division(12, 3, false, arithmetic.LeftOver)), Model.Tell(division(12, 3, true, arithmetic.LeftOver))
	for i, want := range []int{3, 3, 3, 3, 3, 3} {
		if got := rings(shared.Steps[i].Scene); got != want {
			t.Errorf("sharing, step %d: %d plates, want %d", i+1, got, want)
		}
	}
	for i, want := range []int{0, 1, 2, 3, 4, 4} {
		if got := rings(measured.Steps[i].Scene); got != want {
			t.Errorf("measuring, step %d: %d groups, want %d", i+1, got, want)
		}
	}
}
