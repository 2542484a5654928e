package words

import (
	"errors"
	"strconv"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// What to have for a hundred chart.
const (
	ChartPaper   = "hundred chart"
	ChartCounter = "counter"
	ChartPencil  = "pencil"
	ChartPencils = "colored pencils"
)

// Why a hundred chart does not show a problem.
var (
	ErrChartKind  = errors.New("a hundred chart shows counting, multiples, sums and differences, even numbers and primes")
	ErrChartLarge = errors.New("a hundred chart ends at 100")
	ErrChartNone  = errors.New("there would be no step on the hundred chart")
	ErrChartLess  = errors.New("there is less than is to be taken away")
	ErrChartLeast = errors.New("a hundred chart has no common multiple of these two: the least is more than 100")
	ErrChartZero  = errors.New("a hundred chart shows for numbers from 1 on whether they are even")
)

// ChartMisfit says why a problem cannot be worked on a hundred chart. ErrChartKind is
// for problems that are none of it.
func ChartMisfit(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNothing):
		return ErrChartNone
	case errors.Is(err, arithmetic.ErrNegative):
		return ErrChartLess
	case errors.Is(err, arithmetic.ErrOverflow) && p.Kind == arithmetic.CommonMultiples:
		return ErrChartLeast
	case errors.Is(err, arithmetic.ErrOverflow) && p.Kind == arithmetic.Parity && p.Left.String() == "0":
		return ErrChartZero
	case errors.Is(err, arithmetic.ErrOverflow):
		return ErrChartLarge
	}
	return ErrChartKind
}

// answered is a problem with its answer behind a colon, and as it is asked.
func answered(p arithmetic.Problem, a arithmetic.Answer) scene.Telling {
	return scene.Telling{Shown: p.String() + ": " + Answer(p, a), Hidden: Asked(p)}
}

// Chart is a lesson about counting by a number, or multiples, on a hundred chart.
type Chart struct {
	arithmetic.Problem
	Answer arithmetic.Answer
	Row    arithmetic.HopRow
}

const chartIs = "A hundred chart: the numbers from 1 to 100 in rows of ten."

func (c Chart) multiples() bool { return c.Kind == arithmetic.Multiples }

// given says what is known.
func (c Chart) given() string {
	if c.multiples() {
		return chartIs + " We look for the first " + strconv.Itoa(c.Run.Terms) + " multiples of " + g(c.Row.By) + "."
	}
	text := chartIs + " The count begins at " + g(c.Row.From) + " and goes " + way(c.Row.Back) + " by " + g(c.Row.By) + "."
	return text
}

// way says how a count moves on the chart: one row down, 5 cells on.
func (c Chart) way() string {
	rows, cells := c.Row.By/10, c.Row.By%10 // as its two digits say
	down, on := " down", " on"
	if c.Row.Back {
		down, on = " up", " back"
	}
	switch {
	case cells == 0 && rows > 0:
		return Count(rows, "row") + down
	case rows == 0:
		return Count(cells, "cell") + on
	}
	return Count(rows, "row") + down + " and " + Count(cells, "cell") + on
}

// Start begins the count.
func (c Chart) Start(m arithmetic.StartRow) Told {
	by := In(scene.Second, g(m.By))
	if c.multiples() {
		by.Role = scene.First
		return Told{
			Title: "Take the chart",
			Hands: Say("Take a hundred chart. Begin in front of 1, at 0. Each multiple of ", by, " is "+c.way()+" from the one before."),
			Ask:   Say("Which number will be the first multiple of ", by, "?"),
			Desc:  scene.Same(c.given() + " Nothing is marked yet."),
		}
	}
	from := In(scene.First, g(m.From))
	hands := Say("Lay a counter on ", from, ". You will count "+way(m.Back)+" by ", by, ": that is "+c.way()+" each time.")
	if m.From == 0 {
		hands = Say("Lay a counter on ", from, ", in front of 1. You will count forward by ", by, ": that is "+c.way()+" each time.")
	}
	return Told{
		Title: "Start at " + from.Text,
		Hands: hands,
		Ask:   Say("Where will the next counter lie?"),
		Desc:  scene.Same(c.given() + " Only " + from.Text + " is marked."),
	}
}

// HopOn makes one count, or all that are left.
func (c Chart) HopOn(m arithmetic.HopOn) Told {
	lands := In(scene.Moved, landsOn(m))
	before, by := g(m.Land(m.First-1)), g(m.By)
	told := Told{
		Title: "Count " + way(m.Back) + " " + by,
		Hands: Say("From "+before+" go "+c.way()+" and lay a counter on ", lands, "."),
		Ask:   Say("Which number is " + by + " more than " + before + "?"),
		Desc: scene.Telling{Shown: "From " + before + " the count goes on to " + lands.Text + ".",
			Hidden: "From " + before + " the count goes on by " + by + ". Which number comes?"},
	}
	if m.Back {
		told.Ask = Say("Which number is " + by + " less than " + before + "?")
	}
	if m.Last > m.First {
		told.Title = "Go on to the end"
		told.Hands = Say("Go on in the same way and lay counters on ", lands, ".")
		told.Ask = Say("Which numbers come next?")
		told.Desc = scene.Telling{Shown: "The count goes on: " + lands.Text + ".", Hidden: "The count goes on from " + before + ". Which numbers come?"}
	} else if m.Last < m.Count {
		told.Desc.Hidden = told.Desc.Shown
	}
	return told
}

// Ends sees a pattern of last digits.
func (c Chart) Ends(m arithmetic.SeeEnds) Told {
	ends := In(scene.Result, either(m.Ends))
	hands := Say("Look at the ones digits: every number ends in ", ends, ".")
	if len(m.Ends) == 1 {
		hands = Say("Look down the column: every number ends in ", ends, ". Only the tens change.")
	}
	return Told{
		Title: "See the pattern",
		Hands: hands,
		Ask:   Say("What do you notice about the ones digits?"),
		Desc: scene.Telling{Shown: "All the marked numbers end in " + ends.Text + ".",
			Hidden: "What do the ones digits of all the marked numbers have in common?"},
	}
}

func either(list []int64) string {
	names := numbers(list)
	if last := len(names) - 1; last > 0 {
		text := names[0]
		for _, n := range names[1:last] {
			text += ", " + n
		}
		return text + " or " + names[last]
	}
	return names[0]
}

// Title is the problem and its numbers.
func (c Chart) Title() scene.Telling { return answered(c.Problem, c.Answer) }

// Whole describes the finished chart.
func (c Chart) Whole() scene.Telling {
	return scene.Telling{Shown: c.given() + " Marked are " + List(numbers(c.Answer.List)) + ".", Hidden: c.given() + " Which numbers are to be marked?"}
}
