package api

import (
	"net/url"
	"regexp"
	"strings"
)

// query has the parameters of a URL. Of a parameter that is given more than
// once the first counts; one that is given empty counts as not given.
type query map[string]string

// readQuery decodes a query string as every standard library does, with two
// kindnesses: a semicolon is an ordinary character, and a percent sign that
// begins no escape stands for itself.
func readQuery(raw string) query {
	q := query{}
	for raw != "" {
		var pair string
		pair, raw, _ = strings.Cut(raw, "&")
		name, value, _ := strings.Cut(pair, "=")
		name = decode(name)
		if _, again := q[name]; !again && value != "" {
			q[name] = decode(value)
		}
	}
	return q
}

func decode(s string) string {
	if plain, err := url.QueryUnescape(s); err == nil {
		return plain
	}
	var b strings.Builder
	for {
		at := strings.IndexByte(s, '%')
		if at < 0 {
			b.WriteString(strings.ReplaceAll(s, "+", " "))
			return b.String()
		}
		b.WriteString(strings.ReplaceAll(s[:at], "+", " "))
		s = s[at:]
		if char, err := url.QueryUnescape(s[:min(3, len(s))]); err == nil {
			b.WriteString(char)
			s = s[3:]
			continue
		}
		b.WriteByte('%')
		s = s[1:]
	}
}

// encode writes a value for a query string. Beside letters and digits it leaves
// what a query may have and a problem often has, so that 3/4=6/8 stays readable
// in a URL.
func encode(s string) string {
	const hex = "0123456789ABCDEF"
	var b strings.Builder
	for i := range len(s) {
		switch c := s[i]; {
		case c == ' ':
			b.WriteByte('+')
		case 'a' <= c && c <= 'z', 'A' <= c && c <= 'Z', '0' <= c && c <= '9', strings.IndexByte("-._~/=,:", c) >= 0:
			b.WriteByte(c)
		default:
			b.WriteByte('%')
			b.WriteByte(hex[c>>4])
			b.WriteByte(hex[c&15])
		}
	}
	return b.String()
}

// spelling writes a problem with the signs that stand on a keyboard and without
// the spaces that a reader does not need, for short URLs: 402-178, 7x8. A sign after
// a word stays as it is: rule × 3.
var spelling = shorter{strings.NewReplacer(" − ", "-", " × ", "x", " + ", "+", " = ", "=", " < ", "<", " > ", ">")}

type shorter struct{ signs *strings.Replacer }

var afterWord = regexp.MustCompile(`[a-z] [−×+=<>] `)

func (s shorter) Replace(problem string) string {
	var b strings.Builder
	for {
		at := afterWord.FindStringIndex(problem)
		if at == nil {
			break
		}
		b.WriteString(s.signs.Replace(problem[:at[0]]) + problem[at[0]:at[1]])
		problem = problem[at[1]:]
	}
	return b.String() + s.signs.Replace(problem)
}
