package arithmetic

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"modeler/fraction"
)

func parts(num, den int64) Number { return Frac(fraction.Must(num, den)) }

func wholesAnd(wholes, num, den int64) Number {
	return Number{Value: fraction.Must(wholes*den+num, den), Form: Mixed}
}

func sumOf(a, b Number) Problem {
	return Problem{Kind: Addition, Left: Operation{Add, a, b}}
}

func differenceOf(a, b Number) Problem {
	return Problem{Kind: Subtraction, Left: Operation{Subtract, a, b}}
}

// written lists moves by name, for tests that say in which order they come.
func written(moves []Move) string {
	var names []string
	for _, m := range moves {
		names = append(names, strings.TrimPrefix(fmt.Sprintf("%T", m), "arithmetic."))
	}
	return strings.Join(names, " ")
}

func TestSumsAndDifferencesOfFractions(t *testing.T) {
	tests := []struct {
		problem       Problem
		number, last  string
		moves, source string
	}{
		{sumOf(parts(2, 3), parts(5, 4)), "23/12", "1 11/12", "LayStrips LayStrips PutTogether CutParts CutParts CountParts MakeWholes",
			"CCSS 5.NF.A.1: 2/3 + 5/4 = 8/12 + 15/12 = 23/12"},
		{sumOf(parts(2, 5), parts(1, 2)), "9/10", "9/10", "LayStrips LayStrips PutTogether CutParts CutParts CountParts",
			"CCSS 5.NF.A.2: 2/5 + 1/2 is not 3/7"},
		{sumOf(parts(3, 10), parts(4, 100)), "34/100", "17/50", "LayStrips LayStrips PutTogether CutParts CountParts MergeParts",
			"CCSS 4.NF.C.5"},
		{sumOf(parts(5, 7), parts(1, 7)), "6/7", "6/7", "LayStrips LayStrips PutTogether CountParts",
			"National curriculum in England 2013, Year 3, fractions"},
		{sumOf(parts(2, 5), parts(4, 5)), "6/5", "1 1/5", "LayStrips LayStrips PutTogether CountParts MakeWholes",
			"National curriculum in England 2013, Year 5, fractions"},
		{sumOf(parts(3, 4), parts(3, 4)), "6/4", "1 1/2", "LayStrips LayStrips PutTogether CountParts MakeWholes MergeParts",
			"common practice, no source"},
		{sumOf(wholesAnd(1, 1, 2), parts(3, 4)), "2 1/4", "2 1/4", "LayStrips LayStrips PutTogether CutParts CountParts MakeWholes",
			"common practice, no source"},
		{sumOf(Int(2), parts(3, 4)), "2 3/4", "2 3/4", "LayStrips LayStrips PutTogether CountParts",
			"common practice, no source"},
		{differenceOf(wholesAnd(2, 1, 4), parts(3, 4)), "1 2/4", "1 1/2", "LayStrips LayStrips OpenWholes TakeStrips CountParts MergeParts",
			"common practice, no source"},
		{differenceOf(parts(3, 4), parts(1, 3)), "5/12", "5/12", "LayStrips LayStrips CutParts CutParts TakeStrips CountParts",
			"common practice, no source"},
		{differenceOf(parts(9, 4), wholesAnd(1, 3, 4)), "2/4", "1/2", "LayStrips LayStrips OpenWholes TakeStrips CountParts MergeParts",
			"common practice, no source"},
		{differenceOf(parts(3, 4), parts(3, 4)), "0/4", "0", "LayStrips LayStrips TakeStrips CountParts",
			"common practice, no source"},
	}
	for _, test := range tests {
		work := AddByCutting
		if test.problem.Kind == Subtraction {
			work = SubtractByCutting
		}
		w, err := work(test.problem)
		if err != nil {
			t.Errorf("%s: %v", test.problem, err)
			continue
		}
		if got := w.Answer.Number.String(); got != test.number {
			t.Errorf("%s is %s, want %s (%s)", test.problem, got, test.number, test.source)
		}
		if got := w.Answer.Simplest.String(); got != test.last {
			t.Errorf("%s is last named %s, want %s", test.problem, got, test.last)
		}
		if got := written(w.Moves); got != test.moves {
			t.Errorf("%s is worked by\n%s, want\n%s", test.problem, got, test.moves)
		}
	}
}

