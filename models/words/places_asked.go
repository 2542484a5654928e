package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// PlacesExpanded tells how a number is written as the sum of what its digits are
// worth.
func PlacesExpanded(m arithmetic.WriteParts) (title string, hands, ask Phrase) {
	title, hands, ask = BlocksExpanded(m)
	for i, span := range hands {
		hands[i].Text = strings.Replace(span.Text, "what the blocks of each place are worth", "what the counters of each column are worth", 1)
	}
	return title, hands, ask
}

// PlacesDescExpanded describes a number that is written as a sum.
func PlacesDescExpanded(m arithmetic.WriteParts, top int, equation string) scene.Telling {
	counted := "Place-value table. " + arithmetic.Grouped(m.Number) + " is " + BlocksCounted(m.Counts, top) + "."
	return scene.Telling{Shown: counted + " " + equation + ".", Hidden: counted + " What is each digit worth?"}
}

// PlacesFindDigit tells where the digit that is asked for stands.
func PlacesFindDigit(m arithmetic.FindDigit) (title string, hands, ask Phrase) {
	title, _, ask = BlocksFindDigit(m)
	digit := In(scene.Moved, arithmetic.Grouped(m.Digit))
	if m.Digit == 0 {
		return title, Say("Find "+column(m.Power)+". It is empty: the digit is ", digit, "."), ask
	}
	return title, Say("Find "+column(m.Power)+" and count: ", In(scene.Moved, Count(m.Digit, "counter")), ", so the digit is ", digit, "."), ask
}

// PlacesBeside tells how a place stands to the next one.
func PlacesBeside(m arithmetic.LookBeside) (title string, hands, ask Phrase) {
	worth := In(scene.Result, arithmetic.Grouped(m.Worth))
	other := arithmetic.Grouped(m.BesideWorth)
	side := "right"
	if m.Beside > m.Power {
		side = "left"
	}
	digit := arithmetic.Grouped(m.Digit)
	title = "Look at the place beside it"
	ask = Say("What would the digit " + digit + " be worth one column to the " + side + "?")
	would := Say("One column to the " + side + ", in the " + Place(m.Beside, 2) + ", the " + digit + " would be worth " + other + ". ")
	if m.Beside > m.Power {
		return title, Say(would, "That is 10 times as much as ", worth, "."), ask
	}
	return title, Say(would, "Here it is worth 10 times as much: ", worth, "."), ask
}

// PlacesTenTimes stands at the arrow from a place to the next larger one.
func PlacesTenTimes() string { return "10 times" }

// PlacesDescDigit describes a number with the column of one digit marked.
func PlacesDescDigit(laid arithmetic.LayOut, m arithmetic.FindDigit) string {
	mark := "The " + Place(m.Power, 2) + " column is marked: " + pieces(m.Power, m.Digit) + "."
	return Sentences(PlacesDescLaid(laid), mark)
}

// PlacesDescBeside says in a description how two places stand to each other.
func PlacesDescBeside(m arithmetic.LookBeside) string {
	small, large := min(m.Power, m.Beside), max(m.Power, m.Beside)
	return "An arrow goes from the " + Place(small, 2) + " to the " + Place(large, 2) + ": " + pieces(large, 1) + " is 10 times as much as " + pieces(small, 1) + "."
}

// PlacesHowMuch asks what the marked counters are worth.
func PlacesHowMuch() string { return "How much are they worth?" }

// PeriodSaid is how the number of a period is said: four million, three hundred
// five. Three zeros are not said.
func PeriodSaid(m arithmetic.SayPeriod) string {
	if m.Number == 0 && !m.First {
		return "(nothing to say)"
	}
	return Name(m.Worth)
}

// PlacesSayPeriod tells how a period is said.
func PlacesSayPeriod(m arithmetic.SayPeriod) (title string, hands, ask Phrase) {
	name := Period(m.Nth)
	title = "Say the " + name
	ask = Say("Which number do the digits of the " + name + " make?")
	where := "Go on to the " + name
	if m.First {
		where = "Begin at the left, with the " + name
	}
	switch {
	case m.Number == 0 && m.First:
		return title, Say("Nothing lies there, and we say ", In(scene.Moved, Name(0)), "."), ask
	case m.Number == 0:
		return title, Say(where + ". There are none, so say nothing."), ask
	}
	return title, Say(where+": ", In(scene.First, arithmetic.Grouped(m.Number)), ". Say ", In(scene.Moved, "“"+Name(m.Worth)+"”"), "."), ask
}

// PlacesSaid tells how the whole number is said.
func PlacesSaid(m arithmetic.ReadOff) (title string, hands, ask Phrase) {
	return "Say the whole number", Say("Say it from the left: ", In(scene.Result, "“"+Name(m.Number)+"”"), "."), Say("How do you say ", nth(0, m.Number), "?")
}

// PlacesSaidTitle names the picture of a number in words.
func PlacesSaidTitle(n int64) string { return arithmetic.Grouped(n) + ": " + Name(n) }

// PlacesDescPeriod says in a description how a period is said.
func PlacesDescPeriod(m arithmetic.SayPeriod) string {
	if m.Number == 0 {
		return "There are no " + Period(m.Nth) + " to say."
	}
	return "The " + Period(m.Nth) + " are said “" + Name(m.Worth) + "”."
}

// PlacesDescSaid says in a description how a number is said.
func PlacesDescSaid(n int64) string { return arithmetic.Grouped(n) + " is said “" + Name(n) + "”." }

// PlacesHowSaid asks for the name of a number.
func PlacesHowSaid() string { return "How do you say it?" }

// PlacesOnly says which column a sum or difference has changed.
func PlacesOnly(power int) Phrase { return Say(" Only " + column(power) + " has changed.") }
