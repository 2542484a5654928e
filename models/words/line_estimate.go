package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineEstimateKinds says which estimates a number line shows.
const LineEstimateKinds = "a number line estimates sums and differences of whole numbers"

// LineEstimateTitle is the title of an estimate. The exact result is not said.
func LineEstimateTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.Left.String() + " is about " + a.Number.String(), Hidden: Asked(p)}
}

// LineRoundOne rounds one of the numbers of an estimate.
func LineRoundOne(p arithmetic.Problem, m arithmetic.RoundOne) LineTold {
	n, to := In(panRole(m.Nth), m.From.String()), In(panRole(m.Nth), m.To.String())
	told := LineTold{
		Title: "Round " + n.Text,
		Ask:   Say("Which "+nearest(p.To)+" is ", n, " nearest to?"),
		Desc:  scene.Telling{Shown: onLine(m) + roundedDesc(m), Hidden: "A number line with a point at " + n.Text + ". Which " + nearest(p.To) + " is nearest?"},
	}
	switch {
	case m.Low == m.High:
		told.Hands = Say(n, " is round already, so it stays ", to, ".")
	case m.Halfway:
		told.Hands = Say("Put the counter on ", n, ". It is halfway between "+m.Low.String()+" and "+m.High.String()+". People have agreed that halfway goes up, so go to ", to, ".")
	default:
		told.Hands = Say("Put the counter on ", n, ", between "+m.Low.String()+" and "+m.High.String()+". The nearer one is ", to, ", only "+m.Away.String()+" away.")
	}
	return told
}

// onLine says on which line a number is rounded.
func onLine(m arithmetic.RoundOne) string {
	if m.Nth == 0 {
		return ""
	}
	return "On the second line "
}

func roundedDesc(m arithmetic.RoundOne) string {
	switch {
	case m.Low == m.High:
		return m.From.String() + " is round already."
	case m.Halfway:
		return m.From.String() + " is halfway between " + m.Low.String() + " and " + m.High.String() + " and goes up to " + m.To.String() + "."
	}
	return m.From.String() + " lies between " + m.Low.String() + " and " + m.High.String() + ", nearer to " + m.To.String() + "."
}

// LineCombineRounded puts the rounded numbers together.
func LineCombineRounded(p arithmetic.Problem, m arithmetic.CombineRounded) LineTold {
	from, by, to := In(scene.First, m.From.String()), In(scene.Second, m.By.String()), In(scene.Result, m.To.String())
	hands := Say("Now work with the round numbers: from ", from, " jump ", by, " "+way(m.Back)+". You land on ", to, ", so "+p.Left.String()+" is about ", to, ".")
	if m.By.Value.Sign() == 0 {
		hands = Say("The second number is rounded to ", by, ", so there is nothing to jump: "+p.Left.String()+" is about ", to, ".")
	}
	return LineTold{
		Title: "Use the round numbers",
		Hands: hands,
		Ask:   Say("About how much is " + p.Left.String() + "?"),
		Desc: scene.Telling{Shown: "From " + from.Text + " a jump of " + by.Text + " " + way(m.Back) + " lands on " + to.Text + ".",
			Hidden: "A jump of the second round number from the first. About where does it land?"},
	}
}

// LineEstimateDesc describes an estimate.
func LineEstimateDesc(p arithmetic.Problem, ones [2]arithmetic.RoundOne, m arithmetic.CombineRounded) scene.Telling {
	a, b := ones[0], ones[1]
	start := "Three number lines. "
	return scene.Telling{
		Shown:  start + roundedDesc(a) + " " + roundedDesc(b) + " " + LineCombineRounded(p, m).Desc.Shown + " So " + p.Left.String() + " is about " + m.To.String() + ".",
		Hidden: start + "Points at " + a.From.String() + " and " + b.From.String() + ", each between its neighbors. Round both: about how much is " + p.Left.String() + "?",
	}
}
