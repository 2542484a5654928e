// Package problems makes random problems for the tests, and says what is true of
// a problem by a second way of working it: math/big on the numbers as written.
// It shares no procedure with package arithmetic, whose answers it judges.
package problems

import (
	"math/rand/v2"

	"modeler/arithmetic"
	"modeler/fraction"
)

// Kinds lists the kinds of problem that a [Dealer] makes, in the order it deals
// them.
var Kinds = []arithmetic.Kind{
	arithmetic.Show, arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.Division,
	arithmetic.PartOf, arithmetic.Expression, arithmetic.Missing, arithmetic.Claim, arithmetic.Comparison,
	arithmetic.Ordering, arithmetic.Rounding, arithmetic.Factors, arithmetic.MixedForm, arithmetic.FractionForm,
	arithmetic.SimplestForm, arithmetic.Renaming,
	arithmetic.PlaceValue, arithmetic.ExpandedForm, arithmetic.InWords, arithmetic.Parity, arithmetic.Counting,
	arithmetic.RuleTable, arithmetic.Estimate, arithmetic.FactFamily, arithmetic.WaysToMake, arithmetic.Multiples,
	arithmetic.CommonMultiples, arithmetic.CommonFactors, arithmetic.Primality,
	arithmetic.ShapePart, arithmetic.DecimalForm, arithmetic.PercentForm,
	arithmetic.Coins, arithmetic.CoinsWorth, arithmetic.EqualNames, arithmetic.Closer, arithmetic.AsSum,
}

// Dealer makes problems one after another; the same seed deals the same ones.
type Dealer struct {
	*rand.Rand
	next int
}

// Deal starts a row of problems.
func Deal(seed uint64) *Dealer { return &Dealer{Rand: rand.New(rand.NewPCG(seed, 8))} }

// Next deals a problem of the next kind in turn, so that every kind comes
// equally often.
func (d *Dealer) Next() arithmetic.Problem {
	d.next++
	return d.Of(Kinds[(d.next-1)%len(Kinds)])
}

// Of deals a problem of a kind. It may be one that no model can show, but it can
// be worked: nothing is divided by 0 and no answer is less than 0.
func (d *Dealer) Of(kind arithmetic.Kind) arithmetic.Problem {
	switch kind {
	case arithmetic.Addition:
		return d.sum()
	case arithmetic.Subtraction:
		return d.storied(d.difference())
	case arithmetic.Product:
		return d.storied(d.product())
	case arithmetic.Division:
		return d.storied(d.division())
	case arithmetic.PartOf:
		return d.part()
	case arithmetic.Expression:
		return arithmetic.Problem{Kind: kind, Left: d.expression()}
	case arithmetic.Missing:
		return d.missing()
	case arithmetic.Claim, arithmetic.Comparison:
		p := d.statement()
		p.Kind = kind
		if kind == arithmetic.Claim {
			p.Rel = arithmetic.Relation(1 + d.IntN(3))
		}
		return p
	case arithmetic.Ordering:
		return d.ordering()
	case arithmetic.Rounding:
		if d.IntN(3) == 0 {
			places := 1 + d.IntN(3)
			return arithmetic.Problem{Kind: kind, Left: arithmetic.InPlaces(d.Int64N(20*arithmetic.Power10(places)), places), Places: 1 + d.IntN(places)}
		}
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(d.Int64N(arithmetic.Power10(4 + d.IntN(2)))), To: arithmetic.Power10(1 + d.IntN(3))}
	case arithmetic.Factors:
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(1 + d.Int64N(120))}
	case arithmetic.DecimalForm, arithmetic.PercentForm:
		return d.form(kind)
	case arithmetic.Coins:
		return arithmetic.Problem{Kind: kind, Left: d.money()}
	case arithmetic.CoinsWorth:
		return d.purse()
	case arithmetic.FractionForm, arithmetic.Renaming:
		if d.IntN(3) == 0 {
			return d.form(kind)
		}
		return d.naming(kind)
	case arithmetic.MixedForm, arithmetic.SimplestForm:
		return d.naming(kind)
	case arithmetic.Counting:
		return d.counting()
	case arithmetic.RuleTable:
		return d.rule()
	case arithmetic.ShapePart:
		return d.shape()
	case arithmetic.Show:
		return arithmetic.Problem{Kind: kind, Left: d.any()}
	}
	return d.about(kind)
}

