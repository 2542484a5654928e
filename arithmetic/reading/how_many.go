package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// howMany reads how many eighths are in 1/2, which is 1/2 = ?/8, and how many tens
// are in 340, which is 340 in groups of 10.
func (p *parser) howMany() (r Reading, f *fault, ok bool) {
	here := p.i
	p.i += p.match("how many")
	fitting := p.match("times does") > 0 // how many times does 8 go into 24
	if fitting {
		p.i += p.match("times does")
	}
	t := p.at(0)
	den, part := partNames[t.text]
	size, group := places[t.text]
	parts, of := clause{}, false
	if t.kind == number { // how many 1/8s are in 3/4
		parts, of = p.parts()
		t = p.at(0)
	}
	if of {
		t = parts.token
	} else if part || group {
		p.i++
	} else if t, size, group = p.amount(); t.start == t.end {
		group = false
	}
	inside := p.any([]string{"in", "are in", "are there in", "make", "is", "are equal to", "equal", "go into", "fit in", "fit into", "go in", "can you make from", "can you make with"})
	if t.kind != word && t.kind != number || !of && !part && (!group || size == 0) || !inside {
		p.i = here
		return r, nil, false
	}
	c, n, f := p.one()
	if f == nil {
		f = p.finish()
	}
	if f != nil {
		return r, f, true
	}
	if of {
		r.Problem = dividing(n, parts.num, true)
		r.Spans = append(c.spans, Span{Start: t.start, End: t.end})
		return r, nil, true
	}
	if part {
		if n.Form == arithmetic.Whole {
			r.Also = append(r.Also, dividing(n, arithmetic.Frac(fraction.Must(1, den)), true))
		}
		blank := arithmetic.Blank{Den: den}
		r.Problem = arithmetic.Problem{Kind: arithmetic.Renaming, Left: n, Blank: blank}
		r.Spans = append(c.spans, Span{Start: t.start, End: t.end})
		return r, nil, true
	}
	r.Problem = dividing(n, arithmetic.Int(size), true)
	r.Spans = append(c.spans, Span{Start: t.start, End: t.end})
	return r, nil, true
}
