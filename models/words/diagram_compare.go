package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// The words of bar diagrams that compare two numbers.

// DiagramUnder lays the two bars one under the other.
func DiagramUnder(m arithmetic.LayAmount, found arithmetic.FindGap) Told {
	if m.At == 0 {
		return Told{
			Title: "Lay a strip for " + g(m.Amount.N),
			Hands: Say("Lay a paper strip for ", amount(m.Amount), " and write the number in front of it."),
			Ask:   Say("Which of the two strips will be longer?"),
			Desc:  scene.Same("A bar for " + g(m.Amount.N) + "."),
		}
	}
	return Told{
		Title: "Lay a strip for " + g(m.Amount.N),
		Hands: Say("Lay a strip for ", amount(m.Amount), " under it. Both must begin at the same left edge."),
		Ask:   Say("Why must both strips begin at the same edge?"),
		Desc:  scene.Same(twoBars(found) + "."),
	}
}

func twoBars(m arithmetic.FindGap) string {
	return "A bar for " + g(m.First.N) + " and under it a bar for " + g(m.Second.N) + ", from the same left edge"
}

// DiagramGap marks the part of the longer bar that has nothing beside it.
func DiagramGap(m arithmetic.MarkGap) Told {
	t := Told{
		Title: "Mark how many more",
		Hands: Say("Mark the part of the longer strip that reaches past the shorter one. Write ", In(scene.Hidden, "?"), " on it."),
		Ask:   Say("Where in the picture do you see how many more?"),
		Desc: scene.Same("A bar for " + g(m.First.N) + " and under it a bar for " + g(m.Second.N) +
			", from the same left edge. How far does one reach past the other?"),
	}
	if m.Gap.N == 0 {
		t.Hands = Say("Look at the right ends of the two strips.")
	}
	return t
}

// DiagramFindGap finds how much longer the one bar is.
func DiagramFindGap(p arithmetic.Problem, m arithmetic.FindGap) Told {
	t := Told{Title: "Find how many more", Ask: Say("How do you find the part that is extra?")}
	more, less := m.First, m.Second
	if more.N < less.N {
		more, less = less, more
	}
	switch {
	case m.Gap.N == 0:
		t.Hands = sentence("Both strips end at the same place: ", amounts("−", more, less), " = ", amount(m.Gap))
	default:
		t.Hands = sentence("Take the shorter from the longer: ", amounts("−", more, less), " = ", amount(m.Gap))
	}
	if p.Kind == arithmetic.Comparison {
		t.Title = "Compare the ends"
		t.Ask = Say("Which strip reaches farther, or do both end at the same place?")
		sign := Say(In(scene.First, g(m.First.N)), " "+m.Relation.String()+" ", In(scene.Second, g(m.Second.N)))
		if m.Gap.N == 0 {
			t.Hands = sentence("Both strips end at the same place: ", sign)
		} else {
			t.Hands = sentence("The strip for ", amount(more), " reaches farther, by ", amount(m.Gap), ": ", sign)
		}
	}
	t.Desc = DiagramCompared(p, m, true)
	return t
}

// DiagramCompared describes the whole story of two bars.
func DiagramCompared(p arithmetic.Problem, m arithmetic.FindGap, scaled bool) scene.Telling {
	bars, note := twoBars(m)+". ", toScale(scaled)
	more, less := m.First, m.Second
	if more.N < less.N {
		more, less = less, more
	}
	said := "The bar for " + g(more.N) + " is longer by " + g(m.Gap.N) + ". " + g(more.N) + " is more than " + g(less.N) + ". "
	if m.Gap.N == 0 {
		said = "They end at the same place: the two are equal, and one has 0 more than the other. "
	}
	asked := "How much longer is one than the other?"
	if p.Kind == arithmetic.Comparison {
		asked = "Which is longer, or are they equal?"
	}
	return scene.Telling{Shown: strings.TrimSpace(bars + said + note), Hidden: bars + note + asked}
}
