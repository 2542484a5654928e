package eyes

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
)

// same reports whether a library's number is a number of the answer. The decimal
// library works with 80 digits: a number with fewer than 60 is exact, one with more
// is an endless decimal, and so many are compared that no mistake hides behind them.
func same(theirs, ours string) bool {
	a, okA := value(theirs)
	b, okB := value(ours)
	if !okA || !okB {
		return false
	}
	d := new(big.Rat).Sub(a, b)
	if len(theirs) < 60 {
		return d.Sign() == 0
	}
	tiny := new(big.Int).Exp(big.NewInt(10), big.NewInt(50), nil)
	return d.Abs(d).Cmp(new(big.Rat).SetFrac(big.NewInt(1), tiny)) < 0
}

// value is a number as people write it: 1,204, 6/8, 1 1/2, 0.30, $5.00, 62%.
func value(text string) (*big.Rat, bool) {
	if hundredths, is := strings.CutSuffix(text, "%"); is {
		n, ok := value(hundredths)
		if ok {
			n.Quo(n, big.NewRat(100, 1))
		}
		return n, ok
	}
	whole, part, mixed := strings.Cut(strings.NewReplacer(",", "", "$", "").Replace(text), " ")
	a, ok := new(big.Rat).SetString(whole)
	if !ok || !mixed {
		return a, ok
	}
	b, ok := new(big.Rat).SetString(part)
	if !ok {
		return nil, false
	}
	return a.Add(a, b), true
}

// agrees compares an answer, as it is printed for people, with an opinion.
func agrees(p arithmetic.Problem, answer string, o opinion) error {
	differs := fmt.Errorf("%s: the answer is %q, a library says %+v", p, answer, o)
	parts := strings.Split(answer, " = ")
	if asked(p.Kind) {
		if !saysRow(p.Kind, answer, o) {
			return differs
		}
		return nil
	}
	switch p.Kind {
	case arithmetic.Claim:
		truth := map[arithmetic.Relation]int{arithmetic.Less: -1, arithmetic.Equal: 0, arithmetic.Greater: 1}[p.Rel] == o.Order
		if answer != fmt.Sprint(truth) {
			return differs
		}
		return nil
	case arithmetic.Comparison:
		if !strings.Contains(answer, [...]string{" < ", " = ", " > "}[o.Order+1]) {
			return differs
		}
		return nil
	case arithmetic.Ordering:
		return inOrder(answer, o.Sorted, differs)
	case arithmetic.Factors:
		if strings.ReplaceAll(answer, ",", "") != strings.Join(o.Pairs, " ") {
			return differs
		}
		return nil
	case arithmetic.Renaming:
		num, den, _ := strings.Cut(parts[0], "/")
		if filled := map[bool]string{true: num, false: den}[p.Blank.Num == 0]; !same(o.Blank, filled) {
			return differs
		}
	case arithmetic.Division:
		if q, r, left := strings.Cut(answer, " remainder "); left && p.Rest == arithmetic.LeftOver {
			if same(o.Quotient, q) && same(o.Remainder, r) {
				return nil
			}
			return differs
		}
	}
	for _, part := range parts {
		if !same(o.Value, part) {
			return differs
		}
	}
	last := parts[len(parts)-1]
	if o.Mixed != "" && (p.Kind == arithmetic.MixedForm && last != o.Mixed || p.Kind == arithmetic.SimplestForm && !slices.Contains([]string{o.Mixed, o.Value}, last)) {
		return differs
	}
	return nil
}

// inOrder checks the numbers of an ordering one by one, and the signs between them.
func inOrder(answer string, sorted []string, differs error) error {
	var signs []string
	for _, word := range strings.Fields(answer) {
		if word == "<" || word == "=" {
			signs = append(signs, word)
		}
	}
	numbers := strings.Split(strings.ReplaceAll(answer, " = ", " < "), " < ")
	if len(numbers) != len(sorted) {
		return differs
	}
	for i, n := range numbers {
		if !same(sorted[i], n) || i > 0 && (signs[i-1] == "=") != same(sorted[i-1], n) {
			return differs
		}
	}
	return nil
}

// asked reports whether a problem asks something whose answer is no single number.
func asked(kind arithmetic.Kind) bool {
	switch kind {
	case arithmetic.ExpandedForm, arithmetic.InWords, arithmetic.Parity, arithmetic.Primality, arithmetic.Counting, arithmetic.RuleTable, arithmetic.Estimate,
		arithmetic.FactFamily, arithmetic.WaysToMake, arithmetic.Multiples, arithmetic.CommonMultiples, arithmetic.CommonFactors:
		return true
	}
	return false
}

// saysRow compares the answer to such a problem with an opinion. Of a number in
// words the libraries have none.
func saysRow(kind arithmetic.Kind, answer string, o opinion) bool {
	const between = ", " // two numbers; inside a number there is no space behind a comma
	switch kind {
	case arithmetic.InWords:
		return true
	case arithmetic.Parity:
		return answer == o.Word
	case arithmetic.Primality:
		return strings.HasPrefix(answer, o.Word)
	case arithmetic.Estimate:
		about, ok := strings.CutPrefix(answer, "about ")
		return ok && same(o.Value, about)
	case arithmetic.FactFamily:
		return strings.ReplaceAll(answer, ",", "") == strings.Join(o.Pairs, " ")
	case arithmetic.WaysToMake:
		return answer == strings.Join(o.Pairs, between) || answer == strings.Join(o.Pairs[1:], between) // with 0 or without
	case arithmetic.ExpandedForm:
		return sameRow(o.Row, strings.Split(answer, " + "))
	case arithmetic.CommonMultiples:
		row, least, ok := strings.Cut(answer, ", and so on; the least is ")
		return ok && same(o.Row[0], least) && sameRow(o.Row, strings.Split(row, between))
	case arithmetic.CommonFactors:
		row, greatest, ok := strings.Cut(answer, "; the greatest is ")
		return ok && same(o.Row[len(o.Row)-1], greatest) && sameRow(o.Row, strings.Split(row, between))
	}
	return sameRow(o.Row, strings.Split(answer, between))
}

func sameRow(theirs, ours []string) bool { return slices.EqualFunc(theirs, ours, same) }
