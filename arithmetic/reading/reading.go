// Package reading turns what a person writes into a problem.
//
// It takes a problem as it stands in a book, 402 − 178 or 3/4 = 6/8, or a short
// plain phrase, round 347 to the nearest ten. All spellings of a sign and all
// look-alikes that pasting brings give the same problem. What reads two ways is
// read the likelier way and the other is named beside it.
package reading

import (
	"strings"
	"unicode/utf8"

	"modeler/arithmetic"
)

// The bounds on what is read. Beyond them Read gives an error that says so; the
// time and memory that a text takes are bounded by MaxText alone.
const (
	MaxText    = 200       // characters of a text
	MaxWhole   = 9_999_999 // a whole number, a numerator, the whole part of a decimal
	MaxParts   = 1_000     // parts in a whole: a denominator
	MaxPlaces  = 6         // digits after the point
	MaxNumbers = 12        // numbers in a problem
	MaxDepth   = 16        // brackets in brackets
	MaxList    = 8         // numbers to put in order, at least 2; numbers of a rule table
	MaxCoins   = 20        // coins on the table

	MaxTerms = arithmetic.MaxTerms // numbers of a run or a list of multiples; a run has at least 2
)

// Reading is a text understood.
type Reading struct {
	Text    string // as given
	Problem arithmetic.Problem
	Also    []arithmetic.Problem // other ways to read the text, the likelier first
	Spans   []Span               // which words of the text each number stands in
}

// Span is the stretch of the text, in runes from Start up to End, where a number
// of the problem stands: 0 is the first number, 1 the second, and so on, in the
// order in which the problem is written. That can differ from the order in the
// text: in "take 3 from 8" the first number is 8.
type Span struct {
	Start, End int
	Number     int
}

// Read reads a problem. Its error is always a *[Error], and the Try of the error
// can itself be read.
func Read(text string) (Reading, error) {
	r, f := read(text)
	if f == nil {
		return r, nil
	}
	return Reading{}, &Error{
		Code: f.code, Text: text, Start: f.start, End: f.end,
		Message: strings.Map(visible, f.message), Hint: strings.Map(visible, f.hint), Try: firstReadable(f.tries, 2),
	}
}

// read is Read with the mend of a fault still to be chosen.
func read(text string) (Reading, *fault) {
	if utf8.RuneCountInString(text) > MaxText {
		return Reading{}, tooLong(text)
	}
	runes := []rune(text)
	chars, f := clean(runes)
	if f != nil {
		return Reading{}, f
	}
	tokens, f := scan(runes, chars)
	if f != nil {
		return Reading{}, f
	}
	if tokens, f = joinFractions(runes, unpictured(spoken(tokens))); f != nil {
		return Reading{}, f
	}
	p := &parser{text: runes, tokens: tokens}
	r, f := p.problem()
	if f != nil {
		return Reading{}, f
	}
	r.Text = text
	for i := range r.Spans {
		r.Spans[i].Number = i
	}
	return r, nil
}

// firstReadable is the first of some mended texts that can be read, written as a
// book would; a text that still has a fault is mended again, up to depth times.
// When none can be read it is a problem that can.
func firstReadable(tries []string, depth int) string {
	if try := mend(tries, depth); try != "" {
		return try
	}
	return "402 − 178"
}

func mend(tries []string, depth int) string {
	for _, t := range tries {
		r, f := read(t)
		if f == nil {
			return r.Problem.String()
		}
		if depth > 0 {
			if try := mend(f.tries, depth-1); try != "" {
				return try
			}
		}
	}
	return ""
}
