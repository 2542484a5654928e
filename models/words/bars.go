package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// The words of fraction bars. A strip is one whole; a bar is a strip, or some
// laid end to end, with parts shaded.

// BarWhole, BarBothEnd and BarMore are the few words that stand in the pictures.
const (
	BarWhole   = "1 whole"
	BarBothEnd = "both end here"
	BarMore    = "more"
)

// BarAmount writes strips as a number: 3/4, 2, 1 3/4, and 1 5/4 while the parts
// are loose.
func BarAmount(s arithmetic.Strips) string {
	switch {
	case s.Wholes == 0:
		return arithmetic.Frac(s.Part).String()
	case s.Part.Num() == 0:
		return arithmetic.Grouped(s.Wholes)
	}
	return arithmetic.Grouped(s.Wholes) + " " + arithmetic.Frac(s.Part).String()
}

// barParts names a count of parts: 3 fourths, 1 half, no fifths.
func barParts(count, den int64) string {
	if count == 0 {
		return "no " + Parts(den, 0)
	}
	return arithmetic.Grouped(count) + " " + Parts(den, count)
}

// barWholes names whole strips: 1 whole strip, 2 whole strips.
func barWholes(n int64) string { return Count(n, "whole strip") }

// barPieces says what lies there: 2 whole strips and 3 fourths.
func barPieces(s arithmetic.Strips) string {
	switch {
	case s.Wholes == 0:
		return barParts(s.Part.Num(), s.Part.Den())
	case s.Part.Num() == 0:
		return barWholes(s.Wholes)
	}
	return barWholes(s.Wholes) + " and " + barParts(s.Part.Num(), s.Part.Den())
}

// strips says how many strips hold so many parts.
func strips(s arithmetic.Strips) int64 {
	return max(1, (s.Part.Num()+s.Part.Den()-1)/s.Part.Den())
}

// cutting says how to make parts: cut a strip into 4 equal parts. which says
// more of the strips.
func cutting(n, den int64, which string) string {
	if n == 1 {
		return "cut a strip" + which + " into " + Count(den, "equal part")
	}
	return "cut " + arithmetic.Grouped(n) + " strips" + which + " into " + Count(den, "equal part") + " each"
}

// upper begins a sentence: a small letter in front becomes a capital.
func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// BarPrepare says how the parts of a number are made ready.
func BarPrepare(m arithmetic.CutWholes) Phrase {
	switch {
	case m.Cut == 0 || m.Den == 1:
		return Say("Lay out " + barWholes(m.Uncut+m.Cut) + ".")
	case m.Uncut == 0:
		return Say(upper(cutting(m.Cut, m.Den, "")) + ".")
	}
	return Say("Lay out " + barWholes(m.Uncut) + ", then cut one more strip into " + Count(m.Den, "equal part") + ".")
}

// BarAskPrepare asks what the lower number of a fraction says.
func BarAskPrepare(m arithmetic.CutWholes) Phrase {
	if m.Cut == 0 || m.Den == 1 {
		return nil
	}
	return Say("How many " + Parts(m.Den, 2) + " make one whole?")
}

// BarShade says how many of the parts are taken.
func BarShade(n arithmetic.Number, s arithmetic.Strips) Phrase {
	switch {
	case s.Part.Num() == 0 && s.Wholes == 0:
		return Say("Shade none of the parts: ", In(scene.First, n.String()), ".")
	case s.Part.Num() == 0:
		return Say("Shade every strip: ", In(scene.First, n.String()), ".")
	case s.Wholes > 0:
		return Say("Shade "+barWholes(s.Wholes)+" and "+Count(s.Part.Num(), "part")+" of the next: ", In(scene.First, NumberName(n)), ".")
	}
	return Say("Shade "+Count(s.Part.Num(), "part")+": ", In(scene.First, NumberName(n)), ".")
}

// BarAskShade asks what the upper number of a fraction says.
func BarAskShade(s arithmetic.Strips) Phrase {
	return Say("Which number tells how many parts to shade?")
}

