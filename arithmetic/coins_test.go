package arithmetic

import (
	"math/big"
	"testing"
)

// ways is how many ways make an amount with coins of the given values.
func ways(cents int64, values ...int64) int64 {
	list := make([]int64, cents+1)
	list[0] = 1
	for _, v := range values {
		for n := v; n <= cents; n++ {
			list[n] += list[n-v]
		}
	}
	return list[cents]
}

// As many of the largest coin as fit is the fewest for these values: no amount up to
// the largest has fewer, by trying all of them. The numbers of ways check the search
// (pennies, nickels, dimes and quarters; from memory).
func TestFewCoinsAreTheFewest(t *testing.T) {
	for cents, want := range map[int64]int64{10: 4, 25: 13, 50: 49, 100: 242} {
		if got := ways(cents, 1, 5, 10, 25); got != want {
			t.Errorf("%d cents can be made in %d ways, want %d", cents, got, want)
		}
	}
	least := make([]int64, MostMoney+1)
	for cents := int64(1); cents <= MostMoney; cents++ {
		for _, c := range CoinKinds {
			if n := int64(c); n <= cents && (least[cents] == 0 || least[cents-n]+1 < least[cents]) {
				least[cents] = least[cents-n] + 1
			}
		}
		count, sum := int64(0), int64(0)
		for _, g := range FewCoins(cents) {
			count, sum = count+g.Count, sum+g.Count*int64(g.Coin)
			if g.Worth != g.Count*int64(g.Coin) {
				t.Errorf("%d of %d are worth %d", g.Count, g.Coin, g.Worth)
			}
		}
		if sum != cents || count != least[cents] {
			t.Errorf("%d cents: %d coins that make %d, want %d", cents, count, sum, least[cents])
		}
	}
}

// $5.00 for $3.27 is counted up over $3.30 and $4.00 (common practice, no source).
func TestChangeIsCountedUp(t *testing.T) {
	money := func(cents int64) Number { return Dollars(cents) }
	change := func(paid, cost int64) Problem {
		return Problem{Kind: Subtraction, Left: Operation{Subtract, money(paid), money(cost)}}
	}
	w, err := CountUpMoney(change(500, 327))
	if err != nil {
		t.Fatal(err)
	}
	var stops []int64
	for _, move := range w.Moves {
		if m, ok := move.(CountUp); ok {
			stops = append(stops, m.To)
		}
	}
	if len(stops) != 3 || stops[0] != 330 || stops[1] != 400 || stops[2] != 500 || w.Answer.Number.String() != "$1.73" {
		t.Errorf("counted up over %v to %s", stops, w.Answer.Number)
	}
	for paid := int64(1); paid <= MostMoney; paid += 7 {
		for cost := int64(1); cost < paid; cost += 13 {
			w, err := CountUpMoney(change(paid, cost))
			if err != nil {
				t.Fatalf("%d for %d: %v", paid, cost, err)
			}
			at := cost
			for _, move := range w.Moves {
				m, ok := move.(CountUp)
				if !ok {
					continue
				}
				sum := int64(0)
				for _, g := range m.Groups {
					sum += g.Worth
				}
				if m.From != at || m.To-m.From != sum || m.Worth != sum || sum <= 0 {
					t.Fatalf("%d for %d: from %d to %d with %d", paid, cost, m.From, m.To, sum)
				}
				at = m.To
			}
			v := w.Answer.Number.Value
			if at != paid || big.NewRat(v.Num(), v.Den()).Cmp(big.NewRat(paid-cost, 100)) != 0 {
				t.Fatalf("%d for %d is %s, counted up to %d", paid, cost, w.Answer.Number, at)
			}
		}
	}
	if _, err := CountUpMoney(change(300, 327)); err != ErrNegative {
		t.Errorf("$3.27 from $3.00: %v", err)
	}
}
