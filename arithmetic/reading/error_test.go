package reading

import (
	"strings"
	"testing"
	"unicode/utf8"

	"modeler/arithmetic"
)

// The wording of the errors is reviewed by eye; this table keeps it. The first
// block is the one that the design of the program gives as its example.
func TestAnErrorPointsSaysWhatIsWrongAndOffersAProblem(t *testing.T) {
	for _, c := range []struct {
		text  string
		code  Code
		block string
	}{
		{"23 45", MissingSign, `there is no sign between the two numbers

    23 45
    ^^^^^
hint: put + or - between them
try:  23 + 45
`},
		{"", Empty, `there is no problem here yet

hint: type one as it stands in the book
try:  402 − 178
`},
		{" \t\u00a0\u200b", Empty, `there is no problem here yet

hint: type one as it stands in the book
try:  402 − 178
`},
		{"7 +", MissingNumber, `there is no number after +

    7 +
      ^
hint: put a number after it, or ? for one that is to be found
try:  7 + 2
`},
		{"× 8", MissingNumber, `there is no number in front of ×

    × 8
    ^
hint: put a number in front, or ? for one that is to be found
try:  2 × 8
`},
		{"5 > ", MissingNumber, `there is no number after >

    5 > 
      ^
hint: put a number after it, or ? for one that is to be found
try:  5 > 2
`},
		{"7 + + 8", MissingNumber, `there is no number between + and +

    7 + + 8
      ^^^
hint: put a number between them, or leave one of them out
try:  7 + 8
`},
		{"3/0", ZeroParts, `a whole cannot be cut in 0 parts

    3/0
    ^^^
hint: the number below the bar says in how many equal parts the whole is cut: 1 or more
try:  3/4
`},
		{"1/2 + 2 7/4", BadNumber, `the fraction in a mixed number is less than 1

    1/2 + 2 7/4
          ^^^^^
hint: write 3 3/4, or put + between the two numbers
try:  1/2 + 3 3/4
`},
		{"rond 347", UnknownWord, `the word “rond” is not one that can be read

    rond 347
    ^^^^
hint: perhaps “round” was meant
try:  round 347 to the nearest 10
`},
		{"3 cm + 4 cm", UnknownWord, `the word “cm” is not one that can be read

    3 cm + 4 cm
      ^^
hint: leave out units and the names of things
try:  3 + 4
`},
		{"Nora has 3 tickets and buys 2 more", UnknownWord, `the word “Nora” is not one that can be read

    Nora has 3 tickets and buys 2 more
    ^^^^
hint: stories cannot be read yet: write the problem in numbers and signs
try:  402 − 178
`},
		{"1,2,3", BadNumber, `the commas in 1,2,3 do not mark groups of three digits

    1,2,3
    ^^^^^
hint: write 1,204 with a comma, 0.5 with a point, and a list as in order 1, 2, 3
try:  order 1; 2; 3
`},
		{"1,5 + 2", BadNumber, `the commas in 1,5 do not mark groups of three digits

    1,5 + 2
    ^^^
hint: write 1,204 with a comma, 0.5 with a point, and a list as in order 1, 2, 3
try:  1.5 + 2
`},
		{"1.2.3", BadNumber, `there are two points in 1.2.3

    1.2.3
    ^^^^^
hint: a decimal has one point: 1.25
try:  12.3
`},
		{"? - ? = 5", TooMany, `there are two blanks

    ? - ? = 5
        ^
hint: leave one number out, not two
try:  ? − 2 = 5
`},
		{"8 + ?", MissingSign, `there is a blank but no equal sign

    8 + ?
    ^^^^^
hint: write what it comes to, as in 8 + ? = 11
try:  8 + ? = 11
`},
		{"2 × (8 + 7", Unbalanced, `this bracket is not closed

    2 × (8 + 7
        ^
hint: put ) where it ends
try:  2 × (8 + 7)
`},
		{"8 + 7) × 2", Unbalanced, `this bracket was not opened

    8 + 7) × 2
         ^
hint: put ( where it starts, or leave it out
try:  8 + 7 × 2
`},
		{"3(4)", MissingSign, `there is no sign in front of the bracket

    3(4)
    ^^
hint: put × there, or the sign that is meant
try:  3 × 4
`},
		{"-5", Negative, `−5 is less than 0

    -5
    ^^
hint: the pictures start at 0; to take a number away, write the number it is taken from in front
try:  5
`},
		{"3/4 = 6/8 = 9/12", NotYet, `there is more than one of =, < and > here

    3/4 = 6/8 = 9/12
              ^
hint: take two sides at a time
try:  3/4 = 6/8
`},
		{"3:15", NotYet, `times of day cannot be read yet

    3:15
    ^^^^
hint: give minutes on their own, as in 15 + 45; write ÷ to divide
try:  15 + 45
`},
		{"4 + <script>alert(1)</script>", BadCharacter, `this is the code of a page, not part of a problem

    4 + <script>alert(1)</script>
        ^^^^^^^^
hint: give the problem as plain text
try:  402 − 178
`},
		{"3 + 4 👩‍🏫", BadCharacter, `“👩🏫” is not part of a problem

    3 + 4 👩�🏫
          ^^^^^
hint: use numbers, plain words and the signs + − × ÷ / = < >
try:  3 + 4
`},
		{"3 +\x00 4\x1b[31m", BadCharacter, `there is a hidden control character here

    3 +␀ 4␛[31m
       ^
hint: delete it, or type the problem again
try:  402 − 178
`},
		{"10,000,000 + 1", TooLarge, `this number is too large

    10,000,000 + 1
    ^^^^^^^^^^
hint: whole numbers go up to 9,999,999
try:  999 + 1
`},
		{"round 347 to the nearest 25", BadNumber, `numbers are rounded to the nearest 10, 100, 1,000 and so on

    round 347 to the nearest 25
                             ^^
hint: say to the nearest ten, hundred or thousand
try:  round 347 to the nearest 10
`},
		{"order 1/2, 3/4 from greatest to least", NotYet, `numbers are put in order from least to greatest only

    order 1/2, 3/4 from greatest to least
                   ^^^^^^^^^^^^^^^^^^^^^^
hint: read the order from the other end
try:  order 1/2; 3/4
`},
		{strings.Repeat("1 + ", 11) + "2 3 + 4 + 5 + 6 + 7 + 8 + 9 + 10", MissingSign, `there is no sign between the two numbers

    1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 2 3 + 4 + 5 + 6 …
                                                ^^^
hint: put + or - between them
try:  1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 1 + 2
`},
		{"order " + strings.Repeat("1/2, ", 12) + "half a loaf", UnknownWord, `the word “loaf” is not one that can be read

    …2, 1/2, 1/2, half a loaf
                         ^^^^
hint: write the problem with numbers and signs, as it stands in the book
try:  402 − 178
`},
		{"402 - 178 -", MissingNumber, `there is no number after −

    402 - 178 -
              ^
hint: leave it out, or put a number after it
try:  402 − 178
`},
		{"3 x x 4", MissingNumber, `there is no number between × and ×

    3 x x 4
      ^^^
hint: put a number between them, or leave one of them out
try:  3 × 4
`},
		{"50 000 + 1", MissingSign, `a space does not mark thousands here

    50 000 + 1
    ^^^^^^
hint: write large numbers with a comma: 50,000
try:  50,000 + 1
`},
		{"7 ÷ 2 = 3 r 1", NotYet, `a remainder cannot be read in a problem yet

    7 ÷ 2 = 3 r 1
              ^
hint: ask for the division alone: the lesson says what is left over
try:  7 ÷ 2
`},
		{"24 is a multiple of 6", NotYet, `the word “multiple” cannot be read yet

    24 is a multiple of 6
            ^^^^^^^^
hint: divide, and see whether anything is left over
try:  24 ÷ 6
`},
		{"5 m - 30 cm", UnknownWord, `the word “m” is not one that can be read

    5 m - 30 cm
      ^
hint: write both amounts in the same unit, and leave out its name
try:  402 − 178
`},
		{"3 apples + 4 apples", UnknownWord, `the word “apples” is not one that can be read

    3 apples + 4 apples
      ^^^^^^
hint: leave out units and the names of things
try:  3 + 4
`},
		{"value of the 9 in 3,456", BadNumber, `there is no digit 9 in 3,456

    value of the 9 in 3,456
                 ^
hint: name a digit that stands in the number
try:  value of the thousands digit in 3,456
`},
		{"thousands digit of 347", BadNumber, `there is no thousands place in 347

    thousands digit of 347
    ^^^^^^^^^
hint: the highest place of this number is its hundreds
try:  value of the hundreds digit in 347
`},
		{"count by 0", BadNumber, `this leaves every number as it is

    count by 0
             ^
hint: count by 1 or more, or multiply by 2 or more
try:  count by 2 from 0 to 20
`},
		{"count by 5 from 0 to 1000", TooMany, `these are 201 numbers, more than 24

    count by 5 from 0 to 1000
                         ^^^^
hint: list 24 at most: stop sooner, or count by a larger number
try:  count by 5 from 0 to 25
`},
		{"start at 10, subtract 3, 8 terms", Negative, `the number after 1 is less than 0

    start at 10, subtract 3, 8 terms
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
hint: start at a larger number, or stop sooner
try:  count back by 3 from 10 to 1
`},
		{"3, 7, 12, ?", NotYet, `no one step leads from each of these numbers to the next

    3, 7, 12, ?
    ^^^^^^^^
hint: give a row in which the same number is added, taken away or multiplied by each time
try:  count by 4 from 3 to 11
`},
		{"multiples of 0", BadNumber, `multiples are found of whole numbers from 1 up

    multiples of 0
                 ^
hint: give a whole number
try:  first 10 multiples of 6
`},
		{"fact family 3 5 9", BadNumber, `these numbers make no fact family

    fact family 3 5 9
                ^^^^^
hint: the largest is the sum or the product of the other two; no factor is 0
try:  fact family of 3 + 5
`},
		{"estimate 398", NotYet, `an estimate is read for two numbers with one sign

    estimate 398
             ^^^
hint: write it as in estimate 398 + 17, or round one number
try:  round 398 to the nearest 10
`},
		{"100,200,300,?", BadNumber, `the commas in 100,200,300 can be read as part of one number

    100,200,300,?
    ^^^^^^^^^^^
hint: put a space after each comma
try:  count by 100 from 100 to 400
`},
	} {
		_, err := Read(c.text)
		e, ok := err.(*Error)
		if !ok {
			t.Errorf("Read(%q) gives no error", c.text)
			continue
		}
		if e.Code != c.code {
			t.Errorf("Read(%q): code %s, want %s", c.text, e.Code, c.code)
		}
		if got := e.Block(); got != c.block {
			t.Errorf("Read(%q) says\n%s\nwant\n%s", c.text, got, c.block)
		}
	}
}

