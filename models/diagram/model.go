// Package diagram draws the numbers of a problem as bars: what is known, what is
// asked, and how they belong together.
package diagram

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows a whole in parts, two numbers beside each other, or equal parts, as
// lengths with one unknown (CCSS 2.OA.A.1, 3.OA.A.3, 4.OA.A.2; in the standards'
// glossary a tape diagram).
var Model = &telling.Model{
	Name:  "bar-diagram",
	Title: "Bar diagram",
	Doc:   "A tape diagram: numbers as lengths with a ? on what is asked, for a whole and its parts, how many more, and times as many.",
	Kinds: []arithmetic.Kind{
		arithmetic.Addition,
		arithmetic.Subtraction,
		arithmetic.Expression,
		arithmetic.Missing,
		arithmetic.Comparison,
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.PartOf,
	},
	Examples: []string{
		"345 + 278", "402 − 178", "120 + 80 + 45 + 60", "345 + ? = 623", "? − 45 = 120",
		"how many more is 402 than 178", "compare 178 and 402", "4 × 6", "4 times as many as 6", "56 ÷ 8", "23 ÷ 4", "17 in groups of 5", "24 is 4 times as many as ?", "24 is how many times as many as 6",
		"3/4 of 600", "9,000 + 5",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

const (
	mostTotal = 9_999_999 // the longest number with room on a piece
	mostParts = 5         // addends: as many as have room for their numbers
	mostEqual = 20        // equal parts: each is then 36 units long or more
)

// turn leads where a story compares, and follows for a fraction of an amount.
func turn(p arithmetic.Problem) int {
	switch {
	case p.Story == arithmetic.HowManyMore || p.Story == arithmetic.TimesAsMany:
		return telling.Leads
	case p.Kind == arithmetic.PartOf:
		return telling.Follows
	}
	return telling.Serves
}

// fits refuses what has no bar: numbers that are not whole, nothing at all, and more
// parts than can be seen.
func fits(p arithmetic.Problem) error {
	switch family(p) {
	case comparing:
		return fitsCompared(p)
	case equalParts:
		return fitsEqual(p)
	}
	_, plan, err := arithmetic.PartWhole(p)
	switch {
	case err != nil:
		return misfit(p, err)
	case len(plan.Parts) > mostParts:
		return words.DiagramTooMany(mostParts)
	case plan.Whole.N == 0:
		return words.ErrDiagramNothing
	}
	return words.DiagramTooLong(plan.Whole.N, mostTotal)
}

func fitsCompared(p arithmetic.Problem) error {
	w, err := arithmetic.CompareBars(p)
	if err != nil {
		return misfit(p, err)
	}
	found := w.Moves[len(w.Moves)-1].(arithmetic.FindGap)
	longer := max(found.First.N, found.Second.N)
	if longer == 0 {
		return words.ErrDiagramNothing
	}
	return words.DiagramTooLong(longer, mostTotal)
}

func fitsEqual(p arithmetic.Problem) error {
	_, e, err := arithmetic.EqualPartsBar(p)
	switch {
	case err != nil:
		return misfit(p, err)
	case e.Total.N == 0:
		return words.ErrDiagramNothing
	case e.Count.N == 0 || e.Size.N == 0:
		return words.ErrDiagramNoPart
	case e.Count.N > mostEqual:
		return words.DiagramTooMany(mostEqual)
	}
	return words.DiagramTooLong(e.Total.N, mostTotal)
}

func misfit(p arithmetic.Problem, err error) error {
	why := words.DiagramMisfit(p, err)
	if errors.Is(err, arithmetic.ErrNotWhole) {
		return telling.NotMine(why)
	}
	return why
}

// The three families of bars.
const (
	joining = iota
	comparing
	equalParts
)

func family(p arithmetic.Problem) int {
	switch p.Kind {
	case arithmetic.Comparison:
		return comparing
	case arithmetic.Subtraction:
		if p.Story == arithmetic.HowManyMore {
			return comparing
		}
	case arithmetic.Product, arithmetic.Division, arithmetic.PartOf:
		return equalParts
	}
	return joining
}

func tell(p arithmetic.Problem) telling.Telling {
	switch family(p) {
	case comparing:
		w, err := arithmetic.CompareBars(p)
		return withStrips(tellCompared(must(w, err)), 2)
	case equalParts:
		w, e, err := arithmetic.EqualPartsBar(p)
		strips := int64(1)
		if p.Kind == arithmetic.Product {
			strips = e.Count.N
		}
		if e.Unit {
			strips++
		}
		return withStrips(tellEqual(must(w, err), e), strips)
	}
	w, plan, err := arithmetic.PartWhole(p)
	strips := int64(1)
	if plan.Whole.Nth == arithmetic.Asked {
		strips = int64(len(plan.Parts))
	}
	return withStrips(tellJoined(must(w, err), plan), strips)
}

func must(w arithmetic.Working, err error) arithmetic.Working {
	if err != nil {
		panic(err) // fits has worked it
	}
	return w
}

func withStrips(t telling.Telling, n int64) telling.Telling {
	t.Pieces = []telling.Piece{{Name: words.DiagramStrips(n), Count: n}}
	return t
}
