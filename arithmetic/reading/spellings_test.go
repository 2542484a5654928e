package reading

import (
	"reflect"
	"slices"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

func n(v int64) arithmetic.Number { return arithmetic.Int(v) }

func fr(num, den int64) arithmetic.Number { return arithmetic.Frac(fraction.Must(num, den)) }

func mx(num, den int64) arithmetic.Number {
	return arithmetic.Number{Value: fraction.Must(num, den), Form: arithmetic.Mixed}
}

func money(cents int64) arithmetic.Number {
	return arithmetic.Number{Value: fraction.Must(cents, 100), Form: arithmetic.Money, Places: 2}
}

func op(left arithmetic.Expr, o arithmetic.Op, right arithmetic.Expr) arithmetic.Operation {
	return arithmetic.Operation{Op: o, Left: left, Right: right}
}

func one(kind arithmetic.Kind, left arithmetic.Expr) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: left}
}

func related(kind arithmetic.Kind, left arithmetic.Expr, rel arithmetic.Relation, right arithmetic.Expr) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: left, Rel: rel, Right: right}
}

func grouped(a, b arithmetic.Number) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Division, Left: op(a, arithmetic.Divide, b), Grouping: true}
}

var blankX = arithmetic.Unknown{}

// spellings are texts that are the same problem. The first of each is how a book
// prints it, and what String writes.
var spellings = []struct {
	problem arithmetic.Problem
	texts   []string
}{
	{one(arithmetic.Show, n(347)), []string{"347", "show 347", "347.", "347 = ?", "? = 347", "(347)", "0347", "３４７", "𝟑𝟒𝟕",
		"three hundred forty-seven", "what is 347?", "\u200b347\ufeff"}},
	{one(arithmetic.Show, n(1204)), []string{"1,204", "1204", "1\u2009204", "1\u202f204", "1，204", "one thousand two hundred four"}},
	{one(arithmetic.Show, fr(3, 4)), []string{"3/4", "¾", "3⁄4", "3∕4", "3 / 4", "³⁄₄", "³/₄", "³/4", "3 fourths", "three fourths",
		"three-fourths", "three quarters", "Three Quarters.", "0 3/4"}},
	{one(arithmetic.Show, fr(1, 8)), []string{"1/8", "⅛", "⅟8", "an eighth", "one eighth"}},
	{one(arithmetic.Show, mx(3, 2)), []string{"1 1/2", "1½", "1 ½", "1\u00a01/2", "1¹⁄₂", "1 1 / 2", "1 and 1/2", "one and a half", "1 and a half"}},
	{one(arithmetic.Show, mx(11, 4)), []string{"2 3/4", "2¾", "2 and 3 fourths", "two and three quarters"}},
	{one(arithmetic.Addition, op(n(345), arithmetic.Add, n(278))), []string{"345 + 278", "345+278", "345 +278", "345 + 278 =",
		"345 + 278 = ?", "345 + 278 = __", "345 + 278 = □", "345 + 278 = ...", "345 + 278 = …", "? = 345 + 278", "(345 + 278)",
		"345 plus 278", "345 ＋ 278", "345 ➕ 278", "add 345 and 278", "add 278 to 345", "the sum of 345 and 278",
		"278 more than 345", "what is 345 + 278?", "345 + 278?", "345 + 278 = ?.", "  345\t+\n278  ", "“345 + 278”", "345\u00a0+\u2007278"}},
	{one(arithmetic.Subtraction, op(n(402), arithmetic.Subtract, n(178))), []string{"402 − 178", "402 - 178", "402-178", "402–178",
		"402—178", "402‐178", "402‑178", "402‒178", "402﹣178", "402－178", "402 ➖ 178", "402 minus 178", "402 take away 178",
		"take 178 from 402", "take away 178 from 402", "subtract 178 from 402", "178 less than 402",
		"the difference between 402 and 178", "what is the difference between 178 and 402?", "Work out 402 − 178."}},
	{one(arithmetic.Product, op(n(7), arithmetic.Multiply, n(8))), []string{"7 × 8", "7x8", "7 x 8", "7 X 8", "7*8", "7 · 8", "7∙8",
		"7⋅8", "7•8", "7✕8", "7✖8", "7✖\ufe0f8", "7⨯8", "7 х 8", "7 ＊ 8", "7 times 8", "7 multiplied by 8", "multiply 7 by 8",
		"7 groups of 8", "7 rows of 8", "7 by 8", "the product of 7 and 8", "seven times eight", "7 × 8 = ?"}},
	{one(arithmetic.Product, op(n(2), arithmetic.Multiply, n(6))), []string{"2 × 6", "double 6", "twice 6"}},
	{one(arithmetic.Division, op(n(56), arithmetic.Divide, n(8))), []string{"56 ÷ 8", "56÷8", "56 : 8", "56:8", "56∶8", "56 / 8", "56 ➗ 8",
		"56 divided by 8", "divide 56 by 8", "56 shared by 8", "56 shared among 8", "56 shared equally among 8", "share 56 among 8",
		"share 56 equally between 8"}},
	{grouped(n(12), n(3)), []string{"12 in groups of 3", "12 into groups of 3", "put 12 in groups of 3", "12 divided into groups of 3",
		"12 in rows of 3", "divide 12 into groups of 3", "split 12 into groups of 3"}},
	{grouped(n(4), fr(1, 3)), []string{"4 in groups of 1/3", "4 ÷ 1/3", "4 ÷ (1/3)", "4 divided by 1/3", "4 divided by a third"}},
	{one(arithmetic.PartOf, op(fr(1, 2), arithmetic.Of, n(12))), []string{"1/2 of 12", "½ of 12", "½ of 12 = ?", "half of 12", "half 12", "halve 12",
		"one half of 12", "a half of twelve", "What is half of 12?"}},
	{one(arithmetic.PartOf, op(fr(1, 3), arithmetic.Of, n(12))), []string{"1/3 of 12", "⅓ of 12", "a third of 12", "one third of 12"}},
	{one(arithmetic.Addition, op(mx(3, 2), arithmetic.Add, fr(3, 4))), []string{"1 1/2 + 3/4", "1½+¾", "1 1/2 plus three fourths"}},
	{one(arithmetic.Addition, op(arithmetic.InPlaces(3, 1), arithmetic.Add, arithmetic.InPlaces(45, 2))),
		[]string{"0.3 + 0.45", ".3 + .45", "0.3+0.45"}},
	{one(arithmetic.Subtraction, op(money(500), arithmetic.Subtract, money(327))),
		[]string{"$5.00 − $3.27", "$5.00 - $3.27", "$ 5.00 - $ 3.27", "＄5.00－＄3.27", "$5.0 - $3.27", "500¢ - 327¢"}},
	{one(arithmetic.Expression, op(n(2), arithmetic.Multiply, op(n(8), arithmetic.Add, n(7)))),
		[]string{"2 × (8 + 7)", "2*(8+7)", "2 x [8 + 7]", "2 × {8 + 7}", "2 × （8 ＋ 7）", "2 × ((8 + 7))"}},
	{one(arithmetic.Expression, op(n(2), arithmetic.Add, op(n(1), arithmetic.Multiply, n(3)))), []string{"2 + 1 × 3", "2 + (1 x 3)"}},
	{one(arithmetic.Expression, op(op(n(9), arithmetic.Subtract, n(4)), arithmetic.Subtract, n(3))), []string{"9 − 4 − 3", "(9 - 4) - 3"}},
	{one(arithmetic.Expression, op(n(9), arithmetic.Subtract, op(n(4), arithmetic.Subtract, n(3)))), []string{"9 − (4 − 3)"}},
	{one(arithmetic.Expression, op(fr(1, 2), arithmetic.Of, op(fr(1, 3), arithmetic.Of, n(12)))),
		[]string{"1/2 of 1/3 of 12", "half of a third of 12", "1/2 of (1/3 of 12)"}},
	{related(arithmetic.Missing, op(n(8), arithmetic.Multiply, blankX), arithmetic.Equal, n(48)), []string{"8 × ? = 48", "8x?=48",
		"8 × _ = 48", "8 × ___ = 48", "8 × □ = 48", "8 × ▢ = 48", "8 × ☐ = 48", "8 × ○ = 48", "8 × ( ) = 48", "8 × [] = 48", "8 × (?) = 48",
		"8 × n = 48", "8 x x = 48", "8 × ... = 48", "8 × … = 48", "8 × ? = 48?", "8 × ？ ＝ 48", "8 times ? equals 48", "8 × ? is 48"}},
	{related(arithmetic.Missing, op(n(8), arithmetic.Add, blankX), arithmetic.Equal, n(11)), []string{"8 + ? = 11", "8+_=11"}},
	{related(arithmetic.Missing, n(5), arithmetic.Equal, op(blankX, arithmetic.Subtract, n(3))), []string{"5 = ? − 3", "5 = ? - 3", "5=x-3"}},
	{related(arithmetic.Missing, n(5), arithmetic.Equal, op(blankX, arithmetic.Divide, n(3))), []string{"5 = ? ÷ 3", "5 = ? / 3", "5 = ? : 3"}},
	{related(arithmetic.Claim, fr(3, 4), arithmetic.Equal, fr(6, 8)), []string{"3/4 = 6/8", "3/4=6/8", "¾ = 6/8", "3 / 4 = 6 / 8",
		"is 3/4 equal to 6/8?", "is 3/4 the same as 6/8", "are 3/4 and 6/8 equal?", "is 3/4 = 6/8?", "3/4 equals 6/8",
		"3/4 is the same as 6/8", "true or false: 3/4 = 6/8", "does 3/4 equal 6/8?", "three fourths equals six eighths"}},
	{related(arithmetic.Claim, fr(3, 4), arithmetic.Less, fr(5, 6)), []string{"3/4 < 5/6", "3/4<5/6", "3/4 ＜ 5/6", "3/4 ‹ 5/6",
		"3/4 is less than 5/6", "is 3/4 less than 5/6?", "is 3/4 smaller than 5/6"}},
	{related(arithmetic.Claim, fr(5, 8), arithmetic.Greater, fr(2, 3)), []string{"5/8 > 2/3", "5/8 is more than 2/3", "is 5/8 more than 2/3?",
		"5/8 is greater than 2/3", "5/8 greater than 2/3", "5/8 is bigger than 2/3"}},
	{related(arithmetic.Claim, op(n(4), arithmetic.Add, n(1)), arithmetic.Equal, op(n(5), arithmetic.Add, n(2))),
		[]string{"4 + 1 = 5 + 2", "4+1=5+2", "4 plus 1 equals 5 plus 2"}},
	{related(arithmetic.Comparison, fr(3, 4), arithmetic.NoRelation, fr(5, 8)), []string{"compare 3/4 and 5/8", "compare 3/4 with 5/8",
		"compare 3/4, 5/8", "compare: 3/4 and 5/8", "which is more, 3/4 or 5/8", "Which is greater: 3/4 or 5/8?", "which is smaller 3/4 or 5/8",
		"which is the larger, 3/4 or 5/8?", "3/4 vs 5/8", "3/4 vs. 5/8", "3/4 or 5/8?", "3/4 ? 5/8", "3/4 _ 5/8", "3/4 ○ 5/8", "3/4 ( ) 5/8"}},
	{related(arithmetic.Comparison, n(2), arithmetic.NoRelation, fr(3, 4)), []string{"compare 2 and 3/4", "2 vs 3/4"}},
	{arithmetic.Problem{Kind: arithmetic.Ordering, List: []arithmetic.Number{fr(1, 2), fr(3, 4), fr(2, 3)}}, []string{"order 1/2; 3/4; 2/3",
		"order 1/2, 3/4, 2/3", "order 1/2, 3/4 and 2/3", "put 1/2, 3/4 and 2/3 in order", "sort 1/2, 3/4, 2/3",
		"order 1/2, 3/4, 2/3 from least to greatest", "order from least to greatest: 1/2, 3/4, 2/3", "compare 1/2, 3/4 and 2/3",
		"which is the greatest, 1/2, 3/4 or 2/3?", "arrange 1/2, 3/4, 2/3 in order."}},
	{arithmetic.Problem{Kind: arithmetic.Ordering, List: []arithmetic.Number{n(1), n(2), n(3)}}, []string{"order 1; 2; 3", "order 1,2,3", "order 1, 2, 3"}},
	{arithmetic.Problem{Kind: arithmetic.Ordering, List: []arithmetic.Number{n(1204), n(1024)}}, []string{"order 1,204; 1,024", "order 1,204, 1,024"}},
	{arithmetic.Problem{Kind: arithmetic.Rounding, Left: n(347), To: 10}, []string{"round 347 to the nearest 10", "round 347 to the nearest ten",
		"347 to the nearest 10", "347 rounded to the nearest ten", "Round 347 to nearest ten.", "round off 347 to the nearest ten"}},
	{arithmetic.Problem{Kind: arithmetic.Rounding, Left: n(2871), To: 1000}, []string{"round 2,871 to the nearest 1,000",
		"round 2871 to the nearest thousand", "2871 to the nearest 1000"}},
	{one(arithmetic.Factors, n(24)), []string{"factors of 24", "factor pairs of 24", "find all the factors of 24", "list the factors of 24",
		"What are the factors of 24?", "all factor pairs of 24"}},
	{one(arithmetic.MixedForm, fr(7, 4)), []string{"7/4 as a mixed number", "write 7/4 as a mixed number", "change 7/4 to a mixed number",
		"turn 7/4 into a mixed number", "7 fourths as a mixed number"}},
	{one(arithmetic.FractionForm, mx(9, 4)), []string{"2 1/4 as a fraction", "2¼ as a fraction", "write 2 1/4 as an improper fraction", "2 1/4 as one fraction"}},
	{one(arithmetic.SimplestForm, fr(6, 8)), []string{"6/8 in simplest form", "6/8 in its simplest form", "simplify 6/8", "6/8 in lowest terms", "simplify 6/8 in lowest terms",
		"the simplest form of 6/8", "write 6/8 in simplest form", "reduce 6/8", "simplify 6/8 to lowest terms"}},
	{arithmetic.Problem{Kind: arithmetic.Renaming, Left: fr(1, 2), Blank: arithmetic.Blank{Den: 8}}, []string{"1/2 = ?/8", "1/2 = _/8", "½ = □/8", "1 / 2 = ? / 8"}},
	{arithmetic.Problem{Kind: arithmetic.Renaming, Left: fr(2, 5), Blank: arithmetic.Blank{Num: 6}}, []string{"2/5 = 6/?", "2/5 = 6/?.", "2/5=6/__"}},
	{arithmetic.Problem{Kind: arithmetic.Renaming, Left: fr(1, 2), Blank: arithmetic.Blank{Den: 8, First: true}}, []string{"?/8 = 1/2", "□/8=½"}},
}

