package reading

import "strings"

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

	// Codes of problems that read well but cannot be shown.
	DivideByZero Code = "divide-by-zero"
	Negative     Code = "negative"
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
	case DivideByZero, ZeroParts, Negative, NoPicture, NoSuchModel:
		return true
	}
	return false
}

// Error is the message on one line.
func (e *Error) Error() string { return e.Message }

// Block is the whole error for a terminal: message, text with the words at fault
// underlined, hint and try.
func (e *Error) Block() string {
	var b strings.Builder
	b.WriteString(e.Message + "\n")
	return b.String()
}
