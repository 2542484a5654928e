package arithmetic

import (
	"math/big"
	"slices"
	"testing"
)

func TestPlacesAreTheDigits(t *testing.T) {
	for _, tc := range []struct {
		n      int64
		want   Counts // ones first
		source string
	}{
		{706, Counts{6, 0, 7}, "CCSS 2.NBT.A.1"},
		{400, Counts{0, 0, 4}, "CCSS 2.NBT.A.1b"},
		{90, Counts{0, 9}, "CCSS 1.NBT.B.2c"},
		{18, Counts{8, 1}, "CCSS K.NBT.A.1"},
		{0, Counts{}, "common practice, no source"},
		{9_999_999, Counts{9, 9, 9, 9, 9, 9, 9}, "common practice, no source"},
	} {
		got, err := Places(tc.n)
		if err != nil || got != tc.want {
			t.Errorf("%s: Places(%d) = %v, %v; want %v", tc.source, tc.n, got, err, tc.want)
		}
	}
	for _, n := range []int64{-1, 10_000_000, 1 << 62} {
		if _, err := Places(n); err != ErrPlaces {
			t.Errorf("Places(%d): %v, want ErrPlaces", n, err)
		}
	}
}

func TestPlacesAddUpToTheNumber(t *testing.T) {
	for n := int64(0); n <= MaxPlaced; n += 4_999 {
		c, err := Places(n)
		if err != nil {
			t.Fatal(err)
		}
		sum := new(big.Int)
		for power, count := range c {
			ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(power)), nil)
			sum.Add(sum, ten.Mul(ten, big.NewInt(count)))
		}
		if sum.Int64() != n || c.Total() != n {
			t.Errorf("the places of %d add up to %v, Total says %d", n, sum, c.Total())
		}
	}
}

func TestExpandedLeavesZerosOut(t *testing.T) {
	for _, tc := range []struct {
		n    int64
		want []int64
	}{
		{347, []int64{300, 40, 7}}, // the whole part of CCSS 5.NBT.A.3a
		{402, []int64{400, 2}},     // common practice, no source
		{18, []int64{10, 8}},       // CCSS K.NBT.A.1
		{400, []int64{400}},        // common practice, no source
		{0, []int64{0}},            // common practice, no source
	} {
		if got, err := Expanded(tc.n); err != nil || !slices.Equal(got, tc.want) {
			t.Errorf("Expanded(%d) = %v, %v; want %v", tc.n, got, err, tc.want)
		}
	}
}
