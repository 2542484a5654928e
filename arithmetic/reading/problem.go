package reading

import "modeler/arithmetic"

// problem reads the whole text.
func (p *parser) problem() (Reading, *fault) {
	if p.at(0).kind == end {
		return Reading{}, nothing(p)
	}
	if f := p.checkWords(); f != nil {
		return Reading{}, f
	}
	p.openings()
	for _, read := range []func() (Reading, *fault, bool){p.coins, p.twoBlanks, p.askedFor, p.command, p.pattern} {
		if r, f, ok := read(); ok {
			return r, f
		}
	}
	left, f := p.side()
	if f != nil {
		return Reading{}, f
	}
	return p.statement(left)
}

// openings passes the words in front of a problem that do not change it.
func (p *parser) openings() {
	for {
		here := p.i
		p.listing = p.listing || p.match("are") > 0
		p.asked = p.any(askers) || p.asked
		if p.unknownFirst() {
			return
		}
		p.any(openers)
		if p.longestOf(changeOpeners) > 0 { // change is no order to rewrite here
			return
		}
		p.any(rewriters)
		for p.i > here && (p.at(0).text == ":" || p.at(0).kind == separator) {
			p.i++
		}
		if p.i == here {
			return
		}
	}
}

// unknownFirst reports whether the words for an unknown number and a sign come
// next: what plus 7 is 10.
func (p *parser) unknownFirst() bool {
	n := p.longestOf(unknownWords)
	here := p.i
	defer func() { p.i = here }()
	p.i += n
	_, m := p.sign()
	return n > 0 && m > 0
}

// side is one side of a statement: an expression, or a fraction with a blank in
// it, for which expr is nil.
func (p *parser) side() (piece, *fault) {
	t := p.at(0)
	if t.kind != blankPart {
		return p.expression(1)
	}
	if _, n := signAfter(p); n > 0 {
		return piece{}, blankInside(p, t)
	}
	p.i++
	p.count++
	return piece{spans: []Span{{Start: t.start, End: t.end}}, start: t.start, end: t.end}, nil
}

// signAfter is the sign behind the next token.
func signAfter(p *parser) (infix, int) {
	p.i++
	defer func() { p.i-- }()
	return p.sign()
}

// statement reads what follows the first side: nothing, a relation and the other
// side, a sign that asks for a comparison, or words that ask for another form.
func (p *parser) statement(left piece) (Reading, *fault) {
	left, f := p.then(left)
	if f != nil {
		return Reading{}, f
	}
	for _, read := range []func(piece) (Reading, *fault, bool){p.property, p.shaped} {
		if r, f, ok := read(left); ok {
			return r, f
		}
	}
	p.any(inDigits)
	if p.isQuestionMark() || p.at(0).kind == end || p.at(0).kind == stop {
		if f := p.finish(); f != nil {
			return Reading{}, f
		}
		return p.alone(left)
	}
	rel, n := p.relation()
	if n == 0 && p.asked && p.timesAsManyFollows() { // is 24 3 times as many as 8
		return p.related(left, arithmetic.Equal, p.at(-1))
	}
	if n > 0 {
		mark := p.at(0)
		p.i += n
		return p.related(left, rel, mark)
	}
	if left.expr == nil || p.at(0).kind == blank && p.at(1).kind == relation {
		return Reading{}, p.leftover()
	}
	if p.at(0).kind == blank || p.any(versus) {
		if p.at(0).kind == blank {
			p.i++
		}
		return p.compared(left)
	}
	if p.at(0).text == "and" {
		at := p.i
		p.i++
		if n := p.longestOf(unknownWords); n > 0 { // 7 and how many make 10
			right, f := p.operand()
			if f != nil {
				return Reading{}, f
			}
			if left, f = p.join(left, plus, right, at); f != nil {
				return Reading{}, f
			}
			return p.statement(left)
		}
		if r, f, ok := p.bothMake(left, at); ok {
			return r, f
		}
		return p.bothEqual(left)
	}
	if p.longestOf(closerWords) > 0 { // is 3/4 closer to 0 or 1
		return Reading{}, closerOfOne(p, left)
	}
	return p.rewritten(left)
}

func (p *parser) relation() (arithmetic.Relation, int) {
	if t := p.at(0); t.kind == relation {
		return map[string]arithmetic.Relation{"=": arithmetic.Equal, "<": arithmetic.Less, ">": arithmetic.Greater}[t.text], 1
	}
	return longest(p, relations)
}

// related reads the other side of a relation.
func (p *parser) related(left piece, rel arithmetic.Relation, mark token) (Reading, *fault) {
	if p.at(0).kind == end && rel == arithmetic.Equal { // 345 + 278 =
		return p.alone(left)
	}
	if p.at(0).kind == relation {
		return Reading{}, twoRelations(p, mark)
	}
	if r, f, ok := p.howManyOf(left); ok && rel == arithmetic.Equal {
		return r, f
	}
	right, f := p.side()
	if f != nil {
		return Reading{}, f
	}
	if _, n := p.relation(); n > 0 {
		return Reading{}, chain(p, left, mark)
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	if left.expr == nil || right.expr == nil {
		return p.renaming(left, right, rel)
	}
	if r, ok := timesAsMany(left, right, rel); ok {
		return r, nil
	}
	if r, ok := inUnitsOf(left, right, rel); ok {
		return r, nil
	}
	left, right = left.multiplied(), right.multiplied()
	if left.unknowns+right.unknowns == 0 {
		problem := arithmetic.Problem{Kind: arithmetic.Claim, Left: left.expr, Rel: rel, Right: right.expr}
		return Reading{Problem: problem, Spans: append(left.spans, right.spans...)}, nil
	}
	return p.missing(left, right, rel)
}

// missing is an equation with an unknown. An unknown that is a side of its own
// asks for nothing but the other side.
func (p *parser) missing(left, right piece, rel arithmetic.Relation) (Reading, *fault) {
	if left.unknowns+right.unknowns > 1 {
		return Reading{}, twoUnknowns(p, right)
	}
	if rel != arithmetic.Equal {
		return Reading{}, unknownInequality(p, left, right)
	}
	if left.percent || right.percent {
		if right.percent {
			left, right = right, left
		}
		n, ok := right.expr.(arithmetic.Number)
		if !ok {
			return Reading{}, percentInside(p, token{start: left.start, end: left.end})
		}
		return p.inForm(arithmetic.PercentForm, right, n)
	}
	if _, bare := right.expr.(arithmetic.Unknown); bare {
		return p.alone(left)
	}
	if _, bare := left.expr.(arithmetic.Unknown); bare {
		return p.alone(right)
	}
	problem := arithmetic.Problem{Kind: arithmetic.Missing, Left: left.expr, Rel: rel, Right: right.expr}
	return Reading{Problem: problem, Spans: append(left.spans, right.spans...)}, nil
}

// tokenAt is the token that starts at a place of the text.
func (p *parser) tokenAt(start int) token {
	for _, t := range p.tokens {
		if t.start == start {
			return t
		}
	}
	return token{}
}
