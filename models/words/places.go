package words

import (
	"errors"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why a place-value table cannot show a problem.
var (
	PlacesWhole    = errors.New("a place-value table shows whole numbers")
	PlacesLarge    = errors.New("a place-value table stops at 9,999,999: the largest column is that of the millions")
	PlacesSum      = errors.New("the sum is more than 9,999,999, and the largest column is that of the millions")
	PlacesNegative = errors.New("there is less than is to be taken away")
	PlacesSmall    = errors.New("a place-value table compares numbers above 20")
	PlacesKind     = errors.New("a place-value table shows a whole number, and adds, subtracts or compares two of them")

	PlacesShiftKind = errors.New("a place-value table multiplies and divides by 10, 100 and 1,000, and multiplies up to 9,999 by one digit")
	PlacesShiftNone = errors.New("there are no counters to move for 0")
	PlacesUneven    = errors.New("a counter would leave the table on the right: the last digits are not 0")
	PlacesProduct   = errors.New("the product is more than 9,999,999, and the largest column is that of the millions")
)

// Period is the name of a group of three places, from the right: ones, thousands,
// millions.
func Period(n int) string { return [...]string{"ones", "thousands", "millions"}[n] }

// PlacesSheet is the sheet that the counters lie on.
func PlacesSheet(columns int) string {
	return "sheet of paper ruled in " + strconv.Itoa(columns) + " " + plural("column", int64(columns))
}

// column is where the counters of a place lie.
func column(power int) string { return "the " + Place(power, 2) + " column" }

// PlacesLayPlace tells how the counters of one digit are laid out.
func PlacesLayPlace(m arithmetic.LayPlace) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	ask = Say("How many " + name + " are there?")
	if m.Count == 0 {
		return "No " + name, Say("Leave " + column(m.Power) + " empty. We write 0 for it, so that every other digit keeps its place."), ask
	}
	return "Lay out " + pieces(m.Power, m.Count),
		Say("Put ", In(scene.First, Count(m.Count, "counter")), " in "+column(m.Power)+": "+arithmetic.Grouped(m.Worth)+"."), ask
}

// PlacesShown tells how a number is read off the table.
func PlacesShown(m arithmetic.ReadOff) (title string, hands, ask Phrase) {
	return "Read the number",
		Say("Read the columns from the left. They say ", In(scene.First, arithmetic.Grouped(m.Number)), ": "+Name(m.Number)+"."),
		Say("Which number is it?")
}

// PlacesLayOut tells how a number of the problem is laid out; the second one lies
// under the first.
func PlacesLayOut(m arithmetic.LayOut) (title string, hands, ask Phrase) {
	number := nth(m.Nth, m.Number)
	title = "Lay out " + number.Text
	ask = Say("How many counters go in each column for ", number, "?")
	if m.Number == 0 {
		return title, Say("Put no counters for ", number, "."), ask
	}
	where := "Put counters for "
	if m.Nth == 1 {
		where = "Under them, put counters for "
	}
	return title, Say(where, number, ": "+BlocksCounted(m.Counts, m.Counts.Top())+"."), ask
}

// PlacesTradeUp tells how ten counters become one in the next column.
func PlacesTradeUp(m arithmetic.TradeUp) (title string, hands, ask Phrase) {
	ten, one := pieces(m.From, 10), pieces(m.From+1, 1)
	return "Trade " + ten + " for " + one,
		Say("Take 10 counters out of "+column(m.From)+" and put ", In(scene.Moved, "1 counter"), " in "+column(m.From+1)+": "+ten+" are "+one+". "+stays(m.From, m.Left)),
		Say("Are there enough " + Place(m.From, 2) + " to make 1 " + Place(m.From+1, 1) + "?")
}

// PlacesTradeDown tells how one counter becomes ten in the column on its right.
// from is the number laid out: a trade does not change it. again says that the
// trade before it served the same place.
func PlacesTradeDown(m arithmetic.TradeDown, from int64, again bool) (title string, hands, ask Phrase) {
	title, _, ask = BlocksTradeDown(m, from, again)
	short := Place(m.Short, 2)
	why := ""
	switch {
	case again:
	case m.From > m.Short+1:
		var none []string
		for power := m.From - 1; power > m.Short; power-- {
			none = append(none, Place(power, 2))
		}
		why = "There are too few " + short + ", and no " + strings.Join(none, " or ") + " to trade. "
	default:
		why = "There are too few " + short + ". "
	}
	return title, Say(why+"Take 1 counter out of "+column(m.From)+" and put ", In(scene.Moved, "10 counters"), " in "+column(m.From-1)+
		": "+pieces(m.From, 1)+" is "+pieces(m.From-1, 10)+". It is still ", nth(0, from), "."), ask
}

// EqualAddition links a trade with its other writing, in which ten more in one
// place of the first number goes with one more in the next place of the second.
func EqualAddition(m arithmetic.TradeDown) Phrase {
	return Say("Write +10 over the " + Place(m.From-1, 2) + " of the first number, and +1 under the " + Place(m.From, 2) +
		" of the second. That 1 is the " + Place(m.From, 1) + " that was traded.")
}

// PlacesQuestion is what a picture asks in place of the number that it shows.
func PlacesQuestion() string { return "Which number is it?" }

// PlacesDescShow describes the counters of one number.
func PlacesDescShow(c arithmetic.Counts, top int) scene.Telling {
	counted := "Place-value table: " + BlocksCounted(c, top) + "."
	return scene.Telling{
		Shown:  counted + " Together they are " + arithmetic.Grouped(c.Total()) + ".",
		Hidden: counted + " " + PlacesQuestion(),
	}
}

// PlacesDescLaying describes a number of which the places down to one are laid out.
func PlacesDescLaying(c arithmetic.Counts, top, lowest int) string {
	var list []string
	for power := top; power >= lowest; power-- {
		list = append(list, pieces(power, c[power]))
	}
	return "Place-value table so far: " + List(list) + "."
}

// PlacesDescOn describes the counters that lie on the table.
func PlacesDescOn(c arithmetic.Counts, top int) string {
	return "Counters in the columns: " + BlocksCounted(c, top) + "."
}

// PlacesDescLaid describes one number laid out.
func PlacesDescLaid(m arithmetic.LayOut) string { return "Place-value table. " + inColumns(m) + "." }

// PlacesDescTwo describes two numbers laid out, one above the other.
func PlacesDescTwo(a, b arithmetic.LayOut) string {
	return "Place-value table with two rows of counters. " + inColumns(a) + ". Under it " + inColumns(b) + "."
}

func inColumns(m arithmetic.LayOut) string {
	if m.Number == 0 {
		return "0 has no counters"
	}
	return arithmetic.Grouped(m.Number) + " is " + BlocksCounted(m.Counts, m.Counts.Top())
}

// PlacesCrossed says in a description which counters are crossed out.
func PlacesCrossed(c arithmetic.Counts) string {
	return "Crossed out: " + BlocksCounted(c, c.Top()) + ", together " + arithmetic.Grouped(c.Total()) + "."
}
