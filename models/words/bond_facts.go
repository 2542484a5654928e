package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// FamilyPart fills a part of the bond of a family, or a factor of one of products.
func FamilyPart(m arithmetic.LayAmount, add arithmetic.AddParts, times, counted bool) Told {
	if !times {
		return BondPart(m, arithmetic.WholeParts{Parts: add.Parts, Whole: add.Whole}, counted)
	}
	t := Told{
		Title: "Write the rows",
		Hands: Say("Write ", amount(m.Amount), " on one plate: that many rows."),
		Ask:   Say("Which number tells how many rows there are?"),
		Desc:  scene.Same("One plate says " + g(m.Amount.N) + ". The other plate and the product are not filled yet."),
	}
	if m.At == 1 {
		t.Title = "Write how many in a row"
		t.Hands = Say("Write ", amount(m.Amount), " on the other plate: that many in each row.")
		t.Ask = Say("Which number tells how many are in each row?")
		t.Desc = scene.Same("Two plates say " + g(add.Parts[0].N) + " and " + g(add.Parts[1].N) + ". The product is not known yet.")
	}
	return t
}

// FamilyWhole finds what both numbers make.
func FamilyWhole(m arithmetic.AddParts, times, counted bool) Told {
	if !times {
		t := BondTogether(m, arithmetic.WholeParts{Parts: m.Parts, Whole: m.Whole}, counted)
		t.Desc = scene.Same(t.Desc.Shown)
		return t
	}
	return Told{
		Title: "Find the product",
		Hands: sentence("Lay out the rows, or say the fact: ", amounts("×", m.Parts...), " = ", amount(m.Whole)),
		Ask:   Say("How many are there in all the rows?"),
		Desc:  scene.Same(familyBond(m, true) + "."),
	}
}

// bondFact is 8 − 3 = 5.
func bondFact(f arithmetic.BondFact) string {
	return g(f.A.N) + " " + f.Op.String() + " " + g(f.B.N) + " = " + g(f.C.N)
}

func bondFacts(facts []arithmetic.BondFact) string {
	var list []string
	for _, f := range facts {
		list = append(list, bondFact(f))
	}
	return List(list)
}

// factSaid is a fact in the roles of its numbers.
func factSaid(f arithmetic.BondFact) Phrase {
	return Say(amounts(f.Op.String(), f.A, f.B), " = ", amount(f.C))
}

func factsSaid(facts []arithmetic.BondFact) Phrase {
	said := factSaid(facts[0])
	for _, f := range facts[1:] {
		said = Say(said, " and ", factSaid(f))
	}
	return said
}

// FamilyJoin writes the facts that put both numbers together.
func FamilyJoin(m arithmetic.JoinFacts) Told {
	what, title := "Cover the whole with a finger. The two parts make it in either order: ", "Write the addition facts"
	if m.Facts[0].Op == arithmetic.Multiply {
		what, title = "Cover the product with a finger. The two numbers make it in either order: ", "Write the multiplication facts"
	}
	if len(m.Facts) == 1 {
		what = "Both numbers are the same, so there is one such fact: "
	}
	return Told{
		Title: title,
		Hands: sentence(what, factsSaid(m.Facts)),
		Ask:   Say("Does it matter which of the two comes first?"),
		Desc:  scene.Telling{Shown: "Beside the bond: " + bondFacts(m.Facts) + ".", Hidden: "Beside the bond: " + bondFact(m.Facts[0]) + ". Which other facts put the two together?"},
	}
}

// FamilySplit writes the facts that take one of them from the whole.
func FamilySplit(m arithmetic.SplitFacts) Told {
	what, title := "Now cover one part. The whole without it is the other part: ", "Write the subtraction facts"
	if m.Facts[0].Op == arithmetic.Divide {
		what, title = "Now cover one of the two numbers. The product divided by the other gives it: ", "Write the division facts"
	}
	return Told{
		Title: title,
		Hands: sentence(what, factsSaid(m.Facts)),
		Ask:   Say("What is left when you cover one of the two numbers?"),
		Desc:  scene.Telling{Shown: "Beside the bond there are also " + bondFacts(m.Facts) + ".", Hidden: "Beside the bond there is room for the facts that start with the whole. What are they?"},
	}
}

// familyBond describes the three numbers of a family.
func familyBond(add arithmetic.AddParts, times bool) string {
	a, b, c := g(add.Parts[0].N), g(add.Parts[1].N), g(add.Whole.N)
	if times {
		return c + " joined to " + a + " and " + b + ", which multiply to make it"
	}
	return "A number bond. The whole is " + c + " and its parts are " + a + " and " + b
}

// Family is the title and the description of a whole family.
func Family(p arithmetic.Problem, add arithmetic.AddParts, facts []arithmetic.BondFact) (title, desc scene.Telling) {
	var list []string
	for _, f := range facts {
		list = append(list, bondFact(f))
	}
	bond := familyBond(add, facts[0].Op == arithmetic.Multiply)
	title = scene.Telling{Shown: p.String() + ": " + strings.Join(list, ", "), Hidden: Asked(p)}
	desc = scene.Telling{Shown: bond + ". The facts: " + List(list) + ".", Hidden: bond + ". One fact is " + list[0] + ". What are the others?"}
	return title, desc
}
