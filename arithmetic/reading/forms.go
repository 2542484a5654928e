package reading

import "modeler/arithmetic"

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
	r := Reading{Problem: arithmetic.Problem{Kind: kind, Left: value}, Spans: c.spans}
	if rounded {
		to, f := p.place(at)
		if f != nil {
			return Reading{}, f
		}
		r.Problem.Kind, r.Problem.To = arithmetic.Rounding, to.to
		r.Spans = append(r.Spans, to.span)
	}
	return r, p.finish()
}

type place struct {
	to   int64
	span Span
}

// place reads what a number is rounded to.
func (p *parser) place(before token) (place, *fault) {
	t := p.at(0)
	if to, n := longest(p, places); n > 0 {
		p.i += n
		return place{to, Span{Start: t.start, End: p.at(-1).end}}, nil
	}
	if t.kind == end {
		return place{}, noPlace(p, before)
	}
	if t.kind == number && t.num.Form == arithmetic.Whole {
		to, _ := t.num.Int64()
		for _, allowed := range places {
			if to == allowed {
				p.i++
				return place{to, Span{Start: t.start, End: t.end}}, nil
			}
		}
	}
	return place{}, otherPlace(p, t)
}
