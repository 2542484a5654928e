package arithmetic

import "modeler/fraction"

// LookAtDistances compares how far the points of two numbers are from a whole number:
// Relation stands between the distances.
type LookAtDistances struct {
	Numbers  [2]Number
	To       Number
	Away     [2]Number
	Relation Relation
}

func (LookAtDistances) move() {}

// CloserOnLine works a [Closer] by marking both numbers on one line and looking at
// how far each is from To. room is how many units can be told apart across the line.
// Its error is [ErrOverflow] when the numbers have no common unit that can be counted.
func CloserOnLine(p Problem, room int64) (Working, Stretch, error) {
	answer, err := Judge(p)
	a, b, ok := p.Operands()
	if err != nil || !ok || p.Kind != Closer {
		return Working{}, Stretch{}, errNotOnLine
	}
	placed, t, err := PlaceOnLine(Problem{Kind: Comparison, Left: a, Right: b}, room)
	if err != nil {
		return placed, t, err
	}
	to := Int(p.To)
	if at := p.To * t.Scale.Parts; at < t.Lo || at > t.Hi {
		return placed, t, errNotOnLine
	}
	look := LookAtDistances{Numbers: [2]Number{a, b}, To: to, Relation: answer.Relation}
	for i, n := range look.Numbers {
		gap, err := distanceTo(n.Value, p.To)
		if err != nil {
			return placed, t, err
		}
		look.Away[i] = distanceIn(n, gap)
	}
	w := Working{Problem: p, Answer: answer, Moves: append(placed.Moves[:len(placed.Moves)-1:len(placed.Moves)-1], look)}
	return w, t, nil
}

// distanceIn is a distance in the form of the number that is so far away: 1/4 from
// 3/4, 0.3 from 0.7.
func distanceIn(n Number, gap fraction.Fraction) Number {
	switch n.Form {
	case Decimal, Money, Whole:
		units, err := gap.Mul(fraction.Whole(n.Value.Den()))
		if err == nil && units.IsWhole() {
			return withUnits(n, units.Num()/units.Den())
		}
	}
	return AsMixed(gap)
}
