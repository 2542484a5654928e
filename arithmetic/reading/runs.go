package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// The words of counting by a number.
var (
	countForward = []string{"count", "count up", "count on", "count forward", "count forwards", "skip count", "skip counting", "counting", "skip count up", "skip count forward"}
	countBack    = []string{"count back", "count backward", "count backwards", "count down", "skip count back", "skip count backward", "skip count backwards",
		"skip count down", "counting back", "counting down", "counting backward", "counting backwards"}
	countBy    = []string{"by", "in", "in steps of", "by steps of", "in jumps of", "in groups of", "by groups of"}
	countFrom  = []string{"from", "starting at", "starting from", "starting with", "start at", "start from", "beginning at", "beginning with", "at"}
	countTo    = []string{"to", "up to", "down to", "back to", "until", "through", "stop at", "ending at", "and stop at"}
	countTerms = []string{"terms", "numbers", "term", "number"}
	countTimes = []string{"times", "steps", "jumps", "more", "more numbers", "more times"}
)

// pluralWords are the numbers that one counts by.
var pluralWords = map[string]int64{"ones": 1, "twos": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6, "sevens": 7, "eights": 8,
	"nines": 9, "tens": 10, "elevens": 11, "twelves": 12, "twenties": 20, "fifties": 50, "hundreds": 100, "thousands": 1000}

// What is done when it is not said how far to count, or how long a pattern is.
const (
	defaultJumps = 10
	defaultTerms = 6
)

// amount reads a whole number, also one in the plural: fives, 5s, twenty-fives.
func (p *parser) amount() (t token, n int64, ok bool) {
	here := p.i
	t = p.at(0)
	tens := small[t.text]
	switch many := pluralWords[t.text]; {
	case t.kind == word && many > 0:
		p.i++
		return t, many, true
	case t.kind == word && tens >= 20 && pluralWords[p.at(1).text] > 0 && pluralWords[p.at(1).text] < 10:
		t.end = p.at(1).end
		p.i += 2
		return t, tens + pluralWords[p.at(-1).text], true
	case t.kind == number:
		p.i++
	default:
		t, _ = p.numberWord()
	}
	n, whole := t.num.Int64()
	if t.kind != number || !whole || t.num.Form != arithmetic.Whole {
		p.i = here
		return t, 0, false
	}
	if p.at(0).text == "s" && p.at(0).kind == word {
		p.i++
	}
	return t, n, true
}

// upTo reads how far a row goes.
func (p *parser) upTo() (clause, bool) {
	var to clause
	ok, f := p.clause(countTo, &to)
	return to, ok && f == nil && to.part == nil
}

// clause is one number that a run is told with; the zero value is one not given.
type clause struct {
	token
	n     int64
	given bool
	part  *fraction.Fraction // of a number that is not whole, in place of n
}

// clause reads the number behind one of some words; failed says that the words
// are there without a number.
func (p *parser) clause(words []string, c *clause) (ok bool, f *fault) {
	here := p.i
	if !p.any(words) || c.given {
		p.i = here
		return false, nil
	}
	here = p.i
	if parts, ok := p.parts(); ok {
		*c = parts
		return true, nil
	}
	p.i = here
	t, n, ok := p.amount()
	if !ok {
		return false, p.wantWhole()
	}
	*c = clause{token: t, n: n, given: true}
	return true, nil
}

// length reads how many numbers a run has: 5 terms, 4 times.
func (p *parser) length(terms *clause) bool {
	here := p.i
	t, n, ok := p.amount()
	if !ok || terms.given {
		p.i = here
		return false
	}
	switch {
	case p.any(countTimes):
		n++
	case p.any(countTerms):
	default:
		p.i = here
		return false
	}
	*terms = clause{token: t, n: n, given: true}
	return true
}

// counting reads count by 5 from 10 to 50.
func (p *parser) counting() (Reading, *fault, bool) {
	back := p.any(countBack)
	if !back && !p.any(countForward) {
		return Reading{}, nil, false
	}
	var by, from, to, terms clause
	here := p.i
	if t, n, ok := p.amount(); ok && p.longestOf(countTo) > 0 { // count 10 to 20
		from = clause{token: t, n: n, given: true}
	} else {
		p.i = here
	}
	for {
		here := p.i
		p.pause()
		back = p.any([]string{"back", "backward", "backwards", "down"}) || back
		p.any([]string{"forward", "forwards", "up", "on"})
		for _, c := range []struct {
			words []string
			at    *clause
		}{{countBy, &by}, {countFrom, &from}, {countTo, &to}} {
			if _, f := p.clause(c.words, c.at); f != nil {
				return Reading{}, f, true
			}
		}
		p.length(&terms)
		if p.i == here {
			break
		}
	}
	if f := p.finish(); f != nil {
		return Reading{}, f, true
	}
	r, f := p.runOf(by, from, to, terms, back)
	return r, f, true
}

// runOf makes a run of what is given of it.
func (p *parser) runOf(by, from, to, terms clause, back bool) (Reading, *fault) {
	parts := int64(1)
	if by.part != nil || from.part != nil || to.part != nil {
		var ok bool
		if parts, ok = inParts(&by, &from, &to); !ok {
			return Reading{}, tooFine(p)
		}
	} else if !by.given {
		by.n = 1
	}
	if by.n == 0 {
		return Reading{}, byNothing(p, by.token)
	}
	if from.given && to.given && to.n < from.n {
		back = true
	}
	run := arithmetic.Run{From: from.n, By: by.n, Op: arithmetic.Add}
	if parts > 1 {
		run.Parts = parts
	}
	if back {
		run.Op = arithmetic.Subtract
		if !from.given {
			run.From = to.n + jumpsOf(parts, by.n)*by.n
		}
	}
	if back && to.given && to.n > run.From {
		return Reading{}, wrongWay(p, from, to)
	}
	if to.given {
		terms.n, terms.token = (max(to.n, run.From)-min(to.n, run.From))/by.n+1, to.token
	} else if !terms.given {
		terms.n = jumpsOf(parts, by.n) + 1
		if back { // not below 0
			terms.n = min(terms.n, run.From/by.n+1)
		}
	}
	if terms.n > MaxTerms {
		return Reading{}, tooManyTerms(p, terms, run)
	}
	return p.running(run, terms, []clause{by, from, to})
}

// running checks the numbers of a run, of which the clauses gave some.
func (p *parser) running(run arithmetic.Run, terms clause, given []clause) (Reading, *fault) {
	var spans []Span
	for _, c := range given {
		if c.given {
			spans = append(spans, Span{Start: c.start, End: c.end})
		}
	}
	if terms.n > MaxTerms || terms.n < 2 {
		return Reading{}, tooManyTerms(p, terms, run)
	}
	run.Terms = int(terms.n)
	list := run.List()
	if len(list) < run.Terms && run.Op == arithmetic.Subtract {
		return Reading{}, belowZero(p, run, list)
	}
	if len(list) < run.Terms || list[len(list)-1] > MaxWhole {
		return Reading{}, runTooLarge(p, run)
	}
	return Reading{Problem: arithmetic.Problem{Kind: arithmetic.Counting, Run: run}, Spans: spans}, nil
}

// pause passes commas and the small words between the parts of a problem.
func (p *parser) pause() {
	for p.at(0).kind == separator || p.at(0).text == ":" || p.at(0).kind == stop && p.at(1).kind != end ||
		p.at(0).kind == word && in([]string{"and", "then"}, p.at(0).text) {
		p.i++
	}
}
