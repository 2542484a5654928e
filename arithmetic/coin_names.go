package arithmetic

import (
	"strings"

	"modeler/fraction"
)

// Coin is a piece of money by what it is worth in cents.
type Coin int64

// The coins and notes of the United States that a child counts with (31 U.S.C. 5112
// for the coins; from memory).
const (
	Penny   Coin = 1
	Nickel  Coin = 5
	Dime    Coin = 10
	Quarter Coin = 25
	Dollar  Coin = 100

	FiveDollars   Coin = 500
	TenDollars    Coin = 1000
	TwentyDollars Coin = 2000
)

// Name is the name of one coin, or of many. A note of more than a dollar is a bill,
// as in five-dollar bill.
func (c Coin) Name(many bool) string {
	names := map[Coin][2]string{Penny: {"penny", "pennies"}, Nickel: {"nickel", "nickels"}, Dime: {"dime", "dimes"},
		Quarter: {"quarter", "quarters"}, Dollar: {"dollar", "dollars"}}
	for worth, count := range map[Coin]string{FiveDollars: "five", TenDollars: "ten", TwentyDollars: "twenty"} {
		names[worth] = [2]string{count + "-dollar bill", count + "-dollar bills"}
	}
	name := names[c]
	if many {
		return name[1]
	}
	return name[0]
}

// Money is what a coin is worth, as an amount of money.
func (c Coin) Money() Number {
	return Number{Value: fraction.Must(int64(c), 100), Form: Money, Places: 2}
}

// CoinNames writes what coins there are: 2 dimes and 3 pennies. Each number is the
// worth of one coin; coins of one kind that lie side by side are counted together.
func CoinNames(list []Number) string {
	var groups []string
	for i := 0; i < len(list); {
		n, count := list[i], int64(0)
		for i < len(list) && list[i] == n {
			i, count = i+1, count+1
		}
		groups = append(groups, Grouped(count)+" "+Coin(n.Value.Num()).Name(count != 1))
	}
	if last := len(groups) - 1; last > 0 {
		return strings.Join(groups[:last], ", ") + " and " + groups[last]
	}
	return strings.Join(groups, "")
}
