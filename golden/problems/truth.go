package problems

import (
	"errors"
	"math/big"
	"slices"

	"modeler/arithmetic"
)

// Truth is what is true of a problem. Fields that do not apply are nil.
type Truth struct {
	Numbers   []*big.Rat // the numbers as they stand in the problem, from left to right
	Within    []*big.Rat // those numbers, and what the parts of the problem in brackets come to
	Value     *big.Rat   // the value, the unknown, the rounded number; of a division, with its fraction, or rounded up
	Quotient  *big.Int   // of a division of whole numbers
	Remainder *big.Int   // and what is left over
	Sides     []*big.Rat // of a claim or comparison: what Left and Right come to
	Order     int        // how Left stands to Right: -1, 0 or 1
	True      bool       // of a claim, and of a prime
	Sorted    []*big.Rat // of an ordering, from least to greatest
	Pairs     [][2]int64 // of factors and a prime: every rows × columns; of ways to make: every two parts, the smaller in front
	List      []int64    // of a run, a rule, multiples, factors, an expanded form: the numbers of the answer, in order
	Facts     []string   // of a fact family, as they are written
	Rounded   []*big.Rat // of an estimate: what is put in the place of the two numbers
	Name      string     // of a number to be written in words
	Even      bool       // of an even number
	Parts     []*big.Rat // of the expanded form of a decimal
	Fewest    int        // of an amount of money: the least number of coins and bills that make it
	Names     []string   // of equal names: each as it is written, fewest parts first
}

// Work works a problem. It fails only on a division by 0 and on problems that
// are not well formed.
func Work(p arithmetic.Problem) (t Truth, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = errors.New("problems: the problem cannot be worked")
		}
	}()
	t.Numbers = append(numbers(p.Left), numbers(p.Right)...)
	t.Within = append(within(p.Left, false), within(p.Right, false)...)
	switch p.Kind {
	case arithmetic.Missing:
		open, known := p.Left, p.Right
		if !holdsUnknown(open) {
			open, known = known, open
		}
		t.Value = solve(open, value(known))
		t.Within = append(t.Within, value(known))
	case arithmetic.Claim, arithmetic.Comparison:
		t.Sides = []*big.Rat{value(p.Left), value(p.Right)}
		t.Order = t.Sides[0].Cmp(t.Sides[1])
		t.True = map[arithmetic.Relation]int{arithmetic.Less: -1, arithmetic.Equal: 0, arithmetic.Greater: 1}[p.Rel] == t.Order
	case arithmetic.Ordering:
		for _, n := range p.List {
			t.Numbers = append(t.Numbers, rat(n))
		}
		t.Sorted = slices.Clone(t.Numbers)
		slices.SortStableFunc(t.Sorted, (*big.Rat).Cmp)
	case arithmetic.Rounding:
		t.Value = roundUp(value(p.Left), unitOf(p))
	case arithmetic.Factors:
		t.Pairs = rectangles(value(p.Left).Num().Int64())
	default:
		t.workAsked(p)
	}
	a, b, _ := p.Operands()
	if p.Kind == arithmetic.Division && a.Form != arithmetic.Common && b.Form != arithmetic.Common && t.Numbers[0].IsInt() && t.Numbers[1].IsInt() {
		t.Quotient, t.Remainder = new(big.Int).DivMod(t.Numbers[0].Num(), t.Numbers[1].Num(), new(big.Int))
		if p.Rest == arithmetic.OneMore && t.Remainder.Sign() > 0 {
			t.Value = new(big.Rat).SetInt(new(big.Int).Add(t.Quotient, big.NewInt(1)))
		}
	}
	return t, nil
}

// rectangles are the pairs of whole numbers whose product is n.
func rectangles(n int64) (pairs [][2]int64) {
	for i := int64(1); i <= n; i++ {
		if n%i == 0 {
			pairs = append(pairs, [2]int64{i, n / i})
		}
	}
	return pairs
}

// Blank is the number that a renaming asks for; nil when no whole number fits.
func Blank(p arithmetic.Problem) *big.Int {
	v := value(p.Left)
	b := new(big.Rat)
	if p.Blank.Num == 0 {
		b.Mul(v, new(big.Rat).SetInt64(p.Blank.Den))
	} else {
		b.Quo(new(big.Rat).SetInt64(p.Blank.Num), v)
	}
	if !b.IsInt() {
		return nil
	}
	return b.Num()
}

func rat(n arithmetic.Number) *big.Rat { return big.NewRat(n.Value.Num(), n.Value.Den()) }

func numbers(e arithmetic.Expr) []*big.Rat {
	switch e := e.(type) {
	case arithmetic.Number:
		return []*big.Rat{rat(e)}
	case arithmetic.Operation:
		return append(numbers(e.Left), numbers(e.Right)...)
	}
	return nil
}

// within are the values inside an expression, its own too when it is a part.
func within(e arithmetic.Expr, part bool) []*big.Rat {
	o, ok := e.(arithmetic.Operation)
	if !ok {
		return numbers(e)
	}
	list := append(within(o.Left, true), within(o.Right, true)...)
	if part && !holdsUnknown(o) {
		list = append(list, value(o))
	}
	return list
}

func holdsUnknown(e arithmetic.Expr) bool {
	switch e := e.(type) {
	case arithmetic.Unknown:
		return true
	case arithmetic.Operation:
		return holdsUnknown(e.Left) || holdsUnknown(e.Right)
	}
	return false
}

func value(e arithmetic.Expr) *big.Rat {
	switch e := e.(type) {
	case arithmetic.Number:
		return rat(e)
	case arithmetic.Operation:
		return combine(e.Op, value(e.Left), value(e.Right))
	}
	panic("an unknown has no value")
}

func combine(op arithmetic.Op, a, b *big.Rat) *big.Rat {
	v := new(big.Rat)
	switch op {
	case arithmetic.Add:
		return v.Add(a, b)
	case arithmetic.Subtract:
		return v.Sub(a, b)
	case arithmetic.Divide:
		return v.Quo(a, b)
	}
	return v.Mul(a, b)
}

// solve is the unknown in e when e comes to target.
func solve(e arithmetic.Expr, target *big.Rat) *big.Rat {
	o, ok := e.(arithmetic.Operation)
	if !ok {
		return target
	}
	v := new(big.Rat)
	if holdsUnknown(o.Left) {
		b := value(o.Right)
		switch o.Op {
		case arithmetic.Add:
			v.Sub(target, b)
		case arithmetic.Subtract:
			v.Add(target, b)
		case arithmetic.Divide:
			v.Mul(target, b)
		default:
			v.Quo(target, b)
		}
		return solve(o.Left, v)
	}
	a := value(o.Left)
	switch o.Op {
	case arithmetic.Add:
		v.Sub(target, a)
	case arithmetic.Subtract:
		v.Sub(a, target)
	case arithmetic.Divide:
		v.Quo(a, target)
	default:
		v.Quo(target, a)
	}
	return solve(o.Right, v)
}

// unitOf is what a rounding is to the nearest of.
func unitOf(p arithmetic.Problem) *big.Rat {
	if p.Places > 0 {
		return new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(p.Places)), nil))
	}
	return new(big.Rat).SetInt64(p.To)
}

// roundUp rounds to the nearest to, half of it upwards, as is common practice in
// schools (no source).
func roundUp(v, unit *big.Rat) *big.Rat {
	q := new(big.Rat).Quo(v, unit)
	q.Add(q, big.NewRat(1, 2))
	floor := new(big.Int).Div(q.Num(), q.Denom())
	return q.Mul(new(big.Rat).SetInt(floor), unit)
}
