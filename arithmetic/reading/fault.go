package reading

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"modeler/arithmetic"
)

// fault is an error whose mend is still to be chosen: the first of the tries that
// can be read.
type fault struct {
	code          Code
	start, end    int // in runes
	message, hint string
	tries         []string
}

// swap is a text with the runes from start up to end replaced.
func swap(text []rune, start, end int, with string) string {
	return string(text[:start]) + with + string(text[end:])
}

func (t token) quoted() string { return quote(t.text) }

// quote puts a word in quotation marks, cut when it is long.
func quote(s string) string { return "“" + clipped(s) + "”" }

// shown is a sign as a book prints it.
func (t token) shown() string {
	switch {
	case t.text == "-":
		return "−"
	case t.text == "x":
		return "×"
	case t.kind == slash:
		return "the fraction bar"
	case t.kind == word || strings.HasSuffix(t.text, "."): // ... would end the sentence
		return t.quoted()
	}
	return clipped(t.text)
}

func nothing(p *parser) *fault {
	return &fault{Empty, 0, 0, "there is no problem here yet", "type one as it stands in the book", nil}
}

func tooLong(text string) *fault {
	return &fault{TooLong, MaxText, utf8.RuneCountInString(text),
		fmt.Sprintf("the text is longer than %d characters", MaxText), "give one problem at a time", nil}
}

func badCharacter(text []rune, i int) *fault {
	stop := i + 1
	for stop < len(text) && (unseen(text[stop]) || alike[text[stop]] == 0 && text[stop] != thin && fold(text[stop]) == "") {
		stop++
	}
	f := &fault{BadCharacter, i, stop, quote(strings.Map(inked, string(text[i:stop]))) + " is not part of a problem",
		"use numbers, plain words and the signs + − × ÷ / = < >", []string{swap(text, i, stop, " "), swap(text, i, stop, "")}}
	switch text[i] {
	case '≤', '≥', '≠':
		f.code, f.end, f.message = NotYet, i+1, string(text[i])+" cannot be read yet"
		f.hint, f.tries = "use =, < or >", []string{swap(text, i, i+1, map[rune]string{'≤': "<", '≥': ">", '≠': "="}[text[i]])}
	case '€', '£', '¥':
		f.end, f.message = i+1, "money is read in dollars only"
		f.hint, f.tries = "use the sign $, or leave it out", []string{swap(text, i, i+1, "$"), swap(text, i, i+1, "")}
	}
	if text[i] < ' ' || text[i] == 0x7f || text[i] >= 0x80 && text[i] < 0xa0 {
		f.message, f.hint = "there is a hidden control character here", "delete it, or type the problem again"
	} else if !unicode.IsPrint(text[i]) {
		f.message, f.hint = "there is a character here that cannot be shown", "delete it, or type the problem again"
	}
	return f
}

// inked keeps the characters of a text that can be printed.
func inked(r rune) rune {
	if unicode.IsPrint(r) {
		return r
	}
	return -1
}

func markup(text []rune, start, end int) *fault {
	return &fault{BadCharacter, start, end, "this is the code of a page, not part of a problem",
		"give the problem as plain text", []string{swap(text, start, end, " ")}}
}

func smallDigits(text []rune, start, end int) *fault {
	return &fault{NotYet, start, end, "small raised or lowered digits are read only in a fraction",
		"write powers as products: 3 × 3", []string{swap(text, start, end, "")}}
}

