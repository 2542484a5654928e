package reading

import "modeler/arithmetic"

// rests are the words behind a division that say what is done with what is left
// over.
var rests = map[string]arithmetic.Rest{
	"with remainder": arithmetic.LeftOver, "with remainders": arithmetic.LeftOver,
	"as mixed number": arithmetic.AsPart, "as mixed numeral": arithmetic.AsPart, "as fraction": arithmetic.AsPart,
	"to mixed number": arithmetic.AsPart, "with fraction": arithmetic.AsPart, "as improper fraction": arithmetic.AsPart,
	"as decimal": arithmetic.AsDecimal, "to decimal": arithmetic.AsDecimal, "in decimals": arithmetic.AsDecimal, "as decimal number": arithmetic.AsDecimal,
	"rounded up": arithmetic.OneMore, "rounded up to whole number": arithmetic.OneMore, "round up": arithmetic.OneMore,
}

// rest reads what is done with what a division of whole numbers leaves over; ok
// is false when nothing is said of it.
func (p *parser) rest(c piece) (Reading, *fault, bool) {
	rest, n := longest(p, rests)
	o, is := c.expr.(arithmetic.Operation)
	if n == 0 || !is || o.Op != arithmetic.Divide {
		return Reading{}, nil, false
	}
	for _, side := range []arithmetic.Expr{o.Left, o.Right} {
		if n, ok := side.(arithmetic.Number); !ok || n.Form != arithmetic.Whole {
			return Reading{}, nil, false
		}
	}
	p.i += n
	r := Reading{Spans: c.spans}
	var also []arithmetic.Problem
	r.Problem, also = operation(o, c)
	r.Problem.Rest = rest
	for _, other := range also {
		if other.Kind == arithmetic.Division && other.Grouping != r.Problem.Grouping {
			other.Rest = rest
			r.Also = append(r.Also, other)
		}
	}
	return r, p.finish(), true
}

// steps are the words with which a problem goes on: double 8 and add 3.
var steps = map[string]infix{
	"add": plus, "plus": plus, "subtract": minus, "take away": minus, "take": minus, "minus": minus,
	"multiply by": times, "times": times, "divide by": divide,
}

// then reads the steps behind an expression, each done to what came before.
func (p *parser) then(left piece) (piece, *fault) {
	for left.expr != nil {
		here := p.i
		joined := p.at(0).kind == separator
		for p.at(0).kind == separator || p.match("and") == 1 || p.match("then") == 1 {
			joined = true
			p.i++
		}
		s, n := longest(p, steps)
		if !joined || n == 0 {
			p.i = here
			return left, nil
		}
		at := p.i
		p.i += n
		right, f := p.operand()
		if f != nil {
			return left, f
		}
		if left, f = p.join(left, s, right, at); f != nil {
			return left, f
		}
	}
	return left, nil
}
