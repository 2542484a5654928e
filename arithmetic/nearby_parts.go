package arithmetic

import "modeler/fraction"

// nearParts is [Nearby] for the problems about fractions in other forms, shapes and
// coins, and for percents.
func nearParts(p Problem) []Problem {
	n, ok := p.Left.(Number)
	with := func(n Number) Problem {
		q := p
		q.Left = n
		return q
	}
	var near []Problem
	switch p.Kind {
	case ShapePart, AsSum, EqualNames:
		near = nearFewerParts(p)
	case Closer:
		m, two := p.Right.(Number)
		if ok && two {
			for _, easy := range []fraction.Fraction{fraction.Must(3, 4), fraction.Must(1, 2)} {
				q := with(Frac(easy))
				q.Right = Frac(fraction.Must(5, 8))
				near = append(near, q)
			}
			near = append(near, Problem{Kind: Comparison, Left: n, Right: m})
		}
	case DecimalForm, PercentForm:
		if ok && n.Value.Sign() > 0 { // the same number of parts of those that have a decimal
			for _, den := range []int64{4, 10, 5, 8, 100} {
				if num := n.Value.Num(); num < den && n.Value.Den() != den {
					near = append(near, with(Frac(fraction.Must(num, den))))
				}
			}
			near = append(near, with(Frac(fraction.Must(1, 4))))
		}
	case Coins:
		if v := n.Value; ok && v.Num() > 99 {
			near = append(near, with(withUnits(Coin(1).Money(), max(v.Num()%v.Den(), 1))))
		}
		near = append(near, with(withUnits(Coin(1).Money(), 68)))
	case CoinsWorth:
		for most := len(p.List) / 2; most > 0; most /= 2 {
			q := p
			q.List = p.List[:most]
			near = append(near, q)
		}
	case Show, FractionForm:
		if full := 100 * Power10(n.Places); ok && n.Form == Percent && n.Value.Num() > full {
			near = append(near, with(InPercent(max(n.Value.Num()%full, full/100), n.Places)), with(InPercent(150, 0)))
		}
		if ok && n.Form == Percent {
			near = append(near, with(Frac(n.Value)), with(Frac(n.Value.Simplest())))
		}
	case Rounding:
		if ok && p.Places > 0 { // to a place that it has, or to a whole one
			for _, places := range []int{p.Places, 1, 0} {
				q := p
				if q.Places = places; places == 0 {
					q.To = 1
				}
				near = append(near, q)
				if n.Form == Decimal && n.Places > 3 {
					q.Left = InPlaces(n.Value.Num()/Power10(n.Places-3), 3)
					near = append(near, q)
				}
			}
		}
	case Claim, Comparison, Addition, Subtraction:
		if q, changed := inFractions(p); changed {
			near = append(near, q)
		}
	}
	switch p.Kind {
	case ShapePart, AsSum, EqualNames, DecimalForm, PercentForm:
		if ok {
			near = append(near, Problem{Kind: Show, Left: n}, Problem{Kind: Show, Left: Frac(fraction.Must(3, 4))})
		}
	}
	return near
}

// nearFewerParts asks the same of fractions with fewer parts.
func nearFewerParts(p Problem) []Problem {
	n, ok := p.Left.(Number)
	if !ok {
		return nil
	}
	var near []Problem
	simple := n.Value.Simplest()
	if simple != n.Value {
		near = append(near, Problem{Kind: p.Kind, Shape: p.Shape, Left: Frac(simple)})
	}
	for _, den := range []int64{4, 3, 2, 6, 8} {
		if den != simple.Den() {
			near = append(near, Problem{Kind: p.Kind, Shape: p.Shape, Left: Frac(fraction.Must(den-1, den))})
		}
	}
	return near
}

// inFractions is a problem with its percents written as fractions.
func inFractions(p Problem) (q Problem, changed bool) {
	var walk func(Expr) Expr
	walk = func(e Expr) Expr {
		switch e := e.(type) {
		case Number:
			if e.Form == Percent {
				changed = true
				return Frac(e.Value.Simplest())
			}
		case Operation:
			return Operation{Op: e.Op, Left: walk(e.Left), Right: walk(e.Right)}
		}
		return e
	}
	q = p
	q.Left, q.Right = walk(p.Left), walk(p.Right)
	return q, changed
}
