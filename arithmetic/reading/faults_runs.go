package reading

import (
	"fmt"

	"modeler/arithmetic"
)

// The faults of runs, rules and rows of numbers.

func (p *parser) wantWhole() *fault {
	t, before := p.at(0), p.at(-1)
	if t.kind == end {
		return &fault{MissingNumber, before.start, before.end, "there is no number after " + before.quoted(), "put a whole number after it",
			[]string{string(p.text[:before.end]) + " 5"}}
	}
	return &fault{BadNumber, t.start, t.end, "a whole number or a fraction should stand here", "count by a whole number from 1 up, or by a fraction as in 1/4",
		[]string{p.decimalsAsFractions(), swap(p.text, t.start, t.end, "5")}}
}

// decimalsAsFractions is the text with 1/10 in place of 0.1.
func (p *parser) decimalsAsFractions() string {
	text := string(p.text)
	for i := len(p.tokens) - 1; i >= 0; i-- {
		if t := p.tokens[i]; t.kind == number && t.num.Form == arithmetic.Decimal && t.num.Value.Den() <= MaxParts {
			text = swap([]rune(text), t.start, t.end, t.num.Value.String())
		}
	}
	return text
}

// tooFine is the fault of a run whose numbers have no parts in common that are not
// too small.
func tooFine(p *parser) *fault {
	return &fault{TooLarge, p.tokens[0].start, p.at(-1).end, "these parts are too small to count by",
		"take fractions with equal denominators", []string{"count by 1/4 from 0 to 2"}}
}

// byNothing is the fault of a step that changes no number.
func byNothing(p *parser, t token) *fault {
	return &fault{BadNumber, t.start, t.end, "this leaves every number as it is", "count by 1 or more, or multiply by 2 or more",
		[]string{swap(p.text, t.start, t.end, "2"), "count by 2"}}
}

func dividesByNothing(p *parser, t token) *fault {
	return &fault{DivideByZero, t.start, t.end, "nothing can be divided by 0", "divide by 1 or more",
		[]string{swap(p.text, t.start, t.end, "2"), "rule ÷ 2 for 2, 4, 6"}}
}

func wrongWay(p *parser, from, to clause) *fault {
	return &fault{BadNumber, to.start, to.end, fmt.Sprintf("counting back from %s does not come to %s", arithmetic.AsMixed(from.value()), arithmetic.AsMixed(to.value())),
		"count back to a smaller number", []string{swap(p.text, to.start, to.end, "0"), fmt.Sprintf("count by 1 from %s", arithmetic.AsMixed(from.value()))}}
}

// tooManyTerms is the fault of a run that is too long or too short.
func tooManyTerms(p *parser, terms clause, run arithmetic.Run) *fault {
	f := &fault{TooMany, terms.start, terms.end, fmt.Sprintf("these are %s numbers, more than %d", arithmetic.Grouped(terms.n), MaxTerms),
		fmt.Sprintf("list %d at most: stop sooner, or count by a larger number", MaxTerms), nil}
	if terms.n < 2 {
		f.code, f.message, f.hint = MissingNumber, "there are fewer than two numbers here", "go on to a second number"
	}
	if run.From > 0 && run.By > run.From && run.Op == arithmetic.Subtract {
		f.code, f.message, f.hint = Negative, "this goes below 0 at once", "start at a larger number"
		run.From = run.By * defaultJumps
	}
	if f.start == f.end {
		f.start, f.end = p.tokens[0].start, p.at(-1).end
	}
	run.Terms = defaultTerms
	f.tries = []string{arithmetic.Problem{Kind: arithmetic.Counting, Run: run}.String(), "count by 5"}
	return f
}

func belowZero(p *parser, run arithmetic.Run, list []int64) *fault {
	run.Terms = len(list)
	return &fault{Negative, p.tokens[0].start, p.at(-1).end, "the number after " + run.Number(list[len(list)-1]).String() + " is less than 0",
		"start at a larger number, or stop sooner", []string{arithmetic.Problem{Kind: arithmetic.Counting, Run: run}.String(), "count back by 10 from 120"}}
}

