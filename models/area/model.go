// Package area draws a product with parts as a rectangle on unit squares.
package area

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows a product of fractions, mixed numbers or decimals as an area: unit
// squares cut in columns by the one factor and in rows by the other. (CCSS 5.NF.B.4b,
// 5.NF.B.6)
var Model = &telling.Model{
	Name:  "fraction-area",
	Title: "Fraction area",
	Doc:   "A product of fractions or mixed numbers as a rectangle on unit squares, cut one way by the one factor and the other way by the other.",
	Kinds: []arithmetic.Kind{arithmetic.Product, arithmetic.PartOf},
	Examples: []string{
		"2/3 × 4/5", "1/2 of 3/4", "1/3 × 3/4", "3/4 × 5/3", "1 1/2 × 2 1/3", "2/3 × 4", "2 1/2 × 3/4", "0.3 × 0.4",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

const (
	mostSquares = 5 // squares in a row or a column; more would be too small to cut
	mostParts   = 12
)

// turn: a fraction of a fraction is first seen as an area. Copies of a fraction are
// first seen as lengths, and decimals in their places.
func turn(p arithmetic.Problem) int {
	a, b, ok := p.Operands()
	switch {
	case !ok || p.Kind != arithmetic.Product && p.Kind != arithmetic.PartOf:
		return telling.Serves
	case inParts(a) && inParts(b):
		return telling.Leads
	}
	return telling.Follows
}

func inParts(n arithmetic.Number) bool {
	return n.Form == arithmetic.Common || n.Form == arithmetic.Mixed
}

// fits refuses what is no product with parts, and parts too small or squares too many
// to see.
func fits(p arithmetic.Problem) error {
	a, b, ok := p.Operands()
	if !ok || p.Kind != arithmetic.Product && p.Kind != arithmetic.PartOf || p.Right != nil || p.Story != arithmetic.NoStory {
		return telling.NotMine(errors.New(words.AreaOtherKind()))
	}
	parts := 0
	for _, n := range []arithmetic.Number{a, b} {
		switch n.Form {
		case arithmetic.Money:
			return telling.NotMine(errors.New(words.AreaOtherKind()))
		case arithmetic.Whole:
		default:
			parts++
		}
	}
	if parts == 0 || p.Kind == arithmetic.PartOf && b.Form == arithmetic.Whole {
		return telling.NotMine(errors.New(words.AreaOtherKind()))
	}
	for _, n := range []arithmetic.Number{a, b} {
		switch {
		case n.Value.Sign() <= 0:
			return errors.New(words.AreaZero())
		case n.Value.Cmp(fraction.Whole(mostSquares)) > 0:
			return errors.New(words.AreaTooWide(mostSquares))
		case n.Value.Den() > mostParts:
			return errors.New(words.AreaTooFine(a.Value.Den(), b.Value.Den()))
		}
	}
	w, err := arithmetic.MultiplyByArea(p)
	if err != nil {
		return errors.New(words.AreaTooFine(a.Value.Den(), b.Value.Den()))
	}
	if pl := lay(w); pl.unit < pl.least() {
		return errors.New(words.AreaTooFine(a.Value.Den(), b.Value.Den()))
	}
	return nil
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := arithmetic.MultiplyByArea(p)
	if err != nil {
		panic(err) // fits has worked it
	}
	return lay(w).tell()
}
