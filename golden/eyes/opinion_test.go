package eyes

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/golden/laws"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/words"
)

// question is a problem as the script gets it: its numbers as they are typed.
type question struct {
	Kind  string         `json:"kind"`
	Left  any            `json:"left"`
	Right any            `json:"right"`
	List  []string       `json:"list"`
	To    string         `json:"to"` // what is rounded to, such as 100 or 0.01
	Blank map[string]any `json:"blank"`
	Run   map[string]any `json:"run"`
	Up    bool           `json:"up"` // a quotient is rounded up
}

// opinion is what a library says of a problem. Fields that do not apply are empty.
type opinion struct {
	Value, Quotient, Remainder, Blank, Mixed, Word string
	Order                                          int
	Sorted, Pairs, Row                             []string
}

func ask(p arithmetic.Problem) question {
	q := question{Kind: string(p.Kind), Left: typed(p.Left), Right: typed(p.Right), To: unit(p),
		Blank: map[string]any{"num": p.Blank.Num, "den": p.Blank.Den}, Up: p.Rest == arithmetic.OneMore,
		Run: map[string]any{"from": counted(p.Run.From, p.Run), "by": counted(p.Run.By, p.Run), "op": p.Run.Op.String(), "terms": p.Run.Terms}}
	for _, n := range p.List {
		q.List = append(q.List, n.String())
	}
	return q
}

// counted is a number of a run, which may be counted in parts of one; what is
// multiplied by is no part.
func counted(n int64, r arithmetic.Run) string {
	if r.Parts > 1 {
		return fmt.Sprintf("%d/%d", n, r.Parts)
	}
	return strconv.FormatInt(n, 10)
}

// unit is what a number is rounded to.
func unit(p arithmetic.Problem) string {
	if p.Places > 0 {
		return "0." + strings.Repeat("0", p.Places-1) + "1"
	}
	return strconv.FormatInt(p.To, 10)
}

func typed(e arithmetic.Expr) any {
	switch e := e.(type) {
	case arithmetic.Number:
		return e.String()
	case arithmetic.Operation:
		return map[string]any{"op": e.Op.String(), "left": typed(e.Left), "right": typed(e.Right)}
	}
	return nil
}

// taught is how many lessons are compared.
const taught = 6000

// withoutLibrary are the kinds whose answers are lists of names, addends or coins, or
// one of the two numbers asked about, which no library of numbers gives; math/big
// alone judges them.
var withoutLibrary = []arithmetic.Kind{arithmetic.Coins, arithmetic.CoinsWorth, arithmetic.EqualNames, arithmetic.AsSum, arithmetic.Closer}

