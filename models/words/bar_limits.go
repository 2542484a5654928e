package words

import (
	"strconv"

	"modeler/arithmetic"
)

// BarsOtherKind and its like say why fraction bars cannot show a problem.
func BarsOtherKind() string {
	return "fraction bars show, compare, rename, add, subtract, repeat, divide and take apart fractions, with one number on each side or a sum of two on one side"
}

// BarsNoFraction says that whole numbers need other pictures.
func BarsNoFraction() string { return "there is no fraction in it" }

// BarsTooLong says that too many wholes would be needed.
func BarsTooLong(most int64) string {
	return "fraction bars show at most " + arithmetic.Grouped(most) + " wholes"
}

// BarsTooMany says that a list is too long.
func BarsTooMany(most int) string {
	return "fraction bars order at most " + strconv.Itoa(most) + " fractions"
}

// BarsTooFine says that parts would be too thin to see, den of them in each of so
// many wholes; den is 0 when that is beyond counting.
func BarsTooFine(den, wholes int64) string {
	switch {
	case den == 0:
		return "the parts would be too thin to see"
	case wholes > 1:
		return arithmetic.Grouped(den) + " parts in each of " + arithmetic.Grouped(wholes) + " wholes would be too thin to see"
	}
	return "parts of " + arithmetic.Grouped(den) + " to a whole would be too thin to see"
}

// BarsSame says that a number has the name asked for already.
func BarsSame(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.MixedForm:
		return "only a fraction of one whole or more has a name with wholes in it"
	case arithmetic.AsSum:
		return p.Left.String() + " is one piece: there is nothing to take apart"
	case arithmetic.FractionForm:
		return p.Left.String() + " is one fraction already"
	}
	if p.Kind == arithmetic.Division {
		if a, b, _ := p.Operands(); a.Form == arithmetic.Whole && b.String() != "1" {
			return "the wholes need not be cut"
		}
		return "one share is all of it"
	}
	return p.Left.String() + " has that name already"
}

// BarsUneven says that no whole number fits the blank.
func BarsUneven(p arithmetic.Problem) string { return "no whole number fits in the blank" }

// BarsNegative says that more is taken away than there is.
func BarsNegative() string { return "more is taken away than there is" }

// BarsNoGroup says that what is divided by is more than what is divided.
func BarsNoGroup(p arithmetic.Problem) string {
	a, b, _ := p.Operands()
	return "not one group of " + b.String() + " fits in " + a.String()
}

// BarsNothing says that there is nothing to lay on the bars.
func BarsNothing() string { return "nothing would lie on the bars" }
