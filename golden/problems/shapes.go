package problems

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

var shapes = []arithmetic.Shape{arithmetic.Circle, arithmetic.Square, arithmetic.Rectangle, arithmetic.Triangle,
	arithmetic.Pentagon, arithmetic.Hexagon, arithmetic.Octagon}

// shape deals a part of a shape, at most all of it.
func (d *Dealer) shape() arithmetic.Problem {
	den := 2 + d.Int64N(11)
	if d.IntN(4) == 0 {
		den = 12 + d.Int64N(13)
	}
	return arithmetic.Problem{Kind: arithmetic.ShapePart, Left: arithmetic.Frac(fraction.Must(d.Int64N(den+1), den)), Shape: shapes[d.IntN(len(shapes))]}
}