// soundError checks what every error must be, whatever the text.
func soundError(t *testing.T, text string, err error) {
	t.Helper()
	e, ok := err.(*Error)
	if !ok {
		t.Fatalf("Read(%q): the error is a %T", text, err)
	}
	if e.Text != text {
		t.Errorf("Read(%q): the error is about %q", text, e.Text)
	}
	if n := utf8.RuneCountInString(text); e.Start < 0 || e.End < e.Start || e.End > n {
		t.Errorf("Read(%q): span %d to %d of %d", text, e.Start, e.End, n)
	}
	if e.Code == "" || e.Message == "" || e.Hint == "" || strings.HasSuffix(e.Message, ".") {
		t.Errorf("Read(%q): code %q, message %q, hint %q", text, e.Code, e.Message, e.Hint)
	}
	if len(e.Message) > 200 || len(e.Block()) > 1500 {
		t.Errorf("Read(%q): the error is %d bytes long", text, len(e.Block()))
	}
	for _, r := range e.Block() {
		if r < ' ' && r != '\n' || r == 0x7f || r >= 0x80 && r < 0xa0 {
			t.Errorf("Read(%q): the block holds the control character %U", text, r)
		}
	}
	if _, err := Read(e.Try); err != nil {
		t.Errorf("Read(%q): the try %q does not read: %v", text, e.Try, err)
	}
}

