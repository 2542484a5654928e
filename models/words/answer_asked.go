package words

import (
	"strings"

	"modeler/arithmetic"
)

// answerAsked is the answer of a problem that asks something of a number, or of a
// row of them; ok is false for other problems.
func answerAsked(p arithmetic.Problem, a arithmetic.Answer) (text string, ok bool) {
	switch p.Kind {
	case arithmetic.ExpandedForm:
		return list(a.List, " + "), true
	case arithmetic.InWords:
		return name(p.Left), true
	case arithmetic.Parity:
		if a.Even {
			return "even", true
		}
		return "odd", true
	case arithmetic.Counting, arithmetic.RuleTable, arithmetic.Multiples:
		return list(a.List, ", "), true
	case arithmetic.Estimate:
		return "about " + a.Number.String(), true
	case arithmetic.FactFamily:
		return strings.Join(familyFacts(p.Left, a.Number), ", "), true
	case arithmetic.WaysToMake:
		return pairs(a.Pairs, " + "), true
	case arithmetic.CommonMultiples:
		if len(a.List) > 0 {
			return list(a.List, ", ") + ", and so on; the least is " + arithmetic.Grouped(a.List[0]), true
		}
	case arithmetic.CommonFactors:
		if n := len(a.List); n > 0 {
			return list(a.List, ", ") + "; the greatest is " + arithmetic.Grouped(a.List[n-1]), true
		}
	case arithmetic.Primality:
		return primality(p.Left, a.True), true
	}
	return "", false
}

func list(numbers []int64, between string) string {
	names := make([]string, len(numbers))
	for i, n := range numbers {
		names[i] = arithmetic.Grouped(n)
	}
	return strings.Join(names, between)
}

// familyFacts are the facts that say the same as a sum or product and what it
// comes to: 3 + 5 = 8, 5 + 3 = 8, 8 − 5 = 3, 8 − 3 = 5. With two equal numbers
// there are only two.
func familyFacts(fact arithmetic.Expr, total arithmetic.Number) []string {
	o, ok := fact.(arithmetic.Operation)
	if !ok {
		return nil
	}
	back := arithmetic.Subtract
	if o.Op == arithmetic.Multiply {
		back = arithmetic.Divide
	}
	write := func(op arithmetic.Op, a, b, c arithmetic.Expr) string {
		return arithmetic.Operation{Op: op, Left: a, Right: b}.String() + " = " + c.String()
	}
	facts := []string{write(o.Op, o.Left, o.Right, total), write(o.Op, o.Right, o.Left, total),
		write(back, total, o.Right, o.Left), write(back, total, o.Left, o.Right)}
	if o.Left.String() == o.Right.String() {
		return []string{facts[0], facts[2]}
	}
	return facts
}

// primality says what a number is. 1 is neither prime nor composite, since it has
// only one factor.
func primality(e arithmetic.Expr, prime bool) string {
	switch {
	case prime:
		return "prime"
	case e.String() == "1":
		return "neither prime nor composite"
	}
	return "composite, not prime"
}
