package words

import "modeler/arithmetic"

// Stand says what truly stands between the two sides of a claim, and how far
// apart they are: "5/8 is 1/8 less than 3/4."
func Stand(p arithmetic.Problem, a arithmetic.Answer) string {
	than := " more than "
	switch a.Relation {
	case arithmetic.Equal:
		return "Both sides are the same amount."
	case arithmetic.Less:
		than = " less than "
	}
	gap := arithmetic.FinalName(arithmetic.Frac(a.Gap)).String()
	if short, ok := a.Gap.Decimal(); ok && anyNumber(p, arithmetic.Decimal, arithmetic.Money) {
		gap = short
	}
	return p.Left.String() + " is " + gap + than + p.Right.String() + "."
}
