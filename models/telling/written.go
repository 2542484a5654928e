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

// Plain is an expression as a line in ink, with a term in the place of its unknown
// and brackets where they are needed.
func Plain(e arithmetic.Expr, blank notation.Term) notation.Line {
	switch e := e.(type) {
	case arithmetic.Number:
		return Numeral(e, scene.Ink)
	case arithmetic.Operation:
		sign := notation.S(e.Op.String())
		if e.Op == arithmetic.Of {
			sign = notation.W("of")
		}
		side := func(part arithmetic.Expr, right bool) notation.Line {
			line := Plain(part, blank)
			if o, is := part.(arithmetic.Operation); is && (o.Op <= arithmetic.Subtract && e.Op > arithmetic.Subtract || right && (o.Op <= arithmetic.Subtract || e.Op > arithmetic.Subtract)) {
				return Join("(", line, ")")
			}
			return line
		}
		return Join(side(e.Left, false), sign, side(e.Right, true))
	}
	return notation.Line{blank}
}

// TotalOf says which number of a product or quotient with a blank is the total, in
// the order in which they are written. A blank total is the answer.
func TotalOf(p arithmetic.Problem) scene.Of {
	o, right := p.Left.(arithmetic.Operation)
	if !right {
		o, _ = p.Right.(arithmetic.Operation)
	}
	_, blankFirst := o.Left.(arithmetic.Unknown)
	switch {
	case o.Op == arithmetic.Divide && blankFirst:
		return scene.OfAnswer
	case (o.Op == arithmetic.Divide) == right: // 48 ÷ ? = 8 and 48 = 8 × ?
		return scene.OfFirst
	}
	return scene.OfSecond
}
