// Package fraction has exact fractions that keep the form they were written in.
//
// 6/8 stays 6/8: equality of value ([Fraction.Equal]) and equality of form (==)
// are two questions. Nothing here uses floating point; a result that does not
// fit is [ErrOverflow], never a wrong number.
package fraction

import (
	"errors"
	"math/bits"
	"strconv"
)

// ErrZeroDenominator says that a fraction was asked to have no parts in its whole.
var ErrZeroDenominator = errors.New("fraction: a whole cannot be cut in 0 parts")

// ErrOverflow says that a result does not fit in 64 bits.
var ErrOverflow = errors.New("fraction: the numbers are too large")

// ErrUneven says that parts cannot be joined evenly into larger ones.
var ErrUneven = errors.New("fraction: the parts do not join evenly")

// Fraction is num parts of a whole that is cut in den equal parts, as written.
// The zero value is the whole number 0.
type Fraction struct {
	num int64
	cut int64 // den - 1, so that the zero value is 0/1
}

// New returns num/den as written. den must be at least 1.
func New(num, den int64) (Fraction, error) {
	if den == 0 {
		return Fraction{}, ErrZeroDenominator
	}
	if den < 0 {
		return Fraction{}, errors.New("fraction: a whole is cut in 1 part or more")
	}
	return Fraction{num, den - 1}, nil
}

// Must is [New] for numbers known to be good; it panics on a bad one.
func Must(num, den int64) Fraction {
	f, err := New(num, den)
	if err != nil {
		panic(err)
	}
	return f
}

// Whole returns the whole number n, which is n/1.
func Whole(n int64) Fraction { return Fraction{n, 0} }

// Num is the numerator: how many parts.
func (f Fraction) Num() int64 { return f.num }

// Den is the denominator: how many equal parts make one whole. At least 1.
func (f Fraction) Den() int64 { return f.cut + 1 }

// IsWhole reports whether the value is a whole number (8/4 is, 3/4 is not).
func (f Fraction) IsWhole() bool { return f.num%f.Den() == 0 }

// Sign is -1, 0 or 1.
func (f Fraction) Sign() int {
	switch {
	case f.num < 0:
		return -1
	case f.num > 0:
		return 1
	}
	return 0
}

// Equal reports whether f and g are the same amount: 3/4 and 6/8 are.
func (f Fraction) Equal(g Fraction) bool { return f.Cmp(g) == 0 }

// Cmp compares amounts: -1 when f is less than g, 0 when equal, 1 when more.
// It cannot overflow.
func (f Fraction) Cmp(g Fraction) int {
	if s, t := f.Sign(), g.Sign(); s != t {
		if s < t {
			return -1
		}
		return 1
	}
	fh, fl := bits.Mul64(magnitude(f.num), uint64(g.Den()))
	gh, gl := bits.Mul64(magnitude(g.num), uint64(f.Den()))
	c := 0
	switch {
	case fh > gh || fh == gh && fl > gl:
		c = 1
	case fh < gh || fl < gl:
		c = -1
	}
	if f.num < 0 {
		c = -c
	}
	return c
}

// String writes f as num/den, or as a whole number when den is 1.
func (f Fraction) String() string {
	if f.cut == 0 {
		return strconv.FormatInt(f.num, 10)
	}
	return strconv.FormatInt(f.num, 10) + "/" + strconv.FormatInt(f.Den(), 10)
}

func magnitude(n int64) uint64 {
	if n < 0 {
		return -uint64(n)
	}
	return uint64(n)
}
