// Package problems makes random problems for the tests, and says what is true of
// a problem by a second way of working it: math/big on the numbers as written.
// It shares no procedure with package arithmetic, whose answers it judges.
package problems

import (
	"math/rand/v2"

	"modeler/arithmetic"
	"modeler/fraction"
)

// Kinds lists the kinds of problem that [Random] makes, in the order it deals
// them.
var Kinds = []arithmetic.Kind{
	arithmetic.Show, arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.Division,
	arithmetic.PartOf, arithmetic.Expression, arithmetic.Missing, arithmetic.Claim, arithmetic.Comparison,
	arithmetic.Ordering, arithmetic.Rounding, arithmetic.Factors, arithmetic.MixedForm, arithmetic.FractionForm,
	arithmetic.SimplestForm, arithmetic.Renaming,
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
		a, b := d.two()
		return one(kind, arithmetic.Add, a, b)
	case arithmetic.Subtraction:
		a, b := d.two()
		if a.Value.Cmp(b.Value) < 0 {
			a, b = b, a
		}
		return one(kind, arithmetic.Subtract, a, b)
	case arithmetic.Product:
		return one(kind, arithmetic.Multiply, d.factor(), d.factor())
	case arithmetic.Division:
		return d.division()
	case arithmetic.PartOf:
		return d.part()
	case arithmetic.Expression:
		if d.IntN(2) == 0 {
			return arithmetic.Problem{Kind: kind, Left: d.chain()}
		}
		sum := arithmetic.Operation{Op: arithmetic.Add, Left: arithmetic.Int(d.Int64N(10) + 1), Right: arithmetic.Int(d.Int64N(10) + 1)}
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: arithmetic.Multiply, Left: d.factor(), Right: sum}}
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
		p := arithmetic.Problem{Kind: kind}
		for range 2 + d.IntN(5) {
			p.List = append(p.List, d.common(12))
		}
		return p
	case arithmetic.Rounding:
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(d.Int64N(10_000)), To: arithmetic.Power10(1 + d.IntN(3))}
	case arithmetic.Factors:
		return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(1 + d.Int64N(120))}
	}
	return d.naming(kind)
}

// chain is a sum of three to five numbers, of one or two digits.
func (d *Dealer) chain() arithmetic.Expr {
	most := arithmetic.Power10(1 + d.IntN(2))
	var sum arithmetic.Expr = arithmetic.Int(1 + d.Int64N(most))
	for range 2 + d.IntN(3) {
		sum = arithmetic.Operation{Op: arithmetic.Add, Left: sum, Right: arithmetic.Int(1 + d.Int64N(most))}
	}
	return sum
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
	case arithmetic.Renaming:
		f := d.common(8)
		n := 1 + d.Int64N(4)
		p := arithmetic.Problem{Kind: kind, Rel: arithmetic.Equal, Left: f}
		if d.IntN(2) == 0 {
			p.Blank.Den = f.Value.Den() * n
		} else {
			p.Blank.Num = f.Value.Num() * n
		}
		p.Blank.First = d.IntN(4) == 0
		return p
	}
	return arithmetic.Problem{Kind: arithmetic.Show, Left: d.any()}
}

func (d *Dealer) division() arithmetic.Problem {
	b := 1 + d.Int64N(12)
	a := b * d.Int64N(13)
	switch d.IntN(4) {
	case 0:
		a += d.Int64N(b)
	case 1:
		a = 10 + d.Int64N(990)
	}
	p := one(arithmetic.Division, arithmetic.Divide, arithmetic.Int(a), arithmetic.Int(b))
	p.Grouping = d.IntN(2) == 0
	return p
}

func (d *Dealer) part() arithmetic.Problem {
	den := 2 + d.Int64N(9)
	f := arithmetic.Frac(fraction.Must(1+d.Int64N(den-1), den))
	return one(arithmetic.PartOf, arithmetic.Of, f, arithmetic.Int(den*(1+d.Int64N(10))))
}

// missing deals an equation with one of three numbers unknown.
func (d *Dealer) missing() arithmetic.Problem {
	op := arithmetic.Op(d.IntN(4))
	var a, b, c int64 // a op b is c
	switch op {
	case arithmetic.Add, arithmetic.Subtract:
		b, c = d.Int64N(60), d.Int64N(60)
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
	left := arithmetic.Operation{Op: op, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}
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

// two numbers of the same sort.
func (d *Dealer) two() (a, b arithmetic.Number) {
	switch d.IntN(6) {
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

// whole is a whole number of one to four digits, each length as likely, with
// many zeros in it.
func (d *Dealer) whole() arithmetic.Number {
	n := d.Int64N(arithmetic.Power10(1 + d.IntN(4)))
	if d.IntN(3) == 0 {
		p := arithmetic.Power10(1 + d.IntN(2))
		n = n/(10*p)*(10*p) + n%p
	}
	return arithmetic.Int(n)
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
