package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarAskApart asks for the pieces of an amount before it is taken apart.
func BarAskApart(n arithmetic.Number) Phrase {
	return Say("Which equal pieces is ", In(scene.First, n.String()), " made of?")
}

// BarUnitsTitle heads the step in which an amount is taken apart.
func BarUnitsTitle(m arithmetic.SplitUnits) string { return "Take it apart piece by piece" }

// BarUnits says which pieces an amount is made of.
func BarUnits(m arithmetic.SplitUnits) Phrase {
	return Say("Point to each piece and say what it is: " + barPieces(m.From) + ".")
}

// BarAskUnits asks for the number of addends.
func BarAskUnits(m arithmetic.SplitUnits) Phrase {
	return Say("How many pieces are there, and how large is each?")
}

// BarInTwoTitle heads the step in which the same amount is taken apart differently.
const BarInTwoTitle = "Take it apart another way"

// BarInTwo says into which two parts.
func BarInTwo(m arithmetic.SplitInTwo) Phrase {
	return Say("Lay a strip of the same length under it and cut it in two where pieces meet: ", In(scene.Result, BarAmount(m.First)), " and ", In(scene.Result, BarAmount(m.Second)), ".")
}

// BarAskInTwo asks for still other ways.
func BarAskInTwo() Phrase { return Say("In which other ways could you cut it in two?") }

// BarApartTitle is the title of a picture of an amount taken apart.
func BarApartTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: a.Number.String() + " = " + Answer(p, a), Hidden: Asked(p)}
}

// BarApartDesc says what a picture of an amount taken apart shows; other is what it is
// also taken apart in, or nil.
func BarApartDesc(p arithmetic.Problem, a arithmetic.Answer, m arithmetic.SplitUnits, apart bool, other *arithmetic.SplitInTwo) scene.Telling {
	n := a.Number.String()
	row := "A bar with its wholes marked. " + barLiesAs("On it is "+n, m.From)
	if !apart {
		return scene.Same(row)
	}
	shown := row + " It is taken apart: " + n + " = " + Answer(p, a) + "."
	if other != nil {
		shown += " Under it the same length is cut in two, " + BarAmount(other.First) + " and " + BarAmount(other.Second) + "."
	}
	return scene.Telling{Shown: shown, Hidden: row + " Which pieces is it made of?"}
}
