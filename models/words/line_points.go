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
		Ask:   Say("Between which two "+nearest(p.To)+"s does ", In(scene.First, n.String()), " lie?"),
		Desc: scene.Telling{Shown: "A number line from " + low + " to " + high + " with a point at " + n.String() + ".",
			Hidden: "A number line with a point at " + n.String() + ". Its two ends are for you to name."},
	}
}

// LineFindHalfway says on which side of halfway a number lies.
func LineFindHalfway(n arithmetic.Number, m arithmetic.FindHalfway) LineTold {
	where := [...]string{"before halfway", "right on halfway", "past halfway"}[m.Side+1]
	return LineTold{
		Title: "Mark halfway",
		Hands: Say("Mark "+m.At.String()+", which is halfway. ", In(scene.First, n.String()), " is "+where+"."),
		Ask:   Say("Is ", In(scene.First, n.String()), " before or past halfway?"),
		Desc:  scene.Same(m.At.String() + " is halfway. " + n.String() + " is " + where + "."),
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
	switch {
	case m.Already:
		told.Title = "Stay where you are"
		told.Hands = Say(In(scene.First, m.From.String()), " is a round number already, so stay on ", to, ".")
	case m.Halfway:
		told.Title = "Go up from halfway"
		told.Hands = Say("Both ends are "+m.Gap.String()+" away. People have agreed that halfway goes up, so go to ", to, ".")
		told.Ask = Say("Which end is nearer, or are they equally near?")
	}
	return told
}

func lineNearerDesc(m arithmetic.GoNearer) scene.Telling {
	shown := "It is " + m.Gap.String() + " to " + m.To.String() + " and " + m.OtherGap.String() + " to the other end, so " + m.From.String() + " rounds to " + m.To.String() + "."
	switch {
	case m.Already:
		shown = m.From.String() + " is a round number already and stays " + m.To.String() + "."
	case m.Halfway:
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

// LineDraw draws a stretch of line.
func LineDraw(m arithmetic.DrawStretch, broken bool) LineTold {
	lo, hi := m.Lo.String(), m.Hi.String()
	told := LineTold{
		Title: "Draw the line",
		Hands: Say("Draw a line. Mark " + lo + " at its left end and " + hi + " near its right end."),
		Ask:   Say("Which numbers lie between " + lo + " and " + hi + "?"),
		Desc:  scene.Same("A number line from " + lo + " to " + hi + "."),
	}
	if broken {
		told.Hands = Say("Draw a line from " + lo + " to " + hi + ". A zigzag at the left shows that it does not begin at 0.")
	}
	return told
}

// LineCut cuts the line in equal parts.
func LineCut(m arithmetic.CutStretch, broken bool) LineTold {
	count, long := arithmetic.Grouped(m.Parts), "the length from 0 to 1"
	if v, ok := m.Long.Int64(); !ok || v != 1 {
		long = "each " + m.Long.String()
	} else if broken {
		long = "each whole"
	}
	return LineTold{
		Title: "Cut it in equal parts",
		Hands: Say("Cut " + long + " in " + count + " equal parts. Each part is " + said(m.Each) + "."),
		Ask:   Say("How long is each part?"),
		Desc:  scene.Same("On the line, " + long + " is cut in " + count + " equal parts of " + m.Each.String() + "."),
	}
}

// counted is "3 lengths of 1/4" or "4 lengths of 10 and 7 lengths of 1".
func counted(m arithmetic.MarkOnLine) string {
	var list []string
	for _, c := range m.Counts {
		times := Count(c.Times, "length")
		if c.Times == 1 {
			times = "a length"
		}
		list = append(list, times+" of "+c.Each.String())
	}
	if len(list) == 0 {
		return "no lengths"
	}
	return List(list)
}

// LineMark counts parts to a number and marks it.
func LineMark(m arithmetic.MarkOnLine) LineTold {
	role := []scene.Role{scene.First, scene.Second}[m.Nth%2]
	return LineTold{
		Title: "Mark " + m.Number.String(),
		Hands: Say("From "+m.From.String()+", go "+counted(m)+". Mark the point you reach: ", In(role, said(m.Number)), "."),
		Ask:   Say("How far is it from " + m.From.String() + "?"),
		Desc:  scene.Same(capital(counted(m)) + " from " + m.From.String() + ": there is the point " + m.Number.String() + "."),
	}
}

// LinePoint marks a number of a list.
func LinePoint(m arithmetic.MarkOnLine) LineTold {
	told := LineMark(m)
	told.Desc.Hidden = "Where on the line is " + m.Number.String() + "?"
	return told
}

// LineShowTitle is the title of a number shown as a point.
func LineShowTitle(n arithmetic.Number) scene.Telling {
	return scene.Telling{Shown: n.String() + " on a number line", Hidden: "Where is " + n.String() + " on the number line?"}
}

// LineShowDesc describes a number as a point.
func LineShowDesc(w arithmetic.Working, n arithmetic.Number, broken bool) scene.Telling {
	text, hidden := "", ""
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.DrawStretch:
			text = LineDraw(m, broken).Desc.Shown
		case arithmetic.CutStretch:
			text += " " + LineCut(m, broken).Desc.Shown
		case arithmetic.MarkOnLine:
			hidden = text + " Where is " + n.String() + "?"
			text += " " + LineMark(m).Desc.Shown
		}
	}
	return scene.Telling{Shown: text, Hidden: hidden}
}

// LineLook compares two points.
func LineLook(p arithmetic.Problem, m arithmetic.LookAtPoints) LineTold {
	told := LineTold{
		Title: "Compare where they end",
		Hands: LineWhy(p, m),
		Ask:   Say("Which one is further to the right?"),
		Desc:  scene.Telling{Shown: LineWhy(p, m).String(), Hidden: "Which one is further to the right?"},
	}
	return told
}

// LineWhy is the sentence that says why a statement is true or not.
func LineWhy(p arithmetic.Problem, m arithmetic.LookAtPoints) Phrase {
	left, right := In(scene.First, lineSide(p.Left)), In(scene.Second, lineSide(p.Right))
	switch m.Relation {
	case arithmetic.Equal:
		return Say(left, " and ", right, " end at the same point of the line, so they are equal.")
	case arithmetic.Less:
		return Say(right, " is further to the right, so it is more than ", left, ". It is ", In(scene.Result, said(m.Gap)), " more.")
	}
	return Say(left, " is further to the right, so it is more than ", right, ". It is ", In(scene.Result, said(m.Gap)), " more.")
}

func lineSide(e arithmetic.Expr) string {
	if n, ok := e.(arithmetic.Number); ok {
		return n.String()
	}
	return e.String()
}

// LineClaimTitle is the title of a claim or comparison.
func LineClaimTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	truly := p.Left.String() + " " + a.Relation.String() + " " + p.Right.String()
	if p.Kind == arithmetic.Comparison {
		return scene.Telling{Shown: truly, Hidden: "Compare " + p.Left.String() + " and " + p.Right.String()}
	}
	t := scene.Telling{Shown: p.String() + " is true", Hidden: "Is " + p.String() + "?"}
	if !a.True {
		t.Shown = p.String() + " is false: " + truly
	}
	return t
}

