package arithmetic

// nearAsked is [Nearby] for the problems that ask something of a number or of a
// row of numbers: the same asked of smaller numbers, or of fewer.
func nearAsked(p Problem) []Problem {
	switch p.Kind {
	case PlaceValue, ExpandedForm, InWords:
		return withoutFirstDigits(p)
	case Parity, WaysToMake, Primality, Multiples:
		return smaller(p, 1)
	case CommonMultiples, CommonFactors:
		var near []Problem
		for divisor := int64(10); divisor <= MaxPlaced; divisor *= 10 {
			if q, ok := divided(p, divisor); ok {
				near = append(near, q)
			}
		}
		return near
	case Counting:
		return nearRuns(p)
	case RuleTable:
		return nearTables(p)
	case Estimate, FactFamily:
		return nearFacts(p)
	}
	return nil
}

// withoutFirstDigits leaves the first digits of a number out, one after the other.
func withoutFirstDigits(p Problem) []Problem {
	n, ok := wholeNumber(p.Left)
	if d, is := p.Left.(Number); is && d.Form == Decimal {
		return withoutLastPlaces(p, d)
	}
	var near []Problem
	for power := int64(1_000_000); ok && power > max(p.To, 1); power /= 10 {
		if rest := n % power; rest < n && rest >= max(p.To, 1) {
			q := p
			q.Left = Int(rest)
			near = append(near, q)
		}
	}
	return near
}

// withoutLastPlaces leaves the last places of a decimal out, one after the other, and
// then its wholes.
func withoutLastPlaces(p Problem, n Number) []Problem {
	var near []Problem
	units := n.Value.Num()
	for places := n.Places; places > 0; places-- {
		for _, value := range []int64{units, units % Power10(places)} {
			q := p
			q.Left = InPlaces(value, places)
			if q.Places <= places && (p.To <= 1 || p.To <= value/Power10(places)) && q.Left != p.Left {
				near = append(near, q)
			}
		}
		units /= 10
	}
	return near
}

// smaller asks the same of a number with its last digits left out.
func smaller(p Problem, least int64) []Problem {
	n, ok := wholeNumber(p.Left)
	var near []Problem
	for n /= 10; ok && n >= least; n /= 10 {
		q := p
		q.Left = Int(n)
		near = append(near, q)
	}
	return near
}

// divided asks the same of two numbers, both made smaller.
func divided(p Problem, divisor int64) (Problem, bool) {
	a, okA := wholeNumber(p.Left)
	b, okB := wholeNumber(p.Right)
	q := p
	q.Left, q.Right = Int(max(a/divisor, 2)), Int(max(b/divisor, 2))
	return q, okA && okB && max(a, b) >= divisor
}

func nearRuns(p Problem) []Problem {
	var near []Problem
	for terms := p.Run.Terms / 2; terms > 1; terms /= 2 {
		q := p
		q.Run.Terms = terms
		near = append(near, q)
	}
	q := p
	if parts := p.Run.Parts; parts > 1 { // fourths from 0
		q.Run = Run{By: 1, Op: Add, Terms: 5, Parts: min(parts, 4)}
		return append(near, q)
	}
	q.Run = Run{From: p.Run.From % 10, By: max(p.Run.By%10, 2), Op: p.Run.Op, Terms: 6}
	if q.Run.Op == Subtract {
		q.Run.From += q.Run.By * 6
	}
	if q.Run.Op == Multiply {
		q.Run.From, q.Run.By, q.Run.Terms = max(q.Run.From, 1), 2, 5
	}
	return append(near, q)
}

func nearTables(p Problem) []Problem {
	fits := p
	fits.List = nil
	for _, n := range p.List { // the numbers that the rule can be done to
		if check(Operation{p.Run.Op, n, Int(p.Run.By)}) == nil {
			fits.List = append(fits.List, n)
		}
	}
	var near []Problem
	if n := len(fits.List); n > 0 && n < len(p.List) {
		near = append(near, fits)
	}
	easy := p
	easy.Run.By, easy.List = 1+p.Run.By%9, nil
	for i := range int64(4) {
		n := i + 1
		if p.Run.Op == Subtract || p.Run.Op == Divide {
			n *= easy.Run.By
		}
		easy.List = append(easy.List, Int(n))
	}
	return append(near, easy)
}

// nearFacts makes the numbers of an estimate or a fact family smaller.
func nearFacts(p Problem) []Problem {
	o, _ := p.Left.(Operation)
	a, okA := wholeNumber(o.Left)
	b, okB := wholeNumber(o.Right)
	if !okA || !okB {
		return nil
	}
	var near []Problem
	if o.Op == Subtract && a < b {
		a, b = b, a
		near = append(near, aboutPair(p, o.Op, a, b))
	}
	for a, b = a/10, b/10; a > 0 || b > 0; a, b = a/10, b/10 {
		near = append(near, aboutPair(p, o.Op, max(a, 1), max(b, 1)))
	}
	if p.Kind == Estimate { // by an easier sign
		q := aboutPair(p, Add, 398, 217)
		q.To = 100
		near = append(near, q)
	}
	return near
}

// aboutPair is p about other numbers. An estimate rounds no further than they reach.
func aboutPair(p Problem, op Op, a, b int64) Problem {
	q := p
	q.Left = Operation{Op: op, Left: Int(a), Right: Int(b)}
	for q.Kind == Estimate && q.To > 10 && q.To > min(a, b) {
		q.To /= 10
	}
	return q
}

// nearRest says what to do with what is left over of a division in another way, or
// takes numbers with which it comes out.
func nearRest(p Problem, a, b Number) []Problem {
	x, y := a.Value.Num(), b.Value.Num()
	if p.Kind != Division || y == 0 || a.Form != Whole || b.Form != Whole {
		return nil
	}
	of := func(x, y int64, rest Rest) Problem {
		q := p
		q.Rest, q.Left = rest, Operation{Op: Divide, Left: Int(x), Right: Int(y)}
		return q
	}
	switch {
	case p.Story == TimesAsMany && x%y != 0:
		return []Problem{of(max(x-x%y, 2*y), y, LeftOver)}
	case p.Rest != LeftOver:
		return []Problem{of(x, y, AsPart), of(x, y, LeftOver), of(max(x/y, 1)*4+2, 4, p.Rest)}
	}
	return nil
}
