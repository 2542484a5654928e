package arithmetic

import (
	"slices"

	"modeler/fraction"
)

// Nearby lists problems of the kind of p, or parts of it, that are easier to
// show, the nearest first: 2/3 = 4/? for 2/3 = 5/?. Any of them may itself have
// no answer that can be shown.
func Nearby(p Problem) []Problem {
	var near []Problem
	switch p.Kind {
	case Ordering:
		for n := len(p.List) - 1; n > 1; n-- {
			near = append(near, Problem{Kind: Ordering, List: p.List[:n]})
		}
		return near
	case Missing:
		near = nearMissing(p)
	case Renaming:
		near = nearRenaming(p)
	case Factors, Rounding, Show, MixedForm, FractionForm, SimplestForm:
		if n, ok := p.Left.(Number); ok {
			near = nearNumber(p, n)
		}
	case Addition, Subtraction, Product, Division, PartOf:
		if a, b, ok := p.Operands(); ok {
			near = append(nearRest(p, a, b), nearOperation(p, a, b)...)
		}
	}
	if p.Kind.asksOfNumbers() {
		return nearAsked(p)
	}
	near = append(near, nearParts(p)...)
	for _, part := range PartsOf(p) {
		if part.Kind != p.Kind {
			near = append(near, part)
		}
	}
	for _, side := range []Expr{p.Left, p.Right} {
		if n, ok := side.(Number); ok && p.Right != nil {
			near = append(near, Problem{Kind: Show, Left: n})
		}
	}
	return near
}

// ask is the problem of one operation on two numbers.
func ask(op Op, a, b Number) Problem {
	return Problem{Kind: KindOf(op), Left: Operation{Op: op, Left: a, Right: b}}
}

func nearOperation(p Problem, a, b Number) []Problem {
	o, _ := p.Left.(Operation)
	den := b.Value.Den()
	wholes := func() Problem {
		near := ask(o.Op, Int(atLeastOne(a)), Int(atLeastOne(b)))
		near.Grouping, near.Rest, near.Story = p.Grouping, p.Rest, p.Story
		return near
	}
	switch {
	case o.Op == Subtract && a.Value.Cmp(b.Value) < 0:
		turned := ask(Subtract, b, a)
		turned.Story = p.Story
		return []Problem{turned}
	case o.Op == Add || o.Op == Subtract:
		if short, ok := shortened(a, b); ok {
			return []Problem{ask(o.Op, short[0], short[1])}
		}
	case o.Op == Of:
		return nearPartOf(a, b)
	case o.Op == Multiply && inParts(a) && inParts(b):
		return nearPartOf(a, b)
	case o.Op == Multiply && inParts(b): // so many times a fraction
		return []Problem{ask(Add, b, b)}
	case o.Op == Multiply && inParts(a):
		return []Problem{ask(Add, a, a)}
	case o.Op == Divide && inParts(b) && b.Value.Num() == 1 && a.Form == Whole: // how many fifths are in 4
		return []Problem{{Kind: Renaming, Left: a, Blank: Blank{Den: den}}}
	case o.Op == Divide && b.Value.Sign() == 0:
		near := ask(Divide, a, Int(1))
		near.Grouping, near.Rest, near.Story = p.Grouping, p.Rest, p.Story
		return []Problem{near}
	case o.Op == Divide && !inParts(a) && !inParts(b), o.Op == Multiply:
		return []Problem{wholes()}
	}
	return nil
}

func inParts(n Number) bool { return n.Form == Common || n.Form == Mixed }

// atLeastOne is the wholes of a number, or 1 when it has none.
func atLeastOne(n Number) int64 { return max(1, n.Value.Num()/n.Value.Den()) }

// shortened leaves two digits after the point of decimals that have more.
func shortened(a, b Number) (short [2]Number, changed bool) {
	for i, n := range []Number{a, b} {
		if n.Form == Decimal && n.Places > 2 {
			n, changed = InPlaces(n.Value.Num()/Power10(n.Places-2), 2), true
		}
		short[i] = n
	}
	return short, changed
}

