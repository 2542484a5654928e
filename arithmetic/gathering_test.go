package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"
)

func TestProductsAreBroughtTogetherFromTheOnes(t *testing.T) {
	w, err := MultiplyByPlace(two(Product, Multiply, 3, 47))
	if err != nil {
		t.Fatal(err)
	}
	// Worked by hand: 3 × 7 ones are 21 ones, 2 tens and 1; 3 × 4 tens and 2 are 14
	// tens, 1 hundred and 4.
	want := []Move{
		LayGroups{Groups: 3, Size: 47, Counts: Counts{7, 4}},
		MultiplyPlace{Power: 0, Groups: 3, Each: 7, Made: 21, Worth: 21, Sum: 21, On: Counts{21}},
		TradeTens{From: 0, Given: 20, Made: 2, Left: 1, On: Counts{1, 2}},
		MultiplyPlace{Power: 1, Groups: 3, Each: 4, Made: 12, Worth: 120, Carried: 2, Sum: 14, Last: true, On: Counts{1, 14}},
		TradeTens{From: 1, Given: 10, Made: 1, Left: 4, On: Counts{1, 4, 1}},
		ReadOff{141, Counts{1, 4, 1}},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("3 × 47:\n got %v\nwant %v", w.Moves, want)
	}
}

// A product with the number of one digit behind is laid out as that many groups.
func TestProductsAreTurnedWhereTheSecondNumberHasOneDigit(t *testing.T) {
	for _, tc := range []struct {
		a, b, groups, size int64
		turned             bool
	}{{24, 3, 3, 24, true}, {3, 24, 3, 24, false}, {8, 9, 8, 9, false}, {60, 5, 5, 60, true}} {
		w, err := MultiplyByPlace(two(Product, Multiply, tc.a, tc.b))
		if err != nil {
			t.Fatal(err)
		}
		if got := w.Moves[0].(LayGroups); got.Groups != tc.groups || got.Size != tc.size || got.Turned != tc.turned {
			t.Errorf("%d × %d: %+v", tc.a, tc.b, got)
		}
	}
	if _, err := MultiplyByPlace(two(Product, Multiply, 12, 13)); !errors.Is(err, ErrPlaces) {
		t.Errorf("12 × 13: %v", err)
	}
}

func TestProductsAreExact(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 2))
	for range 5_000 {
		a, b := 1+r.Int64N(9), r.Int64N(1_100_000)
		if r.IntN(2) == 0 {
			a, b = b, a
		}
		want := new(big.Int).Mul(big.NewInt(a), big.NewInt(b)).Int64()
		w, err := MultiplyByPlace(two(Product, Multiply, a, b))
		if want > MaxPlaced || a == 0 && b > 9 {
			if err == nil {
				t.Errorf("%d × %d is worked", a, b)
			}
			continue
		}
		if err != nil {
			t.Fatalf("%d × %d: %v", a, b, err)
		}
		read := w.Moves[len(w.Moves)-1].(ReadOff)
		parts := int64(0)
		for _, move := range w.Moves {
			if m, ok := move.(MultiplyPlace); ok {
				parts += m.Worth
			}
		}
		if got, _ := w.Answer.Number.Int64(); got != want || read.Number != want || parts != want || read.Counts.Total() != want {
			t.Errorf("%d × %d: %d, read as %+v, in parts %d", a, b, got, read, parts)
		}
		for _, n := range read.Counts {
			if n > 9 {
				t.Errorf("%d × %d: %v is not traded", a, b, read.Counts)
			}
		}
	}
}

func TestListsAreAddedExactly(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 3))
	for range 3_000 {
		want := new(big.Int)
		var sum Expr
		for i := range 3 + r.IntN(4) {
			n := r.Int64N(Power10(1 + r.IntN(6)))
			want.Add(want, big.NewInt(n))
			if sum = Expr(Operation{Add, sum, Int(n)}); i == 0 {
				sum = Int(n)
			}
		}
		w, err := AddListByPlace(Problem{Kind: Expression, Left: sum})
		if err != nil {
			t.Fatal(err)
		}
		if got, _ := w.Answer.Number.Int64(); got != want.Int64() || w.Moves[len(w.Moves)-1].(ReadOff).Number != got {
			t.Errorf("%s: %d, want %d", sum, got, want)
		}
	}
	for _, sum := range []Expr{
		Operation{Add, Int(1), Operation{Add, Int(2), Int(3)}}, // brackets
		Operation{Subtract, Operation{Add, Int(1), Int(2)}, Int(3)},
		Operation{Add, Operation{Add, Int(5_000_000), Int(4_000_000)}, Int(1_000_000)},
	} {
		if _, err := AddListByPlace(Problem{Kind: Expression, Left: sum}); !errors.Is(err, ErrPlaces) {
			t.Errorf("%s: %v", sum, err)
		}
	}
}
