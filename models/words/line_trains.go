package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineTwoLines draws the lines for a statement about two sums. Those for
// fractions have their wholes marked.
func LineTwoLines(p arithmetic.Problem, fractions bool) LineTold {
	same := "both from 0 and to the same scale"
	if fractions {
		same = "with the same 0 and the same 1"
	}
	return LineTold{
		Title: "Draw two lines",
		Hands: Say("Draw two lines, one above the other, "+same+". The upper one is for ", In(scene.First, p.Left.String()),
			", the lower one for ", In(scene.Second, p.Right.String()), "."),
		Ask:  Say("Which will end farther to the right?"),
		Desc: scene.Same("Two number lines, one above the other, " + same + "."),
	}
}

// LineTrain tells the hops of one side. marked says whether its parts are marked
// on the line.
func LineTrain(m arithmetic.HopTrain, marked bool) LineTold {
	line := [...]string{"upper", "lower"}[m.Side]
	role := []scene.Role{scene.First, scene.Second}[m.Side]
	told := LineTold{Title: "Go the " + line + " line", Ask: Say("Where do you end?")}
	hops := ""
	if len(m.Hops) > 0 {
		hops = ", then jump " + jumpsOnly(m.Hops)
	}
	told.Hands = Say("On the "+line+" line go from 0 to ", In(role, m.First.String()), hops+". You end on ", In(scene.Result, m.End.String()), ".")
	if marked {
		told.Hands = Say("Mark each whole in "+arithmetic.Grouped(m.Parts.Parts)+" equal parts. ", told.Hands)
	}
	told.Desc = scene.Telling{Shown: trainDesc(m, false), Hidden: trainDesc(m, true)}
	return told
}

func jumpsOnly(hops []arithmetic.Jump) string {
	list := make([]string, len(hops))
	for i, j := range hops {
		list[i] = j.By.String() + " " + way(j.Back)
	}
	return List(list)
}

func trainDesc(m arithmetic.HopTrain, hidden bool) string {
	text := "On the " + [...]string{"upper", "lower"}[m.Side] + " line, from 0 to " + m.First.String()
	if len(m.Hops) > 0 {
		text += ", then a jump of " + jumpsOnly(m.Hops)
		if !hidden {
			text += ", to " + m.End.String()
		}
	}
	return text + "."
}

// LineTrainsDesc describes a statement about two sums.
func LineTrainsDesc(p arithmetic.Problem, w arithmetic.Working) scene.Telling {
	first, second := w.Moves[0].(arithmetic.HopTrain), w.Moves[1].(arithmetic.HopTrain)
	look := w.Moves[2].(arithmetic.LookAtPoints)
	start := "Two number lines, both from 0 and to the same scale. "
	return scene.Telling{
		Shown:  start + trainDesc(first, false) + " " + trainDesc(second, false) + " " + LineWhy(p, look).String(),
		Hidden: start + trainDesc(first, true) + " " + trainDesc(second, true) + " Do they end at the same point, or does one end farther to the right?",
	}
}
