// Package square draws the multiplication square: the products of the numbers from 1
// to 10 in rows and columns.
package square

import (
	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows where a product stands, the array that it counts, and patterns of the
// tables (CCSS 3.OA.A.4, 3.OA.C.7, 3.OA.D.9, 4.OA.B.4).
var Model = &telling.Model{
	Name:  "multiplication-square",
	Title: "Multiplication square",
	Doc:   "The products to 10 × 10 in rows and columns: facts and what they count, missing factors, multiples, factors, the same fact turned.",
	Kinds: []arithmetic.Kind{
		arithmetic.Multiples,
		arithmetic.Product,
		arithmetic.Division,
		arithmetic.Missing,
		arithmetic.Factors,
		arithmetic.CommonMultiples,
		arithmetic.Claim,
	},
	Examples: []string{
		"first 10 multiples of 7", "7 × 8", "56 ÷ 8", "? × 6 = 42", "factors of 24", "common multiples of 4 and 6", "3 × 8 = 8 × 3",
	},
	Fits: fits,
	Turn: func(p arithmetic.Problem) int {
		if p.Kind == arithmetic.Multiples && fits(p) == nil {
			return telling.Leads
		}
		return telling.Serves
	},
	Tell: tell,
}

func fits(p arithmetic.Problem) error {
	_, err := work(p)
	if err == nil {
		return nil
	}
	why := words.SquareMisfit(p, err)
	if why == words.ErrSquareKind {
		return telling.NotMine(why)
	}
	return why
}

// work has the procedure for the problem's kind work it.
func work(p arithmetic.Problem) (arithmetic.Working, error) {
	if p.Story != arithmetic.NoStory || p.Rest != arithmetic.LeftOver {
		return arithmetic.Working{}, arithmetic.ErrNotWhole
	}
	switch p.Kind {
	case arithmetic.Multiples:
		return arithmetic.CountOnSquare(p)
	case arithmetic.Product:
		return arithmetic.MultiplyOnSquare(p)
	case arithmetic.Division, arithmetic.Missing:
		return arithmetic.LookUpFactor(p)
	case arithmetic.Factors:
		return arithmetic.FactorsOnSquare(p)
	case arithmetic.CommonMultiples:
		return arithmetic.MeetOnSquare(p)
	case arithmetic.Claim:
		return arithmetic.MirrorOnSquare(p)
	}
	return arithmetic.Working{}, arithmetic.ErrNotWhole
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("square: a problem that does not fit: " + err.Error())
	}
	var t telling.Telling
	switch p.Kind {
	case arithmetic.Multiples:
		t = tellRow(w)
	case arithmetic.Product:
		t = tellProduct(w)
	case arithmetic.Division, arithmetic.Missing:
		t = tellLookUp(w)
	case arithmetic.Factors:
		t = tellFactors(w)
	case arithmetic.CommonMultiples:
		t = tellCommon(w)
	default:
		t = tellMirror(w)
	}
	t.Pieces = []telling.Piece{{Name: words.SquarePaper, Count: 1}}
	return t
}
