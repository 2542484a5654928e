package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineOr and LineAwayOnly stand in the picture of two numbers and their distances.
const (
	LineOr       = "or"
	LineAwayOnly = "away"
)

// LineCloserTo begins the question at the foot.
func LineCloserTo(p arithmetic.Problem) string { return "closer to " + arithmetic.Grouped(p.To) + ":" }

// LineIsCloser and LineBothFar end the answer at the foot.
func LineIsCloser(p arithmetic.Problem) string { return "is closer to " + arithmetic.Grouped(p.To) }

// LineBothFar says that neither is closer.
func LineBothFar(p arithmetic.Problem) string {
	return "both are equally far from " + arithmetic.Grouped(p.To)
}

// LineGuessCloser asks for a guess.
func LineGuessCloser(p arithmetic.Problem) Phrase {
	a, b, _ := p.Operands()
	return Say("Which do you think is closer to "+arithmetic.Grouped(p.To)+", ", In(scene.First, a.String()), " or ", In(scene.Second, b.String()), "?")
}

// LineCloserTitle is the title of every picture.
func LineCloserTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + ": " + Answer(p, a), Hidden: Asked(p)}
}

// closerDistances says how far both are.
func closerDistances(m arithmetic.LookAtDistances) string {
	to := m.To.String()
	return m.Numbers[0].String() + " is " + m.Away[0].String() + " away from " + to + ", and " + m.Numbers[1].String() + " is " + m.Away[1].String() + " away"
}

// closerVerdict says which is closer.
func closerVerdict(p arithmetic.Problem, m arithmetic.LookAtDistances) string {
	switch m.Relation {
	case arithmetic.Less:
		return m.Numbers[0].String() + " " + LineIsCloser(p)
	case arithmetic.Greater:
		return m.Numbers[1].String() + " " + LineIsCloser(p)
	}
	return upper(LineBothFar(p))
}

// LineLookCloser compares the distances.
func LineLookCloser(p arithmetic.Problem, m arithmetic.LookAtDistances) LineTold {
	said := upper(closerDistances(m)) + ". " + closerVerdict(p, m) + "."
	return LineTold{
		Title: "Compare the distances",
		Hands: Say("Measure from each point to " + m.To.String() + ". " + said),
		Ask:   Say("How far is each point from " + m.To.String() + "?"),
		Desc:  scene.Telling{Shown: said, Hidden: "How far is each point from " + m.To.String() + "? Which is closer?"},
	}
}

// LineCloserWhy says why one is closer.
func LineCloserWhy(p arithmetic.Problem, m arithmetic.LookAtDistances) Phrase {
	return Say(upper(closerDistances(m)) + ".")
}

// LineCloserDesc describes the whole picture.
func LineCloserDesc(p arithmetic.Problem, w arithmetic.Working, m arithmetic.LookAtDistances) scene.Telling {
	said := "A number line. Above it the point " + m.Numbers[0].String() + ", below it the point " + m.Numbers[1].String() + "."
	look := LineLookCloser(p, m).Desc
	return scene.Telling{Shown: said + " " + look.Shown, Hidden: said + " " + look.Hidden}
}
