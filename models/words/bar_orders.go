package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarLayAll says that every number of a list gets a bar.
func BarLayAll(list []arithmetic.Number) Phrase {
	names := make([]string, len(list))
	for i, n := range list {
		names[i] = n.String()
	}
	return Say("Lay strips of one length under each other, a row for each number. Shade ", In(scene.First, List(names)), ".")
}

// BarAskLayAll asks for a guess.
func BarAskLayAll() Phrase { return Say("Which number do you think is the least?") }

// BarCutAllTitle heads the step in which all parts are made the same.
func BarCutAllTitle(m arithmetic.CutAll) string { return "Cut all into " + Parts(m.Den, 2) }

// BarCutAll says that all numbers are counted in the same parts.
func BarCutAll(m arithmetic.CutAll) Phrase {
	return Say("Cut the parts of every strip finer until all are " + Parts(m.Den, 2) + ". The shaded lengths stay the same.")
}

// BarAskCutAll asks for the common part.
func BarAskCutAll(m arithmetic.CutAll) Phrase {
	return Say("Which part fits into all of them?")
}

// BarSort says that the bars are put in order.
func BarSort(order []arithmetic.Number, sameCount bool) Phrase {
	return Say("Put the shortest shaded length on top, then the next, down to the longest: ", In(scene.Result, chain(order)), ".")
}

// BarAskSort asks for the order.
func BarAskSort() Phrase { return Say("Which shaded length is the shortest? Which comes next?") }

// BarOrderWhy says why a list is in that order: by the counts of equal parts, or
// by the size of parts of equal count.
func BarOrderWhy(order []arithmetic.Number, strips []arithmetic.Strips, m arithmetic.SortByLength) Phrase {
	if m.SameCount {
		return Say("All have "+Count(strips[0].Part.Num(), "part")+"; the fewer parts a whole is cut into, the larger each is: ", In(scene.Result, chain(order)), ".")
	}
	counts := make([]string, len(m.Order))
	for i, at := range m.Order {
		counts[i] = BarAmount(strips[at])
	}
	return Say("From the least: "+List(counts)+". So ", In(scene.Result, chain(order)), ".")
}
