package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// Headings of the steps that need no number.
const (
	BarTogetherTitle = "Put the lengths together"
	BarLayAllTitle   = "Lay out every number"
	BarSortTitle     = "Sort by length"
)

// BarPrepareTitle heads the step in which parts are made.
func BarPrepareTitle(m arithmetic.CutWholes) string {
	if m.Cut == 0 || m.Den == 1 {
		return "Lay out " + barWholes(m.Uncut+m.Cut)
	}
	return "Make " + Parts(m.Den, 2)
}

// BarShadeTitle heads the step in which parts are shaded.
func BarShadeTitle(s arithmetic.Strips) string { return "Shade " + barPieces(s) }

// BarLayUnderEnd says that what is to be taken away goes under the end of the
// first number.
func BarLayUnderEnd(n arithmetic.Number, s arithmetic.Strips) Phrase {
	return Say("Lay out ", In(scene.Second, n.String()), " as well: "+barPieces(s)+". Put it under the end of the first, to see how much is taken away.")
}

// BarLayUnderPieces says that what is to be taken away goes under pieces of its
// own kind.
func BarLayUnderPieces(n arithmetic.Number, s arithmetic.Strips) Phrase {
	return Say("Lay out ", In(scene.Second, n.String()), " as well: "+barPieces(s)+". Put each piece under one of the same size, to see which are taken away.")
}

// BarTogether says that the second number goes after the first.
func BarTogether(a, b arithmetic.Number, m arithmetic.PutTogether) Phrase {
	second := In(scene.Second, b.String())
	if m.First.Part.Num() > 0 && m.Second.Wholes > 0 {
		return Say("Put ", In(scene.First, a.String()), " and ", second, " together: whole strips beside whole strips, then the parts.")
	}
	return Say("Move ", second, " up, right after ", In(scene.First, a.String()), ", end to end.")
}

// BarAskTogether asks for an estimate.
func BarAskTogether(a, b arithmetic.Number, m arithmetic.PutTogether) Phrase {
	if m.First.Wholes+m.Second.Wholes > 0 {
		return Say("About how many wholes will they be together?")
	}
	return Say("Will they be longer or shorter than one whole together?")
}

// BarOpenTitle heads the step in which wholes are cut.
func BarOpenTitle(m arithmetic.OpenWholes) string {
	if m.From.Wholes == m.To.Wholes+1 && m.To.Wholes > 0 || m.From.Wholes == 1 {
		return "Cut a whole into " + Parts(m.To.Part.Den(), 2)
	}
	return "Cut wholes into " + Parts(m.To.Part.Den(), 2)
}

// BarOpen says that whole strips are cut in parts, and what the number is then
// where that is not asked for: from has the role of its old name.
func BarOpen(from, role scene.Role, m arithmetic.OpenWholes, named bool) Phrase {
	den := m.To.Part.Den()
	cut := "Cut 1 whole strip into " + Count(den, "equal part")
	switch {
	case den == 1:
		cut = "Count every whole strip as one part"
	case m.Wholes > 1:
		cut = "Cut " + barWholes(m.Wholes) + " into " + Count(den, "equal part") + " each"
	case m.From.Wholes > 1:
		cut = "Cut the " + ordinal(m.Before+1) + " whole strip into " + Count(den, "equal part")
	}
	if !named {
		return Say(cut + ". The length stays the same.")
	}
	return Say(cut+": ", In(from, BarAmount(m.From)), " is ", In(role, BarAmount(m.To)), ".")
}

// BarAskOpen asks whether there are parts enough to take away.
func BarAskOpen(take arithmetic.Strips, m arithmetic.OpenWholes) Phrase {
	return Say("Are there enough " + Parts(m.To.Part.Den(), 2) + " to take " + barParts(take.Part.Num(), take.Part.Den()) + " away?")
}

// BarAskOpenAll asks how many parts wholes make.
func BarAskOpenAll(m arithmetic.OpenWholes) Phrase {
	return Say("How many " + Parts(m.To.Part.Den(), 2) + " are in " + barWholes(m.Wholes) + "?")
}

// BarTakeTitle heads the step in which an amount is taken away.
func BarTakeTitle(m arithmetic.TakeStrips) string { return "Take away " + barPieces(m.Taken) }

// BarTake says what is taken away.
func BarTake(b arithmetic.Number, m arithmetic.TakeStrips) Phrase {
	said := Say("Take away " + barPieces(m.Taken) + ": ")
	return append(said, In(scene.Second, b.String()), Span{Text: "."})
}

