package problems

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

func (d *Dealer) sum() arithmetic.Problem {
	a, b := d.two()
	switch d.IntN(6) {
	case 0, 1: // a fact
		a, b = arithmetic.Int(d.Int64N(11)), arithmetic.Int(d.Int64N(11))
	case 4:
		a, b = d.money(), d.money()
	case 3: // tenths and hundredths
		a, b = arithmetic.Frac(fraction.Must(d.Int64N(20), 10)), arithmetic.Frac(fraction.Must(d.Int64N(100), 100))
		if d.IntN(2) == 0 {
			a, b = b, a
		}
	case 2: // 10, 100 or 1,000 more
		b = arithmetic.Int(arithmetic.Power10(1 + d.IntN(3)))
	}
	return one(arithmetic.Addition, arithmetic.Add, a, b)
}

func (d *Dealer) difference() arithmetic.Problem {
	a, b := d.two()
	switch d.IntN(8) {
	case 0, 1: // a fact
		a, b = arithmetic.Int(d.Int64N(21)), arithmetic.Int(d.Int64N(11))
	case 2: // 10, 100 or 1,000 less
		b = arithmetic.Int(arithmetic.Power10(1 + d.IntN(3)))
	case 4: // money, told as change now and then
		a, b = d.money(), d.money()
		if a.Value.Cmp(b.Value) < 0 {
			a, b = b, a
		}
		p := one(arithmetic.Subtraction, arithmetic.Subtract, a, b)
		if d.IntN(2) == 0 {
			p.Story = arithmetic.Change
		}
		return p
	case 3: // close together
		n := d.upTo(4)
		a, b = arithmetic.Int(n+d.Int64N(12)), arithmetic.Int(n)
	}
	if a.Value.Cmp(b.Value) < 0 {
		a, b = b, a
	}
	return one(arithmetic.Subtraction, arithmetic.Subtract, a, b)
}

func (d *Dealer) product() arithmetic.Problem {
	a, b := d.factor(), d.factor()
	switch d.IntN(12) {
	case 0: // one digit by up to four
		a, b = arithmetic.Int(2+d.Int64N(8)), arithmetic.Int(d.upTo(4))
	case 1: // 36 × 94, 3,000 × 1,456
		a, b = arithmetic.Int(d.upTo(4)), arithmetic.Int(d.upTo(4))
	case 3: // so many times a fraction, or a decimal
		a = arithmetic.Int(1 + d.Int64N(12))
		if b = d.common(12); d.IntN(4) == 0 {
			b = arithmetic.InPlaces(1+d.Int64N(40), 1)
		}
	case 2: // a place to the left
		a, b = arithmetic.Int(d.upTo(4)), arithmetic.Int(arithmetic.Power10(1+d.IntN(3)))
	case 4, 7:
		a, b = d.inParts(), d.inParts()
	case 5: // 5 × 1/4, 2/3 × 4
		a, b = arithmetic.Int(1+d.Int64N(12)), d.common(12)
		if d.IntN(2) == 0 {
			a, b = b, a
		}
	case 6: // 0.3 × 0.4
		a, b = arithmetic.InPlaces(1+d.Int64N(19), 1), arithmetic.InPlaces(1+d.Int64N(19), 1)
	}
	return one(arithmetic.Product, arithmetic.Multiply, a, b)
}

// inParts is a fraction or a mixed number.
func (d *Dealer) inParts() arithmetic.Number {
	if d.IntN(3) == 0 {
		return d.mixed()
	}
	return d.common(12)
}

func (d *Dealer) factor() arithmetic.Number {
	switch d.IntN(8) {
	case 0:
		return arithmetic.Int(10 * d.Int64N(10))
	case 1:
		return arithmetic.Int(d.Int64N(100))
	case 2:
		return arithmetic.Int(d.Int64N(1000))
	}
	return arithmetic.Int(d.Int64N(13))
}

