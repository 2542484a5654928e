package arithmetic

import "modeler/fraction"

// The moves that take an amount apart.
type (
	// SplitUnits takes an amount apart in the smallest pieces that it is written in:
	// wholes and unit fractions.
	SplitUnits struct {
		From  Strips
		Units []Number
	}

	// SplitInTwo takes the same amount apart in another way.
	SplitInTwo struct{ From, First, Second Strips }
)

func (SplitUnits) move() {}
func (SplitInTwo) move() {}

// TakeApart works [AsSum]: a fraction as a sum of unit fractions, with its wholes apart
// where it is a mixed number, and then as a sum of two: 3/8 is 1/8 + 1/8 + 1/8 and 1/8 +
// 2/8; 2 1/8 is 1 + 1 + 1/8 and 2 + 1/8. (CCSS 4.NF.B.3b)
//
// [ErrSame] says that a number is one such piece itself; [ErrNothing] that there is
// nothing to take apart.
func TakeApart(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok || p.Kind != AsSum || !broken(n) {
		return Working{}, errNotTwo
	}
	laid := StripsOf(n)
	num, den := laid.Part.Num(), laid.Part.Den()
	switch {
	case n.Value.Sign() <= 0:
		return Working{}, ErrNothing
	case laid.Wholes+num < 2:
		return Working{}, ErrSame
	case laid.Wholes+num > mostAddends:
		return Working{}, ErrOverflow
	}
	split := SplitUnits{From: laid}
	for range laid.Wholes {
		split.Units = append(split.Units, Int(1))
	}
	for range num {
		split.Units = append(split.Units, Frac(fraction.Must(1, den)))
	}
	moves := []Move{LayStrips{0, n, laid}, split}
	if other, ok := inTwo(laid); ok {
		moves = append(moves, other)
	}
	return Working{p, Answer{Number: n, Simplest: AsMixed(n.Value.Simplest()), Order: split.Units}, moves}, nil
}

// mostAddends is how many addends can be listed.
const mostAddends = 24

// inTwo is another way to take an amount apart: the wholes and the rest, one whole and
// the rest, or one part and the rest; ok is false when that is what all pieces are.
func inTwo(laid Strips) (other SplitInTwo, ok bool) {
	num, den := laid.Part.Num(), laid.Part.Den()
	switch {
	case laid.Wholes > 0:
		return SplitInTwo{laid, Strips{Wholes: laid.Wholes}, Strips{Part: laid.Part}}, num > 0 && laid.Wholes+num > 2
	case num > den:
		return SplitInTwo{laid, Strips{Part: fraction.Must(den, den)}, Strips{Part: fraction.Must(num-den, den)}}, den > 1
	case num > 2:
		return SplitInTwo{laid, Strips{Part: fraction.Must(1, den)}, Strips{Part: fraction.Must(num-1, den)}}, true
	}
	return SplitInTwo{}, false
}
