package reading

import (
	"slices"

	"modeler/arithmetic"
	"modeler/fraction"
)

// coinNames are the names of coins, and of a dollar, in one and in many.
var coinNames = map[string]arithmetic.Coin{
	"penny": arithmetic.Penny, "pennies": arithmetic.Penny, "nickel": arithmetic.Nickel, "nickels": arithmetic.Nickel,
	"dime": arithmetic.Dime, "dimes": arithmetic.Dime, "quarter": arithmetic.Quarter, "quarters": arithmetic.Quarter,
	"dollar": arithmetic.Dollar, "dollars": arithmetic.Dollar,
}

var (
	dollarNames = []string{"dollar", "dollars", "dollar bill", "dollar bills"}
	centNames   = []string{"cent", "cents"}
	coinValues  = []string{"cents", "cent", "dollars", "money", "amount", "worth", "in all", "altogether", "in cents", "cents in all"}
	coinMakers  = []string{"in", "are in", "make", "equal", "is", "are", "are there in", "are equal to", "are worth", "are same as", "for"}
)

// namesCoins reports whether the text has a coin in it; quarter alone is a fourth.
func (p *parser) namesCoins() bool {
	return slices.ContainsFunc(p.tokens, func(t token) bool {
		c, ok := coinNames[t.text]
		return t.kind == word && (ok && c != arithmetic.Quarter || in(centNames, t.text)) || t.kind == number && t.num.Form == arithmetic.Money
	})
}

// coins reads 2 dimes and 3 pennies, which asks for their worth, and 1 quarter = ?
// nickels, which is 25 in groups of 5.
func (p *parser) coins() (Reading, *fault, bool) {
	here, count := p.i, p.count
	back := func() (Reading, *fault, bool) {
		p.i, p.count = here, count
		return Reading{}, nil, false
	}
	if !p.namesCoins() {
		return back()
	}
	if p.any([]string{"how many"}) { // how many nickels are in a quarter
		to, ok := p.coin()
		cents := !ok && p.any(centNames)
		if !ok && !cents || !p.any(coinMakers) {
			return back()
		}
		from, ok := p.coinList()
		if !ok || p.finish() != nil || cents && from.onlyMoney {
			return back()
		}
		if cents {
			return p.worth(from)
		}
		return p.exchanged(from, to)
	}
	p.any([]string{"count", "add", "worth of", "total of"})
	from, ok := p.coinList()
	if !ok {
		return back()
	}
	asked := false
	if rel, n := p.relation(); n > 0 {
		p.i += n
		at := p.i
		if to, ok := p.coinList(); ok && p.finish() == nil && !(from.onlyMoney && to.onlyMoney) { // 1 dime = 2 nickels
			problem := arithmetic.Problem{Kind: arithmetic.Claim, Left: from.cents, Rel: rel, Right: to.cents}
			return Reading{Problem: problem, Spans: append(from.spans, to.spans...)}, nil, true
		}
		p.i = at
		asked = p.any([]string{"how many", "how much", "what"})
		if p.at(0).kind == blank {
			asked = true
			p.i++
		}
		if to, ok := p.coin(); ok && asked {
			if p.finish() != nil {
				return back()
			}
			return p.exchanged(from, to)
		}
		if p.any(coinValues); !asked && p.at(0).kind != end {
			return back()
		}
	}
	p.any(coinValues)
	if p.finish() != nil || from.onlyMoney && (!asked || len(from.list) == 0) {
		return back()
	}
	return p.worth(from)
}

// worth asks how much some coins are together.
func (p *parser) worth(h handful) (Reading, *fault, bool) {
	if n := len(h.list); n == 0 || n > MaxCoins {
		return Reading{}, tooManyCoins(p, h.list), true
	}
	r := Reading{Problem: arithmetic.Problem{Kind: arithmetic.CoinsWorth, List: h.list}}
	for i, s := range h.spans { // one for each coin, the coins that are counted together in one
		for range h.counts[i] {
			r.Spans = append(r.Spans, s)
		}
	}
	return r, nil, true
}

// coin is the name of a coin that comes next. Cents are an amount and no coin.
func (p *parser) coin() (arithmetic.Coin, bool) {
	p.articles()
	c, ok := coinNames[p.at(0).text]
	if ok = ok && p.at(0).kind == word; ok {
		p.i++
	}
	return c, ok
}

