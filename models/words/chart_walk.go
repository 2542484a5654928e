package words

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// ChartWalk is a lesson about a sum or difference as steps on a hundred chart.
type ChartWalk struct {
	arithmetic.Problem
	Find arithmetic.FindOnChart
	End  int64
}

// parts is how many rows and cells there are to go.
func (c ChartWalk) parts() string {
	down, right := " down", " to the right"
	if c.Find.Back {
		down, right = " up", " to the left"
	}
	rows, cells := Count(c.Find.Tens, "row")+down, Count(c.Find.Ones, "cell")+right
	switch {
	case c.Find.Tens == 0:
		return cells
	case c.Find.Ones == 0:
		return rows
	}
	return rows + " and " + cells
}

func (c ChartWalk) second() string {
	_, b, _ := c.Operands()
	return b.String()
}

func (c ChartWalk) given() string {
	return chartIs + " A counter lies on " + g(c.Find.At) + "."
}

// Start puts a counter on the first number.
func (c ChartWalk) Start() Told {
	at, b := In(scene.First, g(c.Find.At)), In(scene.Second, c.second())
	do := "add "
	if c.Find.Back {
		do = "take away "
	}
	hands := Say("Put a counter on ", at, ". To "+do, b, ", go "+c.parts()+".")
	switch {
	case c.Find.Tens > 0 && c.Find.Ones > 0:
		hands = Say("Put a counter on ", at, ". ", b, " is "+Count(c.Find.Tens, "ten")+" and "+Count(c.Find.Ones, "one")+": go "+c.parts()+".")
	case c.Find.Tens > 0:
		hands = Say("Put a counter on ", at, ". ", b, " is "+Count(c.Find.Tens, "ten")+": go "+c.parts()+".")
	}
	return Told{
		Title: "Start at " + at.Text,
		Hands: hands,
		Ask:   Say("How many rows and how many cells will you go?"),
		Desc:  scene.Same(c.given() + " It is to go " + c.parts() + "."),
	}
}

// Walk goes some rows, or some cells.
func (c ChartWalk) Walk(m arithmetic.WalkChart, last bool) Told {
	n, to := len(m.Stops), In(scene.Moved, g(m.To))
	if last {
		to.Role = scene.Result
	}
	more, thing, where := "more", "row", "down"
	if m.Back {
		more, where = "less", "up"
	}
	if m.Step == 1 {
		thing, where = "cell", map[bool]string{false: "right", true: "left"}[m.Back]
	}
	by := In(scene.Second, strconv.Itoa(n))
	told := Told{
		Title: "Go " + Count(int64(n), thing) + " " + where,
		Hands: Say("Go ", by, " "+plural(thing, int64(n))+" "+where+". Each is "+g(m.Step)+" "+more+": "+list(m.Stops[:n-1], ", ")+", ", to, "."),
		Ask:   Say("What is " + g(m.By) + " " + more + " than " + g(m.From) + "?"),
	}
	if n == 1 {
		told.Hands = Say("Go ", by, " "+thing+" "+where+". That is "+g(m.Step)+" "+more+": ", to, ".")
	}
	if from, over, ok := m.EdgeOf(); ok {
		edge := " After " + g(from) + " go on with " + g(over) + ", at the start of the next row."
		if m.Back {
			edge = " Before " + g(from) + " comes " + g(over) + ", at the end of the row above."
		}
		told.Hands = Say(told.Hands, edge)
	}
	way := "From " + g(m.From) + ", " + Count(int64(n), "arrow") + " " + where
	told.Desc = scene.Telling{Shown: way + " to " + to.Text + "."}
	told.Desc.Hidden = told.Desc.Shown
	if last {
		told.Desc.Hidden = "Where does the counter end when it goes from " + g(m.From) + " to " + g(m.By) + " " + more + "?"
	}
	return told
}

// Whole describes the finished walk.
func (c ChartWalk) Whole(w arithmetic.Working) scene.Telling {
	told := scene.Telling{Shown: c.given(), Hidden: "A hundred chart, with a counter on " + g(c.Find.At) + ". From there go by tens and ones: where does it end? " + Asked(c.Problem)}
	for i, m := range w.Moves[1:] {
		told.Shown += " " + c.Walk(m.(arithmetic.WalkChart), i == len(w.Moves)-2).Desc.Shown
	}
	told.Shown += " So " + c.Left.String() + " = " + g(c.End) + "."
	return told
}
