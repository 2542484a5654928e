package arithmetic

import (
	"errors"
	"slices"

	"modeler/fraction"
)

// CoinKinds are the coins and notes that amounts are made of, the largest first.
var CoinKinds = []Coin{2_000, 1_000, 500, Dollar, Quarter, Dime, Nickel, Penny}

// MostMoney is the largest amount, in cents, that is laid out in coins and notes.
const MostMoney = 2_000

// CoinGroup is coins of one kind.
type CoinGroup struct {
	Coin  Coin
	Count int64
	Worth int64 // cents, all together
}

// TakeCoins takes as many coins of one kind as fit in what is still to be made.
type TakeCoins struct {
	Group         CoinGroup
	Before, Left  int64 // cents still to be made
	Total, Amount int64 // cents on the table now, and in the end
}

// LayMoney lays an amount of money on the table.
type LayMoney struct {
	Nth    int
	Number Number
	Cents  int64
	Groups []CoinGroup // the largest first
}

// CountCoins counts on over coins of one kind: 25, 50, 75.
type CountCoins struct {
	Group  CoinGroup
	From   int64   // cents counted before
	Totals []int64 // after each coin
}

// CountUp lays coins that lead from one amount to the next round one.
type CountUp struct {
	Groups          []CoinGroup // the smallest first
	From, To, Worth int64       // cents
	Paid            bool        // the next round amount is what was paid
}

// ReadMoney reads what all coins are worth.
type ReadMoney struct {
	Number Number
	Cents  int64
	Count  int64 // coins and notes
}

func (TakeCoins) move()  {}
func (LayMoney) move()   {}
func (CountCoins) move() {}
func (CountUp) move()    {}
func (ReadMoney) move()  {}

// ErrNotCoins says that an amount is not a whole number of cents from 1 to
// [MostMoney].
var ErrNotCoins = errors.New("arithmetic: not an amount of coins")

// FewCoins is an amount in coins and notes, the largest kind first, as many of each
// as fit. For these values that is as few pieces as can be; for others it may not be.
func FewCoins(cents int64) []CoinGroup {
	var list []CoinGroup
	for _, c := range CoinKinds {
		if n := cents / int64(c); n > 0 {
			list = append(list, CoinGroup{c, n, n * int64(c)})
			cents %= int64(c)
		}
	}
	return list
}

// Dollars is so many cents as an amount of money: $3.27.
func Dollars(cents int64) Number {
	return Number{Value: fraction.Must(cents, 100), Form: Money, Places: 2}
}

// centsOf is an amount of money in cents.
func centsOf(n Number) (int64, error) {
	cents, err := HundredthsOf(n)
	if err != nil || n.Form != Money || cents > MostMoney {
		return 0, ErrNotCoins
	}
	return cents, nil
}

// MakeWithCoins makes an amount with few coins: as many of the largest as fit, then
// of the next (2.MD.C.8). The problem is a Coins. Its error is [ErrNotCoins].
func MakeWithCoins(p Problem) (Working, error) {
	n, _ := p.Left.(Number)
	cents, err := centsOf(n)
	if err != nil || cents == 0 {
		return Working{}, ErrNotCoins
	}
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: n}}
	left, count := cents, int64(0)
	for _, g := range FewCoins(cents) {
		take := TakeCoins{Group: g, Before: left, Left: left - g.Worth, Amount: cents}
		left = take.Left
		take.Total = cents - left
		count += g.Count
		for range g.Count {
			w.Answer.Order = append(w.Answer.Order, g.Coin.Money())
		}
		w.Moves = append(w.Moves, take)
	}
	w.Moves = append(w.Moves, ReadMoney{n, cents, count})
	return w, nil
}

// CountCoinsWorth counts coins on the table, the largest first (CCSS 2.MD.C.8). The
// problem is a CoinsWorth. Its error is [ErrNotCoins].
func CountCoinsWorth(p Problem) (Working, error) {
	counts := map[Coin]int64{}
	for _, n := range p.List {
		cents, err := centsOf(n)
		if err != nil || !slices.Contains(CoinKinds, Coin(cents)) {
			return Working{}, ErrNotCoins
		}
		counts[Coin(cents)]++
	}
	var groups []CoinGroup
	for _, c := range CoinKinds {
		if n := counts[c]; n > 0 {
			groups = append(groups, CoinGroup{c, n, n * int64(c)})
		}
	}
	w := Working{Problem: p}
	return w.count(groups, 0, int64(len(p.List)))
}

// count counts on over groups and ends with what all is worth.
func (w Working) count(groups []CoinGroup, from, coins int64) (Working, error) {
	for _, g := range groups {
		count := CountCoins{Group: g, From: from}
		for range g.Count {
			from += int64(g.Coin)
			count.Totals = append(count.Totals, from)
		}
		w.Moves = append(w.Moves, count)
	}
	if from == 0 || from > MostMoney {
		return Working{}, ErrNotCoins
	}
	total := Dollars(from)
	w.Answer = Answer{Number: total, Simplest: total}
	w.Moves = append(w.Moves, ReadMoney{total, from, coins})
	return w, nil
}

// AddMoney lays two amounts out and counts on from the first over the coins of the
// second (common practice, no source). The problem is an Addition. Its error is
// [ErrNotCoins].
func AddMoney(p Problem) (Working, error) {
	first, second, err := moneyPair(p)
	if err != nil || first.Cents == 0 || second.Cents == 0 {
		return Working{}, ErrNotCoins
	}
	coins := int64(0)
	for _, g := range append(slices.Clone(first.Groups), second.Groups...) {
		coins += g.Count
	}
	w := Working{Problem: p, Moves: []Move{first, second}}
	return w.count(second.Groups, first.Cents, coins)
}

// moneyPair are the two amounts of a problem.
func moneyPair(p Problem) (first, second LayMoney, err error) {
	a, b, two := p.Operands()
	if !two {
		return first, second, ErrNotCoins
	}
	x, errA := centsOf(a)
	y, errB := centsOf(b)
	if errA != nil || errB != nil {
		return first, second, ErrNotCoins
	}
	return LayMoney{0, a, x, FewCoins(x)}, LayMoney{1, b, y, FewCoins(y)}, nil
}

// CountUpMoney finds a difference as change is given: from the smaller amount up to
// the next ten cents, the next dollar, the last dollar, and to the larger amount
// (common practice, no source). The problem is a Subtraction. Its errors are [ErrNotCoins] and
// [ErrNegative].
func CountUpMoney(p Problem) (Working, error) {
	paid, cost, err := moneyPair(p)
	switch {
	case err != nil:
		return Working{}, err
	case cost.Cents > paid.Cents:
		return Working{}, ErrNegative
	case cost.Cents == paid.Cents || cost.Cents == 0:
		return Working{}, ErrNotCoins
	}
	w := Working{Problem: p, Moves: []Move{paid}}
	at, coins := cost.Cents, int64(0)
	tens, dollars := (at+9)/10*10, (at+99)/100*100
	for _, to := range []int64{tens, dollars, paid.Cents / 100 * 100, paid.Cents} {
		if to = min(to, paid.Cents); to <= at {
			continue
		}
		groups := FewCoins(to - at)
		slices.Reverse(groups)
		for _, g := range groups {
			coins += g.Count
		}
		w.Moves = append(w.Moves, CountUp{groups, at, to, to - at, to == paid.Cents})
		at = to
	}
	change := Dollars(paid.Cents - cost.Cents)
	w.Answer = Answer{Number: change, Simplest: change}
	w.Moves = append(w.Moves, ReadMoney{change, paid.Cents - cost.Cents, coins})
	return w, nil
}
