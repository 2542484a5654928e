package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineFilled is an equation with its missing number filled in: 8 + 3 = 11.
func LineFilled(p arithmetic.Problem, a arithmetic.Answer) string {
	return strings.Replace(p.String(), "?", a.Number.String(), 1)
}

// LineLookForHop says what is known when the hop is asked for.
func LineLookForHop(m arithmetic.LookFor, known, total scene.Role) LineTold {
	from, to := m.Known.String(), m.Total.String()
	return LineTold{
		Title: "Mark what you know",
		Hands: Say("Mark ", In(known, from), " and ", In(total, to), " on a line. The jump from ", In(known, from), " to ", In(total, to), " is not known yet."),
		Ask:   Say("How far is the jump from ", In(known, from), " to ", In(total, to), "?"),
		Desc:  scene.Same("A number line with points at " + from + " and " + to + ". " + LineWayAsked(m.Known, m.Total)),
	}
}

// LineFoundHop says what the missing hop is.
func LineFoundHop(m arithmetic.LookFor, a arithmetic.Answer) LineTold {
	found := a.Number.String()
	return LineTold{
		Title: "Write the missing number",
		Hands: Say("The jump from "+m.Known.String()+" to "+m.Total.String()+" is ", In(scene.Result, found), ". Write it in the blank."),
		Ask:   Say("What is the missing number?"),
		Desc: scene.Telling{Shown: "The jump from " + m.Known.String() + " to " + m.Total.String() + " is " + found + ".",
			Hidden: "How far is the jump from " + m.Known.String() + " to " + m.Total.String() + "?"},
	}
}

// hopOf is the hop that the problem names: "jump 3 forward".
func hopOf(m arithmetic.LookFor) string {
	return "jump of " + m.Known.String() + " " + way(m.Op == arithmetic.Subtract)
}

// LineLookForStart says what is known when the start is asked for.
func LineLookForStart(m arithmetic.LookFor, known, total scene.Role) LineTold {
	return LineTold{
		Title: "Mark where the jump ends",
		Hands: Say("Mark ", In(total, m.Total.String()), " on a line. A jump of ", In(known, m.Known.String()), " "+way(m.Op == arithmetic.Subtract)+
			" ends there, but where it starts is not known yet."),
		Ask:  Say("Where did the jump start?"),
		Desc: scene.Same("A number line. A " + hopOf(m) + " ends on " + m.Total.String() + "; a question mark stands where it starts."),
	}
}

// LineUndo tells a hop that undoes the one of the problem.
func LineUndo(m arithmetic.Jump, first, last bool, a arithmetic.Answer) LineTold {
	told := LineJump(m, last, a)
	if first {
		told.Hands = Say("To find the start, go the other way: jump ", In(scene.Moved, m.By.String()), " "+way(m.Back)+" from "+m.From.String()+
			". You land on "+m.To.String()+".")
	}
	return told
}

// LineCheck makes the hop of the problem from the number that was found.
func LineCheck(m arithmetic.LookFor, start arithmetic.Number, known, total scene.Role) LineTold {
	return LineTold{
		Title: "Check it",
		Hands: Say("Start on ", In(scene.Result, start.String()), " and jump ", In(known, m.Known.String()), " "+way(m.Op == arithmetic.Subtract)+
			". You land on ", In(total, m.Total.String()), ", as it should be."),
		Ask: Say("Does the jump end on ", In(total, m.Total.String()), "?"),
		Desc: scene.Telling{Shown: "A " + hopOf(m) + " from " + start.String() + " ends on " + m.Total.String() + ".",
			Hidden: "A " + hopOf(m) + " ends on " + m.Total.String() + ". Where does it start?"},
	}
}

// LineStartDesc describes an equation with a missing start.
func LineStartDesc(p arithmetic.Problem, m arithmetic.LookFor, undo []arithmetic.Jump, a arithmetic.Answer) scene.Telling {
	t := "A number line. A " + hopOf(m) + " ends on " + m.Total.String() + "."
	return scene.Telling{
		Shown:  t + " It starts on " + a.Number.String() + ". So " + LineFilled(p, a) + ".",
		Hidden: t + " A question mark stands where it starts. What is the missing number in " + p.String() + "?",
	}
}