// LinePairDesc describes two numbers on one line.
func LinePairDesc(p arithmetic.Problem, w arithmetic.Working, look arithmetic.LookAtPoints) scene.Telling {
	text := ""
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.DrawStretch:
			text = "A number line from " + m.Lo.String() + " to " + m.Hi.String() + "."
		case arithmetic.MarkOnLine:
			text += " " + LineMark(m).Desc.Shown
		}
	}
	return scene.Telling{Shown: text + " " + LineWhy(p, look).String(), Hidden: text + " Which is further to the right?"}
}

// LineReadOrder reads points from left to right.
func LineReadOrder(m arithmetic.ReadPoints) LineTold {
	return LineTold{
		Title: "Read from left to right",
		Hands: Say("Read the points from left to right: " + numbersInOrder(m.Order) + "."),
		Ask:   Say("Which number is furthest to the left?"),
		Desc:  scene.Telling{Shown: "From left to right the points are " + numbersInOrder(m.Order) + ".", Hidden: "Which number comes first, and which comes last?"},
	}
}

func numbersInOrder(list []arithmetic.Number) string {
	names := make([]string, len(list))
	for i, n := range list {
		names[i] = n.String()
	}
	return List(names)
}

// LineOrderTitle is the title of an ordering.
func LineOrderTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: "In order: " + numbersInOrder(a.Order), Hidden: p.String()}
}

// LineOrderDesc describes an ordering.
func LineOrderDesc(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	given := "A number line for the numbers " + numbersInOrder(p.List) + "."
	return scene.Telling{Shown: given + " From left to right the points are " + numbersInOrder(a.Order) + ".", Hidden: given + " Which comes first, and which comes last?"}
}

// LineTwoLines draws the lines for a statement about two sums.
func LineTwoLines(p arithmetic.Problem) LineTold {
	return LineTold{
		Title: "Draw two lines",
		Hands: Say("Draw two lines, one above the other, with the same 0 and the same steps. The upper one is for ", In(scene.First, p.Left.String()),
			", the lower one for ", In(scene.Second, p.Right.String()), "."),
		Ask:  Say("Which will end further to the right?"),
		Desc: scene.Same("Two number lines, one above the other, with the same 0 and the same steps."),
	}
}

// LineTrain tells the hops of one side.
func LineTrain(m arithmetic.HopTrain) LineTold {
	line := [...]string{"upper", "lower"}[m.Side]
	role := []scene.Role{scene.First, scene.Second}[m.Side]
	told := LineTold{Title: "Go the " + line + " line", Ask: Say("Where do you end?")}
	hops := ""
	if len(m.Hops) > 0 {
		hops = ", then jump " + jumpsOnly(m.Hops)
	}
	told.Hands = Say("On the "+line+" line go from 0 to ", In(role, m.First.String()), hops+". You end on ", In(scene.Result, m.End.String()), ".")
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
	start := "Two number lines with the same 0 and the same steps. "
	return scene.Telling{
		Shown:  start + trainDesc(first, false) + " " + trainDesc(second, false) + " " + LineWhy(p, look).String(),
		Hidden: start + trainDesc(first, true) + " " + trainDesc(second, true) + " Which ends further to the right?",
	}
}
