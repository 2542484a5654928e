package reading

import "modeler/arithmetic"

// The adjectives by which two amounts are compared.
var (
	measures = []string{"many", "much", "long", "tall", "big", "large", "heavy", "far", "high", "wide", "deep", "old", "great"}
	mores    = []string{"more", "greater", "bigger", "larger", "longer", "taller", "higher", "heavier", "wider", "older", "farther"}
	fewers   = []string{"fewer", "less", "smaller", "shorter", "lower", "lighter", "younger"}
)

// timesAs are the signs of "3 times as many as 8", and asMany what stands behind
// twice.
var timesAs, asMany = func() (signs map[string]infix, short []string) {
	signs = map[string]infix{}
	for _, m := range measures {
		signs["times as "+m+" as"] = infix{op: arithmetic.Multiply, story: arithmetic.TimesAsMany}
		short = append(short, "as "+m+" as")
	}
	return signs, short
}()

// asked are the questions for a difference and a number of times: the phrase in
// front of the first number. Fewer says that the second number is the larger.
type question struct {
	fewer, times bool
	between      string // the word between the two numbers
	turned       bool   // the second number is the one that is said to be more
}

var questions = func() map[string]question {
	table := map[string]question{}
	for _, much := range []string{"how many ", "how much "} {
		for _, m := range mores {
			table[much+m+" is"] = question{between: "than"}
			table[much+m+" than"] = question{between: "is", turned: true}
		}
		for _, m := range fewers {
			table[much+m+" is"] = question{fewer: true, between: "than"}
			table[much+m+" than"] = question{fewer: true, between: "is", turned: true}
		}
	}
	for _, m := range measures {
		table["how many times as "+m+" is"] = question{times: true, between: "as"}
		table["how many times as "+m+" as"] = question{times: true, between: "is", turned: true}
	}
	return table
}()

// difference is the problem that a question about two numbers asks.
func (q question) problem(a, b piece) Reading {
	if q.turned != q.fewer {
		a, b = b, a
	}
	o := arithmetic.Operation{Op: arithmetic.Subtract, Left: a.expr, Right: b.expr}
	problem := arithmetic.Problem{Kind: arithmetic.Subtraction, Left: o, Story: arithmetic.HowManyMore}
	if q.times {
		problem = dividing(a.expr.(arithmetic.Number), b.expr.(arithmetic.Number), true)
		problem.Story = arithmetic.TimesAsMany
	}
	return Reading{Problem: problem, Spans: append(append([]Span{}, a.spans...), b.spans...)}
}

// compareBy reads how many more is 12 than 9.
func (p *parser) compareBy(q question) (Reading, *fault) {
	a, _, f := p.one()
	if f != nil {
		return Reading{}, f
	}
	if p.match(q.between) == 0 {
		return Reading{}, p.leftover()
	}
	p.i += p.match(q.between)
	b, _, f := p.one()
	if f == nil {
		f = p.finish()
	}
	if f != nil {
		return Reading{}, f
	}
	return q.problem(a, b), nil
}

// howManyOf reads the end of 12 is how many more than 9, of 24 is how many times as
// many as 8 and of 340 is how many tens.
func (p *parser) howManyOf(left piece) (Reading, *fault, bool) {
	n, ok := left.expr.(arithmetic.Number)
	if !ok {
		return Reading{}, nil, false
	}
	if q, m := longest(p, questions); m > 0 && q.turned {
		p.i += m
		right, _, f := p.one()
		if f == nil {
			f = p.finish()
		}
		if f != nil {
			return Reading{}, f, true
		}
		q.turned = false
		return q.problem(left, right), nil, true
	}
	if m := p.match("how many"); m > 0 && n.Form == arithmetic.Whole {
		here, t := p.i, p.at(m)
		p.i += m
		if worth, m := p.unitName(t); m > 0 {
			p.i += m
			r := Reading{Problem: dividing(n, arithmetic.Int(worth), true), Spans: append(left.spans, Span{Start: t.start, End: p.at(-1).end})}
			return r, p.finish(), true
		}
		p.i = here
	}
	return Reading{}, nil, false
}

// timesAsMany reads 24 is 3 times as many as ?, where one of the two numbers on
// the right is to be found, as a division.
func timesAsMany(left, right piece, rel arithmetic.Relation) (Reading, bool) {
	if right.unknowns == 0 {
		left, right = right, left
	}
	o, is := right.expr.(arithmetic.Operation)
	n, ok := left.expr.(arithmetic.Number)
	if !is || !ok || rel != arithmetic.Equal || right.sign.story != arithmetic.TimesAsMany {
		return Reading{}, false
	}
	known, first := o.Left.(arithmetic.Number)
	if !first {
		known, ok = o.Right.(arithmetic.Number)
	}
	_, left0 := o.Left.(arithmetic.Unknown)
	_, right0 := o.Right.(arithmetic.Unknown)
	if !ok || !left0 && !right0 || first && known.Form != arithmetic.Whole {
		return Reading{}, false
	}
	problem := dividing(n, known, !first)
	problem.Story = arithmetic.TimesAsMany
	return Reading{Problem: problem, Spans: append(append([]Span{}, left.spans...), right.spans...)}, true
}

// timesAsManyFollows reports whether a number and "times as many as" come next.
func (p *parser) timesAsManyFollows() bool {
	here := p.i
	defer func() { p.i = here }()
	if p.at(0).kind == number {
		p.i++
	} else if _, ok := p.numberWord(); !ok {
		return false
	}
	_, n := longest(p, timesAs)
	return n > 0
}