// division deals a fact, or one with something left over; its divisor has one
// digit or two.
func (d *Dealer) division() arithmetic.Problem {
	b := 1 + d.Int64N(12)
	a := b * d.Int64N(13)
	switch d.IntN(6) {
	case 0:
		a += d.Int64N(b)
	case 1:
		a = 10 + d.Int64N(990)
	case 2:
		a, b = d.upTo(4), 1+d.Int64N(99)
	case 3:
		a, b = d.upTo(4), 1+d.Int64N(9)
	}
	switch d.IntN(12) {
	case 0: // 1/3 shared among 4
		return one(arithmetic.Division, arithmetic.Divide, d.inParts(), arithmetic.Int(2+d.Int64N(6)))
	case 1: // 2/3 in groups of 1/4
		return grouping(one(arithmetic.Division, arithmetic.Divide, d.inParts(), d.common(8)))
	}
	if d.IntN(8) == 0 { // how many fourths are in 3, or in 3/2
		part := d.common(12)
		total := arithmetic.Int(1 + d.Int64N(4))
		if d.IntN(3) == 0 {
			total = arithmetic.Frac(fraction.Must(part.Value.Num()*(1+d.Int64N(8)), part.Value.Den()))
		}
		return grouping(one(arithmetic.Division, arithmetic.Divide, total, part))
	}
	p := one(arithmetic.Division, arithmetic.Divide, arithmetic.Int(a), arithmetic.Int(b))
	p.Grouping = d.IntN(2) == 0
	if d.IntN(8) == 0 {
		p.Rest = arithmetic.Rest(1 + d.IntN(3))
	}
	return p
}

// grouping is a division as it is read where it is by a fraction: how many fit.
func grouping(p arithmetic.Problem) arithmetic.Problem {
	p.Grouping = true
	return p
}

// missing deals an equation with one of three numbers unknown, or of four with an
// operation on both sides.
func (d *Dealer) missing() arithmetic.Problem {
	if d.IntN(5) == 0 {
		return d.missingOfFour()
	}
	op := arithmetic.Op(d.IntN(4))
	most := []int64{11, 60}[d.IntN(2)]
	var a, b, c int64 // a op b is c
	switch op {
	case arithmetic.Add, arithmetic.Subtract:
		b, c = d.Int64N(most), d.Int64N(most)
		a = b + c
		if op == arithmetic.Add {
			a, c = c, a
		}
	default:
		b, c = 1+d.Int64N(12), 1+d.Int64N(12)
		a = b * c
		if op == arithmetic.Multiply {
			a, c = c, a
		}
	}
	left := operation(op, arithmetic.Int(a), arithmetic.Int(b))
	if d.IntN(2) == 0 {
		left.Left = arithmetic.Unknown{}
	} else {
		left.Right = arithmetic.Unknown{}
	}
	p := arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: left, Right: arithmetic.Int(c)}
	if d.IntN(3) == 0 {
		p.Left, p.Right = p.Right, p.Left
	}
	return p
}

// missingOfFour deals 8 + 4 = ? + 5: two sums, or a sum and a difference.
func (d *Dealer) missingOfFour() arithmetic.Problem {
	most := []int64{11, 50}[d.IntN(2)]
	a, b := d.Int64N(most), d.Int64N(most)
	c := d.Int64N(a + b + 1)
	full := operation(arithmetic.Add, arithmetic.Int(a), arithmetic.Int(b))
	open := operation(arithmetic.Add, arithmetic.Int(c), arithmetic.Unknown{})
	switch d.IntN(4) {
	case 0, 1:
		open = operation(arithmetic.Add, arithmetic.Unknown{}, arithmetic.Int(c))
	case 2:
		open = operation(arithmetic.Subtract, arithmetic.Unknown{}, arithmetic.Int(c))
	}
	p := arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: full, Right: open}
	if d.IntN(3) == 0 {
		p.Left, p.Right = p.Right, p.Left
	}
	return p
}

func (d *Dealer) ordering() arithmetic.Problem {
	p := arithmetic.Problem{Kind: arithmetic.Ordering}
	wholes := d.IntN(4) == 0
	for range 2 + d.IntN(5) {
		n := d.common(12)
		if wholes {
			n = arithmetic.Int(d.upTo(3))
		}
		p.List = append(p.List, n)
	}
	return p
}

func operation(op arithmetic.Op, a, b arithmetic.Expr) arithmetic.Operation {
	return arithmetic.Operation{Op: op, Left: a, Right: b}
}
