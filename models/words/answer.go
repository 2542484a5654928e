package words

import (
	"strconv"
	"strings"

	"modeler/arithmetic"
)

// Answer is what a problem comes to, as a book's answer page prints it: 224,
// 6 remainder 2, true, 3/4 > 5/8, 1 × 24, 2 × 12, 5/4 = 1 1/4, 300 + 40 + 7, even.
func Answer(p arithmetic.Problem, a arithmetic.Answer) string {
	switch p.Kind {
	case arithmetic.Claim:
		return strconv.FormatBool(a.True)
	case arithmetic.Comparison:
		return p.Left.String() + " " + a.Relation.String() + " " + p.Right.String()
	case arithmetic.Ordering:
		return chain(a.Order)
	case arithmetic.Factors:
		return pairs(a.Pairs, " × ")
	case arithmetic.Division:
		if a.Remainder > 0 && p.Rest == arithmetic.LeftOver {
			return a.Number.String() + " remainder " + arithmetic.Grouped(a.Remainder)
		}
	}
	if text, ok := answerAsked(p, a); ok {
		return text
	}
	return renamed(a)
}

// renamed is the answer and, where it has a last name of its own, that name too.
func renamed(a arithmetic.Answer) string {
	text := a.Number.String()
	// The zero value of a number is 0, the last name of 0/4 and of nothing else.
	if !a.Simplest.Value.Equal(a.Number.Value) || a.Simplest == (arithmetic.Number{}) && a.Number.Form != arithmetic.Common {
		return text
	}
	if last := a.Simplest.String(); last != text {
		text += " = " + last
	}
	return text
}

// chain writes numbers in order with the signs between them.
func chain(order []arithmetic.Number) string {
	var b strings.Builder
	for i, n := range order {
		switch {
		case i == 0:
		case n.Value.Equal(order[i-1].Value):
			b.WriteString(" = ")
		default:
			b.WriteString(" < ")
		}
		b.WriteString(n.String())
	}
	return b.String()
}

// pairs writes every pair of numbers once, the smaller number in front.
func pairs(list [][2]int64, sign string) string {
	var out []string
	seen := map[[2]int64]bool{}
	for _, p := range list {
		if p[0] > p[1] {
			p[0], p[1] = p[1], p[0]
		}
		if !seen[p] {
			out = append(out, arithmetic.Grouped(p[0])+sign+arithmetic.Grouped(p[1]))
		}
		seen[p] = true
	}
	return strings.Join(out, ", ")
}