func TestTheBoundsHoldAtTheirEdge(t *testing.T) {
	brackets := func(n int) string { return strings.Repeat("(", n) + "3" + strings.Repeat(")", n) }
	sum := func(n int) string { return "1" + strings.Repeat("+1", n-1) }
	list := func(n int) string { return "order 1/2" + strings.Repeat(", 1/2", n-1) }
	for _, c := range []struct {
		name         string
		last, beyond string
		code         Code
	}{
		{"characters", "3" + strings.Repeat(" ", MaxText-1), "3" + strings.Repeat(" ", MaxText), TooLong},
		{"whole numbers", "9,999,999", "10,000,000", TooLarge},
		{"numerators", "9999999/2", "10000000/2", TooLarge},
		{"denominators", "1/1000", "1/1001", TooLarge},
		{"places", "0.123456", "0.1234567", TooLarge},
		{"money", "$9,999,999.99", "$10,000,000.00", TooLarge},
		{"numbers", sum(MaxNumbers), sum(MaxNumbers + 1), TooMany},
		{"brackets", brackets(MaxDepth), brackets(MaxDepth + 1), TooDeep},
		{"long lists", list(MaxList), list(MaxList + 1), TooMany},
		{"short lists", list(2), list(1), MissingNumber},
		{"numbers of a run", "count by 5 from 0 to 115", "count by 5 from 0 to 120", TooMany},
		{"terms", "start at 1, add 3, 24 terms", "start at 1, add 3, 25 terms", TooMany},
		{"few terms", "start at 1, add 3, 2 terms", "start at 1, add 3, 1 term", MissingNumber},
		{"multiples", "first 24 multiples of 6", "first 25 multiples of 6", TooMany},
		{"largest of a run", "count by 1 from 9999990 to 9999999", "count by 1 from 9999995", TooLarge},
		{"numbers of a table", "rule × 3 for 1, 2, 3, 4, 5, 6, 7, 8", "rule × 3 for 1, 2, 3, 4, 5, 6, 7, 8, 9", TooMany},
		{"counts of a place", "9 millions 9 ones", "9 millions 9999999 ones", TooLarge},
	} {
		if _, err := Read(c.last); err != nil {
			t.Errorf("%s: Read(%q): %v", c.name, c.last, err)
		}
		_, err := Read(c.beyond)
		if err == nil {
			t.Errorf("%s: Read(%q) gives no error", c.name, c.beyond)
			continue
		}
		soundError(t, c.beyond, err)
		if code := err.(*Error).Code; code != c.code {
			t.Errorf("%s: Read(%q): code %s, want %s", c.name, c.beyond, code, c.code)
		}
	}
}

