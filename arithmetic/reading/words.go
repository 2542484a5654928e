package reading

import "modeler/arithmetic"

// Phrases are matched word by word; these small words may stand anywhere in one
// and are passed over.
var passedOver = []string{"a", "an", "the", "its"}

// infix is a sign between two operands.
type infix struct {
	op       arithmetic.Op
	grouping bool // of a division: groups of the second number
	sharing  bool // of a division: the words say that it is not grouping
	turned   bool // the second operand comes first: 3 more than 5
	story    arithmetic.Story
}

// rank says how tightly a sign binds, as in [arithmetic.Operation].
func (s infix) rank() int {
	switch s.op {
	case arithmetic.Add, arithmetic.Subtract:
		return 1
	case arithmetic.Multiply, arithmetic.Divide:
		return 2
	}
	return 3
}

var (
	plus     = infix{op: arithmetic.Add}
	minus    = infix{op: arithmetic.Subtract}
	times    = infix{op: arithmetic.Multiply}
	divide   = infix{op: arithmetic.Divide}
	sharing  = infix{op: arithmetic.Divide, sharing: true}
	grouping = infix{op: arithmetic.Divide, grouping: true}
	partOf   = infix{op: arithmetic.Of}
)

var signs = map[string]infix{"+": plus, "-": minus, "×": times, "÷": divide, ":": divide, "/": divide}

// infixes are the words for a sign.
var infixes = map[string]infix{
	"plus":  plus,
	"minus": minus, "take away": minus, "subtract": minus,
	"x": times, "times": times, "multiplied by": times, "by": times,
	"groups of": times, "group of": times, "rows of": times, "row of": times, "lots of": times, "sets of": times,
	"columns of": times, "bags of": times, "boxes of": times, "plates of": times, "crates of": times,
	"carriages of": times, "packs of": times, "stacks of": times, "bundles of": times, "jumps of": times,
	"divided by": divide,
	"shared by":  sharing, "shared among": sharing, "shared between": sharing, "shared equally by": sharing,
	"shared equally among": sharing, "shared equally between": sharing, "split among": sharing, "split between": sharing,
	"in groups of": grouping, "into groups of": grouping, "in rows of": grouping, "into rows of": grouping,
	"put in groups of": grouping, "put into groups of": grouping, "split into groups of": grouping,
	"divided into groups of": grouping, "in stacks of": grouping, "in bags of": grouping, "in boxes of": grouping,
	"of": partOf, "of set of": partOf, "of group of": partOf,
}

// noSigns are phrases that start as a sign and are none.
var noSigns = []string{"times table", "times tables", "x table", "x tables", "by rounding"}

// turnedInfixes are signs only where no claim is made: "3 more than 5" is 5 + 3,
// "is 3 more than 5" is a claim.
var turnedInfixes = map[string]infix{
	"more than": {op: arithmetic.Add, turned: true},
	"less than": {op: arithmetic.Subtract, turned: true}, "fewer than": {op: arithmetic.Subtract, turned: true},
}

// relations are the words for = < >.
var relations = func() map[string]arithmetic.Relation {
	table := map[string]arithmetic.Relation{}
	for rel, phrases := range map[arithmetic.Relation][]string{
		arithmetic.Equal:   {"equals", "equal", "equal to", "same as", "makes", "make", "gives", "give", "equivalent to", "same amount as"},
		arithmetic.Greater: {"greater than", "bigger than", "larger than", "more than", "higher than", "longer than"},
		arithmetic.Less:    {"less than", "smaller than", "fewer than", "lower than", "shorter than"},
	} {
		for _, p := range phrases {
			table[p] = rel
			table["is "+p] = rel
			table["are "+p] = rel
		}
	}
	table["is"] = arithmetic.Equal
	table["are"] = arithmetic.Equal
	return table
}()

// openers are words in front of a problem that do not change it; after the
// askers a claim follows.
var (
	openers = []string{"what is", "whats", "what", "how much is", "how many is", "find", "work out", "calculate",
		"solve", "compute", "show", "show me", "draw", "make", "build", "please", "answer to", "value of", "shade", "shade in", "color", "color in", "colour", "fill in"}
	rewriters = []string{"write", "write number", "rewrite", "turn", "change", "convert", "express", "give"}
	askers    = []string{"is", "are", "does", "do", "true or false", "is it true that", "check", "is that"}
)

// inDigits are words behind a number that change nothing: it is written so anyway.
var inDigits = []string{"in digits", "in figures", "in numerals", "in standard form", "as number", "as one number", "as numeral", "in numbers", "using digits"}

// pair is a phrase with a word between its two numbers: take 3 from 8.
type pair struct {
	between string
	sign    infix
	larger  bool // the larger number comes first, whichever is written first
}

// pairs are the phrases that start with the sign.
var pairs = map[string][]pair{
	"add":                {{between: "and", sign: plus}, {between: "to", sign: infix{op: arithmetic.Add, turned: true}}},
	"sum of":             {{between: "and", sign: plus}},
	"total of":           {{between: "and", sign: plus}},
	"subtract":           {{between: "from", sign: infix{op: arithmetic.Subtract, turned: true}}},
	"take":               {{between: "from", sign: infix{op: arithmetic.Subtract, turned: true}}},
	"take away":          {{between: "from", sign: infix{op: arithmetic.Subtract, turned: true}}},
	"difference between": {{between: "and", sign: minus, larger: true}},
	"difference of":      {{between: "and", sign: minus, larger: true}},
	"multiply":           {{between: "by", sign: times}, {between: "and", sign: times}},
	"product of":         {{between: "and", sign: times}},
	"divide": {{between: "by", sign: divide}, {between: "into groups of", sign: grouping},
		{between: "in groups of", sign: grouping}},
	"share": {{between: "among", sign: sharing}, {between: "between", sign: sharing}, {between: "by", sign: sharing},
		{between: "equally among", sign: sharing}, {between: "equally between", sign: sharing}},
	"split": {{between: "among", sign: sharing}, {between: "between", sign: sharing}, {between: "into groups of", sign: grouping}},
}

