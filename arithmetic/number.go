// Package arithmetic says what a problem asks, what is true of it, and the moves
// by which it is worked. It has no words and no drawing: models tell the moves.
//
// Every value is exact. A [Working] is the one place where a problem's numbers
// are computed; whatever tells a lesson reads them off its moves.
package arithmetic

import (
	"errors"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"

	"modeler/fraction"
)

// Form is how a number was written.
type Form uint8

const (
	Whole   Form = iota // 1,204
	Common              // 6/8
	Mixed               // 1 1/2
	Decimal             // 0.30
	Money               // $5.00
	Percent             // 62%
)

// Number is an exact value and the form it was written in. The value of a
// decimal has the power of ten that its places say as its denominator, so 0.30
// is 30/100; 62% is 62/100 and 12.5% is 125/1,000. The zero value is the whole
// number 0.
type Number struct {
	Value  fraction.Fraction
	Form   Form
	Places int // of a Decimal, Money or Percent: digits after the point
}

// Int is the whole number n.
func Int(n int64) Number { return Number{Value: fraction.Whole(n)} }

// Frac is f written as a common fraction, also when it is a whole number (6/1).
func Frac(f fraction.Fraction) Number { return Number{Value: f, Form: Common} }

// AsMixed is f written as a mixed number, or as a whole number when it is one.
func AsMixed(f fraction.Fraction) Number {
	wholes, part := f.Mixed()
	switch {
	case part.Num() == 0:
		return Int(wholes)
	case wholes == 0:
		return Frac(f)
	}
	return Number{Value: f, Form: Mixed}
}

// InPlaces is n units of which ten to the power of places make one, written as a
// decimal: InPlaces(30, 2) is 0.30. places is 0 to 18.
func InPlaces(n int64, places int) Number {
	if places == 0 {
		return Int(n)
	}
	return Number{Value: fraction.Must(n, Power10(places)), Form: Decimal, Places: places}
}

// InPercent is n units of which ten to the power of places make one percent:
// InPercent(62, 0) is 62%, InPercent(125, 1) is 12.5%. places is 0 to 16.
func InPercent(n int64, places int) Number {
	return Number{Value: fraction.Must(n, 100*Power10(places)), Form: Percent, Places: places}
}

// Power10 is ten to the power of places, 0 to 18.
func Power10(places int) int64 {
	p := int64(1)
	for range places {
		p *= 10
	}
	return p
}

// Int64 is the number as a whole number; ok is false when it is not one.
func (n Number) Int64() (v int64, ok bool) {
	return n.Value.Num() / n.Value.Den(), n.Value.IsWhole()
}

// String writes the number in its form: 1,204, 6/8, 1 1/2, 0.30, $5.00, 62%.
func (n Number) String() string {
	switch n.Form {
	case Common:
		return strconv.FormatInt(n.Value.Num(), 10) + "/" + strconv.FormatInt(n.Value.Den(), 10)
	case Mixed:
		wholes, part := n.Value.Mixed()
		return Grouped(wholes) + " " + part.String()
	case Decimal, Money, Percent:
		d := decimal.New(n.Value.Num(), -int32(n.Places))
		text := d.Abs().StringFixed(int32(n.Places))
		at := strings.IndexByte(text+".", '.')
		text = group(text[:at]) + text[at:]
		switch n.Form {
		case Money:
			text = "$" + text
		case Percent:
			text += "%"
		}
		if d.IsNegative() {
			text = "−" + text
		}
		return text
	}
	if v, ok := n.Int64(); ok {
		return Grouped(v)
	}
	return n.Value.String()
}

// Grouped writes a whole number with a comma between groups of three digits.
func Grouped(n int64) string {
	if n < 0 {
		return "−" + group(strconv.FormatInt(n, 10)[1:])
	}
	return group(strconv.FormatInt(n, 10))
}

func group(digits string) string {
	for i := len(digits) - 3; i > 0; i -= 3 {
		digits = digits[:i] + "," + digits[i:]
	}
	return digits
}

// ParseDecimal reads a whole or decimal number written with digits and at most
// one point, and keeps its places: 0.30 is 30/100. It takes no sign, no commas
// and no powers of ten, and at most 18 places; a number that does not fit is
// [ErrOverflow].
func ParseDecimal(text string) (Number, error) {
	if strings.Trim(text, "0123456789.") != "" {
		return Number{}, ErrNotDecimal
	}
	d, err := decimal.NewFromString(text)
	if err != nil {
		return Number{}, ErrNotDecimal
	}
	places := int(-d.Exponent())
	if places > 18 || !d.Coefficient().IsInt64() {
		return Number{}, ErrOverflow
	}
	return InPlaces(d.Coefficient().Int64(), places), nil
}

// ErrNotDecimal says that a text is not a decimal number.
var ErrNotDecimal = errors.New("arithmetic: not a decimal number")
