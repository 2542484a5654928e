package laws

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/golden/problems"
)

// TrueAnswer: the answer of the lesson is the one that a second way of working
// the problem gives.
func TrueAnswer(l *Lesson) error {
	a, t := l.Answer, l.Truth
	switch l.Problem.Kind {
	case arithmetic.Claim, arithmetic.Comparison:
		sign := map[arithmetic.Relation]int{arithmetic.Less: -1, arithmetic.Greater: 1}[a.Relation]
		if a.Relation == arithmetic.NoRelation || sign != t.Order {
			return fmt.Errorf("the sign between the two is %q", a.Relation)
		}
		if a.True != t.True && l.Problem.Kind == arithmetic.Claim {
			return fmt.Errorf("the claim is said to be %v", a.True)
		}
		return nil
	case arithmetic.Ordering:
		return inOrder(l.Problem.List, a.Order)
	case arithmetic.Factors:
		if !slices.Equal(a.Pairs, t.Pairs) {
			return fmt.Errorf("the pairs are %v, not %v", a.Pairs, t.Pairs)
		}
		return nil
	case arithmetic.Renaming:
		if want := problems.Blank(l.Problem); want == nil || want.Cmp(big.NewInt(filled(l.Problem.Blank, a.Number.Value))) != 0 {
			return fmt.Errorf("the blank is filled as %s, not with %v", a.Number, want)
		}
	default:
		if asked, err := trueAsked(l); asked {
			return err
		}
	}
	if left := l.Problem.Rest == arithmetic.LeftOver; left && t.Remainder != nil && same(a.Number.Value, new(big.Rat).SetInt(t.Quotient)) {
		if t.Remainder.Cmp(big.NewInt(a.Remainder)) != 0 {
			return fmt.Errorf("what is left over is %d, not %v", a.Remainder, t.Remainder)
		}
		return nil
	}
	if !same(a.Number.Value, t.Value) || a.Remainder != 0 {
		return fmt.Errorf("the answer is %s remainder %d, not %s", a.Number, a.Remainder, t.Value.RatString())
	}
	return lastName(l)
}

// filled is the number that stands where the blank was.
func filled(b arithmetic.Blank, f fraction.Fraction) int64 {
	if b.Num == 0 {
		return f.Num()
	}
	return f.Den()
}

// lastName: the forms that a problem asks for are the forms that it gets, and
// the simplest form is the simplest.
func lastName(l *Lesson) error {
	a := l.Answer
	final := a.Simplest
	if final == (arithmetic.Number{}) {
		final = a.Number
	}
	if !final.Value.Equal(a.Number.Value) {
		return fmt.Errorf("%s is not %s", final, a.Number)
	}
	lowest := func(n arithmetic.Number) bool {
		return fraction.GCD(n.Value.Num(), n.Value.Den()) == 1
	}
	switch form := a.Number.Form; l.Problem.Kind {
	case arithmetic.MixedForm:
		if form == arithmetic.Common && a.Number.Value.Num() >= a.Number.Value.Den() {
			return fmt.Errorf("%s is not a mixed number", a.Number)
		}
	case arithmetic.FractionForm:
		if form != arithmetic.Common {
			return fmt.Errorf("%s is not one fraction", a.Number)
		}
	case arithmetic.SimplestForm:
		if !lowest(a.Number) && !lowest(final) {
			return fmt.Errorf("%s is not in simplest form", a.Number)
		}
	}
	return nil
}

// inOrder: the same numbers in the same forms, none greater than the next.
func inOrder(list, order []arithmetic.Number) error {
	left := slices.Clone(list)
	for i, n := range order {
		at := slices.Index(left, n)
		if at < 0 {
			return fmt.Errorf("%s was not to be ordered", n)
		}
		left = slices.Delete(left, at, at+1)
		if i > 0 && rat(order[i-1].Value).Cmp(rat(n.Value)) > 0 {
			return fmt.Errorf("%s stands before %s", order[i-1], n)
		}
	}
	if len(left) > 0 {
		return fmt.Errorf("%s is missing", left[0])
	}
	return nil
}

func rat(f fraction.Fraction) *big.Rat { return big.NewRat(f.Num(), f.Den()) }

func same(f fraction.Fraction, r *big.Rat) bool { return rat(f).Cmp(r) == 0 }
