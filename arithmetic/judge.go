package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// Judge is the answer of a [Claim], a [Comparison] or a [Closer] without its moves:
// what truly stands between the two sides, and how far apart they are. Of a Closer
// the sides are the distances from To, and Number is the closer number, if one is. It is for claims that
// are too large to be shown. Its errors are those of [Evaluate].
func Judge(p Problem) (Answer, error) {
	if p.Kind != Claim && p.Kind != Comparison && p.Kind != Closer {
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
	if p.Kind == Closer {
		if left, err = distanceTo(left, p.To); err != nil {
			return Answer{}, err
		}
		if right, err = distanceTo(right, p.To); err != nil {
			return Answer{}, err
		}
	}
	a := Answer{Relation: [...]Relation{Less, Equal, Greater}[left.Cmp(right)+1]}
	a.True = p.Kind == Claim && p.Rel == a.Relation
	if p.Kind == Closer {
		switch a.Relation {
		case Less:
			a.Number, _ = p.Left.(Number)
		case Greater:
			a.Number, _ = p.Right.(Number)
		}
	}
	if left.Cmp(right) < 0 {
		left, right = right, left
	}
	if a.Gap, err = left.Sub(right); err != nil {
		return Answer{}, ErrOverflow
	}
	return a, nil
}

// distanceTo is how far a value is from a whole number.
func distanceTo(v fraction.Fraction, to int64) (fraction.Fraction, error) {
	far, near := v, fraction.Whole(to)
	if far.Cmp(near) < 0 {
		far, near = near, far
	}
	gap, err := far.Sub(near)
	if err != nil {
		return gap, ErrOverflow
	}
	return gap, nil
}

// TrueEquality is the equation nearest to a claim that is not one: its left side
// with the number on the right that is truly equal to it, in the parts, places or
// wholes that stand there, or else the other way round. A worked side that can't be
// written in the parts of the other is set equal to its value as it is finally named:
// 1/2 + 1/4 = 2/6 gives 1/2 + 1/4 = 3/4. ok is false when neither side can be written
// so.
func TrueEquality(p Problem) (equation Problem, ok bool) {
	equation = Problem{Kind: Claim, Rel: Equal, Left: p.Left, Right: p.Right}
	if right, can := inItsForm(p.Right, p.Left); can {
		equation.Right = right
		return equation, true
	}
	if left, can := inItsForm(p.Left, p.Right); can {
		equation.Left = left
		return equation, true
	}
	worked, isWorked := p.Left.(Operation)
	n, isNumber := p.Right.(Number)
	if !isWorked || !isNumber || n.Form != Common && n.Form != Mixed {
		return equation, false
	}
	v, err := Evaluate(worked)
	if err != nil || v.Sign() < 0 {
		return equation, false
	}
	equation.Right = FinalName(Frac(v))
	return equation, true
}

// inItsForm is the value of one side written in the form of the number on the other.
func inItsForm(side, other Expr) (Expr, bool) {
	n, is := side.(Number)
	v, err := Evaluate(other)
	if !is || err != nil || v.Sign() < 0 {
		return nil, false
	}
	units := n.Value.Den()
	switch n.Form {
	case Decimal, Money:
		units = Power10(n.Places)
	case Percent:
		units = 100 * Power10(n.Places)
	}
	count, err := v.Mul(fraction.Whole(units))
	if err != nil || count.Num()%count.Den() != 0 {
		return nil, false
	}
	whole := count.Num() / count.Den()
	switch n.Form {
	case Whole, Decimal, Money, Percent:
		return withUnits(n, whole), true
	case Mixed:
		return AsMixed(fraction.Must(whole, units)), true
	}
	return Frac(fraction.Must(whole, units)), true
}
