package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of bar diagrams whose bar is a whole in parts. Each number is a strip
// of paper with the number written on it.

// DiagramStrips is what the hands work with: n strips of paper.
func DiagramStrips(n int64) string { return plural("paper strip", n) }

// DiagramNotToScale stands under a diagram with pieces that are longer than their
// numbers say.
const DiagramNotToScale = "not to scale"

// amount is a number of a problem in its role: the numbers take turns, and what is
// asked is the result.
func amount(a arithmetic.Amount) Span {
	role := scene.Result
	if a.Nth != arithmetic.Asked {
		role = [...]scene.Role{scene.First, scene.Second}[a.Nth%2]
	}
	return In(role, g(a.N))
}

// amounts joins numbers by a sign.
func amounts(sign string, list ...arithmetic.Amount) Phrase {
	var p Phrase
	for i, a := range list {
		if i > 0 {
			p = append(p, Span{Text: " " + sign + " "})
		}
		p = append(p, amount(a))
	}
	return p
}

// sentence ends a phrase.
func sentence(parts ...any) Phrase { return Say(append(parts, ".")...) }

// barOf describes known parts from left to right.
func barOf(parts []arithmetic.Amount) string {
	var names []string
	for _, a := range parts {
		names = append(names, g(a.N))
	}
	if len(names) == 1 {
		return "A bar for " + names[0]
	}
	return "Bars for " + List(names) + " end to end"
}

// DiagramLay lays the next part.
func DiagramLay(m arithmetic.LayAmount, plan arithmetic.WholeParts) Told {
	t := Told{Title: "Lay a strip for " + g(m.Amount.N)}
	done := plan.Parts[:m.At+1]
	if plan.Taken {
		// What is left was laid first; what was taken away goes with it.
		of := [...]string{"what is left", "what was taken away"}[m.At]
		t.Hands = Say("Lay a paper strip for "+of+". Write ", amount(m.Amount), " on it.")
	} else {
		t.Hands = Say("Take a paper strip and write ", amount(m.Amount), " on it.")
	}
	if m.At == 0 {
		t.Ask = Say("Do you know the parts, or the whole?")
		t.Desc = scene.Same(barOf(done) + ".")
		return t
	}
	t.Hands = Say("Lay a strip for ", amount(m.Amount), " at the end, with no gap.")
	if plan.Taken {
		t.Hands = Say("Lay a strip for what was taken away, ", amount(m.Amount), ", at the end of it.")
	}
	t.Ask = Say("Is this the whole now, or does a part still come?")
	t.Desc = scene.Same(barOf(done) + ".")
	if m.At == len(plan.Parts)-1 {
		t.Hands = Say(t.Hands, " The whole length is not known yet.")
		t.Ask = Say("Where in the picture is the whole?")
		t.Desc = scene.Same(barOf(done) + ". The whole is not known yet.")
	}
	return t
}

// DiagramAdd finds the whole.
func DiagramAdd(m arithmetic.AddParts, plan arithmetic.WholeParts) Told {
	return Told{
		Title: "Add the parts",
		Hands: sentence("The parts together make the whole: ", amounts("+", m.Parts...), " = ", amount(m.Whole)),
		Ask:   Say("How do you find the whole when you know all its parts?"),
		Desc: scene.Telling{
			Shown:  barOf(m.Parts) + ". Together they make " + g(m.Whole.N) + ".",
			Hidden: barOf(m.Parts) + ". How long are they together?",
		},
	}
}

// DiagramLayWhole lays the whole before it is cut.
func DiagramLayWhole(m arithmetic.LayWhole, plan arithmetic.WholeParts) Told {
	return Told{
		Title: "Lay the whole",
		Hands: Say("Take a long paper strip for the whole and write ", amount(m.Whole), " over it."),
		Ask:   Say("Is " + g(m.Whole.N) + " the whole, or a part of it?"),
		Desc:  scene.Same("One bar for the whole, " + g(m.Whole.N) + "."),
	}
}

// partName says what a part is.
func partName(at int, plan arithmetic.WholeParts) string {
	switch {
	case !plan.Taken:
		return "the other part"
	case at == 1:
		return "what is taken away"
	}
	return "what is left"
}

// DiagramMark marks the known part on the whole.
func DiagramMark(m arithmetic.MarkPart, plan arithmetic.WholeParts) Told {
	other := partName(1-m.At, plan)
	end := "at the end"
	if m.At == 0 {
		end = "from the left"
	}
	known := "one part"
	if plan.Taken {
		known = partName(m.At, plan)
	}
	return Told{
		Title: "Mark off " + g(m.Part.N),
		Hands: Say("Mark off ", amount(m.Part), " "+end+": that is "+known+". The rest is "+other+": write ", In(scene.Hidden, "?"), " on it."),
		Ask:   Say("What does the ? stand for?"),
		Desc:  scene.Same("A bar for the whole, " + g(m.Whole.N) + ". " + g(m.Part.N) + " of it is marked off " + end + ". The rest is not known yet."),
	}
}

// DiagramOther finds the part that was not known.
func DiagramOther(m arithmetic.FindOther, plan arithmetic.WholeParts) Told {
	bar := "A bar for the whole, " + g(m.Whole.N) + ", in two parts: " + g(m.Known.N) + " and "
	return Told{
		Title: "Find the other part",
		Hands: sentence("Take the part you know from the whole: ", amounts("−", m.Whole, m.Known), " = ", amount(m.Other)),
		Ask:   Say("How do you find a part when you know the whole and the other part?"),
		Desc:  scene.Telling{Shown: bar + g(m.Other.N) + ".", Hidden: bar + "one that is not known. How long is that?"},
	}
}

// DiagramJoined describes the whole story of a whole in parts.
func DiagramJoined(p arithmetic.Problem, plan arithmetic.WholeParts, scaled bool) scene.Telling {
	var shown, hidden []string
	for _, a := range plan.Parts {
		shown = append(shown, g(a.N))
		if a.Nth == arithmetic.Asked {
			hidden = append(hidden, "one that is not known")
		} else {
			hidden = append(hidden, g(a.N))
		}
	}
	note := toScale(scaled)
	t := scene.Telling{
		Shown:  "A bar for the whole, " + g(plan.Whole.N) + ", in " + Count(int64(len(shown)), "part") + ": " + List(shown) + ". " + note,
		Hidden: "A bar for the whole, " + g(plan.Whole.N) + ", in " + Count(int64(len(shown)), "part") + ": " + List(hidden) + ". " + note + "How long is that part?",
	}
	if plan.Whole.Nth == arithmetic.Asked {
		t.Hidden = "A bar in " + Count(int64(len(shown)), "part") + ": " + List(hidden) + ". " + note + "How long is the whole?"
	}
	t.Shown = strings.TrimSpace(t.Shown)
	return t
}

// toScale warns of a bar whose pieces are longer than their numbers say.
func toScale(scaled bool) string {
	if scaled {
		return ""
	}
	return "It is not to scale. "
}
