package reading

import (
	"strings"

	"modeler/arithmetic"
)

// unitNames are the names of the places that a number counts: 4 tens. The name of
// one is read behind figures, 4 hundred; in words that is a number by itself.
var unitNames = map[string]int64{
	"ones": 1, "ten": 10, "tens": 10, "hundred": 100, "hundreds": 100, "thousand": 1_000, "thousands": 1_000,
	"ten thousand": 10_000, "ten thousands": 10_000, "hundred thousand": 100_000, "hundred thousands": 100_000,
	"million": 1_000_000, "millions": 1_000_000,
}

// unitName is the name of a place that comes next, if any, and its tokens. count
// is what stands in front of it.
func (p *parser) unitName(count token) (worth int64, n int) {
	if t := p.at(0); t.kind == number && t.num.Form == arithmetic.Whole && p.isPlural(p.at(1)) && t.num.Value.Sign() > 0 { // two 5s
		worth, _ = t.num.Int64()
		return worth, 2
	} else if t.kind != word || in(passedOver, t.text) {
		return 0, 0
	}
	if many := pluralWords[p.at(0).text]; many > 0 && unitNames[p.at(0).text] == 0 { // six sevens
		return many, 1
	}
	worth, n = longest(p, unitNames)
	if n > 0 && !strings.HasSuffix(p.at(n-1).text, "s") && !isDigit([]rune(count.text + " ")[0]) && !(p.at(n-1).text == "ten" && count.text == "one") {
		return 0, 0
	}
	return worth, n
}

// inUnits reads a count of a place, and the smaller places behind it: 3 hundreds
// 4 tens is 340. n is the tokens of the name.
func (p *parser) inUnits(first token, worth int64, n int) (piece, *fault) {
	count, _ := first.num.Int64()
	total, parts, last, stop := int64(0), 0, worth, first.end
	for {
		if count > MaxWhole/worth || total > MaxWhole-count*worth {
			return piece{}, tooLarge(p.text, token{start: first.start, end: p.at(n - 1).end})
		}
		total += count * worth
		p.i += n
		stop, last = p.at(-1).end, worth
		parts++
		here := p.i
		if p.at(0).kind == separator || p.at(0).kind == word && p.at(0).text == "and" && !p.listing {
			p.i++
		}
		next := p.numberOrWord()
		worth, n = p.unitName(next)
		if p.listing && p.at(-1).kind == separator || next.kind != number || next.num.Form != arithmetic.Whole || n == 0 || worth >= last || !isPlace(worth) || !isPlace(last) {
			p.i = here
			break
		}
		count, _ = next.num.Int64()
	}
	first.num, first.end = arithmetic.Int(total), stop
	c, f := p.counted(first)
	if parts == 1 {
		c.unit, c.count = last, count
	}
	return c, f
}

// isPlace reports whether worth is what a one in some place is worth.
func isPlace(worth int64) bool {
	for worth >= 10 && worth%10 == 0 {
		worth /= 10
	}
	return worth == 1
}

// unknown is the blank t, which may count a place: ? tens.
func (p *parser) unknown(t token) piece {
	c := piece{expr: arithmetic.Unknown{}, unknowns: 1, start: t.start, end: t.end}
	if worth, n := p.unitName(t); n > 0 {
		p.i += n
		c.unit, c.end = worth, p.at(-1).end
		c.expr = arithmetic.Operation{Op: arithmetic.Multiply, Left: arithmetic.Unknown{}, Right: arithmetic.Int(worth)}
	}
	return c
}

// multiplied is a count of tens, hundreds and so on that stands alone as the
// product that it is: 4 tens is 4 × 10. One ten is 10.
func (c piece) multiplied() piece {
	if n, ok := c.expr.(arithmetic.Number); ok && c.unit > 0 && c.count != 1 && n.Form == arithmetic.Whole {
		c.expr = arithmetic.Operation{Op: arithmetic.Multiply, Left: arithmetic.Int(c.count), Right: arithmetic.Int(c.unit)}
		c.sign = times
	}
	return c
}

// inUnitsOf reads 340 = ? tens as 340 in groups of 10.
func inUnitsOf(left, right piece, rel arithmetic.Relation) (Reading, bool) {
	if left.unknowns > 0 {
		left, right = right, left
	}
	n, ok := left.expr.(arithmetic.Number)
	if !ok || rel != arithmetic.Equal || right.unknowns == 0 || right.unit == 0 || n.Form != arithmetic.Whole {
		return Reading{}, false
	}
	return Reading{Problem: dividing(n, arithmetic.Int(right.unit), true), Spans: append(left.spans, Span{Start: right.start, End: right.end})}, true
}
