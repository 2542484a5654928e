package reading

import (
	"slices"
	"strings"

	"modeler/arithmetic"
)

// The words round a digit or a place of a number: value of the 4 in 3,456.
var (
	digitOpeners = []string{"which place is", "what place is", "in which place is", "in what place is", "place value of", "value of", "place of",
		"place is", "in which place stands", "how much does", "which digit is in", "which digit is", "digit is in", "digit is", "digit in", "worth of",
		"which value has", "value has", "which value does", "value does", "digit stands in", "which digit stands in"}
	digitEndings = []string{"worth", "stand for", "stands for", "mean", "have", "in", "stand"}
)

// aboutPlace reads what a digit of a whole number is worth; the digit is named by
// itself or by its place.
func (p *parser) aboutPlace() (Reading, *fault, bool) {
	if in := p.at(1); p.match("in") == 1 && in.kind == number {
		return p.turnedPlace()
	}
	return p.digitIn()
}

// turnedPlace reads the number in front of its digit, in 5,280, what is the value
// of the 2, by putting it behind.
func (p *parser) turnedPlace() (Reading, *fault, bool) {
	word, in := p.at(0), p.at(1)
	p.i += 2
	p.pause()
	for p.any(openers) {
	}
	last := len(p.tokens) - 1
	tail := slices.Clone(p.tokens[min(p.i, last):last])
	for len(tail) > 0 && (tail[len(tail)-1].kind == stop || tail[len(tail)-1].kind == blank) {
		tail = tail[:len(tail)-1]
	}
	again := &parser{text: p.text, tokens: append(tail, word, in, p.tokens[last])}
	return again.digitIn()
}

// digitIn reads a digit or a place, and the number behind it.
func (p *parser) digitIn() (Reading, *fault, bool) {
	p.any(digitOpeners)
	p.any([]string{"digit in", "digit", "value of"})
	p.articles()
	named := p.at(0)
	to, n := longest(p, unitNames)
	p.i += n
	ofPlace := n > 0
	if ofPlace {
		named.end = p.at(-1).end
	}
	worded := p.any([]string{"digit", "place", "digit place"})
	if !ofPlace {
		d := p.at(0)
		if d.kind == number {
			p.i++
		} else {
			d, _ = p.numberWord()
		}
		v, whole := d.num.Int64()
		if d.kind != number || !whole || d.num.Form != arithmetic.Whole || v > 9 || len(d.text) > 1 && isDigit(rune(d.text[0])) {
			return Reading{}, nil, false
		}
		named, to = d, v
	}
	if ofPlace && !worded || !p.any([]string{"in", "of", "in number", "of number"}) || !ofPlace && p.at(-1).text == "of" {
		return Reading{}, nil, false
	}
	t := p.at(0)
	if t.kind == number {
		p.i++
	} else {
		t, _ = p.numberWord()
	}
	if t.kind != number {
		return Reading{}, nil, false
	}
	n64, _ := t.num.Int64()
	if t.num.Form != arithmetic.Whole {
		return Reading{}, placesOfWhole(p, t), true
	}
	p.any(digitEndings)
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	spans := []Span{{Start: t.start, End: t.end}, {Start: named.start, End: named.end}}
	at := placesOf(n64, to, ofPlace)
	if len(at) == 0 {
		return Reading{}, noSuchDigit(p, t, named, to, ofPlace), true
	}
	r := Reading{Spans: spans}
	for i, worth := range at {
		problem := arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: t.num, To: worth}
		if i == 0 {
			r.Problem = problem
		} else {
			r.Also = append(r.Also, problem)
		}
	}
	return r, nil, true
}

// placesOf is the places of n that are asked for, the highest first: the place
// itself, or all places of a digit. There are none when n has no such place.
func placesOf(n, asked int64, place bool) []int64 {
	digits := arithmetic.Int(n).Value.String()
	var at []int64
	for i := range digits {
		worth := arithmetic.Power10(len(digits) - 1 - i)
		if place && worth == asked || !place && strings.HasPrefix(digits[i:], arithmetic.Int(asked).String()) {
			at = append(at, worth)
		}
	}
	return at
}
