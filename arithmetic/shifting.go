package arithmetic

import "errors"

// ShiftPlaces moves every piece one place to the left, so that it is worth 10 times
// as much, or one place to the right, so that it is worth a tenth.
type ShiftPlaces struct {
	Nth           int  // which of the moves it is, from 1
	Right         bool // for a division
	Before, After Counts
	From, To      int64 // the numbers that they make
}

func (ShiftPlaces) move() {}

// ErrUnevenShift says that a digit other than 0 would leave the places on the right.
var ErrUnevenShift = errors.New("arithmetic: a digit would leave the ones on the right")

// ErrNoShift says that neither number is 10, 100 or 1,000, or that there is nothing
// to move.
var ErrNoShift = errors.New("arithmetic: not a product or quotient with 10, 100 or 1,000")

// Shifts is which number of a product or quotient moves, 0 for the first, and how
// many places: that of 10 moves 1 place. ok is false where neither is 10, 100 or
// 1,000. Of two that are, the second says how far.
func Shifts(p Problem) (nth, places int, ok bool) {
	a, b, two := p.Operands()
	if !two || p.Kind != Product && p.Kind != Division {
		return 0, 0, false
	}
	if places, ok = shiftOf(b); ok {
		return 0, places, true
	}
	if p.Kind == Product {
		if places, ok = shiftOf(a); ok {
			return 1, places, true
		}
	}
	return 0, 0, false
}

// ShiftsBeyondFacts reports whether a product or quotient with 10, 100 or 1,000 is
// more than a fact: 3 × 10 and 30 ÷ 10 are known from groups and rows, and 23 × 10
// and 3 × 100 are seen by their places.
func ShiftsBeyondFacts(p Problem) bool {
	const mostInFacts = 12
	nth, places, ok := Shifts(p)
	if !ok {
		return false
	}
	a, b, _ := p.Operands()
	moved, whole := [2]Number{a, b}[nth].Int64()
	if p.Kind == Division {
		moved /= 10
	}
	return whole && (places > 1 || moved > mostInFacts)
}

func shiftOf(n Number) (places int, ok bool) {
	v, whole := n.Int64()
	for places = 1; places <= 3; places++ {
		if whole && n.Form == Whole && v == Power10(places) {
			return places, true
		}
	}
	return 0, false
}

// ShiftByPlace multiplies or divides a whole number by 10, 100 or 1,000: all pieces
// move to the next place as often as there are zeros (CCSS 5.NBT.A.1, 5.NBT.A.2).
// Its error is [ErrNoShift], [ErrPlaces] or [ErrUnevenShift].
func ShiftByPlace(p Problem) (Working, error) {
	nth, places, ok := Shifts(p)
	if !ok {
		return Working{}, ErrNoShift
	}
	a, b, _ := p.Operands()
	v, digits, err := placed([2]Number{a, b}[nth])
	if err != nil {
		return Working{}, err
	}
	if v == 0 {
		return Working{}, ErrNoShift
	}
	w := Working{Problem: p, Moves: []Move{LayOut{nth, v, digits}}}
	for i := range places {
		shift := ShiftPlaces{Nth: i + 1, Right: p.Kind == Division, Before: digits, From: v}
		if shift.Right {
			if digits[0] != 0 {
				return Working{}, ErrUnevenShift
			}
			v /= 10
		} else {
			v *= 10
		}
		if digits, err = Places(v); err != nil {
			return Working{}, err
		}
		shift.After, shift.To = digits, v
		w.Moves = append(w.Moves, shift)
	}
	w.Answer = Answer{Number: Int(v), Simplest: Int(v)}
	w.Moves = append(w.Moves, ReadOff{v, digits})
	return w, nil
}
