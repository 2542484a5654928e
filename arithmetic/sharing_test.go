package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"
)

func TestSharingTradesWhatIsLeft(t *testing.T) {
	w, err := ShareByPlace(two(Division, Divide, 612, 6))
	if err != nil {
		t.Fatal(err)
	}
	// Worked by hand: 6 hundreds, 1 each; 1 ten is too few and becomes 10 ones; 12
	// ones, 2 each. The 0 of 102 is a move of its own.
	want := []Move{
		LayOut{0, 612, Counts{2, 1, 6}},
		SharePlace{Power: 2, Have: 6, Groups: 6, Each: 1, Shared: 6, On: Counts{2, 1}, Given: Counts{0, 0, 1}},
		SharePlace{Power: 1, Have: 1, Groups: 6, Left: 1, On: Counts{2, 1}, Given: Counts{0, 0, 1}},
		TradeLeft{From: 1, Count: 1, Made: 10, Had: 2, Have: 12, On: Counts{12}},
		SharePlace{Power: 0, Have: 12, Groups: 6, Each: 2, Shared: 12, Given: Counts{2, 0, 1}},
		ReadShare{Groups: 6, Each: 102, Counts: Counts{2, 0, 1}},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("612 ÷ 6:\n got %v\nwant %v", w.Moves, want)
	}
}

func TestSharingByTheExamplesOfTheStandards(t *testing.T) {
	// 98 ÷ 4 is 24 remainder 2 (National curriculum in England, 2013, year 5); 966 ÷
	// 7 is 138 (Progressions, base ten, grade 4; from memory).
	for _, tc := range []struct{ total, groups, each, left int64 }{
		{98, 4, 24, 2}, {966, 7, 138, 0}, {7, 9, 0, 7}, {0, 5, 0, 0}, {9_999, 9, 1_111, 0}, {8, 1, 8, 0},
	} {
		w, err := ShareByPlace(two(Division, Divide, tc.total, tc.groups))
		each, _ := w.Answer.Number.Int64()
		if err != nil || each != tc.each || w.Answer.Remainder != tc.left {
			t.Errorf("%d ÷ %d: %d remainder %d, %v", tc.total, tc.groups, each, w.Answer.Remainder, err)
		}
	}
	if _, err := ShareByPlace(two(Division, Divide, 5, 0)); !errors.Is(err, ErrDivideByZero) {
		t.Errorf("5 ÷ 0: %v", err)
	}
}

// Nothing comes and nothing goes: after every move what is still to be shared and
// what the groups have are the number. What is left is always too few.
func TestSharingKeepsTheNumber(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	for range 5_000 {
		total, groups := r.Int64N(MaxPlaced+1), 1+r.Int64N(9)
		w, err := ShareByPlace(two(Division, Divide, total, groups))
		if err != nil {
			t.Fatal(err)
		}
		var given Counts
		for _, move := range w.Moves {
			on := Counts{}
			switch move := move.(type) {
			case SharePlace:
				on, given = move.On, move.Given
				if move.Left >= groups || move.Each > 9 {
					t.Errorf("%d ÷ %d: %+v", total, groups, move)
				}
			case TradeLeft:
				on = move.On
			default:
				continue
			}
			if on.Total()+groups*given.Total() != total {
				t.Errorf("%d ÷ %d: %+v", total, groups, move)
			}
		}
		quotient, rest := new(big.Int).DivMod(big.NewInt(total), big.NewInt(groups), new(big.Int))
		if each, _ := w.Answer.Number.Int64(); each != quotient.Int64() || w.Answer.Remainder != rest.Int64() || given.Total() != each {
			t.Errorf("%d ÷ %d: %d remainder %d", total, groups, each, w.Answer.Remainder)
		}
	}
}
