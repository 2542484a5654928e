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
	asked, n := p.placeName()
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
		named, asked = d, placeOf{To: v}
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
	if t.num.Form != arithmetic.Whole && t.num.Form != arithmetic.Decimal {
		return Reading{}, placesOfWhole(p, t), true
	}
	p.any(digitEndings)
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	spans := []Span{{Start: t.start, End: t.end}, {Start: named.start, End: named.end}}
	at := placesOf(t.num, asked, ofPlace)
	if !ofPlace {
		at = withDigit(t.num, at, asked.To)
	}
	if len(at) == 0 {
		return Reading{}, noSuchDigit(p, t, named, asked, ofPlace), true
	}
	r := Reading{Spans: spans}
	for i, place := range at {
		if i == 0 {
			r.Problem = place.in(t.num)
		} else {
			r.Also = append(r.Also, place.in(t.num))
		}
	}
	return r, nil, true
}

// placeOf is a place by what a one in it is worth, or by how many digits after the
// point it is.
type placeOf struct {
	To     int64
	Places int
}

// in asks what the digit in the place is worth.
func (at placeOf) in(n arithmetic.Number) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: n, To: at.To, Places: at.Places}
}

// smallPlaces are the names of the places after the point.
var smallPlaces = map[string]int{"tenth": 1, "tenths": 1, "hundredth": 2, "hundredths": 2, "thousandth": 3, "thousandths": 3,
	"ten thousandth": 4, "ten thousandths": 4, "hundred thousandth": 5, "hundred thousandths": 5, "millionth": 6, "millionths": 6}

// placeName is the place that comes next by its name, and its tokens.
func (p *parser) placeName() (placeOf, int) {
	if places, n := longest(p, smallPlaces); n > 0 {
		return placeOf{Places: places}, n
	}
	to, n := longest(p, unitNames)
	return placeOf{To: to}, n
}

// placesOf are the places of a whole or decimal number, the highest first: all of
// them, or the one that is asked for, if it has that one.
func placesOf(n arithmetic.Number, asked placeOf, one bool) []placeOf {
	var at []placeOf
	for i := len(arithmetic.Int(n.Value.Num()/n.Value.Den()).Value.String()) - 1; i >= -n.Places; i-- {
		place := placeOf{Places: -i}
		if i >= 0 {
			place = placeOf{To: arithmetic.Power10(i)}
		}
		if !one || place == asked {
			at = append(at, place)
		}
	}
	return at
}

// withDigit keeps the places of a number, all of which are given, where a digit
// stands.
func withDigit(n arithmetic.Number, all []placeOf, digit int64) []placeOf {
	var at []placeOf
	digits := strings.NewReplacer(".", "", ",", "").Replace(n.String())
	for i, d := range digits {
		if int64(d-'0') == digit {
			at = append(at, all[i])
		}
	}
	return at
}
