package problems

import (
	"math/big"

	"modeler/arithmetic"
	"modeler/fraction"
)

// coins are the values of coins and bills in cents (31 U.S.C. 5112 for the coins;
// from memory).
var coins = []int64{1, 5, 10, 25, 100, 500, 1_000, 2_000}

// money is an amount in cents, mostly less than a dollar.
func (d *Dealer) money() arithmetic.Number {
	most := []int64{100, 100, 500, 2_000, 2_500}[d.IntN(5)]
	return inMoney(1 + d.Int64N(most))
}

func inMoney(cents int64) arithmetic.Number {
	return arithmetic.Number{Value: fraction.Must(cents, 100), Form: arithmetic.Money, Places: 2}
}

// purse deals coins on the table, in any order.
func (d *Dealer) purse() arithmetic.Problem {
	p := arithmetic.Problem{Kind: arithmetic.CoinsWorth}
	kinds := []int{4, 4, 5, len(coins)}[d.IntN(4)]
	for range 1 + d.IntN([]int{6, 12, 20}[d.IntN(3)]) {
		p.List = append(p.List, inMoney(coins[d.IntN(kinds)]))
	}
	return p
}

// fewest is the least number of coins and bills that make an amount, found by trying
// every amount up to it.
func fewest(cents int64) int {
	least := make([]int, cents+1)
	for amount := int64(1); amount <= cents; amount++ {
		for _, c := range coins {
			if c > amount {
				break
			}
			if n := least[amount-c] + 1; least[amount] == 0 || n < least[amount] {
				least[amount] = n
			}
		}
	}
	return least[cents]
}

// workMoney counts coins; asked is false for other problems.
func (t *Truth) workMoney(p arithmetic.Problem) (asked bool) {
	if p.Kind != arithmetic.CoinsWorth {
		return false
	}
	t.Value = new(big.Rat)
	for _, n := range p.List {
		t.Numbers = append(t.Numbers, rat(n))
		t.Value.Add(t.Value, rat(n))
	}
	return true
}
