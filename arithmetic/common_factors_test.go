package arithmetic

import (
	"math/big"
	"reflect"
	"slices"
	"testing"
)

func TestCommonFactorsAreThoseOfTheGreatest(t *testing.T) {
	for a := int64(1); a <= 100; a++ {
		for b := int64(1); b <= 100; b += 3 {
			w, err := SharedFactors(Problem{Kind: CommonFactors, Left: Int(a), Right: Int(b)})
			if err != nil {
				t.Fatal(err)
			}
			greatest := new(big.Int).GCD(nil, nil, big.NewInt(a), big.NewInt(b)).Int64()
			var want []int64
			for d := int64(1); d <= greatest; d++ {
				if greatest%d == 0 {
					want = append(want, d)
				}
			}
			if !slices.Equal(w.Answer.List, want) || w.Answer.Number != Int(greatest) {
				t.Fatalf("common factors of %d and %d: %v, want %v", a, b, w.Answer.List, want)
			}
		}
	}
	// 12 and 18 share 1, 2, 3 and 6; common practice, no source.
	w, _ := SharedFactors(Problem{Kind: CommonFactors, Left: Int(12), Right: Int(18)})
	want := []Move{
		FindArrays{0, 12, [][2]int64{{1, 12}, {2, 6}, {3, 4}}}, FindArrays{1, 18, [][2]int64{{1, 18}, {2, 9}, {3, 6}}},
		MatchSides{[]int64{1, 2, 3, 6}}, ReadGreatest{6},
	}
	if !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("common factors of 12 and 18 are worked %+v", w.Moves)
	}
	for _, p := range []Problem{{Kind: CommonFactors, Left: Int(0), Right: Int(4)}, {Kind: CommonFactors, Left: Int(4)}} {
		if _, err := SharedFactors(p); err == nil {
			t.Errorf("%+v is worked", p)
		}
	}
}

func TestPrimesAreThoseOfBigIntegers(t *testing.T) {
	for n := int64(1); n <= 1000; n++ {
		w, err := PrimeByArrays(Problem{Kind: Primality, Left: Int(n)})
		if err != nil {
			t.Fatal(err)
		}
		prime := big.NewInt(n).ProbablyPrime(0) // exact below 2^64
		judge := w.Moves[len(w.Moves)-1].(JudgePrime)
		if w.Answer.True != prime || judge.Prime != prime {
			t.Errorf("%d is said to be prime: %t", n, w.Answer.True)
		}
		if other := judge.Other; !prime && n > 1 && (other[0]*other[1] != n || other[0] < 2 || other[0] > other[1]) {
			t.Errorf("%d has the other array %v", n, other)
		}
	}
	if _, err := PrimeByArrays(Problem{Kind: Primality, Left: Int(0)}); err == nil {
		t.Error("0 is worked")
	}
}

func TestAFamilyOfAProductSaysTheSameFourTimes(t *testing.T) {
	for a := int64(0); a <= 12; a++ {
		for b := int64(0); b <= 12; b++ {
			w, ok, err := ProductFamily(Problem{Kind: FactFamily, Left: Operation{Multiply, Int(a), Int(b)}})
			if !ok || (err != nil) != (a*b == 0) {
				t.Fatalf("%d × %d: %t, %v", a, b, ok, err)
			}
			if err != nil {
				continue
			}
			seen := map[Fact]bool{}
			for _, m := range w.Moves[1:] {
				f := m.(ReadFact).Fact
				if seen[f] {
					t.Errorf("%d × %d has %v twice", a, b, f)
				}
				seen[f] = true
				if f.Op == Multiply && f.Left*f.Right != f.Result || f.Op == Divide && f.Right*f.Result != f.Left {
					t.Errorf("%d × %d has %v", a, b, f)
				}
			}
			if want := map[bool]int{true: 2, false: 4}[a == b]; len(seen) != want {
				t.Errorf("%d × %d has %d facts, want %d", a, b, len(seen), want)
			}
		}
	}
	if _, ok, _ := ProductFamily(Problem{Kind: FactFamily, Left: Operation{Add, Int(3), Int(5)}}); ok {
		t.Error("a sum is no product")
	}
}
