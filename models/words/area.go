package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of products as areas. The square is one whole: the second factor is
// shaded in its columns, the first taken in its rows.

// AreaOtherKind and its like say why the area of a square cannot show a problem.
func AreaOtherKind() string {
	return "a fraction area shows a product of which one number is in parts, and a fraction of a fraction"
}

// AreaZero says that there is nothing to shade.
func AreaZero() string { return "with a factor of 0 there is nothing to shade" }

// AreaTooWide says that too many squares would be needed.
func AreaTooWide(most int64) string {
	return "a fraction area has sides up to " + arithmetic.Grouped(most) + " wholes"
}

// AreaTooFine says that the small parts could not be seen.
func AreaTooFine(rows, columns int64) string {
	return "a square of " + arithmetic.Grouped(rows) + " rows and " + arithmetic.Grouped(columns) + " columns would have parts too small to see"
}

// AreaPaper is what the hands work with.
func AreaPaper(n int64) string {
	if n == 1 {
		return "square of paper"
	}
	return "squares of paper of one size"
}

// areaSquare is the unit squares in a sentence: the square, every square.
func areaSquare(side arithmetic.AreaSide, copies int64) string {
	if side.Squares*copies == 1 {
		return "the square"
	}
	return "every square"
}

// AreaLay says how the second factor is laid along the squares.
func AreaLay(m arithmetic.LayRow) Told {
	side, named := m.Side, In(scene.Second, m.Side.Number.String())
	den, count := side.Parts.Den(), side.Parts.Num()
	row := "Lay " + Count(side.Squares, "square") + " in a row"
	var hands Phrase
	switch {
	case den == 1 && side.Squares == 1:
		hands = Say("Take one square and shade all of it: ", named, ".")
	case den == 1:
		hands = Say(row+" and shade all of them: ", named, ".")
	case side.Split:
		hands = Say(row+". Shade "+arithmetic.Grouped(side.Wholes())+", mark the last into "+Count(den, "equal column")+" and shade "+
			arithmetic.Grouped(side.Part().Num())+" of them: ", named, ".")
	case side.Squares == 1:
		hands = Say("Mark a square into "+Count(den, "equal column")+" and shade "+arithmetic.Grouped(count)+" of them: ", named, ".")
	default:
		hands = Say(row+". Mark each into "+Count(den, "equal column")+" and shade "+Count(count, "column")+": ", named, ".")
	}
	if m.Copies > 1 {
		hands = append(hands, Say(" Make "+arithmetic.Grouped(m.Copies)+" such rows, one under the other.")...)
	}
	ask := Say("Which number tells how many columns to shade?")
	if den == 1 {
		ask = Say("How many squares does ", named, " shade in a row?")
	}
	return Told{
		Title: "Lay out " + m.Side.Number.String(), Hands: hands, Ask: ask,
		Desc: scene.Same(areaLies(m)),
	}
}

// areaLies says what the laid squares show. Counts are in words, so that they are
// not taken for the answer.
func areaLies(m arithmetic.LayRow) string {
	side := m.Side
	den := Name(side.Parts.Den())
	lies := "A row of " + Name(side.Squares) + " unit " + plural("square", side.Squares) + ", each one whole"
	if side.Squares == 1 {
		lies = "A unit square, which is one whole"
	}
	switch {
	case side.Parts.Den() == 1:
		lies += ", all shaded"
	case side.Split:
		lies += ": " + Name(side.Wholes()) + " shaded, and " + Name(side.Part().Num()) + " of " + den + " equal columns of the last"
	case side.Squares > 1:
		lies += " and cut into " + den + " equal columns: " + Name(side.Parts.Num()) + " " + plural("column", side.Parts.Num()) + " shaded"
	default:
		lies += ", cut into " + den + " equal columns: " + Name(side.Parts.Num()) + " shaded"
	}
	lies += ". That is the " + side.Number.String() + " along the top"
	if m.Copies > 1 {
		lies += ", in " + Name(m.Copies) + " rows of squares, one under the other"
	}
	return lies + "."
}

// AreaCut says that the squares are cut the other way.
func AreaCut(lay arithmetic.LayRow, m arithmetic.CutRows) Told {
	where := areaSquare(lay.Side, lay.Copies)
	if m.Last && lay.Copies > 1 {
		where = "the last row of squares"
	}
	hands := "Mark " + where + " into " + Count(m.Into, "equal row") + "."
	desc := areaLies(lay) + " " + upper(where) + " is cut into " + Name(m.Into) + " equal rows as well"
	if !m.Last {
		hands += " Now " + Count(m.Whole, "small part") + " make 1 whole."
		desc += ", so " + Name(m.Whole) + " small parts make one whole"
	}
	return Told{
		Title: "Cut it the other way, into " + Parts(m.Into, 2), Hands: Say(hands),
		Ask:  Say("How many rows does the first number ask for in each whole?"),
		Desc: scene.Same(desc + "."),
	}
}

// AreaTake says how many of the rows are taken.
func AreaTake(lay arithmetic.LayRow, cut arithmetic.CutRows, m arithmetic.TakeRows) Told {
	first, second := In(scene.First, m.Side.Number.String()), In(scene.Second, lay.Side.Number.String())
	var hands Phrase
	switch {
	case m.Side.Split:
		hands = Say("Keep "+Count(m.Side.Wholes(), "whole row")+" and "+arithmetic.Grouped(m.Side.Part().Num())+" of the "+
			arithmetic.Grouped(cut.Into)+" parts of the next: ", first, ". Leave the rest out.")
	case lay.Copies > 1:
		hands = Say("Take "+Count(m.Rows, "row")+" from the top, "+arithmetic.Grouped(cut.Into)+" in each whole: ", first, " of ", second, ".")
	default:
		hands = Say("Shade "+Count(m.Rows, "row")+" from the top, over the first shading: ", first, ". What is shaded twice is ", first, " of ", second, ".")
	}
	return Told{
		Title: "Take " + m.Side.Number.String() + " of it", Hands: hands,
		Ask:  Say("How many of the rows make ", first, "?"),
		Desc: scene.Same(areaTaken(lay, cut, m)),
	}
}

func areaTaken(lay arithmetic.LayRow, cut arithmetic.CutRows, m arithmetic.TakeRows) string {
	rows := Name(m.Rows) + " " + plural("row", m.Rows)
	if m.Side.Split {
		rows = Name(m.Side.Wholes()) + " whole " + plural("row", m.Side.Wholes()) + " and " + Name(m.Side.Part().Num()) + " of the " + Name(cut.Into) + " parts of the next"
	}
	return AreaCut(lay, cut).Desc.Shown + " From the top, " + rows + " " + isOrAre(m.Rows) + " taken: " + m.Side.Number.String() + " down the side."
}

// AreaSoFar is what is described before the parts are counted. cut and take are nil
// where the first factor is a whole number.
func AreaSoFar(lay arithmetic.LayRow, cut *arithmetic.CutRows, take *arithmetic.TakeRows) string {
	if cut == nil {
		return areaLies(lay)
	}
	return areaTaken(lay, *cut, *take)
}
