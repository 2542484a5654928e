package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// Judge is the answer of a [Claim] or a [Comparison] without its moves: what truly
// stands between the two sides, and how far apart they are. It is for claims that
// are too large to be shown. Its errors are those of [Evaluate].
func Judge(p Problem) (Answer, error) {
	if p.Kind != Claim && p.Kind != Comparison {
		return Answer{}, errors.New("arithmetic: neither a claim nor a comparison")
	}
	left, err := Evaluate(p.Left)
	if err != nil {
		return Answer{}, err
	}
	right, err := Evaluate(p.Right)
	if err != nil {
		return Answer{}, err
	}
	a := Answer{Relation: [...]Relation{Less, Equal, Greater}[left.Cmp(right)+1]}
	a.True = p.Kind == Claim && p.Rel == a.Relation
	if left.Cmp(right) < 0 {
		left, right = right, left
	}
	if a.Gap, err = left.Sub(right); err != nil {
		return Answer{}, ErrOverflow
	}
	return a, nil
}

// TrueEquality is the equation nearest to a claim that is not one: its left side
// with the number on the right that is truly equal to it, in the parts, places or
// wholes that stand there, or else the other way round. ok is false when neither
// side can be written so.
func TrueEquality(p Problem) (equation Problem, ok bool) {
	equation = Problem{Kind: Claim, Rel: Equal, Left: p.Left, Right: p.Right}
	if right, can := inItsForm(p.Right, p.Left); can {
		equation.Right = right
		return equation, true
	}
	left, can := inItsForm(p.Left, p.Right)
	equation.Left = left
	return equation, can
}

// inItsForm is the value of one side written in the form of the number on the other.
func inItsForm(side, other Expr) (Expr, bool) {
	n, is := side.(Number)
	v, err := Evaluate(other)
	if !is || err != nil || v.Sign() < 0 {
		return nil, false
	}
	units := n.Value.Den()
	if n.Form == Decimal || n.Form == Money {
		units = Power10(n.Places)
	}
	count, err := v.Mul(fraction.Whole(units))
	if err != nil || count.Num()%count.Den() != 0 {
		return nil, false
	}
	whole := count.Num() / count.Den()
	switch n.Form {
	case Whole, Decimal, Money:
		return withUnits(n, whole), true
	case Mixed:
		return AsMixed(fraction.Must(whole, units)), true
	}
	return Frac(fraction.Must(whole, units)), true
}
