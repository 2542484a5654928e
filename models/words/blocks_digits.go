package words

import (
	"errors"
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// BlocksNoPlace says that a number has no digit in the place that is asked for.
var BlocksNoPlace = errors.New("the number has no digit in that place")

// BlocksExpanded tells how a number is written as the sum of what its digits are
// worth.
func BlocksExpanded(m arithmetic.WriteParts) (title string, hands, ask Phrase) {
	var sum []any
	for i, part := range m.Parts {
		if i > 0 {
			sum = append(sum, " + ")
		}
		sum = append(sum, In(scene.Result, arithmetic.Grouped(part)))
	}
	number := nth(0, m.Number)
	ask = Say("What is each digit of ", number, " worth?")
	rest := "."
	if strings.Contains(arithmetic.Grouped(m.Number), "0") && m.Number > 0 {
		rest = ". A 0 adds nothing, so it is left out."
	}
	return "Write what each digit is worth", Say("Write what the blocks of each place are worth: ", number, " = ", Say(sum...), rest), ask
}

// BlocksDescExpanded describes the pieces of a number that is written as a sum.
func BlocksDescExpanded(m arithmetic.ReadOff, top int, equation string) scene.Telling {
	pieces := "Base-ten blocks. " + arithmetic.Grouped(m.Number) + " is " + BlocksCounted(m.Counts, top) + "."
	return scene.Telling{Shown: pieces + " " + equation + ".", Hidden: pieces + " What is each digit worth?"}
}

// BlocksFindDigit tells where the digit that is asked for stands.
func BlocksFindDigit(m arithmetic.FindDigit) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	number, digit := nth(0, m.Number), In(scene.Moved, arithmetic.Grouped(m.Digit))
	title = "Find the " + name
	ask = Say("Which digit of ", number, " counts the "+name+"?")
	if m.Digit == 0 {
		return title, Say("Find the "+name+" digit of ", number, ". It is ", digit, ": no "+name+" lie there."), ask
	}
	return title, Say("Find the "+name+" digit of ", number, ". It is ", digit, ": point to the ", In(scene.Moved, pieces(m.Power, m.Digit)), "."), ask
}

// BlocksCountDigit tells how the pieces of a digit are counted.
func BlocksCountDigit(m arithmetic.CountDigit) (title string, hands, ask Phrase) {
	name := Place(m.Power, 2)
	worth := In(scene.Result, arithmetic.Grouped(m.Worth))
	ask = Say("What are the " + name + " worth together?")
	title = "Count what they are worth"
	switch {
	case m.Digit == 0:
		return "See what the 0 is worth", Say("There is nothing to count, so the 0 is worth ", worth, ". It keeps the place of the "+name+"."), ask
	case m.Digit == 1:
		return title, Say("There is "+pieces(m.Power, 1)+", so the digit is worth ", worth, "."), ask
	}
	var counted []string
	for _, total := range m.Totals {
		counted = append(counted, arithmetic.Grouped(total))
	}
	return title, Say("Count by "+arithmetic.Grouped(m.Each)+": "+strings.Join(counted, ", ")+". The digit is worth ", worth, "."), ask
}

// BlocksDescDigit describes the pieces of a number with those of one digit marked.
func BlocksDescDigit(laid arithmetic.LayOut, m arithmetic.FindDigit) string {
	mark := "Marked: " + pieces(m.Power, m.Digit) + "."
	if m.Digit == 0 {
		mark = "The empty place of the " + Place(m.Power, 2) + " is marked."
	}
	return BlocksDescLaid(laid) + " " + mark
}

// BlocksWorth says in a description what a digit is worth.
func BlocksWorth(m arithmetic.CountDigit) string {
	return "The " + Place(m.Power, 2) + " digit is worth " + arithmetic.Grouped(m.Worth) + "."
}

// BlocksHowMuch asks what the marked blocks are worth.
func BlocksHowMuch() string { return "How much are they worth?" }

// BlocksDigitTitle names the picture of what one digit is worth: "value of the
// hundreds digit in 3,456: 400".
func BlocksDigitTitle(p arithmetic.Problem, m arithmetic.CountDigit) string {
	return p.String() + ": " + arithmetic.Grouped(m.Worth)
}

// BlocksDigitWorth are the words of: In 3,456 the 4 is worth 400.
func BlocksDigitWorth() (in, the, is string) { return "In", "the", "is worth" }
