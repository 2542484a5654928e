package reading

import (
	"fmt"
	"strings"

	"modeler/arithmetic"
)

// The faults of numbers.

func twoPoints(text []rune, t token) *fault {
	at := strings.LastIndexByte(t.text, '.')
	return &fault{BadNumber, t.start, t.end, "there are two points in " + clipped(t.text), "a decimal has one point: 1.25",
		[]string{swap(text, t.start, t.end, strings.ReplaceAll(t.text[:at], ".", "")+t.text[at:]),
			swap(text, t.start, t.end, t.text[:at]+strings.ReplaceAll(t.text[at:], ".", ""))}}
}

func tooLarge(text []rune, t token) *fault {
	if groups := strings.Split(t.text, ","); len(groups) > 2 && len(groups[0]) == 3 && !strings.Contains(t.text, ",0") { // 100,200,300
		return &fault{BadNumber, t.start, t.end, "the commas in " + clipped(t.text) + " can be read as part of one number", "put a space after each comma",
			[]string{swap(text, t.start, t.end, strings.Join(groups, ", ")), "order " + swap(text, t.start, t.end, strings.Join(groups, "; "))}}
	}
	return &fault{TooLarge, t.start, t.end, "this number is too large",
		"whole numbers go up to " + arithmetic.Grouped(MaxWhole), []string{swap(text, t.start, t.end, "999")}}
}

func tooManyPlaces(text []rune, t token) *fault {
	at := strings.IndexByte(t.text, '.')
	return &fault{TooLarge, t.start, t.end, "this decimal has too many places",
		fmt.Sprintf("decimals go to %d places after the point", MaxPlaces), []string{swap(text, t.start, t.end, t.text[:at+3])}}
}

func tooManyCents(text []rune, t token) *fault {
	at := strings.IndexByte(t.text, '.')
	return &fault{BadNumber, t.start, t.end, "an amount of money has two digits for the cents",
		"write it as in $3.27", []string{swap(text, t.start, t.end, "$"+t.text[:at+3])}}
}

func noAmount(text []rune, t token) *fault {
	return &fault{MissingNumber, t.start, t.end, "there is no number beside " + t.text,
		"write an amount as in $3.27", []string{swap(text, t.start, t.end, ""), swap(text, t.start, t.end, "$1.00")}}
}

func noPercent(text []rune, t token) *fault {
	return &fault{MissingNumber, t.start, t.end, "there is no whole number or decimal in front of " + t.text,
		"write a percent as in 62%", []string{swap(text, t.start, t.end, ""), swap(text, t.start, t.end, "50%")}}
}

func tooManyParts(text []rune, t token) *fault {
	return &fault{TooLarge, t.start, t.end, "this is too many parts for one whole",
		"a whole is cut in " + arithmetic.Grouped(MaxParts) + " parts at most", []string{swap(text, t.start, t.end, "100")}}
}

func zeroParts(text []rune, t token, n int64) *fault {
	return &fault{ZeroParts, t.start, t.end, "a whole cannot be cut in 0 parts",
		"the number below the bar says in how many equal parts the whole is cut: 1 or more",
		[]string{swap(text, t.start, t.end, fmt.Sprintf("%d/%d", n, max(n+1, 2))), swap(text, t.start, t.end, "1/2")}}
}

func twoBars(text []rune, first, last token) *fault {
	middle := strings.LastIndexByte(string(text[first.start:last.end]), '/')
	written := string(text[first.start:last.end])
	f := &fault{BadNumber, first.start, last.end, "there are two bars in one fraction",
		"a fraction has one bar; write ÷ to divide", nil}
	if middle > 0 {
		f.tries = []string{swap(text, first.start, last.end, written[:middle]+" ÷ "+written[middle+1:])}
	}
	return f
}

func unevenFraction(text []rune, top, bottom token) *fault {
	return &fault{BadNumber, top.start, bottom.end, "a fraction has whole numbers above and below the bar",
		"write ÷ to divide", []string{swap(text, top.end, bottom.start, " ÷ ")}}
}

func zeroOverBlank(text []rune, t token) *fault {
	return &fault{BadNumber, t.start, t.end, "0 parts of any size are 0, so any number fits the blank",
		"put 1 or more above the bar", []string{strings.Replace(string(text), "0", "1", 1)}}
}

func clock(text []rune, first, last token) *fault {
	return &fault{NotYet, first.start, last.end, "times of day cannot be read yet",
		"give minutes on their own, as in 15 + 45; write ÷ to divide", []string{"15 + 45"}}
}

// The faults of blanks.

func twoUnknowns(p *parser, c piece) *fault {
	start, stop := c.start, c.end
	for _, t := range p.tokens {
		if (t.kind == blank || t.kind == blankPart || t.kind == word && in(unknowns, t.text)) && t.start >= c.start && t.end <= c.end {
			start, stop = t.start, t.end
		}
	}
	return &fault{TooMany, start, stop, "there are two blanks", "leave one number out, not two",
		[]string{swap(p.text, start, stop, "2"), swap(p.text, start, stop, "1/2")}}
}

func blankInside(p *parser, t token) *fault {
	return &fault{NotYet, t.start, t.end, "a blank in a fraction is read only where one fraction equals another",
		"write it as in 1/2 = ?/8", []string{swap(p.text, t.start, t.end, "?"), "1/2 = ?/8"}}
}

func unknownAlone(p *parser, c piece) *fault {
	f := &fault{MissingSign, c.start, c.end, "there is a blank but no equal sign",
		"write what it comes to, as in 8 + ? = 11", []string{"8 + ? = 11"}}
	if c.expr == nil {
		f.tries = []string{string(p.text[c.start:c.end]) + " = 1/2"}
	}
	return f
}