// handful is some coins.
type handful struct {
	list      []arithmetic.Number
	worth     int64           // in cents
	cents     arithmetic.Expr // likewise, as 2 × 10 + 3
	spans     []Span
	counts    []int64 // how many coins each span has
	onlyMoney bool    // an amount of dollars and cents, which names no coins
}

// coinList passes a list of coins: 1 quarter, 2 dimes and 3 pennies, a dime, $1.00.
func (p *parser) coinList() (handful, bool) {
	h := handful{onlyMoney: true}
	for {
		p.articles()
		t := p.at(0)
		n := int64(1)
		_, named := coinNames[t.text]
		switch {
		case t.kind == number && t.num.Form == arithmetic.Money: // one amount by itself
			p.i++
			return h.amount(t, t.num, t.end)
		case !(named && t.kind == word):
			if t = p.numberOrWord(); t.kind != number || t.num.Form != arithmetic.Whole {
				return h, false
			}
			if amount, m := p.amountOfMoney(t); m > 0 && len(h.list) == 0 && in(centNames, p.at(m-1).text) {
				p.i += m
				return h.amount(t, amount.num, p.at(-1).end)
			}
			n, _ = t.num.Int64()
		}
		c, ok := p.coin()
		if !ok {
			return h, false
		}
		h.onlyMoney = h.onlyMoney && c == arithmetic.Dollar
		h.worth += n * int64(c)
		h.add(n, c)
		for i := int64(0); i < n && len(h.list) <= MaxCoins; i++ {
			h.list = append(h.list, c.Money())
		}
		h.spans = append(h.spans, Span{Start: t.start, End: p.at(-1).end})
		h.counts = append(h.counts, n)
		here := p.i
		for p.at(0).kind == separator || p.at(0).text == "+" || p.match("and") == 1 || p.match("plus") == 1 {
			p.i++
		}
		if p.i == here && p.at(0).kind != number { // a space alone will do, which may have been a plus
			return h, true
		}
	}
}

// amount is one amount of money by itself.
func (h handful) amount(t token, n arithmetic.Number, end int) (handful, bool) {
	cents, err := n.Value.Mul(fraction.Whole(100))
	h.worth = cents.Num() / cents.Den()
	h.cents = arithmetic.Int(h.worth)
	alone := len(h.list) == 0
	h.spans = append(h.spans, Span{Start: t.start, End: end})
	return h, err == nil && alone
}

// add puts n of a coin to the cents: 10 for a dime, 2 × 10 for two.
func (h *handful) add(n int64, c arithmetic.Coin) {
	var e arithmetic.Expr = arithmetic.Int(int64(c))
	if n != 1 {
		e = arithmetic.Operation{Op: arithmetic.Multiply, Left: arithmetic.Int(n), Right: e}
	}
	if h.cents != nil {
		e = arithmetic.Operation{Op: arithmetic.Add, Left: h.cents, Right: e}
	}
	h.cents = e
}

// exchanged is how many of one coin some others are worth.
func (p *parser) exchanged(from handful, to arithmetic.Coin) (Reading, *fault, bool) {
	if from.worth > MaxWhole || from.worth == 0 {
		return Reading{}, tooManyCoins(p, from.list), true
	}
	r := Reading{Problem: dividing(arithmetic.Int(from.worth), arithmetic.Int(int64(to)), true)}
	return r, nil, true
}

// amountOfMoney is an amount in words behind the number t: 45 cents, 2 dollars and 45
// cents; n is the tokens behind t.
func (p *parser) amountOfMoney(t token) (amount token, n int) {
	here := p.i
	defer func() { p.i = here }()
	v := t.num.Value
	amount = t
	amount.num.Form = arithmetic.Money
	switch {
	case t.kind != number || t.num.Form == arithmetic.Money || t.num.Form == arithmetic.Percent:
		return t, 0
	case p.any(centNames):
		amount.num = arithmetic.InPlaces(v.Num(), 2)
		amount.num.Form = arithmetic.Money
	case p.any(dollarNames):
		here := p.i
		if p.match("and") == 1 {
			p.i++
		}
		cents := p.numberOrWord()
		c, whole := cents.num.Int64()
		if cents.kind == number && whole && cents.num.Form == arithmetic.Whole && c < 100 && p.any(centNames) && v.Den() == 1 {
			amount.num = arithmetic.InPlaces(v.Num()*100+c, 2)
			amount.num.Form = arithmetic.Money
		} else {
			p.i = here
		}
	default:
		return t, 0
	}
	return amount, p.i - here
}
