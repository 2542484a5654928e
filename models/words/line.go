package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// What a number line is made with, and what stands on it.
const (
	LinePaper  = "strip of paper with a line on it"
	LineMarker = "small counter to hop along it"

	LineHalfway        = "halfway"
	LineIsHalfway      = "is halfway"
	LineUneven         = "not to scale"
	LineUnevenSentence = "The line is not to scale."
	LineMore           = "more"
	LineWhere          = "Where is"
	LineIs             = "Is"
)

// Why a problem does not fit on a number line.
const (
	LineKinds         = "a number line shows sums, differences, one missing number, rounding, and numbers to place or compare"
	LineNegative      = "a number line starts at 0, and this goes below 0"
	LineLarge         = "a number line goes to 9,999,999"
	LineFine          = "these parts are too small to be drawn exactly; a number line takes denominators to about 600 and three decimal places"
	LineFineCommon    = "their common parts would be too small to see on a number line; it takes common denominators to 100"
	LineClose         = "the points would be too close together to tell apart"
	LineMixes         = "a sum of a decimal and a fraction has no common way of writing; write both as fractions or both as decimals"
	LineNoSuch        = "the missing number would be less than 0"
	LineCrowded       = "the numbers are too long to stand side by side on one line"
	LineManyPoints    = "a number line has room for 1 to 6 numbers"
	LineRoundingKinds = "a number line rounds whole numbers and decimals to the nearest 1, 10, 100 and so on, and decimals to the nearest tenth, hundredth or thousandth"
	LineLongTrain     = "each side may have 3 numbers to add, or 2 to subtract"
	LineLongChain     = "a number line has room for a chain of 6 numbers"
	LineUnlikeChain   = "a number line shows a chain of fractions in the same parts only"
	LineSamePlace     = "the last jump would end where another has ended before"
	LineOverlap       = "two of the jumps would lie on each other"
	LineNoJump        = "a number line shows no jump of 0 in a chain"
	LineTrainTooFine  = "the hops would be too small to see beside the longest"
)

// LineTold is a step of a number line in words.
type LineTold struct {
	Title      string
	Hands, Ask Phrase
	Desc       scene.Telling
}

// LineAnswer is an answer with its final name: 6/4 = 1 1/2.
func LineAnswer(a arithmetic.Answer) string {
	if a.Simplest != a.Number && a.Simplest != (arithmetic.Number{}) {
		return a.Number.String() + " = " + a.Simplest.String()
	}
	return a.Number.String()
}

// way is "forward" or "back".
func way(back bool) string {
	if back {
		return "back"
	}
	return "forward"
}

// LineStart says where to begin.
func LineStart(m arithmetic.StartAt, p arithmetic.Problem, b arithmetic.Number, jumps []arithmetic.Jump) LineTold {
	a := m.At
	told := LineTold{
		Title: "Start at " + a.String(),
		Hands: Say("Draw a line and put the counter on ", In(scene.First, a.String()), "."),
		Ask:   Say("Will the answer be to the right or to the left of ", In(scene.First, a.String()), "?"),
		Desc:  scene.Same("A number line with a point at " + a.String() + "."),
	}
	told.Hands = append(told.Hands, lineInPlaces(m, a)...)
	if m.Less.Value.Sign() > 0 {
		told.Hands = Say(told.Hands, " A jump of ", In(scene.Second, m.Parts[0].String()), " is easier than one of ", In(scene.Second, b.String()),
			", so jump "+m.Parts[0].String()+" "+way(jumps[0].Back)+" and then "+m.Less.String()+" "+way(!jumps[0].Back)+".")
	} else if len(jumps) > 1 {
		told.Hands = append(told.Hands, Say(" You will jump ", In(scene.Second, b.String()), " "+way(jumps[0].Back)+", in parts that are easy to jump.")...)
	}
	return told
}

