package words

import (
	"strings"

	"modeler/arithmetic"
)

// DivideByZero explains why nothing can be shared among none.
func DivideByZero(p arithmetic.Problem) (message, hint, try string) {
	return "nothing can be divided by 0",
		"7 ÷ 0 asks which number times 0 makes 7, and every number times 0 is 0; divide by 1 or more",
		"7 ÷ 1"
}

// Negative explains that more is taken away than there is, and turns the problem
// round where that works.
func Negative(p arithmetic.Problem) (message, hint, try string) {
	message, hint, try = "the answer is less than 0",
		"more is taken away than there is; numbers below 0 come later, so take the smaller number from the larger", "8 − 5"
	if o, ok := p.Left.(arithmetic.Operation); ok && o.Op == arithmetic.Subtract {
		if a, b, two := p.Operands(); two {
			message = b.String() + " is more than " + a.String() + ", so it cannot be taken away from it"
			try = b.String() + " − " + a.String()
		}
	}
	return message, hint, try
}

// TooLarge explains the bound on results.
func TooLarge() (message, hint, try string) {
	return "the numbers get too large to work exactly", "use smaller numbers", "345 + 278"
}

// NoPicture says what the pictures can show, or the reasons of those that were
// meant for the problem.
func NoPicture(reasons []string) string {
	if len(reasons) > 0 {
		return strings.Join(reasons, "; ")
	}
	return "the pictures show numbers, sums, differences, products, divisions, fractions, rounding and factors, one step at a time"
}
