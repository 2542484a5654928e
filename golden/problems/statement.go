package problems

import "modeler/arithmetic"

// statement deals the two sides of a claim or a comparison: two numbers, or sums,
// differences or products beside a number or beside each other. Half of them are
// equal or nearly so.
func (d *Dealer) statement() arithmetic.Problem {
	switch d.IntN(10) {
	case 0:
		o := d.small(arithmetic.Multiply)
		if d.IntN(2) == 0 { // the same turned
			return arithmetic.Problem{Left: o, Right: arithmetic.Operation{Op: o.Op, Left: o.Right, Right: o.Left}}
		}
		return arithmetic.Problem{Left: o, Right: d.beside(arithmetic.Multiply)}
	case 1, 2:
		return arithmetic.Problem{Left: d.small(arithmetic.Add), Right: d.beside(arithmetic.Add)}
	case 3:
		return arithmetic.Problem{Left: d.small(arithmetic.Subtract), Right: d.beside(arithmetic.Subtract)}
	case 4:
		return d.property()
	case 5:
		a, b := d.common(6), d.common(6)
		p := arithmetic.Problem{Left: arithmetic.Operation{Op: arithmetic.Add, Left: a, Right: b}, Right: d.common(12)}
		if d.IntN(3) == 0 {
			p.Left, p.Right = p.Right, p.Left
		}
		return p
	}
	if d.IntN(10) == 0 { // 3 × 2/5 and 6 × 1/5
		a, b := d.copies(), arithmetic.Expr(d.common(12))
		if d.IntN(2) == 0 {
			b = d.copies()
		}
		if d.IntN(3) == 0 {
			a, b = b, a
		}
		return arithmetic.Problem{Left: a, Right: b}
	}
	a, b := d.two()
	switch d.IntN(7) {
	case 6: // written in different forms
		a = d.decimal()
		b = []arithmetic.Number{d.percent(), d.even(), arithmetic.Int(d.Int64N(3)), arithmetic.InPlaces(a.Value.Num()*10, a.Places+1)}[d.IntN(4)]
	case 0:
		a, b = arithmetic.Int(d.Int64N(21)), arithmetic.Int(d.Int64N(21))
	case 1, 2:
		b = d.another(a)
	}
	return arithmetic.Problem{Left: a, Right: b}
}

// copies is so many times a fraction.
func (d *Dealer) copies() arithmetic.Expr {
	return arithmetic.Operation{Op: arithmetic.Multiply, Left: arithmetic.Int(1 + d.Int64N(6)), Right: d.common(8)}
}

// beside is the other side of a statement: an operation of the same sort, or a
// number that one of them may come to.
func (d *Dealer) beside(op arithmetic.Op) arithmetic.Expr {
	o := d.small(op)
	if d.IntN(3) > 0 {
		return o
	}
	return arithmetic.Int(value(o).Num().Int64() + d.Int64N(2))
}

// small is an operation on two whole numbers as a child has by heart.
func (d *Dealer) small(op arithmetic.Op) arithmetic.Operation {
	a, b := d.Int64N(10)+1, d.Int64N(10)+1
	if op == arithmetic.Subtract {
		a += b
	}
	return arithmetic.Operation{Op: op, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}
}
