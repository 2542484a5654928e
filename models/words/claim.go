package words

import "modeler/arithmetic"

// Apart says how far apart the two sides of a claim that is not true are; it is
// "" for one that is true.
func Apart(p arithmetic.Problem, a arithmetic.Answer) string {
	switch {
	case p.Kind != arithmetic.Claim || a.True:
		return ""
	case a.Relation == arithmetic.Equal:
		return "Both sides are the same amount."
	}
	left, right := p.Left.String(), p.Right.String()
	than := " more than "
	if a.Relation == arithmetic.Less {
		than = " less than "
	}
	return left + " is " + a.Gap.String() + than + right + "."
}
