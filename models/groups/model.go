// Package groups draws equal groups: counters on plates and in rings.
package groups

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows equal groups made, shared out and measured off.
var Model = &telling.Model{
	Name:  "equal-groups",
	Title: "Equal groups",
	Doc:   "Counters in equal groups, made, shared out or measured off: multiplying, dividing, parts of an amount, even and odd.",
	Kinds: []arithmetic.Kind{
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.Missing,
		arithmetic.PartOf,
		arithmetic.Parity,
	},
	Examples: []string{
		"5 × 7", "3 × 4", "9 × 6", "4 × 0", "0 × 6",
		"12 ÷ 3", "12 in groups of 3", "40 ÷ 8", "40 in groups of 8", "17 ÷ 5", "17 in groups of 5", "3 ÷ 8 with remainder", "0 ÷ 4", "6 ÷ 1",
		"13 ÷ 4 as a mixed number", "14 in groups of 4 as a mixed number", "3 ÷ 4 as a fraction",
		"17 in groups of 5 rounded up", "17 ÷ 5 rounded up",
		"8 × ? = 48", "? × 6 = 18", "48 ÷ ? = 8", "5 = ? ÷ 3",
		"1/3 of 12", "3/4 of 20", "is 14 even or odd", "is 17 even or odd",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

// Bounds of what equal groups show.
const (
	mostThings = 100
	mostShares = 12 // groups that are known: made or shared out
	mostGroups = 20 // groups that are measured off
	mostPairs  = 30
	mostParts  = 8  // of a counter that is cut
	often      = 40 // things that a teacher still counts out
)

// turn leads where little is shared or grouped; to make small groups it is the
// second choice.
func turn(p arithmetic.Problem) int {
	small := func(n arithmetic.Number) bool {
		v, ok := n.Int64()
		return ok && v <= often
	}
	a, b, ok := p.Operands()
	switch {
	case p.Kind == arithmetic.Division && ok && p.Rest != arithmetic.AsDecimal && p.Story == arithmetic.NoStory && small(a) && fits(p) == nil:
		return telling.Leads
	case p.Kind == arithmetic.Parity:
		return telling.Leads
	case p.Kind == arithmetic.Product && ok && small(a) && small(b) && fits(p) == nil:
		if w, err := work(p); err == nil && small(w.Answer.Number) {
			return telling.Follows
		}
	}
	return telling.Serves
}

func fits(p arithmetic.Problem) error {
	w, err := work(p)
	if err != nil {
		why := words.GroupsMisfit(p, err)
		if why == words.ErrNoGroups || errors.Is(err, arithmetic.ErrNotWhole) && p.Kind != arithmetic.PartOf {
			return telling.NotMine(why)
		}
		return why
	}
	if why := tooMany(w); why != nil {
		return why
	}
	if _, ok := lay(needOf(w)); !ok {
		return words.ErrGroupsTooCrowded
	}
	return nil
}

// tooMany says which bound a working breaks.
func tooMany(w arithmetic.Working) error {
	set := w.Moves[0].(arithmetic.SetGroups)
	things, groups, most := max(set.Total, set.Each), set.Groups, int64(mostShares)
	if set.Story == arithmetic.Measuring {
		most = mostGroups
	}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.MakeGroups:
			groups = max(groups, m.Groups)
		case arithmetic.RoundUp:
			if m.Story == arithmetic.Measuring {
				groups = max(groups, m.Found)
			}
		case arithmetic.ReadGroups:
			things = max(things, m.Total)
		case arithmetic.ReadPairs:
			most = mostPairs
		case arithmetic.SplitRest:
			if why := words.GroupsTooFine(m.Parts, mostParts); why != nil {
				return why
			}
		}
	}
	return words.GroupsTooMany(things, groups, mostThings, most)
}

// work has the procedure for the problem's kind work it.
func work(p arithmetic.Problem) (arithmetic.Working, error) {
	if p.Story != arithmetic.NoStory {
		return arithmetic.Working{}, words.ErrNoGroups
	}
	switch p.Kind {
	case arithmetic.Product:
		return arithmetic.ProductByGroups(p)
	case arithmetic.Division:
		return arithmetic.DivisionByGroups(p)
	case arithmetic.Missing:
		return arithmetic.MissingByGroups(p)
	case arithmetic.PartOf:
		return arithmetic.PartByGroups(p)
	case arithmetic.Parity:
		return arithmetic.ParityByPairs(p)
	}
	return arithmetic.Working{}, words.ErrNoGroups
}
