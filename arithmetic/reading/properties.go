package reading

import "modeler/arithmetic"

// phrasesOf turns lists of phrases into the kind that each asks for.
func phrasesOf(lists map[arithmetic.Kind][]string) map[string]arithmetic.Kind {
	table := map[string]arithmetic.Kind{}
	for kind, phrases := range lists {
		for _, p := range phrases {
			table[p] = kind
		}
	}
	return table
}

// properties are the phrases behind a whole number that ask something of it.
var properties = func() map[string]arithmetic.Kind {
	table := phrasesOf(map[arithmetic.Kind][]string{
		arithmetic.ExpandedForm: {"in expanded form", "in expanded notation", "expanded", "into expanded form", "to expanded form", "as expanded form"},
		arithmetic.InWords:      {"in words", "in word form", "as words", "into words", "to words", "with words"},
		arithmetic.Multiples:    {"times table", "times tables", "x table", "x tables"},
	})
	for phrase, kind := range phrasesOf(map[arithmetic.Kind][]string{
		arithmetic.Parity: {"even", "odd", "even or odd", "odd or even", "even number", "odd number", "even or odd number",
			"odd or even number", "even number or odd number", "even or not", "odd or not"},
		arithmetic.Primality: {"prime", "prime number", "composite", "composite number", "prime or composite", "composite or prime",
			"prime or composite number", "prime number or composite number", "prime or not", "prime number or not"},
	}) {
		table[phrase] = kind
		table["is "+phrase] = kind
	}
	return table
}()

// asking are the phrases in front of a whole number that ask something of it.
var asking = phrasesOf(map[arithmetic.Kind][]string{
	arithmetic.ExpandedForm: {"expand", "expanded form of", "expanded notation of", "expanded form for"},
	arithmetic.InWords: {"name", "name of", "word form of", "number name of", "number name for", "name for", "how do you say", "how do i say",
		"how do you read", "how do you write", "how do you spell", "say", "spell", "read", "words for"},
	arithmetic.Parity:    {"even or odd", "odd or even"},
	arithmetic.Primality: {"prime or composite", "composite or prime", "prime or not"},
	arithmetic.WaysToMake: {"ways to make", "ways of making", "different ways to make", "how many ways to make", "how can you make",
		"number bonds of", "number bonds for", "number bonds to", "bonds of", "bonds to", "number pairs for", "number pairs of", "number pairs to",
		"number pairs that make", "pairs that make", "pairs of numbers that make", "pairs of numbers that add to", "pairs that add to",
		"pairs of numbers that add up to", "pairs that add up to", "pairs to make", "addition pairs for", "partners of", "two numbers that make", "two numbers make", "which two numbers make", "two numbers add to", "two numbers add up to"},
	arithmetic.Multiples: {"multiples of", "times table of", "times table for", "times tables of", "multiplication table of",
		"multiplication table for", "multiplication facts of", "multiplication facts for", "times table", "times tables"},
	arithmetic.CommonMultiples: {"common multiples of", "least common multiple of", "lowest common multiple of", "smallest common multiple of",
		"lcm of", "lcm", "least common multiple", "lowest common multiple", "common multiples", "smallest common multiple", "first common multiples of", "common multiple of"},
	arithmetic.CommonFactors: {"common factors of", "greatest common factor of", "highest common factor of", "largest common factor of",
		"biggest common factor of", "greatest common divisor of", "common divisors of", "common factor of", "gcf of", "gcf", "greatest common factor", "highest common factor", "common factors", "greatest common divisor", "hcf of", "hcf", "gcd of", "gcd"},
})

// allOf may stand in front of the phrases of asking.
var allOf = []string{"list", "list all", "find all", "all", "all of", "some", "list some"}

// property reads the phrase behind a number that asks something of it.
func (p *parser) property(c piece) (Reading, *fault, bool) {
	kind, n := longest(p, properties)
	if n == 0 {
		return Reading{}, nil, false
	}
	p.i += n
	if c.expr == nil || c.unknowns > 0 {
		return Reading{}, unknownAlone(p, c), true
	}
	if _, is := c.expr.(arithmetic.Number); !is {
		return Reading{}, oneNumber(p, c), true
	}
	r, f := p.about(kind, c, defaultMultiples)
	return r, f, true
}

