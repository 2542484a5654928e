package arithmetic

import "modeler/fraction"

// JoinCopies lays Count equal amounts end to end, each of them Each. Total is what
// they are in the same parts.
type JoinCopies struct {
	Each, Total Strips
	Count       int64
}

func (JoinCopies) move() {}

// CopiesByJoining works the [Product] of a whole number and a fraction as so many
// copies of the fraction, end to end: 3 × 2/5 is 6 fifths. (CCSS 4.NF.B.4)
// [ErrNothing] says that there is no copy, or that a copy is nothing.
func CopiesByJoining(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	if !ok || p.Kind != Product || a.Form != Whole || b.Form != Common {
		return Working{}, errNotTwo
	}
	count, whole := a.Int64()
	each := StripsOf(b)
	if !whole || count < 1 || each.Part.Num() < 1 {
		return Working{}, ErrNothing
	}
	parts := count * each.Part.Num()
	if parts/count != each.Part.Num() {
		return Working{}, ErrOverflow
	}
	total, err := fraction.New(parts, each.Part.Den())
	if err != nil {
		return Working{}, ErrOverflow
	}
	joined := Strips{Part: total}
	moves := []Move{LayStrips{1, b, each}, JoinCopies{each, joined, count}, CountParts{joined}}
	more, last := finish(joined)
	return Working{p, Answer{Number: Frac(total), Simplest: last.Number()}, append(moves, more...)}, nil
}