func TestHostileTextsGetASoundError(t *testing.T) {
	for _, text := range []string{
		strings.Repeat("7", 10_000), strings.Repeat("(", 300), strings.Repeat("7 + ", 5_000), strings.Repeat("½", 200),
		strings.Repeat("1/2 of ", 28) + "3", strings.Repeat("rond ", 40), strings.Repeat("?", 199) + "+", "\xff\xfe", "\u202e3 + 4",
		strings.Repeat("\u0301", 50), "ﷺ", "<b>7</b>", "</script>", "7 ; DROP TABLE", "$", "¢", "1e9", "NaN", "٣ + ٤", "③ + ④",
		"3²", "x²", "√9", "|3|", "3!4", "3..4", "1/2/3", "1//2", "1.5/2", "1/2 + ?/4 = 3/4", "0/? = 1/2", "?/?", "? > 3 + 1", "7 ? 8 = 56",
		"compare 3/4", "order", "order ?, 3", "round", "round 347 to the nearest", "factors of 0", "factors of 3/4", "3 of 12", "= = =",
		"in 5 in 5", "in 5 in", "count by", "count by 0.1", "count back by 10 from 5", "count back to 50 from 5", "start at", "start at 1", "start at 0, times 2", "start at 3, × 2, 24 terms",
		"start at 100, divide by 2", "0.1, 0.2, ?", "?, ?, 3", "3, ?", "?, ?", "rule", "rule 4 for 1, 2", "rule ÷ 2 for 3, 5", "rule ÷ 0 for 3, 5", "rule × 3 for 1/2", "rule × 3 for ?", "estimate", "estimate ? + 3",
		"estimate 1/2 + 1/3", "estimate 3 + 4 + 5", "fact family", "fact family of 8", "fact family 1 2 3 4", "fact family of 0 × 5", "fact family of 7 ÷ 2", "ways to make", "ways to make 25¢", "3/4 of a trapezoid", "2/3 of a circle + 1/3 of a circle", "change from $5", "3 + ?% = 5", "68 in coins", "0.68 dollars", "0 dimes", "30 nickels", "is 3/4 closer to 0 or 1", "which is closer to 1/2, 3/8 or 3/4", "which is closer to 1, 3/4", "0.5 of a circle", "0.5 as a decimal", "50% as a percent", "count by 1/997 from 1/991", "multiples of 1/2",
		"first 0 multiples of 6", "common multiples of 4", "common multiples of 4, 6, 8", "lcm(", "lcm 0 6", "gcf ? 3", "is 0 prime", "is 2.5 even", "is ? even", "$347.50 in words", "value of the 5 in 3.4", "value of the hundredths digit in 3.4", "how many more is", "how many more is 12",
		"3 times as many as", "24 is 3 times as many as", "24 is ? times as many as ?", "4 tens 3 hundreds", "what plus what is 10", "tens digit in", "double 8 and add", "$$5", "3/4/2024", "simplify 3 + 4", "half of", "is", "which is more", "3 x", "x 3", "n n", "( ) ( )",
	} {
		_, err := Read(text)
		if err == nil {
			t.Errorf("Read(%q) gives no error", text)
			continue
		}
		soundError(t, text, err)
	}
}

