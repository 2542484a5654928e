package reading

import (
	"strings"
	"unicode"

	"modeler/arithmetic"
)

// RestorePlus puts back a plus sign that was lost in a query string, where every
// standard library decodes it as a space: 345 278 becomes 345 + 278. It does so
// where two numbers, or a number and a bracket, stand side by side with a space
// between, and are not written like a mixed number, 1 5/4 included; where there is an equal sign also beside a
// blank. All else, and what can be read as it is, stays.
func RestorePlus(text string) string {
	if len(text) > 4*MaxText || !strings.ContainsFunc(text, unicode.IsSpace) {
		return text
	}
	if _, f := read(text); f == nil {
		return text
	}
	runes := []rune(text)
	chars, f := clean(runes)
	if f != nil {
		return text
	}
	tokens, f := scan(runes, chars)
	if f != nil {
		return text
	}
	if tokens, f = joinFractions(runes, tokens); f != nil {
		return text
	}
	equation := false
	for _, t := range tokens {
		equation = equation || t.kind == relation && t.text == "="
	}
	ends := func(t token) bool {
		return t.kind == number || t.kind == closed || equation && (t.kind == blank || t.kind == blankPart)
	}
	starts := func(t token) bool {
		return t.kind == number || t.kind == open || equation && (t.kind == blank || t.kind == blankPart)
	}
	var b strings.Builder
	from := 0
	for i := 1; i < len(tokens); i++ {
		left, right := tokens[i-1], tokens[i]
		gap := string(runes[left.end:max(left.end, right.start)])
		improper := left.num.Form == arithmetic.Whole && right.num.Form == arithmetic.Common && left.kind == number && right.kind == number
		if ends(left) && starts(right) && gap != "" && strings.TrimSpace(gap) == "" && !improper {
			b.WriteString(string(runes[from:left.end]) + " + ")
			from = right.start
		}
	}
	return b.String() + string(runes[from:])
}
