package problems

import (
	"math/big"
	"slices"
	"strconv"

	"modeler/arithmetic"
)

// workAsked works the problems that ask something of a number or of a row of
// numbers, and takes the value of all others.
func (t *Truth) workAsked(p arithmetic.Problem) {
	if t.workMoney(p) {
		return
	}
	switch p.Kind {
	case arithmetic.Counting:
		parts := max(1, p.Run.Parts)
		t.Numbers = []*big.Rat{big.NewRat(p.Run.From, parts), big.NewRat(p.Run.By, parts)}
		for n := p.Run.From; len(t.List) < p.Run.Terms; n = step(p.Run, n) {
			t.List = append(t.List, n)
		}
		return
	case arithmetic.RuleTable:
		for _, n := range p.List {
			t.Numbers = append(t.Numbers, rat(n))
			t.List = append(t.List, step(p.Run, rat(n).Num().Int64()))
		}
		return
	}
	t.Value = value(p.Left)
	if t.workDigits(p) {
		return
	}
	n := t.Value.Num().Int64()
	switch p.Kind {
	case arithmetic.PlaceValue:
		t.Value = new(big.Rat).SetInt64(n / p.To % 10 * p.To)
	case arithmetic.ExpandedForm:
		digits := strconv.FormatInt(n, 10)
		for i, digit := range digits {
			if digit != '0' {
				part, _ := strconv.ParseInt(string(digit)+zeros(len(digits)-1-i), 10, 64)
				t.List = append(t.List, part)
			}
		}
	case arithmetic.Coins:
		cents := new(big.Rat).Mul(t.Value, big.NewRat(100, 1))
		t.Fewest = fewest(cents.Num().Int64())
	case arithmetic.InWords:
		t.Name = name(n)
	case arithmetic.Parity:
		t.Even = new(big.Int).And(t.Value.Num(), big.NewInt(1)).Sign() == 0
	case arithmetic.Estimate:
		o := p.Left.(arithmetic.Operation)
		t.Rounded = []*big.Rat{roundUp(t.Numbers[0], unitOf(p)), roundUp(t.Numbers[1], unitOf(p))}
		t.Value = combine(o.Op, t.Rounded[0], t.Rounded[1])
	case arithmetic.FactFamily:
		t.Facts = facts(p.Left.(arithmetic.Operation), t.Value)
	case arithmetic.Closer:
		away := func(v *big.Rat) *big.Rat { d := new(big.Rat).Sub(v, big.NewRat(p.To, 1)); return d.Abs(d) }
		t.Order = away(t.Numbers[0]).Cmp(away(t.Numbers[1]))
		t.Value = nil
	case arithmetic.AsSum:
		t.Names = apart(p.Left.(arithmetic.Number), t.Value)
	case arithmetic.EqualNames:
		t.Names = equalNames(t.Value, p.Left)
	case arithmetic.WaysToMake:
		for a := int64(0); a <= n-a; a++ {
			t.Pairs = append(t.Pairs, [2]int64{a, n - a})
		}
	case arithmetic.Primality:
		t.Pairs = rectangles(n)
		t.True = big.NewInt(n).ProbablyPrime(20)
	default:
		t.workList(p, n)
	}
}

// workList works the kinds whose answer is the multiples or factors of n.
func (t *Truth) workList(p arithmetic.Problem, n int64) {
	switch p.Kind {
	case arithmetic.Multiples:
		for sum := int64(0); len(t.List) < p.Run.Terms; {
			sum += n
			t.List = append(t.List, sum)
		}
	case arithmetic.CommonMultiples:
		m := value(p.Right).Num().Int64()
		for sum := n; len(t.List) < 3; sum += n {
			if sum%m == 0 {
				t.List = append(t.List, sum)
			}
		}
	case arithmetic.CommonFactors:
		m := value(p.Right).Num().Int64()
		for i := int64(1); i <= min(n, m); i++ {
			if n%i == 0 && m%i == 0 {
				t.List = append(t.List, i)
			}
		}
	}
}

// step is the number that a rule makes of n.
func step(r arithmetic.Run, n int64) int64 {
	v := combine(r.Op, big.NewRat(n, 1), big.NewRat(r.By, 1))
	if !v.IsInt() {
		panic("not a whole number")
	}
	return v.Num().Int64()
}

// facts are the sums and differences, or products and quotients, of two numbers
// and what they come to; two equal numbers have only two.
func facts(o arithmetic.Operation, total *big.Rat) []string {
	a, b, c := o.Left.String(), o.Right.String(), arithmetic.Grouped(total.Num().Int64())
	back := " − "
	if o.Op == arithmetic.Multiply {
		back = " ÷ "
	}
	there := " " + o.Op.String() + " "
	all := []string{a + there + b + " = " + c, b + there + a + " = " + c, c + back + b + " = " + a, c + back + a + " = " + b}
	var list []string
	for _, f := range all {
		if !slices.Contains(list, f) {
			list = append(list, f)
		}
	}
	return list
}

func zeros(n int) string {
	list := make([]byte, n)
	for i := range list {
		list[i] = '0'
	}
	return string(list)
}

var (
	smallNames = []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
		"thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"}
	tensNames = []string{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}
)

// name is a whole number below a thousand million in words, as in the United
// States: without "and" (common practice, no source).
func name(n int64) string {
	for _, period := range []struct {
		worth int64
		name  string
	}{{1_000_000, "million"}, {1_000, "thousand"}, {100, "hundred"}} {
		if n >= period.worth {
			text := name(n/period.worth) + " " + period.name
			if rest := n % period.worth; rest > 0 {
				text += " " + name(rest)
			}
			return text
		}
	}
	if n < 20 {
		return smallNames[n]
	}
	text := tensNames[n/10]
	if n%10 > 0 {
		text += "-" + smallNames[n%10]
	}
	return text
}

// equalNames are the fractions of that value with at most 12 parts to a whole, and
// the one that was given where it has more.
func equalNames(v *big.Rat, given arithmetic.Expr) []string {
	var list []string
	for den := int64(1); den <= 12; den++ {
		if num := new(big.Rat).Mul(v, big.NewRat(den, 1)); num.IsInt() {
			list = append(list, num.Num().String()+"/"+strconv.FormatInt(den, 10))
		}
	}
	if !slices.Contains(list, given.String()) {
		list = append(list, given.String())
	}
	return list
}

// apart are the wholes and unit fractions that a number is written in: 1, 1 and 1/8 of
// 2 1/8; five fourths of 5/4.
func apart(n arithmetic.Number, v *big.Rat) (names []string) {
	den := big.NewInt(n.Value.Den())
	rest := new(big.Rat).Set(v)
	one := big.NewRat(1, 1)
	for n.Form == arithmetic.Mixed && rest.Cmp(one) >= 0 {
		names = append(names, "1")
		rest.Sub(rest, one)
	}
	unit := new(big.Rat).SetFrac(big.NewInt(1), den)
	for rest.Sign() > 0 {
		names = append(names, "1/"+den.String())
		rest.Sub(rest, unit)
	}
	return names
}
