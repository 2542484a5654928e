package words

import (
	"errors"
	"strconv"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// TableRule stands above the way from one column to the other.
const TableRule = "rule:"

// What stands above the columns of a table, and what to have for one.
const (
	TableIn     = "in"
	TableOut    = "out"
	TableTerm   = "place"
	TableNumber = "number"
	TablePaper  = "sheet of paper"
)

// TableCards are cards that turn over: the number that comes out is on the back.
func TableCards(n int) string { return plural("small card", int64(n)) }

// Why a table does not show a problem.
var (
	ErrTableKind  = errors.New("a table shows a rule and the numbers of a pattern")
	ErrTableWhole = errors.New("a table shows rules that give whole numbers")
	ErrTableLong  = errors.New("a table has up to 12 rows")
	ErrTableLarge = errors.New("a table shows numbers to 9,999,999")
	ErrTableRule  = errors.New("the rule of a table has a number to 9,999")
	ErrTableEmpty = errors.New("there would be no row to fill")
)

// TableMisfit says why a table cannot be filled.
func TableMisfit(err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNothing):
		return ErrTableEmpty
	case errors.Is(err, arithmetic.ErrOverflow):
		return ErrTableLarge
	}
	return ErrTableWhole
}

// Ordinal is a place in a row: 1st, 2nd, 3rd, 12th.
func Ordinal(n int) string {
	end := "th"
	if n/10%10 != 1 {
		switch n % 10 {
		case 1:
			end = "st"
		case 2:
			end = "nd"
		case 3:
			end = "rd"
		}
	}
	return strconv.Itoa(n) + end
}

// doRule is what a rule says to do: add 3, multiply by 2.
func doRule(r arithmetic.Rule, by any) Phrase {
	switch r.Op {
	case arithmetic.Add:
		return Say("add ", by)
	case arithmetic.Subtract:
		return Say("take away ", by)
	case arithmetic.Multiply:
		return Say("multiply by ", by)
	}
	return Say("divide by ", by)
}

func ruleSaid(r arithmetic.Rule) Phrase { return doRule(r, In(scene.Second, g(r.By))) }

func listed(list []int64) string { return List(numbers(list)) }

// RuleTable is a lesson about what goes into a rule and what comes out.
type RuleTable struct {
	arithmetic.Problem
	Rule    arithmetic.Rule
	In, Out []int64
}

// Say says the rule.
func (r RuleTable) Say() Told {
	return Told{
		Title: "Say the rule",
		Hands: Say("Draw a table and write ", In(scene.First, listed(r.In)), " under “in”. Say the rule: ", ruleSaid(r.Rule), "."),
		Ask:   Say("What does the rule do to every number?"),
		Desc:  scene.Same(r.given() + " Nothing is filled in yet."),
	}
}

// given says what is known.
func (r RuleTable) given() string {
	in := "is " + listed(r.In)
	if len(r.In) > 1 {
		in = "are " + listed(r.In) + ", one under the other"
	}
	return "A table with the rule: " + doRule(r.Rule, g(r.Rule.By)).String() + ". Under “in” " + in + "."
}

// Fill fills one row, or all that are left.
func (r RuleTable) Fill(rows []arithmetic.FillRow) Told {
	if len(rows) == 1 {
		in, out := g(rows[0].In), g(rows[0].Out)
		return Told{
			Title: "Put " + in + " in",
			Hands: Say("Put ", In(scene.First, in), " in and ", ruleSaid(r.Rule), ": ", In(scene.Moved, out), " comes out. Write it beside ", In(scene.First, in), "."),
			Ask:   Say("What comes out when ", In(scene.First, in), " goes in?"),
			Desc: scene.Telling{Shown: "In row " + strconv.Itoa(rows[0].Row+1) + ", " + in + " becomes " + out + ".",
				Hidden: "In row " + strconv.Itoa(rows[0].Row+1) + ", " + in + " goes in. What comes out?"},
		}
	}
	var ins, outs []int64
	var pairs []string
	for _, row := range rows {
		ins, outs = append(ins, row.In), append(outs, row.Out)
		pairs = append(pairs, g(row.In)+" becomes "+g(row.Out))
	}
	return Told{
		Title: "Fill in the other rows",
		Hands: Say("Do the same in every row. ", In(scene.First, listed(ins)), " go in, and ", In(scene.Moved, listed(outs)), " come out."),
		Ask:   Say("What comes out of each of the other rows?"),
		Desc:  scene.Telling{Shown: "In the other rows " + List(pairs) + ".", Hidden: "In the other rows " + listed(ins) + " go in. What comes out of each?"},
	}
}

// Title is the problem and what comes out.
func (r RuleTable) Title() scene.Telling {
	return scene.Telling{Shown: r.String() + ": " + list(r.Out, ", "), Hidden: r.String()}
}

// Whole describes the finished table.
func (r RuleTable) Whole() scene.Telling {
	pairs := make([]string, len(r.In))
	for i := range r.In {
		pairs[i] = g(r.In[i]) + " becomes " + g(r.Out[i])
	}
	return scene.Telling{Shown: r.given() + " In the table " + List(pairs) + ".", Hidden: r.given() + " What comes out in each row?"}
}
