package problems

import (
	"math/big"
	"strconv"
	"strings"

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

// workDigits works what is asked of the digits of a decimal; asked is false for other
// problems.
func (t *Truth) workDigits(p arithmetic.Problem) (asked bool) {
	n, ok := p.Left.(arithmetic.Number)
	if !ok || n.Form != arithmetic.Decimal {
		return false
	}
	whole, after, _ := strings.Cut(t.Value.FloatString(n.Places), ".")
	switch p.Kind {
	case arithmetic.ExpandedForm:
		for i, digit := range whole + after {
			if digit != '0' {
				unit := new(big.Rat).SetFrac64(1, 1)
				for range len(whole) - 1 - i {
					unit.Mul(unit, big.NewRat(10, 1))
				}
				for range i - len(whole) + 1 {
					unit.Mul(unit, big.NewRat(1, 10))
				}
				t.Parts = append(t.Parts, unit.Mul(unit, big.NewRat(int64(digit-'0'), 1)))
			}
		}
		if len(t.Parts) == 0 {
			t.Parts = []*big.Rat{new(big.Rat)}
		}
	case arithmetic.PlaceValue:
		unit := big.NewRat(p.To, 1)
		if p.Places > 0 {
			unit = big.NewRat(1, arithmetic.Power10(p.Places))
		}
		units := new(big.Rat).Quo(t.Value, unit)
		digit := new(big.Int).Quo(units.Num(), units.Denom())
		digit.Mod(digit, big.NewInt(10))
		t.Value = unit.Mul(unit, new(big.Rat).SetInt(digit))
	case arithmetic.InWords:
		count, _ := strconv.ParseInt(after, 10, 64)
		wholes, _ := strconv.ParseInt(whole, 10, 64)
		last := []string{"", "tenth", "hundredth", "thousandth"}[n.Places]
		if count != 1 {
			last += "s"
		}
		t.Name = name(count) + " " + last
		if wholes > 0 {
			t.Name = name(wholes) + " and " + t.Name
		}
		if wholes > 0 && count == 0 {
			t.Name = name(wholes)
		}
	default:
		return false
	}
	return true
}

// digits deals a decimal of up to three places.
func (d *Dealer) digits() arithmetic.Number {
	places := 1 + d.IntN(3)
	most := arithmetic.Power10(places + []int{0, 0, 1, 3}[d.IntN(4)])
	n := d.Int64N(most)
	if d.IntN(3) == 0 { // with a zero inside it
		n = n/100*100 + n%10
	}
	return arithmetic.InPlaces(n, places)
}

// digit deals a place that a decimal reaches.
func (d *Dealer) digit(p arithmetic.Problem) arithmetic.Problem {
	n := p.Left.(arithmetic.Number)
	if p.Places = d.IntN(n.Places + 1); p.Places == 0 {
		p.To = 1
	}
	return p
}

func (d *Dealer) percent() arithmetic.Number {
	return arithmetic.InPercent(d.Int64N([]int64{101, 101, 301}[d.IntN(3)]), 0)
}
