package arithmetic

import (
	"reflect"
	"testing"
)

func TestFactorPairsAreFoundInOrder(t *testing.T) {
	w, err := FactorPairs(Problem{Kind: Factors, Left: Int(24)})
	want := []Move{
		FindPair{1, 24, nil}, FindPair{2, 12, nil}, FindPair{3, 8, nil}, FindPair{4, 6, nil},
		TurnPairs{5, nil},
	}
	if err != nil || !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("the arrays of 24 are found %v (%v), want %v", w.Moves, err, want)
	}
	all := [][2]int64{{1, 24}, {2, 12}, {3, 8}, {4, 6}, {6, 4}, {8, 3}, {12, 2}, {24, 1}}
	if !reflect.DeepEqual(w.Answer.Pairs, all) {
		t.Errorf("the arrays of 24 are %v, want %v", w.Answer.Pairs, all)
	}
	w, _ = FactorPairs(Problem{Kind: Factors, Left: Int(35)})
	want = []Move{FindPair{1, 35, nil}, FindPair{5, 7, []int64{2, 3, 4}}, TurnPairs{6, nil}}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("the arrays of 35 are found %v, want %v", w.Moves, want)
	}
}

func TestCountsOfArraysAreTheKnownOnes(t *testing.T) {
	// Numbers of divisors: Abramowitz & Stegun 1964, table 24.6 (from memory).
	for n, want := range map[int64]int{1: 1, 12: 6, 17: 2, 24: 8, 36: 9, 60: 12, 120: 16, 180: 18, 200: 12} {
		w, err := FactorPairs(Problem{Kind: Factors, Left: Int(n)})
		if err != nil || len(w.Answer.Pairs) != want {
			t.Errorf("%d has %d arrays (%v), want %d", n, len(w.Answer.Pairs), err, want)
		}
	}
	// Arrays up to turning, n = 1 to 16: OEIS A038548.
	for i, want := range []int{1, 1, 1, 2, 1, 2, 1, 2, 2, 2, 1, 3, 1, 2, 2, 3} {
		w, _ := FactorPairs(Problem{Kind: Factors, Left: Int(int64(i + 1))})
		if got := len(w.Moves) - 1; got != want {
			t.Errorf("%d has %d arrays up to turning, want %d", i+1, got, want)
		}
	}
	if _, err := FactorPairs(Problem{Kind: Factors, Left: Int(0)}); err == nil {
		t.Error("0 has no finite set of arrays")
	}
}
