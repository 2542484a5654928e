package problems

import (
	"strings"

	"modeler/arithmetic"
)

// The bounds of what is dealt: how many numbers a run or a list of multiples has,
// and the largest of them.
const (
	longestRun = 24
	largest    = 9_999_999
)

// about deals a problem that asks something of one whole number or of two.
func (d *Dealer) about(kind arithmetic.Kind) arithmetic.Problem {
	p := arithmetic.Problem{Kind: kind}
	switch decimal := d.IntN(3) == 0; kind {
	case arithmetic.PlaceValue, arithmetic.ExpandedForm, arithmetic.InWords:
		if !decimal {
			break
		}
		if p.Left = d.digits(); kind == arithmetic.PlaceValue {
			return d.digit(p)
		}
		return p
	}
	switch kind {
	case arithmetic.PlaceValue:
		n := 1 + d.upTo(7)
		digits := strings.ReplaceAll(arithmetic.Int(n).String(), ",", "")
		p.Left, p.To = arithmetic.Int(n), arithmetic.Power10(d.IntN(len(digits)))
	case arithmetic.ExpandedForm:
		p.Left = arithmetic.Int(1 + d.upTo(7))
	case arithmetic.InWords:
		p.Left = arithmetic.Int(d.upTo(7))
	case arithmetic.Parity:
		p.Left = arithmetic.Int(d.Int64N([]int64{21, 41, 41, 1000}[d.IntN(4)]))
	case arithmetic.WaysToMake:
		p.Left = arithmetic.Int(d.Int64N([]int64{11, 21}[d.IntN(2)]))
	case arithmetic.Primality:
		p.Left = arithmetic.Int(1 + d.Int64N(120))
	case arithmetic.Multiples:
		p.Left = arithmetic.Int(1 + d.Int64N([]int64{10, 12, 100}[d.IntN(3)]))
		p.Run.Terms = 1 + d.IntN([]int{10, longestRun}[d.IntN(2)])
	case arithmetic.CommonMultiples:
		most := []int64{10, 12, 30}[d.IntN(3)]
		p.Left, p.Right = arithmetic.Int(1+d.Int64N(most)), arithmetic.Int(1+d.Int64N(most))
	case arithmetic.CommonFactors:
		most := []int64{24, 60, 120}[d.IntN(3)]
		p.Left, p.Right = arithmetic.Int(1+d.Int64N(most)), arithmetic.Int(1+d.Int64N(most))
	case arithmetic.Closer:
		p.Left, p.Right, p.To = d.common(12), d.common(12), d.Int64N(2)
		if d.IntN(3) == 0 {
			p.Right = arithmetic.InPlaces(d.Int64N(20), 1)
		}
	case arithmetic.AsSum:
		p.Left = d.inParts()
	case arithmetic.EqualNames:
		p.Left = d.common([]int64{6, 12, 24}[d.IntN(3)])
	case arithmetic.FactFamily:
		return d.family()
	case arithmetic.Estimate:
		return d.estimate()
	}
	return p
}

// upTo is a whole number of at most so many digits, each length as likely.
func (d *Dealer) upTo(digits int) int64 {
	n := d.Int64N(arithmetic.Power10(1 + d.IntN(digits)))
	if d.IntN(3) == 0 { // with zeros inside it
		p := arithmetic.Power10(1 + d.IntN(3))
		n = n/(10*p)*(10*p) + n%p
	}
	return min(n, arithmetic.Power10(digits)-2)
}

// family deals a sum within 20 or within 100, or a product of the tables.
func (d *Dealer) family() arithmetic.Problem {
	if d.IntN(2) == 0 {
		most := []int64{11, 51}[d.IntN(2)]
		return one(arithmetic.FactFamily, arithmetic.Add, arithmetic.Int(d.Int64N(most)), arithmetic.Int(d.Int64N(most)))
	}
	return one(arithmetic.FactFamily, arithmetic.Multiply, arithmetic.Int(1+d.Int64N(12)), arithmetic.Int(1+d.Int64N(12)))
}

// estimate deals an operation on two whole numbers, and the place to which both
// are rounded: one in which the divisor does not become 0.
func (d *Dealer) estimate() arithmetic.Problem {
	a, b := d.upTo(4), d.upTo(4)
	op := arithmetic.Op(d.IntN(4))
	to := arithmetic.Power10(1 + d.IntN(3))
	if op == arithmetic.Subtract || op == arithmetic.Divide {
		a, b = max(a, b), min(a, b)
	}
	if op == arithmetic.Divide {
		to = 10
		b = 5 + b%95
	}
	p := one(arithmetic.Estimate, op, arithmetic.Int(a), arithmetic.Int(b))
	p.To = to
	return p
}

// counting deals a run that stays within the numbers of primary school.
func (d *Dealer) counting() arithmetic.Problem {
	for {
		most := []int64{11, 100, 1_000, 1_000_000}[d.IntN(4)]
		r := arithmetic.Run{From: d.Int64N(most), By: 1 + d.Int64N(12), Op: arithmetic.Op(d.IntN(3)), Terms: 2 + d.IntN(11)}
		switch {
		case r.Op == arithmetic.Multiply:
			r.From, r.By = 1+d.Int64N(10), 2+d.Int64N(9)
		case d.IntN(3) == 0:
			r.By = arithmetic.Power10(d.IntN(4)) * []int64{1, 1, 2, 5}[d.IntN(4)]
		}
		if d.IntN(6) == 0 {
			r.Terms = longestRun
		}
		if d.IntN(4) == 0 && r.Op != arithmetic.Multiply { // by a fraction
			r.Parts = 2 + d.Int64N(11)
			r.From, r.By, r.Terms = d.Int64N(3*r.Parts), 1+d.Int64N(r.Parts-1), 2+d.IntN(11)
		}
		if list := r.List(); len(list) == r.Terms && list[len(list)-1] <= largest {
			return arithmetic.Problem{Kind: arithmetic.Counting, Run: r}
		}
	}
}

// rule deals a table of one to six numbers and what is done to each of them.
func (d *Dealer) rule() arithmetic.Problem {
	r := arithmetic.Run{Op: arithmetic.Op(d.IntN(4)), By: 1 + d.Int64N([]int64{12, 100}[d.IntN(2)])}
	p := arithmetic.Problem{Kind: arithmetic.RuleTable, Run: r}
	step := d.IntN(2) // the numbers may follow one another
	n := d.Int64N([]int64{10, 100}[d.IntN(2)])
	for range 1 + d.IntN(6) {
		v := n
		switch r.Op {
		case arithmetic.Subtract:
			v += r.By
		case arithmetic.Divide:
			v *= r.By
		}
		p.List = append(p.List, arithmetic.Int(v))
		n++
		if step == 0 {
			n = d.Int64N(100)
		}
	}
	return p
}
