package reading

import (
	"strings"
	"unicode"

	"golang.org/x/text/width"
)

// Code says what kind of error it is; it is stable and part of the API.
type Code string

const (
	Empty         Code = "empty"
	TooLong       Code = "too-long"      // more characters than the bound
	BadCharacter  Code = "bad-character" // control characters, emoji, markup
	UnknownWord   Code = "unknown-word"
	MissingNumber Code = "missing-number"
	MissingSign   Code = "missing-sign"
	Unbalanced    Code = "unbalanced"       // brackets
	TooDeep       Code = "too-deep"         // more nested brackets than the bound
	TooLarge      Code = "too-large"        // a number beyond the bound
	TooMany       Code = "too-many"         // more numbers or unknowns than the bound
	BadNumber     Code = "bad-number"       // 1,2,3 or 2 7/4 or 1.2.3
	ZeroParts     Code = "zero-denominator" // 3/0
	NotYet        Code = "not-yet"          // good arithmetic that is not read yet: 3:15, 1/2 = 2/4 = 4/8

	// Codes of problems that read well but cannot be shown.
	DivideByZero Code = "divide-by-zero"
	Negative     Code = "negative"
	Endless      Code = "endless-decimal" // 1/3 as a decimal
	NoPicture    Code = "no-picture"
	NoSuchModel  Code = "no-such-model"
)

// Error is one thing wrong with a text, for a person: which words are at fault,
// what is wrong, what to do, and a problem near it that works.
type Error struct {
	Code       Code
	Text       string // as given
	Start, End int    // the words at fault, in runes; End is not included
	Message    string // what is wrong: lower case, no full stop, no blame
	Hint       string // what to do
	Try        string // can itself be read; may be empty
}

// Readable reports whether the text could be read and only cannot be shown.
func (e *Error) Readable() bool {
	switch e.Code {
	case DivideByZero, ZeroParts, Negative, Endless, NoPicture, NoSuchModel:
		return true
	}
	return false
}

// Error is the message on one line.
func (e *Error) Error() string { return e.Message }

// Block is the whole error for a terminal: message, text with the words at fault
// underlined, hint and try. A long text is cut to what stands round the fault.
func (e *Error) Block() string {
	var b strings.Builder
	b.WriteString(e.Message + "\n\n")
	if e.Code != Empty {
		text, marks := e.underlined()
		b.WriteString("    " + text + "\n    " + marks + "\n")
	}
	if e.Hint != "" {
		b.WriteString("hint: " + e.Hint + "\n")
	}
	if e.Try != "" {
		b.WriteString("try:  " + e.Try + "\n")
	}
	return b.String()
}

// The most characters of a text that are shown, and how many of them in front of
// the fault.
const (
	widest = 60
	before = 20
)

// underlined is the text and a line of marks that stand under the words at fault.
func (e *Error) underlined() (text, marks string) {
	runes := []rune(e.Text)
	start := min(max(e.Start, 0), len(runes))
	stop := min(max(e.End, start), len(runes))
	from, to := 0, len(runes)
	var line, under strings.Builder
	if len(runes) > widest {
		if stop > widest {
			from = max(0, start-before)
			line.WriteRune('…')
			under.WriteByte(' ')
		}
		to = min(len(runes), from+widest)
	}
	for i := from; i < to; i++ {
		r := visible(runes[i])
		line.WriteRune(r)
		mark := " "
		if i >= start && i < stop {
			mark = "^"
		}
		under.WriteString(strings.Repeat(mark, columns(r)))
	}
	if to < len(runes) {
		line.WriteRune('…')
	}
	if start == stop {
		under.WriteByte('^')
	}
	return line.String(), strings.TrimRight(under.String(), " ")
}

// visible is a character that does no harm on a terminal in place of one that
// might: a space for a tab or a new line, a sign for what has no ink.
func visible(r rune) rune {
	switch {
	case r == '\t' || r == '\n' || r == '\r':
		return ' '
	case r < ' ':
		return '␀' + r
	case r == 0x7f:
		return '␡'
	case !unicode.IsPrint(r) && !unicode.Is(unicode.Zs, r), unicode.Is(unicode.M, r):
		return '�'
	}
	return r
}

// columns is how many columns of a terminal a character takes.
func columns(r rune) int {
	switch width.LookupRune(r).Kind() {
	case width.EastAsianWide, width.EastAsianFullwidth:
		return 2
	}
	return 1
}
