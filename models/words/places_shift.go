package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// PlacesLayOnly tells how the number is laid out that will move.
func PlacesLayOnly(m arithmetic.LayOut) Phrase {
	return Say("Put counters for ", nth(m.Nth, m.Number), ": "+BlocksCounted(m.Counts, m.Counts.Top())+".")
}

// PlacesShift tells how all counters move one column on.
func PlacesShift(m arithmetic.ShiftPlaces) (title string, hands, ask Phrase) {
	side, much := "left", "10 times as much"
	if m.Right {
		side, much = "right", "a tenth as much"
	}
	again := ""
	if m.Nth > 1 {
		again = " again"
	}
	return "Move one column to the " + side + again,
		Say("Move every counter one column to the "+side+again+". Each is now worth "+much+": "+arithmetic.Grouped(m.From)+" becomes ", In(scene.Moved, arithmetic.Grouped(m.To)), "."),
		Say("What is a counter worth one column to the " + side + "?")
}

// PlacesReadShifted tells how the number is read off the table.
func PlacesReadShifted(p arithmetic.Problem, m arithmetic.ReadOff) (title string, hands, ask Phrase) {
	zeros := " Write 0 for every empty column."
	if p.Kind == arithmetic.Division {
		zeros = ""
	}
	return "Read the answer", Say("Read the columns: "+p.String()+" = ", In(scene.Result, arithmetic.Grouped(m.Number)), "."+zeros), Say("Which number is it now?")
}

// PlacesDescShift describes a number before and after a move.
func PlacesDescShift(m arithmetic.ShiftPlaces, top int) string {
	return "Place-value table with two rows of counters. Above, " + arithmetic.Grouped(m.From) + ": " + BlocksCounted(m.Before, top) + ". Below, every counter one column to the " + sideOf(m) +
		": " + BlocksCounted(m.After, top) + ", which is " + arithmetic.Grouped(m.To) + "."
}

func sideOf(m arithmetic.ShiftPlaces) string {
	if m.Right {
		return "right"
	}
	return "left"
}

// PlacesDescShifted describes the whole story of a number that moves.
func PlacesDescShifted(laid arithmetic.LayOut, shifts []arithmetic.ShiftPlaces, read arithmetic.ReadOff, p arithmetic.Problem) string {
	far := "one column"
	if n := len(shifts); n > 1 {
		far = Name(int64(n)) + " columns"
	}
	return PlacesDescLaid(laid) + " For " + p.String() + " every counter goes " + far + " to the " + sideOf(shifts[0]) + ": " + BlocksCounted(read.Counts, read.Counts.Top()) +
		", which is " + arithmetic.Grouped(read.Number) + "."
}

// PlacesHowShifted asks for a product or quotient.
func PlacesHowShifted(p arithmetic.Problem) string { return "Which number is " + p.String() + "?" }
