package fraction

import (
	"cmp"
	"errors"
	"math"
	"math/bits"
	"slices"
	"strconv"
	"strings"
)

// ErrDivideByZero says that something was to be shared among none.
var ErrDivideByZero = errors.New("fraction: cannot divide by 0")

// Add is f + g counted in their common unit, not simplified: 1/4 + 1/4 is 2/4,
// 1/2 + 1/3 is 5/6.
func (f Fraction) Add(g Fraction) (Fraction, error) { return combine(f, g, add) }

// Sub is f - g counted in their common unit, not simplified. It may be negative.
func (f Fraction) Sub(g Fraction) (Fraction, error) { return combine(f, g, sub) }

func combine(f, g Fraction, op func(a, b int64) (int64, bool)) (Fraction, error) {
	den, err := CommonUnit(f, g)
	if err != nil {
		return Fraction{}, err
	}
	a, ok1 := mul(f.num, den/f.Den())
	b, ok2 := mul(g.num, den/g.Den())
	if !ok1 || !ok2 {
		return Fraction{}, ErrOverflow
	}
	n, ok := op(a, b)
	if !ok {
		return Fraction{}, ErrOverflow
	}
	return New(n, den)
}

// Mul is f × g, parts of parts, not simplified: 2/3 × 3/4 is 6/12.
func (f Fraction) Mul(g Fraction) (Fraction, error) {
	num, ok1 := mul(f.num, g.num)
	den, ok2 := mul(f.Den(), g.Den())
	if !ok1 || !ok2 {
		return Fraction{}, ErrOverflow
	}
	return New(num, den)
}

// Of is the fraction f of an amount, f × amount: 1/3 of 12 is 12/3.
func (f Fraction) Of(amount Fraction) (Fraction, error) { return f.Mul(amount) }

// Div is f ÷ g, not simplified: 1/2 ÷ 3/4 is 4/6.
func (f Fraction) Div(g Fraction) (Fraction, error) {
	if g.num == 0 {
		return Fraction{}, ErrDivideByZero
	}
	turned := Fraction{g.Den(), 0}
	n := g.num
	if n < 0 {
		if n == math.MinInt64 {
			return Fraction{}, ErrOverflow
		}
		turned.num, n = -turned.num, -n
	}
	turned.cut = n - 1
	return f.Mul(turned)
}

// Decimal writes f as a decimal when it ends: 3/8 is 0.375. ok is false when it
// does not end (1/3) or is not written in at most 18 places.
func (f Fraction) Decimal() (text string, ok bool) {
	s := f.Simplest()
	places, den := 0, s.Den()
	for ; den%10 == 0; den /= 10 {
		places++
	}
	for ; den%2 == 0; den /= 2 {
		places++
	}
	for ; den%5 == 0; den /= 5 {
		places++
	}
	if den != 1 || places > 18 {
		return "", false
	}
	scale := int64(1)
	for range places {
		scale *= 10
	}
	n, fits := mul(s.num, scale/s.Den())
	if !fits || n == math.MinInt64 {
		return "", false
	}
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	digits := strconv.FormatInt(n, 10)
	if places == 0 {
		return sign + digits, true
	}
	if len(digits) <= places {
		digits = strings.Repeat("0", places-len(digits)+1) + digits
	}
	at := len(digits) - places
	return sign + digits[:at] + "." + digits[at:], true
}

// Order sorts amounts from least to greatest, keeping equal ones as they came.
func Order(list []Fraction) {
	slices.SortStableFunc(list, func(f, g Fraction) int { return cmp.Compare(f.Cmp(g), 0) })
}

func add(a, b int64) (int64, bool) {
	s := a + b
	return s, (s > a) == (b > 0)
}

func sub(a, b int64) (int64, bool) {
	d := a - b
	return d, (d < a) == (b > 0)
}

func mul(a, b int64) (int64, bool) {
	hi, lo := bits.Mul64(magnitude(a), magnitude(b))
	if hi != 0 || lo > math.MaxInt64 {
		return 0, false
	}
	if (a < 0) != (b < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}
