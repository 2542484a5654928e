package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// LineDraw draws a stretch of line and asks something about what is to come.
func LineDraw(m arithmetic.DrawStretch, ask Phrase, broken bool) LineTold {
	lo, hi := m.Lo.String(), m.Hi.String()
	told := LineTold{
		Title: "Draw the line",
		Hands: Say("Draw a line. Mark " + lo + " at its left end and " + hi + " near its right end."),
		Ask:   ask,
		Desc:  scene.Same("A number line from " + lo + " to " + hi + "."),
	}
	if broken {
		told.Hands = Say("Draw a line from " + lo + " to " + hi + ". A zigzag at the left shows that it does not begin at 0.")
	}
	return told
}

// LineWhereabouts asks roughly where a number will be.
func LineWhereabouts(m arithmetic.DrawStretch, n arithmetic.Number) Phrase {
	if n.Value.Equal(m.Lo.Value) || n.Value.Equal(m.Hi.Value) {
		return Say("Where on this line is ", In(scene.First, n.String()), "?")
	}
	return Say("Is ", In(scene.First, n.String()), " nearer to "+m.Lo.String()+" or to "+m.Hi.String()+", or right in the middle?")
}

// LineGuess asks which of two numbers is more, before it can be seen.
func LineGuess(a, b arithmetic.Number) Phrase {
	return Say("Which do you think is more, ", In(scene.First, a.String()), " or ", In(scene.Second, b.String()), ", or are they equal?")
}

// LineLeast asks which number of a list will come first.
func LineLeast() Phrase { return Say("Which number do you think is the least?") }

// LineCut marks equal parts.
func LineCut(m arithmetic.CutStretch, line arithmetic.DrawStretch) LineTold {
	title := "Mark equal parts"
	if m.Each.Form == arithmetic.Common {
		title = "Mark " + Parts(m.Each.Value.Den(), 2)
	}
	long, count := lineCut(m)
	hands := "Mark " + long + " in " + count + " equal parts."
	if lineToOne(m, line) {
		hands = "Mark " + count + " equal parts from 0 to 1."
	}
	return LineTold{
		Title: title,
		Hands: Say(hands + " Each part is " + m.Each.String() + "."),
		Ask:   Say("How long is each part?"),
		Desc:  scene.Same("On the line, " + long + " is marked in " + count + " equal parts of " + m.Each.String() + "."),
	}
}

// lineCut is what is cut, and in how many parts: "each fourth" in 2.
func lineCut(m arithmetic.CutStretch) (long, count string) {
	long, count = "each "+m.Long.String(), arithmetic.Grouped(m.Parts)
	switch v, ok := m.Long.Int64(); {
	case m.Into > 0 && m.Within.Form == arithmetic.Common && m.Each.Form == arithmetic.Common:
		return "each " + Parts(m.Within.Value.Den(), 1), arithmetic.Grouped(m.Into)
	case m.Into > 0 && m.Within.Form == arithmetic.Decimal && m.Each.Form == arithmetic.Decimal:
		return "each " + m.Within.String(), arithmetic.Grouped(m.Into)
	case ok && v == 1:
		return "each whole", count
	}
	return long, count
}

// lineToOne reports whether a line of one whole is cut in parts of it.
func lineToOne(m arithmetic.CutStretch, line arithmetic.DrawStretch) bool {
	one := arithmetic.Int(1).Value
	return line.Lo.Value.Sign() == 0 && line.Hi.Value.Equal(one) && m.Long.Value.Equal(one) && m.Into == 0
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
	return lineMark(m, []scene.Role{scene.First, scene.Second}[m.Nth%2])
}

func lineMark(m arithmetic.MarkOnLine, role scene.Role) LineTold {
	whole := ""
	if v, ok := m.Number.Int64(); ok && m.Number.Form == arithmetic.Common {
		whole = ", which is " + arithmetic.Grouped(v)
	}
	return LineTold{
		Title: "Mark " + m.Number.String(),
		Hands: Say("From "+m.From.String()+", go "+counted(m)+". Mark the point you reach: ", In(role, m.Number.String()), whole+"."),
		Ask:   Say("How far is it from " + m.From.String() + "?"),
		Desc:  scene.Same(capital(counted(m)) + " from " + m.From.String() + ": there is the point " + m.Number.String() + whole + "."),
	}
}

