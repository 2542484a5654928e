package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// PlacesRows tells how a number is laid out several times. Where the first factor
// is the number, its rows are turned: 347 × 6 is as much as 6 × 347.
func PlacesRows(p arithmetic.Problem, m arithmetic.RepeatRows) (title string, hands, ask Phrase) {
	rows := Count(m.Times, "row")
	turned := ""
	if nth, _, _, ok := arithmetic.TimesDigit(p); ok && nth == 0 {
		turned = p.String() + " is as much as " + arithmetic.Grouped(m.Times) + " × " + arithmetic.Grouped(m.Number) + ". "
	}
	return "Lay out " + rows,
		Say(turned+"Lay out the same row again under it, until there are ", In(scene.Moved, rows), " of "+arithmetic.Grouped(m.Number)+"."),
		Say("How many rows of " + arithmetic.Grouped(m.Number) + " do we need?")
}

// PlacesCountRows tells how the rows of one place are counted.
func PlacesCountRows(m arithmetic.CountPlaceRows) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	title = "Count the " + name
	ask = Say("How many " + name + " are there in all?")
	total := In(scene.Moved, pieces(m.Power, m.Total))
	if m.Rows == 0 && m.Carried == 0 {
		return title, Say("There are no " + name + " in the rows. The place stays empty."), ask
	}
	rows := rowsOf(m.Times, m.Digit) + " " + Place(m.Power, m.Digit)
	switch {
	case m.Carried == 0:
		return title, Say("Count the "+name+": "+rows+" are ", total, "."), ask
	case m.Rows == 0:
		return title, Say("There are no "+name+" in the rows, only the ", In(scene.Result, pieces(m.Power, m.Carried)), " from the trade."), ask
	}
	return title, Say("Count the "+name+": "+rows+" are "+pieces(m.Power, m.Rows)+", and ", In(scene.Result, arithmetic.Grouped(m.Carried)+" more"), " from the trade make ", total, "."), ask
}

// PlacesTradeTens tells how every ten counters of a column become one in the next.
func PlacesTradeTens(m arithmetic.TradeTensUp) (title string, hands, ask Phrase) {
	gone, come := pieces(m.From, m.Gone), pieces(m.From+1, m.Tens)
	are := " are "
	return "Trade " + gone + " for " + come,
		Say("Take "+Count(m.Gone, "counter")+" out of "+column(m.From)+" and put ", In(scene.Moved, Count(m.Tens, "counter")), " in "+column(m.From+1)+": "+gone+are+come+". "+stays(m.From, m.Left)),
		Say("How many tens of " + Place(m.From, 2) + " can we trade?")
}

// PlacesTraded says in a description what a trade gave for what.
func PlacesTraded(m arithmetic.TradeTensUp) string {
	return pieces(m.From, m.Gone) + " are traded for " + pieces(m.From+1, m.Tens) + "."
}

// PlacesDescRows describes a number laid out in rows.
func PlacesDescRows(m arithmetic.RepeatRows) string {
	return "Place-value table with " + rowsOf(m.Times, m.Number) + ". Each row is " + BlocksCounted(m.Row, m.Row.Top()) + "."
}

// PlacesDescCounted says in a description how many counters one place holds.
func PlacesDescCounted(m arithmetic.CountPlaceRows) string {
	return "In the " + Place(m.Power, 2) + ", " + rowsOf(m.Times, m.Digit) + " and " + arithmetic.Grouped(m.Carried) + " from a trade make " + arithmetic.Grouped(m.Total) + "."
}
