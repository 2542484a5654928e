package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

var arrayRoles = [2]scene.Role{scene.First, scene.Second}

// arraySide is "3 rows of 4", or a number.
func arraySide(s arithmetic.ArraySide) string {
	if !s.IsArray {
		return g(s.Total)
	}
	return rowsOf(s.Rows, s.Cols)
}

// ArrayBoth says how to lay out both sides of a statement.
func ArrayBoth(m arithmetic.LayArrays) (title string, hands, ask Phrase, desc scene.Telling) {
	a, b := m.Sides[0], m.Sides[1]
	title, ask = "Lay out both arrays", Say("How are the two arrays alike? How do they differ?")
	switch {
	case a.IsArray && b.IsArray:
		hands = Say("Lay out ", In(scene.First, arraySide(a)), ". "+beside("Beside", a.Rows)+" lay ", In(scene.Second, arraySide(b)), ".")
	case a.IsArray:
		title, ask = "Lay out the array", Say("How many do you think there are?")
		hands = Say("Lay out ", In(scene.First, arraySide(a)), ". Write ", In(scene.Second, arraySide(b)), beside(" beside", a.Rows)+".")
	default:
		title, ask = "Lay out the array", Say("How many do you think there are?")
		hands = Say("Write ", In(scene.First, arraySide(a)), ". Lay out ", In(scene.Second, arraySide(b)), " beside it.")
	}
	return title, hands, ask, scene.Same(arraySides(m.Sides))
}

func arraySides(sides [2]arithmetic.ArraySide) string {
	name := func(s arithmetic.ArraySide) string {
		if s.IsArray {
			return "an array of " + arraySide(s)
		}
		return "the number " + arraySide(s)
	}
	return capital(name(sides[0])) + "; beside it " + name(sides[1]) + "."
}

// ArrayTurned says how to turn the first array.
func ArrayTurned(m arithmetic.TurnArray) (title string, hands, ask Phrase, desc scene.Telling) {
	hands = Say("Turn the first array on its side: ", In(scene.First, arraySide(m.From)), " become ", In(scene.Second, arraySide(m.To)), ".")
	return "Turn the array", hands, Say("Did turning it change how many there are?"),
		scene.Same(arraySides([2]arithmetic.ArraySide{m.From, m.To}) + " The second is the first, turned on its side.")
}

// ArrayCounted says how many each side has.
func ArrayCounted(m arithmetic.CountArrays) (title string, hands, ask Phrase, desc scene.Telling) {
	said := arraySides(m.Sides)
	for i, s := range m.Sides {
		if s.IsArray {
			if len(hands) > 0 {
				hands = Say(hands, " ")
			}
			hands = Say(hands, capital(rowsAre(s.Rows, s.Cols)), In(arrayRoles[i], g(s.Total)), ".")
			said += " " + capital(rowsAre(s.Rows, s.Cols)) + g(s.Total) + "."
		}
	}
	return "Count both", Say("Count. ", hands), Say("How many are in each?"), scene.Same(said)
}

// ArrayJudged says what stands between the two sides; why is the same for the
// whole lesson.
func ArrayJudged(p arithmetic.Problem, sides [2]arithmetic.ArraySide, m arithmetic.JudgeArrays) (title string, hands, ask Phrase, desc scene.Telling, why Phrase) {
	a, b := In(scene.First, g(sides[0].Total)), In(scene.Second, g(sides[1].Total))
	for i, s := range sides {
		if s.IsArray {
			why = append(why, Say(capital(rowsAre(s.Rows, s.Cols)), In(arrayRoles[i], g(s.Total)), ". ")...)
		}
	}
	var is Phrase
	switch m.Relation {
	case arithmetic.Equal:
		is = Say("Both are ", a, ", so they are equal.")
	case arithmetic.Less:
		is = Say(b, " is "+g(m.Gap)+" more than ", a, ".")
	default:
		is = Say(a, " is "+g(m.Gap)+" more than ", b, ".")
	}
	why = append(why, is...)
	if p.Kind == arithmetic.Claim && p.Rel != m.Relation {
		why = append(why, Say(" So "+p.String()+" is not true.")...)
	}
	desc = scene.Telling{Shown: arraySides(sides) + " " + why.String(), Hidden: arraySides(sides) + " Which is more, or are they equal?"}
	if p.Kind == arithmetic.Claim {
		desc.Hidden = arraySides(sides) + " Is " + p.String() + "?"
	}
	return "Compare", is, Say("Which is more, or are they equal?"), desc, why
}
