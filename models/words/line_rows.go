package words

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Why a problem is not told with equal jumps, and what is said beside what they
// leave over.
const (
	LineLeftOver   = "left over"
	LineManyHops   = "a number line shows up to 12 equal jumps in a row"
	LineWholeHops  = "jumps of whole ones are shown with a whole number: write 1 for 3/3"
	LineNoHop      = "there would be no jump on the number line"
	LineUnevenHops = "the jumps would not land on the number that is divided"
	LineSharing    = "a number line shows a division by jumps of one size: ask for groups of a number"
)

// LineRowTitle is the title of a problem that is told with equal jumps.
func LineRowTitle(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	between := ": "
	if p.Kind == arithmetic.Product || p.Kind == arithmetic.Division {
		between = " = "
		if p.Grouping {
			between = ": "
		}
	}
	return scene.Telling{Shown: p.String() + between + Answer(p, a), Hidden: Asked(p)}
}

func jumps(n int64) string { return Count(n, "jump") }

// rowMarks says which parts are marked on the line of a row of fractions or decimals.
func rowMarks(r arithmetic.HopRow) string {
	if r.Scale.Parts <= 1 || r.Scale.Form == arithmetic.Money {
		return ""
	}
	return " with " + Parts(r.Scale.Parts, 2) + " marked on it"
}

// LineRowStart says where a row of equal jumps begins.
func LineRowStart(p arithmetic.Problem, m arithmetic.StartRow) LineTold {
	from, by := m.Number(m.From).String(), In(scene.Second, m.Step().String())
	told := LineTold{
		Title: "Start at " + from,
		Hands: Say("Draw a line" + rowMarks(m.HopRow) + " and put the counter on " + from + ". "),
		Desc:  scene.Same("A number line with a point at " + from + "."),
	}
	switch p.Kind {
	case arithmetic.Product:
		told.Hands = Say(told.Hands, "You will make ", In(scene.First, jumps(m.Count)), " of ", by, ".")
		told.Ask = Say("How many jumps will you make, and how long is each?")
	case arithmetic.Division:
		total := In(scene.First, m.Number(m.Total).String())
		told.Hands = Say(told.Hands, "Mark ", total, ". You will make jumps of ", by, " toward it.")
		told.Ask = Say("How many jumps of ", by, " do you think fit in ", total, "?")
		told.Desc = scene.Same("A number line from 0 with a mark at " + total.Text + ".")
	default:
		told.Hands = Say(told.Hands, "You will jump ", by, " "+way(m.Back)+" each time.")
		told.Ask = Say("Where will the first jump land?")
	}
	return told
}

// LineHopOn tells some of the jumps of a row.
func LineHopOn(p arithmetic.Problem, m arithmetic.HopOn) LineTold {
	by := In(scene.Moved, m.Step().String())
	step := "Jump " + by.Text
	if m.Back {
		step += " back"
	}
	lands := landsOn(m)
	told := LineTold{Title: step, Hands: Say("Jump ", by, " "+way(m.Back)+". You land on "+lands+"."), Ask: Say("Where do you land?")}
	switch {
	case m.Last > m.First:
		told.Title = "Keep jumping " + by.Text
		told.Hands = Say("Keep jumping ", by, " until you have made "+jumps(m.Last)+". You land on "+lands+".")
		told.Ask = Say("Which numbers do you land on?")
	case m.First > 1:
		told.Title = step + " again"
		told.Hands = Say("Jump ", by, " "+way(m.Back)+" again. You land on "+lands+".")
	}
	if k := p.Kind; (k == arithmetic.Product || k == arithmetic.Division) && m.First == m.Last {
		told.Hands = Say(told.Hands, " That is "+jumps(m.Last)+".")
	}
	said := "After " + jumps(m.Last) + " of " + by.Text + " the counter"
	told.Desc = scene.Telling{Shown: said + " has landed on " + lands + "."}
	switch {
	case p.Kind == arithmetic.Division:
		told.Desc.Hidden = "Jumps of " + by.Text + " go on from 0. How many fit?"
	case m.Last == m.Count:
		told.Desc.Hidden = said + " is on the number that is asked for."
	default:
		told.Desc.Hidden = told.Desc.Shown
	}
	return told
}

// landsOn lists where some jumps land: 4, 8 and 12.
func landsOn(m arithmetic.HopOn) string {
	var list []string
	for nth := m.First; nth <= m.Last; nth++ {
		list = append(list, m.Number(m.Land(nth)).String())
	}
	return List(list)
}

// LineStopShort says what is left over.
func LineStopShort(m arithmetic.StopShort) LineTold {
	at, total, rest := arithmetic.Grouped(m.At), arithmetic.Grouped(m.Total), arithmetic.Grouped(m.Rest)
	return LineTold{
		Title: "See what is left over",
		Hands: Say("One more jump would go past ", In(scene.First, total), ". From "+at+" to ", In(scene.First, total), " there are ", In(scene.First, rest), " left over."),
		Ask:   Say("Does another jump fit?"),
		Desc:  scene.Telling{Shown: "From " + at + " to " + total + " there are " + rest + " left over.", Hidden: "Does another jump fit before " + total + "?"},
	}
}

