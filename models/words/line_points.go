package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

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
	title := "Cut it in equal parts"
	if m.Each.Form == arithmetic.Common {
		title = "Cut the line in " + Parts(m.Each.Value.Den(), 2)
		if m.Into > 0 && m.Within.Form == arithmetic.Common {
			long, count = "each "+Parts(m.Within.Value.Den(), 1), arithmetic.Grouped(m.Into)
		}
	}
	return LineTold{
		Title: title,
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
		Ask:   Say("Do they end at the same point, or is one further to the right?"),
		Desc:  scene.Telling{Shown: LineWhy(p, m).String(), Hidden: "Do they end at the same point, or is one further to the right?"},
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
	return scene.Telling{Shown: text + " " + LineWhy(p, look).String(), Hidden: text + " Is it one point, or is one further to the right?"}
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
