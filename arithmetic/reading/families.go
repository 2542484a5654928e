package reading

import "modeler/arithmetic"

var (
	familyOpeners = []string{"fact family", "fact family of", "fact family for", "number family", "number family of", "number family for",
		"family of facts for", "fact families for", "related facts", "related facts for", "related facts of", "facts for", "number facts for", "four facts for"}
	estimateOpeners = []string{"estimate", "estimate of", "estimate for", "about how much is", "about how many is", "about how many are", "about what is", "about",
		"roughly", "roughly how much is", "approximately", "is about", "estimate answer to"}
	estimateTo = []string{"to nearest", "rounded to nearest", "by rounding to nearest", "rounding to nearest", "rounding both to nearest"}
)

// estimating reads estimate 398 + 17 to the nearest 10.
func (p *parser) estimating() (Reading, *fault, bool) {
	if !p.any(estimateOpeners) {
		return Reading{}, nil, false
	}
	for p.at(0).kind == separator || p.at(0).text == ":" {
		p.i++
	}
	for p.any(openers) {
	}
	var c piece
	var f *fault
	if list, n := longest(p, pairs); n > 0 {
		p.i += n
		c, f = p.paired(list)
	} else {
		c, f = p.expression(1)
	}
	if f != nil {
		return Reading{}, f, true
	}
	o, is := c.expr.(arithmetic.Operation)
	a, okA := o.Left.(arithmetic.Number)
	b, okB := o.Right.(arithmetic.Number)
	if !is || !okA || !okB || o.Op == arithmetic.Of {
		return Reading{}, estimateOf(p, c), true
	}
	if a.Form != arithmetic.Whole || b.Form != arithmetic.Whole {
		return Reading{}, estimateWholes(p, c), true
	}
	r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.Estimate, Left: o, To: frontPlace(a, b)}, Spans: c.spans}
	at := p.at(0)
	if p.any(estimateTo) {
		to, f := p.place(at)
		if f != nil {
			return Reading{}, f, true
		}
		if to.To < 10 {
			return Reading{}, otherPlace(p, at), true
		}
		r.Problem.To = to.To
		r.Spans = append(r.Spans, to.span)
	}
	return r, p.finish(), true
}

// frontPlace is what two numbers are rounded to when nothing is said: the first
// place of the smaller one, so that neither is rounded to 0, and ten at least
// (common practice, no source).
func frontPlace(a, b arithmetic.Number) int64 {
	small := min(a.Value.Num(), b.Value.Num())
	if small == 0 {
		small = max(a.Value.Num(), b.Value.Num())
	}
	to := int64(10)
	for to*10 <= small && to < 1_000_000 {
		to *= 10
	}
	return to
}

// family reads the numbers of a fact family: 3 + 5, 3 and 5, or 3, 5 and 8.
func (p *parser) family() (Reading, *fault, bool) {
	if !p.any(familyOpeners) {
		return Reading{}, nil, false
	}
	all, f := p.list()
	if f != nil {
		return Reading{}, f, true
	}
	if t := p.at(0); len(all) == 1 && t.text == "=" && all[0].isOperation() { // 3 + 5 = 8
		p.i++
		total, n, f := p.one()
		if f != nil {
			return Reading{}, f, true
		}
		if v, err := arithmetic.Evaluate(all[0].expr); err != nil || !v.Equal(n.Value) {
			return Reading{}, noFamily(p, all[0], total), true
		}
	}
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	r, f := p.familyOf(all)
	return r, f, true
}