// LinePairMark marks one of two numbers, each on its side of the line.
func LinePairMark(m arithmetic.MarkOnLine) LineTold {
	told := LineMark(m)
	told.Desc = scene.Same([]string{"Above", "Below"}[m.Nth%2] + " the line, " + counted(m) + " from " + m.From.String() + ": there is the point " + m.Number.String() + ".")
	return told
}

// LinePoint marks a number of a list, in parts that are marked for it alone; nil
// is for none.
func LinePoint(m arithmetic.MarkOnLine, parts *arithmetic.CutStretch, line arithmetic.DrawStretch) LineTold {
	told := lineMark(m, scene.First)
	if parts != nil {
		cut := LineCut(*parts, line)
		told.Hands = append(append(cut.Hands, Say(" ")...), told.Hands...)
		told.Desc.Shown = cut.Desc.Shown + " " + told.Desc.Shown
	}
	told.Desc.Hidden = "Where on the line is " + m.Number.String() + "?"
	return told
}

// LineAgain marks a number of a list that is marked already. A list may have it
// three times, so the description says where in the list this one stands.
func LineAgain(m arithmetic.MarkOnLine) LineTold {
	n := m.Number.String()
	again := "Number " + arithmetic.Grouped(int64(m.Nth+1)) + " of the list is " + n + " again"
	return LineTold{
		Title: "Find " + n + " again",
		Hands: Say("Find ", In(scene.First, n), " again. It is the same point as before."),
		Ask:   Say("Which point is ", In(scene.First, n), "?"),
		Desc:  scene.Telling{Shown: again + ": it is the same point as before.", Hidden: again + ". Where is it?"},
	}
}

// LineShowTitle is the title of a number shown as a point.
func LineShowTitle(n arithmetic.Number, a arithmetic.Answer) scene.Telling {
	shown := n.String()
	if n.Form == arithmetic.Common && n.Value.IsWhole() {
		shown = LineAnswer(a)
	}
	return scene.Telling{Shown: shown + " on a number line", Hidden: "Where is " + n.String() + " on the number line?"}
}

// LineShowDesc describes a number as a point.
func LineShowDesc(w arithmetic.Working, n arithmetic.Number, broken bool) scene.Telling {
	text, hidden := "", ""
	var line arithmetic.DrawStretch
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.DrawStretch:
			line, text = m, LineDraw(m, nil, broken).Desc.Shown
		case arithmetic.CutStretch:
			text += " " + LineCut(m, line).Desc.Shown
		case arithmetic.MarkOnLine:
			hidden = text + " Where is " + n.String() + "?"
			text += " " + LineMark(m).Desc.Shown
		}
	}
	return scene.Telling{Shown: text, Hidden: hidden}
}

// LineClaimTitle is the title of a claim or comparison.
func LineClaimTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	truly := p.Left.String() + " " + a.Relation.String() + " " + p.Right.String()
	if p.Kind == arithmetic.Comparison {
		return scene.Telling{Shown: truly, Hidden: Asked(p)}
	}
	t := scene.Telling{Shown: p.String() + " is true", Hidden: Asked(p)}
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
			text += " " + LinePairMark(m).Desc.Shown
		}
	}
	return scene.Telling{Shown: text + " " + LineWhy(p, look).String(), Hidden: text + " Is it one point, or is one farther to the right?"}
}

// LineReadOrder reads points from left to right.
func LineReadOrder(m arithmetic.ReadPoints) LineTold {
	return LineTold{
		Title: "Read from left to right",
		Hands: Say("Read the points from left to right: " + numbersInOrder(m.Order) + "."),
		Ask:   Say("Which number is farthest to the left?"),
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
