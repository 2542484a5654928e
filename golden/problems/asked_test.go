package problems

import (
	"slices"
	"testing"

	"modeler/arithmetic"
)

// The answers are those of the sources named beside them.
func TestWorkAgreesWithTheSourcesAboutNumbers(t *testing.T) {
	n := arithmetic.Int
	run := func(from, by int64, op arithmetic.Op, terms int) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Counting, Run: arithmetic.Run{From: from, By: by, Op: op, Terms: terms}}
	}
	for _, c := range []struct {
		source  string
		problem arithmetic.Problem
		want    []int64
	}{
		{"4.OA.C.5: add 3, start at 1", run(1, 3, arithmetic.Add, 6), []int64{1, 4, 7, 10, 13, 16}},
		{"2.NBT.A.2: count by 5s", run(0, 5, arithmetic.Add, 4), []int64{0, 5, 10, 15}},
		{"from memory: 100 less", run(450, 100, arithmetic.Subtract, 5), []int64{450, 350, 250, 150, 50}},
		{"from memory: doubling", run(3, 2, arithmetic.Multiply, 5), []int64{3, 6, 12, 24, 48}},
		{"6.NS.B.4, the greatest common factor of 36 and 8", arithmetic.Problem{Kind: arithmetic.CommonFactors, Left: n(36), Right: n(8)}, []int64{1, 2, 4}},
		{"from memory: 4 and 6", arithmetic.Problem{Kind: arithmetic.CommonMultiples, Left: n(4), Right: n(6)}, []int64{12, 24, 36}},
		{"from memory: the table of 7", arithmetic.Problem{Kind: arithmetic.Multiples, Left: n(7), Run: arithmetic.Run{Terms: 3}}, []int64{7, 14, 21}},
		{"from memory: 3,070", arithmetic.Problem{Kind: arithmetic.ExpandedForm, Left: n(3070)}, []int64{3000, 70}},
		{"from memory: 20 ÷ 4, 8 ÷ 4", arithmetic.Problem{Kind: arithmetic.RuleTable, List: []arithmetic.Number{n(20), n(8)}, Run: arithmetic.Run{Op: arithmetic.Divide, By: 4}}, []int64{5, 2}},
	} {
		got, err := Work(c.problem)
		if err != nil || !slices.Equal(got.List, c.want) {
			t.Errorf("%s: %s is %v (%v), want %v", c.source, c.problem, got.List, err, c.want)
		}
	}
}

// The names are those of common practice in the United States (no source).
func TestName(t *testing.T) {
	for n, want := range map[int64]string{
		0: "zero", 13: "thirteen", 40: "forty", 85: "eighty-five", 100: "one hundred", 307: "three hundred seven",
		2_014: "two thousand fourteen", 65_000: "sixty-five thousand", 1_000_001: "one million one",
		9_876_543: "nine million eight hundred seventy-six thousand five hundred forty-three",
	} {
		if got := name(n); got != want {
			t.Errorf("%d is %q, want %q", n, got, want)
		}
	}
}

func TestWorkTellsWhatIsAsked(t *testing.T) {
	n := arithmetic.Int
	work := func(p arithmetic.Problem) Truth {
		got, err := Work(p)
		if err != nil {
			t.Errorf("%s: %v", p, err)
		}
		return got
	}
	if got := work(arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: n(706), To: 100}); got.Value.RatString() != "700" {
		t.Errorf("2.NBT.A.1: the 7 in 706 is worth %v", got.Value)
	}
	for _, prime := range []int64{2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97} {
		if !work(arithmetic.Problem{Kind: arithmetic.Primality, Left: n(prime)}).True {
			t.Errorf("4.OA.B.4: %d is not prime", prime)
		}
	}
	for _, other := range []int64{1, 4, 51, 57, 91} {
		if work(arithmetic.Problem{Kind: arithmetic.Primality, Left: n(other)}).True {
			t.Errorf("4.OA.B.4: %d is prime", other)
		}
	}
	if !work(arithmetic.Problem{Kind: arithmetic.Parity, Left: n(14)}).Even || work(arithmetic.Problem{Kind: arithmetic.Parity, Left: n(7)}).Even {
		t.Error("2.OA.C.3: 14 is odd, or 7 is even")
	}
	family := work(one(arithmetic.FactFamily, arithmetic.Add, n(8), n(3)))
	if want := []string{"8 + 3 = 11", "3 + 8 = 11", "11 − 3 = 8", "11 − 8 = 3"}; !slices.Equal(family.Facts, want) {
		t.Errorf("1.OA.B.3: %v, want %v", family.Facts, want)
	}
	pairs := work(arithmetic.Problem{Kind: arithmetic.WaysToMake, Left: n(5)}).Pairs
	if want := [][2]int64{{0, 5}, {1, 4}, {2, 3}}; !slices.Equal(pairs, want) {
		t.Errorf("K.OA.A.3: %v, want %v", pairs, want)
	}
	up := one(arithmetic.Division, arithmetic.Divide, n(98), n(4))
	if up.Rest = arithmetic.OneMore; work(up).Value.RatString() != "25" {
		t.Error("National curriculum in England (2013), year 5: 98 ÷ 4 is not rounded up to 25")
	}
	about := one(arithmetic.Estimate, arithmetic.Add, n(398), n(17))
	if about.To = 10; work(about).Value.RatString() != "420" {
		t.Error("from memory: 398 + 17 is not about 420")
	}
}
