package arithmetic

import (
	"strings"

	"modeler/fraction"
)

// DecimalOf is a number written as a decimal, with as few places as it needs: 0.375
// for 3/8, 0.62 for 62%. A whole number stays one. Its errors are [ErrEndless] for a
// number such as 1/3, whose decimal does not end, and [ErrOverflow].
func DecimalOf(n Number) (Number, error) {
	if n.Form == Decimal {
		return n, nil
	}
	den := n.Value.Simplest().Den()
	for _, prime := range []int64{2, 5} {
		for den%prime == 0 {
			den /= prime
		}
	}
	if den != 1 {
		return Number{}, ErrEndless
	}
	text, ok := n.Value.Decimal()
	if !ok || strings.HasPrefix(text, "-") {
		return Number{}, ErrOverflow
	}
	return ParseDecimal(text)
}

// PercentOf is a number in hundredths: 75% for 3/4, 12.5% for 1/8, 62% for 0.62. Its
// errors are those of [DecimalOf].
func PercentOf(n Number) (Number, error) {
	times, err := n.Value.Mul(fraction.Whole(100))
	if err != nil {
		return Number{}, ErrOverflow
	}
	d, err := DecimalOf(Frac(times))
	if err != nil {
		return Number{}, err
	}
	return InPercent(d.Value.Num(), d.Places), nil
}