// nearPartOf takes the part of an amount that can be cut in so many parts.
func nearPartOf(part, amount Number) []Problem {
	if part.Form == Percent { // 1/2 of 12 for 50% of 12
		part = Frac(part.Value.Simplest())
		return append([]Problem{ask(Of, part, amount)}, nearPartOf(part, amount)...)
	}
	den := part.Value.Den()
	if !inParts(part) || den == 1 {
		return nil
	}
	times := max(1, (atLeastOne(amount)+den-1)/den)
	if amount.Value.Sign() == 0 || amount.Form != Whole {
		times = 4
	}
	near := []Problem{ask(Of, part, Int(times*den))}
	if part.Value.Num() > den {
		near = append(near, ask(Of, Frac(fraction.Must(1, den)), Int(times*den)))
	}
	return near
}

// nearNumber changes the number that a problem is about.
func nearNumber(p Problem, n Number) []Problem {
	v := n.Value
	with := func(n Number) Problem {
		q := p
		q.Left = n
		return q
	}
	switch {
	case p.Kind == Factors:
		var near []Problem
		for size := v.Num() / 10; size > 1; size /= 10 {
			near = append(near, with(Int(size)))
		}
		return near
	case p.Kind == MixedForm && n.Form == Common: // a whole more
		return []Problem{with(Frac(fraction.Must(v.Num()+v.Den(), v.Den())))}
	case p.Kind == FractionForm && n.Form == Common && v.Den() > 1:
		return []Problem{with(AsMixed(fraction.Must(v.Num()%v.Den()+v.Den(), v.Den())))}
	case p.Kind == SimplestForm && inParts(n):
		if twice, err := v.CutFiner(2); err == nil && v.Num() < v.Den() {
			return []Problem{with(Frac(twice))}
		}
	case n.Form == Decimal && n.Places > 2:
		return []Problem{with(InPlaces(v.Num()/Power10(n.Places-2), 2))}
	case n.Form == Decimal || n.Form == Money || n.Form == Mixed:
		return []Problem{with(Int(atLeastOne(n)))}
	}
	return nil
}

// nearRenaming makes every part of the fraction two, so that the blank has a
// whole number.
func nearRenaming(p Problem) []Problem {
	n, ok := p.Left.(Number)
	if !ok || n.Value.Sign() == 0 {
		return nil
	}
	twice := Blank{First: p.Blank.First, Num: 2 * n.Value.Num()}
	if p.Blank.Num == 0 {
		twice = Blank{First: p.Blank.First, Den: 2 * n.Value.Den()}
	}
	return []Problem{{Kind: Renaming, Left: n, Blank: twice}}
}

// nearMissing gives an equation a total that its blank can reach.
func nearMissing(p Problem) []Problem {
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
	if !okTotal || known.Form != total.Form {
		return nil
	}
	with := func(known, total Number) Problem {
		changed := Operation{Op: o.Op, Left: Unknown{}, Right: known}
		if first {
			changed = Operation{Op: o.Op, Left: known, Right: Unknown{}}
		}
		q := p
		if q.Left, q.Right = changed, total; !left {
			q.Left, q.Right = total, changed
		}
		return q
	}
	k, _ := known.Int64()
	t, _ := total.Int64()
	switch {
	case o.Op == Add && known.Form == Whole:
		return []Problem{with(known, Int(k+5))}
	case o.Op == Add, o.Op == Subtract && first:
		return []Problem{with(total, known)}
	case o.Op == Multiply && known.Form == Whole && k > 0:
		return []Problem{with(known, Int(k*max(1, t/k))), with(known, Int(3*k))}
	case o.Op == Divide && first && known.Form == Whole && t > 0:
		return []Problem{with(Int(t*max(1, k/t)), total), with(Int(3*t), total)}
	}
	return nil
}

// numbersOf are the numbers of a problem in the order in which it is written.
func numbersOf(p Problem) []Number {
	var list []Number
	var walk func(Expr)
	walk = func(e Expr) {
		switch e := e.(type) {
		case Number:
			list = append(list, e)
		case Operation:
			walk(e.Left)
			walk(e.Right)
		}
	}
	walk(p.Left)
	walk(p.Right)
	return append(list, p.List...)
}

// Alike reports whether two problems ask the same kind of thing of numbers that
// are written alike: both of fractions, say.
func Alike(p, q Problem) bool {
	forms := func(p Problem) []Form {
		var list []Form
		for _, n := range numbersOf(p) {
			form := n.Form
			if form == Mixed {
				form = Common
			}
			if !slices.Contains(list, form) {
				list = append(list, form)
			}
		}
		slices.Sort(list)
		return list
	}
	return p.Kind == q.Kind && slices.Equal(forms(p), forms(q))
}
