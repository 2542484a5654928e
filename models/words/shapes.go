package words

import (
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of parts of shapes. A shape of paper is one whole.

// a is a shape with its article: a square, an octagon.
func a(s arithmetic.Shape) string {
	if s == arithmetic.Octagon {
		return "an " + string(s)
	}
	return "a " + string(s)
}

// ShapePaper is what the hands work with.
func ShapePaper(s arithmetic.Shape, n int) string {
	if n == 1 {
		return "paper " + string(s)
	}
	return "paper " + string(s) + "s of one size"
}

// ShapeCutTitle heads the step in which a shape is cut.
func ShapeCutTitle(m arithmetic.CutShape) string {
	if m.Nth > 0 {
		return "Cut another way"
	}
	return "Make " + Parts(m.Cut.Parts, 2)
}

// ShapeCutHands says how a shape is cut.
func ShapeCutHands(s arithmetic.Shape, m arithmetic.CutShape) Phrase {
	paper := "Cut a paper " + string(s) + " "
	if m.Nth > 0 {
		paper = "Cut another " + string(s) + " of the same size "
	}
	return Say(paper + shapeWay(s, m.Cut) + ".")
}

// shapeWay says where the cuts go, and what comes of it.
func shapeWay(s arithmetic.Shape, c arithmetic.ShapeCut) string {
	into := "into " + Count(c.Parts, "equal part")
	switch c.Way {
	case arithmetic.InGrid:
		switch {
		case c.Rows == 1 && c.Cols == 2:
			return into + ", down the middle"
		case c.Rows == 1:
			return into + ", side by side"
		case c.Cols == 1:
			return into + ", one under the other"
		}
		return into + ", in " + Count(c.Rows, "row") + " of " + arithmetic.Grouped(c.Cols)
	case arithmetic.Diagonal:
		return into + ", from corner to corner"
	}
	return into + ", " + fromCenter(s, c)
}

// cornersIn is how many corners a regular shape has.
var cornersIn = map[arithmetic.Shape]int64{arithmetic.Triangle: 3, arithmetic.Pentagon: 5, arithmetic.Hexagon: 6, arithmetic.Octagon: 8}

// fromCenter says where the cuts of a regular shape go.
func fromCenter(s arithmetic.Shape, c arithmetic.ShapeCut) string {
	k, corner := cornersIn[s], "corner"
	if c.Way == arithmetic.FromSides {
		corner = "middle of a side"
	}
	switch {
	case c.Parts == 2*k:
		return "from the center to every corner and to the middle of every side"
	case c.Parts == 2 && k%2 == 0 && c.Way == arithmetic.FromCorners:
		return "from corner to corner through the center"
	case c.Parts == 2 && k%2 == 0:
		return "from the middle of a side to the middle of the side across from it"
	case c.Parts == 2:
		return "from a corner to the middle of the side across from it"
	case k%c.Parts != 0:
		return "from the center, with square corners there"
	case c.Parts == k && c.Way == arithmetic.FromSides:
		return "from the center to the middle of every side"
	case c.Parts == k:
		return "from the center to every corner"
	case c.Way == arithmetic.FromSides:
		return "from the center to the middle of every " + ordinal(k/c.Parts) + " side"
	}
	return "from the center to every " + ordinal(k/c.Parts) + " " + corner
}

// ShapeAskCut asks how many parts make a whole, or whether there is another way.
func ShapeAskCut(m arithmetic.CutShape) Phrase {
	if m.Nth > 0 {
		return Say("How else can it be cut into " + Count(m.Cut.Parts, "equal part") + "?")
	}
	return Say("How many " + Parts(m.Cut.Parts, 2) + " make one whole?")
}

// ShapeShadeTitle heads the step in which parts are shaded.
func ShapeShadeTitle(m arithmetic.ShadeShapeParts) string {
	title := "Shade " + barParts(m.Count, m.Cut.Parts)
	if m.Nth > 0 {
		title += " again"
	}
	return title
}

// ShapeShade says how many parts are shaded.
func ShapeShade(s arithmetic.Shape, m arithmetic.ShadeShapeParts) Phrase {
	named := In(scene.First, NumberName(m.Number))
	switch {
	case m.Nth > 0 && m.Count == 0:
		return Say("Shade none of these parts either: ", named, ".")
	case m.Nth > 0:
		return Say("Shade "+Count(m.Count, "part")+" of this one too. The parts have another shape, and it is still ", named, " of the "+string(s)+".")
	case m.Count == 0:
		return Say("Shade none of the parts: ", named, " of the "+string(s)+".")
	}
	return Say("Shade "+Count(m.Count, "part")+": ", named, " of the "+string(s)+".")
}

// ShapeAskShade asks what the upper number of a fraction says, or whether the shape of
// a part matters.
func ShapeAskShade(s arithmetic.Shape, m arithmetic.ShadeShapeParts) Phrase {
	if m.Nth > 0 {
		return Say("Is a part of this " + string(s) + " as large as a part of the other?")
	}
	return Say("Which number tells how many parts to shade?")
}

// ShapeDesc says what a picture of a part of a shape shows: the cuts that are made,
// and how many of the shapes are shaded.
func ShapeDesc(p arithmetic.Problem, n arithmetic.Number, cuts []arithmetic.ShapeCut, shaded int) scene.Telling {
	said := upper(a(p.Shape)) + " is one whole, cut " + shapeWay(p.Shape, cuts[0]) + "."
	asks := said
	parts := Name(n.Value.Num()) + " of " + Name(n.Value.Den()) + " parts shaded"
	if shaded > 0 {
		said += " " + upper(parts) + ", which is " + n.String() + "."
	}
	if len(cuts) > 1 {
		other := " Another of the same size is cut " + shapeWay(p.Shape, cuts[1]) + "."
		said, asks = said+other, asks+other
	}
	if shaded > 1 {
		said += " There " + parts + " are " + n.String() + " too."
	}
	if shaded == 0 {
		return scene.Same(said)
	}
	return scene.Telling{Shown: said, Hidden: asks + " How many parts are " + n.String() + " of it?"}
}

// ShapesOtherKind and its like say why parts of a shape cannot show a problem.
func ShapesOtherKind() string {
	return "parts of a shape show a fraction of a square, rectangle, triangle, pentagon, hexagon or octagon"
}

// ShapesNoFraction says that only a fraction has parts.
func ShapesNoFraction() string { return "only a fraction says how many equal parts there are" }

// ShapeParts says in how many equal parts a shape can be cut.
func ShapeParts(s arithmetic.Shape, counts []int64) string {
	last := len(counts) - 1
	if counts[last] == int64(len(counts)+1) { // all from 2 on
		return a(s) + " is cut into 2 to " + strconv.FormatInt(counts[last], 10) + " equal parts"
	}
	names := make([]string, len(counts))
	for i, n := range counts {
		names[i] = strconv.FormatInt(n, 10)
	}
	return a(s) + " cut from its center has " + strings.Join(names[:last], ", ") + " or " + names[last] + " equal parts"
}