// BarAskTake asks what is to be taken away.
func BarAskTake(b arithmetic.Number) Phrase {
	return Say("Which pieces make ", In(scene.Second, b.String()), "?")
}

// BarCountTitle heads the step in which pieces are counted.
func BarCountTitle(left bool) string {
	if left {
		return "Count what is left"
	}
	return "Count the parts"
}

// BarCount says how many pieces there are now. Of a sum or difference a strip is
// laid for them.
func BarCount(m arithmetic.CountParts, left, lay bool) Phrase {
	count := "Count: "
	if lay {
		count = "Lay a strip under them, as long as both together. Count: "
	}
	if left {
		count = "Lay a strip under what is left, just as long. Count what is left: "
	}
	if m.Total.Wholes == 0 && m.Total.Part.Num() == 0 {
		return Say("Count what there is: nothing. The answer is ", In(scene.Result, "0"), ".")
	}
	if m.Total.Part.Den() == 1 && m.Total.Part.Num() > 0 {
		return Say(count, In(scene.Result, BarAmount(m.Total)), ".")
	}
	return Say(count+barPieces(m.Total)+", ", In(scene.Result, BarAmount(m.Total)), ".")
}

// BarAskCountNamed asks for the count that a blank stands for: the upper number of
// a fraction, or the lower.
func BarAskCountNamed(m arithmetic.CountParts, b arithmetic.Blank) Phrase {
	if b.Num > 0 {
		return Say("How many parts make one whole now?")
	}
	return BarAskCount(m, false)
}

// BarAskCount asks for the count.
func BarAskCount(m arithmetic.CountParts, left bool) Phrase {
	if m.Total.Part.Den() == 1 {
		return Say("How many whole strips are there now?")
	}
	pieces := Parts(m.Total.Part.Den(), 2)
	switch {
	case m.Total.Wholes > 0 && m.Total.Part.Num() > 0:
		pieces = "whole strips and " + pieces
	case m.Total.Wholes > 0:
		pieces = "whole strips"
	}
	if left {
		return Say("How many " + pieces + " are left?")
	}
	return Say("How many " + pieces + " are there now?")
}

// BarMakeTitle heads the step in which parts fill wholes.
func BarMakeTitle(m arithmetic.MakeWholes) string {
	if m.Wholes == 1 {
		return "Make a whole"
	}
	return "Make wholes"
}

// BarMake says that parts are traded for wholes.
func BarMake(role scene.Role, m arithmetic.MakeWholes) Phrase {
	den := m.From.Part.Den()
	said := Say(upper(barParts(m.Wholes*den, den))+" fill "+Count(m.Wholes, "whole")+". ", In(role, BarAmount(m.From)), " is ")
	if den == 1 {
		said = Say("Each part is a whole. ", In(role, BarAmount(m.From)), " is ")
	}
	return append(said, In(role, BarAmount(m.To)), Span{Text: "."})
}

// BarAskMake asks how many parts fill a whole.
func BarAskMake(m arithmetic.MakeWholes) Phrase {
	return Say("How many " + Parts(m.From.Part.Den(), 2) + " fill one whole?")
}

// BarMergeTitle heads the step in which parts are joined.
func BarMergeTitle(m arithmetic.MergeParts) string {
	if m.Every == 1 {
		return "Look for larger parts"
	}
	return "Join the parts into " + Parts(m.To.Part.Den(), 2)
}

// BarMerge says that parts are joined in larger ones, and what the number is then
// where that is not asked for.
func BarMerge(role scene.Role, m arithmetic.MergeParts, named bool) Phrase {
	if m.Every == 1 {
		return Say("Try to join the parts into larger equal parts. None come out even, so ", In(role, BarAmount(m.To)), " is in simplest form.")
	}
	joined := "Join every " + Count(m.Every, "part") + " into 1 " + Parts(m.To.Part.Den(), 1) + ". "
	if m.To.Part.Den() == 1 {
		joined = "Join every " + Count(m.Every, "part") + " into 1 whole. "
	}
	if !named {
		return Say(joined + "The length stays the same.")
	}
	return Say(joined+"The length stays the same: ", In(role, BarAmount(m.From)), " is ", In(role, BarAmount(m.To)), ".")
}

// BarAskMerge asks for larger parts.
func BarAskMerge(m arithmetic.MergeParts) Phrase {
	return Say("Can the " + Parts(m.From.Part.Den(), 2) + " be joined into larger equal parts, with none left over?")
}
