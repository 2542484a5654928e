package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

var arrayRoles = [2]scene.Role{scene.First, scene.Second}

// arraySide is "3 rows of 4", or "3 rows of 4 and 3 rows of 2" of an array in
// parts, or a number.
func arraySide(s arithmetic.ArraySide) string {
	if !s.IsArray {
		return g(s.Total)
	}
	var parts []string
	for _, rows := range s.RowParts {
		for _, cols := range s.ColParts {
			parts = append(parts, rowsOf(rows, cols))
		}
	}
	return List(parts)
}

// arraySideAre is "3 rows of 4 are 12." as a sentence.
func arraySideAre(s arithmetic.ArraySide, role scene.Role) Phrase {
	all := In(role, g(s.Total))
	if s.Split() {
		return Say(capital(arraySide(s))+" are "+List(numbers(s.Parts))+": together ", all, ".")
	}
	return Say(capital(rowsAre(s.Rows, s.Cols)), all, ".")
}

// ArrayBoth says how to lay out both sides of a statement.
func ArrayBoth(m arithmetic.LayArrays) (title string, hands, ask Phrase, desc scene.Telling) {
	a, b := m.Sides[0], m.Sides[1]
	title, ask = "Lay out both arrays", Say("How are the two arrays alike? How do they differ?")
	switch {
	case a.IsArray && b.IsArray:
		hands = Say("Lay out ", In(scene.First, arraySide(a)), ". "+beside("Next to", a.Rows)+" lay ", In(scene.Second, arraySide(b)), ".")
		if a.Split() || b.Split() {
			hands = Say(hands, " Put a straw between two parts.")
		}
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
			if s.Split() {
				return "an array in two parts, " + arraySide(s)
			}
			return "an array of " + arraySide(s)
		}
		return "the number " + arraySide(s)
	}
	return capital(name(sides[0])) + " and " + name(sides[1]) + "."
}

// ArrayTurned says how to turn the first array.
func ArrayTurned(m arithmetic.TurnArray) (title string, hands, ask Phrase, desc scene.Telling) {
	hands = Say("Turn the first array on its side: ", In(scene.First, arraySide(m.From)), " become ", In(scene.Second, arraySide(m.To)), ".")
	return "Turn the array", hands, Say("Did turning it change how many there are?"),
		scene.Same(arraySides([2]arithmetic.ArraySide{m.From, m.To}) + " The second is the first, turned on its side.")
}

// ArrayCut says how to split the array that is whole as the other one is.
func ArrayCut(m arithmetic.CutArray) (title string, hands, ask Phrase, desc scene.Telling) {
	one, parts := 0, 1
	if m.Sides[0].Split() {
		one, parts = 1, 0
	}
	hands = Say("Split ", In(arrayRoles[one], arraySide(m.Sides[one])), " with a straw where the other array is split: now both have ",
		In(arrayRoles[parts], arraySide(m.Sides[parts])), ".")
	return "Split it the same way", hands, Say("Did splitting it change how many there are?"),
		scene.Same(arraySides(m.Sides) + " Split the same way, they look alike.")
}

// ArrayCounted says how many each side has.
func ArrayCounted(m arithmetic.CountArrays) (title string, hands, ask Phrase, desc scene.Telling) {
	said := arraySides(m.Sides)
	for i, s := range m.Sides {
		if s.IsArray {
			if len(hands) > 0 {
				hands = Say(hands, " ")
			}
			hands = Say(hands, arraySideAre(s, arrayRoles[i]))
			said += " " + arraySideAre(s, arrayRoles[i]).String()
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
			why = Say(why, arraySideAre(s, arrayRoles[i]), " ")
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
