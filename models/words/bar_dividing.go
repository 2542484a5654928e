package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// BarOfAGroup stands after the part of a group that is left over.
const BarOfAGroup = "of a group"

// BarAskGroups asks for a guess before a length is measured off.
func BarAskGroups(a arithmetic.Number, m arithmetic.MeasureOff) Phrase {
	return Say("How many times do you think ", In(scene.Second, m.Size.String()), " fits in ", In(scene.First, a.String()), "?")
}

// BarMeasureTitle heads the step in which groups are measured off.
func BarMeasureTitle(m arithmetic.MeasureOff) string { return "Mark groups of " + m.Size.String() }

// BarMeasure says how the groups are marked and how many there are.
func BarMeasure(m arithmetic.MeasureOff) Phrase {
	den := m.Each.Part.Den()
	count := In(scene.Result, arithmetic.Grouped(m.Count))
	var said Phrase
	if m.Size.Value.Den() != den || m.Size.Form == arithmetic.Mixed {
		said = Say("A group of ", In(scene.Second, m.Size.String()), " is "+barParts(m.Each.Part.Num(), den)+". ")
	}
	said = append(said, Say("Mark off groups of ", In(scene.Second, m.Size.String()), " from the left and count them: ", count, ".")...)
	if left := m.Left.Part.Num(); left > 0 {
		said = append(said, Say(" "+upper(barParts(left, den))+" "+pluralVerb(left)+" left, of the "+arithmetic.Grouped(m.Each.Part.Num())+" that one more group needs: ",
			In(scene.Result, arithmetic.Frac(m.Part).String()), " of a group.")...)
	}
	return said
}

// BarAskMeasure asks for the count of groups.
func BarAskMeasure(m arithmetic.MeasureOff) Phrase {
	return Say("How many groups of ", In(scene.Second, m.Size.String()), " are there?")
}

// BarDividedTitle is the title of a picture of a division.
func BarDividedTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + " = " + Answer(p, a), Hidden: Asked(p)}
}

// BarMeasuredDesc says what a picture of groups shows. With the answer hidden it shows
// one group alone.
func BarMeasuredDesc(a, quotient arithmetic.Number, m arithmetic.MeasureOff, lies arithmetic.Strips, groups bool) scene.Telling {
	row := "A bar with its wholes marked. " + barLiesAs("On it is "+a.String(), lies)
	if !groups {
		return scene.Same(row)
	}
	shown := row + " Marked on it " + pluralVerb(m.Count) + " " + Count(m.Count, "group") + " of " + m.Size.String() + "."
	if left := m.Left.Part.Num(); left > 0 {
		shown += " " + upper(barParts(left, m.Left.Part.Den())) + " " + pluralVerb(left) + " left, " + arithmetic.Frac(m.Part).String() + " of a group: " + quotient.String() + " groups in all."
	}
	return scene.Telling{Shown: shown, Hidden: "A bar with its wholes marked. On it is " + a.String() + ". One group of " + m.Size.String() + " is marked. How many such groups are there?"}
}

// BarShareTitle heads the step in which parts are dealt out.
func BarShareTitle(m arithmetic.ShareParts) string {
	return "Make " + arithmetic.Grouped(m.Shares) + " equal shares"
}

// BarShare says how the parts are dealt and what a share is.
func BarShare(m arithmetic.ShareParts) Phrase {
	return Say("Divide the shaded length into ", In(scene.Second, arithmetic.Grouped(m.Shares)), " equal shares: "+barParts(m.Each.Part.Num(), m.Each.Part.Den())+" in each, ",
		In(scene.Result, BarAmount(m.Each)), ".")
}

// BarAskShare asks for the size of a share.
func BarAskShare(m arithmetic.ShareParts) Phrase {
	return Say("How much of one whole is each share?")
}

// BarAskShareFirst asks for a guess before anything is cut.
func BarAskShareFirst(a arithmetic.Number) Phrase {
	if a.Form == arithmetic.Whole {
		return Say("Will one share be more or less than one whole?")
	}
	return Say("Will one share be more or less than ", In(scene.First, a.String()), "?")
}

// BarSharedDesc says what a picture of shares shows; share is what one is called, ""
// before it lies there.
func BarSharedDesc(a arithmetic.Number, shares int64, lies arithmetic.Strips, share string) scene.Telling {
	row := "A bar with its wholes marked. " + barLiesAs("On it is "+a.String(), lies)
	if share == "" {
		return scene.Same(row)
	}
	n := Count(shares, "equal share")
	return scene.Telling{
		Shown:  row + " It is divided into " + n + ". On a bar under it lies one share: " + share + ".",
		Hidden: "A bar with its wholes marked. On it is " + a.String() + ", to be divided into " + n + ". How much of a whole is one share?",
	}
}
