package words

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Reasons why a hundredths square cannot show a problem.
var (
	SquaresKind   = errors.New("a hundredths square shows decimals and percents, compares, adds and takes away decimals, and gives them other forms")
	SquaresFine   = errors.New("a hundredths square shows tenths and hundredths; smaller parts have a place-value table")
	SquaresLarge  = errors.New("a hundredths square shows at most 3 wholes")
	SquaresParts  = errors.New("100 small squares do not come out even in such parts")
	SquaresSame   = errors.New("the number is in that form already")
	SquaresBlank  = errors.New("a hundredths square has tenths and hundredths only")
	SquaresTaken  = errors.New("more is taken away than there is")
	SquaresDigits = errors.New("there are no tenths or hundredths in it")
)

// SquaresPaper is what lies on the table.
func SquaresPaper(count int64) string { return plural("paper square", count) + " of 10 by 10" }

// inSquares counts hundredths as they lie: "1 whole square, 6 columns and 2 small
// squares". Of parts of 10 to a whole there are no small squares.
func inSquares(c arithmetic.Counts) string {
	var list []string
	for power, name := range [...]string{"small square", "column", "large square"} {
		if c[power] > 0 {
			list = append([]string{Count(c[power], name)}, list...)
		}
	}
	if len(list) == 0 {
		return "nothing"
	}
	return List(list)
}

// shadedParts counts shaded parts: 3 columns, 30 small squares.
func shadedParts(count, parts int64) string {
	switch parts {
	case 1:
		return Count(count, "large square")
	case 10:
		return Count(count, "column")
	}
	return Count(count, "small square")
}

// squareOf says how a square is cut.
func squareOf(parts int64) string {
	switch parts {
	case 1:
		return "not cut"
	case 10:
		return "cut in 10 columns"
	}
	return "cut in 10 columns of 10 small squares"
}

// SquaresRule tells how the squares are cut.
func SquaresRule(m arithmetic.RuleSquares) Told {
	these, one := "a large square", "The large square is 1 whole."
	if m.Squares > 1 {
		these, one = arithmetic.Grouped(m.Squares)+" large squares", "Each large square is 1 whole."
	}
	t := Told{
		Title: "Draw the square",
		Ask:   Say("How many equal parts make 1 whole?"),
		Desc:  scene.Same("One whole is a large square, " + squareOf(m.Parts) + "."),
	}
	switch m.Parts {
	case 1:
		t.Hands = Say("Draw " + these + ". " + one)
	case 10:
		t.Hands = Say("Draw " + these + " and cut it in 10 columns. " + one + " Each column is one tenth of it.")
	default:
		t.Hands = Say("Draw " + these + " on squared paper, 10 by 10. " + one + " A column is one tenth of it, a small square one hundredth.")
	}
	if m.Squares > 1 {
		t.Title = "Draw the squares"
		if m.Parts == 10 {
			t.Hands = Say("Draw " + these + " and cut each in 10 columns. " + one + " Each column is one tenth.")
		}
	}
	return t
}

// SquaresDigit tells how what a digit is worth is shaded.
func SquaresDigit(m arithmetic.ShadeDigit, counts arithmetic.Counts) Told {
	name, things := [...]string{"hundredth", "tenth", "whole"}[m.Power], [...]string{"small square", "column", "large square"}[m.Power]
	t := Told{
		Title: "Shade " + Count(m.Count, things),
		Ask:   Say("What does the "+[...]string{"hundredths", "tenths", "ones"}[m.Power]+" digit of ", In(scene.First, m.Number.String()), " say?"),
		Desc:  scene.Same("Shaded so far: " + inSquares(counts) + "."),
	}
	if m.Count == 0 {
		t.Title = "No " + name + "s"
		t.Hands = Say("Shade no " + plural(things, 0) + ": there are no " + name + "s. The 0 keeps their place.")
		t.Desc = scene.Same("Shaded so far: " + inSquares(counts) + ". There are no " + name + "s.")
		return t
	}
	each := "Each is one " + name + "."
	if m.Count == 1 {
		each = "It is one " + name + "."
	}
	if m.Power == 2 {
		each = "Each is 1 whole."
		if m.Count == 1 {
			each = "It is 1 whole."
		}
	}
	t.Hands = Say("Shade ", In(scene.First, Count(m.Count, things)), ". "+each)
	return t
}

// SquaresShade tells how a number of the problem is shaded at once.
func SquaresShade(m arithmetic.ShadeSquares, side bool) Told {
	number := In([...]scene.Role{scene.First, scene.Second}[m.Nth], m.Number.String())
	t := Told{
		Title: "Shade " + m.Number.String(),
		Ask:   Say("What do we shade for ", number, "?"),
		Desc:  scene.Same(SquaresLies(m)),
	}
	where := "Shade "
	if side {
		where = [...]string{"On the first square, shade ", "On another square of the same size, shade "}[m.Nth]
	}
	t.Hands = Say(where, number, ": "+asShaded(m)+".")
	return t
}