func unknownInequality(p *parser, left, right piece) *fault {
	return &fault{NotYet, left.start, right.end, "a blank beside < or > cannot be read yet", "put = between the two sides",
		[]string{swap(p.text, left.end, right.start, " = ")}}
}

func unknownInList(p *parser, c piece) *fault {
	return &fault{MissingNumber, c.start, c.end, "there is a blank among the numbers to compare",
		"put a number in its place", []string{swap(p.text, c.start, c.end, "2")}}
}

func blankSign(p *parser, left, right piece) *fault {
	return &fault{NotYet, left.start, right.end, "a blank in place of a sign is read only for =, < or >",
		"put the sign, and leave out a number", []string{swap(p.text, left.end, right.start, " + ")}}
}

// The faults of statements.

func twoRelations(p *parser, mark token) *fault {
	t := p.at(0)
	return &fault{MissingNumber, mark.start, t.end, "there is no number between " + mark.shown() + " and " + t.shown(),
		"use one of =, < and >", []string{swap(p.text, t.start, t.end, ""), swap(p.text, mark.start, mark.end, "")}}
}

func chain(p *parser, left piece, mark token) *fault {
	t := p.at(0)
	return &fault{NotYet, t.start, t.end, "there is more than one of =, < and > here", "take two sides at a time",
		[]string{string(p.text[:t.start])}}
}

func wholeOf(p *parser, c piece) *fault {
	t := p.at(0)
	return &fault{MissingSign, c.start, t.end, "“of” needs a fraction in front",
		"write 1/3 of 12 for a part, and 3 × 12 for 3 groups of 12", []string{swap(p.text, t.start, t.end, "×")}}
}

func oneNumber(p *parser, c piece) *fault {
	return &fault{BadNumber, c.start, c.end, "one number should stand here", "work this out first",
		[]string{string(p.text[c.start:c.end])}}
}

func noFactors(p *parser, c piece) *fault {
	return &fault{BadNumber, c.start, c.end, "factors are found of whole numbers from 1 up",
		"give a whole number", []string{swap(p.text, c.start, c.end, "24")}}
}

func roundToWhat(p *parser, c piece) *fault {
	return &fault{MissingNumber, c.start, c.end, "it is not said what to round to", "say to the nearest ten, hundred or thousand",
		[]string{string(p.text[:c.end]) + " to the nearest 10"}}
}

func noPlace(p *parser, before token) *fault {
	t := p.at(-1)
	return &fault{MissingNumber, t.start, t.end, "it is not said what to round to", "say to the nearest ten, hundred or thousand",
		[]string{string(p.text[:t.end]) + " 10"}}
}

func otherPlace(p *parser, t token) *fault {
	return &fault{BadNumber, t.start, t.end, "numbers are rounded to the nearest 10, 100, 1,000 and so on",
		"say to the nearest ten, hundred or thousand", []string{string(p.text[:t.start]) + " 10"}}
}

func compareWithWhat(p *parser, c piece) *fault {
	return &fault{MissingNumber, c.start, c.end, "there is nothing to compare this with", "write two numbers with and between them",
		[]string{string(p.text[:c.end]) + " and 1/2"}}
}

func twoNumbers(p *parser, left, right piece) *fault {
	return &fault{MissingSign, left.start, right.end, "it is not said what to do with the two numbers",
		"put a sign between them, or compare in front",
		[]string{swap(p.text, left.start, left.start, "compare "), swap(p.text, left.end, right.start, " + ")}}
}

func orderDown(p *parser, words int) *fault {
	start, stop := p.at(-words).start, p.at(-1).end
	return &fault{NotYet, start, stop, "numbers are put in order from least to greatest only", "read the order from the other end",
		[]string{swap(p.text, start, stop, ""), "order " + swap(p.text, 0, stop, "")}}
}

func shortList(p *parser, c piece) *fault {
	f := &fault{MissingNumber, c.start, c.end, "there is only one number to put in order", "write two numbers or more, with a comma and a space between them", nil}
	if t := p.tokenAt(c.start); t.commas {
		f.hint = "put a space after each comma, so that the commas are not read as part of one number"
		f.tries = []string{swap(p.text, c.start, c.end, strings.ReplaceAll(string(p.text[c.start:c.end]), ",", "; "))}
	}
	f.tries = append(f.tries, string(p.text[:c.end])+", 1/2")
	return f
}

func longList(p *parser, all []piece) *fault {
	c := all[MaxList]
	return &fault{TooMany, c.start, all[len(all)-1].end, fmt.Sprintf("there are more than %d numbers to put in order", MaxList),
		"leave some out", []string{string(p.text[:all[MaxList-1].end])}}
}

func tooMany(p *parser, t token) *fault {
	return &fault{TooMany, t.start, t.end, fmt.Sprintf("there are more than %d numbers", MaxNumbers),
		"give a shorter problem", []string{string(p.text[:p.at(-2).start])}}
}

// The faults of brackets.

func tooDeep(p *parser, t token) *fault {
	return &fault{TooDeep, t.start, t.end, fmt.Sprintf("there are more than %d brackets inside each other", MaxDepth),
		"leave out the brackets that are not needed", []string{strings.NewReplacer("(", " ", ")", " ").Replace(string(p.text))}}
}

func notClosed(p *parser, t token) *fault {
	return &fault{Unbalanced, t.start, t.end, "this bracket is not closed", "put ) where it ends", []string{string(p.text) + ")"}}
}

func notOpened(p *parser, t token) *fault {
	return &fault{Unbalanced, t.start, t.end, "this bracket was not opened", "put ( where it starts, or leave it out",
		[]string{swap(p.text, t.start, t.end, "")}}
}
