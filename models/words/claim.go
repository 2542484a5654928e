package words

import "modeler/arithmetic"

// Stand says what truly stands between the two sides of a claim, and how far
// apart they are: "5/8 is 1/8 less than 3/4."
func Stand(p arithmetic.Problem, a arithmetic.Answer) string {
	than := " more than "
	switch a.Relation {
	case arithmetic.Equal:
		return bothSides(p)
	case arithmetic.Less:
		than = " less than "
	}
	gap := arithmetic.FinalName(arithmetic.Frac(a.Gap)).String()
	decimals := anyNumber(p, arithmetic.Decimal, arithmetic.Money) && !anyNumber(p, arithmetic.Common, arithmetic.Mixed)
	if short, ok := a.Gap.Decimal(); ok && decimals { // beside a fraction the picture has parts
		gap = short
	}
	return p.Left.String() + " is " + gap + than + p.Right.String() + "."
}

// bothSides says what the two sides of a true equation come to: "12 ÷ 4 is 3 and
// 3 is 3" would only repeat a side that is a number, so that is left out.
func bothSides(p arithmetic.Problem) string {
	var sides []string
	for _, side := range []arithmetic.Expr{p.Left, p.Right} {
		v, err := arithmetic.Evaluate(side)
		if _, worked := side.(arithmetic.Operation); err != nil || !worked {
			continue
		}
		value := arithmetic.FinalName(arithmetic.Frac(v)).String()
		if short, ok := v.Decimal(); ok && anyNumber(p, arithmetic.Decimal, arithmetic.Money) {
			value = short
		}
		sides = append(sides, side.String()+" is "+value)
	}
	switch len(sides) {
	case 0:
		return "Both sides are the same amount."
	case 1:
		return upper(sides[0]) + ", so the two sides are equal."
	}
	return sides[0] + " and " + sides[1] + ", so they are equal."
}
