package laws

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/problems"
)

// trueAsked is [TrueAnswer] for the problems that ask something of a number or of
// a row of numbers; asked is false for all others.
func trueAsked(l *Lesson) (asked bool, err error) {
	a, t := l.Answer, l.Truth
	switch l.Problem.Kind {
	case arithmetic.InWords:
		return true, nil // its name is looked for in what is said
	case arithmetic.Coins:
		return true, fewCoins(a.Order, t)
	case arithmetic.Parity:
		if a.Even != t.Even {
			return true, fmt.Errorf("the number is said to be even: %v", a.Even)
		}
	case arithmetic.WaysToMake:
		return true, allWays(a.Pairs, t.Pairs)
	case arithmetic.Primality:
		if a.True != t.True {
			return true, fmt.Errorf("the number is said to be prime: %v", a.True)
		}
		if !slices.Equal(a.Pairs, t.Pairs) {
			return true, fmt.Errorf("the pairs are %v, not %v", a.Pairs, t.Pairs)
		}
	case arithmetic.Closer:
		o := l.Problem
		want := map[int]arithmetic.Expr{-1: o.Left, 1: o.Right}[t.Order]
		if want != nil && want.String() != a.Number.String() || want == nil && a.Relation != arithmetic.Equal {
			return true, fmt.Errorf("%s is said to be closer", a.Number)
		}
	case arithmetic.EqualNames, arithmetic.AsSum:
		if names := written(a.Order); !slices.Equal(names, t.Names) {
			return true, fmt.Errorf("the names are %v, not %v", names, t.Names)
		}
	case arithmetic.FactFamily:
		if !same(a.Number.Value, t.Value) {
			return true, fmt.Errorf("the two numbers make %s, not %s", a.Number, t.Value.RatString())
		}
	case arithmetic.ExpandedForm:
		if t.Parts == nil {
			if !slices.Equal(a.List, t.List) {
				return true, fmt.Errorf("the numbers are %v, not %v", a.List, t.List)
			}
			break
		}
		if len(a.Order) != len(t.Parts) {
			return true, fmt.Errorf("there are %d parts, not %d", len(a.Order), len(t.Parts))
		}
		for i, part := range a.Order {
			if !same(part.Value, t.Parts[i]) {
				return true, fmt.Errorf("part %d is %s, not %s", i+1, part, t.Parts[i].RatString())
			}
		}
		return true, nil
	case arithmetic.Counting, arithmetic.RuleTable, arithmetic.Multiples, arithmetic.CommonMultiples, arithmetic.CommonFactors:
		if !slices.Equal(a.List, t.List) {
			return true, fmt.Errorf("the numbers are %v, not %v", a.List, t.List)
		}
	default:
		return false, nil
	}
	return true, nil
}

// fewCoins: coins and bills that there are make the amount, and are as few as can be.
func fewCoins(coins []arithmetic.Number, t problems.Truth) error {
	sum := new(big.Rat)
	for _, c := range coins {
		if !slices.Contains([]string{"$0.01", "$0.05", "$0.10", "$0.25", "$1.00", "$5.00", "$10.00", "$20.00"}, c.String()) {
			return fmt.Errorf("there is no coin of %s", c)
		}
		sum.Add(sum, rat(c.Value))
	}
	if sum.Cmp(t.Value) != 0 || len(coins) != t.Fewest {
		return fmt.Errorf("%d coins make %s, and %d are enough for %s", len(coins), sum.RatString(), t.Fewest, t.Value.RatString())
	}
	return nil
}

// written are numbers as they are written.
func written(list []arithmetic.Number) []string {
	texts := make([]string, len(list))
	for i, n := range list {
		texts[i] = n.String()
	}
	return texts
}

