package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// fits reports whether two whole numbers can stand above and below a bar.
func fits(a, b arithmetic.Number) bool {
	d, _ := b.Int64()
	return a.Form == arithmetic.Whole && b.Form == arithmetic.Whole && d > 0 && d <= MaxParts
}

func over(a, b arithmetic.Number) arithmetic.Number {
	n, _ := a.Int64()
	d, _ := b.Int64()
	return arithmetic.Frac(fraction.Must(n, d))
}

// command reads a problem that starts with what to do; ok is false when the text
// does not start so.
func (p *parser) command() (r Reading, f *fault, ok bool) {
	p.asked = p.asked || p.claims()
	if ends, n := longest(p, choosing); n > 0 {
		p.i += n
		r, f = p.choice(ends)
		return r, f, true
	}
	if list, n := longest(p, pairs); n > 0 {
		p.i += n
		r, f = p.pair(list)
		return r, f, true
	}
	if times, n := longest(p, multiples); n > 0 {
		r, f = p.multiple(times, n)
		return r, f, true
	}
	if p.match("how many") > 0 {
		if r, f, ok := p.howMany(); ok {
			return r, f, true
		}
	}
	for _, c := range []struct {
		start []string
		read  func() (Reading, *fault)
	}{
		{[]string{"compare"}, func() (Reading, *fault) { return p.choice(false) }},
		{[]string{"round", "round off"}, p.round},
		{factoring, p.factors},
		{ordering, p.order},
		{simplest, p.simplified},
		{[]string{"halve"}, p.halved},
	} {
		if p.any(c.start) {
			r, f = c.read()
			return r, f, true
		}
	}
	if p.match("half") == 1 && (p.at(1).kind == number || p.halfAsMany()) { // half 12, half as many as 12
		p.i++
		p.any(asMany)
		r, f = p.halved()
		return r, f, true
	}
	return r, nil, false
}

// claims reports whether a text without a sign of relation has "is" or "are" in
// the middle, which make "more than" a relation.
func (p *parser) claims() bool {
	for _, t := range p.tokens[p.i:] {
		if t.kind == word && (t.text == "is" || t.text == "are") {
			return true
		}
	}
	return false
}

// pair reads two numbers with a word between them, and what is said of them.
func (p *parser) pair(list []pair) (Reading, *fault) {
	both, f := p.paired(list)
	if f != nil {
		return Reading{}, f
	}
	return p.statement(both)
}

func (p *parser) paired(list []pair) (piece, *fault) {
	p.listing = true
	left, f := p.operand()
	if f != nil {
		return left, f
	}
	var found *pair
	n := 0
	for i := range list {
		if m := p.match(list[i].between); m > n {
			found, n = &list[i], m
		}
	}
	if found == nil {
		return left, p.leftover()
	}
	at := p.i
	p.i += n
	right, f := p.operand()
	if f != nil {
		return right, f
	}
	s := found.sign
	a, okA := left.expr.(arithmetic.Number)
	b, okB := right.expr.(arithmetic.Number)
	s.turned = s.turned || found.larger && okA && okB && a.Value.Cmp(b.Value) < 0
	return p.join(left, s, right, at)
}

// multiple reads double 6 as 2 × 6, and twice as many as 6 with its story.
func (p *parser) multiple(factor int64, n int) (Reading, *fault) {
	name := p.at(0)
	name.num = arithmetic.Int(factor)
	at := p.i
	p.i += n
	left, f := p.counted(name)
	if f != nil {
		return Reading{}, f
	}
	by := times
	if p.any(asMany) {
		by.story = arithmetic.TimesAsMany
	}
	right, f := p.operand()
	if f != nil {
		return Reading{}, f
	}
	both, f := p.join(left, by, right, at)
	if f != nil {
		return Reading{}, f
	}
	return p.statement(both)
}

// halfAsMany reports whether "as many as" stands behind the next word.
func (p *parser) halfAsMany() bool {
	p.i++
	defer func() { p.i-- }()
	return p.longestOf(asMany) > 0
}

// halved reads halve 12 as half of 12.
func (p *parser) halved() (Reading, *fault) {
	at := p.i - 1
	for p.tokens[at].text != "half" && p.tokens[at].text != "halve" {
		at--
	}
	left, f := p.counted(fractionToken(p.tokens[at], 1, 2, p.tokens[at].end))
	if f != nil {
		return Reading{}, f
	}
	right, f := p.operand()
	if f != nil {
		return Reading{}, f
	}
	both, f := p.join(left, partOf, right, at)
	if f != nil {
		return Reading{}, f
	}
	return p.statement(both)
}

// one reads a number on its own.
func (p *parser) one() (piece, arithmetic.Number, *fault) {
	c, f := p.expression(1)
	if f != nil {
		return c, arithmetic.Number{}, f
	}
	n, ok := c.expr.(arithmetic.Number)
	if !ok {
		return c, n, oneNumber(p, c)
	}
	return c, n, nil
}

func (p *parser) factors() (Reading, *fault) {
	start := p.i
	c, n, f := p.one()
	if f != nil {
		return Reading{}, f
	}
	if n.Form != arithmetic.Whole || n.Value.Sign() == 0 {
		return Reading{}, noFactors(p, c)
	}
	if p.at(0).text == "and" { // factors of 12 and 18
		p.i, p.count = start, p.count-1
		return p.common(arithmetic.CommonFactors)
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	return Reading{Problem: arithmetic.Problem{Kind: arithmetic.Factors, Left: n}, Spans: c.spans}, nil
}
