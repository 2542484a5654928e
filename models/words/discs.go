package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of fraction circles. A circle of paper is one whole, cut from its center
// in equal parts. What is said of parts and numbers alone is said as of bars.

// DiscSame stands in the picture of two equal amounts.
const DiscSame = "the same amount"

// Headings of the steps that need no number.
const (
	DiscTogetherTitle = "Put the parts together"
	DiscCompareTitle  = "Compare the amounts"
)

// discWholes names whole circles: 1 whole circle, 2 whole circles.
func discWholes(n int64) string { return Count(n, "whole circle") }

// discPieces says what lies there: 2 whole circles and 3 fourths.
func discPieces(s arithmetic.Strips) string {
	switch {
	case s.Wholes == 0:
		return barParts(s.Part.Num(), s.Part.Den())
	case s.Part.Num() == 0:
		return discWholes(s.Wholes)
	}
	return discWholes(s.Wholes) + " and " + barParts(s.Part.Num(), s.Part.Den())
}

// DiscPaper is what the hands work with: n circles of paper.
func DiscPaper(n int64) string {
	if n == 1 {
		return "paper circle"
	}
	return "paper circles of one size"
}

// discCutting says how to make parts: cut a circle into 4 equal parts.
func discCutting(n, den int64) string {
	if n == 1 {
		return "cut a circle into " + Count(den, "equal part")
	}
	return "cut " + arithmetic.Grouped(n) + " circles into " + Count(den, "equal part") + " each"
}

// DiscPrepareTitle heads the step in which parts are made.
func DiscPrepareTitle(m arithmetic.CutWholes) string {
	if m.Cut == 0 || m.Den == 1 {
		return "Lay out " + discWholes(m.Uncut+m.Cut)
	}
	return "Make " + Parts(m.Den, 2)
}

// DiscPrepare says how the parts of a number are made ready.
func DiscPrepare(m arithmetic.CutWholes) Phrase {
	switch {
	case m.Cut == 0 || m.Den == 1:
		return Say("Lay out " + discWholes(m.Uncut+m.Cut) + ".")
	case m.Uncut == 0:
		return Say(upper(discCutting(m.Cut, m.Den)) + ", from the center to the edge.")
	}
	return Say("Lay out " + discWholes(m.Uncut) + ", then cut one more circle into " + Count(m.Den, "equal part") + ", from the center to the edge.")
}

// DiscShadeTitle heads the step in which parts are shaded.
func DiscShadeTitle(s arithmetic.Strips) string { return "Shade " + discPieces(s) }

// DiscShade says how many of the parts are taken.
func DiscShade(n arithmetic.Number, s arithmetic.Strips) Phrase {
	switch {
	case s.Part.Num() == 0 && s.Wholes == 0:
		return Say("Shade none of the parts: ", In(scene.First, n.String()), ".")
	case s.Part.Num() == 0:
		return Say("Shade every circle: ", In(scene.First, n.String()), ".")
	case s.Wholes > 0:
		return Say("Shade "+discWholes(s.Wholes)+" and "+Count(s.Part.Num(), "part")+" of the next: ", In(scene.First, NumberName(n)), ".")
	}
	return Say("Shade "+Count(s.Part.Num(), "part")+": ", In(scene.First, NumberName(n)), ".")
}

// DiscLay says how a number of the problem is laid out; beside says that another
// lies there already.
func DiscLay(role scene.Role, n arithmetic.Number, s arithmetic.Strips, beside bool) Phrase {
	where := ""
	if beside {
		where = "beside it, "
	}
	named := In(role, n.String())
	switch {
	case s.Part.Den() == 1:
		return Say(upper(where+"lay out "+discWholes(s.Wholes+s.Part.Num()))+": ", named, ".")
	case s.Wholes == 0:
		return Say(upper(where+discCutting(strips(s), s.Part.Den()))+" and shade "+arithmetic.Grouped(s.Part.Num())+": ", named, ".")
	case s.Part.Num() == 0:
		return Say(upper(where+"lay out "+discWholes(s.Wholes))+": ", named, ".")
	}
	return Say(upper(where+"lay out "+discWholes(s.Wholes))+". Cut one more into "+Count(s.Part.Den(), "equal part")+
		" and shade "+arithmetic.Grouped(s.Part.Num())+": ", named, ".")
}

// DiscLayToTake says that what is to be taken away is shown beside the first number.
func DiscLayToTake(n arithmetic.Number, s arithmetic.Strips) Phrase {
	return append(DiscLay(scene.Second, n, s, true), Span{Text: " It shows how much to take away."})
}

// DiscCut says that every part is cut finer, and what the number is then where that
// is not asked for.
func DiscCut(role scene.Role, m arithmetic.CutParts, named bool) Phrase {
	cut := "Cut every " + Parts(m.From.Part.Den(), 1) + " into " + Count(m.Into, "equal part") + ". The shaded amount stays the same"
	if !named {
		return Say(cut + ".")
	}
	return append(Say(cut+": "), Say(In(role, BarAmount(m.From)), " is ", In(role, BarAmount(m.To)), ".")...)
}

// DiscTogether says that both numbers are shown on new circles.
func DiscTogether(m arithmetic.PutTogether) Phrase {
	var said Phrase
	if wholes := m.First.Wholes + m.Second.Wholes; wholes > 0 {
		said = Say("Lay out " + discWholes(wholes) + " for both. ")
	}
	first, second := m.First.Part, m.Second.Part
	a, b := In(scene.First, barParts(first.Num(), first.Den())), In(scene.Second, barParts(second.Num(), second.Den()))
	on := "On new circles"
	if first.Num()+second.Num() <= first.Den() || first.Num() == 0 || second.Num() == 0 {
		on = "On a new circle"
	}
	switch {
	case first.Num() == 0 && second.Num() == 0:
		return append(said, Say("That is all there is.")...)
	case first.Num() == 0:
		return append(said, Say(on+", shade ", b, ".")...)
	case second.Num() == 0:
		return append(said, Say(on+", shade ", a, ".")...)
	}
	return append(said, Say(on+", shade ", a, " and then ", b, ".")...)
}

// DiscAskTogether asks for an estimate.
func DiscAskTogether(m arithmetic.PutTogether) Phrase {
	if m.First.Wholes+m.Second.Wholes > 0 {
		return Say("About how many wholes will they be together?")
	}
	return Say("Will they be more or less than one whole together?")
}