func TestAllSpellingsOfAProblemAreThatProblem(t *testing.T) {
	for _, s := range slices.Concat(spellings, askedSpellings, partSpellings) {
		if got := s.problem.String(); got != s.texts[0] {
			t.Errorf("the problem of %q writes itself %q", s.texts[0], got)
		}
		for _, text := range s.texts {
			r, err := Read(text)
			if err != nil {
				t.Errorf("Read(%q): %v", text, err)
				continue
			}
			if !reflect.DeepEqual(r.Problem, s.problem) {
				t.Errorf("Read(%q) = %s %q, want %s %q", text, r.Problem.Kind, r.Problem, s.problem.Kind, s.problem)
			}
			if r.Text != text {
				t.Errorf("Read(%q) gives the text back as %q", text, r.Text)
			}
		}
	}
}

func TestWhatReadsTwoWaysNamesTheOther(t *testing.T) {
	for _, c := range []struct {
		text string
		also []string
	}{
		{"56 ÷ 8", []string{"56 in groups of 8"}},
		{"? = 56 ÷ 8", []string{"56 in groups of 8"}},
		{"56 / 8", []string{"56 in groups of 8", "56/8"}},
		{"24/6", []string{"24 ÷ 6"}},
		{"5 = ?/3", []string{"5 = ? ÷ 3"}},
		{"12/? = 4", []string{"12 ÷ ? = 4"}},
		{"56 shared by 8", nil},
		{"12 in groups of 3", nil},
		{"3/4", nil},
		{"3 ÷ 4", []string{"3 ÷ 4 with remainder"}},
		{"7 ÷ 0", nil},
		{"7 x 8", nil},
		{"1/2 = ?/8", nil},
		{"value of the 3 in 3,353", []string{"value of the hundreds digit in 3,353", "value of the ones digit in 3,353"}},
		{"3, 6, ?", []string{"start at 3, × 2, 3 terms"}},
		{"3, 6, 9, ?", nil},
		{"fact family of 3 and 5", []string{"fact family of 3 × 5"}},
		{"fact family 2 2 4", []string{"fact family of 2 × 2"}},
		{"98 ÷ 4 as a decimal", []string{"98 in groups of 4 as a decimal"}},
	} {
		r, err := Read(c.text)
		if err != nil {
			t.Errorf("Read(%q): %v", c.text, err)
			continue
		}
		var also []string
		for _, p := range r.Also {
			also = append(also, p.String())
			back, err := Read(p.String())
			if err != nil || !reflect.DeepEqual(back.Problem, p) {
				t.Errorf("%q also reads as %q, which reads as %q, %v", c.text, p, back.Problem, err)
			}
		}
		if !reflect.DeepEqual(also, c.also) {
			t.Errorf("Read(%q) also reads as %q, want %q", c.text, also, c.also)
		}
	}
}

