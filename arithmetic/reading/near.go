package reading

import (
	"cmp"
	"slices"
	"strings"
)

// checkWords finds the first word that the reader does not know.
func (p *parser) checkWords() *fault {
	unknown := func(t token) bool { return t.kind == word && !slices.Contains(vocabulary, t.text) }
	strange := 0
	for _, t := range p.tokens {
		if unknown(t) {
			strange++
		}
	}
	for i, t := range p.tokens {
		if !unknown(t) {
			continue
		}
		f := &fault{UnknownWord, t.start, t.end, "the word " + quote(strings.Map(inked, string(p.text[t.start:t.end]))) + " is not one that can be read",
			"write the problem with numbers and signs, as it stands in the book", nil}
		if strange > 3 {
			f.hint = "stories cannot be read yet: write the problem in numbers and signs"
		} else if i > 0 && p.tokens[i-1].kind == number {
			f.hint = "leave out units and the names of things"
		}
		for i, w := range nearest(t.text) {
			if i == 0 && strange <= 3 {
				f.hint = "perhaps " + quote(w) + " was meant"
			}
			f.tries = append(f.tries, swap(p.text, t.start, t.end, w))
		}
		f.tries = append(f.tries, swap(p.text, t.start, t.end, ""))
		return f
	}
	return nil
}

// nearest is the words of the vocabulary that a word can have been meant for, at
// most three, the nearest first: one slip away, or two for a word of five
// letters and more.
func nearest(w string) []string {
	word := []rune(w)
	slips := 1
	switch {
	case len(word) < 3 || len(word) > 20:
		return nil
	case len(word) > 4:
		slips = 2
	}
	type found struct {
		word string
		away int
	}
	var near []found
	for _, known := range vocabulary {
		if len(known) < 3 {
			continue
		}
		if d := distance(word, []rune(known)); d <= slips {
			near = append(near, found{known, d})
		}
	}
	slices.SortStableFunc(near, func(a, b found) int { return cmp.Compare(a.away, b.away) })
	var words []string
	for _, f := range near[:min(len(near), 3)] {
		words = append(words, f.word)
	}
	return words
}

// distance is how many slips lead from a to b: a letter put in, left out, taken
// for another, or two neighbors changed round (the optimal string alignment
// distance; Damerau 1964, Levenshtein 1966).
func distance(a, b []rune) int {
	before, last := make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := range a {
		row := make([]int, len(b)+1)
		row[0] = i + 1
		for j := range b {
			changed := last[j]
			if a[i] != b[j] {
				changed++
			}
			row[j+1] = min(changed, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
		before, last = last, row
	}
	return last[len(b)]
}
