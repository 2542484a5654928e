package words

import (
	"strings"

	"modeler/arithmetic"
)

// ReadBack says what was read, so that a parent sees whether it is what was
// meant: "four hundred two, take away one hundred seventy-eight".
func ReadBack(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.Show:
		return name(p.Left)
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.Division, arithmetic.PartOf:
		if o, ok := p.Left.(arithmetic.Operation); ok && p.Story != arithmetic.NoStory {
			return readStory(p, o)
		} else if ok {
			return readOperation(o, p.Grouping) + readRest(p)
		}
	case arithmetic.Expression:
		return readExpression(p.Left)
	case arithmetic.Missing:
		return "which number makes " + p.String() + " true?"
	case arithmetic.Claim:
		return readClaim(p)
	case arithmetic.Comparison:
		return "which is more, " + name(p.Left) + " or " + name(p.Right) + "?"
	case arithmetic.Ordering:
		names := make([]string, len(p.List))
		for i, n := range p.List {
			names[i] = n.String()
		}
		return "put " + List(names) + " in order, the least first"
	case arithmetic.Rounding:
		return name(p.Left) + " to the nearest " + nearestOf(p)
	case arithmetic.Factors:
		return "every pair of whole numbers that multiply to make " + p.Left.String()
	case arithmetic.MixedForm:
		return name(p.Left) + " as wholes and a part: a mixed number"
	case arithmetic.FractionForm:
		return name(p.Left) + " as one fraction"
	case arithmetic.SimplestForm:
		return name(p.Left) + " in as few parts as can be: the simplest form"
	case arithmetic.Renaming:
		return readRenaming(p)
	}
	return readAsked(p)
}

// name is a number in words, or an expression as it is written.
func name(e arithmetic.Expr) string {
	if n, ok := e.(arithmetic.Number); ok {
		return NumberName(n)
	}
	return e.String()
}

// readOperation tells one operation. Products and divisions of whole numbers are
// told as groups, since which number counts the groups is what matters.
func readOperation(o arithmetic.Operation, grouping bool) string {
	left, right := o.Left.String(), o.Right.String()
	switch o.Op {
	case arithmetic.Add:
		return name(o.Left) + " plus " + name(o.Right)
	case arithmetic.Subtract:
		return name(o.Left) + ", take away " + name(o.Right)
	case arithmetic.Multiply:
		if !isWhole(o.Left) {
			return name(o.Left) + " times " + name(o.Right)
		}
		groups := left + " groups"
		if left == "1" {
			groups = "1 group"
		}
		return groups + " of " + right + ": how many in all?"
	case arithmetic.Of:
		return name(o.Left) + " of " + name(o.Right)
	}
	switch {
	case arithmetic.IsPartOfOne(o) && !grouping:
		return left + plural(" whole", wholeOf(o.Left)) + " shared equally among " + right + ": how much in each?"
	case grouping && isWhole(o.Right):
		return left + " in groups of " + right + ": how many groups?"
	case isWhole(o.Right) && isWhole(o.Left):
		return left + " shared equally among " + right + ": how many in each?"
	case isWhole(o.Right):
		return name(o.Left) + " shared equally among " + right + ": how much in each?"
	}
	return "how many times does " + name(o.Right) + " fit in " + name(o.Left) + "?"
}

func wholeOf(e arithmetic.Expr) int64 {
	n, _ := e.(arithmetic.Number)
	v, _ := n.Int64()
	return v
}

func isWhole(e arithmetic.Expr) bool {
	n, ok := e.(arithmetic.Number)
	return ok && n.Form == arithmetic.Whole
}

// readExpression says which part is worked first.
func readExpression(e arithmetic.Expr) string {
	text := e.String()
	switch {
	case strings.Contains(text, "("):
		return text + ": the part in brackets first"
	case strings.ContainsAny(text, "+−") && strings.ContainsAny(text, "×÷"):
		return text + ": multiplying and dividing first"
	}
	return text + ": from left to right"
}

func readClaim(p arithmetic.Problem) string {
	left, right := name(p.Left), name(p.Right)
	switch p.Rel {
	case arithmetic.Less:
		return "is " + left + " less than " + right + "?"
	case arithmetic.Greater:
		return "is " + left + " more than " + right + "?"
	}
	return "is " + left + " the same as " + right + "?"
}

// nearest names the place that a number is rounded to: ten, hundred, thousand.
func nearest(to int64) string {
	for power, n := 0, int64(1); power <= 6; power, n = power+1, n*10 {
		if n == to {
			return Place(power, 1)
		}
	}
	return arithmetic.Grouped(to)
}

// nearestOf names what a problem rounds to, a place after the point included: ten,
// tenth.
func nearestOf(p arithmetic.Problem) string {
	if p.Places > 0 {
		return strings.TrimSuffix(p.PlaceName(), "s")
	}
	return nearest(p.To)
}

func readRenaming(p arithmetic.Problem) string {
	if p.Blank.Num == 0 {
		return name(p.Left) + " is how many " + Parts(p.Blank.Den, 2) + "?"
	}
	return name(p.Left) + " is " + arithmetic.Grouped(p.Blank.Num) + " of how many equal parts?"
}
