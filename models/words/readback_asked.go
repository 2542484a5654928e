package words

import (
	"strconv"

	"modeler/arithmetic"
)

// readStory tells a product, a division or a subtraction as its situation.
func readStory(p arithmetic.Problem, o arithmetic.Operation) string {
	left, right := o.Left.String(), o.Right.String()
	switch {
	case p.Kind == arithmetic.Product:
		return left + " times as many as " + right + ": how many is that?"
	case p.Kind == arithmetic.Subtraction:
		return "how many more is " + left + " than " + right + "?"
	case p.Grouping:
		return left + " is how many times as many as " + right + "?"
	}
	return left + " is " + right + " times as many as which number?"
}

// readRest says what is done with what a division leaves over.
func readRest(r arithmetic.Rest) string {
	return [...]string{"", " What is left over is cut up: a mixed number.", " What is left over is cut up: a decimal.",
		" What is left over needs one more: rounded up."}[r]
}

// readAsked tells a problem that asks something of a number, or of a row of them.
func readAsked(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.PlaceValue:
		return "what is the digit in the " + arithmetic.PlaceName(p.To) + " place of " + p.Left.String() + " worth?"
	case arithmetic.ExpandedForm:
		return p.Left.String() + " as the sum of what its digits are worth"
	case arithmetic.InWords:
		return "how do you say and write " + p.Left.String() + " in words?"
	case arithmetic.Parity:
		return "is " + name(p.Left) + " even or odd?"
	case arithmetic.Counting:
		return readRun(p.Run)
	case arithmetic.RuleTable:
		names := make([]string, len(p.List))
		for i, n := range p.List {
			names[i] = n.String()
		}
		return ruleStep(p.Run) + " for each of " + List(names)
	case arithmetic.Estimate:
		return "about how much is " + p.Left.String() + ", with both numbers rounded to the nearest " + nearest(p.To) + "?"
	case arithmetic.FactFamily:
		return "the other facts that say the same as " + p.Left.String()
	case arithmetic.WaysToMake:
		return "every pair of whole numbers that together make " + p.Left.String()
	case arithmetic.Multiples:
		return "the first " + strconv.Itoa(p.Run.Terms) + " multiples of " + p.Left.String() + ": 1 time " + p.Left.String() + ", 2 times, and so on"
	case arithmetic.CommonMultiples:
		return "which numbers are multiples of both " + p.Left.String() + " and " + p.Right.String() + ", and which is the least?"
	case arithmetic.CommonFactors:
		return "which numbers are factors of both " + p.Left.String() + " and " + p.Right.String() + ", and which is the greatest?"
	case arithmetic.Primality:
		return "is " + name(p.Left) + " a prime number?"
	}
	return p.String()
}

// readRun tells a row of numbers by its first number, its step and its length.
func readRun(r arithmetic.Run) string {
	text := "start at " + arithmetic.Grouped(r.From) + " and " + ruleStep(r) + " each time: " + strconv.Itoa(r.Terms) + " numbers"
	return text
}

// ruleStep says what a rule does to a number.
func ruleStep(r arithmetic.Run) string {
	by := arithmetic.Grouped(r.By)
	switch r.Op {
	case arithmetic.Add:
		return "add " + by
	case arithmetic.Subtract:
		return "take away " + by
	case arithmetic.Divide:
		return "divide by " + by
	}
	return "multiply by " + by
}