func TestEveryFaultHasItsCode(t *testing.T) {
	for code, texts := range map[Code][]string{
		Empty:         {"", " ", "\u200b"},
		BadCharacter:  {"3 & 4", "€5 + €3", "3 + 4\x07", "\u202e3 + 4", "<b>7</b>", "3 . 4", "402 - 178. 3 + 4", "compare 3/4 = 6/8", "3, 4", "1,", "6/8 in simplest form + 1", "3 + 4 ; 5"},
		UnknownWord:   {"hello", "rond 347", "3 apples", "5th", "1e9", "of", "thousand thousand", "6/8 in simplest", "compare compare"},
		MissingNumber: {"%", "50 + %", "7 +", "+ 7", "× 8", "x 8", "/ 4", "3 /", "= 5", "5 >", "5 == 5", "5 <= 6", "half of", "halve", "double", "compare", "compare 3/4", "order 5", "order 1,204,100", "round 347", "347 to the nearest", "$", "5$", "¢", "add 3", "add 3 and", "share 12", "is", "compare ? and 3", "3/4 ? ?", "are ? and 3 equal", ", 3", "are 3/4 and"},
		MissingSign:   {"23 45", "3(4)", "(3)4", "(3)(4)", "8 ? = 48 + 3", "8 n = 48", "½½", "1 2/4 5", "8 + ?", "?", "?/8", "3 of 12", "3/4 and 6/8", "3 four", "seven 8", "add 3 4"},
		Unbalanced:    {"(3 + 4", "3 + 4)", ")", "((3)"},
		BadNumber:     {"1,2,3", "1,5 + 2", "1,2345", "1.2.3", "2 7/4", "3 4/4", "$1.234", "1/2/3", "3/4/2024", "1.5/2", "1/2.5", "$1/2", "0/? = 1/2", "factors of 0", "factors of 3/4", "simplify 2 + 3", "factors of 2 + 3", "order 1, 2 + 3", "round 347 to the nearest 25", "3 + 4 to the nearest 10"},
		TooLarge:      {"12345678", "1/2000", "0.1234567"},
		TooMany:       {"? - ? = 5", "?/? = 1/2", "? = ?", "8 + ? = ?/4", "?/2 = ?/4", "8 + ? = n", "? + 3 = ?"},
		NotYet:        {"3 ≤ 4", "3 ≥ 4", "3 ≠ 4", "2³", "H₂", "3:15", "3/4 = 6/8 = 9/12", "8 + ? > 11", "?/4 < 1/2", "7 ? 8 = 56", "1/2 + ?/4 = 3/4", "?/4 + 1/2 = 3/4", "2 + 3 = ?/4", "order 1/2, 3/4 from greatest to least", "order from greatest to least 1/2, 3/4"},
		ZeroParts:     {"3/0", "0/0", "1 3/0", "?/0 = 1/2"},
		Negative:      {"-5", "3 + -5", "3 - -5", "(-5)", "−5 + 3"},
	} {
		for _, text := range texts {
			_, err := Read(text)
			e, ok := err.(*Error)
			if !ok {
				t.Errorf("Read(%q) gives no error", text)
				continue
			}
			soundError(t, text, err)
			if e.Code != code {
				t.Errorf("Read(%q): code %s (%s), want %s", text, e.Code, e.Message, code)
			}
			if e.Error() != e.Message {
				t.Errorf("Read(%q): the error is %q, its message %q", text, e.Error(), e.Message)
			}
			if readable := code == ZeroParts || code == Negative; e.Readable() != readable {
				t.Errorf("Read(%q): readable %v, want %v", text, e.Readable(), readable)
			}
		}
	}
}

func TestProblemsWithoutAnAnswerReadWell(t *testing.T) {
	for text, want := range map[string]error{
		"7 ÷ 0":                           arithmetic.ErrDivideByZero,
		"5 - 8":                           arithmetic.ErrNegative,
		"3/4 ÷ 0":                         arithmetic.ErrDivideByZero,
		"(2 - 3) + 5 = 4":                 arithmetic.ErrNegative,
		"0.000001 x 0.0001":               nil,
		"9999999.999999 x 9999999.999999": arithmetic.ErrOverflow,
	} {
		r, err := Read(text)
		if err != nil {
			t.Errorf("Read(%q): %v", text, err)
			continue
		}
		if got := arithmetic.Check(r.Problem); got != want {
			t.Errorf("Check(%q) = %v, want %v", text, got, want)
		}
	}
}
