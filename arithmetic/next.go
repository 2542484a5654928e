package arithmetic

import "modeler/fraction"

// Next is a problem of the same kind with numbers of the same type, a small step
// harder where there is an easy way to say what that is. ok is false when there
// is none. It may be one that cannot be shown.
func Next(p Problem) (next Problem, ok bool) {
	next = p
	switch p.Kind {
	case Ordering:
		last := p.List[len(p.List)-1]
		next.List = append(append([]Number{}, p.List...), harder(last))
		return next, true
	case Renaming:
		n, _ := p.Left.(Number)
		if p.Blank.Num > 0 {
			next.Blank.Num += n.Value.Num()
		} else {
			next.Blank.Den += n.Value.Den()
		}
		return next, n.Value.Num() > 0
	case Show, Rounding, Factors, MixedForm, FractionForm, SimplestForm:
		n, _ := p.Left.(Number)
		next.Left = harderOf(p.Kind, n)
		return next, true
	}
	if a, b, two := p.Operands(); two && p.Right == nil {
		o := p.Left.(Operation)
		a, b = harderPair(o.Op, a, b)
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

// step is by how much a number of that size grows.
func step(n int64) int64 {
	switch {
	case n < 20:
		return 2
	case n < 100:
		return 14
	case n < 1000:
		return 127
	}
	return n / 8
}

// harder is a number of the same type, larger or with one part more.
func harder(n Number) Number {
	v := n.Value
	switch n.Form {
	case Common:
		return Frac(fraction.Must(v.Num()+1, v.Den()+1))
	case Mixed:
		wholes, part := v.Mixed()
		if f, err := fraction.FromMixed(wholes, fraction.Must(part.Num()+1, part.Den()+1)); err == nil {
			return AsMixed(f)
		}
		return n
	case Decimal, Money:
		m := InPlaces(v.Num()+step(v.Num()), n.Places)
		if n.Places == 0 {
			m = Number{Value: fraction.Whole(v.Num() + step(v.Num()))}
		}
		m.Form = n.Form
		return m
	}
	return Int(v.Num() + step(v.Num()))
}

// harderPair is the next two numbers for a sign. What is taken away stays less
// than what it is taken from.
func harderPair(op Op, a, b Number) (Number, Number) {
	whole := a.Form == Whole && b.Form == Whole
	common := a.Form == Common && b.Form == Common
	same := common && a.Value.Den() == b.Value.Den()
	x, y := a.Value, b.Value
	switch {
	case op == Multiply && whole:
		return a, Int(y.Num() + 1)
	case op == Divide && whole && y.Num() > 2 && x.Num()%y.Num() == 0: // now with something left over
		return Int(x.Num() + 2), b
	case op == Divide && whole:
		return Int(x.Num() + y.Num()), b
	case op == Of && inParts(a) && x.Num()+1 < x.Den():
		return Frac(fraction.Must(x.Num()+1, x.Den())), b
	case op == Of && inParts(a):
		return a, Int(y.Num() + x.Den())
	case op == Add && same:
		return Frac(fraction.Must(x.Num()+1, x.Den())), Frac(fraction.Must(y.Num()+1, y.Den()))
	case op == Subtract && same:
		return Frac(fraction.Must(x.Num()+1, x.Den())), b
	case op == Subtract && common: // one fraction nearer to 1, the other smaller
		return harder(a), Frac(fraction.Must(y.Num(), y.Den()+1))
	case op == Subtract:
		return harder(harder(a)), harder(b)
	case op == Multiply || op == Divide:
		return harder(a), b
	}
	return harder(a), harder(b)
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
		k += step(k)
	default:
		t += step(t)
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
