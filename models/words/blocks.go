package words

import (
	"errors"
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why base-ten blocks cannot show a problem.
var (
	BlocksWhole    = errors.New("base-ten blocks show whole numbers")
	BlocksLarge    = errors.New("base-ten blocks stop at 9,999: the largest block is the thousand")
	BlocksSum      = errors.New("the sum is more than 9,999, and the largest block is the thousand")
	BlocksNegative = errors.New("there are fewer blocks than are to be taken away")
	BlocksKind     = errors.New("base-ten blocks show whole numbers, and add, subtract, compare, multiply or share them")
)

// BlocksCounted lists the pieces of every place from the largest down: "4
// hundreds, no tens and 2 ones".
func BlocksCounted(c arithmetic.Counts, top int) string {
	var list []string
	for power := top; power >= 0; power-- {
		list = append(list, pieces(power, c[power]))
	}
	return List(list)
}

func pieces(power int, count int64) string { return Count(count, Place(power, 1)) }

// begin makes a sentence of words in lower case.
func begin(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// nth is a number of the problem in its role.
func nth(n int, number int64) Span {
	return In([...]scene.Role{scene.First, scene.Second}[n], arithmetic.Grouped(number))
}

// BlocksLayPlace tells how the pieces of one digit are laid out.
func BlocksLayPlace(m arithmetic.LayPlace) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	if m.Count == 0 {
		return "No " + name, Say("Lay nothing in the " + name + ". An empty place stays, and we write 0 for it."),
			Say("How many " + name + " are there?")
	}
	return "Lay out " + pieces(m.Power, m.Count),
		Say("Lay out ", In(scene.First, pieces(m.Power, m.Count)), ": "+arithmetic.Grouped(m.Worth)+"."),
		Say("How many " + name + " are there?")
}

// BlocksShown tells how a number is read off its pieces.
func BlocksShown(m arithmetic.ReadOff) (title string, hands, ask Phrase) {
	return "Read the number",
		Say("Read what lies there, from the left: "+BlocksCounted(m.Counts, m.Counts.Top())+". That is ",
			In(scene.First, arithmetic.Grouped(m.Number)), ", "+Name(m.Number)+"."),
		Say("Which number is it?")
}

// BlocksLayOut tells how a number of the problem is laid out; the second one
// lies under the first.
func BlocksLayOut(m arithmetic.LayOut) (title string, hands, ask Phrase) {
	number := nth(m.Nth, m.Number)
	title = "Lay out " + number.Text
	ask = Say("Which pieces make ", number, "?")
	if m.Number == 0 {
		return title, Say("Lay out no pieces for ", number, "."), ask
	}
	where := "Lay out "
	if m.Nth == 1 {
		where = "Under it, lay out "
	}
	return title, Say(where, number, ": "+BlocksCounted(m.Counts, m.Counts.Top())+"."), ask
}

// BlocksJoin tells how the pieces of one place come together.
func BlocksJoin(m arithmetic.JoinPlace) (title string, hands, ask Phrase) {
	one, name := Place(m.Power, 1), Place(m.Power, 2)
	title = "Join the " + name
	ask = Say("How many " + name + " are there in all?")
	carried := In(scene.Result, "the new "+one)
	sum := In(scene.Moved, pieces(m.Power, m.Sum))
	switch {
	case m.Sum == 0:
		return title, Say("There are no " + name + " to join. The place stays empty."), ask
	case m.First+m.Second == 0:
		return title, Say("Only ", carried, " lies in the "+name+"."), ask
	}
	both := []any{"Push the " + name + " together: "}
	switch {
	case m.First == 0:
		both = append(both, In(scene.Second, pieces(m.Power, m.Second)))
	case m.Second == 0:
		both = append(both, In(scene.First, pieces(m.Power, m.First)))
	case m.Carried > 0:
		both = append(both, In(scene.First, pieces(m.Power, m.First)), ", ", In(scene.Second, pieces(m.Power, m.Second)))
	default:
		both = append(both, In(scene.First, pieces(m.Power, m.First)), " and ", In(scene.Second, pieces(m.Power, m.Second)))
	}
	switch {
	case m.Carried > 0:
		both = append(both, " and ", carried, " make ", sum, ".")
	case m.First == 0 || m.Second == 0:
		both = append(both, ", and none to add.")
	default:
		both = append(both, " make ", sum, ".")
	}
	return title, Say(both...), ask
}

// BlocksTradeUp tells how ten pieces become one of the next place.
func BlocksTradeUp(m arithmetic.TradeUp) (title string, hands, ask Phrase) {
	ten, one := pieces(m.From, 10), pieces(m.From+1, 1)
	return "Trade " + ten + " for " + one,
		Say("Trade "+ten+" for ", In(scene.Moved, one), ". "+stays(m.From, m.Left)),
		Say("Are there enough " + Place(m.From, 2) + " to make a " + Place(m.From+1, 1) + "?")
}

func stays(power int, left int64) string {
	if left == 1 {
		return "1 " + Place(power, 1) + " stays."
	}
	return begin(pieces(power, left)) + " stay."
}

// BlocksTradeDown tells how one piece becomes ten of the place below. from is
// the number laid out: a trade does not change it. again says that the trade
// before it served the same place.
func BlocksTradeDown(m arithmetic.TradeDown, from int64, again bool) (title string, hands, ask Phrase) {
	one, ten := pieces(m.From, 1), pieces(m.From-1, 10)
	short := Place(m.Short, 2)
	title = "Trade " + one + " for " + ten
	ask = Say("Can we take ", In(scene.Second, pieces(m.Short, m.Need)), " from "+pieces(m.Short, m.Have)+"?")
	trade := Say("Trade "+one+" for ", In(scene.Moved, ten), ".")
	switch {
	case again && m.From == m.Short+1:
		ask = Say("Can we make " + short + " now?")
	case again:
		ask = Say("What do we trade next?")
	case m.From > m.Short+1:
		var none []string
		for power := m.From - 1; power > m.Short; power-- {
			none = append(none, Place(power, 2))
		}
		trade = Say("There are too few "+short+", and no "+strings.Join(none, " or ")+" to trade. ", trade)
	default:
		trade = Say("There are too few "+short+". ", trade)
	}
	return title, Say(trade, " It is still ", nth(0, from), "."), ask
}

// BlocksTake tells how pieces of one place are taken away.
func BlocksTake(m arithmetic.TakePlace) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	ask = Say("How many " + name + " stay?")
	if m.Count == 0 {
		return "No " + name + " to take away", Say("There are no " + name + " to take away. " + stays(m.Power, m.Left)), ask
	}
	return "Take away " + pieces(m.Power, m.Count),
		Say("Take away ", In(scene.Second, pieces(m.Power, m.Count)), " from "+pieces(m.Power, m.From)+". "+stays(m.Power, m.Left)), ask
}

