package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// SquaresSplit tells how a large square is cut in equal parts.
func SquaresSplit(m arithmetic.SplitSquare) Told {
	whole := "a large square"
	if m.Squares > 1 {
		whole = "every large square"
	}
	part := Parts(m.Parts, 1)
	return Told{
		Title: "Cut in " + Parts(m.Parts, 2),
		Ask:   Say("How many small squares are in one " + part + "?"),
		Hands: Say("Cut "+whole+" of 100 small squares in "+arithmetic.Grouped(m.Parts)+" equal parts. Each ", In(scene.Ink, part), " has "+Count(m.Each, "small square")+"."),
		Desc:  scene.Same("A large square of 100 small squares is cut in " + arithmetic.Grouped(m.Parts) + " equal parts. Each part has " + Count(m.Each, "small square") + "."),
	}
}

// SquaresShadeParts tells how some of the parts are shaded.
func SquaresShadeParts(m arithmetic.ShadeParts) Told {
	number := In(scene.First, m.Number.String())
	shaded := Count(m.Count, "part") + " of " + Count(m.Each, "small square")
	return Told{
		Title: "Shade " + m.Number.String(),
		Ask:   Say("How many small squares are ", number, "?"),
		Hands: Say("Shade ", number, ": "+shaded+" each. That is ", In(scene.First, Count(m.Total, "small square")), "."),
		Desc:  scene.Same("Shaded: " + shaded + "."),
	}
}

// SquaresJoin tells how small squares are joined in columns.
func SquaresJoin(m arithmetic.JoinSquares) Told {
	return Told{
		Title: "Join in columns",
		Ask:   Say("How many full columns do they make?"),
		Hands: Say("Join the small squares in tens: "+Count(m.Total, "small square")+" make ", In(scene.Moved, Count(m.Columns, "column")), ". The amount stays."),
		Desc:  scene.Same(Count(m.Total, "small square") + " are joined in full columns of ten. The amount is the same."),
	}
}

// SquaresRead tells how the answer is read off what is shaded.
func SquaresRead(p arithmetic.Problem, m arithmetic.ReadSquares) Told {
	lies := inSquares(m.Counts)
	if m.Number.Form == arithmetic.Common || m.Number.Form == arithmetic.Percent {
		lies = shadedParts(m.Shaded, m.Parts) + " of " + arithmetic.Grouped(m.Parts) + " to a whole"
	}
	number := In(scene.Result, m.Number.String())
	t := Told{Title: "Read the answer", Ask: Say("Which number is shaded now?")}
	switch p.Kind {
	case arithmetic.Show:
		number.Role = scene.First
		t.Title, t.Ask = "Read the number", Say("Which number is shaded?")
		t.Hands = Say("Read what is shaded: "+lies+". That is ", number, SquaresSpoken(m.Number)+".")
	case arithmetic.Subtraction:
		t.Ask = Say("Which number is left?")
		t.Hands = Say("Read what is left: "+lies+". "+p.String()+" = ", number, ".")
	case arithmetic.Addition:
		t.Hands = Say("Read all that is shaded: "+lies+". "+p.String()+" = ", number, ".")
	default:
		t.Hands = Say("Read what is shaded: "+lies+". So ", In(scene.First, p.Left.String()), " = ", number, ".")
	}
	t.Desc = scene.Telling{Shown: t.Hands.String(), Hidden: SquaresAsks(p)}
	return t
}

// SquaresSpoken is how a decimal is said: ", sixty-two hundredths".
func SquaresSpoken(n arithmetic.Number) string {
	if n.Form == arithmetic.Decimal {
		return ", " + DecimalName(n)
	}
	return ""
}

// SquaresAsks is the question that a picture asks while its answer is hidden.
func SquaresAsks(p arithmetic.Problem) string {
	switch p.Kind {
	case arithmetic.Show:
		return "Which number is shaded?"
	case arithmetic.Addition:
		return "How much is that together?"
	case arithmetic.Subtraction:
		return "Take away " + secondOf(p) + ". How much is left?"
	case arithmetic.Comparison:
		return "Which is more, or are they the same?"
	case arithmetic.Claim:
		return "Is it so: " + p.String() + "?"
	case arithmetic.FractionForm:
		return "Which fraction is that?"
	case arithmetic.DecimalForm:
		return "Which decimal is that?"
	case arithmetic.PercentForm:
		return "How many hundredths, which percent is that?"
	}
	return "Which number goes in the blank: " + p.String() + "?"
}