// noOperand is the fault where a number should stand.
func noOperand(p *parser) *fault {
	t, before := p.at(0), p.at(-1)
	if p.i == 0 {
		before = token{kind: end}
	}
	insert := func(at int, s string) []string { return []string{swap(p.text, at, at, s)} }
	switch {
	case t.text == "-" && p.at(1).kind == number && !p.at(1).spaced:
		return &fault{Negative, t.start, p.at(1).end, "−" + p.at(1).text + " is less than 0",
			"the pictures start at 0; to take a number away, write the number it is taken from in front", []string{swap(p.text, t.start, t.end, "")}}
	case isMark(t) && isMark(before):
		return &fault{MissingNumber, before.start, t.end, "there is no number between " + before.shown() + " and " + t.shown(),
			"put a number between them, or leave one of them out",
			append([]string{swap(p.text, t.start, t.end, "")}, insert(t.start, " 2 ")...)}
	case isMark(t) || t.text == "x":
		f := &fault{MissingNumber, t.start, t.end, "there is no number in front of " + t.shown(),
			"put a number in front, or ? for one that is to be found", insert(t.start, " 2 ")}
		if v, ok := p.at(1).num.Int64(); ok && t.text == "-" { // more than is taken away
			f.tries = insert(t.start, fmt.Sprintf(" %d ", v+3))
		} else if t.text == "=" {
			f.tries = []string{swap(p.text, t.start, t.end, "")}
		}
		return f
	case t.kind == closed && before.kind == end:
		return notOpened(p, t)
	case before.kind != end && (t.kind == end || t.kind == closed || t.kind == stop || t.kind == separator):
		f := &fault{MissingNumber, before.start, before.end, "there is no number after " + before.shown(),
			"put a number after it, or ? for one that is to be found", insert(before.end, after(before))}
		if p.count > 1 && (before.kind != word || before.text == "x") { // 402 − 178 −
			f.hint = "leave it out, or put a number after it"
			f.tries = append([]string{swap(p.text, before.start, before.end, "")}, f.tries...)
		}
		return f
	case t.text == "more" && before.text == "times":
		return &fault{NotYet, before.start, t.end, "“times more than” can be taken in two ways", "say how many times as many",
			[]string{swap(p.text, before.start, p.at(1).end, "times as many as")}}
	case t.kind == word:
		return misplaced(p, t)
	}
	return &fault{MissingNumber, t.start, t.end, "there is no number here", "start with a number",
		append([]string{swap(p.text, t.start, t.end, "")}, insert(t.start, " 2 ")...)}
}

// after is a number to put after a sign: 1 can be taken from any whole number.
func after(t token) string {
	if t.text == "-" {
		return " 1 "
	}
	return " 2 "
}

func isMark(t token) bool {
	return t.kind == sign || t.kind == relation || t.kind == slash || t.kind == word && t.text == "x"
}

// misplaced is the fault of a known word in a place where it says nothing. Only
// words in front of all numbers or behind them can be left out without making
// another problem of the text.
func misplaced(p *parser, t token) *fault {
	f := &fault{UnknownWord, t.start, t.end, "the word " + t.quoted() + " does not fit here",
		"write the problem with numbers and signs, as it stands in the book", nil}
	first, last := slices.IndexFunc(p.tokens, isNumber), len(p.tokens)-1
	for last > 0 && !isNumber(p.tokens[last]) {
		last--
	}
	switch {
	case first < 0:
	case t.start >= p.tokens[last].end:
		f.tries = []string{swap(p.text, t.start, len(p.text), "")}
	case t.end <= p.tokens[first].start:
		f.tries = []string{string(p.text[t.end:]), string(p.text[p.tokens[first].start:])}
	}
	return f
}

func isNumber(t token) bool {
	_, named := small[t.text]
	_, part := partNames[t.text]
	return t.kind == number || t.kind == blank || t.kind == blankPart || t.kind == word && (named || part)
}

// leftover is the fault of what stands behind an expression and does not go on
// with it.
func (p *parser) leftover() *fault {
	t := p.at(0)
	switch t.kind {
	case number, blank, blankPart, open:
		return p.missingSign(t)
	case closed:
		return notOpened(p, t)
	case separator:
		return p.comma(t)
	case word:
		if _, ok := small[t.text]; ok || in(unknowns, t.text) {
			return p.missingSign(t)
		}
		return misplaced(p, t)
	case end:
		before := p.at(-1)
		return &fault{MissingNumber, before.start, before.end, "the problem is not finished here",
			"say what to do with the number", []string{string(p.text[:before.start])}}
	}
	first := slices.IndexFunc(p.tokens, func(t token) bool { return t.kind == number })
	return &fault{BadCharacter, t.start, t.end, t.shown() + " does not fit here", "leave it out, or what stands in front of it",
		[]string{string(p.text[p.tokens[max(first, 0)].start:]), swap(p.text, t.start, len(p.text), ""), swap(p.text, t.start, t.end, " ")}}
}

