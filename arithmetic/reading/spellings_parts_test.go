package reading

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

func dollars(v int64) arithmetic.Number {
	return arithmetic.Number{Value: fraction.Whole(v), Form: arithmetic.Money}
}

func inShape(n arithmetic.Number, s arithmetic.Shape) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.ShapePart, Left: n, Shape: s}
}

func byParts(from, by int64, o arithmetic.Op, terms int, parts int64) arithmetic.Problem {
	p := counted(from, by, o, terms)
	p.Run.Parts = parts
	return p
}

func atPlace(n arithmetic.Number, places int) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: n, Places: places}
}

func change(a, b arithmetic.Number) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Subtraction, Left: op(a, arithmetic.Subtract, b), Story: arithmetic.Change}
}

func coins(list ...arithmetic.Coin) arithmetic.Problem {
	p := arithmetic.Problem{Kind: arithmetic.CoinsWorth}
	for _, c := range list {
		p.List = append(p.List, c.Money())
	}
	return p
}

func roundedTo(n arithmetic.Number, to int64, places int) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Rounding, Left: n, To: to, Places: places}
}

// partSpellings are the texts of problems about fractions in other forms, decimals,
// percents and money. The first of each is what String writes.
var partSpellings = []struct {
	problem arithmetic.Problem
	texts   []string
}{
	{inShape(fr(3, 4), arithmetic.Circle), []string{"3/4 of a circle", "shade 3/4 of a circle", "a circle with 3/4 shaded", "three fourths of a circle", "3/4 as a circle",
		"draw 3/4 of a circle", "Color in 3/4 of the circle.", "3/4 of a pizza", "show 3/4 in a circle", "draw a circle and shade 3/4", "3 out of 4 parts of a circle", "3 out of 4 equal parts of a circle"}},
	{inShape(fr(1, 2), arithmetic.Hexagon), []string{"1/2 of a hexagon", "one half of a hexagon", "half a hexagon", "half of a regular hexagon", "shade half of the hexagon"}},
	{inShape(fr(2, 3), arithmetic.Rectangle), []string{"2/3 of a rectangle", "shade 2/3 of a rectangle", "a rectangle, 2/3 shaded"}},
	{inShape(fr(1, 4), arithmetic.Square), []string{"1/4 of a square", "a quarter of a square", "one fourth of a square"}},
	{inShape(fr(1, 3), arithmetic.Triangle), []string{"1/3 of a triangle", "a third of an equilateral triangle"}},
	{inShape(fr(3, 8), arithmetic.Octagon), []string{"3/8 of an octagon"}},
	{inShape(mx(7, 4), arithmetic.Circle), []string{"1 3/4 of a circle"}},
	{one(arithmetic.AsSum, fr(3, 8)), []string{"3/8 as a sum", "3/8 as a sum of unit fractions", "break 3/8 apart", "break apart 3/8", "decompose 3/8", "write 3/8 as a sum",
		"break up 3/8", "take 3/8 apart", "break 3/8 into unit fractions", "three eighths as a sum of fractions", "ways to make 3/8", "write 3/8 as the sum of two fractions"}},
	{one(arithmetic.AsSum, mx(17, 8)), []string{"2 1/8 as a sum", "break apart 2 1/8"}},
	{one(arithmetic.WaysToMake, n(8)), []string{"ways to make 8", "8 as a sum", "break apart 8"}},
	{one(arithmetic.ExpandedForm, n(347)), []string{"347 in expanded form", "break apart 347", "break 347 apart"}},
	{one(arithmetic.EqualNames, fr(1, 2)), []string{"fractions equal to 1/2", "names of 1/2", "equivalent fractions of 1/2", "other names for 1/2", "which fractions are equal to 1/2?",
		"find three fractions equal to 1/2", "fractions equivalent to one half", "what fractions are the same as 1/2", "equal fractions for 1/2", "find an equivalent fraction of 1/2"}},
	{arithmetic.Problem{Kind: arithmetic.Closer, To: 1, Left: fr(3, 4), Right: fr(5, 8)}, []string{"which is closer to 1, 3/4 or 5/8", "is 3/4 or 5/8 closer to 1", "which of 3/4 and 5/8 is closer to 1?",
		"which is closer to 1: 3/4 or 5/8?", "which fraction is nearer to 1, 3/4 or 5/8", "which is closest to 1, 3/4 or 5/8", "3/4 or 5/8, which is closer to 1?", "3/4 or 5/8: which is closer to 1?", "which is closer to one, three fourths or five eighths"}},
	{arithmetic.Problem{Kind: arithmetic.Closer, To: 0, Left: fr(1, 4), Right: arithmetic.InPlaces(3, 1)}, []string{"which is closer to 0, 1/4 or 0.3", "is 1/4 or 0.3 closer to zero?"}},
	{one(arithmetic.DecimalForm, fr(3, 8)), []string{"3/8 as a decimal", "write 3/8 as a decimal", "convert 3/8 to a decimal", "change 3/8 to a decimal", "3/8 in decimal form", "three eighths as a decimal number"}},
	{one(arithmetic.DecimalForm, fr(62, 100)), []string{"62/100 as a decimal", "sixty-two hundredths as a decimal", "write 62 hundredths as a decimal"}},
	{one(arithmetic.DecimalForm, arithmetic.InPercent(62, 0)), []string{"62% as a decimal", "62 percent as a decimal"}},
	{one(arithmetic.PercentForm, fr(3, 4)), []string{"3/4 as a percent", "3/4 to percent", "change 3/4 to a percent", "write 3/4 as a percentage", "3/4 = ?%", "3/4 = ? percent", "?% = 3/4"}},
	{one(arithmetic.PercentForm, arithmetic.InPlaces(62, 2)), []string{"0.62 as a percent"}},
	{one(arithmetic.FractionForm, arithmetic.InPlaces(62, 2)), []string{"0.62 as a fraction", "write 0.62 as a fraction", "0.62 = ?/100", "0.62 in hundredths"}},
	{one(arithmetic.FractionForm, arithmetic.InPercent(62, 0)), []string{"62% as a fraction", "62 % as a fraction", "62 per cent as a fraction"}},
	{one(arithmetic.Show, arithmetic.InPercent(125, 1)), []string{"12.5%", "12.5 percent", "show 12.5 %", "１２.5％"}},
	{one(arithmetic.Show, arithmetic.InPercent(150, 0)), []string{"150%"}},
	{arithmetic.Problem{Kind: arithmetic.PartOf, Left: op(arithmetic.InPercent(50, 0), arithmetic.Of, n(12))}, []string{"50% of 12", "what is 50% of 12?", "50 percent of 12"}},
	{related(arithmetic.Claim, arithmetic.InPercent(25, 0), arithmetic.Equal, fr(1, 4)), []string{"25% = 1/4", "is 25% equal to 1/4?", "25 percent is the same as one fourth"}},
	{related(arithmetic.Claim, op(fr(3, 4), arithmetic.Multiply, n(8)), arithmetic.Less, n(8)), []string{"3/4 × 8 < 8", "3/4 x 8 is less than 8", "is 3/4 times 8 less than 8?"}},
	{byParts(0, 1, arithmetic.Add, 9, 4), []string{"count by 1/4 from 0 to 2", "count by fourths", "count by 1/4s from 0 to 2", "count from 0 to 2 by fourths", "count in quarters from 0 to 2", "skip count by one fourth"}},
	{byParts(1, 1, arithmetic.Add, 4, 4), []string{"count by 1/4 from 1/4 to 1", "1/4, 2/4, 3/4, ?", "1/4, 1/2, 3/4, ?", "what comes next: 1/4, 2/4, 3/4"}},
	{byParts(1, 2, arithmetic.Add, 4, 4), []string{"count by 2/4 from 1/4 to 1 3/4", "count by 1/2 from 1/4 to 2"}},
	{byParts(8, 1, arithmetic.Subtract, 9, 4), []string{"count back by 1/4 from 2 to 0", "count back by fourths from 2", "count down from 2 by 1/4"}},
	{byParts(1, 1, arithmetic.Add, 6, 4), []string{"count by 1/4 from 1/4 to 1 2/4", "start at 1/4, add 1/4", "start at 1/4 and add one fourth each time, 6 terms"}},
	{one(arithmetic.InWords, arithmetic.InPlaces(62, 2)), []string{"0.62 in words", "how do you say 0.62?", "write 0.62 in words", "word form of 0.62"}},
	{one(arithmetic.ExpandedForm, arithmetic.InPlaces(347_392, 3)), []string{"347.392 in expanded form", "expand 347.392", "break apart 347.392"}},
	{atPlace(arithmetic.InPlaces(347, 2), 1), []string{"value of the tenths digit in 3.47", "value of the 4 in 3.47", "what is the 4 in 3.47 worth?", "tenths digit of 3.47",
		"which digit is in the tenths place of 3.47", "in 3.47, what is the value of the 4?"}},
	{atPlace(arithmetic.InPlaces(347, 2), 2), []string{"value of the hundredths digit in 3.47", "value of the 7 in 3.47"}},
	{arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: arithmetic.InPlaces(347, 2), To: 1}, []string{"value of the ones digit in 3.47", "value of the 3 in 3.47"}},
	{roundedTo(arithmetic.InPlaces(347, 2), 0, 1), []string{"round 3.47 to the nearest tenth", "3.47 to the nearest tenth", "round 3.47 to the nearest 0.1"}},
	{roundedTo(arithmetic.InPlaces(3476, 3), 0, 2), []string{"round 3.476 to the nearest hundredth"}},
	{roundedTo(arithmetic.InPlaces(37, 1), 1, 0), []string{"round 3.7 to the nearest 1", "round 3.7 to the nearest one", "round 3.7 to the nearest whole number"}},
	{arithmetic.Problem{Kind: arithmetic.Product, Left: op(n(10), arithmetic.Multiply, arithmetic.InPlaces(3, 1))}, []string{"10 × 0.3", "10 times 0.3", "ten times 0.3"}},
	{resting(3, 4, arithmetic.AsPart, false), []string{"3 ÷ 4 as a fraction", "3 ÷ 4", "3 shared by 4", "3 divided by 4", "3 ÷ 4 as a mixed number"}},
	{resting(3, 4, arithmetic.LeftOver, false), []string{"3 ÷ 4 with remainder"}},
	{resting(3, 4, arithmetic.AsDecimal, false), []string{"3 ÷ 4 as a decimal"}},
	{change(money(500), money(327)), []string{"change from $5.00 for $3.27", "change for $3.27 from $5.00", "pay $3.27 with $5.00", "pay with $5.00 for $3.27",
		"what is the change from $5.00 for $3.27?", "make change for $3.27 from $5.00", "count up from $3.27 to $5.00", "how much change from $5.00 after spending $3.27", "how much change do you get from $5.00 if you pay $3.27?",
		"change from $5.00 if it costs $3.27", "change from $5.00 for 3.27", "pay $5.00 for $3.27", "change out of $5.00 for 3 dollars and 27 cents"}},
	{change(dollars(5), money(327)), []string{"change from $5 for $3.27", "change from five dollars for $3.27", "change from 5 for $3.27", "spend $3.27 out of $5"}},
	{one(arithmetic.Coins, money(68)), []string{"$0.68 in coins", "68¢ in coins", "make 68¢ with coins", "68 cents in coins", "make 68¢ with the fewest coins", "fewest coins for 68¢", "which coins make 68¢?"}},
	{coins(arithmetic.Dime, arithmetic.Dime, arithmetic.Penny, arithmetic.Penny, arithmetic.Penny), []string{"2 dimes and 3 pennies = ? cents", "2 dimes and 3 pennies", "2 dimes + 3 pennies",
		"two dimes and three pennies", "2 dimes 3 pennies", "how much is 2 dimes and 3 pennies?", "how many cents are in 2 dimes and 3 pennies", "what is the value of 2 dimes and 3 pennies"}},
	{coins(arithmetic.Quarter, arithmetic.Dime), []string{"1 quarter and 1 dime = ? cents", "a quarter and a dime", "1 quarter, 1 dime"}},
	{coins(arithmetic.Quarter), []string{"1 quarter = ? cents", "how many cents is a quarter?"}},
	{grouped(n(25), n(5)), []string{"25 in groups of 5", "1 quarter = ? nickels", "how many nickels are in a quarter?", "1 quarter is how many nickels"}},
	{grouped(n(100), n(10)), []string{"100 in groups of 10", "1 dollar = ? dimes", "how many dimes make a dollar?", "$1.00 = ? dimes"}},
	{related(arithmetic.Claim, n(10), arithmetic.Equal, op(n(2), arithmetic.Multiply, n(5))), []string{"10 = 2 × 5", "1 dime = 2 nickels", "is a dime the same as 2 nickels?"}},
	{arithmetic.Problem{Kind: arithmetic.Renaming, Left: fr(2, 3), Blank: arithmetic.Blank{Den: 6}}, []string{"2/3 = ?/6", "2/3 in sixths", "write 2/3 as sixths", "write 2/3 with denominator 6",
		"write 2/3 with a denominator of 6", "how many sixths are in 2/3?"}},
	{arithmetic.Problem{Kind: arithmetic.Division, Left: op(fr(3, 4), arithmetic.Divide, fr(1, 8)), Grouping: true}, []string{"3/4 in groups of 1/8", "3/4 ÷ 1/8", "how many 1/8s are in 3/4?", "how many 1/8 in 3/4"}},
	{arithmetic.Problem{Kind: arithmetic.Subtraction, Left: op(n(1), arithmetic.Subtract, fr(3, 8))}, []string{"1 − 3/8", "1 whole - 3/8", "one whole minus three eighths"}},
	{one(arithmetic.Show, fr(1, 4)), []string{"1/4", "1 quarter", "a quarter"}},
	{one(arithmetic.Show, money(245)), []string{"$2.45", "2 dollars and 45 cents", "two dollars and forty-five cents", "245¢", "245 cents"}},
	{one(arithmetic.Show, dollars(5)), []string{"$5", "5 dollars", "five dollars"}},
	{arithmetic.Problem{Kind: arithmetic.PartOf, Left: op(fr(3, 4), arithmetic.Of, n(12))}, []string{"3/4 of 12", "3/4 of a set of 12", "three fourths of a group of 12"}},
	{arithmetic.Problem{Kind: arithmetic.PartOf, Left: op(fr(1, 2), arithmetic.Of, fr(1, 3))}, []string{"1/2 of 1/3", "half of one third", "half of 1/3"}},
}
