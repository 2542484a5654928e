package reading

import "modeler/arithmetic"

func placed(v, to int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: n(v), To: to}
}

func counted(from, by int64, o arithmetic.Op, terms int) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Counting, Run: arithmetic.Run{From: from, By: by, Op: o, Terms: terms}}
}

func ruled(o arithmetic.Op, by int64, list ...int64) arithmetic.Problem {
	p := arithmetic.Problem{Kind: arithmetic.RuleTable, Run: arithmetic.Run{By: by, Op: o}}
	for _, v := range list {
		p.List = append(p.List, n(v))
	}
	return p
}

func estimated(a int64, o arithmetic.Op, b, to int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Estimate, Left: op(n(a), o, n(b)), To: to}
}

func multiplesOf(v int64, terms int) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Multiples, Left: n(v), Run: arithmetic.Run{Terms: terms}}
}

func both(kind arithmetic.Kind, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: n(a), Right: n(b)}
}

func told(kind arithmetic.Kind, a int64, o arithmetic.Op, b int64, s arithmetic.Story, grouping bool) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: op(n(a), o, n(b)), Story: s, Grouping: grouping}
}

func resting(a, b int64, rest arithmetic.Rest, grouping bool) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Division, Left: op(n(a), arithmetic.Divide, n(b)), Rest: rest, Grouping: grouping}
}

