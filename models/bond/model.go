// Package bond draws number bonds: a whole joined to its two parts.
package bond

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows a whole and its two parts, what is said of them in a family of facts,
// and all the ways to make a number (CCSS K.OA.A.3, 1.OA.B.4, 1.OA.C.6, 1.OA.D.8).
var Model = &telling.Model{
	Name:  "number-bond",
	Title: "Number bond",
	Doc:   "A whole joined to its two parts: fact families, ways to make a number, making ten, and which part is missing.",
	Kinds: []arithmetic.Kind{
		arithmetic.FactFamily,
		arithmetic.WaysToMake,
		arithmetic.Missing,
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.ExpandedForm,
	},
	Examples: []string{
		"fact family of 3 + 5", "fact family of 4 + 4", "fact family of 38 + 25", "fact family of 3 × 4", "ways to make 5", "ways to make 10",
		"5 + 3", "8 + 6", "13 − 5", "8 + ? = 11", "? − 3 = 5", "45 + 27", "47 in expanded form", "14 in expanded form",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

const (
	mostWhole  = 100 // of a sum: larger numbers say nothing on a plate
	mostFactor = 12  // of a product: the tables
	mostWays   = 20  // counters in a row
	leadsUpTo  = 20  // a missing number up to here can be counted
)

// turn leads where the bond is what is asked for, and follows for a missing number
// that can be counted.
func turn(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.WaysToMake:
		return telling.Leads
	case arithmetic.FactFamily:
		if o, ok := p.Left.(arithmetic.Operation); ok && o.Op == arithmetic.Add {
			return telling.Leads
		}
		return telling.Follows
	case arithmetic.Missing:
		if _, plan, err := arithmetic.PartWhole(p); err == nil && plan.Whole.N <= leadsUpTo {
			return telling.Follows
		}
	}
	return telling.Serves
}

// fits refuses what has no two parts, and numbers too large for a bond.
func fits(p arithmetic.Problem) error {
	switch p.Kind {
	case arithmetic.FactFamily:
		return fitsFamily(p)
	case arithmetic.WaysToMake:
		w, err := arithmetic.Ways(p)
		if err != nil {
			return words.BondMisfit(err)
		}
		return words.WaysTooMany(w.Answer.Number, mostWays)
	case arithmetic.ExpandedForm:
		if _, err := arithmetic.TensAndOnes(p); err != nil {
			return words.ErrBondPlaces
		}
		return nil
	case arithmetic.Expression:
		return telling.NotMine(words.ErrBondOther)
	}
	_, plan, err := arithmetic.PartWhole(p)
	switch {
	case errors.Is(err, arithmetic.ErrNotWhole):
		return telling.NotMine(words.ErrBondOther)
	case err != nil:
		return words.BondMisfit(err)
	}
	return words.BondTooLarge(plan.Whole.N, mostWhole)
}

func fitsFamily(p arithmetic.Problem) error {
	w, err := arithmetic.Family(p)
	if err != nil {
		return words.BondMisfit(err)
	}
	add := w.Moves[2].(arithmetic.AddParts)
	if p.Left.(arithmetic.Operation).Op == arithmetic.Multiply {
		return words.FamilyTooLarge(max(add.Parts[0].N, add.Parts[1].N), mostFactor)
	}
	return words.BondTooLarge(add.Whole.N, mostWhole)
}

func tell(p arithmetic.Problem) telling.Telling {
	switch p.Kind {
	case arithmetic.FactFamily:
		w, err := arithmetic.Family(p)
		add := must(w, err).Moves[2].(arithmetic.AddParts)
		return withCounters(tellFamily(w), 3, add.Whole.N)
	case arithmetic.WaysToMake:
		w, err := arithmetic.Ways(p)
		n, _ := must(w, err).Answer.Number.Int64()
		return withCounters(tellWays(w), 3, n)
	case arithmetic.ExpandedForm:
		w, err := arithmetic.TensAndOnes(p)
		n, _ := must(w, err).Answer.Number.Int64()
		return withCounters(tellPlaces(w), 3, n)
	}
	if w, err := arithmetic.MakeTen(p); err == nil {
		n, _ := w.Answer.Number.Int64()
		return withCounters(tellTen(w), 4, n)
	}
	w, plan, err := arithmetic.PartWhole(p)
	return withCounters(tellPartWhole(must(w, err), plan), 3, plan.Whole.N)
}

func must(w arithmetic.Working, err error) arithmetic.Working {
	if err != nil {
		panic(err) // fits has worked it
	}
	return w
}

// withCounters lays out plates, and counters where they can be counted.
func withCounters(t telling.Telling, plates, n int64) telling.Telling {
	t.Pieces = []telling.Piece{{Name: words.BondPlates(plates), Count: plates}}
	if n > 0 && n <= mostCounters {
		t.Pieces = append(t.Pieces, telling.Piece{Name: words.Things(words.Counters, n), Count: n})
	}
	return t
}
