package words

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// ArrayEqualRows says how to share an amount in as many rows as the denominator
// of f says. Thing is empty in a sketch.
func ArrayEqualRows(f fraction.Fraction, m arithmetic.SetOut, each int64, thing string) (title string, hands, ask Phrase, desc scene.Telling) {
	all := g(m.Total)
	if thing != "" {
		all = Count(m.Total, thing)
	}
	hands = Say("Share " + all + " out in " + Count(m.Side, "equal row") + ".")
	if thing == "" {
		hands = Say("Sketch " + Count(m.Side, "equal row") + " and share " + all + " out among them.")
	}
	ask = Say("What does the " + g(f.Den()) + " below the bar tell you to do?")
	desc.Shown = g(m.Total) + " in " + Count(m.Side, "equal row") + ", " + g(each) + " in each."
	desc.Hidden = g(m.Total) + " in " + Count(m.Side, "equal row") + "."
	return "Make equal rows", hands, ask, desc
}

// ArrayMark says how to mark the rows that are asked for.
func ArrayMark(f fraction.Fraction, set arithmetic.SetOut, m arithmetic.MarkRows) (title string, hands, ask Phrase, desc scene.Telling) {
	title = "Mark " + Count(m.Rows, "row")
	hands = Say("Mark "+Count(m.Rows, "row")+": that is ", In(scene.Result, g(m.Sum)), ".")
	ask = Say("How many rows does the " + g(f.Num()) + " above the bar ask for? How many are in them?")
	rows := g(set.Total) + " in " + Count(set.Side, "equal row")
	of := f.String() + " of " + g(set.Total)
	marked, is := "None of them", "is"
	switch {
	case m.Rows == 1:
		marked = "One of them"
	case m.Rows > 1:
		marked, is = capital(Name(m.Rows))+" of them", "are"
	}
	desc.Shown = rows + ", " + g(m.Each) + " in each. " + marked + " " + is + " marked: " + of + " is " + g(m.Sum) + "."
	desc.Hidden = rows + ". " + marked + " " + is + " marked. What is " + of + "?"
	return title, hands, ask, desc
}