// askedSpellings are the texts of problems that ask something of a number or of a
// row of numbers, tell a story, or say what is done with what is left over. The
// first of each is what String writes.
var askedSpellings = []struct {
	problem arithmetic.Problem
	texts   []string
}{
	{placed(3456, 100), []string{"value of the hundreds digit in 3,456", "value of the 4 in 3,456", "in 3,456, what is the value of the 4?", "what is the 4 in 3,456 worth?",
		"What is the value of the 4 in 3456?", "the value of the digit 4 in 3,456", "hundreds digit of 3,456", "digit in the hundreds place of 3,456",
		"which place is the 4 in 3,456?", "what does the 4 in 3,456 stand for?", "place value of the 4 in 3456", "how much is the 4 in 3,456 worth",
		"what digit is in the hundreds place in 3,456?", "which digit is in the hundreds place of 3456", "what is the value of four in 3,456"}},
	{placed(45678, 10_000), []string{"value of the ten thousands digit in 45,678", "ten thousands digit of 45678", "value of the 4 in 45,678"}},
	{one(arithmetic.ExpandedForm, n(347)), []string{"347 in expanded form", "expand 347", "write 347 in expanded form", "expanded form of 347",
		"Write 347 in expanded notation.", "347 expanded"}},
	{one(arithmetic.InWords, n(347)), []string{"347 in words", "name 347", "how do you say 347?", "write 347 in words", "How do you write 347 in words?",
		"347 in word form", "word form of 347", "spell 347"}},
	{one(arithmetic.Show, n(305)), []string{"305", "write three hundred five in digits", "write the number three hundred five", "three hundred five in standard form"}},
	{one(arithmetic.Show, n(9_999_999)), []string{"9,999,999",
		"nine million nine hundred ninety-nine thousand nine hundred ninety-nine"}},
	{one(arithmetic.Show, n(3_400_012)), []string{"3,400,012", "three million four hundred thousand twelve"}},
	{one(arithmetic.Parity, n(14)), []string{"is 14 even or odd", "is 14 even", "is 14 odd?", "14 even or odd?", "14 is even", "is 14 an even number?",
		"even or odd: 14", "Is 14 odd or even?"}},
	{one(arithmetic.Primality, n(15)), []string{"is 15 prime", "is 15 a prime number?", "prime or composite 15", "is 15 prime or composite?",
		"is 15 composite", "15 prime or composite?"}},
	{counted(0, 5, arithmetic.Add, 11), []string{"count by 5 from 0 to 50", "count by 5", "count by 5s", "count by fives", "skip count by 5",
		"skip-count by 5s", "Count in fives.", "count in steps of 5", "count from 0 to 50 by 5", "count by 5 starting at 0", "count by 5, 11 terms",
		"count by 5, 10 times"}},
	{counted(10, 5, arithmetic.Add, 9), []string{"count by 5 from 10 to 50", "count by 5s from 10 to 50", "count from 10 to 50 by fives", "count by 5 from 10 up to 52"}},
	{counted(120, 10, arithmetic.Subtract, 11), []string{"count back by 10 from 120 to 20", "count back by 10 from 120", "count back from 120 by 10",
		"count backward by tens from 120", "count down by 10 from 120 to 20", "count by 10 from 120 to 20"}},
	{counted(5, 1, arithmetic.Add, 8), []string{"count by 1 from 5 to 12", "count from 5 to 12", "count 5 to 12"}},
	{counted(2, 2, arithmetic.Add, 10), []string{"count by 2 from 2 to 20", "even numbers to 20", "list the even numbers from 2 to 20", "first 10 even numbers", "even numbers between 1 and 21"}},
	{counted(1, 2, arithmetic.Add, 5), []string{"count by 2 from 1 to 9", "odd numbers from 1 to 9", "the first five odd numbers"}},
	{counted(0, 25, arithmetic.Add, 11), []string{"count by 25 from 0 to 250", "count by twenty-fives"}},
	{counted(35, 10, arithmetic.Subtract, 4), []string{"count back by 10 from 35 to 5", "count back by 10 from 35"}},
	{counted(1, 3, arithmetic.Add, 6), []string{"count by 3 from 1 to 16", "start at 1, add 3", "start at 1 and add 3 each time", "add 3, start at 1",
		"add 3 starting at 1", "rule: add 3, start at 1", "start with 1, rule add 3", "start at 1, + 3", "start at 1, add 3, 6 terms", "Add 3, starting number 1"}},
	{counted(50, 5, arithmetic.Subtract, 6), []string{"count back by 5 from 50 to 25", "start at 50, subtract 5", "start at 50, take away 5 each time"}},
	{counted(3, 2, arithmetic.Multiply, 5), []string{"start at 3, × 2, 5 terms", "start at 3, times 2, 5 terms", "start at 3, multiply by 2, 5 numbers",
		"start at 3 and double, 5 terms", "5 terms, start at 3, x 2"}},
	{counted(3, 3, arithmetic.Add, 4), []string{"count by 3 from 3 to 12", "3, 6, 9, ?", "3,6,9,?", "3, 6, 9, _", "3, ?, 9, 12", "?, 6, 9, 12", "what comes next: 3, 6, 9",
		"What comes next in 3, 6, 9?", "which number comes next: 3, 6, 9, ?", "3, 6, 9, what comes next?", "3, 6, 9, ...", "continue 3, 6, 9", "next number: 3, 6, 9", "next number in 3, 6, 9"}},
	{counted(2, 2, arithmetic.Add, 6), []string{"count by 2 from 2 to 12", "2, 4, 6, 8, __, __", "next three numbers: 2, 4, 6"}},
	{counted(50, 5, arithmetic.Subtract, 4), []string{"count back by 5 from 50 to 35", "50, 45, 40, ?"}},
	{counted(3, 2, arithmetic.Multiply, 4), []string{"start at 3, × 2, 4 terms", "3, 6, 12, ?", "3, 6, ?, 24"}},
	{ruled(arithmetic.Multiply, 3, 1, 2, 3), []string{"rule × 3 for 1; 2; 3", "rule × 3 for 1, 2, 3", "rule x 3 for 1, 2 and 3", "rule times 3: 1, 2, 3",
		"multiply 1, 2, 3 by 3", "triple 1, 2, 3", "table for × 3: 1, 2, 3", "rule multiply by 3 for 1, 2, 3"}},
	{ruled(arithmetic.Add, 4, 1, 2, 3, 5), []string{"rule + 4 for 1; 2; 3; 5", "add 4 to 1, 2, 3, 5", "add 4 to 1, 2, 3 and 5", "+ 4: 1, 2, 3, 5", "rule add 4: 1, 2, 3, 5"}},
	{ruled(arithmetic.Subtract, 3, 5, 6, 7), []string{"rule − 3 for 5; 6; 7", "subtract 3 from 5, 6, 7", "rule - 3 for 5, 6, 7"}},
	{ruled(arithmetic.Divide, 2, 4, 6, 8), []string{"rule ÷ 2 for 4; 6; 8", "divide 4, 6, 8 by 2"}},
	{ruled(arithmetic.Multiply, 3, 1, 2, 3, 4, 5), []string{"rule × 3 for 1; 2; 3; 4; 5", "rule × 3"}},
	{estimated(398, arithmetic.Add, 17, 10), []string{"estimate 398 + 17 to the nearest 10", "estimate 398 + 17", "about how much is 398 + 17?",
		"estimate 398 plus 17 to the nearest ten", "estimate the sum of 398 and 17", "about what is 398 + 17?", "estimate 398 + 17 by rounding to the nearest ten"}},
	{estimated(398, arithmetic.Subtract, 217, 100), []string{"estimate 398 − 217 to the nearest 100", "estimate 398 - 217"}},
	{estimated(52, arithmetic.Add, 61, 10), []string{"estimate 52 + 61 to the nearest 10", "estimate 52 + 61"}},
	{one(arithmetic.FactFamily, op(n(3), arithmetic.Add, n(5))), []string{"fact family of 3 + 5", "fact family 3 5 8", "fact family 3, 5, 8", "fact family of 3 and 5",
		"fact family for 3, 5 and 8", "number family 3 5 8", "fact family of 3 + 5 = 8", "fact family 8, 3, 5", "related facts for 3 + 5", "fact family of 8 - 5"}},
	{one(arithmetic.FactFamily, op(n(3), arithmetic.Multiply, n(5))), []string{"fact family of 3 × 5", "fact family 3 5 15", "fact family of 15 ÷ 5"}},
	{one(arithmetic.WaysToMake, n(7)), []string{"ways to make 7", "number bonds of 7", "number bonds to 7", "pairs that make 7", "7 = ? + ?", "? + ? = 7", "all the ways to make 7", "which two numbers make 7?"}},
	{one(arithmetic.Factors, n(24)), []string{"factors of 24", "? × ? = 24", "24 = _ × _"}},
	{multiplesOf(6, 10), []string{"first 10 multiples of 6", "multiples of 6", "list the multiples of 6", "6 times table", "the 6 times table", "times table of 6", "6x table", "multiples of 6 up to 60", "multiplication facts for 6"}},
	{multiplesOf(6, 5), []string{"first 5 multiples of 6", "the first five multiples of 6", "list the first 5 multiples of 6"}},
	{both(arithmetic.CommonMultiples, 4, 6), []string{"common multiples of 4 and 6", "least common multiple of 4 and 6", "lcm 4 6", "LCM of 4 and 6", "lcm(4, 6)",
		"What is the least common multiple of 4 and 6?", "lowest common multiple of 4, 6", "least common multiple 4 6", "multiples of 4 and 6"}},
	{both(arithmetic.CommonFactors, 12, 18), []string{"common factors of 12 and 18", "greatest common factor of 12 and 18", "gcf 12 18", "GCF(12, 18)",
		"highest common factor of 12 and 18", "what are the common factors of 12 and 18?", "factors of 12 and 18"}},
	{told(arithmetic.Product, 3, arithmetic.Multiply, 8, arithmetic.TimesAsMany, false), []string{"3 times as many as 8", "3 times as much as 8",
		"three times as long as 8", "? = 3 times as many as 8", "what is 3 times as many as 8?", "triple as many as 8"}},
	{told(arithmetic.Division, 24, arithmetic.Divide, 8, arithmetic.TimesAsMany, true), []string{"24 is how many times as many as 8",
		"how many times as many as 8 is 24?", "how many times as big is 24 as 8", "24 is ? times as many as 8", "24 = ? times as many as 8"}},
	{told(arithmetic.Division, 24, arithmetic.Divide, 3, arithmetic.TimesAsMany, false), []string{"24 is 3 times as many as ?", "24 is 3 times as many as what number?",
		"24 is three times as much as what?"}},
	{told(arithmetic.Subtraction, 12, arithmetic.Subtract, 9, arithmetic.HowManyMore, false), []string{"how many more is 12 than 9", "how many more than 9 is 12?",
		"how many fewer is 9 than 12", "12 is how many more than 9", "9 is how many less than 12", "how much longer is 12 than 9?", "how much more is 12 than 9"}},
	{related(arithmetic.Claim, n(24), arithmetic.Equal, op(n(3), arithmetic.Multiply, n(8))), []string{"24 = 3 × 8", "24 is 3 times as many as 8", "is 24 3 times as many as 8?"}},
	{resting(98, 4, arithmetic.AsPart, false), []string{"98 ÷ 4 as a mixed number", "98 ÷ 4 as a fraction", "98 divided by 4 as a mixed number", "write 98 ÷ 4 as a mixed number"}},
	{resting(98, 4, arithmetic.AsDecimal, false), []string{"98 ÷ 4 as a decimal"}},
	{resting(98, 4, arithmetic.OneMore, false), []string{"98 ÷ 4 rounded up"}},
	{resting(98, 4, arithmetic.OneMore, true), []string{"98 in groups of 4 rounded up"}},
	{resting(98, 4, arithmetic.LeftOver, false), []string{"98 ÷ 4", "98 ÷ 4 with remainder", "98 ÷ 4 with a remainder"}},
	{one(arithmetic.Product, op(n(4), arithmetic.Multiply, n(10))), []string{"4 × 10", "4 tens", "four tens", "4 tens = ?"}},
	{one(arithmetic.Product, op(n(6), arithmetic.Multiply, n(7))), []string{"6 × 7", "six sevens", "6 sevens", "six 7s"}},
	{one(arithmetic.Addition, op(n(300), arithmetic.Add, n(4))), []string{"300 + 4", "3 hundreds + 4 ones"}},
	{one(arithmetic.Show, n(342)), []string{"342", "3 hundreds 4 tens 2 ones", "3 hundreds, 4 tens and 2 ones", "3 hundreds, 4 tens, 2 ones"}},
	{grouped(n(340), n(10)), []string{"340 in groups of 10", "340 = ? tens", "? tens = 340", "how many tens are in 340?", "340 is how many tens?"}},
	{grouped(n(100), n(10)), []string{"100 in groups of 10", "1 hundred = ? tens"}},
	{grouped(n(24), n(8)), []string{"24 in groups of 8", "how many 8s are in 24?", "how many eights in 24", "how many times does 8 go into 24?"}},
	{related(arithmetic.Claim, op(n(12), arithmetic.Multiply, n(10)), arithmetic.Equal, op(n(100), arithmetic.Add, n(20))),
		[]string{"12 × 10 = 100 + 20", "12 tens = 1 hundred + 2 tens"}},
	{related(arithmetic.Missing, op(n(7), arithmetic.Add, blankX), arithmetic.Equal, n(10)), []string{"7 + ? = 10", "7 and how many make 10?", "7 plus what is 10",
		"7 + what number = 10"}},
	{related(arithmetic.Missing, op(blankX, arithmetic.Multiply, n(7)), arithmetic.Equal, n(56)), []string{"? × 7 = 56", "what times 7 is 56?", "what number times 7 equals 56"}},
	{related(arithmetic.Claim, op(n(5), arithmetic.Add, n(5)), arithmetic.Equal, n(10)), []string{"5 + 5 = 10", "5 and 5 make 10"}},
	{one(arithmetic.PartOf, op(fr(1, 2), arithmetic.Of, n(12))), []string{"1/2 of 12", "half as many as 12"}},
	{related(arithmetic.Missing, op(n(8), arithmetic.Add, n(4)), arithmetic.Equal, op(blankX, arithmetic.Add, n(5))), []string{"8 + 4 = ? + 5", "8 + 4 = _ + 5"}},
	{related(arithmetic.Claim, op(op(n(2), arithmetic.Multiply, n(3)), arithmetic.Multiply, n(4)), arithmetic.Equal, op(n(2), arithmetic.Multiply, op(n(3), arithmetic.Multiply, n(4)))),
		[]string{"2 × 3 × 4 = 2 × (3 × 4)", "(2 x 3) x 4 = 2 x (3 x 4)"}},
	{one(arithmetic.Expression, op(op(n(2), arithmetic.Multiply, n(8)), arithmetic.Add, n(3))), []string{"2 × 8 + 3", "double 8 and add 3", "double 8, then add 3"}},
	{one(arithmetic.Expression, op(op(n(3), arithmetic.Add, n(4)), arithmetic.Multiply, n(2))), []string{"(3 + 4) × 2", "add 3 and 4, then multiply by 2", "3 + 4, then times 2"}},
	{one(arithmetic.Expression, op(op(n(9), arithmetic.Subtract, n(5)), arithmetic.Add, n(7))), []string{"9 − 5 + 7"}},
}