// LineCountHops counts the jumps of a division.
func LineCountHops(m arithmetic.CountHops) LineTold {
	n, by, total := In(scene.Result, jumps(m.Count)), In(scene.Second, m.Step().String()), In(scene.First, m.Number(m.Total).String())
	hands := Say("Count the jumps: ", n, " of ", by, " fit in ", total, ".")
	shown := jumps(m.Count) + " of " + by.Text + " fit in " + total.Text
	if m.Rest > 0 {
		hands = Say("Count the jumps: ", n, " of ", by, " fit in ", total, ", and ", In(scene.First, arithmetic.Grouped(m.Rest)), " are left over.")
		shown += ", with " + arithmetic.Grouped(m.Rest) + " left over"
	}
	return LineTold{
		Title: "Count the jumps",
		Hands: hands,
		Ask:   Say("How many jumps did you make?"),
		Desc:  scene.Telling{Shown: shown + ".", Hidden: "How many jumps of " + by.Text + " fit in " + total.Text + "?"},
	}
}

// LineRowDesc describes a row of equal jumps.
func LineRowDesc(p arithmetic.Problem, row arithmetic.HopRow, a arithmetic.Answer, broken bool) scene.Telling {
	by, from := row.Step().String(), row.Number(row.From).String()
	all := landsOn(arithmetic.HopOn{HopRow: row, First: 1, Last: row.Count})
	t := lineOf(broken)
	made := t + " From " + from + ", " + jumps(row.Count) + " of " + by + " " + way(row.Back)
	shown := made + " land on " + all + "."
	if row.Count == 1 {
		shown = made + " lands on " + all + "."
	}
	switch p.Kind {
	case arithmetic.Product:
		return scene.Telling{Shown: shown + " So " + p.String() + " = " + renamed(a) + ".", Hidden: made + ". Where do they end? " + p.String() + " = ?"}
	case arithmetic.Division:
		x, y, _ := p.Operands()
		if a.Remainder > 0 {
			shown += " " + arithmetic.Grouped(a.Remainder) + " are left over on the way to " + x.String() + "."
		}
		return scene.Telling{Shown: shown + " So " + x.String() + " ÷ " + y.String() + " is " + Answer(p, a) + ".",
			Hidden: t + " A mark at " + x.String() + ", and a first jump of " + by + " from 0. How many jumps of " + by + " fit in " + x.String() + "?"}
	case arithmetic.Counting:
		return scene.Telling{Shown: shown + " So count: " + Answer(p, a) + ".",
			Hidden: t + " Start at " + from + " and jump " + by + " " + way(row.Back) + " each time, " + strconv.FormatInt(row.Count, 10) + " times. Which numbers come?"}
	}
	return scene.Telling{Shown: shown + " These are the multiples of " + by + ".",
		Hidden: t + " From 0 jump " + by + " each time, " + strconv.FormatInt(row.Count, 10) + " times. Which numbers come?"}
}

// LineStartBoth begins on two lines.
func LineStartBoth(m arithmetic.Meet) LineTold {
	a, b := In(scene.First, arithmetic.Grouped(m.Rows[0].By)), In(scene.Second, arithmetic.Grouped(m.Rows[1].By))
	return LineTold{
		Title: "Draw two lines",
		Hands: Say("Draw two lines, one above the other, both from 0 and to the same scale. On the upper one you will jump ", a, " each time, on the lower one ", b, "."),
		Ask:   Say("Will both ever land on the same number?"),
		Desc:  scene.Same("Two number lines, one above the other, both from 0 and to the same scale."),
	}
}

// LineRowOn makes all jumps on one of two lines.
func LineRowOn(row arithmetic.HopRow, nth int) LineTold {
	name, by := [...]string{"upper", "lower"}[nth], In(panRole(nth), arithmetic.Grouped(row.By))
	lands := landsOn(arithmetic.HopOn{HopRow: row, First: 1, Last: row.Count})
	return LineTold{
		Title: "Jump by " + by.Text,
		Hands: Say("On the "+name+" line jump ", by, " each time. You land on "+lands+"."),
		Ask:   Say("Which numbers do you land on?"),
		Desc:  scene.Telling{Shown: "On the " + name + " line jumps of " + by.Text + " land on " + lands + ".", Hidden: "On the " + name + " line jumps of " + by.Text + " go on from 0."},
	}
}

// LineMeet finds where both rows land.
func LineMeet(m arithmetic.Meet, a arithmetic.Answer) LineTold {
	least := In(scene.Result, arithmetic.Grouped(a.List[0]))
	hands := Say("Both rows land on "+list(a.List, ", ")+", and so on. The first of them, ", least, ", is the least common multiple.")
	if len(m.At) == 1 {
		hands = Say("Both rows land on ", least, ", the least common multiple. They meet again after as many steps: "+list(a.List, ", ")+", and so on.")
	}
	return LineTold{
		Title: "Find where both land",
		Hands: hands,
		Ask:   Say("On which numbers do both rows land?"),
		Desc: scene.Telling{Shown: "Both rows land on " + list(a.List, ", ") + ", and so on; the least is " + least.Text + ".",
			Hidden: "On which numbers do both rows land, and which is the least?"},
	}
}

// LineMeetDesc describes two rows that meet.
func LineMeetDesc(m arithmetic.Meet, a arithmetic.Answer) scene.Telling {
	x, y := m.Rows[0], m.Rows[1]
	start := "Two number lines, both from 0 and to the same scale. The upper one has jumps of " + arithmetic.Grouped(x.By) + ", the lower one jumps of " + arithmetic.Grouped(y.By) + "."
	return scene.Telling{Shown: start + " " + LineMeet(m, a).Desc.Shown, Hidden: start + " " + LineMeet(m, a).Desc.Hidden}
}
