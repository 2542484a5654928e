package arithmetic

import "strings"

// PlaceName is the name of a place by what a one in it is worth: ones, tens,
// hundreds, to millions. Any other number is written in digits.
func PlaceName(worth int64) string {
	names := map[int64]string{1: "ones", 10: "tens", 100: "hundreds", 1_000: "thousands", 10_000: "ten thousands", 100_000: "hundred thousands", 1_000_000: "millions"}
	if name, ok := names[worth]; ok {
		return name
	}
	return Grouped(worth)
}

// PlaceName is the name of the place that a PlaceValue or a Rounding asks for: ones,
// hundreds, tenths, thousandths.
func (p Problem) PlaceName() string {
	if p.Places > 0 {
		return DecimalPlace(p.Places)
	}
	return PlaceName(p.To)
}

// DecimalPlace is the name of the place so many digits after the point: tenths for 1,
// to millionths for 6.
func DecimalPlace(places int) string {
	return [...]string{"ones", "tenths", "hundredths", "thousandths", "ten thousandths", "hundred thousandths", "millionths"}[places]
}

// nearest is what a Rounding is to the nearest of: 10, tenth.
func (p Problem) nearest() string {
	if p.Places > 0 {
		return strings.TrimSuffix(DecimalPlace(p.Places), "s")
	}
	return Grouped(p.To)
}
