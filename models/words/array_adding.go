package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayAdding is a sum of two terms, one of which is an array at least. Sketch is
// set where there are too many to lay out.
type ArrayAdding struct {
	Problem arithmetic.Problem
	Terms   [2]arithmetic.Term
	Join    arithmetic.JoinTerms
	Sketch  bool
}

// term is "3 rows of 4", or "2" of a number.
func (a ArrayAdding) term(i int) string {
	if t := a.Terms[i]; t.IsArray {
		return rowsOf(t.Rows, t.Cols)
	}
	return g(a.Terms[i].Total)
}

// side is what stands at one side, for a description: "an array of 3 rows of 4".
func (a ArrayAdding) side(i int) string {
	if a.Terms[i].IsArray {
		return "an array of " + a.term(i)
	}
	return "the number " + a.term(i)
}

func (a ArrayAdding) both() string { return capital(a.side(0)) + " and " + a.side(1) + "." }

// Laid says how to lay out both terms.
func (a ArrayAdding) Laid() (title string, hands, ask Phrase, desc scene.Telling) {
	lay := "Lay out "
	if a.Sketch {
		lay = "Sketch "
	}
	hands = Say(lay, In(scene.First, a.term(0)), ". Next to that, ", In(scene.Second, a.term(1)), ".")
	return "Lay out both parts", hands, Say("Which part is an array?"), scene.Same(a.both())
}

// Counted says how to count a product, which comes before adding.
func (a ArrayAdding) Counted(m arithmetic.CountTerm) (title string, hands, ask Phrase, desc scene.Telling) {
	title = g(m.Rows) + " × " + g(m.Cols)
	fact := capital(rowsAre(m.Rows, m.Cols))
	hands = Say("Multiply first. "+fact, In(arrayRoles[m.Nth], g(m.Total)), ".")
	if m.Nth == 1 && a.Terms[0].IsArray {
		hands = Say("Then the other array. "+fact, In(arrayRoles[m.Nth], g(m.Total)), ".")
	}
	ask = Say("Which do you work first, and why?")
	shown := a.both() + " " + fact + g(m.Total) + "."
	return title, hands, ask, scene.Telling{Shown: shown, Hidden: a.both() + " How many are in " + rowsOf(m.Rows, m.Cols) + "?"}
}

// Joined says how to add the two terms.
func (a ArrayAdding) Joined() (title string, hands, ask Phrase, desc scene.Telling) {
	hands = Say("Now add: ", In(scene.First, g(a.Join.Terms[0])), " and ", In(scene.Second, g(a.Join.Terms[1])), " make ", In(scene.Result, g(a.Join.Sum)), ".")
	return "Add both parts", hands, Say("How many are there in all?"), a.Story()
}

// Story describes the whole story.
func (a ArrayAdding) Story() scene.Telling {
	shown := a.both()
	for _, t := range a.Terms {
		if t.IsArray {
			shown += " " + capital(rowsAre(t.Rows, t.Cols)) + g(t.Total) + "."
		}
	}
	return scene.Telling{
		Shown:  shown + " Together " + sums([]int64{a.Join.Terms[0], a.Join.Terms[1]}, a.Join.Sum) + ".",
		Hidden: a.both() + " How many are there in all?",
	}
}
