package words

import (
	"regexp"
	"slices"
	"strings"
)

// Wording is how numbers and parts are named. Every sentence is made in US English;
// another wording of English changes the few words that differ in the finished
// sentence, so no sentence is written twice. A language of other sentences would be
// another package beside this one.
type Wording uint8

const (
	American Wording = iota // four hundred two, three fourths, color
	British                 // four hundred and two, three quarters, colour
)

// Wordings are the names of the wordings, in their order.
var Wordings = []string{"us", "british"}

// Lang is the language of the wording (BCP 47).
func (w Wording) Lang() string { return [...]string{"en", "en-GB"}[w] }

// token is a word; twenty-one is one.
var token = regexp.MustCompile(`[A-Za-z]+(?:-[A-Za-z]+)*`)

// Text is a text in the wording.
//
// That British English has an "and" before the tens and ones of a number and says
// quarter is from the National Curriculum's own usage and from dictionaries, from
// memory.
func (w Wording) Text(text string) string {
	if w == American {
		return text
	}
	spans := token.FindAllStringIndex(text, -1)
	word := func(i int) string {
		if i < 0 || i >= len(spans) {
			return ""
		}
		return strings.ToLower(text[spans[i][0]:spans[i][1]])
	}
	// close reports whether only a space stands between a word and the next.
	close := func(i int) bool {
		return i >= 0 && i+1 < len(spans) && text[spans[i][1]:spans[i+1][0]] == " "
	}
	var b strings.Builder
	end := 0
	for i, s := range spans {
		b.WriteString(text[end:s[0]])
		end = s[1]
		here := text[s[0]:s[1]]
		if joins(word(i-2), word(i-1), word(i), word(i+1)) && close(i-1) && (word(i-1) != "hundred" || close(i-2)) {
			b.WriteString("and ")
		}
		other, changes := inBritain[strings.ToLower(here)]
		switch {
		case strings.EqualFold(here, "fourth") && isPlace(word(i-1), word(i+1)):
			b.WriteString(here)
		case changes && here[0] < 'a':
			b.WriteString(upper(other))
		case changes:
			b.WriteString(other)
		default:
			b.WriteString(here)
		}
	}
	return b.String() + text[end:]
}

// inBritain are the words that are others in British English.
var inBritain = map[string]string{
	"fourth": "quarter", "fourths": "quarters", "color": "colour", "colors": "colours", "colored": "coloured",
	"center": "centre", "centers": "centres", "gray": "grey", "neighbor": "neighbour", "neighbors": "neighbours",
}

// isPlace reports whether "fourth" between two words says which one it is of many,
// and not what part of a whole: the fourth group, a fourth time.
func isPlace(before, after string) bool {
	return before == "the" && after != "" || after == "time"
}

// joins reports whether British English has "and" before the third of four words:
// after hundred, and after thousand or million where no hundred follows.
func joins(first, second, third, fourth string) bool {
	if !isBelowHundred(third) {
		return false
	}
	switch second {
	case "hundred":
		return isBelowHundred(first)
	case "thousand", "million":
		return (isBelowHundred(first) || first == "hundred") && fourth != "hundred" && fourth != "thousand"
	}
	return false
}

// isBelowHundred reports whether a word is the name of a number from one to
// ninety-nine.
func isBelowHundred(word string) bool {
	ten, one, both := strings.Cut(word, "-")
	if both {
		return slices.Contains(tens[2:], ten) && slices.Contains(small[1:10], one)
	}
	return slices.Contains(tens[2:], word) || slices.Contains(small[1:], word)
}

// Phrase is a phrase in the wording.
func (w Wording) Phrase(p Phrase) Phrase {
	if w == American {
		return p
	}
	out := make(Phrase, len(p))
	// A number is one span, but the words round a span say what it is.
	whole := p.String()
	if changed := w.Text(whole); changed == whole {
		return p
	}
	for i, s := range p {
		out[i] = Span{w.Text(s.Text), s.Role}
	}
	return out
}