func TestSpansAreTheWordsOfTheNumbers(t *testing.T) {
	for _, c := range []struct {
		text  string
		words []string
	}{
		{"402 - 178", []string{"402", "178"}},
		{"  1½ + ¾", []string{"1½", "¾"}},
		{"half of 12", []string{"half", "12"}},
		{"take 178 from 402", []string{"402", "178"}},
		{"$ 5.00 - 327¢", []string{"$ 5.00", "327¢"}},
		{"8 × ? = 48", []string{"8", "48"}},
		{"1/2 = ?/8", []string{"1/2", "?/8"}},
		{"?/8 = 1/2", []string{"1/2", "?/8"}},
		{"round 1,347 to the nearest ten thousand", []string{"1,347", "ten thousand"}},
		{"order 1/2, three fourths and ⅔", []string{"1/2", "three fourths", "⅔"}},
		{"2 × (8 + 7) = 30", []string{"2", "8", "7", "30"}},
		{"double forty-two", []string{"double", "forty-two"}},
		{"３４５＋２７８", []string{"３４５", "２７８"}},
		{"value of the 4 in 3,456", []string{"3,456", "4"}},
		{"ten thousands digit of 45,678", []string{"45,678", "ten thousands"}},
		{"count from 10 to 50 by fives", []string{"fives", "10", "50"}},
		{"start at 3, times 2, 5 terms", []string{"3", "2"}},
		{"add 4 to 1, 2 and 3", []string{"4", "1", "2", "3"}},
		{"3 hundreds 4 tens + 2", []string{"3 hundreds 4 tens", "2"}},
		{"how many fewer is 9 than 12", []string{"12", "9"}},
	} {
		r, err := Read(c.text)
		if err != nil {
			t.Errorf("Read(%q): %v", c.text, err)
			continue
		}
		var words []string
		for i, s := range r.Spans {
			if s.Number != i {
				t.Errorf("Read(%q): span %d is of number %d", c.text, i, s.Number)
			}
			words = append(words, string([]rune(c.text)[s.Start:s.End]))
		}
		if !reflect.DeepEqual(words, c.words) {
			t.Errorf("Read(%q) has its numbers in %q, want %q", c.text, words, c.words)
		}
	}
}

