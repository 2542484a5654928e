package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// WaysPairs stands behind the number of pairs, and before the number that they make.
func WaysPairs(n int64) string {
	if n == 1 {
		return "pair makes"
	}
	return "pairs make"
}

func wayText(pair [2]int64) string { return g(pair[0]) + " + " + g(pair[1]) }

func waysList(pairs [][2]int64) string {
	var list []string
	for _, p := range pairs {
		list = append(list, wayText(p))
	}
	return List(list)
}

func waySaid(pair [2]int64) Phrase {
	return Say(In(scene.First, g(pair[0])), " + ", In(scene.Second, g(pair[1])))
}

// WaysLay lays out the number.
func WaysLay(m arithmetic.LayWhole) Told {
	t := Told{
		Title: "Lay out " + g(m.Whole.N),
		Hands: Say("Lay " + Count(m.Whole.N, "counter") + " in a row."),
		Ask:   Say("Into which two parts could you split the row?"),
		Desc:  scene.Same("The whole is " + g(m.Whole.N) + ": " + Count(m.Whole.N, "counter") + " in a row."),
	}
	if m.Whole.N == 0 {
		t.Hands = Say("Leave the table empty: there is nothing to lay out.")
	}
	return t
}

// WaysFirst has nothing on the left and all on the right.
func WaysFirst(m arithmetic.FirstWay, n int64) Told {
	return Told{
		Title: "Start with nothing on the left",
		Hands: sentence("Put none on the left and all on the right: ", waySaid(m.Pair), " = "+g(n)),
		Ask:   Say("How many are on the left, and how many on the right?"),
		Desc:  scene.Same("None on the left and " + g(m.Pair[1]) + " on the right: " + wayText(m.Pair) + "."),
	}
}

// WaysNext moves one across.
func WaysNext(m arithmetic.NextWay, n int64) Told {
	return Told{
		Title: "Move one to the left",
		Hands: sentence("Move one counter to the left: ", waySaid(m.Pair), " = "+g(n)),
		Ask:   Say("One part gets one more. What happens to the other part?"),
		Desc:  scene.Telling{Shown: "One more row: " + wayText(m.Pair) + ".", Hidden: "One counter moves to the left. What are the two parts now?"},
	}
}

// WaysOthers goes on moving one across.
func WaysOthers(m arithmetic.OtherWays, all [][2]int64) Told {
	said := waySaid(m.Pairs[0])
	for i, p := range m.Pairs[1:] {
		glue := ", "
		if i == len(m.Pairs)-2 {
			glue = " and "
		}
		said = Say(said, glue, waySaid(p))
	}
	return Told{
		Title: "Go on, one at a time",
		Hands: sentence("Go on moving one at a time, until the parts would only change places: ", said),
		Ask:   Say("How do you know that you have found them all?"),
		Desc:  scene.Telling{Shown: "All rows: " + waysList(all) + ".", Hidden: "Go on, one counter at a time. Which other pairs are there?"},
	}
}

// WaysTurn turns the pairs.
func WaysTurn(m arithmetic.TurnWays, pairs [][2]int64) Told {
	last := pairs[len(pairs)-1]
	t := Told{
		Title: "Turn each pair",
		Hands: Say("Look at each row from the other side: the parts change places. There "+areIs(m.Pairs)+" ", In(scene.Result, Count(m.Pairs, "pair")), ", and "+Count(m.All, "way")+" when the order counts."),
		Ask:   Say("What do " + g(last[0]) + " and " + g(last[1]) + " look like from the other side?"),
		Desc: scene.Telling{
			Shown:  "There " + areIs(m.Pairs) + " " + Count(m.Pairs, "pair") + ": " + waysList(pairs) + ". Each can be turned.",
			Hidden: "Each pair can be turned. How many pairs are there?",
		},
	}
	return t
}

// WaysWhole is the title and the description of all ways.
func WaysWhole(p arithmetic.Problem, pairs [][2]int64) (title, desc scene.Telling) {
	var list []string
	for _, pair := range pairs {
		list = append(list, wayText(pair))
	}
	n := p.Left.String()
	title = scene.Telling{Shown: n + " = " + strings.Join(list, " = "), Hidden: Asked(p)}
	desc = scene.Telling{
		Shown:  "The whole is " + n + ". A row of counters for each way to make it from two parts, 0 too: " + waysList(pairs) + ".",
		Hidden: "The whole is " + n + ". The first row shows " + list[0] + ". Which other pairs make " + n + "?",
	}
	return title, desc
}