// naming deals a problem about one number.
func (d *Dealer) naming(kind arithmetic.Kind) arithmetic.Problem {
	switch kind {
	case arithmetic.MixedForm:
		den := 2 + d.Int64N(11)
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Frac(fraction.Must(den+d.Int64N(3*den), den))}
	case arithmetic.FractionForm:
		return arithmetic.Problem{Kind: kind, Left: d.mixed()}
	case arithmetic.SimplestForm:
		return arithmetic.Problem{Kind: kind, Left: d.common(12)}
	}
	p := arithmetic.Problem{Kind: arithmetic.Renaming, Rel: arithmetic.Equal, Left: d.common(8)}
	f, n := p.Left.(arithmetic.Number).Value, 1+d.Int64N(4)
	if d.IntN(2) == 0 {
		p.Blank.Den = f.Den() * n
	} else {
		p.Blank.Num = f.Num() * n
	}
	p.Blank.First = d.IntN(4) == 0
	return p
}

func (d *Dealer) part() arithmetic.Problem {
	if d.IntN(3) == 0 { // 1/2 of 3/4
		return one(arithmetic.PartOf, arithmetic.Of, d.common(12), d.inParts())
	}
	den := 2 + d.Int64N(9)
	f := arithmetic.Frac(fraction.Must(1+d.Int64N(den-1), den))
	return one(arithmetic.PartOf, arithmetic.Of, f, arithmetic.Int(den*(1+d.Int64N(10))))
}

// two numbers of the same sort.
func (d *Dealer) two() (a, b arithmetic.Number) {
	switch d.IntN(7) {
	case 6:
		return d.decimal(), d.decimal()
	case 0:
		f := d.common(12)
		return f, arithmetic.Frac(fraction.Must(1+d.Int64N(f.Value.Den()), f.Value.Den()))
	case 1:
		return d.common(12), d.common(12)
	case 2:
		return d.mixed(), d.common(8)
	case 3:
		places := 1 + d.IntN(2)
		return arithmetic.InPlaces(d.Int64N(400), places), arithmetic.InPlaces(d.Int64N(400), places)
	}
	return d.whole(), d.whole()
}

// another is a number near a: itself, or itself cut finer.
func (d *Dealer) another(a arithmetic.Number) arithmetic.Number {
	if a.Form != arithmetic.Common {
		return a
	}
	f, err := a.Value.CutFiner(2 + d.Int64N(3))
	if err != nil {
		return a
	}
	return arithmetic.Frac(f)
}

func (d *Dealer) any() arithmetic.Number {
	switch d.IntN(5) {
	case 0:
		return d.common(12)
	case 1:
		return d.mixed()
	case 2:
		return arithmetic.InPlaces(d.Int64N(1000), 1+d.IntN(2))
	}
	return d.whole()
}

// whole is a whole number of one to four digits, each length as likely, now and
// then of seven, with many zeros in it.
func (d *Dealer) whole() arithmetic.Number {
	if d.IntN(8) == 0 {
		return arithmetic.Int(d.upTo(7))
	}
	return arithmetic.Int(d.upTo(4))
}

// common is a fraction with a denominator up to most, up to two wholes.
func (d *Dealer) common(most int64) arithmetic.Number {
	den := 2 + d.Int64N(most-1)
	top := den
	if d.IntN(4) == 0 {
		top = 2 * den
	}
	return arithmetic.Frac(fraction.Must(1+d.Int64N(top), den))
}

func (d *Dealer) mixed() arithmetic.Number {
	den := 2 + d.Int64N(7)
	f := fraction.Must((1+d.Int64N(3))*den+1+d.Int64N(den-1), den)
	return arithmetic.Number{Value: f, Form: arithmetic.Mixed}
}

func one(kind arithmetic.Kind, op arithmetic.Op, a, b arithmetic.Number) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: a, Right: b}}
}