// missingSign is the fault of two operands side by side, and of a mixed number
// whose fraction is too large.
func (p *parser) missingSign(t token) *fault {
	before := p.at(-1)
	with := func(sign string) string { return swap(p.text, before.end, t.start, sign) }
	f := &fault{MissingSign, before.start, t.end, "there is no sign between the two numbers",
		"put + or - between them", []string{with(" + "), with(" = ")}}
	switch {
	case isThousands(before, t):
		whole := string(p.text[before.start:before.end]) + "," + string(p.text[t.start:t.end])
		f.message, f.hint = "a space does not mark thousands here", "write large numbers with a comma: "+whole
		f.tries = append([]string{swap(p.text, before.start, t.end, whole)}, f.tries...)
	case before.kind == number && t.kind == number && before.num.Form == arithmetic.Whole && t.num.Form == arithmetic.Common:
		if t.num.Value.Sign() > 0 {
			f.code, f.message = BadNumber, "the fraction in a mixed number is less than 1"
			whole := arithmetic.AsMixed(mixed(before, t).num.Value).String()
			f.hint = "write " + whole + ", or put + between the two numbers"
			f.tries = append([]string{swap(p.text, before.start, t.end, whole)}, f.tries...)
		}
	case t.kind == open:
		f.message, f.hint, f.tries = "there is no sign in front of the bracket", "put × there, or the sign that is meant", []string{with(" × "), with(" + ")}
	case before.kind == closed:
		f.message, f.hint, f.tries = "there is no sign behind the bracket", "put × there, or the sign that is meant", []string{with(" × "), with(" + ")}
	case t.kind == blank || before.kind == blank || t.kind == word:
		f.message = "there is no sign beside the blank"
	case before.kind == word:
		f.message = "there is no sign in front of the number"
	}
	return f
}

// isThousands reports whether two numbers side by side can only be one with a
// space in it: 50 000.
func isThousands(before, t token) bool {
	return before.kind == number && t.kind == number && before.num.Form == arithmetic.Whole && len(before.text) <= 3 &&
		before.num.Value.Sign() > 0 && len(t.text) == 3 && t.text[0] == '0' && t.num.Form == arithmetic.Whole
}

// comma is the fault of a comma that is neither in a number nor in a list.
func (p *parser) comma(t token) *fault {
	first, last := p.i-1, p.i
	for p.tokens[last].kind == separator && p.tokens[last+1].kind == number && !p.tokens[last+1].spaced {
		last += 2
	}
	start, stop := p.tokens[max(first, 0)].start, p.tokens[last-1].end
	if last == p.i || t.spaced || t.text == ";" {
		return &fault{BadCharacter, t.start, t.end, "a list of numbers says in front what to do with them",
			"write order 1/2, 3/4 or compare 1/2 and 3/4, or put a sign between the numbers",
			[]string{"order " + string(p.text), swap(p.text, t.start, t.end, " + ")}}
	}
	written := strings.TrimSpace(string(p.text[start:stop]))
	f := &fault{BadNumber, start, stop, "the commas in " + clipped(written) + " do not mark groups of three digits",
		"write 1,204 with a comma, 0.5 with a point, and a list as in order 1, 2, 3", nil}
	if strings.Count(written, ",") == 1 {
		f.tries = append(f.tries, swap(p.text, start, stop, strings.Replace(written, ",", ".", 1)))
	}
	f.tries = append(f.tries, "order "+string(p.text), swap(p.text, start, stop, strings.ReplaceAll(written, ",", "")))
	return f
}

func clipped(s string) string {
	if r := []rune(s); len(r) > 20 {
		return string(r[:20]) + "…"
	}
	return s
}
