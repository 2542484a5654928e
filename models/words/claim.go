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
	return p.Left.String() + " is " + arithmetic.FinalName(arithmetic.Frac(a.Gap)).String() + than + p.Right.String() + "."
}
