// Package coins lays amounts of money out in coins and bills.
package coins

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model makes an amount with few coins, counts coins, adds on to an amount, and
// counts change up (CCSS 2.MD.C.8). The values are those of the United States (31
// U.S.C. 5112; from memory); what stands on a piece is its value and nothing else.
var Model = &telling.Model{
	Name:  "coins",
	Title: "Coins and bills",
	Doc:   "Makes amounts of money with few coins, counts coins on the table, adds amounts, and counts change up from the price.",
	Kinds: []arithmetic.Kind{
		arithmetic.Coins,
		arithmetic.CoinsWorth,
		arithmetic.Addition,
		arithmetic.Subtraction,
	},
	Examples: []string{
		"68¢ in coins",
		"$13.40 in coins",
		"2 dimes and 3 pennies",
		"3 quarters, 2 dimes and 4 pennies",
		"change from $5 for $3.27",
		"$1.25 + $0.60",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// easy is the largest sum, in cents, for which coins are the picture to reach for
// first.
const easy = 500

func turn(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.Coins, arithmetic.CoinsWorth:
		return telling.Leads
	case arithmetic.Addition, arithmetic.Subtraction:
		a, b, ok := p.Operands()
		if !ok || a.Form != arithmetic.Money || b.Form != arithmetic.Money {
			return telling.Serves
		}
		sum, err := a.Value.Add(b.Value)
		if p.Story == arithmetic.Change || p.Kind == arithmetic.Addition && err == nil && sum.Num()*100 <= easy*sum.Den() {
			return telling.Leads
		}
		return telling.Follows
	}
	return telling.Serves
}

func fits(p arithmetic.Problem) error {
	list, ok := amounts(p)
	if !ok || p.Story != arithmetic.NoStory && p.Story != arithmetic.Change {
		return telling.NotMine(words.CoinsKind)
	}
	for _, n := range list {
		if n.Form != arithmetic.Money {
			return telling.NotMine(words.CoinsKind)
		}
		if cents, err := arithmetic.HundredthsOf(n); err != nil || cents > arithmetic.MostMoney {
			return words.CoinsLarge
		}
		if n.Value.Sign() == 0 {
			return words.CoinsNone
		}
	}
	w, err := work(p)
	switch {
	case errors.Is(err, arithmetic.ErrNegative):
		return words.CoinsTaken
	case err != nil && p.Kind == arithmetic.Subtraction:
		return words.CoinsNone
	case err != nil:
		return words.CoinsLarge
	}
	if b := newLesson(w).lay(); b > tallest {
		return words.CoinsLarge
	}
	return nil
}

// tallest is how far down the paper coins may lie.
const tallest = 700

func amounts(p arithmetic.Problem) ([]arithmetic.Number, bool) {
	switch p.Kind {
	case arithmetic.Coins:
		n, ok := p.Left.(arithmetic.Number)
		return []arithmetic.Number{n}, ok
	case arithmetic.CoinsWorth:
		return p.List, len(p.List) > 0
	case arithmetic.Addition, arithmetic.Subtraction:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok
	}
	return nil, false
}

func work(p arithmetic.Problem) (arithmetic.Working, error) {
	switch p.Kind {
	case arithmetic.Coins:
		return arithmetic.MakeWithCoins(p)
	case arithmetic.CoinsWorth:
		return arithmetic.CountCoinsWorth(p)
	case arithmetic.Addition:
		return arithmetic.AddMoney(p)
	}
	return arithmetic.CountUpMoney(p)
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("coins: a problem that does not fit: " + err.Error())
	}
	l := newLesson(w)
	l.lay()
	return l.tell()
}
