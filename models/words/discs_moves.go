package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// DiscOpen says that whole circles are cut in parts, and what the number is then
// where that is not asked for: from has the role of its old name.
func DiscOpen(from, role scene.Role, m arithmetic.OpenWholes, named bool) Phrase {
	den := m.To.Part.Den()
	cut := "Cut 1 whole circle into " + Count(den, "equal part")
	switch {
	case den == 1:
		cut = "Count every whole circle as one part"
	case m.Wholes > 1:
		cut = "Cut " + discWholes(m.Wholes) + " into " + Count(den, "equal part") + " each"
	case m.From.Wholes > 1:
		cut = "Cut the " + ordinal(m.Before+1) + " whole circle into " + Count(den, "equal part")
	}
	if !named {
		return Say(cut + ". The amount stays the same.")
	}
	return Say(cut+": ", In(from, BarAmount(m.From)), " is ", In(role, BarAmount(m.To)), ".")
}

// DiscAskOpenAll asks how many parts wholes make.
func DiscAskOpenAll(m arithmetic.OpenWholes) Phrase {
	return Say("How many " + Parts(m.To.Part.Den(), 2) + " are in " + discWholes(m.Wholes) + "?")
}

// DiscTakeTitle heads the step in which an amount is taken away.
func DiscTakeTitle(m arithmetic.TakeStrips) string { return "Take away " + discPieces(m.Taken) }

// DiscTake says what is taken away.
func DiscTake(b arithmetic.Number, m arithmetic.TakeStrips) Phrase {
	if m.Taken.Wholes+m.Taken.Part.Num() == 0 {
		return Say("Take nothing away: ", In(scene.Second, b.String()), ".")
	}
	return Say("Cross out "+discPieces(m.Taken)+" of the first number: ", In(scene.Second, b.String()), ".")
}

// DiscCount says how many pieces there are in a sum or a difference.
func DiscCount(m arithmetic.CountParts, minus bool) Phrase {
	total := m.Total
	if total.Wholes == 0 && total.Part.Num() == 0 {
		return Say("Count what there is: nothing. The answer is ", In(scene.Result, "0"), ".")
	}
	count := "Count: "
	if minus {
		count = "Shade what is left on new circles and count: "
		if total.Wholes+total.Part.Num()/total.Part.Den() == 0 || total.Wholes == 1 && total.Part.Num() == 0 {
			count = "Shade what is left on a new circle and count: "
		}
	}
	return Say(count+discPieces(total)+", ", In(scene.Result, BarAmount(total)), ".")
}

// DiscCountNamed says how many parts an amount has under its new name.
func DiscCountNamed(m arithmetic.CountParts) Phrase {
	if m.Total.Part.Den() == 1 && m.Total.Part.Num() > 0 {
		return Say("Count: ", In(scene.Result, BarAmount(m.Total)), ".")
	}
	return Say("Count: "+discPieces(m.Total)+", ", In(scene.Result, BarAmount(m.Total)), ".")
}

// DiscAskCount asks for the count.
func DiscAskCount(m arithmetic.CountParts, left bool) Phrase {
	pieces := Parts(m.Total.Part.Den(), 2)
	switch {
	case m.Total.Part.Den() == 1, m.Total.Wholes > 0 && m.Total.Part.Num() == 0:
		pieces = "whole circles"
	case m.Total.Wholes > 0:
		pieces = "whole circles and " + pieces
	}
	if left {
		return Say("How many " + pieces + " are left?")
	}
	return Say("How many " + pieces + " are there now?")
}

// DiscAskCountNamed asks for the count that a blank stands for: the upper number of
// a fraction, or the lower.
func DiscAskCountNamed(m arithmetic.CountParts, b arithmetic.Blank) Phrase {
	if b.Num > 0 {
		return Say("How many parts make one whole now?")
	}
	return DiscAskCount(m, false)
}

// DiscMerge says that parts are joined in larger ones, and what the number is then
// where that is not asked for.
func DiscMerge(role scene.Role, m arithmetic.MergeParts, named bool) Phrase {
	if m.Every == 1 {
		return BarMerge(role, m, named)
	}
	joined := "Join every " + Count(m.Every, "part") + " into 1 " + Parts(m.To.Part.Den(), 1) + ". The shaded amount stays the same"
	if !named {
		return Say(joined + ".")
	}
	return Say(joined+": ", In(role, BarAmount(m.From)), " is ", In(role, BarAmount(m.To)), ".")
}

// DiscCompare says what two amounts on circles of one size show.
func DiscCompare(p arithmetic.Problem, m arithmetic.CompareEnds) Phrase {
	a, b, _ := p.Operands()
	more := " fills " + gap(m.Gap) + " of a circle more"
	if m.SameCount {
		more = " fills more of its circle"
	}
	var said Phrase
	switch m.Relation {
	case arithmetic.Equal:
		said = Say("Lay one shaded amount on the other: they match. ")
	case arithmetic.Less:
		said = Say("Lay one shaded amount on the other: ", In(scene.Second, b.String()), more, ". ")
	default:
		said = Say("Lay one shaded amount on the other: ", In(scene.First, a.String()), more, ". ")
	}
	said = append(said, BarStatement(a, m.Relation.String(), b)...)
	return append(said, Span{Text: "."})
}

// DiscAskCompare asks which is more.
func DiscAskCompare() Phrase {
	return Say("Which shaded amount is more, or are both the same?")
}

// DiscSameAmount says that two names are names of one amount.
func DiscSameAmount(role, named scene.Role, from, to string) Phrase {
	return Say(In(role, from), " and ", In(named, to), " are the same amount.")
}

// DiscWhy says why a claim is true or false, or why one number is more.
func DiscWhy(p arithmetic.Problem, m arithmetic.CompareEnds, cuts []arithmetic.CutParts) Phrase {
	if m.Relation != arithmetic.Equal || len(cuts) == 0 {
		return BarWhy(p, m, cuts)
	}
	why := append(cutsWhy(cuts), Say("Both are the same amount")...)
	if p.Rel != arithmetic.Equal && p.Kind == arithmetic.Claim {
		why = append(why, Say(notTrue(p, m))...)
	}
	return append(why, Span{Text: "."})
}
