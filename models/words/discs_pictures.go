package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

const discsBeside = "Circles of one size side by side, each one whole."

// discs introduces a picture of so many amounts.
func discs(n int) string {
	if n < 2 {
		return "A circle is one whole."
	}
	return discsBeside
}

// DiscShownTitle is the title of a picture of one number, or of a part of a circle.
func DiscShownTitle(p arithmetic.Problem, n arithmetic.Number) scene.Telling {
	if p.Kind == arithmetic.ShapePart {
		return scene.Same(p.String())
	}
	return BarShownTitle(n)
}

// DiscShownDesc says what a picture of one number shows.
func DiscShownDesc(p arithmetic.Problem, n arithmetic.Number, m arithmetic.CutWholes, s arithmetic.Strips, shaded bool) scene.Telling {
	into := " cut from the center into " + Name(m.Den) + " equal parts."
	cut := "A circle" + into
	switch {
	case m.Cut == 0 || m.Den == 1:
		cut = upper(Name(m.Uncut+m.Cut)) + " " + plural("circle", m.Uncut+m.Cut) + " of one size, each one whole."
	case m.Uncut > 0:
		cut = upper(Name(m.Uncut+m.Cut)) + " circles of one size, the last" + into
	case m.Cut > 1:
		cut = upper(Name(m.Cut)) + " circles of one size, each" + into
	}
	shown := scene.Telling{
		Shown:  cut + " " + upper(barLies(s)) + ", which is " + n.String() + ".",
		Hidden: cut + " " + upper(barLies(s)) + ". What number is that?",
	}
	switch {
	case !shaded:
		return scene.Same(cut)
	case p.Kind == arithmetic.ShapePart:
		shown.Hidden = cut + " How many parts are " + n.String() + " of it?"
	}
	return shown
}

// DiscComparedDesc says what a picture of two amounts shows. laid are the numbers
// that lie there, as they were written.
func DiscComparedDesc(p arithmetic.Problem, laid []arithmetic.Strips, cuts []arithmetic.CutParts, ends *arithmetic.CompareEnds) scene.Telling {
	said := discs(len(laid))
	a, b, _ := p.Operands()
	names := [...]string{a.String(), b.String()}
	for i, s := range laid {
		said += " " + [...]string{"The first: ", "The second: "}[i] + barLiesAs(names[i], s)
	}
	asks := said
	for _, c := range cuts {
		said += " Every " + Parts(c.From.Part.Den(), 1) + [...]string{" of the first", " of the second"}[c.Nth] + " is cut into " +
			arithmetic.Grouped(c.Into) + ", so " + BarAmount(c.From) + " is " + BarAmount(c.To) + "."
	}
	if ends == nil {
		return scene.Same(said)
	}
	is := a.String() + " " + ends.Relation.String() + " " + b.String() + "."
	shown := " Both shaded amounts are the same: "
	switch {
	case ends.Relation != arithmetic.Equal && ends.SameCount:
		shown = " One fills more of its circle: "
	case ends.Relation != arithmetic.Equal:
		shown = " One fills " + gap(ends.Gap) + " of a circle more: "
	}
	ask := " Which shaded amount is more, or are both the same?"
	if p.Kind == arithmetic.Claim {
		ask = " Is " + p.String() + "?"
	}
	return scene.Telling{Shown: said + shown + is, Hidden: asks + ask}
}

// DiscSumDesc says what a picture of a sum or difference shows: the numbers as they
// were laid, as they are cut now, and the total when it has been counted.
func DiscSumDesc(p arithmetic.Problem, laid []arithmetic.Strips, now [2]arithmetic.Strips, together bool, taken *arithmetic.TakeStrips, total *arithmetic.Strips) scene.Telling {
	minus := p.Kind == arithmetic.Subtraction
	a, b, _ := p.Operands()
	said := discs(len(laid)) + " The first number: " + barLiesAs(a.String(), laid[0])
	if len(laid) > 1 {
		said += " The second: " + barLiesAs(b.String(), laid[1])
	}
	hidden := said + " How much is that together?"
	if minus {
		hidden = said + " How much is left when the second is taken from the first?"
	}
	for i, s := range laid {
		if s != now[i] {
			said += " Cut in new parts, " + BarAmount(s) + " is " + BarAmount(now[i]) + "."
		}
	}
	if together {
		said += " Both lie together on circles of their own."
	}
	if taken != nil {
		said += " " + discCrossed(taken.Taken)
	}
	if total == nil {
		return scene.Same(said)
	}
	is := " Together they are "
	if minus {
		is = " What is left is "
	}
	amount := BarAmount(*total)
	if total.Wholes == 0 && total.Part.Num() == 0 {
		amount += " = 0"
	}
	return scene.Telling{Shown: said + is + amount + ".", Hidden: hidden}
}

// discCrossed says which pieces of the first number are crossed out.
func discCrossed(s arithmetic.Strips) string {
	are := " are"
	switch s.Wholes + s.Part.Num() {
	case 0:
		return "Nothing is crossed out."
	case 1:
		are = " is"
	}
	return upper(discPieces(s)) + " of the first" + are + " crossed out."
}

// DiscNamedDesc says what a picture of two names shows. Before the parts of the
// second are counted it says only how large they are.
func DiscNamedDesc(n arithmetic.Number, laid, to arithmetic.Strips, done, counted bool) scene.Telling {
	if !done {
		return scene.Same(discs(1) + " " + upper(barLiesAs(n.String(), laid)))
	}
	said := discs(2) + " The first: " + barLiesAs(n.String(), laid)
	if !counted {
		return scene.Same(said + " The second is the same amount, in " + Parts(to.Part.Den(), 2) + " that are not counted yet.")
	}
	return scene.Telling{
		Shown:  said + " The second is the same amount: " + barLiesAs(BarAmount(to), to),
		Hidden: said + " The second is the same amount. What is its name in the other parts?",
	}
}

// DiscsOtherKind and its like say why fraction circles cannot show a problem.
func DiscsOtherKind() string {
	return "fraction circles show, compare, rename, add and subtract fractions, with one number on each side"
}

// DiscsTooMany says that too many wholes would be needed.
func DiscsTooMany(most int64) string {
	return "fraction circles show at most " + arithmetic.Grouped(most) + " wholes"
}

// DiscsTooFine says that parts would be too thin to see.
func DiscsTooFine(most int64) string {
	return "circles are cut into at most " + arithmetic.Grouped(most) + " equal parts; smaller ones are too thin to see"
}

// ShapeOneWhole says that a shape has no more than all of its parts.
func ShapeOneWhole(s arithmetic.Shape) string {
	return "a part of one " + string(s) + " is at most the whole " + string(s)
}