func (p *parser) familyOf(all []piece) (Reading, *fault) {
	r := Reading{}
	for _, c := range all {
		r.Spans = append(r.Spans, c.spans...)
	}
	var facts []arithmetic.Operation
	if o, is := all[0].expr.(arithmetic.Operation); is && len(all) == 1 {
		a, okA := o.Left.(arithmetic.Number)
		b, okB := o.Right.(arithmetic.Number)
		if !okA || !okB {
			return r, oneFact(p, all[0])
		}
		facts = factOf(o.Op, a, b)
	} else {
		var numbers []arithmetic.Number
		for _, c := range all {
			n, ok := c.expr.(arithmetic.Number)
			if !ok {
				return r, oneNumber(p, c)
			}
			numbers = append(numbers, n)
		}
		switch len(numbers) {
		case 1:
			return r, oneFact(p, all[0])
		case 2:
			facts = append(factOf(arithmetic.Add, numbers[0], numbers[1]), factOf(arithmetic.Multiply, numbers[0], numbers[1])...)
		case 3:
			facts = factsOfThree(numbers)
		default:
			return r, longFamily(p, all)
		}
	}
	for _, o := range facts {
		problem := arithmetic.Problem{Kind: arithmetic.FactFamily, Left: o}
		if r.Problem.Kind == "" {
			r.Problem = problem
		} else {
			r.Also = append(r.Also, problem)
		}
	}
	if r.Problem.Kind == "" {
		return r, noFamily(p, all[0], all[len(all)-1])
	}
	return r, nil
}

// factOf is the sum or product that says the same as one fact about whole numbers:
// 8 − 3 belongs to 5 + 3. Nothing when there is no such fact, and none with a
// factor 0, which cannot be divided by.
func factOf(op arithmetic.Op, a, b arithmetic.Number) []arithmetic.Operation {
	x, y := a.Value.Num(), b.Value.Num()
	if a.Form != arithmetic.Whole || b.Form != arithmetic.Whole {
		return nil
	}
	switch op {
	case arithmetic.Subtract:
		op, x = arithmetic.Add, x-y
	case arithmetic.Divide:
		if y == 0 || x%y != 0 {
			return nil
		}
		op, x = arithmetic.Multiply, x/y
	}
	if x < 0 || op == arithmetic.Multiply && (x == 0 || y == 0) || op == arithmetic.Of {
		return nil
	}
	return []arithmetic.Operation{{Op: op, Left: arithmetic.Int(x), Right: arithmetic.Int(y)}}
}

// factsOfThree are the sum and the product that make one of three numbers of the
// other two, in the order in which these are given.
func factsOfThree(n []arithmetic.Number) []arithmetic.Operation {
	most := 0
	for i := range n {
		if n[i].Value.Cmp(n[most].Value) >= 0 {
			most = i
		}
	}
	a, b, total := n[(most+1)%3], n[(most+2)%3], n[most]
	if most == 1 {
		a, b = b, a
	}
	var found []arithmetic.Operation
	for _, op := range []arithmetic.Op{arithmetic.Add, arithmetic.Multiply} {
		for _, o := range factOf(op, a, b) {
			if v, err := arithmetic.Evaluate(o); err == nil && v.Equal(total.Value) {
				found = append(found, o)
			}
		}
	}
	return found
}

// twoBlanks reads 5 = ? + ?, which asks for the ways to make 5, and 24 = ? × ?,
// which asks for the factors of 24.
func (p *parser) twoBlanks() (Reading, *fault, bool) {
	here := p.i
	sum := func() (infix, bool) {
		if p.at(0).kind != blank {
			return infix{}, false
		}
		p.i++
		s, n := p.sign()
		p.i += n
		if n == 0 || p.at(0).kind != blank {
			return infix{}, false
		}
		p.i++
		return s, s.story == arithmetic.NoStory && (s.op == arithmetic.Add || s.op == arithmetic.Multiply)
	}
	equal := func() bool {
		rel, n := p.relation()
		p.i += n
		return n > 0 && rel == arithmetic.Equal
	}
	total := func() (token, bool) {
		t := p.at(0)
		p.i++
		return t, t.kind == number && t.num.Form == arithmetic.Whole
	}
	s, ok := sum()
	var t token
	if ok && equal() {
		t, ok = total()
	} else {
		p.i = here
		if t, ok = total(); ok && equal() {
			s, ok = sum()
		} else {
			ok = false
		}
	}
	if !ok || p.finish() != nil || s.op == arithmetic.Multiply && t.num.Value.Sign() == 0 {
		p.i = here
		return Reading{}, nil, false
	}
	kind := arithmetic.WaysToMake
	if s.op == arithmetic.Multiply {
		kind = arithmetic.Factors
	}
	return Reading{Problem: arithmetic.Problem{Kind: kind, Left: t.num}, Spans: []Span{{Start: t.start, End: t.end}}}, nil, true
}
