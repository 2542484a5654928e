// Package reading turns what a person writes into a problem.
package reading

import "modeler/arithmetic"

// Reading is a text understood.
type Reading struct {
	Text    string // as given
	Problem arithmetic.Problem
	Also    []arithmetic.Problem // other ways to read the text, the likelier first
	Spans   []Span               // which words of the text each number stands in
}

// Span is the stretch of the text, in runes from Start up to End, where a number
// of the problem stands: 0 is the first number, 1 the second, and so on.
type Span struct {
	Start, End int
	Number     int
}

// Read reads a problem. Its error is always a *[Error].
func Read(text string) (Reading, error) {
	return Reading{}, &Error{Code: Empty, Text: text}
}
