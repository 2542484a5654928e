package reading

import "modeler/arithmetic"

// list reads expressions with commas, semicolons or words between them.
func (p *parser) list() ([]piece, *fault) {
	p.listing = true
	var all []piece
	for p.at(0).text == ":" || p.at(0).kind == separator {
		p.i++
	}
	for {
		c, f := p.expression(1)
		if f != nil {
			return nil, f
		}
		if c.unknowns > 0 {
			return nil, unknownInList(p, c)
		}
		all = append(all, c)
		here := p.i
		for p.at(0).kind == separator {
			p.i++
		}
		if p.directed() {
			return all, nil
		}
		p.any(between)
		if p.at(0).kind == blank && !p.isQuestionMark() {
			p.i++
		}
		if p.i == here && p.at(0).kind != number { // a space alone also stands between two numbers
			return all, nil
		}
	}
}

// directed reports whether the words for a direction come next.
func (p *parser) directed() bool {
	here := p.i
	defer func() { p.i = here }()
	return p.any(upward) || p.any(downward)
}

// compared reads the other side of a comparison.
func (p *parser) compared(left piece) (Reading, *fault) {
	right, f := p.expression(1)
	if f != nil {
		return Reading{}, f
	}
	if r, f, ok := p.closerOf([]piece{left, right}); ok {
		return r, f
	}
	if _, n := p.relation(); n > 0 {
		return Reading{}, blankSign(p, left, right)
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	return p.comparison(left, right)
}

func (p *parser) comparison(left, right piece) (Reading, *fault) {
	for _, c := range []piece{left, right} {
		if c.unknowns > 0 {
			return Reading{}, unknownInList(p, c)
		}
	}
	problem := arithmetic.Problem{Kind: arithmetic.Comparison, Left: left.expr, Right: right.expr}
	return Reading{Problem: problem, Spans: append(left.spans, right.spans...)}, nil
}

// choice reads the numbers to compare; more than two are put in order, and so is
// the list of which the end is asked.
func (p *parser) choice(ends bool) (Reading, *fault) {
	all, f := p.list()
	if f != nil {
		return Reading{}, f
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	if len(all) == 2 {
		return p.comparison(all[0], all[1])
	}
	if len(all) == 1 && !ends {
		return Reading{}, compareWithWhat(p, all[0])
	}
	return p.ordering(all)
}

func (p *parser) order() (Reading, *fault) {
	here := p.i
	if p.any(downward) {
		return Reading{}, orderDown(p, p.i-here)
	}
	p.any(upward)
	all, f := p.list()
	if f != nil {
		return Reading{}, f
	}
	here = p.i
	if p.any(downward) {
		return Reading{}, orderDown(p, p.i-here)
	}
	p.any(upward)
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	if len(all) == 1 && all[0].isOperation() { // put 12 in groups of 3
		return p.alone(all[0])
	}
	return p.ordering(all)
}

func (p *parser) ordering(all []piece) (Reading, *fault) {
	if len(all) < 2 {
		return Reading{}, shortList(p, all[0])
	}
	if len(all) > MaxList {
		return Reading{}, longList(p, all)
	}
	r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.Ordering}}
	for _, c := range all {
		n, ok := c.expr.(arithmetic.Number)
		if !ok {
			return Reading{}, oneNumber(p, c)
		}
		r.Problem.List = append(r.Problem.List, n)
		r.Spans = append(r.Spans, c.spans...)
	}
	return r, nil
}

// bothMake reads the end of 5 and 5 make 10; at is where "and" stands.
func (p *parser) bothMake(left piece, at int) (Reading, *fault, bool) {
	here, count := p.i, p.count
	right, f := p.operand()
	if f == nil && p.longestOf([]string{"make", "makes", "is", "give", "gives"}) > 0 && !p.asked {
		if left, f = p.join(left, plus, right, at); f == nil {
			r, f := p.statement(left)
			return r, f, true
		}
	}
	p.i, p.count = here, count
	return Reading{}, nil, false
}

// bothEqual reads the end of "are 3/4 and 6/8 equal".
func (p *parser) bothEqual(left piece) (Reading, *fault) {
	right, f := p.expression(1)
	if f != nil {
		return Reading{}, f
	}
	if p.at(0).kind == end {
		return Reading{}, twoNumbers(p, left, right)
	}
	if !p.asked || !p.any([]string{"equal", "same", "equivalent"}) {
		return Reading{}, p.leftover()
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	for _, c := range []piece{left, right} {
		if c.unknowns > 0 {
			return Reading{}, unknownInList(p, c)
		}
	}
	problem := arithmetic.Problem{Kind: arithmetic.Claim, Left: left.expr, Rel: arithmetic.Equal, Right: right.expr}
	return Reading{Problem: problem, Spans: append(left.spans, right.spans...)}, nil
}
