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
		if len(a.Order) > 0 {
			return joinedBy(a.Order, " + "), true
		}
		return list(a.List, " + "), true
	case arithmetic.InWords:
		return inWords(p.Left), true
	case arithmetic.Parity:
		if a.Even {
			return "even", true
		}
		return "odd", true
	case arithmetic.Counting:
		terms := make([]arithmetic.Number, len(a.List))
		for i, n := range a.List {
			terms[i] = p.Run.Number(n)
		}
		return joinedBy(terms, ", "), true
	case arithmetic.RuleTable, arithmetic.Multiples:
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
	return answerOfParts(p, a)
}

// answerOfParts is the answer of a problem about a fraction in other forms, or about
// coins: 1/8 + 1/8 + 1/8, 1/2 = 2/4 = 3/6, 2 dimes and 3 pennies, 23 cents.
func answerOfParts(p arithmetic.Problem, a arithmetic.Answer) (text string, ok bool) {
	switch p.Kind {
	case arithmetic.AsSum:
		if len(a.Order) > 0 {
			return joinedBy(a.Order, " + "), true
		}
	case arithmetic.EqualNames:
		if len(a.Order) > 0 {
			return chain(a.Order), true
		}
	case arithmetic.Closer:
		if a.Relation == arithmetic.Equal {
			return "both are equally far from " + arithmetic.Grouped(p.To), true
		}
		return a.Number.String(), true
	case arithmetic.Coins:
		return arithmetic.CoinNames(a.Order), true
	case arithmetic.CoinsWorth:
		return Cents(a.Number), true
	}
	return "", false
}

// Cents is an amount of money with two places as a child counts it: 23 cents, 1 cent,
// and 123 cents = $1.23 from a dollar up.
func Cents(n arithmetic.Number) string {
	v := n.Value
	text := Count(v.Num(), "cent")
	if v.Num() >= v.Den() {
		text += " = " + n.String()
	}
	return text
}

// joinedBy writes numbers with a sign between them.
func joinedBy(list []arithmetic.Number, between string) string {
	names := make([]string, len(list))
	for i, n := range list {
		names[i] = n.String()
	}
	return strings.Join(names, between)
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
