package arithmetic

import (
	"errors"

	"modeler/fraction"
)

var errNotTwo = errors.New("arithmetic: there are not two numbers to work with")

// AddByCutting works an [Addition] of fractions, mixed and whole numbers: the
// second length is put after the first, the parts are cut until all are the
// same size, and the parts are counted. (CCSS 4.NF.B.3, 5.NF.A.1)
//
// Answer.Number has the parts as the moves make them (3/4 + 3/4 is 6/4, 1 1/2 +
// 3/4 is 2 1/4); Answer.Simplest is the last name (1 1/2).
func AddByCutting(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	if !ok {
		return Working{}, errNotTwo
	}
	first, second := StripsOf(a), StripsOf(b)
	moves := []Move{LayStrips{0, a, first}, LayStrips{1, b, second}, PutTogether{first, second}}
	cuts, first, second, err := cutAlike(first, second)
	if err != nil {
		return Working{}, err
	}
	part, err1 := first.Part.Add(second.Part)
	wholes, err2 := fraction.Whole(first.Wholes).Add(fraction.Whole(second.Wholes))
	if err1 != nil || err2 != nil {
		return Working{}, ErrOverflow
	}
	total := Strips{wholes.Num(), part}
	moves = append(append(moves, cuts...), CountParts{total})
	return named(p, moves, total)
}

// SubtractByCutting works a [Subtraction] of fractions, mixed and whole numbers,
// the second not more than the first: the parts are cut until all are the same
// size, wholes are opened when there are too few loose parts (those of the second
// when the first has none), and the parts that remain are counted. (CCSS 4.NF.B.3c, 5.NF.A.1)
func SubtractByCutting(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	if !ok {
		return Working{}, errNotTwo
	}
	if a.Value.Cmp(b.Value) < 0 {
		return Working{}, ErrNegative
	}
	first, second := StripsOf(a), StripsOf(b)
	moves := []Move{LayStrips{0, a, first}, LayStrips{1, b, second}}
	cuts, first, second, err := cutAlike(first, second)
	if err != nil {
		return Working{}, err
	}
	moves = append(moves, cuts...)
	// Whole strips can be taken from loose parts only when they are cut as well.
	if first.Wholes < second.Wholes {
		to, err := second.open(second.Wholes)
		if err != nil {
			return Working{}, err
		}
		moves = append(moves, OpenWholes{Nth: 1, From: second, To: to, Wholes: second.Wholes})
		second = to
	}
	if short := second.Part.Num() - first.Part.Num(); short > 0 {
		wholes := (short-1)/first.Part.Den() + 1
		to, err := first.open(wholes)
		if err != nil {
			return Working{}, err
		}
		moves = append(moves, OpenWholes{From: first, To: to, Wholes: wholes, Before: to.Wholes - second.Wholes})
		first = to
	}
	part, err := first.Part.Sub(second.Part)
	if err != nil {
		return Working{}, ErrOverflow
	}
	left := Strips{first.Wholes - second.Wholes, part}
	moves = append(moves, TakeStrips{first, second, left}, CountParts{left})
	return named(p, moves, left)
}

// open turns whole strips in parts.
func (s Strips) open(wholes int64) (Strips, error) {
	part, err := fraction.FromMixed(wholes, s.Part)
	if err != nil {
		return s, ErrOverflow
	}
	return Strips{s.Wholes - wholes, part}, nil
}

// named ends a sum or difference: loose parts are named as far as they can be,
// and the answer is told in both forms. Nothing is named in parts first: 0/4.
func named(p Problem, moves []Move, total Strips) (Working, error) {
	value, err := total.Value()
	if err != nil {
		return Working{}, err
	}
	more, _ := finish(total)
	answer := Answer{Number: Frac(value), Simplest: AsMixed(value.Simplest())}
	if total.Wholes > 0 || mixes(p) && value.Num() > 0 {
		answer.Number = AsMixed(value)
	}
	return Working{p, answer, append(moves, more...)}, nil
}

// mixes reports whether one of the two numbers was written with wholes, so that
// the answer is too.
func mixes(p Problem) bool {
	a, b, _ := p.Operands()
	return a.Form == Mixed || a.Form == Whole || b.Form == Mixed || b.Form == Whole
}