// allWays: every two numbers that make the sum stand there once, in either order;
// the way with 0 may be left out.
func allWays(pairs, want [][2]int64) error {
	seen := map[[2]int64]bool{}
	for _, p := range pairs {
		if seen[p] {
			return fmt.Errorf("%d + %d stands there twice", p[0], p[1])
		}
		seen[p] = true
		if !slices.Contains(want, [2]int64{min(p[0], p[1]), max(p[0], p[1])}) {
			return fmt.Errorf("%d + %d is not a way to make it", p[0], p[1])
		}
	}
	for _, p := range want {
		if !seen[p] && !seen[[2]int64{p[1], p[0]}] && p[0] > 0 {
			return fmt.Errorf("%d + %d is missing", p[0], p[1])
		}
	}
	return nil
}

// saysPlace: the place that is asked for is in the title and in the description.
func saysPlace(p Picture, title, desc string) error {
	if p.Problem.Kind != arithmetic.PlaceValue {
		return nil
	}
	place := strings.TrimSuffix(p.Problem.PlaceName(), "s")
	for _, text := range []string{title, desc} {
		if !strings.Contains(strings.ToLower(text), place) {
			return fmt.Errorf("the place of the %ss is not in %q", place, text)
		}
	}
	return nil
}

// saysAsked: the description has the whole answer in it, and the title its last
// part; asked is false for the kinds of problem that have one number as answer.
func saysAsked(p Picture, title, desc string) (asked bool, err error) {
	t := p.Truth
	var whole, last []string // what the description says, and the title
	switch p.Problem.Kind {
	case arithmetic.InWords:
		whole = []string{t.Name}
		last = whole
	case arithmetic.Parity:
		whole = []string{map[bool]string{true: "even", false: "odd"}[t.Even]}
		last = whole
	case arithmetic.Coins:
		whole = []string{arithmetic.CoinNames(p.Answer.Order)}
		if !strings.Contains(title, whole[0]) {
			return true, fmt.Errorf("%s are not in the title %q", whole[0], title)
		}
		return true, nil
	case arithmetic.Primality:
		word := map[bool]string{true: "is prime", false: "is not prime"}[t.True]
		if !saysAny(title, []string{word, "composite", "neither prime"}) || t.True && says(title, "composite") {
			return true, fmt.Errorf("%q is not in the title %q", word, title)
		}
		return true, nil
	case arithmetic.Closer:
		word := "equally far"
		switch t.Order {
		case -1:
			word = p.Problem.Left.String() + " is closer"
		case 1:
			word = p.Problem.Right.String() + " is closer"
		}
		if !strings.Contains(desc, word) {
			return true, fmt.Errorf("%q is not in the description %q", word, desc)
		}
		if other := map[int]arithmetic.Expr{-1: p.Problem.Left, 1: p.Problem.Right}[t.Order]; other != nil && !strings.HasSuffix(title, ": "+other.String()) {
			return true, fmt.Errorf("%s does not end the title %q", other, title)
		}
		return true, nil
	case arithmetic.AsSum:
		whole = []string{strings.Join(t.Names, " + ")}
		last = whole
	case arithmetic.EqualNames:
		whole = t.Names
		last = whole
	case arithmetic.FactFamily:
		whole = t.Facts
		last = []string{arithmetic.Grouped(t.Value.Num().Int64())}
	case arithmetic.WaysToMake:
		for _, pair := range p.Answer.Pairs {
			a, b := arithmetic.Grouped(pair[0]), arithmetic.Grouped(pair[1])
			if !saysAny(desc, []string{a + " + " + b, b + " + " + a, a + " and " + b, b + " and " + a}) {
				return true, fmt.Errorf("%s + %s is not in the description %q", a, b, desc)
			}
		}
		return true, nil
	case arithmetic.ExpandedForm, arithmetic.Counting, arithmetic.RuleTable, arithmetic.Multiples, arithmetic.CommonMultiples, arithmetic.CommonFactors:
		for _, n := range t.List {
			whole = append(whole, p.Problem.Run.Number(n).String())
		}
		if t.Parts != nil { // of a decimal
			for _, n := range p.Answer.Order {
				whole = append(whole, n.String())
			}
		}
		last = whole[max(0, len(whole)-1):]
		if p.Problem.Kind == arithmetic.CommonMultiples {
			last = whole[:1] // the least
		}
	default:
		return false, nil
	}
	for text, list := range map[string][]string{title: last, desc: whole} {
		for _, part := range list {
			if !says(text, part) && !says(text, nameOf(part)) {
				return true, fmt.Errorf("%s is not in %q", part, text)
			}
		}
	}
	return true, nil
}

