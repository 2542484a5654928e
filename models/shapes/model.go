// Package shapes draws fractions as parts of squares, rectangles and regular shapes.
package shapes

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model shows a fraction as equal parts of a shape, and where the shape can be cut in
// another way, that the same fraction has parts of another shape. (CCSS 1.G.A.3,
// 2.G.A.3, 3.G.A.2, 3.NF.A.1)
var Model = &telling.Model{
	Name:  "shape-parts",
	Title: "Parts of a shape",
	Doc:   "A fraction as equal parts of a square, rectangle, triangle, pentagon, hexagon or octagon, cut one way and then another.",
	Kinds: []arithmetic.Kind{arithmetic.ShapePart},
	Examples: []string{
		"3/4 of a square", "2/3 of a rectangle", "1/2 of a rectangle", "5/6 of a hexagon", "2/3 of a triangle", "3/5 of a pentagon", "3/8 of an octagon",
	},
	Fits: fits,
	Turn: turn,
	Tell: tell,
}

func turn(p arithmetic.Problem) int {
	if p.Kind == arithmetic.ShapePart && p.Shape != arithmetic.Circle {
		return telling.Leads
	}
	return telling.Serves
}

// fits refuses circles, which are cut otherwise, more than one whole, and parts that
// the shape cannot be cut in so that all are equal.
func fits(p arithmetic.Problem) error {
	if p.Kind != arithmetic.ShapePart || len(arithmetic.PartsOfShape(p.Shape)) == 0 {
		return telling.NotMine(errors.New(words.ShapesOtherKind()))
	}
	n, ok := p.Left.(arithmetic.Number)
	switch {
	case !ok || n.Form != arithmetic.Common || n.Value.Sign() < 0:
		return errors.New(words.ShapesNoFraction())
	case n.Value.Num() > n.Value.Den():
		return errors.New(words.ShapeOneWhole(p.Shape))
	}
	if _, err := arithmetic.ShadeShape(p); err != nil {
		return errors.New(words.ShapeParts(p.Shape, arithmetic.PartsOfShape(p.Shape)))
	}
	return nil
}