// BlocksRead tells how the answer is read off the pieces on the table.
func BlocksRead(p arithmetic.Problem, m arithmetic.ReadOff) (title string, hands, ask Phrase) {
	title, ask = "Read the answer", Say("Which number is it now?")
	answer := In(scene.Result, arithmetic.Grouped(m.Number))
	if m.Number == 0 {
		return title, Say("Nothing lies there: "+p.String()+" = ", answer, "."), ask
	}
	return title, Say("Read what lies there: "+BlocksCounted(m.Counts, m.Counts.Top())+". "+p.String()+" = ", answer, "."), ask
}

// BlocksCompare tells how the pieces of one place are compared. more says that
// there is a place to go on with.
func BlocksCompare(m arithmetic.ComparePlace, more bool) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	title = "Compare the " + name
	ask = Say("Which number has more " + name + ", or are they the same?")
	first, second := In(scene.First, pieces(m.Power, m.First)), In(scene.Second, pieces(m.Power, m.Second))
	switch {
	case m.Relation != arithmetic.Equal:
		return title, Say("Look at the "+name+": ", differ(m), ". No need to look further."), ask
	case more:
		return title, Say("Look at the "+name+": ", first, " and ", second, ". They are the same, so go on to the next place."), ask
	}
	return title, Say("Look at the "+name+": ", first, " and ", second, ". They are the same, and so was every place."), ask
}

// BlocksSign tells which sign stands between the two numbers.
func BlocksSign(m arithmetic.WriteSign) (title string, hands, ask Phrase) {
	return "Write the sign", Say("Write ", signed(m), ": ", related(m), "."), Say("Which sign goes between them?")
}

func signed(m arithmetic.WriteSign) Phrase {
	return Say(nth(0, m.First), " ", In(scene.Result, m.Relation.String()), " ", nth(1, m.Second))
}

func related(m arithmetic.WriteSign) Phrase {
	middle := map[arithmetic.Relation]string{
		arithmetic.Less: " is less than ", arithmetic.Greater: " is more than ", arithmetic.Equal: " is the same as ",
	}[m.Relation]
	return Say(nth(0, m.First), middle, nth(1, m.Second))
}

// BlocksWhy says why a comparison comes out as it does, from the last place
// that was compared.
func BlocksWhy(m arithmetic.WriteSign, last arithmetic.ComparePlace, top int) Phrase {
	if m.Relation == arithmetic.Equal {
		return Say(related(m), ": they have the same digit in every place.")
	}
	var same []string
	for power := top; power > last.Power; power-- {
		same = append(same, Place(power, 2))
	}
	lead := ": "
	if len(same) > 0 {
		lead = ": the " + List(same) + " are the same, and "
	}
	return Say(related(m), lead, differ(last), ".")
}

// differ says which of two digits is more: 4 tens are fewer than 7 tens.
func differ(m arithmetic.ComparePlace) Phrase {
	than := " fewer than "
	if m.Relation == arithmetic.Greater {
		than = " more than "
	}
	are := " are"
	if m.First == 1 {
		are = " is"
	}
	return Say(In(scene.First, pieces(m.Power, m.First)), are+than, In(scene.Second, pieces(m.Power, m.Second)))
}
