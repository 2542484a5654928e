package telling

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// RoleOf is the role of the nth number of a problem, from 0: the two quantities
// take turns where there are more than two. What is asked ([arithmetic.Asked]) is
// the result.
func RoleOf(nth int) scene.Role {
	switch {
	case nth == arithmetic.Asked:
		return scene.Result
	case nth%2 == 0:
		return scene.First
	}
	return scene.Second
}

// OfPlace is the number of the problem at a place, from 0, or the answer.
func OfPlace(nth int) scene.Of {
	if nth == arithmetic.Asked {
		return scene.OfAnswer
	}
	return scene.OfNth(nth)
}

// Written is a problem as an equation, its numbers in their roles: fill stands at
// its blank, or behind the equal sign of one that has none. It knows sums,
// differences, products and quotients without brackets.
func Written(p arithmetic.Problem, fill notation.Line) notation.Line {
	nth := 0
	var side func(e arithmetic.Expr) notation.Line
	side = func(e arithmetic.Expr) notation.Line {
		switch e := e.(type) {
		case arithmetic.Number:
			nth++
			return Numeral(e, RoleOf(nth-1))
		case arithmetic.Operation:
			left := side(e.Left)
			if e.Op == arithmetic.Of {
				return Join(left, notation.W("of"), side(e.Right))
			}
			return Join(left, e.Op.String(), side(e.Right))
		}
		return fill
	}
	left := side(p.Left)
	if p.Right == nil {
		return Join(left, "=", fill)
	}
	return Join(left, "=", side(p.Right))
}
