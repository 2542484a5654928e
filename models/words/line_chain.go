package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineChainStart says where a chain begins and what is to be jumped.
func LineChainStart(m arithmetic.StartAt, jumps []arithmetic.Jump) LineTold {
	at := m.At.String()
	return LineTold{
		Title: "Start at " + at,
		Hands: Say("Draw a line and put the counter on ", In(scene.First, at), ". You will jump "+jumpsOnly(jumps)+"."),
		Ask:   Say("Will the answer be to the right or to the left of ", In(scene.First, at), "?"),
		Desc:  scene.Same("A number line with a point at " + at + "."),
	}
}

// LineChainDesc describes a chain of sums and differences.
func LineChainDesc(p arithmetic.Problem, m arithmetic.StartAt, jumps []arithmetic.Jump, a arithmetic.Answer, broken bool) scene.Telling {
	t := lineOf(broken) + " Start at " + m.At.String() + ". Jump "
	return scene.Telling{
		Shown:  t + jumpList(jumps, false, a) + ". So " + p.String() + " = " + LineAnswer(a) + ".",
		Hidden: t + jumpList(jumps, true, a) + ". Where do you land? " + p.String() + " = ?",
	}
}
