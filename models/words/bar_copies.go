package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarJoinTitle heads the step in which copies are laid end to end.
func BarJoinTitle(m arithmetic.JoinCopies) string {
	if m.Count == 1 {
		return "1 copy is enough"
	}
	return "Lay " + arithmetic.Grouped(m.Count) + " copies end to end"
}

// BarJoin says that copies are joined on one row of wholes.
func BarJoin(m arithmetic.JoinCopies) Phrase {
	count, each := In(scene.First, arithmetic.Grouped(m.Count)), In(scene.Second, BarAmount(m.Each))
	if m.Count == 1 {
		return Say("One copy is asked for: leave ", each, " as it is.")
	}
	return Say("Make more copies of ", each, " until there are ", count, ". Lay them end to end.")
}

// BarAskJoin asks for the size of a product before it is counted.
func BarAskJoin(m arithmetic.JoinCopies) Phrase {
	return Say("Will " + copies(m.Count) + " be longer or shorter than one whole?")
}

// BarCountCopies says how many parts the copies have: the first factor counts the
// copies, the upper number the parts of each.
func BarCountCopies(m arithmetic.JoinCopies) Phrase {
	den := m.Each.Part.Den()
	if m.Count == 1 || m.Each.Part.Num() == 1 {
		return Say("Count the parts: "+barParts(m.Total.Part.Num(), den)+", ", In(scene.Result, BarAmount(m.Total)), ".")
	}
	return Say("Count the parts: ", In(scene.First, arithmetic.Grouped(m.Count)), " copies of "+barParts(m.Each.Part.Num(), den)+" are "+
		barParts(m.Total.Part.Num(), den)+", ", In(scene.Result, BarAmount(m.Total)), ".")
}

// BarCopiesTitle is the title of a picture of copies.
func BarCopiesTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + " = " + Answer(p, a), Hidden: Asked(p)}
}

// BarCopiesDesc says what a picture of copies shows. joined says whether they lie
// there; total is what was counted, or nil. The whole story, with its answer hidden,
// shows one of them.
func BarCopiesDesc(m arithmetic.JoinCopies, joined bool, total *arithmetic.Strips, story bool) scene.Telling {
	each := BarAmount(m.Each)
	one := "A bar with its wholes marked. " + barLiesAs("On it is one copy of "+each, m.Each)
	if !joined {
		return scene.Same(one)
	}
	row := "A bar with its wholes marked. On it " + pluralVerb(m.Count) + " " + copies(m.Count) + " of " + each + ", end to end."
	if total == nil {
		return scene.Same(row)
	}
	shown := row + " Together they make " + BarAmount(*total) + "."
	if m.Count == 1 {
		shown = row + " It is " + BarAmount(*total) + "."
	}
	hidden := row + " How much is it in all?"
	if story {
		hidden = one + " How much are " + copies(m.Count) + ", end to end?"
		if m.Count == 1 {
			hidden = one + " How much is it?"
		}
	}
	return scene.Telling{Shown: shown, Hidden: hidden}
}

func pluralVerb(n int64) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

func copies(n int64) string {
	if n == 1 {
		return "1 copy"
	}
	return arithmetic.Grouped(n) + " copies"
}
