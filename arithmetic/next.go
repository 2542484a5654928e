package arithmetic

import "modeler/fraction"

// Next is a problem of the same kind with numbers of the same type, a small step
// harder where there is an easy way to say what that is. ok is false when there
// is none. It may be one that cannot be shown.
func Next(p Problem) (next Problem, ok bool) {
	if p.Kind.asksOfNumbers() {
		return nextAsked(p)
	}
	next = p
	switch p.Kind {
	case Ordering:
		last := p.List[len(p.List)-1]
		next.List = append(append([]Number{}, p.List...), harder(last))
		return next, true
	case Renaming:
		n, _ := p.Left.(Number)
		if d := n.Value.Den(); d > 1 && powerOfTen(d) && powerOfTen(p.Blank.Den) && n.Form != Percent {
			if next.Left = harder(n); n.Form == Common {
				next.Left = Frac(fraction.Must(n.Value.Num()+1, d))
			}
			return next, true
		}
		if p.Blank.Num > 0 {
			next.Blank.Num += n.Value.Num()
		} else {
			next.Blank.Den += n.Value.Den()
		}
		return next, n.Value.Num() > 0
	case ShapePart, AsSum, EqualNames, Closer, DecimalForm, PercentForm, Coins, CoinsWorth:
		return nextParts(p)
	case Show, Rounding, Factors, MixedForm, FractionForm, SimplestForm:
		n, _ := p.Left.(Number)
		next.Left = harderOf(p.Kind, n)
		return next, true
	}
	if a, b, two := p.Operands(); two && p.Right == nil {
		o := p.Left.(Operation)
		if p.Kind == Division && p.Story == TimesAsMany { // nothing may be left over
			a = Int(a.Value.Num() + b.Value.Num())
		} else {
			a, b = harderPair(o.Op, a, b)
		}
		next.Left = Operation{Op: o.Op, Left: a, Right: b}
		return next, true
	}
	return nextStatement(p)
}

// harderOf is the next number to be shown, rounded or renamed.
func harderOf(kind Kind, n Number) Number {
	v := n.Value
	switch {
	case kind == MixedForm && n.Form == Common:
		return Frac(fraction.Must(v.Num()+v.Den(), v.Den()))
	case kind == FractionForm && n.Form == Mixed:
		return AsMixed(fraction.Must(v.Num()+v.Den(), v.Den()))
	case kind == SimplestForm && n.Form == Common && v.Num() > 0:
		g := fraction.GCD(v.Num(), v.Den())
		return Frac(fraction.Must(v.Num()+v.Num()/g, v.Den()+v.Den()/g))
	case kind == Factors:
		return Int(v.Num() + 12)
	}
	return harder(n)
}

// grow is a whole number, or the units of a decimal, with 1 more in its first
// digit, so that the other digits have the same trades as before.
func grow(n int64) int64 {
	lead := int64(1)
	for n/lead >= 10 {
		lead *= 10
	}
	return n + lead
}

// harder is a number of the same type, larger or with one part more.
func harder(n Number) Number {
	v := n.Value
	switch n.Form {
	case Common:
		return Frac(fraction.Must(v.Num()+1, v.Den()+1))
	case Mixed:
		return AsMixed(fraction.Must(v.Num()+v.Den(), v.Den()))
	}
	return withUnits(n, grow(v.Num()))
}

// withUnits is a whole or decimal number with so many units of its last place.
func withUnits(n Number, units int64) Number {
	if n.Form == Percent {
		return InPercent(units, n.Places)
	}
	if n.Form == Whole || n.Places == 0 {
		return Number{Value: fraction.Whole(units), Form: n.Form}
	}
	return Number{Value: fraction.Must(units, n.Value.Den()), Form: n.Form, Places: n.Places}
}

// fuller has 1 more in the last place if there is room, which takes no trade away.
func fuller(n Number) Number {
	if units := n.Value.Num(); !inParts(n) && units%10 != 9 {
		return withUnits(n, units+1)
	}
	return n
}

// harderPair is the next two numbers for a sign. What is taken away stays less
// than what it is taken from.
func harderPair(op Op, a, b Number) (Number, Number) {
	switch op {
	case Multiply:
		return harderFactors(a, b)
	case Divide:
		return harderDivision(a, b)
	case Of:
		part, amount := a.Value, b.Value
		if inParts(a) && part.Num()+1 < part.Den() {
			return Frac(fraction.Must(part.Num()+1, part.Den())), b
		}
		return a, Int(amount.Num() + part.Den())
	}
	if a.Form == Common && b.Form == Common {
		return harderFractions(op, a.Value, b.Value)
	}
	return harder(a), fuller(b)
}

