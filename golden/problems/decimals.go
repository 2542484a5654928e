package problems

import (
	"modeler/arithmetic"
	"modeler/fraction"
)

// form deals a number whose other form is asked for: a decimal or a percent as a
// fraction, a fraction as a decimal, either as a percent, tenths as hundredths.
func (d *Dealer) form(kind arithmetic.Kind) arithmetic.Problem {
	p := arithmetic.Problem{Kind: kind}
	switch kind {
	case arithmetic.DecimalForm:
		p.Left = []arithmetic.Number{d.even(), d.even(), d.percent()}[d.IntN(3)]
	case arithmetic.PercentForm:
		p.Left = []arithmetic.Number{d.even(), d.decimal()}[d.IntN(2)]
	case arithmetic.FractionForm:
		p.Left = []arithmetic.Number{d.decimal(), d.percent()}[d.IntN(2)]
	case arithmetic.Renaming:
		p.Rel = arithmetic.Equal
		tenths := d.Int64N(31)
		from, to := int64(10), int64(100)
		if d.IntN(2) == 0 {
			from, to = to, from
		}
		p.Left, p.Blank.Den = arithmetic.Frac(fraction.Must(tenths*from/10, from)), to
		if tenths > 0 && d.IntN(3) == 0 {
			p.Blank = arithmetic.Blank{Num: tenths * to / 10}
		}
		p.Blank.First = d.IntN(4) == 0
	}
	return p
}

// even is a fraction whose parts are a whole number of hundredths each.
func (d *Dealer) even() arithmetic.Number {
	den := []int64{2, 4, 5, 10, 20, 25, 50, 100}[d.IntN(8)]
	top := den
	if d.IntN(4) == 0 {
		top = 3 * den
	}
	return arithmetic.Frac(fraction.Must(1+d.Int64N(top), den))
}

// decimal has one or two places and is less than 10, mostly less than 1.
func (d *Dealer) decimal() arithmetic.Number {
	places := 1 + d.IntN(2)
	return arithmetic.InPlaces(d.Int64N(arithmetic.Power10(places)*[]int64{1, 1, 3, 10}[d.IntN(4)]), places)
}

func (d *Dealer) percent() arithmetic.Number {
	return arithmetic.InPercent(d.Int64N([]int64{101, 101, 301}[d.IntN(3)]), 0)
}
