package words

import (
	"errors"
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why coins cannot show a problem.
var (
	CoinsKind  = errors.New("coins make amounts of money, count them, add them and give change")
	CoinsLarge = errors.New("coins and bills lie on the table for amounts up to $20.00")
	CoinsNone  = errors.New("there is no money to lay out")
	CoinsTaken = errors.New("more is taken away than there is")
)

// CoinFace is what stands on a coin or a bill: 25¢, $5.
func CoinFace(c arithmetic.Coin) string {
	if c < arithmetic.Dollar {
		return arithmetic.Grouped(int64(c)) + "¢"
	}
	return "$" + arithmetic.Grouped(int64(c/arithmetic.Dollar))
}

// Price is an amount as a child reads it: 50¢, $3.30.
func Price(cents int64) string {
	if cents < int64(arithmetic.Dollar) {
		return arithmetic.Grouped(cents) + "¢"
	}
	return arithmetic.Dollars(cents).String()
}

// CoinPieces is what lies on the table: 2 quarters.
func CoinPieces(g arithmetic.CoinGroup) string { return g.Coin.Name(g.Count != 1) }

func coinCount(g arithmetic.CoinGroup) string {
	return arithmetic.Grouped(g.Count) + " " + g.Coin.Name(g.Count != 1)
}

func coinList(groups []arithmetic.CoinGroup) string {
	var list []string
	for _, g := range groups {
		list = append(list, coinCount(g))
	}
	if len(list) == 0 {
		return "nothing"
	}
	return List(list)
}

// CoinsTake tells how coins of one kind are taken for an amount.
func CoinsTake(m arithmetic.TakeCoins, first bool) Told {
	name := m.Group.Coin.Name(true)
	still := "are still to be made"
	rest := Say(Price(m.Left) + " " + still + ".")
	if m.Left == 0 {
		rest = Say("Nothing is left to be made.")
	} else if m.Left < 100 && m.Left == 1 || m.Left >= 100 {
		rest = Say(Price(m.Left) + " is still to be made.")
	}
	which := "Take the next smaller kind that fits: "
	if first {
		which = "Take the largest kind that fits: "
	}
	return Told{
		Title: "Take " + coinCount(m.Group),
		Ask:   Say("How many " + name + " fit in " + Price(m.Before) + "?"),
		Hands: Say(which, In(scene.Moved, coinCount(m.Group)), ", "+Price(m.Group.Worth)+". ", rest),
		Desc:  scene.Same("On the table now: " + Price(m.Total) + ", with " + coinCount(m.Group) + " the last."),
	}
}

// CoinsMade tells that an amount is made.
func CoinsMade(p arithmetic.Problem, m arithmetic.ReadMoney, coins []arithmetic.Number) Told {
	names := arithmetic.CoinNames(coins)
	return Told{
		Title: "Count them",
		Ask:   Say("How many coins and bills are there?"),
		Hands: Say("Count what lies there: ", In(scene.First, m.Number.String()), " is ", In(scene.Result, names), "."),
		Desc:  scene.Telling{Shown: m.Number.String() + " is " + names + ".", Hidden: CoinsAsk(p)},
	}
}

// CoinsLay tells how an amount of the problem is laid out.
func CoinsLay(p arithmetic.Problem, m arithmetic.LayMoney) Told {
	role, where := scene.First, "Lay out "
	if m.Nth == 1 {
		role, where = scene.Second, "Under it, lay out "
	}
	number := In(role, m.Number.String())
	t := Told{
		Title: "Lay out " + m.Number.String(),
		Ask:   Say("Which coins and bills make ", number, "?"),
		Hands: Say(where, number, ": "+coinList(m.Groups)+"."),
		Desc:  scene.Same(CoinsLies(m)),
	}
	if p.Story == arithmetic.Change {
		t.Title = "Pay with " + m.Number.String()
		t.Hands = Say("Lay out what you pay with, ", number, ": "+coinList(m.Groups)+".")
	}
	return t
}

// CoinsLies describes an amount laid out; the second may be as much as the first.
func CoinsLies(m arithmetic.LayMoney) string {
	where := " lies there as "
	if m.Nth > 0 {
		where = " lies with it as "
	}
	return m.Number.String() + where + coinList(m.Groups) + "."
}

// CoinsCount tells how coins of one kind are counted on.
func CoinsCount(m arithmetic.CountCoins) Told {
	var totals []string
	for _, n := range m.Totals {
		totals = append(totals, Price(n))
	}
	name := m.Group.Coin.Name(m.Group.Count != 1)
	start := "Count the " + name
	if m.From > 0 {
		start = "From " + Price(m.From) + ", count on with the " + name
	}
	return Told{
		Title: "Count the " + name,
		Ask:   Say("How much is it with the " + name + "?"),
		Hands: Say(start+": ", In(scene.Moved, strings.Join(totals, ", ")), "."),
		Desc:  scene.Same("Counted so far, with " + coinCount(m.Group) + ": " + Price(m.Totals[len(m.Totals)-1]) + "."),
	}
}

// CoinsUp tells how change is counted up to the next round amount.
func CoinsUp(m arithmetic.CountUp) Told {
	what := "the next round amount"
	if m.Paid {
		what = "what there is"
	}
	return Told{
		Title: "Count up to " + Price(m.To),
		Ask:   Say("What leads from " + Price(m.From) + " to " + what + "?"),
		Hands: Say("From "+Price(m.From)+", lay ", In(scene.Moved, coinList(m.Groups)), " and count up to "+Price(m.To)+"."),
		Desc:  scene.Same(coinsUp(m)),
	}
}

func coinsUp(m arithmetic.CountUp) string {
	lead := " lead up to "
	if len(m.Groups) == 1 && m.Groups[0].Count == 1 {
		lead = " leads up to "
	}
	return "From " + Price(m.From) + ", " + coinList(m.Groups) + lead + Price(m.To) + "."
}

// CoinsRead tells how much all of it is.
func CoinsRead(p arithmetic.Problem, m arithmetic.ReadMoney) Told {
	number := In(scene.Result, m.Number.String())
	t := Told{
		Title: "Read how much it is", Ask: Say("How much is it in all?"),
		Hands: Say("All of it is ", number, "."),
	}
	switch {
	case p.Kind == arithmetic.Subtraction:
		t.Title, t.Ask = "Count what was laid", Say("How much did you lay to count up?")
		t.Hands = Say("Put together what you laid to count up: ", number, ". "+p.Left.String()+" = ", number, ".")
		if p.Story == arithmetic.Change {
			t.Hands = Say("Put together what you laid to count up: ", number, ". That is the change.")
		}
	case p.Kind == arithmetic.Addition:
		t.Hands = Say("All of it is ", number, ": "+p.String()+" = ", number, ".")
	case m.Cents < 100:
		t.Hands = Say("All of it is ", In(scene.Result, Count(m.Cents, "cent")), ": ", number, ".")
	}
	t.Desc = scene.Telling{Shown: t.Hands.String(), Hidden: CoinsAsk(p)}
	return t
}

// CoinsAsk is what a picture asks while its answer is hidden.
func CoinsAsk(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.Coins:
		return "Which coins and bills make " + p.Left.String() + ", as few as can be?"
	case arithmetic.Subtraction:
		a, b, _ := p.Operands()
		if p.Story == arithmetic.Change {
			return "It costs " + b.String() + " and is paid with " + a.String() + ". How much comes back?"
		}
		return "Count up from " + b.String() + " to " + a.String() + ". How much is that?"
	case arithmetic.CoinsWorth:
		return "How much is that: " + arithmetic.CoinNames(p.List) + "?"
	}
	return "How much is " + p.Left.String() + "?"
}

