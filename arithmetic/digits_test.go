package arithmetic

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"testing"
)

func TestExpandedFormLeavesZerosOut(t *testing.T) {
	for _, tc := range []struct {
		number int64
		want   []int64
	}{
		{706, []int64{700, 6}},              // CCSS 2.NBT.A.1: 706 is 7 hundreds, 0 tens and 6 ones
		{2_346, []int64{2_000, 300, 40, 6}}, // common practice, no source
		{5_000, []int64{5_000}},             // likewise
		{9_999_999, []int64{9_000_000, 900_000, 90_000, 9_000, 900, 90, 9}},
		{0, []int64{0}},
	} {
		w, err := ExpandByPlace(Problem{Kind: ExpandedForm, Left: Int(tc.number)})
		if err != nil || !reflect.DeepEqual(w.Answer.List, tc.want) {
			t.Errorf("%d is %v, %v; want %v", tc.number, w.Answer.List, err, tc.want)
		}
	}
}

func TestExpandedFormAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 4))
	for range 2_000 {
		n := r.Int64N(MaxPlaced + 1)
		w, err := ExpandByPlace(Problem{Kind: ExpandedForm, Left: Int(n)})
		if err != nil {
			t.Fatal(err)
		}
		sum := int64(0)
		for _, part := range w.Answer.List {
			sum += part
		}
		if sum != n {
			t.Errorf("%v adds up to %d and not to %d", w.Answer.List, sum, n)
		}
	}
}

func TestADigitIsWorthWhatItsPlaceSays(t *testing.T) {
	for _, tc := range []struct {
		number, place, want int64
	}{
		{3_456, 100, 400}, // common practice, no source
		{706, 10, 0},
		{706, 100, 700}, // CCSS 2.NBT.A.1
		{9, 1, 9},
		{4_027_305, 1_000_000, 4_000_000},
	} {
		w, err := WorthByPlace(Problem{Kind: PlaceValue, Left: Int(tc.number), To: tc.place})
		if got, _ := w.Answer.Number.Int64(); err != nil || got != tc.want {
			t.Errorf("the %d of %d: %d, %v; want %d", tc.place, tc.number, got, err, tc.want)
		}
	}
	for _, place := range []int64{1_000, 5, 0, -1} {
		if _, err := WorthByPlace(Problem{Kind: PlaceValue, Left: Int(706), To: place}); !errors.Is(err, ErrPlaces) {
			t.Errorf("the %d of 706: %v", place, err)
		}
	}
}
