package words

import (
	"testing"

	"modeler/arithmetic"
)

func counting(from, by int64, o arithmetic.Op, terms int) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Counting, Run: arithmetic.Run{From: from, By: by, Op: o, Terms: terms}}
}

// Each kind that asks something of numbers: as it is read back, as it is asked
// while the answer is hidden, as an answer page has it (common practice, no
// source), and its topic.
func TestProblemsThatAskOfNumbersInWords(t *testing.T) {
	n := arithmetic.Int
	type problem = arithmetic.Problem
	type answer = arithmetic.Answer
	divided := op(n(98), arithmetic.Divide, n(4))
	for _, c := range []struct {
		p                          problem
		a                          answer
		readBack, asked, told, top string
	}{
		{problem{Kind: arithmetic.PlaceValue, Left: n(3456), To: 100}, answer{Number: n(400)},
			"what is the digit in the hundreds place of 3,456 worth?", "value of the hundreds digit in 3,456", "400", "Hundreds, tens and ones"},
		{problem{Kind: arithmetic.ExpandedForm, Left: n(347)}, answer{List: []int64{300, 40, 7}},
			"347 as the sum of what its digits are worth", "347 in expanded form", "300 + 40 + 7", "Hundreds, tens and ones"},
		{problem{Kind: arithmetic.InWords, Left: n(1_204_347)}, answer{},
			"how do you say and write 1,204,347 in words?", "1,204,347 in words", "one million two hundred four thousand three hundred forty-seven", "Hundreds, tens and ones"},
		{problem{Kind: arithmetic.Parity, Left: n(14)}, answer{Even: true}, "is fourteen even or odd?", "is 14 even or odd?", "even", "Factors and multiples"},
		{problem{Kind: arithmetic.Parity, Left: n(7)}, answer{}, "is seven even or odd?", "is 7 even or odd?", "odd", "Factors and multiples"},
		{problem{Kind: arithmetic.Primality, Left: n(17)}, answer{True: true}, "is seventeen a prime number?", "is 17 prime?", "prime", "Factors and multiples"},
		{problem{Kind: arithmetic.Primality, Left: n(15)}, answer{}, "is fifteen a prime number?", "is 15 prime?", "composite, not prime", "Factors and multiples"},
		{problem{Kind: arithmetic.Primality, Left: n(1)}, answer{}, "is one a prime number?", "is 1 prime?", "neither prime nor composite", "Factors and multiples"},
		{counting(10, 5, arithmetic.Add, 4), answer{List: []int64{10, 15, 20, 25}},
			"start at 10 and add 5 each time: 4 numbers", "count by 5 from 10 to 25", "10, 15, 20, 25", "Groups and rows"},
		{counting(3, 2, arithmetic.Multiply, 3), answer{List: []int64{3, 6, 12}},
			"start at 3 and multiply by 2 each time: 3 numbers", "start at 3, × 2, 3 terms", "3, 6, 12", "Groups and rows"},
		{problem{Kind: arithmetic.RuleTable, Run: arithmetic.Run{Op: arithmetic.Multiply, By: 3}, List: []arithmetic.Number{n(1), n(2)}}, answer{List: []int64{3, 6}},
			"multiply by 3 for each of 1 and 2", "rule × 3 for 1; 2", "3, 6", "Groups and rows"},
		{problem{Kind: arithmetic.Estimate, Left: op(n(398), arithmetic.Add, n(17)), To: 10}, answer{Number: n(420)},
			"about how much is 398 + 17, with both numbers rounded to the nearest ten?", "estimate 398 + 17 to the nearest 10", "about 420", "Adding and taking away"},
		{problem{Kind: arithmetic.FactFamily, Left: op(n(3), arithmetic.Add, n(5))}, answer{Number: n(8)},
			"the other facts that say the same as 3 + 5", "fact family of 3 + 5", "3 + 5 = 8, 5 + 3 = 8, 8 − 5 = 3, 8 − 3 = 5", "Adding and taking away"},
		{problem{Kind: arithmetic.FactFamily, Left: op(n(4), arithmetic.Multiply, n(4))}, answer{Number: n(16)},
			"the other facts that say the same as 4 × 4", "fact family of 4 × 4", "4 × 4 = 16, 16 ÷ 4 = 4", "Groups and rows"},
		{problem{Kind: arithmetic.WaysToMake, Left: n(4)}, answer{Pairs: [][2]int64{{0, 4}, {1, 3}, {2, 2}, {3, 1}, {4, 0}}},
			"every pair of whole numbers that together make 4", "ways to make 4", "0 + 4, 1 + 3, 2 + 2", "Adding and taking away"},
		{problem{Kind: arithmetic.Multiples, Left: n(6), Run: arithmetic.Run{Terms: 3}}, answer{List: []int64{6, 12, 18}},
			"the first 3 multiples of 6: 1 time 6, 2 times, and so on", "first 3 multiples of 6", "6, 12, 18", "Factors and multiples"},
		{problem{Kind: arithmetic.CommonMultiples, Left: n(4), Right: n(6)}, answer{List: []int64{12, 24, 36}},
			"which numbers are multiples of both 4 and 6, and which is the least?", "common multiples of 4 and 6", "12, 24, 36, and so on; the least is 12", "Factors and multiples"},
		{problem{Kind: arithmetic.CommonFactors, Left: n(12), Right: n(18)}, answer{List: []int64{1, 2, 3, 6}},
			"which numbers are factors of both 12 and 18, and which is the greatest?", "common factors of 12 and 18", "1, 2, 3, 6; the greatest is 6", "Factors and multiples"},
		{problem{Kind: arithmetic.Product, Story: arithmetic.TimesAsMany, Left: op(n(3), arithmetic.Multiply, n(8))}, answer{Number: n(24)},
			"3 times as many as 8: how many is that?", "3 times as many as 8?", "24", "Groups and rows"},
		{problem{Kind: arithmetic.Division, Story: arithmetic.TimesAsMany, Left: op(n(24), arithmetic.Divide, n(3))}, answer{Number: n(8)},
			"24 is 3 times as many as which number?", "24 is 3 times as many as ?", "8", "Sharing and grouping"},
		{problem{Kind: arithmetic.Division, Story: arithmetic.TimesAsMany, Grouping: true, Left: op(n(24), arithmetic.Divide, n(8))}, answer{Number: n(3)},
			"24 is how many times as many as 8?", "24 is how many times as many as 8?", "3", "Sharing and grouping"},
		{problem{Kind: arithmetic.Subtraction, Story: arithmetic.HowManyMore, Left: op(n(12), arithmetic.Subtract, n(9))}, answer{Number: n(3)},
			"how many more is 12 than 9?", "how many more is 12 than 9?", "3", "Adding and taking away"},
		// 98 ÷ 4 = 24 r 2 = 24 1/2 = 24.5, or about 25 (National curriculum in England, 2013, year 5).
		{problem{Kind: arithmetic.Division, Left: divided}, answer{Number: n(24), Remainder: 2},
			"98 shared equally among 4: how many in each?", "98 ÷ 4 = ?", "24 remainder 2", "Sharing and grouping"},
		{problem{Kind: arithmetic.Division, Rest: arithmetic.AsPart, Left: divided}, answer{Number: frac(98, 4), Simplest: arithmetic.AsMixed(frac(49, 2).Value), Remainder: 2},
			"98 shared equally among 4: how many in each? What is left over is cut up: a mixed number.", "98 ÷ 4 as a mixed number", "98/4 = 24 1/2", "Sharing and grouping"},
		{problem{Kind: arithmetic.Division, Rest: arithmetic.AsDecimal, Left: divided}, answer{Number: arithmetic.InPlaces(245, 1)},
			"98 shared equally among 4: how many in each? What is left over is cut up: a decimal.", "98 ÷ 4 as a decimal", "24.5", "Sharing and grouping"},
		{problem{Kind: arithmetic.Division, Rest: arithmetic.OneMore, Grouping: true, Left: divided}, answer{Number: n(25), Remainder: 2},
			"98 in groups of 4: how many groups? What is left over needs one more: rounded up.", "98 in groups of 4 rounded up", "25", "Sharing and grouping"},
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
