package reading

// evenOdd are the rows that count by two.
var evenOdd = []string{"even numbers", "odd numbers"}

// evens reads even numbers from 2 to 20, first 5 odd numbers: counting by 2.
func (p *parser) evens() (Reading, *fault, bool) {
	var from, to, terms clause
	p.any(allOf)
	if n := p.match("first"); n > 0 {
		p.i += n
		if t, n, ok := p.amount(); ok {
			terms = clause{token: t, n: n, given: true}
		}
	}
	even := p.match("even numbers") > 0
	if !p.any(evenOdd) {
		return Reading{}, nil, false
	}
	for _, c := range []struct {
		words []string
		at    *clause
	}{{append([]string{"between"}, countFrom...), &from}, {append([]string{"and"}, countTo...), &to}} {
		if _, f := p.clause(c.words, c.at); f != nil {
			return Reading{}, f, true
		}
		if c.at.part != nil {
			return Reading{}, rowOfWholes(p, c.at.token), true
		}
	}
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	first := int64(1)
	if even {
		first = 0
	}
	if !from.given {
		from.n = 2 - first // the first that one counts is 2, or 1
		if !even {
			from.n = 1
		}
	}
	from.n += (from.n + first) % 2
	if !to.given && !terms.given {
		terms = clause{n: defaultJumps, given: true}
	}
	back := to.given && to.n < from.n
	from.given = true
	r, f := p.runOf(clause{n: 2, given: true}, from, to, terms, back)
	r.Spans = nil
	return r, f, true
}
