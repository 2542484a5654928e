package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"
)

func TestEqualHopsLandWhereTheyShould(t *testing.T) {
	times := func(a, b int64) Problem { return Problem{Kind: Product, Left: sum(Multiply, Int(a), Int(b))} }
	in := func(a, b int64) Problem {
		return Problem{Kind: Division, Left: sum(Divide, Int(a), Int(b)), Grouping: true}
	}
	for _, c := range []struct {
		p     Problem
		lands []int64
		rest  int64
	}{
		{times(5, 7), []int64{7, 14, 21, 28, 35}, 0}, // 5 groups of 7: CCSS 3.OA.A.1
		{in(23, 7), []int64{7, 14, 21}, 2},           // no source
		{in(12, 3), []int64{3, 6, 9, 12}, 0},         // no source
		{Problem{Kind: Counting, Run: Run{From: 40, By: 5, Op: Add, Terms: 4}}, []int64{45, 50, 55}, 0}, // skip counting by 5s: CCSS 2.NBT.A.2
		{Problem{Kind: Counting, Run: Run{From: 30, By: 10, Op: Subtract, Terms: 4}}, []int64{20, 10, 0}, 0},
		{Problem{Kind: Multiples, Left: Int(6), Run: Run{Terms: 4}}, []int64{6, 12, 18, 24}, 0},
	} {
		w, row, err := HopEqually(c.p)
		if err != nil {
			t.Errorf("%s: %v", c.p, err)
			continue
		}
		var lands []int64
		for _, m := range w.Moves {
			if m, ok := m.(HopOn); ok {
				for nth := m.First; nth <= m.Last; nth++ {
					lands = append(lands, row.Land(nth))
				}
			}
		}
		if !slices.Equal(lands, c.lands) || w.Answer.Remainder != c.rest {
			t.Errorf("%s: lands on %v with %d left, want %v with %d", c.p, lands, w.Answer.Remainder, c.lands, c.rest)
		}
	}
}

func TestNoHopIsRefused(t *testing.T) {
	for _, p := range []Problem{
		{Kind: Product, Left: sum(Multiply, Int(0), Int(4))},
		{Kind: Product, Left: sum(Multiply, Int(4), Int(0))},
		{Kind: Division, Left: sum(Divide, Int(2), Int(5)), Grouping: true},
	} {
		if _, _, err := HopEqually(p); !errors.Is(err, ErrNothing) {
			t.Errorf("%s: %v", p, err)
		}
	}
}

// The first number on which two rows meet is their product over their greatest
// common divisor, by math/big.
func TestRowsMeetAtTheLeastCommonMultiple(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		a, b := 1+r.Int64N(60), 1+r.Int64N(60)
		w, err := MeetOnLines(Problem{Kind: CommonMultiples, Left: Int(a), Right: Int(b)}, 12)
		if err != nil {
			t.Fatal(err)
		}
		g := new(big.Int).GCD(nil, nil, big.NewInt(a), big.NewInt(b))
		least := new(big.Int).Div(big.NewInt(a*b), g).Int64()
		if want := []int64{least, 2 * least, 3 * least}; !slices.Equal(w.Answer.List, want) {
			t.Errorf("%d and %d: %v, want %v", a, b, w.Answer.List, want)
		}
	}
}

func TestAnEstimateUsesRoundedNumbers(t *testing.T) {
	for _, c := range []struct {
		op   Op
		a, b int64
		to   int64
		want int64
	}{
		{Add, 348, 231, 100, 500}, {Add, 48, 33, 10, 80}, {Subtract, 612, 298, 100, 300}, {Add, 45, 40, 10, 90}, // no source
	} {
		w, err := EstimateOnLine(Problem{Kind: Estimate, Left: sum(c.op, Int(c.a), Int(c.b)), To: c.to})
		if got, _ := w.Answer.Number.Int64(); err != nil || got != c.want {
			t.Errorf("%d and %d: %d, %v, want %d", c.a, c.b, got, err, c.want)
		}
	}
}
