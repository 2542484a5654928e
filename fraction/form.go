package fraction

import "math"

// CutFiner cuts every part in n equal ones: 3/4 cut finer by 2 is 6/8.
// The amount does not change. n must be at least 1. (CCSS 4.NF.A.1)
func (f Fraction) CutFiner(n int64) (Fraction, error) {
	if n < 1 {
		return Fraction{}, ErrZeroDenominator
	}
	num, ok1 := mul(f.num, n)
	den, ok2 := mul(f.Den(), n)
	if !ok1 || !ok2 {
		return Fraction{}, ErrOverflow
	}
	return New(num, den)
}

// Merge joins every n parts into one: 6/8 merged by 2 is 3/4. The amount does
// not change. It is [ErrUneven] when parts would be left over.
func (f Fraction) Merge(n int64) (Fraction, error) {
	if n < 1 || f.num%n != 0 || f.Den()%n != 0 {
		return Fraction{}, ErrUneven
	}
	return New(f.num/n, f.Den()/n)
}

// Simplest is the same amount in the fewest parts: 6/8 is 3/4.
func (f Fraction) Simplest() Fraction {
	g := GCD(f.num, f.Den())
	return Fraction{f.num / g, f.Den()/g - 1}
}

// CommonUnit is the fewest parts of a whole in which both f and g can be
// counted: the least common multiple of the denominators.
func CommonUnit(f, g Fraction) (int64, error) { return LCM(f.Den(), g.Den()) }

// In is f written in parts of which den make a whole; [ErrUneven] when it
// cannot be written so in whole parts.
func (f Fraction) In(den int64) (Fraction, error) {
	if den < 1 {
		return Fraction{}, ErrZeroDenominator
	}
	s := f.Simplest()
	if den%s.Den() != 0 {
		return Fraction{}, ErrUneven
	}
	return s.CutFiner(den / s.Den())
}

// Mixed splits f in whole ones and a part that is less than one, in the same
// parts: 11/4 is 2 and 3/4. f must not be negative.
func (f Fraction) Mixed() (wholes int64, part Fraction) {
	return f.num / f.Den(), Fraction{f.num % f.Den(), f.cut}
}

// FromMixed joins whole ones and a part: 2 and 3/4 is 11/4.
func FromMixed(wholes int64, part Fraction) (Fraction, error) {
	n, ok := mul(wholes, part.Den())
	if !ok {
		return Fraction{}, ErrOverflow
	}
	n, ok = add(n, part.num)
	if !ok {
		return Fraction{}, ErrOverflow
	}
	return Fraction{n, part.cut}, nil
}

// GCD is the greatest common divisor of the magnitudes of a and b, by Euclid's
// algorithm (Elements VII.2). It is 1 for GCD(0, 0), so that it can always divide,
// and where only 2^63 divides both, which does not fit: 0 and math.MinInt64.
func GCD(a, b int64) int64 {
	x, y := magnitude(a), magnitude(b)
	for y != 0 {
		x, y = y, x%y
	}
	if x == 0 || x > math.MaxInt64 {
		return 1
	}
	return int64(x)
}

// LCM is the least common multiple of a and b, both at least 1.
func LCM(a, b int64) (int64, error) {
	if a < 1 || b < 1 {
		return 0, ErrZeroDenominator
	}
	m, ok := mul(a/GCD(a, b), b)
	if !ok {
		return 0, ErrOverflow
	}
	return m, nil
}