// asShaded says what is shaded for a number: columns and small squares, or so many
// small squares out of 100 where it is not said by its places.
func asShaded(m arithmetic.ShadeSquares) string {
	if m.Number.Form == arithmetic.Percent || m.Number.Form == arithmetic.Common && m.Parts == 100 {
		text := Count(m.Total, "small square") + " out of 100"
		if m.Counts[1] > 0 && m.Total%100 > 10 {
			text += ", which is " + inSquares(m.Counts)
		}
		return text
	}
	return inSquares(m.Counts)
}

// SquaresLies says how a number lies on its squares.
func SquaresLies(m arithmetic.ShadeSquares) string {
	square := " is shaded on a square "
	if m.Nth == 1 {
		square = " is shaded on another square of the same size, "
	}
	return m.Number.String() + square + squareOf(m.Parts) + ": " + inSquares(m.Counts) + "."
}

// SquarePlace is the name of what a digit counts: wholes, tenths, hundredths.
func SquarePlace(power int, count int64) string {
	return plural([...]string{"hundredth", "tenth", "whole"}[power], count)
}

// SquaresNumber says what is shaded for a number, by its digits.
func SquaresNumber(n arithmetic.Number, c arithmetic.Counts) string {
	return n.String() + " is shaded: " + inSquares(c) + "."
}

// SquaresShaded says what is shaded, without the number.
func SquaresShaded(c arithmetic.Counts) string { return "Shaded: " + inSquares(c) + "." }

// SquaresCut tells how shaded parts are cut in small squares.
func SquaresCut(m arithmetic.CutSquares) Told {
	number := In([...]scene.Role{scene.First, scene.Second}[m.Nth], m.Number.String())
	from, to := shadedParts(m.Count, m.Parts), In(scene.Moved, shadedParts(m.Total, m.Parts*m.Each))
	what := "every column in 10 small squares"
	switch {
	case m.Parts == 1 && m.Each == 10:
		what = "every large square in 10 columns"
	case m.Parts == 1:
		what = "every large square in 100 small squares"
	}
	t := Told{
		Title: "Cut " + m.Number.String() + " finer",
		Ask:   Say("How many "+plural(map[int64]string{10: "column", 100: "small square"}[m.Parts*m.Each], 0)+" is ", number, "?"),
		Hands: Say("Cut "+what+". The amount stays: "+from+" ", hold(m.Count), " ", to, "."),
		Desc:  scene.Same(m.Number.String() + " cut finer: " + from + " are " + shadedParts(m.Total, m.Parts*m.Each) + ". The amount is the same."),
	}
	if m.Count == 1 {
		t.Desc = scene.Same(m.Number.String() + " cut finer: " + from + " is " + shadedParts(m.Total, m.Parts*m.Each) + ". The amount is the same.")
	}
	if m.Count == 0 {
		t.Hands = Say("Cut " + what + ". Nothing is shaded, and that stays.")
	}
	return t
}

func hold(count int64) string {
	if count == 1 {
		return "is"
	}
	return "are"
}

// SquaresOn tells how the second number goes on where the first one ended.
func SquaresOn(m arithmetic.ShadeOn) Told {
	var list []string
	if m.Fill > 0 {
		text := Count(m.Fill, "small square")
		if m.Fill+m.From%10 == 10 {
			text += " to fill the column"
		}
		list = append(list, text)
	}
	if m.Columns > 0 {
		list = append(list, Count(m.Columns, "column"))
	}
	if m.Rest > 0 {
		list = append(list, Count(m.Rest, "small square"))
	}
	number := In(scene.Second, m.Number.String())
	t := Told{Title: "Shade " + m.Number.String() + " more", Ask: Say("What is shaded when we go on with ", number, "?")}
	if m.Count == 0 {
		t.Hands = Say("Shade nothing more: ", number, " adds nothing.")
		t.Desc = scene.Same("Nothing more is shaded for " + m.Number.String() + ".")
		return t
	}
	t.Hands = Say("Go on where it ends and shade ", number, " more: "+List(list)+".")
	t.Desc = scene.Same("After the first number, " + m.Number.String() + " more is shaded: " + List(list) + ".")
	return t
}

// SquaresCross tells how what is taken away is crossed out.
func SquaresCross(m arithmetic.CrossSquares) Told {
	number := In(scene.Second, m.Number.String())
	t := Told{
		Title: "Take away " + m.Number.String(),
		Ask:   Say("What do we cross out for ", number, "?"),
		Hands: Say("Cross out ", number, " from the end of what is shaded: "+inSquares(m.Counts)+"."),
		Desc:  scene.Telling{Shown: "Crossed out from the end: " + inSquares(m.Counts) + "."},
	}
	if m.Count == 0 {
		t.Hands = Say("Cross out nothing: ", number, " takes nothing away.")
	}
	return t
}