// CoinsTold describes the whole story: what lies there, and what it comes to.
func CoinsTold(p arithmetic.Problem, moves []arithmetic.Move) string {
	var list []string
	for _, move := range moves {
		switch m := move.(type) {
		case arithmetic.LayMoney:
			list = append(list, CoinsLies(m))
		case arithmetic.CountUp:
			list = append(list, coinsUp(m))
		case arithmetic.TakeCoins:
			list = append(list, coinCount(m.Group)+" "+makeOrMakes(m.Group.Count)+" "+Price(m.Group.Worth)+".")
		case arithmetic.ReadMoney:
			switch p.Kind {
			case arithmetic.Coins:
				list = append(list, "Together they are "+m.Number.String()+".")
			case arithmetic.CoinsWorth:
				list = append(list, arithmetic.CoinNames(p.List)+" "+isOrAre(m.Count)+" "+m.Number.String()+".")
			case arithmetic.Subtraction:
				_, cost, _ := p.Operands()
				list = append(list, "From "+cost.String()+" that is "+m.Number.String()+" in all.")
			default:
				list = append(list, p.String()+" = "+m.Number.String()+".")
			}
		}
	}
	return Sentences(list...)
}

// CoinsTitle names the picture of a problem; answered is its equation.
func CoinsTitle(p arithmetic.Problem, coins []arithmetic.Number, answered string) scene.Telling {
	switch {
	case p.Kind == arithmetic.Coins:
		return scene.Telling{Shown: p.Left.String() + " is " + arithmetic.CoinNames(coins), Hidden: Asked(p)}
	case p.Kind == arithmetic.CoinsWorth:
		return scene.Telling{Shown: arithmetic.CoinNames(p.List) + " = " + answered, Hidden: Asked(p)}
	}
	return scene.Telling{Shown: answered, Hidden: Asked(p)}
}