// multiples are the words that stand for a number of times.
var multiples = map[string]int64{"double": 2, "twice": 2, "triple": 3}

// choosing are the questions which of some numbers is more; the value says
// whether they ask for the end of a longer list.
var choosing = func() map[string]bool {
	table := map[string]bool{}
	for _, start := range []string{"which is ", "which fraction is ", "which number is "} {
		for _, more := range []string{"more", "greater", "bigger", "larger", "higher", "longer", "less", "smaller", "fewer", "lower", "shorter"} {
			table[start+more] = false
			table[start+"one "+more] = false
		}
		for _, most := range []string{"most", "greatest", "biggest", "largest", "highest", "least", "smallest", "lowest"} {
			table[start+most] = true
		}
	}
	return table
}()

// What starts a list to put in order, stands between two numbers to compare, says
// in which direction a list goes, and asks for factors, a rounded number or the
// simplest form.
var (
	ordering = []string{"order", "sort", "arrange", "put", "put in order", "list"}
	versus   = []string{"vs", "versus", "or", "against", "compared with", "compared to"}
	between  = []string{"and", "with", "to", "or", "vs", "versus", "against"}
	upward   = []string{"in order", "from least to greatest", "from smallest to largest", "from smallest to biggest",
		"from smallest to greatest", "from lowest to highest", "in order from least to greatest",
		"in order from smallest to largest", "least to greatest", "smallest to largest"}
	downward = []string{"from greatest to least", "from largest to smallest", "from biggest to smallest",
		"from greatest to smallest", "from highest to lowest", "in order from greatest to least",
		"in order from largest to smallest", "greatest to least", "largest to smallest"}
	factoring = []string{"factors of", "factor pairs of", "pairs of factors of", "all factors of", "all factor pairs of",
		"list factors of", "list all factors of", "arrays of", "all arrays of", "arrays for", "rectangles of"}
	rounding = []string{"to nearest", "rounded to nearest"}
	simplest = []string{"simplify", "reduce", "simplest form of", "lowest terms of"}
)

// forms are the phrases behind a number that ask for it in another form.
var forms = func() map[string]arithmetic.Kind {
	table := map[string]arithmetic.Kind{}
	for kind, names := range map[arithmetic.Kind][]string{
		arithmetic.MixedForm:    {"mixed number", "mixed numeral", "mixed fraction"},
		arithmetic.FractionForm: {"fraction", "improper fraction", "one fraction", "common fraction"},
		arithmetic.SimplestForm: {"simplest form", "simplest terms", "lowest terms", "simplest way", "fewest parts"},
		arithmetic.DecimalForm:  {"decimal", "decimal number", "decimal form", "decimal fraction", "decimals"},
		arithmetic.PercentForm:  {"percent", "percentage", "per cent", "percents", "percent form"},
		arithmetic.AsSum: {"sum", "sum of unit fractions", "sum of fractions", "sum of two fractions", "sum of three fractions", "unit fractions", "addition", "sum in different ways",
			"sums", "different sums"},
		arithmetic.Coins: {"coins", "fewest coins", "few coins", "coins and bills", "coins and notes", "coins and dollars", "bills and coins",
			"dollars and coins", "fewest coins and bills"},
	} {
		for _, name := range names {
			for _, start := range []string{"as ", "to ", "into ", "in ", "with ", "using "} {
				if kind == arithmetic.Coins || start[0] != 'w' && start[0] != 'u' {
					table[start+name] = kind
				}
			}
		}
	}
	return table
}()

// places are the words for what a number is rounded to.
var places = map[string]int64{
	"ten": 10, "tens": 10, "hundred": 100, "hundreds": 100, "thousand": 1000, "thousands": 1000,
	"ten thousand": 10_000, "hundred thousand": 100_000, "million": 1_000_000,
}

// small are the words for the numbers below a hundred, but for those of two words.
var small = map[string]int64{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
	"eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17,
	"eighteen": 18, "nineteen": 19, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70,
	"eighty": 80, "ninety": 90,
}

// partNames are the names of equal parts, in one and in many.
var partNames = map[string]int64{
	"half": 2, "halves": 2, "third": 3, "thirds": 3, "fourth": 4, "fourths": 4, "quarter": 4, "quarters": 4,
	"fifth": 5, "fifths": 5, "sixth": 6, "sixths": 6, "seventh": 7, "sevenths": 7, "eighth": 8, "eighths": 8,
	"ninth": 9, "ninths": 9, "tenth": 10, "tenths": 10, "eleventh": 11, "elevenths": 11, "twelfth": 12, "twelfths": 12,
	"fifteenth": 15, "fifteenths": 15, "sixteenth": 16, "sixteenths": 16, "twentieth": 20, "twentieths": 20,
	"hundredth": 100, "hundredths": 100, "thousandth": 1000, "thousandths": 1000,
}

// unknowns are the letters that stand for an unknown number. The letter x is a
// times sign where a sign must stand.
var unknowns = []string{"n", "x", "y"}

// unknownWords are the words that stand for an unknown number: 7 and how many make
// 10.
var unknownWords = []string{"what", "what number", "which number", "how many", "how much", "how many more", "some number", "a number"}
