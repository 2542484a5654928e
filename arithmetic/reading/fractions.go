package reading

import "modeler/arithmetic"

// percents are the words for a percent sign.
var percents = []string{"percent", "per cent"}

// The words that ask for the names of one amount, for a fraction taken apart, and
// which of two numbers is closer to 0 or 1.
var (
	equalOpeners = []string{"fractions equal to", "fractions equivalent to", "fractions that are equal to", "fractions that equal", "fractions are equal to",
		"fractions are equivalent to", "fractions same as", "fractions are same as", "which fractions are equal to", "which fractions are same as", "which fractions are equivalent to", "equal fractions of", "equal fractions for", "equal fractions to", "equivalent fractions of",
		"equivalent fractions for", "equivalent fractions to", "equivalent fractions", "equal fractions", "names of", "names for", "other names of",
		"other names for", "different names for", "all names of", "all names for", "equivalents of", "equivalent fraction of", "equivalent fraction for", "equivalent fraction to", "equal fraction for", "equal fraction to", "another name for", "fraction equal to", "fraction equivalent to",
		"fraction is equal to", "fractions with same value as"}
	breakOpeners = []string{"break", "break apart", "break up", "take apart", "decompose", "split up"}
	breakEndings = []string{"apart", "up", "into unit fractions", "into parts", "apart into unit fractions", "in unit fractions"}

	closerWords   = []string{"closer to", "nearer to", "nearer", "closest to", "nearest to"}
	closerOpeners = []string{"which is", "which fraction is", "which number is", "which one is", "which decimal is", "which", "is"}
)

// equalNames reads fractions equal to 1/2.
func (p *parser) equalNames() (Reading, *fault, bool) {
	here, count := p.i, p.count
	p.any(allOf)
	if _, _, ok := p.amount(); ok { // three fractions equal to 1/2
		p.any([]string{"other", "more"})
	}
	if !p.any(equalOpeners) {
		p.i = here
		return Reading{}, nil, false
	}
	p.pause()
	c, n, f := p.one()
	if f != nil {
		return Reading{}, f, true
	}
	switch n.Form {
	case arithmetic.Common, arithmetic.Mixed:
	case arithmetic.Whole:
		if p.at(-1).kind == number && p.at(0).kind == word && p.longestOf([]string{"in words"}) > 0 { // names for 347 in words
			p.i, p.count = here, count
			return Reading{}, nil, false
		}
	default:
		return Reading{}, notAFraction(p, c, arithmetic.EqualNames), true
	}
	return Reading{Problem: arithmetic.Problem{Kind: arithmetic.EqualNames, Left: n}, Spans: c.spans}, p.finish(), true
}

// breaking reads break 3/8 apart, and break apart 347 as expanded form.
func (p *parser) breaking() (Reading, *fault, bool) {
	here, count := p.i, p.count
	taken := p.match("take") > 0 && p.longestOf(breakOpeners) == 0 // take 3/8 apart
	if taken {
		p.i++
	} else if !p.any(breakOpeners) {
		return Reading{}, nil, false
	}
	c, n, f := p.one()
	if f != nil && !taken {
		return Reading{}, f, true
	}
	if !p.any(breakEndings) && taken || f != nil {
		p.i, p.count = here, count
		return Reading{}, nil, false
	}
	if v, whole := n.Int64(); n.Form == arithmetic.Whole && whole && v >= 10 {
		r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.ExpandedForm, Left: n}, Spans: c.spans,
			Also: []arithmetic.Problem{{Kind: arithmetic.WaysToMake, Left: n}}}
		return r, p.finish(), true
	}
	if _, m := longest(p, forms); m > 0 { // break 3/8 into a sum of unit fractions
		p.i += m
	}
	r, f := p.inForm(arithmetic.AsSum, c, n)
	return r, f, true
}

// closer reads which is closer to 1, 3/4 or 5/8.
func (p *parser) closer() (Reading, *fault, bool) {
	here, count := p.i, p.count
	back := func() (Reading, *fault, bool) {
		p.i, p.count, p.listing = here, count, false
		return Reading{}, nil, false
	}
	if p.any([]string{"which of", "which one of", "which fraction of"}) { // which of 3/4 and 5/8 is closer to 1
		all, f := p.list()
		if f != nil || len(all) < 2 {
			return back()
		}
		p.any([]string{"is"})
		if r, f, ok := p.closerOf(all); ok {
			return r, f, true
		}
		return back()
	}
	p.any(closerOpeners)
	if !p.any(closerWords) {
		return back()
	}
	p.listing = true
	to, f := p.operand()
	if f != nil {
		return Reading{}, f, true
	}
	for p.pause(); p.at(0).kind == blank && p.at(1).kind != end; p.pause() {
		p.i++
	}
	all, f := p.list()
	if f != nil {
		return Reading{}, f, true
	}
	r, f := p.closerTo(to, all)
	return r, f, true
}

// closerOf reads the end of is 3/4 or 5/8 closer to 1.
func (p *parser) closerOf(all []piece) (Reading, *fault, bool) {
	here := p.i
	p.pause()
	p.any([]string{"which is", "which one is", "which"})
	if !p.any(closerWords) {
		p.i = here
		return Reading{}, nil, false
	}
	to, f := p.operand()
	if f != nil {
		return Reading{}, f, true
	}
	r, f := p.closerTo(to, all)
	return r, f, true
}

func (p *parser) closerTo(to piece, all []piece) (Reading, *fault) {
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	end, ok := to.expr.(arithmetic.Number)
	if v, whole := end.Int64(); !ok || end.Form != arithmetic.Whole || !whole || v > 1 {
		return Reading{}, closerToWhat(p, to)
	}
	if len(all) != 2 {
		return Reading{}, closerOfTwo(p, all)
	}
	r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.Closer, Left: all[0].expr, Right: all[1].expr, To: end.Value.Num()}, Spans: to.spans}
	for _, c := range all {
		if _, ok := c.expr.(arithmetic.Number); !ok {
			return Reading{}, oneNumber(p, c)
		}
		r.Spans = append(r.Spans, c.spans...)
	}
	return r, nil
}
