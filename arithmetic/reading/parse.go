package reading

import (
	"strings"

	"modeler/arithmetic"
)

// parser reads an expression by descent, one function for each rank of sign.
type parser struct {
	text    []rune
	tokens  []token
	i       int
	depth   int   // open brackets
	count   int   // numbers read
	asked   bool  // the text starts with "is": more than is a relation, not a sign
	terms   token // how many multiples are asked for
	listing bool  // "and" stands between numbers, not inside a mixed number
}

// piece is an expression and where it stands in the text.
type piece struct {
	expr       arithmetic.Expr
	spans      []Span // of its numbers, in the order they are written
	start, end int
	unknowns   int
	sign       infix  // of an operation
	signText   string // of an operation: how its sign was written
	unit       int64  // of a count of tens, hundreds and so on, on its own: what one is worth
	count      int64  // and how many there are; of a blank 0
	percent    bool   // of a blank: ?%
}

// at is the token n places on; the end stands behind the last.
func (p *parser) at(n int) token {
	if i := p.i + n; i < len(p.tokens) {
		if i < 0 {
			return token{}
		}
		return p.tokens[i]
	}
	return p.tokens[len(p.tokens)-1]
}

// sign is the sign between two operands that comes next, if any, and its tokens.
func (p *parser) sign() (infix, int) {
	t := p.at(0)
	if t.text == ":" && p.at(1).text == "which" { // 3/4 or 5/8: which is closer to 1
		return infix{}, 0
	}
	if s, ok := signs[t.text]; ok && (t.kind == sign || t.kind == slash) {
		return s, 1
	}
	if p.longestOf(noSigns) > 0 {
		return infix{}, 0
	}
	if !p.asked {
		if s, n := longest(p, turnedInfixes); n > 0 {
			return s, n
		}
	}
	if s, n := longest(p, timesAs); n > 0 {
		return s, n
	}
	return longest(p, infixes)
}

// expression reads numbers joined by signs of at least the given rank.
func (p *parser) expression(rank int) (piece, *fault) {
	if rank == 3 {
		return p.part()
	}
	left, f := p.expression(rank + 1)
	for f == nil {
		s, n := p.sign()
		if n == 0 || s.rank() != rank {
			return left, nil
		}
		start := p.i
		p.i += n
		var right piece
		if right, f = p.expression(rank + 1); f == nil {
			left, f = p.join(left, s, right, start)
		}
	}
	return left, f
}

// part reads an operand, or a fraction of an amount; the amount can itself be
// a fraction of an amount.
func (p *parser) part() (piece, *fault) {
	left, f := p.operand()
	if f != nil {
		return left, f
	}
	s, n := p.sign()
	if n == 0 || s.op != arithmetic.Of || p.shapeFollows(n) {
		return left, nil
	}
	if v, ok := left.expr.(arithmetic.Number); ok && v.Form == arithmetic.Whole || left.isOperation() {
		return left, wholeOf(p, left)
	}
	start := p.i
	p.i += n
	right, f := p.part()
	if f != nil {
		return right, f
	}
	return p.join(left, s, right, start)
}

func (c piece) isOperation() bool {
	_, ok := c.expr.(arithmetic.Operation)
	return ok
}

func (p *parser) join(left piece, s infix, right piece, sign int) (piece, *fault) {
	out := piece{start: left.start, end: right.end, unknowns: left.unknowns + right.unknowns, sign: s, signText: p.tokens[sign].text}
	if out.unknowns > 1 {
		return out, twoUnknowns(p, right)
	}
	for _, c := range []piece{left, right} {
		if c.percent {
			return out, percentInside(p, token{start: c.start, end: c.end})
		}
	}
	if left.unit > 0 && !isPlace(left.unit) { // five sevens and two sevens are products
		left = left.multiplied()
	}
	if right.unit > 0 && !isPlace(right.unit) {
		right = right.multiplied()
	}
	if s.turned {
		left, right = right, left
	}
	out.expr = arithmetic.Operation{Op: s.op, Left: left.expr, Right: right.expr}
	out.spans = append(append(out.spans, left.spans...), right.spans...)
	return out, nil
}

// operand reads a number, a blank or an expression in brackets.
func (p *parser) operand() (piece, *fault) {
	p.articles()
	t := p.at(0)
	switch t.kind {
	case number:
		p.i++
		return p.numeral(t)
	case blank:
		p.i++
		c := p.unknown(t)
		if c.percent = t.num.Form == arithmetic.Percent; !c.percent && p.longestOf(percents) > 0 {
			c.percent = true
			p.any(percents)
		}
		return c, nil
	case blankPart:
		return piece{}, blankInside(p, t)
	case open:
		return p.bracket(t)
	case word:
		if p.isUnknown(t) {
			p.i++
			return piece{expr: arithmetic.Unknown{}, unknowns: 1, start: t.start, end: t.end}, nil
		}
		if n := p.longestOf(unknownWords); n > 0 {
			t.end = p.at(n - 1).end
			p.i += n
			return p.unknown(t), nil
		}
		if n, ok := p.numberWord(); ok {
			return p.numeral(n)
		}
	}
	return piece{}, noOperand(p)
}

// isUnknown reports whether a letter stands for the unknown. An x in front of a
// number is a times sign that lacks its first number.
func (p *parser) isUnknown(t token) bool {
	next := p.at(1).kind
	return in(unknowns, t.text) && next != number && next != open && next != blank
}

func (p *parser) bracket(t token) (piece, *fault) {
	if p.depth++; p.depth > MaxDepth {
		return piece{}, tooDeep(p, t)
	}
	p.i++
	inside, f := p.expression(1)
	if f != nil {
		return inside, f
	}
	if p.at(0).kind != closed {
		if p.at(0).kind == end {
			return inside, notClosed(p, t)
		}
		return inside, p.leftover()
	}
	inside.start, inside.end = t.start, p.at(0).end
	p.depth--
	p.i++
	return inside, nil
}

// finish passes what may end a text and finds fault with anything else.
func (p *parser) finish() *fault {
	here := p.i
	for p.at(0).kind == stop || p.isQuestionMark() {
		p.i++
	}
	if p.at(0).kind == end {
		return nil
	}
	p.i = here
	return p.leftover()
}

// isQuestionMark reports whether the next token ends a question and is no blank.
func (p *parser) isQuestionMark() bool {
	t := p.at(0)
	if t.kind != blank || strings.Trim(t.text, "?.") != "" {
		return false
	}
	for n := 1; ; n++ {
		switch p.at(n).kind {
		case end:
			return true
		case stop:
		default:
			return false
		}
	}
}