// lineInPlaces says which decimals are written in more places.
func lineInPlaces(m arithmetic.StartAt, first arithmetic.Number) Phrase {
	var p Phrase
	for _, as := range m.As {
		role := scene.Second
		if as[0] == first {
			role = scene.First
		}
		p = append(p, Say(" Think of ", In(role, as[0].String()), " as ", In(role, as[1].String()), ".")...)
	}
	return p
}

// LineRecut says how two fractions get common parts. marked says whether these are
// on the line, or too many for it.
func LineRecut(m arithmetic.Recut, marked bool) LineTold {
	parts := Parts(m.Parts, 2)
	cut := "Each whole is marked in " + parts
	hands := Say("Mark each whole in " + arithmetic.Grouped(m.Parts) + " equal parts.")
	if !marked {
		cut = "Each whole is thought of as " + parts
		hands = Say("Think of each whole as " + arithmetic.Grouped(m.Parts) + " equal parts. They are too small to mark here.")
	}
	var names []string
	now := " Now "
	for _, n := range []struct {
		was, is arithmetic.Number
		role    scene.Role
	}{{m.First, m.FirstAs, scene.First}, {m.Second, m.SecAs, scene.Second}} {
		if n.was.String() != n.is.String() {
			hands = Say(hands, now, In(n.role, n.was.String()), " is ", In(n.role, n.is.String()))
			now = " and "
			names = append(names, n.was.String()+" is "+n.is.String())
		}
	}
	return LineTold{
		Title: "Count in " + parts,
		Hands: Say(hands, "."),
		Ask:   Say("Which parts fit both fractions?"),
		Desc:  scene.Telling{Shown: cut + ", so that " + List(names) + ".", Hidden: cut + "."},
	}
}

// LineTells reports whether a hop is as long as the answer, so that naming it
// would give the answer away.
func LineTells(m arithmetic.Jump, a arithmetic.Answer) bool {
	return m.By.Value.Equal(a.Number.Value)
}

// LineJump tells one hop.
func LineJump(m arithmetic.Jump, last bool, a arithmetic.Answer) LineTold {
	by, to := m.By.String(), m.To.String()
	told := LineTold{
		Title: "Jump " + way(m.Back) + " " + m.By.String(),
		Hands: Say("Jump ", In(scene.Moved, by), " "+way(m.Back)+" from "+m.From.String()+". You land on "+to+"."),
		Ask:   Say("Where do you land?"),
	}
	if m.Round {
		told.Hands = Say("Jump ", In(scene.Moved, by), " "+way(m.Back)+" to reach the round number "+to+".")
		told.Ask = Say("How far is it to the next round number?")
	}
	hop := "A jump of " + m.By.String() + " " + way(m.Back)
	switch {
	case m.Over:
		told.Hands = Say(told.Hands, " That is a little too far.")
	case m.Fix:
		told.Hands = Say("You went "+by+" too far, so jump ", In(scene.Moved, by), " "+way(m.Back)+". You land on "+to+".")
		told.Ask = Say("How much too far did you jump?")
	}
	told.Desc = scene.Same(hop + " from " + m.From.String() + " lands on " + m.To.String() + ".")
	if LineTells(m, a) {
		hop = "A jump " + way(m.Back)
		told.Desc.Hidden = hop + "."
	}
	if last {
		told.Desc.Hidden = hop + " lands on the number that is asked for."
	}
	return told
}

// LineStay tells that nothing is added or taken away.
func LineStay(p arithmetic.Problem, a arithmetic.Number) LineTold {
	return LineTold{
		Title: "Stay where you are",
		Hands: Say("There is nothing to jump, so stay on ", In(scene.Result, a.String()), "."),
		Ask:   Say("How far do you jump?"),
		Desc:  scene.Same("There is no jump: the counter stays on " + a.String() + "."),
	}
}

