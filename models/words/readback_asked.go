package words

import (
	"strconv"
	"strings"

	"modeler/arithmetic"
)

// readStory tells a product, a division or a subtraction as its situation.
func readStory(p arithmetic.Problem, o arithmetic.Operation) string {
	left, right := o.Left.String(), o.Right.String()
	switch {
	case p.Kind == arithmetic.Product:
		return left + " times as many as " + right + ": how many is that?"
	case p.Story == arithmetic.Change:
		return "you pay " + right + " with " + left + ": how much comes back?"
	case p.Kind == arithmetic.Subtraction:
		return "how many more is " + left + " than " + right + "?"
	case p.Grouping:
		return left + " is how many times as many as " + right + "?"
	}
	return left + " is " + right + " times as many as which number?"
}

// readRest says what is done with what a division leaves over.
func readRest(p arithmetic.Problem) string {
	if o, ok := p.Left.(arithmetic.Operation); ok && p.Kind == arithmetic.Division && arithmetic.IsPartOfOne(o) && !p.Grouping {
		return [...]string{" With whole ones only, and what is left over.", " Each gets a fraction.", " Each gets a decimal.", " Rounded up."}[p.Rest]
	}
	return [...]string{"", " What is left over is cut up: a mixed number.", " What is left over is cut up: a decimal.",
		" What is left over needs one more: rounded up."}[p.Rest]
}

// readAsked tells a problem that asks something of a number, or of a row of them.
func readAsked(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.PlaceValue:
		return "what is the digit in the " + p.PlaceName() + " place of " + p.Left.String() + " worth?"
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
	return readParts(p)
}

// readParts tells a problem about a fraction in other forms, or about coins.
func readParts(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.ShapePart:
		return name(p.Left) + " of " + article(string(p.Shape))
	case arithmetic.AsSum:
		return name(p.Left) + " taken apart: as a sum of smaller fractions"
	case arithmetic.EqualNames:
		return "which fractions are the same amount as " + name(p.Left) + "?"
	case arithmetic.Closer:
		return "which is closer to " + arithmetic.Grouped(p.To) + ", " + name(p.Left) + " or " + name(p.Right) + "?"
	case arithmetic.DecimalForm:
		return name(p.Left) + " written as a decimal"
	case arithmetic.PercentForm:
		return name(p.Left) + " in hundredths: a percent"
	case arithmetic.Coins:
		return p.Left.String() + " in as few coins and bills as can be"
	case arithmetic.CoinsWorth:
		return "how much money is " + arithmetic.CoinNames(p.List) + "?"
	}
	return p.String()
}

// article is a noun with a or an in front.
func article(noun string) string {
	if strings.ContainsRune("aeio", rune(noun[0])) {
		return "an " + noun
	}
	return "a " + noun
}

// readRun tells a row of numbers by its first number, its step and its length.
func readRun(r arithmetic.Run) string {
	text := "start at " + r.Number(r.From).String() + " and " + ruleStep(r) + " each time: " + strconv.Itoa(r.Terms) + " numbers"
	return text
}

// ruleStep says what a rule does to a number.
func ruleStep(r arithmetic.Run) string {
	by := r.Step().String()
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