func runTooLarge(p *parser, run arithmetic.Run) *fault {
	f := &fault{TooLarge, p.tokens[0].start, p.at(-1).end, "the numbers get too large",
		"whole numbers go up to " + arithmetic.Grouped(MaxWhole), nil}
	run.Terms = min(run.Terms, defaultTerms)
	for ; run.Terms > 1; run.Terms-- {
		if list := run.List(); len(list) == run.Terms && list[len(list)-1] <= MaxWhole {
			f.tries = append(f.tries, arithmetic.Problem{Kind: arithmetic.Counting, Run: run}.String())
			break
		}
	}
	f.tries = append(f.tries, "start at 1, × 2, 6 terms")
	return f
}

func noRule(p *parser, from clause) *fault {
	return &fault{MissingNumber, from.start, from.end, "it is not said what to do from here on", "say what to add or multiply by, as in start at 1, add 3",
		[]string{fmt.Sprintf("start at %d, add 3", from.n)}}
}

func noDividing(p *parser, by clause) *fault {
	return &fault{NotYet, by.start, by.end, "a pattern that divides again and again cannot be read yet", "start at the small end and multiply",
		[]string{fmt.Sprintf("start at 1, times %d", max(by.n, 2)), "start at 1, × 2, 6 terms"}}
}

func addsFractions(p *parser, t token) *fault {
	return &fault{NotYet, t.start, t.end, "a pattern of fractions is read only where the same is added or taken away each time",
		"say what to add, as in start at 1/4, add 1/4", []string{"start at 1/4, add 1/4"}}
}

// The faults of rule tables.

func whichRule(p *parser, t token) *fault {
	f := &fault{MissingSign, t.start, t.end, "it is not said what to do with each number", "write a sign and a number, as in rule × 3 for 1, 2, 3", nil}
	if t.kind == number {
		f.tries = []string{swap(p.text, t.start, t.start, "+ ")}
	}
	f.tries = append(f.tries, "rule × 3 for 1, 2, 3")
	return f
}

func leavesSome(p *parser, c piece, n, by int64) *fault {
	return &fault{NotYet, c.start, c.end, fmt.Sprintf("%s ÷ %s leaves %s over", arithmetic.Grouped(n), arithmetic.Grouped(by), arithmetic.Grouped(n%by)),
		"take numbers that are divided without a remainder", []string{swap(p.text, c.start, c.end, fmt.Sprint(max(n-n%by, by)))}}
}

func longTable(p *parser, all []piece) *fault {
	return &fault{TooMany, all[MaxList].start, all[len(all)-1].end, fmt.Sprintf("there are more than %d numbers in the table", MaxList),
		"leave some out", []string{string(p.text[:all[MaxList-1].end])}}
}

// The faults of rows with a blank.

func rowOfWholes(p *parser, t token) *fault {
	return &fault{NotYet, t.start, t.end, "only whole numbers and fractions are read in a row", "give whole numbers, as in 3, 6, 9, ?, or fractions, as in 1/4, 2/4, ?", []string{p.decimalsAsFractions(), "3, 6, 9, ?"}}
}

func shortRow(p *parser, row []token) *fault {
	last := row[0]
	for _, t := range row {
		if t.kind == number {
			last = t
		}
	}
	f := &fault{MissingNumber, last.start, last.end, "one number does not say how the row goes on", "give two numbers or more, as in 3, 6, 9, ?", nil}
	if n, ok := last.num.Int64(); ok && last.kind == number {
		f.tries = []string{fmt.Sprintf("%d, %d, ?", n, n+2)}
	}
	f.tries = append(f.tries, "3, 6, 9, ?")
	return f
}

func noOneRule(p *parser, known []clause) *fault {
	first, second, last := known[0], known[1], known[len(known)-1]
	return &fault{NotYet, first.start, last.end, "no one step leads from each of these numbers to the next",
		"give a row in which the same number is added, taken away or multiplied by each time",
		[]string{fmt.Sprintf("%d, %d, ?", first.n, second.n), "3, 6, 9, ?"}}
}
