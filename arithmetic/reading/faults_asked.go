package reading

import (
	"fmt"

	"modeler/arithmetic"
)

// The faults of problems that ask something of a number in words.

// wanted says, for each kind, of which numbers it is asked.
var wanted = map[arithmetic.Kind]string{
	arithmetic.ExpandedForm:    "expanded form is read for whole numbers and decimals only",
	arithmetic.InWords:         "names are read for whole numbers and decimals only",
	arithmetic.Parity:          "only whole numbers are even or odd",
	arithmetic.Primality:       "primes are found among the whole numbers from 1 up",
	arithmetic.WaysToMake:      "pairs are found for whole numbers only",
	arithmetic.Multiples:       "multiples are found of whole numbers from 1 up",
	arithmetic.CommonMultiples: "multiples are found of whole numbers from 1 up",
	arithmetic.CommonFactors:   "factors are found of whole numbers from 1 up",
	arithmetic.RuleTable:       "a table is read for whole numbers only",
}

func notWhole(p *parser, kind arithmetic.Kind, c piece) *fault {
	f := &fault{BadNumber, c.start, c.end, wanted[kind], "give a whole number", nil}
	if n, ok := c.expr.(arithmetic.Number); ok && n.Value.Num() > n.Value.Den() {
		f.tries = []string{swap(p.text, c.start, c.end, fmt.Sprint(n.Value.Num()/n.Value.Den()))}
	}
	f.tries = append(f.tries, swap(p.text, c.start, c.end, "6"))
	return f
}

func howManyMultiples(p *parser, terms int64) *fault {
	t := p.terms
	f := &fault{TooMany, t.start, t.end, fmt.Sprintf("these are more than %d multiples", MaxTerms),
		fmt.Sprintf("ask for %d at most", MaxTerms), []string{swap(p.text, t.start, t.end, "10")}}
	if terms < 1 {
		f.code, f.message, f.hint = BadNumber, "this asks for no multiples", "ask for 1 or more"
	}
	return f
}

func commonWithWhat(p *parser, c piece) *fault {
	return &fault{MissingNumber, c.start, c.end, "there is only one number here", "give two numbers with and between them",
		[]string{swap(p.text, c.end, c.end, " and 6"), swap(p.text, c.start, c.end, "4 and 6")}}
}

func twoAtATime(p *parser, all []piece) *fault {
	return &fault{TooMany, all[2].start, all[len(all)-1].end, "there are more than two numbers here", "take two at a time",
		[]string{string(p.text[:all[1].end])}}
}

// The faults of digits.

func placesOfWhole(p *parser, t token) *fault {
	f := &fault{NotYet, t.start, t.end, "digits are read in whole numbers and decimals only", "give a whole number or a decimal", nil}
	if whole := t.num.Value.Num() / t.num.Value.Den(); whole > 0 {
		f.tries = []string{fmt.Sprintf("value of the ones digit in %d", whole)}
	}
	f.tries = append(f.tries, "value of the hundreds digit in 347")
	return f
}

func noSuchDigit(p *parser, in, named token, asked placeOf, place bool) *fault {
	n := in.num
	highest := placesOf(n, placeOf{}, false)[0]
	f := &fault{BadNumber, named.start, named.end, fmt.Sprintf("there is no digit %d in %s", asked.To, n), "name a digit that stands in the number",
		[]string{highest.in(n).String()}}
	if place {
		f.message = "there is no " + asked.in(n).PlaceName() + " place in " + n.String()
		f.hint = "the highest place of this number is its " + highest.in(n).PlaceName()
		if asked.Places > n.Places {
			all := placesOf(n, placeOf{}, false)
			f.hint = "the last place of this number is its " + all[len(all)-1].in(n).PlaceName()
		}
	}
	return f
}

// The faults of estimates and fact families.

func estimateOf(p *parser, c piece) *fault {
	f := &fault{NotYet, c.start, c.end, "an estimate is read for two numbers with one sign", "write it as in estimate 398 + 17, or round one number", nil}
	if n, ok := c.expr.(arithmetic.Number); ok {
		f.tries = []string{"round " + n.String() + " to the nearest 10"}
	}
	f.tries = append(f.tries, "estimate 398 + 17")
	return f
}

func estimateWholes(p *parser, c piece) *fault {
	return &fault{NotYet, c.start, c.end, "an estimate is read for whole numbers only", "round both numbers to whole numbers first", []string{"estimate 398 + 17"}}
}

func oneFact(p *parser, c piece) *fault {
	f := &fault{MissingNumber, c.start, c.end, "a fact family has three numbers", "give two or three of them, as in fact family of 3 + 5", nil}
	if n, ok := c.expr.(arithmetic.Number); ok {
		if v, whole := n.Int64(); whole && v > 0 {
			f.tries = []string{fmt.Sprintf("fact family of %d + 5", v)}
		}
	}
	f.tries = append(f.tries, "fact family of 3 + 5")
	return f
}

func noFamily(p *parser, first, last piece) *fault {
	f := &fault{BadNumber, first.start, last.end, "these numbers make no fact family", "the largest is the sum or the product of the other two; no factor is 0", nil}
	a, okA := first.expr.(arithmetic.Number)
	if v, whole := a.Int64(); okA && whole && a.Form == arithmetic.Whole {
		f.tries = []string{fmt.Sprintf("fact family of %d + 5", v)}
	}
	f.tries = append(f.tries, "fact family of 3 + 5")
	return f
}

func longFamily(p *parser, all []piece) *fault {
	return &fault{TooMany, all[3].start, all[len(all)-1].end, "a fact family has three numbers", "leave the others out", []string{string(p.text[:all[2].end])}}
}
