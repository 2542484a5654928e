package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineAway is a distance on a label.
func LineAway(n arithmetic.Number) string { return n.String() + " away" }

// LineNeighbors says between which round numbers a number lies.
func LineNeighbors(p arithmetic.Problem, n arithmetic.Number, m arithmetic.Neighbors) LineTold {
	low, high := m.Low.String(), m.High.String()
	return LineTold{
		Title: "Find the neighbors",
		Hands: Say("Draw a line from "+low+" to "+high+". Put the counter on ", In(scene.First, n.String()), "."),
		Ask:   Say("Between which two "+nearestOf(p)+"s does ", In(scene.First, n.String()), " lie?"),
		Desc: scene.Telling{Shown: "A number line from " + low + " to " + high + " with a point at " + n.String() + ".",
			Hidden: "A number line with a point at " + n.String() + ". Its two ends are for you to name."},
	}
}

// LineFindHalfway says on which side of halfway a number lies.
func LineFindHalfway(n arithmetic.Number, m arithmetic.FindHalfway) LineTold {
	if m.Side == 0 {
		return LineTold{
			Title: "Mark halfway",
			Hands: Say("Mark halfway. ", In(scene.First, n.String()), " is right on it."),
			Ask:   Say("Is ", In(scene.First, n.String()), " before or past halfway, or right on it?"),
			Desc:  scene.Same(n.String() + " is right on halfway."),
		}
	}
	where := "before"
	if m.Side > 0 {
		where = "past"
	}
	return LineTold{
		Title: "Mark halfway",
		Hands: Say("Mark "+m.At.String()+", which is halfway. ", In(scene.First, n.String()), " is "+where+" it."),
		Ask:   Say("Is ", In(scene.First, n.String()), " before or past halfway?"),
		Desc:  scene.Same(m.At.String() + " is halfway. " + n.String() + " is " + where + " it."),
	}
}

// LineGoNearer goes to the nearer neighbor.
func LineGoNearer(p arithmetic.Problem, m arithmetic.GoNearer) LineTold {
	to := In(scene.Result, m.To.String())
	told := LineTold{
		Title: "Go to the nearer one",
		Hands: Say("From ", In(scene.First, m.From.String()), " it is "+m.Gap.String()+" to ", to, " and "+m.OtherGap.String()+" to the other end. Go to ", to, "."),
		Ask:   Say("Which end is nearer?"),
		Desc:  lineNearerDesc(m),
	}
	if m.Halfway {
		told.Title = "Go up from halfway"
		told.Hands = Say("Both ends are "+m.Gap.String()+" away. People have agreed that halfway goes up, so go to ", to, ".")
		told.Ask = Say("Which end is nearer, or are they equally near?")
	}
	return told
}

func lineNearerDesc(m arithmetic.GoNearer) scene.Telling {
	shown := "It is " + m.Gap.String() + " to " + m.To.String() + " and " + m.OtherGap.String() + " to the other end, so " + m.From.String() + " rounds to " + m.To.String() + "."
	if m.Halfway {
		shown = "Both ends are " + m.Gap.String() + " away. By agreement halfway goes up, so " + m.From.String() + " rounds to " + m.To.String() + "."
	}
	return scene.Telling{Shown: shown, Hidden: "Which end is nearer to " + m.From.String() + "?"}
}

// LineRoundingDesc describes a rounding.
func LineRoundingDesc(p arithmetic.Problem, n arithmetic.Number, around arithmetic.Neighbors, half arithmetic.FindHalfway, m arithmetic.GoNearer) scene.Telling {
	first, second := LineNeighbors(p, n, around).Desc, LineFindHalfway(n, half).Desc
	last := lineNearerDesc(m)
	return scene.Telling{
		Shown:  first.Shown + " " + second.Shown + " " + last.Shown,
		Hidden: first.Hidden + " " + second.Hidden + " " + last.Hidden,
	}
}

// LineAlready says of a number that it is round already.
func LineAlready(p arithmetic.Problem) string {
	n, _ := p.Left.(arithmetic.Number)
	switch {
	case n.Value.Sign() == 0:
		return "is round already"
	case p.Places > 0:
		return "is in " + p.PlaceName() + " already"
	case p.To == 1:
		return "is a whole number already"
	}
	return "is a " + nearestOf(p) + " already"
}

// LineRound tells that a number is round already.
func LineRound(p arithmetic.Problem, n, rounded arithmetic.Number) LineTold {
	stays := ", so it stays " + rounded.String() + "."
	if n.String() != rounded.String() {
		stays = ", so it is " + rounded.String() + "."
	}
	point := "A number line with a point at " + n.String() + "."
	return LineTold{
		Title: "It is round already",
		Hands: Say("Find ", In(scene.First, n.String()), " on the line. It "+LineAlready(p)+stays),
		Ask:   Say("What are the numbers at the long marks?"),
		Desc: scene.Telling{Shown: point + " " + n.String() + " " + LineAlready(p) + stays,
			Hidden: point + " Is it one of the round numbers?"},
	}
}
