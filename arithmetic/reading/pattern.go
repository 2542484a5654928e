package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// nextOpeners ask how a row of numbers goes on.
var nextOpeners = []string{"continue", "continue pattern", "comes next", "comes next in", "comes next after", "which number comes next",
	"which number comes next in", "number comes next", "number comes next in", "next number in", "next number after", "comes after", "next in", "next after",
	"next", "next number", "pattern", "next numbers in", "complete", "complete pattern", "continue with"}

// next reads a row of numbers behind words that ask how it goes on.
func (p *parser) next() (Reading, *fault, bool) {
	here := p.i
	more := 1
	if n := p.match("next"); n > 0 { // next three numbers in
		p.i += n
		if _, n, ok := p.amount(); ok && n > 0 && n < MaxTerms && p.any(countTerms) {
			more = int(n)
			p.any([]string{"in", "after", "of", "in pattern"})
		} else {
			p.i = here
		}
	}
	if more == 1 && !p.any(nextOpeners) {
		return Reading{}, nil, false
	}
	for p.at(0).text == ":" || p.isPunctuation() {
		p.i++
	}
	row, ok := p.row(true)
	if !ok {
		p.i = here
		return Reading{}, nil, false
	}
	for row[len(row)-1].kind == blank && more > 1 {
		row = append(row, token{kind: blank})
		more--
	}
	r, f := p.rowed(row)
	return r, f, true
}

func (p *parser) isPunctuation() bool {
	return p.at(0).kind == separator || p.at(0).kind == stop || p.at(0).kind == blank && p.at(0).text == "?" && p.at(1).kind == number && !p.at(1).spaced
}

// pattern reads a row of numbers with a blank in it: 3, 6, 9, ?
func (p *parser) pattern() (Reading, *fault, bool) {
	here := p.i
	row, ok := p.row(false)
	if !ok {
		p.i = here
		return Reading{}, nil, false
	}
	r, f := p.rowed(row)
	return r, f, true
}

// row reads numbers and blanks with commas between them; a space alone will do
// where the words in front say that it is a row. The words that ask how it goes on
// may also stand behind it.
func (p *parser) row(spaced bool) ([]token, bool) {
	var row []token
	asked := false
	for {
		t := p.at(0)
		if t.kind != number && t.kind != blank {
			break
		}
		row = append(row, t)
		p.i++
		if !spaced && p.at(0).kind != separator && p.at(0).kind != end && p.at(0).kind != stop && p.at(0).kind != word {
			return row, false
		}
		here := p.i
		for p.at(0).kind == separator || p.match("and") == 1 {
			p.i++
		}
		if !spaced && p.i == here {
			break
		}
	}
	if p.i > 0 && p.any([]string{"what comes next", "what is next", "whats next", "which number comes next", "what number comes next", "and so on"}) {
		asked = true
	} else if p.at(0).kind == stop && p.at(1).kind == word {
		here := p.i
		p.i++
		if asked = p.any([]string{"what comes next", "what is next", "whats next", "which number comes next", "what number comes next"}); !asked {
			p.i = here
		}
	}
	blanks, separated := 0, false
	for _, t := range row {
		if t.kind == blank {
			blanks++
		}
	}
	for _, t := range p.tokens[:p.i] {
		separated = separated || t.kind == separator
	}
	if !spaced && (!separated || blanks == 0 && !asked || len(row) < 2 && !asked) {
		return row, false
	}
	if asked && blanks == 0 || spaced && blanks == 0 {
		row = append(row, token{kind: blank})
	}
	return row, len(row) > 1
}

// rowed finds the rule of a row.
func (p *parser) rowed(row []token) (Reading, *fault) {
	if f := p.finish(); f != nil {
		return Reading{}, f
	}
	parts, ok := partsOfRow(row)
	if !ok {
		return Reading{}, tooFine(p)
	}
	var known []clause // n is the value, and the place is kept beside it
	var places []int64
	for i, t := range row {
		if t.kind != number {
			continue
		}
		v, err := t.num.Value.Mul(fraction.Whole(parts))
		if err != nil || t.num.Form != arithmetic.Whole && t.num.Form != arithmetic.Common && t.num.Form != arithmetic.Mixed {
			return Reading{}, rowOfWholes(p, t)
		}
		n := v.Num() / v.Den()
		known, places = append(known, clause{token: t, n: n, given: true}), append(places, int64(i))
	}
	if len(known) < 2 {
		return Reading{}, shortRow(p, row)
	}
	var found []arithmetic.Problem
	for _, run := range runsThrough(known, places) {
		if run.Terms = len(row); parts > 1 {
			run.Parts = parts
			if run.Op == arithmetic.Multiply {
				continue
			}
		}
		found = append(found, arithmetic.Problem{Kind: arithmetic.Counting, Run: run})
	}
	if len(found) == 0 {
		return Reading{}, noOneRule(p, known)
	}
	r, f := p.running(found[0].Run, clause{token: row[0], n: int64(len(row)), given: true}, known)
	for _, other := range found[1:] {
		if o, bad := p.running(other.Run, clause{token: row[0], n: int64(len(row)), given: true}, known); bad == nil {
			r.Also = append(r.Also, o.Problem)
		}
	}
	return r, f
}

// runsThrough are the rules that the known numbers of a row follow, adding or
// taking away before multiplying.
func runsThrough(known []clause, places []int64) []arithmetic.Run {
	var found []arithmetic.Run
	first, second := known[0], known[1]
	apart := places[1] - places[0]
	step := (second.n - first.n) / apart
	adding := arithmetic.Run{From: first.n - step*places[0], By: max(step, -step), Op: arithmetic.Add}
	if step < 0 {
		adding.Op = arithmetic.Subtract
	}
	follows := step != 0 && adding.From >= 0
	for i, k := range known {
		follows = follows && k.n == adding.From+step*places[i]
	}
	if follows {
		found = append(found, adding)
	}
	for factor := int64(2); first.n > 0 && factor <= second.n/first.n; factor++ {
		from := first.n
		for range places[0] {
			if from%factor != 0 {
				from = 0
			}
			from /= factor
		}
		if from > 0 && multiplies(known, places, from, factor) {
			return append(found, arithmetic.Run{From: from, By: factor, Op: arithmetic.Multiply})
		}
		if factor > 1000 {
			break
		}
	}
	return found
}

// multiplies reports whether the known numbers are from, times factor once for
// each place.
func multiplies(known []clause, places []int64, from, factor int64) bool {
	at, v := int64(0), from
	for i, k := range known {
		for ; at < places[i]; at++ {
			if v > MaxWhole {
				return false
			}
			v *= factor
		}
		if v != k.n {
			return false
		}
	}
	return true
}