func TestClaimsAndComparisons(t *testing.T) {
	claim := func(a Number, rel Relation, b Number) Problem {
		return Problem{Kind: Claim, Left: a, Rel: rel, Right: b}
	}
	compare := func(a, b Number) Problem { return Problem{Kind: Comparison, Left: a, Right: b} }
	tests := []struct {
		problem  Problem
		relation Relation
		gap      string
		cuts     int
		instead  string
		source   string
	}{
		{claim(parts(2, 3), Equal, parts(8, 12)), Equal, "0/12", 1, "", "CCSS 4.NF.A.1: 2/3 = (4 × 2)/(4 × 3)"},
		{claim(parts(4, 6), Equal, parts(2, 3)), Equal, "0/6", 1, "", "CCSS 3.NF.A.3b"},
		{claim(parts(4, 4), Equal, Int(1)), Equal, "0/4", 0, "", "CCSS 3.NF.A.3c"},
		{claim(parts(3, 3), Equal, parts(4, 4)), Equal, "0/12", 0, "", "CCSS 3.NF.A.3c; numbers ours"},
		{claim(parts(3, 4), Equal, parts(6, 8)), Equal, "0/8", 1, "", "National curriculum in England 2013: equal fractions; numbers ours"},
		{claim(parts(3, 4), Equal, parts(5, 8)), Greater, "1/8", 1, "3/4 = 6/8", "common practice, no source"},
		{claim(parts(5, 8), Equal, parts(3, 4)), Less, "1/8", 1, "6/8 = 3/4", "common practice, no source"},
		{claim(parts(5, 8), Equal, parts(2, 3)), Less, "1/24", 2, "5/8 < 2/3", "common practice, no source"},
		{claim(parts(5, 8), Greater, parts(2, 3)), Less, "1/24", 2, "5/8 < 2/3", "common practice, no source"},
		{claim(wholesAnd(1, 1, 2), Equal, wholesAnd(1, 5, 8)), Less, "1/8", 1, "1 1/2 = 1 4/8", "common practice, no source"},
		{compare(parts(2, 5), parts(2, 7)), Greater, "4/35", 0, "", "Progressions 3-5 NF, Grade 3, from memory"},
		{compare(parts(5, 8), parts(3, 8)), Greater, "2/8", 0, "", "CCSS 3.NF.A.3d; numbers ours"},
		{compare(parts(7, 8), parts(13, 12)), Less, "5/24", 2, "", "Progressions 3-5 NF, Grade 4, from memory"},
	}
	for _, test := range tests {
		w, err := CompareByCutting(test.problem)
		if err != nil {
			t.Errorf("%s: %v", test.problem, err)
			continue
		}
		a := w.Answer
		if a.Relation != test.relation || a.Gap.String() != test.gap || a.True != (test.problem.Rel == test.relation) {
			t.Errorf("%s: %v, apart %s, %v; want %v, apart %s (%s)", test.problem, a.Relation, a.Gap, a.True, test.relation, test.gap, test.source)
		}
		ends := w.Moves[len(w.Moves)-1].(CompareEnds)
		instead := ""
		if ends.Instead.Left != nil {
			instead = ends.Instead.String()
		}
		if instead != test.instead || len(w.Moves)-3 != test.cuts {
			t.Errorf("%s: instead %q after %d cuts, want %q after %d", test.problem, instead, len(w.Moves)-3, test.instead, test.cuts)
		}
	}
}

func TestOtherNamesOfAnAmount(t *testing.T) {
	tests := []struct {
		problem      Problem
		number, last string
		source       string
	}{
		{Problem{Kind: FractionForm, Left: wholesAnd(2, 1, 8)}, "17/8", "17/8", "CCSS 4.NF.B.3b"},
		{Problem{Kind: FractionForm, Left: wholesAnd(7, 1, 5)}, "36/5", "36/5", "Progressions 3-5 NF, Grade 4, from memory"},
		{Problem{Kind: FractionForm, Left: Int(3)}, "3/1", "3/1", "CCSS 3.NF.A.3c"},
		{Problem{Kind: MixedForm, Left: parts(6, 5)}, "1 1/5", "1 1/5", "National curriculum in England 2013, Year 5"},
		{Problem{Kind: MixedForm, Left: parts(6, 4)}, "1 2/4", "1 1/2", "common practice, no source"},
		{Problem{Kind: MixedForm, Left: parts(8, 4)}, "2", "2", "common practice, no source"},
		{Problem{Kind: SimplestForm, Left: parts(6, 8)}, "3/4", "3/4", "common practice, no source"},
		{Problem{Kind: SimplestForm, Left: parts(3, 4)}, "3/4", "3/4", "common practice, no source"},
		{Problem{Kind: SimplestForm, Left: wholesAnd(2, 6, 8)}, "2 3/4", "2 3/4", "common practice, no source"},
		{Problem{Kind: Renaming, Left: parts(1, 2), Rel: Equal, Blank: Blank{Den: 4}}, "2/4", "2/4", "CCSS 3.NF.A.3b"},
		{Problem{Kind: Renaming, Left: parts(4, 6), Rel: Equal, Blank: Blank{Den: 3}}, "2/3", "2/3", "CCSS 3.NF.A.3b"},
		{Problem{Kind: Renaming, Left: parts(3, 10), Rel: Equal, Blank: Blank{Den: 100}}, "30/100", "30/100", "CCSS 4.NF.C.5"},
		{Problem{Kind: Renaming, Left: parts(4, 3), Rel: Equal, Blank: Blank{Num: 20}}, "20/15", "20/15", "Progressions 3-5 NF, Grade 4, from memory"},
		{Problem{Kind: Renaming, Left: parts(2, 4), Rel: Equal, Blank: Blank{Den: 6}}, "3/6", "3/6", "common practice, no source"},
	}
	for _, test := range tests {
		w, err := NameByCutting(test.problem)
		if err != nil {
			t.Errorf("%s: %v", test.problem, err)
			continue
		}
		if got := w.Answer.Number.String(); got != test.number || w.Answer.Simplest.String() != test.last {
			t.Errorf("%s is %s, last %s; want %s, last %s (%s)", test.problem, got, w.Answer.Simplest, test.number, test.last, test.source)
		}
	}
}

