package words

import "modeler/arithmetic"

// Topic is a heading that examples are sorted under, with a story that asks for
// one of its problems.
type Topic struct {
	Title   string
	Story   string
	Problem string // what the story asks, as a person would type it
}

// Topics lists the topics in the order they are taught.
var Topics = []Topic{
	{"Hundreds, tens and ones", "706 crates stand in the yard at Copper Hill. What does each digit mean?", "706"},
	{"Adding and taking away", "402 crates wait on the platform and 178 go up the hill. How many are left?", "402 - 178"},
	{"Groups and rows", "A carriage has 7 rows with 8 seats in each. How many seats are there?", "7 x 8"},
	{"Sharing and grouping", "56 riders fill 8 carriages evenly. How many ride in each?", "56 ÷ 8"},
	{"Factors and multiples", "24 seats stand in equal rows. How many rows can there be, and how many seats in each?", "factors of 24"},
	{"Fractions", "A rail is cut in 4 equal parts and 3 are laid. How much of it is that?", "3/4"},
	{"True, more, less", "Nora says three fourths of a cable is as long as six eighths of it. Is she right?", "3/4 = 6/8"},
	{"Working with fractions", "One half of a mile is laid, then three fourths of a mile more. How far is that?", "1/2 + 3/4"},
	{"Decimals and money", "A ticket costs $3.27 and Sam pays with $5.00. How much comes back?", "$5.00 - $3.27"},
}

// TopicOf is the place of a problem's topic in [Topics].
func TopicOf(p arithmetic.Problem) int {
	const (
		places = iota
		adding
		groups
		sharing
		factors
		fractions
		claims
		operations
		decimals
	)
	switch {
	case anyNumber(p, arithmetic.Decimal, arithmetic.Money, arithmetic.Percent), p.Kind == arithmetic.DecimalForm, p.Kind == arithmetic.PercentForm:
		return decimals
	case p.Kind == arithmetic.Claim, p.Kind == arithmetic.Comparison, p.Kind == arithmetic.Ordering, p.Kind == arithmetic.Closer:
		return claims
	case p.Kind == arithmetic.PartOf:
		return operations
	case p.Kind == arithmetic.ShapePart, p.Kind == arithmetic.AsSum, p.Kind == arithmetic.EqualNames, p.Kind == arithmetic.Counting && p.Run.Parts > 1:
		return fractions
	case p.Kind == arithmetic.Renaming, p.Kind == arithmetic.MixedForm, p.Kind == arithmetic.FractionForm, p.Kind == arithmetic.SimplestForm:
		return fractions
	case anyNumber(p, arithmetic.Common, arithmetic.Mixed):
		if p.Kind == arithmetic.Show {
			return fractions
		}
		return operations
	case p.Kind == arithmetic.Show, p.Kind == arithmetic.Rounding, p.Kind == arithmetic.PlaceValue, p.Kind == arithmetic.ExpandedForm, p.Kind == arithmetic.InWords:
		return places
	case p.Kind == arithmetic.Factors, p.Kind == arithmetic.Multiples, p.Kind == arithmetic.CommonMultiples, p.Kind == arithmetic.CommonFactors,
		p.Kind == arithmetic.Parity, p.Kind == arithmetic.Primality:
		return factors
	case p.Kind == arithmetic.Counting, p.Kind == arithmetic.RuleTable:
		return groups // counting by a number leads to multiplying
	}
	return byOperation(p.Left, p.Right, [...]int{
		arithmetic.Add: adding, arithmetic.Subtract: adding, arithmetic.Multiply: groups, arithmetic.Divide: sharing, arithmetic.Of: operations,
	})
}

// byOperation goes by the outermost operation of the first side that has one.
func byOperation(left, right arithmetic.Expr, topic [5]int) int {
	for _, side := range []arithmetic.Expr{left, right} {
		if o, ok := side.(arithmetic.Operation); ok {
			return topic[o.Op]
		}
	}
	return topic[arithmetic.Add]
}

// anyNumber reports whether one of the problem's numbers is written in one of the
// forms.
func anyNumber(p arithmetic.Problem, forms ...arithmetic.Form) bool {
	var in func(arithmetic.Expr) bool
	in = func(e arithmetic.Expr) bool {
		switch e := e.(type) {
		case arithmetic.Number:
			for _, f := range forms {
				if e.Form == f {
					return true
				}
			}
		case arithmetic.Operation:
			return in(e.Left) || in(e.Right)
		}
		return false
	}
	for _, n := range p.List {
		if in(n) {
			return true
		}
	}
	return in(p.Left) || in(p.Right)
}