// askedFor reads a problem that says in front what it asks.
func (p *parser) askedFor() (Reading, *fault, bool) {
	here := p.i
	for _, read := range []func() (Reading, *fault, bool){p.equalNames, p.closer, p.breaking, p.change, p.coinsFor, p.shapeFirst, p.aboutPlace, p.counting, p.evens, p.starting, p.ruled, p.next, p.estimating, p.family} {
		count := p.count
		if r, f, ok := read(); ok {
			return r, f, ok
		}
		p.i, p.count = here, count
	}
	if q, n := longest(p, questions); n > 0 {
		p.i += n
		r, f := p.compareBy(q)
		return r, f, true
	}
	p.any(allOf)
	if terms, ok := p.firstMultiples(); ok {
		c, _, f := p.one()
		if f != nil {
			return Reading{}, f, true
		}
		r, f := p.about(arithmetic.Multiples, c, terms)
		return r, f, true
	}
	kind, n := longest(p, asking)
	if n == 0 {
		p.i = here
		return Reading{}, nil, false
	}
	p.i += n
	for p.at(0).text == ":" || p.at(0).kind == separator {
		p.i++
	}
	if kind == arithmetic.CommonMultiples || kind == arithmetic.CommonFactors {
		r, f := p.common(kind)
		return r, f, true
	}
	start := p.i
	c, _, f := p.one()
	if f != nil {
		return Reading{}, f, true
	}
	if next := p.at(0); kind == arithmetic.Multiples && (next.text == "and" || next.kind == separator) { // multiples of 4 and 6
		p.i, p.count = start, p.count-1
		r, f := p.common(arithmetic.CommonMultiples)
		return r, f, true
	}
	if kind == arithmetic.Multiples {
		here := p.i
		if last, ok := p.upTo(); ok {
			n, _ := c.expr.(arithmetic.Number).Int64()
			p.terms = last.token
			r, f := p.about(kind, c, int(last.n/max(n, 1)))
			return r, f, true
		}
		p.i = here
	}
	if kind == arithmetic.InWords { // how do you write 347 in words
		if same, m := longest(p, properties); same == kind {
			p.i += m
		} else if form := c.expr.(arithmetic.Number).Form; form != arithmetic.Whole && form != arithmetic.Decimal || p.at(0).kind == word { // name 7/4 as a mixed number
			p.i, p.count = start, p.count-1
			return Reading{}, nil, false
		}
	}
	r, f := p.about(kind, c, defaultMultiples)
	return r, f, true
}

// about asks something of a whole number, or how a decimal is written in other ways;
// it ends the text. terms is how many
// multiples of it are listed.
func (p *parser) about(kind arithmetic.Kind, c piece, terms int) (Reading, *fault) {
	n := c.expr.(arithmetic.Number)
	if kind == arithmetic.WaysToMake && (n.Form == arithmetic.Common || n.Form == arithmetic.Mixed) {
		return p.inForm(arithmetic.AsSum, c, n)
	} else if kind == arithmetic.WaysToMake && n.Form == arithmetic.Money {
		return Reading{}, waysToPay(p, c, n)
	}
	written := kind == arithmetic.ExpandedForm || kind == arithmetic.InWords
	if n.Form != arithmetic.Whole && !(written && n.Form == arithmetic.Decimal) || n.Value.Sign() == 0 && (kind == arithmetic.Multiples || kind == arithmetic.Primality) {
		return Reading{}, notWhole(p, kind, c)
	}
	r := Reading{Problem: arithmetic.Problem{Kind: kind, Left: n}, Spans: c.spans}
	if kind == arithmetic.Multiples {
		if terms < 1 || terms > MaxTerms {
			return Reading{}, howManyMultiples(p, int64(terms))
		}
		r.Problem.Run.Terms = terms
	}
	return r, p.finish()
}

// defaultMultiples is as far as a times table goes.
const defaultMultiples = 10

// firstMultiples passes "first 5 multiples of".
func (p *parser) firstMultiples() (terms int, ok bool) {
	here := p.i
	if p.match("first") > 0 {
		p.i += p.match("first")
		t := p.at(0)
		if t.kind == number {
			p.i++
		} else {
			t, _ = p.numberWord()
		}
		v, whole := t.num.Int64()
		if n := p.match("multiples of"); t.kind == number && whole && t.num.Form == arithmetic.Whole && n > 0 {
			p.i += n
			p.terms = token{start: t.start, end: t.end}
			return int(v), true
		}
	}
	p.i = here
	return 0, false
}

// common reads the two numbers that have multiples or factors in common.
func (p *parser) common(kind arithmetic.Kind) (Reading, *fault) {
	bracket := p.at(0).kind == open
	if bracket { // lcm(4, 6)
		p.i++
	}
	all, f := p.list()
	if f != nil {
		return Reading{}, f
	}
	if bracket && p.at(0).kind == closed {
		p.i++
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	if len(all) == 1 {
		return Reading{}, commonWithWhat(p, all[0])
	}
	if len(all) > 2 {
		return Reading{}, twoAtATime(p, all)
	}
	for _, c := range all {
		n, ok := c.expr.(arithmetic.Number)
		if !ok {
			return Reading{}, oneNumber(p, c)
		}
		if n.Form != arithmetic.Whole || n.Value.Sign() == 0 {
			return Reading{}, notWhole(p, kind, c)
		}
	}
	problem := arithmetic.Problem{Kind: kind, Left: all[0].expr, Right: all[1].expr}
	return Reading{Problem: problem, Spans: append(all[0].spans, all[1].spans...)}, nil
}
