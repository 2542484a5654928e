package words

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// barLies says how one bar lies: three of four equal parts shaded. Counts are
// in words, so that they are not taken for the answer.
func barLies(s arithmetic.Strips) string {
	shaded := Name(s.Wholes+s.Part.Num()) + " " + plural("whole", s.Wholes+s.Part.Num()) + " shaded"
	parts := Name(s.Part.Num()) + " of " + Name(s.Part.Den()) + " equal parts"
	switch {
	case s.Part.Den() == 1 || s.Part.Num() == 0 && s.Wholes > 0:
		return shaded
	case s.Wholes > 0:
		return Name(s.Wholes) + " " + plural("whole", s.Wholes) + " shaded and " + parts + " of the next"
	case s.Part.Num() > s.Part.Den():
		return Name(s.Part.Num()) + " parts shaded, " + Name(s.Part.Den()) + " of them to each whole"
	}
	return parts + " shaded"
}

// barLiesAs says how a bar lies and what number it is.
func barLiesAs(name string, s arithmetic.Strips) string {
	return name + ", " + barLies(s) + "."
}

const barsUnder = "Bars under each other, from the same left edge and with wholes of the same length."

// bars introduces a picture of so many bars.
func bars(n int) string {
	if n < 2 {
		return "A bar with its wholes marked."
	}
	return barsUnder
}

// BarVerdict is the title of a claim or comparison.
func BarVerdict(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	if p.Kind == arithmetic.Comparison {
		ask := "compare " + p.Left.String() + " and " + p.Right.String()
		return scene.Telling{Shown: ask + ": " + Answer(p, a), Hidden: Asked(p)}
	}
	return scene.Telling{Shown: p.String() + " is " + strconv.FormatBool(a.True), Hidden: Asked(p)}
}

// BarComparedDesc says what a picture of two bars shows. laid are the numbers
// that lie there, as they were written.
func BarComparedDesc(p arithmetic.Problem, laid []arithmetic.Strips, cuts []arithmetic.CutParts, ends *arithmetic.CompareEnds) scene.Telling {
	said := bars(len(laid))
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
	shown := " Both shaded lengths end at the same place: "
	switch {
	case ends.Relation != arithmetic.Equal && ends.SameCount:
		shown = " One reaches farther: "
	case ends.Relation != arithmetic.Equal:
		shown = " One reaches " + gap(ends.Gap) + " of a whole farther: "
	}
	ask := " Which reaches farther, or do both end at the same place?"
	if p.Kind == arithmetic.Claim {
		ask = " Is " + p.String() + "?"
	}
	return scene.Telling{Shown: said + shown + is, Hidden: asks + ask}
}

// BarSumTitle is the title of a sum or difference.
func BarSumTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + " = " + Answer(p, a), Hidden: p.String() + " = ?"}
}

