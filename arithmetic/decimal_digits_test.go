package arithmetic

import (
	"math/big"
	"testing"
)

// CCSS 5.NBT.A.3a: 347.392 = 3 × 100 + 4 × 10 + 7 × 1 + 3 × (1/10) + 9 × (1/100) + 2 ×
// (1/1000). The others are worked by hand.
func TestDecimalDigitsAreWorthTheirPlaces(t *testing.T) {
	for _, c := range []struct {
		units  int64
		places int
		want   []string
	}{
		{347_392, 3, []string{"300", "40", "7", "0.3", "0.09", "0.002"}},
		{5, 2, []string{"0.05"}}, {100, 2, []string{"1"}}, {0, 1, []string{"0.0"}}, {3_047, 3, []string{"3", "0.04", "0.007"}},
	} {
		w, err := WorkDecimalDigits(Problem{Kind: ExpandedForm, Left: InPlaces(c.units, c.places)})
		if err != nil || len(w.Answer.Order) != len(c.want) {
			t.Errorf("%d in %d places: %v, %v", c.units, c.places, w.Answer.Order, err)
			continue
		}
		for i, part := range w.Answer.Order {
			if part.String() != c.want[i] {
				t.Errorf("%d in %d places: part %d is %s, want %s", c.units, c.places, i+1, part, c.want[i])
			}
		}
	}
}

func TestDecimalDigitsAddUp(t *testing.T) {
	for places := 1; places <= MostDecimalPlaces; places++ {
		for units := int64(0); units < 20_000; units += 7 {
			w, err := WorkDecimalDigits(Problem{Kind: Show, Left: InPlaces(units, places)})
			if err != nil {
				t.Fatal(err)
			}
			sum := new(big.Rat)
			for _, move := range w.Moves {
				if m, ok := move.(LayDigit); ok {
					sum.Add(sum, big.NewRat(m.Worth.Value.Num(), m.Worth.Value.Den()))
				}
			}
			if sum.Cmp(big.NewRat(units, Power10(places))) != 0 {
				t.Fatalf("%s is laid out as %s", InPlaces(units, places), sum)
			}
		}
	}
}

func TestWorthOfADecimalDigit(t *testing.T) {
	for _, c := range []struct {
		to     int64
		places int
		want   string
	}{{1, 0, "7"}, {100, 0, "300"}, {0, 1, "0.3"}, {0, 2, "0.09"}, {0, 3, "0.002"}} {
		w, err := WorkDecimalDigits(Problem{Kind: PlaceValue, Left: InPlaces(347_392, 3), To: c.to, Places: c.places})
		if err != nil || w.Answer.Number.String() != c.want {
			t.Errorf("the digit of %d, %d is worth %s, %v, want %s", c.to, c.places, w.Answer.Number, err, c.want)
		}
	}
	for _, p := range []Problem{{To: 1_000}, {Places: 4}} {
		p.Kind, p.Left = PlaceValue, InPlaces(347_392, 3)
		if _, err := WorkDecimalDigits(p); err != ErrPlaces {
			t.Errorf("a place that is not there: %v", err)
		}
	}
}