func TestWhatHasNoOtherName(t *testing.T) {
	tests := []struct {
		problem Problem
		want    error
	}{
		{Problem{Kind: MixedForm, Left: parts(3, 4)}, ErrSame},
		{Problem{Kind: FractionForm, Left: parts(3, 4)}, ErrSame},
		{Problem{Kind: SimplestForm, Left: Int(3)}, ErrSame},
		{Problem{Kind: Renaming, Left: parts(1, 2), Blank: Blank{Den: 3}}, ErrUneven},
		{Problem{Kind: Renaming, Left: parts(2, 3), Blank: Blank{Num: 5}}, ErrUneven},
		{Problem{Kind: Renaming, Left: parts(0, 3), Blank: Blank{Num: 5}}, ErrUneven},
	}
	for _, test := range tests {
		if _, err := NameByCutting(test.problem); !errors.Is(err, test.want) {
			t.Errorf("%s: error %v, want %v", test.problem, err, test.want)
		}
	}
	if _, err := SubtractByCutting(differenceOf(parts(1, 4), parts(3, 4))); !errors.Is(err, ErrNegative) {
		t.Errorf("1/4 − 3/4: error %v", err)
	}
	huge := parts(1, 1<<62-1)
	if _, err := AddByCutting(sumOf(huge, parts(1, 1<<61-1))); !errors.Is(err, ErrOverflow) {
		t.Errorf("a common part beyond 64 bits: error %v", err)
	}
}

func TestAListIsSortedAndEqualNumbersStayAsTheyCame(t *testing.T) {
	list := []Number{parts(2, 3), parts(1, 2), parts(5, 6), parts(2, 4)}
	w, err := OrderByCutting(Problem{Kind: Ordering, List: list})
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, n := range w.Answer.Order {
		got = append(got, n.String())
	}
	if want := "1/2 2/4 2/3 5/6"; strings.Join(got, " ") != want {
		t.Errorf("order %v, want %s", got, want)
	}
	if got, want := written(w.Moves), "LayAll CutAll SortByLength"; got != want {
		t.Errorf("moves %s, want %s", got, want)
	}
	// Unit fractions are ordered by the size of their parts: nothing is cut.
	w, err = OrderByCutting(Problem{Kind: Ordering, List: []Number{parts(1, 3), parts(1, 8), parts(1, 5)}})
	if err != nil || written(w.Moves) != "LayAll SortByLength" {
		t.Errorf("1/3, 1/8, 1/5: %s, %v", written(w.Moves), err)
	}
}

// The whole that is cut lies where the cut falls: what is taken away is then one
// stretch at the end. 3 1/4 − 1 3/4 falls in the second whole.
func TestTheWholeWithTheCutIsOpened(t *testing.T) {
	for _, test := range []struct {
		problem Problem
		before  int64
	}{
		{differenceOf(wholesAnd(3, 1, 4), wholesAnd(1, 3, 4)), 1}, // leaves 1 1/2
		{differenceOf(Int(5), wholesAnd(2, 3, 8)), 2},             // leaves 2 5/8
		{differenceOf(wholesAnd(3, 1, 4), wholesAnd(2, 3, 4)), 0}, // leaves 1/2
		{differenceOf(Int(3), parts(3, 4)), 2},                    // leaves 2 1/4
	} {
		w, err := SubtractByCutting(test.problem)
		if err != nil {
			t.Fatal(err)
		}
		found := false
		for _, move := range w.Moves {
			if m, ok := move.(OpenWholes); ok {
				found = true
				if m.Before != test.before {
					t.Errorf("%s: %d wholes before the cut, want %d", test.problem, m.Before, test.before)
				}
			}
		}
		if !found {
			t.Errorf("%s: no whole is cut", test.problem)
		}
	}
}

func TestNothingIsNamedInPartsFirst(t *testing.T) {
	for _, test := range []struct {
		problem Problem
		number  string
	}{
		{differenceOf(wholesAnd(3, 1, 2), parts(7, 2)), "0/2"},
		{differenceOf(parts(3, 4), parts(3, 4)), "0/4"},
	} {
		w, err := SubtractByCutting(test.problem)
		if err != nil || w.Answer.Number.String() != test.number || w.Answer.Simplest.String() != "0" {
			t.Errorf("%s is %s = %s, want %s = 0; %v", test.problem, w.Answer.Number, w.Answer.Simplest, test.number, err)
		}
	}
}