func harderFactors(a, b Number) (Number, Number) {
	if n, whole := b.Int64(); !whole || b.Form != Whole || n%10 == 0 { // 5 × 60, 7 × 0
		return withMore(a), b
	}
	return a, withMore(b)
}

func withMore(n Number) Number {
	if n.Form == Whole {
		return Int(n.Value.Num() + 1)
	}
	return harder(n)
}

func harderDivision(a, b Number) (Number, Number) {
	x, y := a.Value.Num(), b.Value.Num()
	switch {
	case a.Form != Whole || b.Form != Whole:
		return harder(a), b
	case y > 2 && x > 0 && x%y == 0: // now with something left over
		return Int(x + 2), b
	}
	return Int(x + y), b
}

// harderFractions keeps equal denominators equal, and the first fraction the
// larger where the second is taken away.
func harderFractions(op Op, x, y fraction.Fraction) (Number, Number) {
	same := x.Den() == y.Den()
	switch {
	case !same && powerOfTen(x.Den()) && powerOfTen(y.Den()): // tenths stay tenths
		return Frac(fraction.Must(x.Num()+1, x.Den())), Frac(fraction.Must(y.Num()+1, y.Den()))
	case op == Add && same && x.Num()+1 < x.Den() && y.Num()+1 < y.Den():
		return Frac(fraction.Must(x.Num()+1, x.Den())), Frac(fraction.Must(y.Num()+1, y.Den()))
	case same:
		return Frac(fraction.Must(x.Num(), x.Den()+1)), Frac(fraction.Must(y.Num(), y.Den()+1))
	}
	return Frac(fraction.Must(x.Num()+1, x.Den()+1)), Frac(fraction.Must(y.Num(), y.Den()+1))
}

// nextStatement is the next claim, comparison, equation or longer expression.
func nextStatement(p Problem) (Problem, bool) {
	a, okA := p.Left.(Number)
	b, okB := p.Right.(Number)
	if okA && okB {
		next := p
		next.Left, next.Right = harder(a), harder(b)
		if y := b.Value; inParts(b) && y.Num() > 0 && a.Value.Equal(y) { // equal again, in more parts
			g := fraction.GCD(y.Num(), y.Den())
			next.Left, next.Right = a, Frac(fraction.Must(y.Num()+y.Num()/g, y.Den()+y.Den()/g))
		}
		return next, true
	}
	next := p
	if p.Kind == Missing {
		return nextMissing(p)
	}
	next.Left = grown(p.Left)
	if p.Right != nil {
		next.Right = grown(p.Right)
	}
	return next, true
}

// grown makes every number of an expression 1 more, or a part finer.
func grown(e Expr) Expr {
	switch e := e.(type) {
	case Operation:
		return Operation{Op: e.Op, Left: grown(e.Left), Right: grown(e.Right)}
	case Number:
		if e.Form == Whole {
			return Int(e.Value.Num() + 1)
		}
		return harder(e)
	}
	return e
}

// nextMissing has the same known number and a blank that is larger.
func nextMissing(p Problem) (Problem, bool) {
	next := p
	o, left := p.Left.(Operation)
	total, okTotal := p.Right.(Number)
	if !left {
		o, _ = p.Right.(Operation)
		total, okTotal = p.Left.(Number)
	}
	known, first := o.Left.(Number)
	if !first {
		known, _ = o.Right.(Number)
	}
	if !okTotal || known.Form != Whole || total.Form != Whole {
		return p, false
	}
	k, t := known.Value.Num(), total.Value.Num()
	switch {
	case o.Op == Multiply:
		t += k
	case o.Op == Divide && first: // k ÷ ? = t
		k += t
	case o.Op == Subtract && first: // k − ? = t
		k += 2
	default:
		t += 2
	}
	changed := Operation{Op: o.Op, Left: Unknown{}, Right: Int(k)}
	if first {
		changed = Operation{Op: o.Op, Left: Int(k), Right: Unknown{}}
	}
	if next.Left, next.Right = changed, Int(t); !left {
		next.Left, next.Right = Int(t), changed
	}
	return next, true
}