// LineCountUpStart says that a difference is the way between two points.
func LineCountUpStart(m arithmetic.StartAt, a, b arithmetic.Number) LineTold {
	return LineTold{
		Title: "Mark both numbers",
		Hands: Say("Mark ", In(scene.Second, b.String()), " and ", In(scene.First, a.String()), " on a line. How far it is from one to the other is the difference.", lineInPlaces(m, a)),
		Ask:   Say("How far is it from ", In(scene.Second, b.String()), " up to ", In(scene.First, a.String()), "?"),
		Desc:  scene.Same("A number line with points at " + b.String() + " and " + a.String() + ". The way between them is asked for."),
	}
}

// LineAddJumps adds the hops between two numbers.
func LineAddJumps(m arithmetic.AddJumps, from, to arithmetic.Number) LineTold {
	hops := make([]string, len(m.Hops))
	for i, n := range m.Hops {
		hops[i] = n.String()
	}
	between := "from " + from.String() + " to " + to.String()
	return LineTold{
		Title: "Add the jumps",
		Hands: Say("Add your jumps "+between+": "+List(hops)+" make ", In(scene.Result, m.Sum.String()), "."),
		Ask:   Say("How far did you jump in all?"),
		Desc: scene.Telling{Shown: "The jumps " + between + " are " + List(hops) + ", " + m.Sum.String() + " in all.",
			Hidden: "How far is it " + between + "?"},
	}
}

// jumpList is "200 forward to 545, 70 forward to 615 and 8 forward to 623"; the
// last landing is left out where it is not to be given away.
func jumpList(jumps []arithmetic.Jump, hidden bool, a arithmetic.Answer) string {
	list := make([]string, len(jumps))
	for i, j := range jumps {
		list[i] = j.By.String() + " " + way(j.Back)
		if hidden && LineTells(j, a) {
			list[i] = "some more " + way(j.Back)
		}
		if !hidden || i < len(jumps)-1 {
			list[i] += " to " + j.To.String()
		}
	}
	return List(list)
}

// lineOf is how a line begins.
func lineOf(broken bool) string {
	if broken {
		return "A number line that does not begin at 0."
	}
	return "A number line from 0."
}

// LineJumpsDesc describes a sum or difference in hops. cut says how the line was
// marked for it, or is empty.
func LineJumpsDesc(p arithmetic.Problem, cut scene.Telling, jumps []arithmetic.Jump, a arithmetic.Answer, broken bool) scene.Telling {
	first, second, _ := p.Operands()
	t := lineOf(broken) + " Start at " + first.String() + "."
	if len(jumps) == 0 {
		t += " There is nothing to jump."
		return scene.Telling{Shown: t + " So " + p.String() + " = " + a.Number.String() + ".", Hidden: t + " What is " + p.String() + "?"}
	}
	parts := ""
	if len(jumps) > 1 {
		parts = " The " + second.String() + " is jumped in parts."
	}
	if cut.Shown != "" {
		cut.Shown, cut.Hidden = " "+cut.Shown, " "+cut.Hidden
	}
	return scene.Telling{
		Shown:  t + cut.Shown + parts + " Jump " + jumpList(jumps, false, a) + ". So " + p.String() + " = " + LineAnswer(a) + ".",
		Hidden: t + cut.Hidden + parts + " Jump " + jumpList(jumps, true, a) + ". Where do you land? " + p.String() + " = ?",
	}
}

// LineWayDesc describes the way from one number to another.
func LineWayDesc(p arithmetic.Problem, from, to arithmetic.Number, jumps []arithmetic.Jump, a arithmetic.Answer, broken bool) scene.Telling {
	t := lineOf(broken) + " Points at " + from.String() + " and " + to.String() + "."
	shown := t + " They are one point, so the jump is " + a.Number.String() + "."
	if len(jumps) > 0 {
		shown = t + " From " + from.String() + ", jump " + jumpList(jumps, false, a) + ". That is " + a.Number.String() + " in all."
	}
	return scene.Telling{Shown: shown, Hidden: t + " " + LineWayAsked(from, to)}
}

// LineWayAsked describes the jump that is asked for.
func LineWayAsked(from, to arithmetic.Number) string {
	return "A dashed jump with a question mark goes from " + from.String() + " to " + to.String() + ": how far is it?"
}
