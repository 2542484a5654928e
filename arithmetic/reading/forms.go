package reading

import (
	"strings"

	"modeler/arithmetic"
)

func (p *parser) simplified() (Reading, *fault) {
	c, n, f := p.one()
	if f != nil {
		return Reading{}, f
	}
	if p.at(0).kind == word {
		return p.rewritten(c)
	}
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	return Reading{Problem: arithmetic.Problem{Kind: arithmetic.SimplestForm, Left: n}, Spans: c.spans}, nil
}

func (p *parser) round() (Reading, *fault) {
	c, _, f := p.one()
	if f != nil {
		return Reading{}, f
	}
	if t := p.at(0); t.kind == end || t.kind == stop || p.isQuestionMark() {
		return Reading{}, roundToWhat(p, c)
	}
	return p.rewritten(c)
}

// rewritten reads the words behind a number that ask for it rounded or in another
// form.
func (p *parser) rewritten(c piece) (Reading, *fault) {
	at := p.at(0)
	if r, f, ok := p.rest(c); ok {
		return r, f
	}
	if r, f, ok := p.inPartsOf(c); ok {
		return r, f
	}
	kind, n := longest(p, forms)
	rounded := n == 0 && p.any(rounding)
	if n == 0 && !rounded {
		return Reading{}, p.leftover()
	}
	p.i += n
	value, ok := c.expr.(arithmetic.Number)
	if !ok {
		return Reading{}, oneNumber(p, c)
	}
	if !rounded {
		return p.inForm(kind, c, value)
	}
	r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.Rounding, Left: value}, Spans: c.spans}
	to, f := p.place(at)
	if f != nil {
		return Reading{}, f
	}
	r.Problem.To, r.Problem.Places = to.To, to.Places
	r.Spans = append(r.Spans, to.span)
	return r, p.finish()
}

// inPartsOf reads 2/3 in sixths and 2/3 with denominator 6, which ask for 2/3 = ?/6.
func (p *parser) inPartsOf(c piece) (Reading, *fault, bool) {
	here := p.i
	n, ok := c.expr.(arithmetic.Number)
	var den int64
	t := p.at(1)
	if ok && p.any([]string{"in", "as", "into", "to"}) {
		if den = partNames[p.at(0).text]; den > 0 && strings.HasSuffix(p.at(0).text, "s") && p.at(0).kind == word {
			p.i++
		} else {
			den = 0
		}
	} else if ok && p.any([]string{"with denominator", "with denominator of", "with denominator as"}) {
		if t = p.numberOrWord(); t.kind == number && t.num.Form == arithmetic.Whole {
			den, _ = t.num.Int64()
		}
	}
	if den < 1 || den > MaxParts || p.finish() != nil {
		p.i = here
		return Reading{}, nil, false
	}
	return p.renamed(n, arithmetic.Blank{Den: den}, append(c.spans, Span{Start: t.start, End: t.end})), nil, true
}

// renamed asks for another name of a number. The fraction that a decimal is written
// as, tenths for 0.3, is its fraction form.
func (p *parser) renamed(n arithmetic.Number, b arithmetic.Blank, spans []Span) Reading {
	if n.Form == arithmetic.Decimal && b.Den == n.Value.Den() {
		return Reading{Problem: arithmetic.Problem{Kind: arithmetic.FractionForm, Left: n}, Spans: spans[:1]}
	}
	return Reading{Problem: arithmetic.Problem{Kind: arithmetic.Renaming, Left: n, Blank: b}, Spans: spans}
}

// inForm is a number that is asked for in another form. A whole number is a sum in
// many ways, and a decimal is the sum of what its digits are worth.
func (p *parser) inForm(kind arithmetic.Kind, c piece, n arithmetic.Number) (Reading, *fault) {
	r := Reading{Problem: arithmetic.Problem{Kind: kind, Left: n}, Spans: c.spans}
	fraction := n.Form == arithmetic.Common || n.Form == arithmetic.Mixed
	switch kind {
	case arithmetic.AsSum:
		switch {
		case n.Form == arithmetic.Whole:
			r.Problem.Kind = arithmetic.WaysToMake
		case n.Form == arithmetic.Decimal:
			r.Problem.Kind = arithmetic.ExpandedForm
		case !fraction:
			return Reading{}, notAFraction(p, c, kind)
		}
	case arithmetic.DecimalForm:
		if !fraction && n.Form != arithmetic.Percent {
			return Reading{}, notAFraction(p, c, kind)
		}
	case arithmetic.PercentForm:
		if n.Form == arithmetic.Percent || n.Form == arithmetic.Money {
			return Reading{}, notAFraction(p, c, kind)
		}
	case arithmetic.Coins:
		if n.Form != arithmetic.Money {
			return Reading{}, notMoney(p, c, n)
		}
	}
	return r, p.finish()
}

type place struct {
	placeOf
	span Span
}

// wholes are the names of the ones that a decimal is rounded to.
var wholes = map[string]int64{"one": 1, "ones": 1, "whole": 1, "whole number": 1, "dollar": 1}

// place reads what a number is rounded to.
func (p *parser) place(before token) (place, *fault) {
	t := p.at(0)
	named := func(at placeOf, n int) (place, *fault) {
		p.i += n
		return place{at, Span{Start: t.start, End: p.at(-1).end}}, nil
	}
	if at, n := longest(p, smallPlaces); n > 0 {
		return named(placeOf{Places: at}, n)
	}
	for _, names := range []map[string]int64{wholes, places} {
		if to, n := longest(p, names); n > 0 {
			return named(placeOf{To: to}, n)
		}
	}
	if t.kind == end {
		return place{}, noPlace(p, before)
	}
	if v := t.num.Value; t.kind == number && t.num.Form == arithmetic.Decimal && v.Num() == 1 { // 0.1
		return named(placeOf{Places: t.num.Places}, 1)
	}
	if t.kind == number && t.num.Form == arithmetic.Whole {
		to, _ := t.num.Int64()
		if to == 1 {
			return named(placeOf{To: 1}, 1)
		}
		for _, allowed := range places {
			if to == allowed {
				return named(placeOf{To: to}, 1)
			}
		}
	}
	return place{}, otherPlace(p, t)
}
