package reading

import "strings"

// match is how many tokens from the i-th on are the words of a phrase, small
// words passed over; 0 when they are not.
func (p *parser) match(phrase string) int {
	n := 0
	for w := ""; phrase != ""; {
		w, phrase, _ = strings.Cut(phrase, " ")
		for p.at(n).kind == word && p.at(n).text != w && in(passedOver, p.at(n).text) {
			n++
		}
		if t := p.at(n); t.kind != word || t.text != w {
			return 0
		}
		n++
	}
	return n
}

// longest is the phrase of a table that matches the most tokens.
func longest[V any](p *parser, table map[string]V) (v V, n int) {
	if p.at(0).kind != word {
		return v, 0
	}
	var found string
	for phrase, value := range table {
		if m := p.match(phrase); m > n || m == n && m > 0 && phrase < found {
			v, n, found = value, m, phrase
		}
	}
	return v, n
}

// any passes the longest of some phrases, if one is there.
func (p *parser) any(phrases []string) bool {
	n := p.longestOf(phrases)
	p.i += n
	return n > 0
}

// longestOf is the tokens of the longest of some phrases that is there.
func (p *parser) longestOf(phrases []string) int {
	n := 0
	if p.at(0).kind != word {
		return n
	}
	for _, phrase := range phrases {
		n = max(n, p.match(phrase))
	}
	return n
}

func in(list []string, s string) bool {
	for _, l := range list {
		if l == s {
			return true
		}
	}
	return false
}
