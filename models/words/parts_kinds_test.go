package words

import (
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// Each kind about fractions in other forms, decimals and money: as it is read back, as
// it is asked while the answer is hidden, as an answer page has it (common practice,
// no source), and its topic.
func TestProblemsAboutPartsInWords(t *testing.T) {
	type problem = arithmetic.Problem
	type answer = arithmetic.Answer
	money := func(cents int64) arithmetic.Number { return arithmetic.Coin(cents).Money() }
	unit := frac(1, 8)
	for _, c := range []struct {
		p                          problem
		a                          answer
		readBack, asked, told, top string
	}{
		{problem{Kind: arithmetic.ShapePart, Left: frac(3, 4), Shape: arithmetic.Circle}, answer{Number: frac(3, 4)},
			"three fourths of a circle", "3/4 of a circle", "3/4", "Fractions"},
		{problem{Kind: arithmetic.ShapePart, Left: frac(6, 8), Shape: arithmetic.Octagon}, answer{Number: frac(6, 8), Simplest: frac(3, 4)},
			"six eighths of an octagon", "6/8 of an octagon", "6/8 = 3/4", "Fractions"},
		// CCSS 4.NF.B.3b: 3/8 = 1/8 + 1/8 + 1/8.
		{problem{Kind: arithmetic.AsSum, Left: frac(3, 8)}, answer{Order: []arithmetic.Number{unit, unit, unit}},
			"three eighths taken apart: as a sum of smaller fractions", "3/8 as a sum", "1/8 + 1/8 + 1/8", "Fractions"},
		{problem{Kind: arithmetic.EqualNames, Left: frac(1, 2)}, answer{Order: []arithmetic.Number{frac(1, 2), frac(2, 4), frac(3, 6)}},
			"which fractions are the same amount as one half?", "fractions equal to 1/2", "1/2 = 2/4 = 3/6", "Fractions"},
		{problem{Kind: arithmetic.Closer, To: 1, Left: frac(3, 4), Right: frac(5, 8)}, answer{Relation: arithmetic.Less, Number: frac(3, 4)},
			"which is closer to 1, three fourths or five eighths?", "which is closer to 1, 3/4 or 5/8?", "3/4", "True, more, less"},
		{problem{Kind: arithmetic.Closer, To: 1, Left: frac(3, 4), Right: frac(5, 4)}, answer{Relation: arithmetic.Equal},
			"which is closer to 1, three fourths or five fourths?", "which is closer to 1, 3/4 or 5/4?", "both are equally far from 1", "True, more, less"},
		{problem{Kind: arithmetic.DecimalForm, Left: frac(3, 8)}, answer{Number: arithmetic.InPlaces(375, 3)},
			"three eighths written as a decimal", "3/8 as a decimal", "0.375", "Decimals and money"},
		{problem{Kind: arithmetic.PercentForm, Left: frac(3, 4)}, answer{Number: arithmetic.InPercent(75, 0)},
			"three fourths in hundredths: a percent", "3/4 as a percent", "75%", "Decimals and money"},
		{problem{Kind: arithmetic.FractionForm, Left: arithmetic.InPercent(62, 0)}, answer{Number: frac(62, 100), Simplest: frac(31, 50)},
			"62 percent as one fraction", "62% as a fraction", "62/100 = 31/50", "Decimals and money"},
		{problem{Kind: arithmetic.Coins, Left: money(68)}, answer{Order: []arithmetic.Number{money(25), money(25), money(10), money(5), money(1), money(1), money(1)}},
			"$0.68 in as few coins and bills as can be", "$0.68 in coins", "2 quarters, 1 dime, 1 nickel and 3 pennies", "Decimals and money"},
		{problem{Kind: arithmetic.Coins, Left: money(2100)}, answer{Order: []arithmetic.Number{money(2000), money(100)}},
			"$21.00 in as few coins and bills as can be", "$21.00 in coins", "1 twenty-dollar bill and 1 dollar", "Decimals and money"},
		// CCSS 2.MD.C.8: 2 dimes and 3 pennies are 23 cents.
		{problem{Kind: arithmetic.CoinsWorth, List: []arithmetic.Number{money(10), money(10), money(1), money(1), money(1)}}, answer{Number: money(23)},
			"how much money is 2 dimes and 3 pennies?", "2 dimes and 3 pennies = ? cents", "23 cents", "Decimals and money"},
		{problem{Kind: arithmetic.CoinsWorth, List: []arithmetic.Number{money(100), money(25)}}, answer{Number: money(125)},
			"how much money is 1 dollar and 1 quarter?", "1 dollar and 1 quarter = ? cents", "125 cents = $1.25", "Decimals and money"},
		{problem{Kind: arithmetic.Subtraction, Story: arithmetic.Change, Left: op(money(500), arithmetic.Subtract, money(327))}, answer{Number: money(173)},
			"you pay $3.27 with $5.00: how much comes back?", "change from $5.00 for $3.27?", "$1.73", "Decimals and money"},
		{problem{Kind: arithmetic.Counting, Run: arithmetic.Run{From: 1, By: 1, Op: arithmetic.Add, Terms: 5, Parts: 3}}, answer{List: []int64{1, 2, 3, 4, 5}},
			"start at 1/3 and add 1/3 each time: 5 numbers", "count by 1/3 from 1/3 to 1 2/3", "1/3, 2/3, 1, 1 1/3, 1 2/3", "Fractions"},
		{problem{Kind: arithmetic.InWords, Left: arithmetic.InPlaces(62, 2)}, answer{},
			"how do you say and write 0.62 in words?", "0.62 in words", "sixty-two hundredths", "Decimals and money"},
		{problem{Kind: arithmetic.PlaceValue, Left: arithmetic.InPlaces(347, 2), Places: 1}, answer{Number: arithmetic.InPlaces(4, 1)},
			"what is the digit in the tenths place of 3.47 worth?", "value of the tenths digit in 3.47", "0.4", "Decimals and money"},
		{problem{Kind: arithmetic.ExpandedForm, Left: arithmetic.InPlaces(307, 2)}, answer{Order: []arithmetic.Number{arithmetic.Int(3), arithmetic.InPlaces(7, 2)}},
			"3.07 as the sum of what its digits are worth", "3.07 in expanded form", "3 + 0.07", "Decimals and money"},
		{problem{Kind: arithmetic.Rounding, Left: arithmetic.InPlaces(347, 2), Places: 1}, answer{Number: arithmetic.InPlaces(35, 1)},
			"3.47 to the nearest tenth", "round 3.47 to the nearest tenth", "3.5", "Decimals and money"},
		// CCSS 5.NF.B.3: 3 wholes shared among 4 are 3/4 for each.
		{problem{Kind: arithmetic.Division, Rest: arithmetic.AsPart, Left: op(arithmetic.Int(3), arithmetic.Divide, arithmetic.Int(4))}, answer{Number: frac(3, 4), Simplest: frac(3, 4)},
			"3 wholes shared equally among 4: how much in each? Each gets a fraction.", "3 ÷ 4 = ?", "3/4", "Sharing and grouping"},
		{problem{Kind: arithmetic.Division, Left: op(arithmetic.Int(1), arithmetic.Divide, arithmetic.Int(4))}, answer{Number: arithmetic.Int(0), Remainder: 1},
			"1 whole shared equally among 4: how much in each? With whole ones only, and what is left over.", "1 ÷ 4 with remainder", "0 remainder 1", "Sharing and grouping"},
	} {
		if got := ReadBack(c.p); got != c.readBack {
			t.Errorf("ReadBack(%s) = %q, want %q", c.p, got, c.readBack)
		}
		if got := Asked(c.p); got != c.asked {
			t.Errorf("Asked(%s) = %q, want %q", c.p, got, c.asked)
		}
		if got := Answer(c.p, c.a); got != c.told {
			t.Errorf("Answer(%s) = %q, want %q", c.p, got, c.told)
		}
		if got := Topics[TopicOf(c.p)].Title; got != c.top {
			t.Errorf("%s stands under %q, want %q", c.p, got, c.top)
		}
	}
}

// Common practice of US schools, no source.
func TestDecimalName(t *testing.T) {
	for want, n := range map[string]arithmetic.Number{
		"sixty-two hundredths":             arithmetic.InPlaces(62, 2),
		"one tenth":                        arithmetic.InPlaces(1, 1),
		"five hundredths":                  arithmetic.InPlaces(5, 2),
		"thirty hundredths":                arithmetic.InPlaces(30, 2),
		"three and forty-seven hundredths": arithmetic.InPlaces(347, 2),
		"three hundred forty-seven and three hundred ninety-two thousandths": arithmetic.InPlaces(347_392, 3),
		"two and one ten thousandth":                                         arithmetic.InPlaces(20_001, 4),
		"zero tenths":                                                        arithmetic.InPlaces(0, 1),
		"three":                                                              arithmetic.InPlaces(30, 1),
	} {
		if got := DecimalName(n); got != want {
			t.Errorf("DecimalName(%s) = %q, want %q", n, got, want)
		}
	}
	if got := NumberName(arithmetic.AsMixed(fraction.Must(5, 4))); got != "one and one fourth" {
		t.Errorf("5/4 is %q", got)
	}
}