// askedSecrets are the phrases that give the answer to such a problem away. Single
// numbers of a row stand in many places and tell little; the last two, side by
// side, are the row. asked is false for the kinds that have one number as answer.
func askedSecrets(p Picture) (list []string, asked bool) {
	t := p.Truth
	switch p.Problem.Kind {
	case arithmetic.PlaceValue:
		worth := arithmetic.Grouped(t.Value.Num().Int64())
		if !t.Numbers[0].IsInt() {
			worth = p.Answer.Number.String()
			list = []string{"= " + worth, "worth " + worth}
			break
		}
		if worth == p.Problem.Left.String() {
			break
		}
		list = []string{"= " + worth, "worth " + worth, "worth " + nameOf(worth)}
		if worth[0] != '0' && worth[0] != '1' { // a place is 10 times the next, and 1 ten stands in it
			list = append(list, worth, nameOf(worth))
		}
		if len(worth) == 1 {
			list = list[:3]
		}
	case arithmetic.InWords:
		if t.Numbers[0].Cmp(big.NewRat(20, 1)) > 0 || !t.Numbers[0].IsInt() {
			list = []string{t.Name}
		}
	case arithmetic.Parity:
		list = []string{map[bool]string{true: "is even", false: "is odd"}[t.Even]}
	case arithmetic.Primality:
		list = []string{"is prime", "is not prime", "is composite"}
	case arithmetic.Closer:
		list = []string{p.Problem.Left.String() + " is closer", p.Problem.Right.String() + " is closer", "equally far"}
	case arithmetic.AsSum:
		if len(t.Names) > 2 || t.Names[0] != "1" { // 1 and 1/6 are in the name of 1 1/6
			list = []string{t.Names[0] + " + " + t.Names[1]}
		}
	case arithmetic.EqualNames:
		for i, name := range t.Names[1:] {
			list = append(list, t.Names[i]+" = "+name, t.Names[i]+" and "+name)
		}
	case arithmetic.FactFamily:
		// The first fact is given. What has its numbers in the same order, as 5 − 0 = 5
		// and 5 + 0 = 5, cannot be told from it.
		list = slices.DeleteFunc(slices.Clone(t.Facts[1:]), func(f string) bool { return says(t.Facts[0], f) })
	case arithmetic.WaysToMake:
		if pairs := t.Pairs; len(pairs) > 2 {
			a, b := pairs[len(pairs)-1], pairs[len(pairs)-2]
			list = []string{fmt.Sprintf("%d + %d %d + %d", b[0], b[1], a[0], a[1]), fmt.Sprintf("%d + %d and %d + %d", b[0], b[1], a[0], a[1])}
		}
	case arithmetic.RuleTable:
		for i, n := range t.Numbers {
			list = append(list, n.RatString()+" becomes "+arithmetic.Grouped(t.List[i]))
		}
	case arithmetic.ExpandedForm, arithmetic.Counting, arithmetic.Multiples, arithmetic.CommonMultiples, arithmetic.CommonFactors:
		if n := len(t.List); n > 2 {
			a, b := p.Problem.Run.Number(t.List[n-2]).String(), p.Problem.Run.Number(t.List[n-1]).String()
			list = []string{a + " and " + b}
			if mixed := a + " " + b; !strings.Contains(p.Problem.String(), mixed) { // 1 and 1/2 are 1 1/2 too
				list = append(list, mixed)
			}
		}
	default:
		return nil, false
	}
	if p.Problem.Kind == arithmetic.CommonMultiples || p.Problem.Kind == arithmetic.CommonFactors {
		for _, n := range []int64{t.List[0], t.List[len(t.List)-1]} {
			if n > 1 {
				list = append(list, "least is "+arithmetic.Grouped(n), "greatest is "+arithmetic.Grouped(n))
			}
		}
	}
	return list, true
}
