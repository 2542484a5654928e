package reading

import (
	"strings"
	"unicode"

	"modeler/arithmetic"
)

// kind is what a token is.
type kind uint8

const (
	end       kind = iota // of the text
	number                // a number, fractions and mixed numbers included
	blank                 // ? _ □
	blankPart             // a fraction with a blank in it: ?/8
	slash                 // a fraction bar that is not yet part of a number
	sign                  // + - × ÷ :
	relation              // = < >
	open                  // (
	closed                // )
	separator             // , ;
	stop                  // . !
	word                  // letters
)

// token is a number, sign or word of a text.
type token struct {
	kind       kind
	text       string // as folded
	start, end int    // in runes of the text; end is not included
	spaced     bool   // a space stands in front
	num        arithmetic.Number
	part       arithmetic.Blank
	commas     bool // of a number: it was written with commas or a thin space
}

// scan cuts the characters of a text in tokens; the last is the end.
func scan(text []rune, chars []char) ([]token, *fault) {
	s := &scanner{text: text, chars: chars}
	for s.i < len(chars) {
		if c := chars[s.i].r; c == ' ' || c == thin || c == '\'' {
			s.spaced = true
			s.i++
			continue
		}
		t, f := s.next()
		if f != nil {
			return nil, f
		}
		if t.kind == end {
			continue
		}
		t.spaced, s.spaced = s.spaced, false
		s.out = append(s.out, t)
	}
	return append(s.out, token{kind: end, start: len(text), end: len(text), spaced: true}), nil
}

type scanner struct {
	text   []rune
	chars  []char
	i      int
	spaced bool
	out    []token
}

// peek is the character n places on, or 0.
func (s *scanner) peek(n int) rune {
	if i := s.i + n; i >= 0 && i < len(s.chars) {
		return s.chars[i].r
	}
	return 0
}

// cut makes a token of the next n characters.
func (s *scanner) cut(k kind, n int) token {
	var b strings.Builder
	for _, c := range s.chars[s.i : s.i+n] {
		b.WriteRune(c.r)
	}
	t := token{kind: k, text: b.String(), start: s.chars[s.i].at, end: s.chars[s.i+n-1].at + 1}
	s.i += n
	return t
}

// run counts the characters from the next one on that are good.
func (s *scanner) run(good func(rune) bool) int {
	n := 0
	for s.i+n < len(s.chars) && good(s.peek(n)) {
		n++
	}
	return n
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }
func isBlank(r rune) bool { return r == '?' || r == '_' }

func (s *scanner) next() (token, *fault) {
	switch c := s.peek(0); {
	case isDigit(c), c == '.' && isDigit(s.peek(1)):
		return s.number()
	case c == '$':
		return s.dollars()
	case c == '¢':
		return token{}, s.cents()
	case c == '%':
		return token{}, s.percent()
	case unicode.IsLetter(c):
		return s.word(), nil
	case isBlank(c):
		return s.cut(blank, s.run(isBlank)), nil
	case c == '.':
		n := s.run(func(r rune) bool { return r == '.' })
		if n > 2 {
			t := s.cut(blank, n)
			return t, nil
		}
		return s.cut(stop, n), nil
	case c == '-' && unicode.IsLetter(s.peek(-1)) && unicode.IsLetter(s.peek(1)):
		s.i++
		s.spaced = true
		return token{}, nil // forty-two
	case c == '(':
		if n := 1 + s.runFrom(1, ' '); s.peek(n) == ')' {
			return s.cut(blank, n+1), nil
		}
		return s.cut(open, 1), nil
	case c == '<' && (unicode.IsLetter(s.peek(1)) && (unicode.IsLetter(s.peek(2)) || s.peek(2) == '>') || s.peek(1) == '/' || s.peek(1) == '!'):
		return token{}, s.markup()
	}
	kinds := map[rune]kind{'/': slash, '=': relation, '<': relation, '>': relation, ')': closed,
		',': separator, ';': separator, '!': stop}
	k, ok := kinds[s.peek(0)]
	if !ok {
		k = sign
	}
	return s.cut(k, 1), nil
}

// runFrom counts the characters r from the n-th on.
func (s *scanner) runFrom(n int, r rune) int {
	start := n
	for s.peek(n) == r {
		n++
	}
	return n - start
}

// word is a run of letters; an apostrophe inside is left out: what's.
func (s *scanner) word() token {
	n := s.run(func(r rune) bool { return unicode.IsLetter(r) })
	for s.peek(n) == '\'' && unicode.IsLetter(s.peek(n+1)) {
		n++
		for unicode.IsLetter(s.peek(n)) {
			n++
		}
	}
	t := s.cut(word, n)
	if t.text == "vs" && s.peek(0) == '.' {
		s.i++
	}
	t.text = strings.ReplaceAll(t.text, "'", "")
	return t
}

func (s *scanner) markup() *fault {
	stop := len(s.text)
	for i := s.i; i < len(s.chars); i++ {
		if s.chars[i].r == '>' {
			stop = s.chars[i].at + 1
			break
		}
	}
	return markup(s.text, s.chars[s.i].at, stop)
}