func TestAPlusLostInAURLIsPutBack(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"345 278", "345 + 278"},
		{"345   278", "345 + 278"},
		{"1 1/2", "1 1/2"},
		{"1 1/2 3/4", "1 1/2 + 3/4"},
		{"1/2 1/4", "1/2 + 1/4"},
		{"2 7/4", "2 7/4"},
		{"order 1/2 1/3 1/4", "order 1/2 1/3 1/4"},
		{"1 2 3", "1 + 2 + 3"},
		{"4 1=5 2", "4 + 1=5 + 2"},
		{"8 ?=11", "8 + ?=11"},
		{"? 3=11", "? + 3=11"},
		{"2 × (8 7)", "2 × (8 + 7)"},
		{"(2 3) 4", "(2 + 3) + 4"},
		{"$5.00 $3.27", "$5.00 + $3.27"},
		{"0.3 0.45", "0.3 + 0.45"},
		{"3/4 ? 5/8", "3/4 ? 5/8"},
		{"345 + 278", "345 + 278"},
		{"345 - 278", "345 - 278"},
		{"round 347 to the nearest 10", "round 347 to the nearest 10"},
		{"order 1/2, 3/4", "order 1/2, 3/4"},
		{"", ""},
		{"3/0 4", "3/0 4"},
		{"\x00 3 4", "\x00 3 4"},
	} {
		if got := RestorePlus(c.text); got != c.want {
			t.Errorf("RestorePlus(%q) = %q, want %q", c.text, got, c.want)
		}
	}
}
