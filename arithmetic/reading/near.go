package reading

import (
	"cmp"
	"slices"
	"strings"

	"modeler/arithmetic"
)

// checkWords finds the first word that the reader does not know.
func (p *parser) checkWords() *fault {
	var strange []token
	for _, t := range p.tokens {
		if t.kind == word && !p.isPlural(t) && (!slices.Contains(vocabulary, t.text) || p.unexplained(t)) {
			strange = append(strange, t)
		}
	}
	if len(strange) == 0 {
		return nil
	}
	for _, t := range strange {
		if explain, ok := explained[t.text]; ok {
			return explain(p, t)
		}
	}
	t := strange[0]
	f := &fault{UnknownWord, t.start, t.end, "the word " + quote(strings.Map(inked, string(p.text[t.start:t.end]))) + " is not one that can be read",
		"write the problem with numbers and signs, as it stands in the book", nil}
	if len(strange) > 3 || len(strange) > 1 && p.countWords() > 5 {
		f.hint = "stories cannot be read yet: write the problem in numbers and signs"
	} else if p.before(t).kind == number {
		f.hint = "leave out units and the names of things"
	}
	if unlike(strange) {
		f.hint = "write both amounts in the same unit, and leave out its name"
		return f
	}
	for i, w := range nearest(t.text) {
		meant := swap(p.text, t.start, t.end, w)
		if len(strange) == 1 {
			if _, still := read(meant); still != nil && len(still.tries) == 0 {
				continue
			}
		}
		if i == 0 && len(strange) <= 3 {
			f.hint = "perhaps " + quote(w) + " was meant"
		}
		f.tries = append(f.tries, meant)
	}
	if without, ok := p.without(strange); ok {
		f.tries = append(f.tries, without)
	}
	return f
}

// unexplained reports whether t is a word that is read only behind some others:
// 98 ÷ 4 with remainder, common multiple.
func (p *parser) unexplained(t token) bool {
	if _, ok := explained[t.text]; !ok {
		return false
	}
	before := p.before(t)
	if t.text == "factor" {
		return before.text == "a"
	}
	if before.text == "a" {
		before = p.before(before)
	}
	return before.text != "with" && before.text != "common"
}

func (p *parser) countWords() int {
	n := 0
	for _, t := range p.tokens {
		if t.kind == word {
			n++
		}
	}
	return n
}

// isPlural reports whether t is the s behind a number: 5s.
func (p *parser) isPlural(t token) bool {
	b := p.before(t)
	return t.text == "s" && b.kind == number && t.start-b.end <= 1 && (t.start == b.end || p.text[b.end] != ' ')
}

// before is the token in front of another.
func (p *parser) before(t token) token {
	for i := 1; i < len(p.tokens); i++ {
		if p.tokens[i].start == t.start {
			return p.tokens[i-1]
		}
	}
	return token{}
}

// without is the text without the words that cannot be read, where they name what
// the numbers count or stand at an end, and what is left can be read as it is.
func (p *parser) without(strange []token) (string, bool) {
	named := token{}
	for _, t := range strange {
		before := p.before(t)
		atEnd := t.start == p.tokens[0].start || p.tokens[len(p.tokens)-2].start == t.start
		if before.kind != number && before.start != named.start && !atEnd {
			return "", false
		}
		named = t
	}
	var b strings.Builder
	from := 0
	for _, t := range strange {
		// One character can fold to several words.
		b.WriteString(string(p.text[from:max(from, t.start)]))
		from = max(from, t.end)
	}
	b.WriteString(string(p.text[from:]))
	_, f := read(b.String())
	return b.String(), f == nil
}

// units are the names of measures, by what stands for the same one.
var units = map[string]string{"m": "meter", "meters": "meter", "meter": "meter", "cm": "centimeter", "centimeters": "centimeter",
	"mm": "millimeter", "millimeters": "millimeter", "km": "kilometer", "kilometers": "kilometer", "kg": "kilogram", "kilograms": "kilogram",
	"g": "gram", "grams": "gram", "l": "liter", "liters": "liter", "ml": "milliliter", "milliliters": "milliliter",
	"ft": "foot", "foot": "foot", "feet": "foot", "inch": "inch", "inches": "inch", "yd": "yard", "yards": "yard", "yard": "yard",
	"mile": "mile", "miles": "mile", "lb": "pound", "pounds": "pound", "oz": "ounce", "ounces": "ounce", "h": "hour", "hr": "hour",
	"hours": "hour", "hour": "hour", "min": "minute", "minutes": "minute", "minute": "minute", "s": "second", "sec": "second", "seconds": "second",
	"days": "day", "day": "day", "weeks": "week", "week": "week", "cups": "cup", "cup": "cup", "pints": "pint", "quarts": "quart", "gallons": "gallon"}

// unlike reports whether some words are names of different measures, whose
// amounts cannot be put together as they stand.
func unlike(list []token) bool {
	one := ""
	for _, t := range list {
		unit := units[t.text]
		if unit != "" && one != "" && unit != one {
			return true
		}
		one = cmp.Or(unit, one)
	}
	return false
}

// explained are words for what cannot be read yet.
var explained = map[string]func(*parser, token) *fault{
	"trapezoid": otherShape, "rhombus": otherShape, "oval": otherShape, "heart": otherShape, "star": otherShape, "diamond": otherShape, "kite": otherShape, "heptagon": otherShape,
	"r": remainder, "rem": remainder, "remainder": remainder,
	"multiple": multipleOf, "divisible": multipleOf, "factor": multipleOf,
}

// remainder is the fault of a claim that names what is left over.
func remainder(p *parser, t token) *fault {
	f := &fault{NotYet, t.start, t.end, "a remainder cannot be read in a problem yet",
		"ask for the division alone: the lesson says what is left over", []string{string(p.text[:t.start])}}
	for i, mark := range p.tokens {
		if i > 0 && (mark.kind == relation || relations[mark.text] == arithmetic.Equal && mark.kind == word) {
			f.tries = []string{string(p.text[:mark.start])}
			break
		}
	}
	return f
}

// multipleOf is the fault of a claim that one number is so many times another.
func multipleOf(p *parser, t token) *fault {
	f := &fault{NotYet, t.start, t.end, "the word " + t.quoted() + " cannot be read yet", "divide, and see whether anything is left over", nil}
	var list []token
	for _, n := range p.tokens {
		if n.kind == number {
			list = append(list, n)
		}
	}
	if len(list) == 2 {
		if t.text == "factor" { // is 7 a factor of 42
			list[0], list[1] = list[1], list[0]
		}
		f.tries = []string{list[0].text + " ÷ " + list[1].text}
	}
	return f
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
