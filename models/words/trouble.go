package words

import "modeler/arithmetic"

// AnyProblem is offered where no problem near is known.
const AnyProblem = "402 − 178"

// DivideByZero explains why nothing can be shared among none: no number times 0
// makes more than 0, and every number times 0 makes 0.
func DivideByZero(p arithmetic.Problem) (message, hint string) {
	total := "7"
	if a, _, two := p.Operands(); two {
		total = a.String()
	}
	message = "nothing can be divided by 0"
	if total == "0" {
		return message, "0 ÷ 0 asks which number times 0 makes 0, and every number does; divide by 1 or more"
	}
	return message, total + " ÷ 0 asks which number times 0 makes " + total + ", and every number times 0 is 0; divide by 1 or more"
}

// Negative explains that more is to be taken away than there is.
func Negative(p arithmetic.Problem) (message, hint string) {
	message, hint = "the answer is less than 0", "more is to be taken away than there is; numbers below 0 come later"
	if o, ok := p.Left.(arithmetic.Operation); ok && o.Op == arithmetic.Subtract {
		if a, b, two := p.Operands(); two && p.Story == arithmetic.Change {
			return a.String() + " is not enough to pay " + b.String(), "pay with " + b.String() + " or more"
		} else if two && p.Story == arithmetic.HowManyMore {
			return a.String() + " is not more than " + b.String(), "ask how many more " + b.String() + " is than " + a.String()
		} else if two {
			message = b.String() + " is more than " + a.String() + ", so it cannot be taken away from it"
			there := "there is only "
			if v, whole := a.Int64(); a.Form == arithmetic.Whole && whole && v != 1 {
				there = "there are only "
			}
			hint = there + a.String() + " to take from; check which number comes first"
		}
	}
	return message, hint
}

// Endless explains a decimal that does not end.
func Endless(p arithmetic.Problem) (message, hint string) {
	return "the decimal of " + p.Left.String() + " does not end",
		"the digits go on and on; halves, fourths, fifths, eighths and tenths have decimals that end"
}

// TooLarge explains the bound on results.
func TooLarge() (message, hint string) {
	return "the numbers get too large to work exactly", "use smaller numbers"
}

// NoPicture says why a problem has no picture: the reason of the model for its
// kind, or nil when there is no model for it, and then what is missing.
func NoPicture(p arithmetic.Problem, why error) string {
	if why != nil {
		return why.Error()
	}
	switch p.Kind {
	case arithmetic.Product:
		return "multiplying " + kindOfNumbers(p) + " has no picture here yet"
	case arithmetic.Division:
		return "dividing " + kindOfNumbers(p) + " has no picture here yet"
	case arithmetic.PartOf:
		return "a part of " + kindOfNumbers(p) + " has no picture here yet; take a part of a whole number"
	case arithmetic.Addition, arithmetic.Subtraction:
		return "adding and taking away with " + kindOfNumbers(p) + " has no picture here yet"
	case arithmetic.Expression:
		return longExpression(p)
	case arithmetic.Claim, arithmetic.Comparison:
		return "these two sides have no picture beside each other yet; look at one side at a time"
	case arithmetic.Missing:
		return "finding this missing number has no picture here yet"
	}
	return "this has no picture here yet"
}

// longExpression says which step to take first.
func longExpression(p arithmetic.Problem) string {
	o, _ := p.Left.(arithmetic.Operation)
	inner, nested := o.Left.(arithmetic.Operation)
	if nested && o.Op == arithmetic.Add && inner.Op == arithmetic.Add {
		return "add two numbers at a time"
	}
	return "take one step at a time: two numbers and one sign"
}

// kindOfNumbers is what the numbers of an operation are: fractions, decimals,
// money or mixed numbers, which are named before whole numbers.
func kindOfNumbers(p arithmetic.Problem) string {
	for _, kind := range []struct {
		form arithmetic.Form
		name string
	}{{arithmetic.Money, "money"}, {arithmetic.Percent, "percents"}, {arithmetic.Common, "fractions"}, {arithmetic.Mixed, "mixed numbers"}, {arithmetic.Decimal, "decimals"}} {
		if anyNumber(p, kind.form) {
			return kind.name
		}
	}
	return "these numbers"
}