func secondOf(p arithmetic.Problem) string {
	_, b, _ := p.Operands()
	return b.String()
}

// SquaresCompare tells how the two amounts are compared.
func SquaresCompare(p arithmetic.Problem, m arithmetic.CompareSquares) Told {
	why := SquaresWhy(p, m)
	lies := "Side by side: " + shadedParts(m.First, m.Parts) + " and " + shadedParts(m.Second, m.Parts) + "."
	return Told{
		Title: "Compare",
		Ask:   Say("On which square is more shaded?"),
		Hands: Say("Hold the squares side by side. ", why),
		Desc:  scene.Telling{Shown: lies + " " + why.String(), Hidden: lies + " " + SquaresAsks(p)},
	}
}

// SquaresWhy says why a comparison comes out as it does.
func SquaresWhy(p arithmetic.Problem, m arithmetic.CompareSquares) Phrase {
	a, b, _ := p.Operands()
	first, second := In(scene.First, shadedParts(m.First, m.Parts)), In(scene.Second, shadedParts(m.Second, m.Parts))
	number := [2]Span{In(scene.First, a.String()), In(scene.Second, b.String())}
	var why Phrase
	switch m.Relation {
	case arithmetic.Equal:
		why = Say(number[0], " and ", number[1], " are the same amount: ", first, " of "+arithmetic.Grouped(m.Parts)+" for both")
		if m.Parts == 1 {
			why = Say(number[0], " and ", number[1], " are the same amount: ", first, " for both")
		}
	case arithmetic.Greater:
		why = Say(first, " "+hold(m.First)+" more than ", second, ", so ", number[0], " is more than ", number[1])
	default:
		why = Say(first, " "+hold(m.First)+" "+fewer(m.First)+" than ", second, ", so ", number[0], " is less than ", number[1])
	}
	if p.Kind == arithmetic.Claim && p.Rel != m.Relation {
		why = append(why, Say(". "+p.String()+" is not true")...)
	}
	return append(begun(why), Span{Text: "."})
}

func fewer(count int64) string {
	if count == 1 {
		return "less"
	}
	return "fewer"
}

// begun is a phrase with a large first letter.
func begun(p Phrase) Phrase {
	p[0].Text = begin(p[0].Text)
	return p
}

// SquaresMore is how much more is shaded on one of two squares: "2 hundredths more".
func SquaresMore(m arithmetic.CompareSquares) string {
	return Count(m.Gap, Parts(m.Parts, 1)) + " more"
}

// SquaresTitle names the picture of a problem; answered is its equation.
func SquaresTitle(p arithmetic.Problem, a arithmetic.Answer, answered string) scene.Telling {
	switch p.Kind {
	case arithmetic.Show:
		return scene.Telling{Shown: answered, Hidden: "Which number is shaded?"}
	case arithmetic.Claim, arithmetic.Comparison:
		return BarVerdict(p, a)
	case arithmetic.FractionForm, arithmetic.DecimalForm, arithmetic.PercentForm:
		return scene.Telling{Shown: p.String() + ": " + answered, Hidden: p.String()}
	}
	return scene.Telling{Shown: answered, Hidden: Asked(p)}
}

// SquaresSo is the answer as an equation.
func SquaresSo(equation string) string { return "So " + equation + "." }

// SquaresIs says which number is shaded, as it is said.
func SquaresIs(m arithmetic.ReadSquares) string {
	return "That is " + m.Number.String() + SquaresSpoken(m.Number) + ": " + arithmetic.Grouped(m.Shaded) + "/" + arithmetic.Grouped(m.Parts) + "."
}

// SquaresSplitAs describes a square that was cut in parts of which some are shaded.
func SquaresSplitAs(m arithmetic.SplitSquare, s arithmetic.ShadeParts) string {
	return SquaresSplit(m).Desc.Shown + " " + Count(s.Count, "part") + " " + hold(s.Count) + " shaded for " + s.Number.String() + "."
}
