package reading

import (
	"fmt"

	"modeler/arithmetic"
)

// The faults of problems about fractions in other forms, shapes and coins.

// parted says, for each kind, of which numbers it is asked.
var parted = map[arithmetic.Kind]string{
	arithmetic.ShapePart:   "a part of a shape is read as a fraction",
	arithmetic.AsSum:       "sums are read for whole numbers, decimals and fractions",
	arithmetic.EqualNames:  "equal names are found for fractions and whole numbers",
	arithmetic.DecimalForm: "decimals are found for fractions and percents",
	arithmetic.PercentForm: "percents are found for fractions and decimals",
}

// notAFraction offers the same asked of the number as a fraction of tens or hundreds,
// or of 3/4.
func notAFraction(p *parser, c piece, kind arithmetic.Kind) *fault {
	f := &fault{BadNumber, c.start, c.end, parted[kind], "give a fraction, as in 3/4", nil}
	n, ok := c.expr.(arithmetic.Number)
	if ok && n.Value.Den() <= MaxParts && n.Value.Num() > 0 {
		f.tries = append(f.tries, swap(p.text, c.start, c.end, n.Value.String()))
	}
	f.tries = append(f.tries, swap(p.text, c.start, c.end, "3/4"))
	return f
}

// otherShape is the fault of a shape that has no equal parts which are easy to see.
func otherShape(p *parser, t token) *fault {
	return &fault{NotYet, t.start, t.end, "parts of a " + t.text + " cannot be read yet",
		"take a circle, square, rectangle, triangle, pentagon, hexagon or octagon", []string{swap(p.text, t.start, t.end, "rectangle")}}
}

func closerToWhat(p *parser, c piece) *fault {
	return &fault{NotYet, c.start, c.end, "what is closer is read for 0 and 1 only", "ask which of two fractions is closer to 1",
		[]string{swap(p.text, c.start, c.end, "1"), "which is closer to 1, 3/4 or 5/8"}}
}

func closerOfTwo(p *parser, all []piece) *fault {
	f := &fault{MissingNumber, all[0].start, all[len(all)-1].end, "two numbers are needed to say which is closer",
		"write it as in which is closer to 1, 3/4 or 5/8", nil}
	if len(all) > 2 {
		f.code = TooMany
		f.start = all[2].start
		f.tries = append(f.tries, string(p.text[:all[1].end]))
	} else if n, ok := all[0].expr.(arithmetic.Number); ok {
		f.tries = append(f.tries, "which is closer to 1, "+n.String()+" or 1/2")
	}
	f.tries = append(f.tries, "which is closer to 1, 3/4 or 5/8")
	return f
}

// partOfDollar is the fault of 0.68 dollars, which is written $0.68.
func partOfDollar(p *parser, t token) *fault {
	f := &fault{BadNumber, t.start, p.at(0).end, "an amount of dollars and cents is written with a dollar sign", "write it as in $0.68", nil}
	if t.num.Form == arithmetic.Decimal && t.num.Places <= 2 && p.at(0).text[0] == 'd' {
		f.tries = append(f.tries, swap(p.text, t.start, p.at(0).end, "$"+t.num.String()))
	}
	f.tries = append(f.tries, swap(p.text, t.start, p.at(0).end, "$0.68"))
	return f
}

func tooManyCoins(p *parser, list []arithmetic.Number) *fault {
	f := &fault{TooMany, p.tokens[0].start, p.at(-1).end, fmt.Sprintf("there are more than %d coins", MaxCoins), "take fewer coins",
		[]string{arithmetic.Problem{Kind: arithmetic.CoinsWorth, List: list[:min(len(list), MaxCoins)]}.String()}}
	if len(list) == 0 {
		f.code, f.message, f.hint, f.tries = MissingNumber, "there are no coins here", "say how many, as in 2 dimes and 3 pennies", []string{"2 dimes and 3 pennies"}
	}
	return f
}

// closerOfOne is the fault of is 3/4 closer to 0 or 1.
func closerOfOne(p *parser, c piece) *fault {
	f := &fault{NotYet, p.at(0).start, p.at(-1 + p.longestOf(closerWords)).end, "what one number is closer to is not read yet",
		"compare it with 1/2: up to 1 whole, more than 1/2 is closer to 1, and less is closer to 0", nil}
	if n, ok := c.expr.(arithmetic.Number); ok {
		f.tries = append(f.tries, "compare "+n.String()+" and 1/2")
	}
	f.tries = append(f.tries, "which is closer to 1, 3/4 or 5/8")
	return f
}

func waysToPay(p *parser, c piece, n arithmetic.Number) *fault {
	return &fault{NotYet, c.start, c.end, "all the ways to pay an amount are not read yet", "ask for the fewest coins", []string{n.String() + " in coins"}}
}

func changeOfWhat(p *parser, c piece) *fault {
	n, _ := c.expr.(arithmetic.Number)
	return &fault{MissingNumber, c.start, c.end, "it is not said what is paid", "say what it costs, as in change from $5.00 for $3.27",
		[]string{"change from " + n.String() + " for $0.25", "change from $5.00 for $3.27"}}
}

func percentInside(p *parser, t token) *fault {
	return &fault{NotYet, t.start, t.end, "a blank percent is read only beside an equal sign", "write it as in 3/4 = ?%", []string{"3/4 as a percent"}}
}

// notMoney offers a number as cents or dollars.
func notMoney(p *parser, c piece, n arithmetic.Number) *fault {
	f := &fault{BadNumber, c.start, c.end, "an amount of money is needed here", "write it as in $0.68 or 68¢", nil}
	if v, whole := n.Int64(); whole && n.Form == arithmetic.Whole && v > 0 {
		f.tries = append(f.tries, fmt.Sprintf("%d¢ in coins", v))
	} else if n.Form == arithmetic.Decimal {
		f.tries = append(f.tries, "$"+n.String()+" in coins")
	}
	f.tries = append(f.tries, "$0.68 in coins")
	return f
}
