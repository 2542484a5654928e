package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// SetOut has the total on the table and one side of the array known. Sharing
// knows the rows; Grouping knows how many go in each row (CCSS 3.OA.A.2).
type SetOut struct {
	Total, Side int64
	Grouping    bool
}

// PlaceOnce places the first line of the array: one for each row when sharing,
// one whole row when grouping. Placed is how many are used, Left how many are
// still to be placed.
type PlaceOnce struct{ Side, Placed, Left int64 }

// PlaceRest goes on in the same way until no further line is full. Found is how
// many lines there are then, Totals how many are placed after each of them.
type PlaceRest struct {
	Side, Found, Placed, Left int64
	Totals                    []int64
}

// PlacePart places many lines at once, a friendly number of them: Side × Part is
// Area. Before is how many were still to be placed, Left how many are now.
type PlacePart struct{ Side, Part, Area, Before, Left int64 }

// ReadSide reads the side that was asked for. Left is what is left over.
type ReadSide struct{ Side, Found, Left int64 }

// MarkRows marks some of the rows, Each of them worth the same.
type MarkRows struct{ Rows, Each, Sum int64 }

func (SetOut) move()    {}
func (PlaceOnce) move() {}
func (PlaceRest) move() {}
func (PlacePart) move() {}
func (ReadSide) move()  {}
func (MarkRows) move()  {}

// ErrNoFactor says that no whole number fills a blank.
var ErrNoFactor = errors.New("arithmetic: no whole number fits the blank")

// ErrAnyFactor says that every number fills a blank, as in 0 × ? = 0.
var ErrAnyFactor = errors.New("arithmetic: every number fits the blank")

// DivisionByArray works a division of whole numbers as an array with a side
// missing. A quotient up to 10 is dealt out; a larger one is built from friendly
// parts, the values of its digits: 966 ÷ 7 takes 7 × 100, 7 × 30 and 7 × 8
// (CCSS 4.NBT.B.6).
func DivisionByArray(p Problem) (Working, error) {
	total, side, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	return divide(p, total, side, p.Grouping)
}

func divide(p Problem, total, side int64, grouping bool) (Working, error) {
	if side == 0 {
		return Working{}, ErrDivideByZero
	}
	found, left := total/side, total%side
	w := Working{Problem: p, Answer: whole(found), Moves: []Move{SetOut{total, side, grouping}}}
	w.Answer.Remainder = left
	switch {
	case found > 10:
		before := total
		for _, part := range placeParts(found) {
			area := side * part // at most total
			w.Moves = append(w.Moves, PlacePart{side, part, area, before, before - area})
			before -= area
		}
	case found > 0:
		w.Moves = append(w.Moves, PlaceOnce{side, side, total - side})
		if found > 1 {
			rest := PlaceRest{Side: side, Found: found, Placed: side * found, Left: left}
			for i := int64(1); i <= found; i++ {
				rest.Totals = append(rest.Totals, i*side)
			}
			w.Moves = append(w.Moves, rest)
		}
	}
	w.Moves = append(w.Moves, ReadSide{side, found, left})
	return w.rest(side)
}

// MissingFactor works a product or a division with a blank in it, on either side
// of the equal sign. A blank factor is an array with a side missing; a blank
// total is an array laid out (CCSS 3.OA.A.4).
func MissingFactor(p Problem) (Working, error) {
	o, first, k, n, err := blankIn(p)
	switch {
	case err != nil:
		return Working{}, err
	case o.Op == Divide && first: // ? ÷ 3 = 5: 3 rows of 5
		if k == 0 {
			return Working{}, ErrDivideByZero
		}
		return multiply(p, k, n)
	case o.Op == Divide: // 48 ÷ ? = 8: rows of 8 from 48
		return exactly(p, k, n, true)
	}
	return exactly(p, n, k, first) // ? × 8 = 48 asks for rows of 8, 8 × ? = 48 for 8 rows
}

// blankIn is the product or division with the blank in it, whether the blank stands
// first in it, the number beside the blank and what the operation is equal to.
func blankIn(p Problem) (o Operation, first bool, known, equals int64, err error) {
	o, other, ok := blankOperation(p)
	if !ok {
		return o, false, 0, 0, ErrNotWhole
	}
	_, first = o.Left.(Unknown)
	beside := o.Left
	if first {
		beside = o.Right
	}
	known, okKnown := wholeNumber(beside)
	equals, okEquals := wholeNumber(other)
	if !okKnown || !okEquals {
		err = ErrNotWhole
	}
	return o, first, known, equals, err
}

// blankOperation finds the product or division with the blank in it, and what it
// is equal to.
func blankOperation(p Problem) (o Operation, other Expr, ok bool) {
	if p.Kind != Missing || p.Rel != Equal {
		return o, nil, false
	}
	other = p.Right
	if o, ok = p.Left.(Operation); !ok || !hasUnknown(o) {
		o, ok = p.Right.(Operation)
		other = p.Left
	}
	if !ok || o.Op != Multiply && o.Op != Divide {
		return o, nil, false
	}
	_, left := o.Left.(Unknown)
	_, right := o.Right.(Unknown)
	return o, other, left != right
}

// exactly divides with nothing left over.
func exactly(p Problem, total, side int64, grouping bool) (Working, error) {
	if err := fillable(p, total, side); err != nil {
		return Working{}, err
	}
	return divide(p, total, side, grouping)
}

// fillable reports why no one whole number fills the blank of a problem in which a
// total is divided.
func fillable(p Problem, total, by int64) error {
	switch {
	case by == 0 && total == 0:
		return ErrAnyFactor
	case by == 0 || total%by != 0:
		return ErrNoFactor
	case total == 0 && p.blankDivisor():
		return ErrNoFactor // 0 ÷ ? = 8
	}
	return nil
}

// blankDivisor reports whether the blank stands after a division sign.
func (p Problem) blankDivisor() bool {
	o, _, ok := blankOperation(p)
	return ok && o.Op == Divide && hasUnknown(o.Right)
}

// PartOfAmount works a fraction of a whole amount that comes out whole: the
// amount is shared in as many rows as the denominator says, and as many rows are
// marked as the numerator says (CCSS 4.NF.B.4). The fraction is at most 1.
func PartOfAmount(p Problem) (Working, error) {
	f, total, err := partOfWhole(p)
	if err != nil {
		return Working{}, err
	}
	rows := f.Den()
	w, err := divide(p, total, rows, false)
	if err != nil {
		return Working{}, err
	}
	mark := MarkRows{f.Num(), total / rows, f.Num() * (total / rows)}
	w.Answer = whole(mark.Sum)
	w.Moves = append(w.Moves, mark)
	return w, nil
}

// partOfWhole reads a fraction up to one whole of a whole amount that comes out
// whole.
func partOfWhole(p Problem) (f fraction.Fraction, total int64, err error) {
	o, is := p.Left.(Operation)
	if !is || p.Kind != PartOf || o.Op != Of {
		return f, 0, ErrNotWhole
	}
	n, isNumber := o.Left.(Number)
	total, ok := wholeNumber(o.Right)
	if !isNumber || !ok || n.Form != Common || n.Value.Sign() < 0 || n.Value.Num() > n.Value.Den() {
		return f, 0, ErrNotWhole
	}
	if total%n.Value.Den() != 0 {
		return f, 0, ErrNoFactor
	}
	return n.Value, total, nil
}