// BarSumDesc says what a picture of a sum or difference shows: the numbers as
// they were laid, as they are cut now, and the total when it has been counted.
func BarSumDesc(p arithmetic.Problem, laid []arithmetic.Strips, now [2]arithmetic.Strips, placed, piled bool, taken *arithmetic.TakeStrips, total *arithmetic.Strips) scene.Telling {
	minus := p.Kind == arithmetic.Subtraction
	a, b, _ := p.Operands()
	said := bars(len(laid)) + " The first number: " + barLiesAs(a.String(), laid[0])
	if len(laid) > 1 {
		said += " The second: " + barLiesAs(b.String(), laid[1])
		switch {
		case piled:
			said += " Each piece of it lies under one of the first of the same size, to be taken away."
		case minus:
			said += " It lies under the end of the first, to be taken away."
		case placed:
			said += " It lies after the first, end to end."
		}
	}
	hidden := said + " How much is that together?"
	if minus {
		hidden = said + " How much is left?"
	}
	for i, s := range laid {
		if s != now[i] {
			said += " Cut in new parts, " + BarAmount(s) + " is " + BarAmount(now[i]) + "."
		}
	}
	if taken != nil {
		said += " " + barCrossed(taken.Taken)
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

// barCrossed says which pieces of the first number are crossed out.
func barCrossed(s arithmetic.Strips) string {
	are := " are"
	switch s.Wholes + s.Part.Num() {
	case 0:
		return "Nothing is crossed out."
	case 1:
		are = " is"
	}
	return upper(barPieces(s)) + " of the first" + are + " crossed out."
}

// BarShownTitle is the title of a picture of one number. With the answer hidden
// the picture asks for the number.
func BarShownTitle(n arithmetic.Number) scene.Telling {
	return scene.Telling{Shown: n.String(), Hidden: "what number is shaded?"}
}

// BarShownDesc says what a picture of one number shows.
func BarShownDesc(n arithmetic.Number, m arithmetic.CutWholes, s arithmetic.Strips, shaded bool) scene.Telling {
	into := " cut into " + Name(m.Den) + " equal parts."
	cut := "A bar of one whole," + into
	switch {
	case m.Cut == 0 || m.Den == 1:
		cut = "A bar of " + Name(m.Uncut+m.Cut) + " " + plural("whole", m.Uncut+m.Cut) + "."
	case m.Uncut > 0:
		cut = "A bar of " + Name(m.Uncut+m.Cut) + " wholes, the last" + into
	case m.Cut > 1:
		cut = "A bar of " + Name(m.Cut) + " wholes, each" + into
	}
	if !shaded {
		return scene.Same(cut)
	}
	return scene.Telling{
		Shown:  cut + " " + upper(barLies(s)) + ", which is " + n.String() + ".",
		Hidden: cut + " " + upper(barLies(s)) + ". What number is that?",
	}
}

// BarNamedTitle is the title of a picture that gives an amount another name.
func BarNamedTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	if p.Kind == arithmetic.Renaming {
		return scene.Telling{Shown: p.Left.String() + " = " + Answer(p, a), Hidden: p.String()}
	}
	return scene.Telling{Shown: p.String() + ": " + Answer(p, a), Hidden: p.String() + ": ?"}
}

// BarNamedDesc says what a picture of two names shows. Before the parts of the
// lower bar are counted it says only how large they are.
func BarNamedDesc(n arithmetic.Number, laid, to arithmetic.Strips, done, counted bool) scene.Telling {
	if !done {
		return scene.Same(bars(1) + " " + upper(barLiesAs(n.String(), laid)))
	}
	said := bars(2) + " The upper: " + barLiesAs(n.String(), laid)
	if !counted {
		return scene.Same(said + " The lower is the same length, in " + Parts(to.Part.Den(), 2) + " that are not counted yet.")
	}
	return scene.Telling{
		Shown:  said + " The lower is the same length: " + barLiesAs(BarAmount(to), to),
		Hidden: said + " The lower is the same length. What is its name in the other parts?",
	}
}

// BarOrderTitle is the title of a list in order.
func BarOrderTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + ": " + Answer(p, a), Hidden: p.String()}
}

// BarOrderDesc says what a picture of a list shows.
func BarOrderDesc(list []arithmetic.Number, laid, now []arithmetic.Strips, a arithmetic.Answer, sorted bool) scene.Telling {
	said := barsUnder
	asks := said
	for i, s := range laid {
		lies := " " + list[i].String() + ": " + barLies(s) + "."
		said, asks = said+lies, asks+lies
	}
	for i, s := range laid {
		if s != now[i] {
			said += " Cut finer, " + BarAmount(s) + " is " + BarAmount(now[i]) + "."
		}
	}
	if !sorted {
		return scene.Same(said)
	}
	return scene.Telling{Shown: said + " Sorted from least to greatest: " + chain(a.Order) + ".", Hidden: asks + " Which is the least, and which comes next?"}
}
