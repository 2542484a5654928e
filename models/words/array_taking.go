package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayTaking is a difference with an array in it: what is laid out, what is taken
// away, and the product that is counted, before or after. Thing is empty where
// nothing is laid out but sketched.
type ArrayTaking struct {
	Problem arithmetic.Problem
	Lay     arithmetic.LayLines
	Take    arithmetic.TakeLines
	Term    arithmetic.CountTerm
	First   bool // the product is counted before
	Thing   string
}

// laid is "10 rows of 7", or "5 rows of 4 and 3 more".
func (a ArrayTaking) laid() string {
	rows := rowsOf(a.Lay.Rows, a.Lay.Cols)
	if a.Lay.Rest > 0 {
		return rows + " and " + g(a.Lay.Rest) + " more"
	}
	return rows
}

// lines is what is taken away: "1 row of 7", "2 in each row", "5".
func (a ArrayTaking) lines() string {
	switch a.Take.Lines {
	case arithmetic.LastCols:
		return g(a.Take.Count) + " from each row"
	case arithmetic.LastOnes:
		return g(a.Take.Each)
	}
	return rowsOf(a.Take.Count, a.Take.Each)
}

// Laid says how to lay out what something will be taken from.
func (a ArrayTaking) Laid() (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Lay out the rows", Say("How many rows are there? How many are in each row?")
	lay := "Lay out "
	if a.Thing != Counters {
		title, lay = "Outline the rows", "On squared paper, outline "
	}
	desc = scene.Same("An array: " + a.laid() + ".")
	switch {
	case a.Problem.Kind == arithmetic.Product && a.Take.Lines == arithmetic.LastRows:
		hands = Say(lay + rowsOf(a.Lay.Rows, a.Lay.Cols) + ": one row more than you need, since tens are easy.")
		ask = Say("Which is easier to count, " + Count(a.Take.Kept, "row") + " or " + Count(a.Lay.Rows, "row") + "?")
	case a.Problem.Kind == arithmetic.Product:
		hands = Say(lay + rowsOf(a.Lay.Rows, a.Lay.Cols) + ": one more in each row than you need, since tens are easy.")
		ask = Say("Which is easier to count, rows of " + g(a.Take.Kept) + " or rows of " + g(a.Lay.Cols) + "?")
	case a.Take.Lines == arithmetic.FirstRows:
		hands = Say(lay + g(a.Lay.Total) + " in rows of " + g(a.Lay.Cols) + ": that makes " + a.laid() + ".")
		ask = Say("Why are rows of " + g(a.Lay.Cols) + " a good choice here?")
	default:
		hands = Say(lay + a.laid() + ".")
	}
	return title, hands, ask, desc
}

// Counted says how to count the product; gone is set when something has been taken
// away before.
func (a ArrayTaking) Counted(gone bool) (title string, hands, ask Phrase, desc scene.Telling) {
	title = g(a.Term.Rows) + " × " + g(a.Term.Cols)
	ask = Say("How many are in " + rowsOf(a.Term.Rows, a.Term.Cols) + "?")
	role, say := scene.First, "Multiply first: "
	switch {
	case gone:
		role, say = scene.Result, "Count what is left: "
	case a.Take.Lines == arithmetic.FirstRows:
		role, say = scene.Second, "Multiply first. Mark the rows that will go: "
	case a.Problem.Kind == arithmetic.Product:
		say = "Count by tens: "
	}
	hands = Say(say+rowsAre(a.Term.Rows, a.Term.Cols), In(role, g(a.Term.Total)), ".")
	all := "An array: " + a.laid() + ". " + capital(rowsAre(a.Term.Rows, a.Term.Cols)) + g(a.Term.Total) + "."
	if gone {
		return title, hands, ask, a.Story()
	}
	return title, hands, ask, scene.Telling{Shown: all, Hidden: "An array: " + a.laid() + ". How many are in " + rowsOf(a.Term.Rows, a.Term.Cols) + "?"}
}

// Taken says what to take away; counted is set when the product has been counted.
func (a ArrayTaking) Taken(counted bool) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Take away "+a.lines(), Say("How many are left?")
	hands = Say("Take away ", In(scene.Gone, a.lines()), ".")
	if !counted {
		hands = Say("Brackets first. ", hands)
		if a.Take.Lines == arithmetic.LastCols {
			hands = Say(hands, " That leaves "+g(a.Take.Kept)+" in each row.")
			ask = Say("How many are left in each row?")
			title = "Take away " + g(a.Take.Count) + " in each row"
		} else {
			hands = Say(hands, " That leaves "+Count(a.Take.Kept, "row")+".")
			ask = Say("How many rows are left?")
		}
		shown := "An array: " + a.laid() + ". Taken away: " + a.lines() + "."
		return title, hands, ask, scene.Same(shown)
	}
	hands = Say(hands, " From "+g(a.Take.Before)+" take "+g(a.Take.Taken)+": ", In(scene.Result, g(a.Take.Left)), areLeft(a.Take.Left))
	return title, hands, ask, a.Story()
}

// areLeft ends a sentence about what is left.
func areLeft(n int64) string {
	if n == 1 {
		return " is left."
	}
	return " are left."
}

// Story describes the whole story.
func (a ArrayTaking) Story() scene.Telling {
	start := a.Problem.Left.String() + ": an array, " + a.laid() + ", with " + a.lines() + " taken away."
	said := " " + capital(rowsAre(a.Term.Rows, a.Term.Cols)) + g(a.Term.Total) + "."
	if a.First {
		said += " " + g(a.Take.Before) + " less " + g(a.Take.Taken) + " is " + g(a.Take.Left) + "."
	}
	return scene.Telling{Shown: start + said, Hidden: start + " How many are left?"}
}
