package words

import (
	"errors"
	"fmt"

	"modeler/arithmetic"
)

// ErrNoArray says that a problem is none of those that an array shows.
var ErrNoArray = errors.New("an array shows products, divisions, factors and equal parts of an amount")

// ErrArrayTooCrowded says that the parts of a product have no room for their names.
var ErrArrayTooCrowded = errors.New("the numbers in its parts are too long to stand beside each other; use shorter ones")

// ErrArrayRest says that an array does not cut what is left over, or round.
var ErrArrayRest = errors.New("an array keeps what is left over beside its rows, as a remainder")

// ArrayMisfit says why a problem cannot be worked as an array.
func ArrayMisfit(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNoFactor) && p.Kind == arithmetic.PartOf:
		return errors.New("the amount does not make that many equal rows of whole ones")
	case errors.Is(err, arithmetic.ErrNoFactor):
		return errors.New("no whole number makes " + p.String() + " true, so the rows would not be equal")
	case errors.Is(err, arithmetic.ErrAnyFactor):
		return errors.New("every number makes " + p.String() + " true, so there is no one array")
	case errors.Is(err, arithmetic.ErrNotWhole) && p.Kind == arithmetic.Missing:
		return errors.New("an array finds a blank in a product or division of whole numbers")
	case errors.Is(err, arithmetic.ErrNotWhole) && p.Kind == arithmetic.PartOf:
		return errors.New("an array shows a fraction up to one whole of a whole number")
	case errors.Is(err, arithmetic.ErrNotWhole) && (p.Kind == arithmetic.Claim || p.Kind == arithmetic.Comparison):
		return errors.New("an array compares products of two whole numbers")
	case errors.Is(err, arithmetic.ErrNotWhole) && p.Kind == arithmetic.Factors:
		return errors.New("factors are found for whole numbers from 1 up")
	case errors.Is(err, arithmetic.ErrNotWhole):
		return errors.New("an array has whole rows, so it needs whole numbers")
	case errors.Is(err, arithmetic.ErrNothing):
		return ErrArrayNothing
	case errors.Is(err, arithmetic.ErrEndless):
		return ErrArrayEndless
	case errors.Is(err, arithmetic.ErrDivideByZero):
		return errors.New("nothing can be shared among 0 rows")
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New("the numbers are too large to draw")
	}
	return ErrNoArray
}

// ArrayTooLarge bounds the sides of a product.
func ArrayTooLarge(most int64, sides ...int64) error {
	for _, n := range sides {
		if n > most {
			return fmt.Errorf("an array has sides up to %s, and %s is more", arithmetic.Grouped(most), arithmetic.Grouped(n))
		}
	}
	return nil
}

// ArrayTooManyParts bounds the parts of a split array, none of which may be 0.
func ArrayTooManyParts(rows, cols []int64, largest int64, most int) error {
	if n := len(rows) * len(cols); n > most {
		return fmt.Errorf("it would have %d parts, and more than %d cannot be read", n, most)
	}
	for _, list := range [][]int64{rows, cols} {
		for _, n := range list {
			if n == 0 {
				return errors.New("a part of the array would be 0, and there is nothing to draw")
			}
		}
		if err := ArrayTooLarge(largest, sum(list)); err != nil {
			return err
		}
	}
	return nil
}

// ArrayTooMuch bounds what is shared among rows or put in rows.
func ArrayTooMuch(kind arithmetic.Kind, total, side, mostTotal, mostSide, mostRows int64) error {
	switch {
	case total > mostTotal:
		return fmt.Errorf("an array shares up to %s, and %s is more", arithmetic.Grouped(mostTotal), arithmetic.Grouped(total))
	case kind == arithmetic.PartOf && side > mostRows:
		return fmt.Errorf("an array shows up to %d equal parts of an amount, and %s is more", mostRows, arithmetic.Grouped(side))
	case kind == arithmetic.PartOf && total == 0:
		return errors.New("there is nothing to take a part of")
	case side > mostSide:
		return fmt.Errorf("an array divides by numbers up to %d, and %s is more", mostSide, arithmetic.Grouped(side))
	}
	return nil
}

// ArrayTooManyPairs bounds the number whose factors are shown.
func ArrayTooManyPairs(n, most int64) error {
	if n > most {
		return fmt.Errorf("all arrays are shown for numbers up to %d, and %s is more", most, arithmetic.Grouped(n))
	}
	return nil
}

// ArrayTooWide bounds the two arrays of a claim, which need counters that can be
// counted: beside each other, or one above the other.
func ArrayTooWide(m arithmetic.LayArrays, mostRows, mostCols int64) error {
	var rows, cols, high, wide int64 // of both together, and of the larger
	for _, s := range m.Sides {
		empty := s.IsArray && s.Total == 0
		for _, part := range s.Parts {
			empty = empty || part == 0
		}
		if empty {
			return errors.New("there is nothing to lay out in one of the arrays")
		}
		// One side may be so large that the sums would not be whole numbers.
		high, wide = max(high, s.Rows), max(wide, s.Cols)
		if high > mostRows || wide > mostCols {
			break
		}
		rows, cols = rows+s.Rows, cols+s.Cols
	}
	if high > mostRows || wide > mostCols || rows > mostRows && cols > mostCols {
		return fmt.Errorf("two arrays are compared up to %d rows of %d, with no more rows, or no more columns, in both together", mostRows, mostCols)
	}
	return nil
}

// The reasons why a mixed expression has no array.
var (
	ErrArrayTakingLarge = errors.New("what is taken away is shown in up to 60 rows of 60, or in up to 12 longer rows; use smaller numbers")
	ErrArrayTermsLarge  = errors.New("two arrays stand beside each other up to 12 rows of 20; work each of them by itself")
	ErrArrayBlocksLarge = errors.New("two sides of three factors are compared up to 240 counters each; use smaller numbers")
	ErrArrayDecimalRows = errors.New("a part of a row is told as a fraction; ask for a mixed number")
	ErrArrayNothing     = errors.New("with a 0 in it, or with nothing left, there is nothing to lay out; use numbers that leave some")
	ErrArrayEndless     = errors.New("the decimal does not end within three places; ask for a mixed number")
)

// ArrayTooManyBlocks bounds the blocks of three factors, and their sides.
func ArrayTooManyBlocks(blocks, most, largest int64, sides ...int64) error {
	if blocks > most {
		return fmt.Errorf("three factors of this size are shown as up to %d blocks, and %s is more; put the smallest number first", most, g(blocks))
	}
	return ArrayTooLarge(largest, sides...)
}
