package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// AreaCaption says under the squares what one whole is, before the parts are counted.
func AreaCaption(squares int64) string {
	if squares == 1 {
		return "1 whole"
	}
	return "each square is one whole"
}

// AreaCounted is the count of the parts under the squares, and what follows it.
func AreaCounted(m arithmetic.CountSmall) (count, rest string) {
	if m.Whole == 1 {
		return Count(m.Count, "whole"), ""
	}
	return Count(m.Count, "part") + ",", "and " + arithmetic.Grouped(m.Whole) + " make 1 whole"
}

// AreaAsked is AreaCounted while the count is asked for.
func AreaAsked(m arithmetic.CountSmall) (count, rest string) {
	if m.Whole == 1 {
		return "? wholes", ""
	}
	return "? parts,", "and " + arithmetic.Grouped(m.Whole) + " make one whole"
}

// AreaTitle is the title of every picture of a product.
func AreaTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.Left.String() + " = " + Answer(p, a), Hidden: Asked(p)}
}

// AreaSo ends the description of the whole story with the equation.
func AreaSo(equation string) string { return " So " + equation + "." }

// AreaCount says how many parts the rectangle has and what they come to. twice says
// that they are shaded twice. named is nil where the product has no other name.
func AreaCount(sofar string, m arithmetic.CountSmall, twice bool, named *arithmetic.NameArea) Told {
	shaded := "in the rectangle"
	if twice {
		shaded = "shaded twice"
	}
	product := In(scene.Result, m.Product.String())
	rows := Count(m.Rows, "row") + " of " + arithmetic.Grouped(m.Columns) + " are " + arithmetic.Grouped(m.Count) + "."
	if m.Rows == 1 {
		rows = "1 row of " + arithmetic.Grouped(m.Columns) + " is " + arithmetic.Grouped(m.Count) + "."
	}
	hands := Say("Count the small parts "+shaded+": "+rows+" "+upper(arithmetic.Grouped(m.Whole))+" make 1 whole, so they are ", product, ".")
	if m.Whole == 1 {
		hands = Say("Count the squares: "+rows+" That is ", product, ".")
	}
	desc := sofar + " The rectangle has " + m.Product.String() + " of a whole in it"
	if named != nil {
		hands = append(hands, areaName(*named)...)
		desc += ", which is " + named.To.String()
	}
	return Told{
		Title: "Count the small parts", Hands: hands,
		Ask:  Say("How many small parts are " + shaded + ", and how many make 1 whole?"),
		Desc: scene.Telling{Shown: desc + ".", Hidden: sofar + " How much of a whole is the rectangle?"},
	}
}

// areaName says why the last name is the same amount.
func areaName(m arithmetic.NameArea) Phrase {
	said := Say(" ")
	den := m.From.Value.Den()
	if m.Wholes > 0 && m.From.Form == arithmetic.Common {
		said = append(said, Say(upper(barParts(m.Wholes*den, den))+" make "+Count(m.Wholes, "whole")+". ")...)
	}
	if m.Every > 1 {
		said = append(said, Say("Every "+barParts(m.Every, den)+" are 1 "+Parts(den/m.Every, 1)+". ")...)
	}
	return append(said, Say("So it is ", In(scene.Result, m.To.String()), ".")...)
}

// AreaSplit says that the rectangle is split at the wholes of its sides.
func AreaSplit(sofar string, m arithmetic.SplitArea) Told {
	hands := Say("Draw a heavy line after the wholes. There are " + Count(int64(len(m.Parts)), "part") + ": ")
	desc := sofar + " It is split at the wholes into " + Name(int64(len(m.Parts))) + " parts: "
	for i, part := range m.Parts {
		glue := ", "
		switch i {
		case 0:
			glue = ""
		case len(m.Parts) - 1:
			glue = " and "
		}
		said := part.Down.String() + " × " + part.Across.String() + " = " + part.Product.String()
		hands, desc = append(hands, Say(glue+said)...), desc+glue+said
	}
	return Told{
		Title: "Split it at the wholes", Hands: append(hands, Span{Text: "."}),
		Ask:  Say("Which parts does the rectangle have, and how large is each?"),
		Desc: scene.Same(desc + "."),
	}
}

// AreaAdd says what the parts come to together.
func AreaAdd(sofar string, m arithmetic.AddAreas, named *arithmetic.NameArea) Told {
	hands := Say("Add the parts, wholes first: ", In(scene.Result, m.Sum.String()), ".")
	desc := sofar + " Together the parts are " + m.Sum.String()
	if named != nil {
		hands, desc = append(hands, areaName(*named)...), desc+", which is "+named.To.String()
	}
	return Told{
		Title: "Add the parts", Hands: hands, Ask: Say("How much are the parts together?"),
		Desc: scene.Telling{Shown: desc + ".", Hidden: sofar + " How much are the parts together?"},
	}
}

// AreaPartWholes is the label of the part that is made of whole squares.
func AreaPartWholes(n int64) string { return Count(n, "whole") }