// TestTwoLibrariesAgree types random problems, has them taught, and compares the
// answers with those of two libraries, which work the problems as they were
// dealt and not as they were read; and with those of math/big.
func TestTwoLibrariesAgree(t *testing.T) {
	t.Parallel()
	d := problems.Deal(21)
	type lesson struct {
		arithmetic.Problem
		answer string
	}
	var lessons []lesson
	tally, none := map[string]int{}, 0
	var opinions []struct{ Fraction, Decimal opinion }
	runNode(t, "opine.mjs", func(send func(any)) {
		for len(lessons) < taught && none < taught {
			p := d.Next()
			priced := false
			if d.IntN(2) == 0 {
				p, priced = price(p)
			}
			l, err := models.Teach(p.String(), "")
			if err != nil {
				none++ // package golden knows why
				continue
			}
			if err := laws.TrueAnswer(&laws.Lesson{Model: l.Model, Problem: p, Truth: truth(t, p), Telling: l.Telling}); err != nil {
				t.Errorf("%s: math/big: %v", p, err)
			}
			if slices.Contains(withoutLibrary, p.Kind) {
				tally[string(p.Kind)]++
				continue
			}
			lessons = append(lessons, lesson{p, words.Answer(l.Problem, l.Answer)})
			tally[string(p.Kind)]++
			if priced {
				tally["of these, money"]++
			}
			if strings.Contains(lessons[len(lessons)-1].answer, "remainder") {
				tally["of these, with a remainder"]++
			}
			send(ask(p))
		}
	}, &opinions)
	if len(lessons) < taught || len(opinions) != len(lessons) {
		t.Fatalf("%d opinions of %d lessons", len(opinions), len(lessons))
	}
	for i, l := range lessons {
		for name, o := range map[string]opinion{"fraction.js": opinions[i].Fraction, "decimal.js": opinions[i].Decimal} {
			if err := agrees(l.Problem, l.answer, o); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
	for _, kind := range problems.Kinds {
		told := slices.ContainsFunc(models.All, func(m *models.Model) bool { return slices.Contains(m.Kinds, kind) })
		if tally[string(kind)] == 0 && told {
			t.Errorf("no lesson of the kind %q was compared", kind)
		}
	}
	t.Logf("%d lessons: %v; %d problems have none", len(lessons), tally, none)
}

func truth(t *testing.T, p arithmetic.Problem) problems.Truth {
	t.Helper()
	truth, err := problems.Work(p)
	if err != nil {
		t.Fatalf("%s: %v", p, err)
	}
	return truth
}

// price makes dollars of the decimals with two places in a problem; ok says
// whether there were any.
func price(p arithmetic.Problem) (_ arithmetic.Problem, ok bool) {
	var dollars func(e arithmetic.Expr) arithmetic.Expr
	dollars = func(e arithmetic.Expr) arithmetic.Expr {
		switch e := e.(type) {
		case arithmetic.Number:
			if e.Form == arithmetic.Decimal && e.Places == 2 {
				e.Form, ok = arithmetic.Money, true
			}
			return e
		case arithmetic.Operation:
			e.Left, e.Right = dollars(e.Left), dollars(e.Right)
			return e
		}
		return e
	}
	p.Left, p.Right = dollars(p.Left), dollars(p.Right)
	return p, ok
}

// TestAWrongAnswerIsSeen asks the libraries about problems and then holds wrong
// answers against what they say.
func TestAWrongAnswerIsSeen(t *testing.T) {
	cases := []struct {
		typed string
		right string
		wrong []string
	}{
		{"402 - 178", "224", []string{"225", "223.9999999999999999999", "$22.4", "?", ""}},
		{"1/3 + 1/6", "3/6 = 1/2", []string{"3/6 = 1/3", "2/9", "0.5000000000000001"}},
		{"17 ÷ 5", "3 remainder 2", []string{"3 remainder 3", "2 remainder 7", "3"}},
		{"compare 3/4 and 5/8", "3/4 > 5/8", []string{"3/4 < 5/8", "3/4 = 5/8"}},
		{"3/4 = 6/8", "true", []string{"false", ""}},
		{"order 1/2; 1/3; 2/4", "1/3 < 1/2 = 2/4", []string{"1/2 = 2/4 < 1/3", "1/3 < 1/2 < 2/4", "1/3 < 1/2", "1/3 = 1/2 = 2/4"}},
		{"factors of 12", "1 × 12, 2 × 6, 3 × 4", []string{"1 × 12, 2 × 6", "1 × 12, 2 × 6, 3 × 5"}},
		{"round 347 to the nearest 10", "350", []string{"340", "300"}},
		{"1/2 = ?/8", "4/8", []string{"5/8", "4/7", "1/2"}},
		{"8 × ? = 48", "6", []string{"7", "384"}},
		{"7/4 as a mixed number", "1 3/4", []string{"7/4", "1 2/4", "1 6/8"}},
		{"6/8 in simplest form", "3/4", []string{"6/8", "2/3"}},
		{"$5.00 - $3.27", "$1.73", []string{"$1.74", "$173"}},
		{"0.3 + 0.45", "0.75", []string{"0.48", "7.5"}},
		{"2 × (8 + 7)", "30", []string{"23"}},
		{"1/3 of 12", "4", []string{"36", "3"}},
		{"98 ÷ 4 as a mixed number", "24 2/4 = 24 1/2", []string{"24 1/4", "24", "24 remainder 2"}},
		{"98 ÷ 4 rounded up", "25", []string{"24", "24 1/2"}},
		{"value of the hundreds digit in 3,456", "400", []string{"4", "40", "4,000"}},
		{"3,070 in expanded form", "3,000 + 70", []string{"3,000 + 7", "3,070", "3,000 + 0 + 70"}},
		{"is 14 even or odd", "even", []string{"odd"}},
		{"is 17 prime", "prime", []string{"composite, not prime"}},
		{"is 1 prime", "neither prime nor composite", []string{"prime", "composite, not prime"}},
		{"start at 1, add 3", "1, 4, 7, 10, 13, 16", []string{"1, 4, 7, 10, 13", "1, 4, 7, 10, 13, 17", "4, 7, 10, 13, 16, 19"}},
		{"start at 3, × 2, 4 terms", "3, 6, 12, 24", []string{"3, 6, 9, 12"}},
		{"rule × 3 for 1; 2; 5", "3, 6, 15", []string{"4, 5, 8"}},
		{"estimate 398 + 17 to the nearest 10", "about 420", []string{"about 415", "about 410"}},
		{"fact family of 8 + 3", "8 + 3 = 11, 3 + 8 = 11, 11 − 3 = 8, 11 − 8 = 3", []string{"8 + 3 = 11, 3 + 8 = 11, 11 − 3 = 8, 11 − 8 = 4", "8 + 3 = 11"}},
		{"ways to make 5", "0 + 5, 1 + 4, 2 + 3", []string{"0 + 5, 1 + 4", "0 + 5, 1 + 4, 2 + 2"}},
		{"first 3 multiples of 7", "7, 14, 21", []string{"0, 7, 14", "7, 14"}},
		{"common multiples of 4 and 6", "12, 24, 36, and so on; the least is 12", []string{"24, 48, 72, and so on; the least is 24", "12, 24, and so on; the least is 12"}},
		{"common factors of 12 and 18", "1, 2, 3, 6; the greatest is 6", []string{"1, 2, 3; the greatest is 3", "1, 2, 3, 6; the greatest is 3"}},
	}
	var list []arithmetic.Problem
	var opinions []struct{ Fraction, Decimal opinion }
	runNode(t, "opine.mjs", func(send func(any)) {
		for _, c := range cases {
			r, err := reading.Read(c.typed)
			if err != nil {
				t.Fatal(err)
			}
			list = append(list, r.Problem)
			send(ask(r.Problem))
		}
	}, &opinions)
	for i, c := range cases {
		for name, o := range map[string]opinion{"fraction.js": opinions[i].Fraction, "decimal.js": opinions[i].Decimal} {
			if err := agrees(list[i], c.right, o); err != nil {
				t.Errorf("%s: %v", name, err)
			}
			for _, wrong := range c.wrong {
				// Only fraction.js knows the names of fractions; a decimal is a value.
				if err := agrees(list[i], wrong, o); err == nil && (o.Mixed != "" || !same(wrong, c.right)) {
					t.Errorf("%s: %s: nothing is said of %q", name, c.typed, wrong)
				}
			}
		}
	}
}
