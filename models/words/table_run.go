package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// RunTable is a lesson about the numbers of a run, one under the other.
type RunTable struct {
	arithmetic.Problem
	Rule arithmetic.Rule
	List []int64
}

// given says what is known.
func (r RunTable) given() string {
	return "A table of " + g(int64(len(r.List))) + " numbers that begins with " + g(r.List[0]) + ". From each number to the next the rule is: " +
		doRule(r.Rule, g(r.Rule.By)).String() + "."
}

// Say writes the first number and says the rule.
func (r RunTable) Say() Told {
	first := In(scene.First, g(r.List[0]))
	return Told{
		Title: "Write the first number",
		Hands: Say("Draw a table with "+Count(int64(len(r.List)), "row")+". Write ", first, " in the first row. To get to the next number, always ", ruleSaid(r.Rule), "."),
		Ask:   Say("What will you do to get from one number to the next?"),
		Desc:  scene.Same(r.given() + " Only the first number is filled in."),
	}
}

// Fill finds one number, or all that are left.
func (r RunTable) Fill(rows []arithmetic.FillRow) Told {
	first := rows[0]
	from := In(scene.Result, g(first.In))
	if first.Row == 1 {
		from.Role = scene.First
	}
	if len(rows) == 1 {
		out := g(first.Out)
		return Told{
			Title: "Find the " + Ordinal(first.Row+1) + " number",
			Hands: Say("Start from ", from, " and ", ruleSaid(r.Rule), ": that makes ", In(scene.Moved, out), ". Write it in the next row."),
			Ask:   Say("Which number comes after ", from, "?"),
			Desc: scene.Telling{Shown: "The " + Ordinal(first.Row+1) + " number is " + out + ".",
				Hidden: "Which number comes after " + from.Text + "?"},
		}
	}
	var outs []int64
	for _, row := range rows {
		outs = append(outs, row.Out)
	}
	return Told{
		Title: "Go on to the last row",
		Hands: Say("Go on from ", from, " in the same way, row by row: ", In(scene.Moved, listed(outs)), "."),
		Ask:   Say("Which numbers come in the other rows?"),
		Desc:  scene.Telling{Shown: "In the other rows come " + listed(outs) + ".", Hidden: "Go on from " + from.Text + ". Which numbers come in the other rows?"},
	}
}

// Title is the problem and its numbers.
func (r RunTable) Title() scene.Telling {
	return scene.Telling{Shown: r.String() + ": " + list(r.List, ", "), Hidden: r.String()}
}

// Whole describes the finished table.
func (r RunTable) Whole() scene.Telling {
	return scene.Telling{Shown: r.given() + " The numbers are " + listed(r.List) + ".", Hidden: r.given() + " Which numbers come in the other rows?"}
}
