package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

func factText(f arithmetic.Fact, result string) string {
	return g(f.Left) + " " + f.Op.String() + " " + g(f.Right) + " = " + result
}

// ArrayFamilyTitle names the facts of a product.
func ArrayFamilyTitle(p arithmetic.Problem, total int64) scene.Telling {
	return scene.Telling{Shown: p.String() + " = " + g(total), Hidden: p.String()}
}

// ArrayFamilyFact says how to read one fact off the array; done are the facts read
// so far, this one too.
func ArrayFamilyFact(m arithmetic.ReadFact, done []arithmetic.Fact) (title string, hands, ask Phrase, desc scene.Telling) {
	all := In(scene.Result, g(m.Result))
	title = g(m.Left) + " " + m.Op.String() + " " + g(m.Right)
	switch {
	case m.Op == arithmetic.Multiply && m.Left == m.Rows:
		hands, ask = Say("Read it as rows: "+rowsAre(m.Left, m.Right), all, "."), Say("How many are in all the rows?")
	case m.Op == arithmetic.Multiply:
		hands, ask = Say("Walk round to the side, and read it as columns: "+Count(m.Left, "column")+" of "+g(m.Right)+areOr(m.Left), all, "."), Say("Does it change how many there are?")
	case m.Right == m.Rows:
		hands, ask = Say("Share "+g(m.Left)+" among "+Count(m.Right, "row")+": there"+areOr(m.Result), all, " in each row."), Say("How many does each row get?")
	default:
		hands, ask = Say("Share "+g(m.Left)+" among "+Count(m.Right, "column")+": there"+areOr(m.Result), all, " in each column."), Say("How many does each column get?")
	}
	lay := "An array: " + rowsOf(m.Rows, m.Cols) + "."
	desc.Shown, desc.Hidden = lay, lay+" Which fact does it say when you read it in another way?"
	for _, f := range done {
		desc.Shown += " " + factText(f, g(f.Result)) + "."
	}
	return title, hands, ask, desc
}

func areOr(n int64) string {
	if n == 1 {
		return " is "
	}
	return " are "
}

// ArrayFamilyStory describes the whole story.
func ArrayFamilyStory(p arithmetic.Problem, facts []arithmetic.Fact) scene.Telling {
	f := facts[0]
	lay := "An array: " + rowsOf(f.Left, f.Right) + "."
	d := scene.Telling{Shown: lay + " It says", Hidden: lay + " Which facts of multiplying and dividing does it say?"}
	for i, f := range facts {
		if i > 0 {
			d.Shown += ","
		}
		d.Shown += " " + factText(f, g(f.Result))
	}
	d.Shown += "."
	return d
}
