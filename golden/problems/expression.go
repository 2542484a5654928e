package problems

import "modeler/arithmetic"

// expression deals more than one operation on whole numbers; no part of it comes
// to less than 0.
func (d *Dealer) expression() arithmetic.Expr {
	n := func(most int64) arithmetic.Number { return arithmetic.Int(1 + d.Int64N(most)) }
	if d.IntN(8) == 0 { // 1/2 + 1/3 + 1/6
		e := operation(arithmetic.Add, operation(arithmetic.Add, d.common(8), d.common(8)), d.common(6))
		if d.IntN(3) == 0 {
			e = operation(arithmetic.Add, e, d.common(4))
		}
		return e
	}
	switch d.IntN(8) {
	case 0, 1:
		return d.chain()
	case 2:
		return d.mixedChain()
	case 3: // 2 × (8 + 7), (2 + 3) × 4
		sum := operation(arithmetic.Add, n(10), n(10))
		if d.IntN(2) == 0 {
			return operation(arithmetic.Multiply, sum, n(12))
		}
		return operation(arithmetic.Multiply, d.factor(), sum)
	case 4: // 3 × 5 × 2, 3 × (5 × 2)
		a, b, c := n(9), n(10), n(6)
		if d.IntN(2) == 0 {
			return operation(arithmetic.Multiply, a, operation(arithmetic.Multiply, b, c))
		}
		return operation(arithmetic.Multiply, operation(arithmetic.Multiply, a, b), c)
	case 5: // 2 + 1 × 3, 3 × 4 + 2
		product := operation(arithmetic.Multiply, n(10), n(10))
		if d.IntN(2) == 0 {
			return operation(arithmetic.Add, n(20), product)
		}
		return operation(arithmetic.Add, product, n(20))
	case 6: // 20 − 3 × 4, 3 × 4 − 2
		product := operation(arithmetic.Multiply, n(10), n(10))
		comes := value(product).Num().Int64()
		if d.IntN(2) == 0 {
			return operation(arithmetic.Subtract, arithmetic.Int(comes+d.Int64N(20)), product)
		}
		return operation(arithmetic.Subtract, product, arithmetic.Int(1+d.Int64N(comes)))
	}
	// 4 × 6 + 4 × 2, 9 × 10 − 9 × 1
	a, b, c := n(10), n(10), n(10)
	if d.IntN(3) == 0 {
		b, c = arithmetic.Int(10), n(3)
		return operation(arithmetic.Subtract, operation(arithmetic.Multiply, a, b), operation(arithmetic.Multiply, a, c))
	}
	return operation(arithmetic.Add, operation(arithmetic.Multiply, a, b), operation(arithmetic.Multiply, a, c))
}

// chain is a sum of three to five numbers, of one, two or now and then four digits.
func (d *Dealer) chain() arithmetic.Expr {
	most := arithmetic.Power10([]int{1, 1, 2, 2, 3, 4}[d.IntN(6)])
	var sum arithmetic.Expr = arithmetic.Int(1 + d.Int64N(most))
	for range 2 + d.IntN(3) {
		sum = operation(arithmetic.Add, sum, arithmetic.Int(1+d.Int64N(most)))
	}
	return sum
}

// mixedChain is 9 − 5 + 7: numbers added and taken away from left to right.
func (d *Dealer) mixedChain() arithmetic.Expr {
	most := []int64{10, 30, 100}[d.IntN(3)]
	at := 1 + d.Int64N(most)
	var chain arithmetic.Expr = arithmetic.Int(at)
	for range 2 + d.IntN(3) {
		n := 1 + d.Int64N(most)
		if d.IntN(2) == 0 && at > 0 {
			n = 1 + d.Int64N(at)
			chain, at = operation(arithmetic.Subtract, chain, arithmetic.Int(n)), at-n
			continue
		}
		chain, at = operation(arithmetic.Add, chain, arithmetic.Int(n)), at+n
	}
	return chain
}

// property deals the two sides of a statement about the order, the brackets or the
// parts of a sum or a product (CCSS 1.OA.B.3, 3.OA.B.5); one in three is false.
func (d *Dealer) property() arithmetic.Problem {
	op := []arithmetic.Op{arithmetic.Add, arithmetic.Multiply}[d.IntN(2)]
	n := func() arithmetic.Number { return arithmetic.Int(1 + d.Int64N(6)) }
	a, b, c := n(), n(), n()
	changed := c
	if d.IntN(3) == 0 {
		changed = n()
	}
	p := arithmetic.Problem{}
	switch d.IntN(3) {
	case 0:
		p.Left, p.Right = operation(op, a, c), operation(op, changed, a)
	case 1:
		p.Left = operation(op, operation(op, a, b), c)
		p.Right = operation(op, a, operation(op, b, changed))
	default:
		p.Left = operation(arithmetic.Multiply, a, operation(arithmetic.Add, b, c))
		p.Right = operation(arithmetic.Add, operation(arithmetic.Multiply, a, b), operation(arithmetic.Multiply, a, changed))
	}
	return p
}
