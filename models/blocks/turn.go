package blocks

import (
	"modeler/arithmetic"
	"modeler/models/telling"
)

// Bounds of the problems for which blocks are the picture to reach for first: a
// number up to small is told with single things, two numbers closer than close by
// counting up, a product of facts up to fact × fact as an array, a division of up
// to few by dealing them out; what is shared or multiplied beyond handy is too
// much for a table (guide of the pictures by grade: base-ten blocks in grades 2
// and 3, the written procedure in grade 4; common practice, no source).
const (
	small = 20
	close = 10
	fact  = 12
	few   = 40
	handy = 999
)

func turn(p arithmetic.Problem) int {
	list, ok := numbersOf(p)
	if !ok {
		return telling.Serves
	}
	var values []int64
	for _, n := range list {
		v, whole := n.Int64()
		if !whole {
			return telling.Serves
		}
		values = append(values, v)
	}
	a, b := values[0], values[len(values)-1]
	switch p.Kind {
	case arithmetic.Show, arithmetic.ExpandedForm, arithmetic.PlaceValue:
		return leadsIf(a > small)
	case arithmetic.Addition:
		if a > small || b > small || a+b > small {
			return telling.Leads
		}
	case arithmetic.Subtraction:
		if a > small {
			return leadsIf(b <= small || a-b > close)
		}
	case arithmetic.Comparison, arithmetic.Claim:
		return leadsIf(max(a, b) > small)
	case arithmetic.Product:
		if max(a, b) > fact && min(a, b) <= mostGroups {
			return telling.Follows
		}
	case arithmetic.Division:
		if a > few && a <= handy {
			return leadsIf(a > fact*b)
		}
	}
	return telling.Serves
}

// leadsIf is first in turn if so, and second if not.
func leadsIf(so bool) int {
	if so {
		return telling.Leads
	}
	return telling.Follows
}