// BarLay says how a number of the problem is laid out; under says that another
// lies there already.
func BarLay(role scene.Role, n arithmetic.Number, s arithmetic.Strips, under bool) Phrase {
	where, which := "", ""
	if under {
		where, which = "under it, ", " of the same length"
	}
	named := In(role, n.String())
	switch {
	case s.Part.Den() == 1:
		return Say(upper(where+"lay out "+barWholes(s.Wholes+s.Part.Num()))+": ", named, ".")
	case s.Wholes == 0:
		return Say(upper(where+cutting(strips(s), s.Part.Den(), which))+" and shade "+arithmetic.Grouped(s.Part.Num())+": ", named, ".")
	case s.Part.Num() == 0:
		return Say(upper(where+"lay out "+barWholes(s.Wholes))+": ", named, ".")
	}
	return Say(upper(where+"lay out "+barWholes(s.Wholes))+". Cut one more into "+Count(s.Part.Den(), "equal part")+
		" and shade "+arithmetic.Grouped(s.Part.Num())+": ", named, ".")
}

// BarAskLay asks for the count of parts.
func BarAskLay(s arithmetic.Strips) Phrase {
	if s.Part.Den() == 1 {
		return nil
	}
	return Say("How many " + Parts(s.Part.Den(), 2) + " are there, and how many make one whole?")
}

// BarCut says that every part is cut finer, and what the number is then where
// that is not asked for.
func BarCut(role scene.Role, m arithmetic.CutParts, named bool) Phrase {
	cut := "Cut every " + Parts(m.From.Part.Den(), 1) + " into " + Count(m.Into, "equal part") + ". The shaded length stays the same"
	if !named {
		return Say(cut + ".")
	}
	return append(Say(cut+": "), Say(In(role, BarAmount(m.From)), " is ", In(role, BarAmount(m.To)), ".")...)
}

// BarAskCut asks what the small parts are.
func BarAskCut(m arithmetic.CutParts) Phrase {
	return Say("If every " + Parts(m.From.Part.Den(), 1) + " is cut into " + arithmetic.Grouped(m.Into) + ", how many parts make one whole?")
}

// BarCutTitle heads the step.
func BarCutTitle(m arithmetic.CutParts) string {
	return "Cut each " + Parts(m.From.Part.Den(), 1) + " into " + arithmetic.Grouped(m.Into)
}

// BarSameLength says that two names of an amount are one length.
func BarSameLength(role, named scene.Role, from, to string) Phrase {
	return Say(In(role, from), " and ", In(named, to), " are the same length.")
}

// gap names a difference: 1/24, 2 1/4.
func gap(f fraction.Fraction) string { return arithmetic.AsMixed(f).String() }

// BarStatement writes the relation of two numbers in their roles.
func BarStatement(a arithmetic.Expr, rel string, b arithmetic.Expr) Phrase {
	return Say(In(scene.First, a.String()), " "+rel+" ", In(scene.Second, b.String()))
}

// BarCompare says what the ends show.
func BarCompare(p arithmetic.Problem, m arithmetic.CompareEnds) Phrase {
	a, b, _ := p.Operands()
	var said Phrase
	switch m.Relation {
	case arithmetic.Equal:
		said = Say("Lay a ruler across the ends: both shaded lengths stop at the same place. ")
	case arithmetic.Less:
		said = Say("Look at the two ends: ", In(scene.Second, b.String()), reaches(m), ". ")
	default:
		said = Say("Look at the two ends: ", In(scene.First, a.String()), reaches(m), ". ")
	}
	said = append(said, BarStatement(a, m.Relation.String(), b)...)
	return append(said, Span{Text: "."})
}

func reaches(m arithmetic.CompareEnds) string {
	if m.SameCount {
		return " reaches farther"
	}
	return " reaches " + gap(m.Gap) + " of a whole farther"
}

// BarAskCompare asks where the lengths end.
func BarAskCompare() Phrase {
	return Say("Which shaded length reaches farther, or do both end at the same place?")
}

// BarStrips is what the hands work with: n strips of paper.
func BarStrips(n int64) string {
	if n == 1 {
		return "paper strip"
	}
	return "paper strips of one length"
}

// BarAnswerStrip is the piece that is laid for the result of a sum.
const BarAnswerStrip = "long paper strip for the answer"

// BarStripsOf is how many strips of paper an amount is laid out with.
func BarStripsOf(s arithmetic.Strips) int64 {
	if s.Part.Num() == 0 && (s.Wholes > 0 || s.Part.Den() == 1) {
		return s.Wholes
	}
	return s.Wholes + strips(s)
}

// BarCompareTitle heads the last step of a comparison.
const BarCompareTitle = "Compare the ends"

// BarLayTitle heads the step in which a number is laid out.
func BarLayTitle(n arithmetic.Number) string { return "Lay out " + n.String() }
