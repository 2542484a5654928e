package words

import (
	"strconv"
	"strings"

	"modeler/arithmetic"
)

var small = [...]string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
	"eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"}

var tens = [...]string{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}

// Name is a whole number in words, to 999,999,999: four hundred two, as US
// schools say it, without "and".
func Name(n int64) string {
	switch {
	case n < 0 || n > 999_999_999:
		return arithmetic.Grouped(n)
	case n < 20:
		return small[n]
	case n < 100:
		return joined(tens[n/10], "-", n%10)
	case n < 1000:
		return joined(small[n/100]+" hundred", " ", n%100)
	case n < 1_000_000:
		return joined(Name(n/1000)+" thousand", " ", n%1000)
	}
	return joined(Name(n/1_000_000)+" million", " ", n%1_000_000)
}

func joined(head, glue string, rest int64) string {
	if rest == 0 {
		return head
	}
	return head + glue + Name(rest)
}

// Place is the name of the place that 10 to the power stands for, in one or many:
// ones, tens, hundreds, thousands.
func Place(power int, count int64) string {
	return plural([...]string{"one", "ten", "hundred", "thousand", "ten thousand", "hundred thousand", "million"}[power], count)
}

// Count is a number of things: "1 ten", "4 hundreds", "no tens".
func Count(count int64, one string) string {
	if count == 0 {
		return "no " + plural(one, 0)
	}
	return arithmetic.Grouped(count) + " " + plural(one, count)
}

func plural(one string, count int64) string {
	if count == 1 {
		return one
	}
	return one + "s"
}

// Parts is the name of the parts that den make a whole: halves, thirds, fourths,
// twenty-firsts. US schools say fourths.
func Parts(den, count int64) string {
	switch den {
	case 1:
		return plural("whole", count)
	case 2:
		if count == 1 {
			return "half"
		}
		return "halves"
	}
	return plural(ordinal(den), count)
}

var ordinals = map[int64]string{1: "first", 2: "second", 3: "third", 5: "fifth", 8: "eighth", 9: "ninth", 12: "twelfth"}

func ordinal(n int64) string {
	if o, ok := ordinals[n]; ok {
		return o
	}
	switch {
	case n < 20:
		return small[n] + "th"
	case n < 100 && n%10 == 0:
		return tens[n/10][:len(tens[n/10])-1] + "ieth"
	case n < 100:
		return tens[n/10] + "-" + ordinal(n%10)
	case n == 100:
		return "hundredth"
	case n == 1000:
		return "thousandth"
	}
	return strconv.FormatInt(n, 10) + "th"
}

// DecimalName is a decimal in words, as US schools say it: sixty-two hundredths, three
// and forty-seven hundredths.
func DecimalName(n arithmetic.Number) string {
	wholes, part := n.Value.Mixed()
	name := Name(part.Num()) + " " + strings.TrimSuffix(arithmetic.DecimalPlace(min(n.Places, 6)), "s")
	if part.Num() != 1 {
		name += "s"
	}
	switch {
	case wholes > 0 && part.Num() == 0:
		return Name(wholes)
	case wholes > 0:
		return Name(wholes) + " and " + name
	}
	return name
}

// inWords is the answer of how a number is said.
func inWords(e arithmetic.Expr) string {
	if n, ok := e.(arithmetic.Number); ok && n.Form == arithmetic.Decimal {
		return DecimalName(n)
	}
	return name(e)
}

// NumberName is a number in words in its form: three fourths, one and one half,
// four hundred two, 0.45, 62 percent.
func NumberName(n arithmetic.Number) string {
	switch n.Form {
	case arithmetic.Whole:
		if v, ok := n.Int64(); ok {
			return Name(v)
		}
	case arithmetic.Common:
		return Name(n.Value.Num()) + " " + Parts(n.Value.Den(), n.Value.Num())
	case arithmetic.Mixed:
		wholes, part := n.Value.Mixed()
		return Name(wholes) + " and " + Name(part.Num()) + " " + Parts(part.Den(), part.Num())
	}
	if text, percent := strings.CutSuffix(n.String(), "%"); percent {
		return text + " percent"
	}
	return n.String()
}
