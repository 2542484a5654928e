package reading

import "modeler/arithmetic"

// coinOpeners ask for the coins that make an amount.
var coinOpeners = []string{"coins for", "coins that make", "coins make", "which coins make", "coins to make", "fewest coins for", "fewest coins that make",
	"fewest coins to make", "how many coins make", "how many coins are", "how many coins for"}

// coinsFor reads fewest coins for 68¢.
func (p *parser) coinsFor() (Reading, *fault, bool) {
	if !p.any(coinOpeners) {
		return Reading{}, nil, false
	}
	c, n, f := p.one()
	if f != nil {
		return Reading{}, f, true
	}
	r, f := p.inForm(arithmetic.Coins, c, n)
	return r, f, true
}

// The words of change: what comes back from an amount when another is paid.
var (
	changeOpeners = []string{"change from", "change out of", "how much change from", "how much change out of", "change for", "make change for", "change due from",
		"count up from", "change back from", "how much change do you get from", "how much change will you get from", "how much change do you get back from", "how much change is due from", "pay with", "pay", "spend", "change when you pay", "change if you pay", "give change from", "make change from"}
	changeFor = []string{"for", "if you pay", "when you pay", "after paying", "after spending", "when you spend", "if you spend", "if it costs", "when it costs",
		"when you buy something for", "for something that costs", "buying something for", "on", "and pay", "for a ticket of"}
	changeFrom = []string{"from", "out of", "with", "to", "when you pay", "if you pay", "when you pay with", "if you pay with", "paying with"}
	turnedPays = []string{"change for", "make change for", "count up from", "pay", "spend"}
)

// change reads change from $5.00 for $3.27.
func (p *parser) change() (Reading, *fault, bool) {
	here, count := p.i, p.count
	back := func() (Reading, *fault, bool) {
		p.i, p.count = here, count
		return Reading{}, nil, false
	}
	n, turned := p.longestOf(changeOpeners), p.longestOf(turnedPays)
	if n == 0 {
		return back()
	}
	p.i += n
	first, f := p.operand()
	if f != nil {
		return back()
	}
	if a, ok := first.expr.(arithmetic.Number); ok && a.Form == arithmetic.Money && p.finish() == nil {
		return Reading{}, changeOfWhat(p, first), true
	}
	// Pay $5 for $3.27 gives what is paid with first, and pay $3.27 with $5 last.
	for _, order := range []struct {
		words []string
		last  bool
	}{{changeFor, turned == n && p.tokens[here].text != "pay"}, {changeFrom, true}} {
		at := p.i
		if !p.any(order.words) {
			continue
		}
		second, f := p.operand()
		if f == nil {
			f = p.finish()
		}
		if f != nil {
			p.i = at
			continue
		}
		from, paid := first, second
		if order.last {
			from, paid = second, first
		}
		r, f, ok := p.changeOf(from, paid)
		if !ok {
			return back()
		}
		return r, f, true
	}
	return back()
}

// changeOf is the change from one amount for another; ok is false when neither is
// money. A number beside an amount of money is one of dollars.
func (p *parser) changeOf(from, paid piece) (Reading, *fault, bool) {
	a, okA := from.expr.(arithmetic.Number)
	b, okB := paid.expr.(arithmetic.Number)
	if !okA || !okB || a.Form != arithmetic.Money && b.Form != arithmetic.Money {
		return Reading{}, nil, false
	}
	for _, c := range []struct {
		n *arithmetic.Number
		piece
	}{{&a, from}, {&b, paid}} {
		n, ok := inDollars(*c.n)
		if !ok {
			return Reading{}, notMoney(p, c.piece, *c.n), true
		}
		*c.n = n
	}
	o := arithmetic.Operation{Op: arithmetic.Subtract, Left: a, Right: b}
	return Reading{Problem: arithmetic.Problem{Kind: arithmetic.Subtraction, Left: o, Story: arithmetic.Change},
		Spans: append(append([]Span{}, from.spans...), paid.spans...)}, nil, true
}

// inDollars is a whole number or a decimal as so many dollars and cents.
func inDollars(n arithmetic.Number) (arithmetic.Number, bool) {
	switch {
	case n.Form == arithmetic.Money:
		return n, true
	case n.Form == arithmetic.Decimal && n.Places == 1:
		n = arithmetic.InPlaces(n.Value.Num()*10, 2)
	case n.Form != arithmetic.Whole && (n.Form != arithmetic.Decimal || n.Places != 2):
		return n, false
	}
	n.Form = arithmetic.Money
	return n, true
}
