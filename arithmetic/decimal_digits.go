package arithmetic

import "modeler/fraction"

// MostDecimalPlaces is how many digits after the point have a column of their own.
const MostDecimalPlaces = 3

// DecimalDigits is a decimal taken apart in places. The index of its counts is 0 for
// the last digit after the point, whatever that is worth.
type DecimalDigits struct {
	Number Number
	Places int // digits after the point
	Top    int // the index of the first digit, that of the ones or a larger one
	Counts Counts
}

// LayDigit lays out one digit of a decimal.
type LayDigit struct {
	Digits DecimalDigits
	Index  int
	Count  int64
	Worth  Number
	On     Counts // all that is laid out
}

// LayDigits lays a decimal out at once.
type LayDigits struct{ Digits DecimalDigits }

// WriteDigits writes a decimal as the sum of what its digits are worth, without
// zeros.
type WriteDigits struct {
	Digits DecimalDigits
	Parts  []Number
}

// PointAtDigit finds the digit that stands in a place.
type PointAtDigit struct {
	Digits DecimalDigits
	Index  int
	Digit  int64
}

// WorthOfDigit says what that digit is worth: so many times what a one there is.
type WorthOfDigit struct {
	Index       int
	Digit       int64
	Each, Worth Number
}

// SayDecimal says a decimal: its wholes, and then what stands after the point as a
// number of the last place.
type SayDecimal struct {
	Digits        DecimalDigits
	Wholes, After int64
}

func (LayDigit) move()     {}
func (LayDigits) move()    {}
func (WriteDigits) move()  {}
func (PointAtDigit) move() {}
func (WorthOfDigit) move() {}
func (SayDecimal) move()   {}

// index is that of the digit in a place that is worth To, or so many places after
// the point; ok is false where there is none.
func (d DecimalDigits) index(to int64, places int) (index int, ok bool) {
	if places > 0 {
		return d.Places - places, places <= d.Places
	}
	for index = d.Places; index <= d.Top; index++ {
		if Power10(index-d.Places) == to {
			return index, true
		}
	}
	return 0, false
}

// worth is what a digit at an index is worth, written with no more places than it
// needs: 0.3, 0.04.
func (d DecimalDigits) worth(index int, digit int64) Number {
	if after := d.Places - index; after > 0 {
		return InPlaces(digit, after)
	}
	return Int(digit * Power10(index-d.Places))
}

// decimalDigits takes a decimal of at most [MostDecimalPlaces] apart. Its error is
// [ErrPlaces].
func decimalDigits(n Number) (DecimalDigits, error) {
	if n.Form != Decimal || n.Places > MostDecimalPlaces || n.Value.Sign() < 0 {
		return DecimalDigits{}, ErrPlaces
	}
	units, err := n.Value.Mul(fraction.Whole(Power10(n.Places)))
	if err != nil || !units.IsWhole() {
		return DecimalDigits{}, ErrPlaces
	}
	c, err := Places(units.Num() / units.Den())
	return DecimalDigits{n, n.Places, max(c.Top(), n.Places), c}, err
}

// WorkDecimalDigits works what a place-value table says of one decimal: what its
// digits are, what they are worth, how it is said (CCSS 5.NBT.A.1, 5.NBT.A.3a). The
// problem is a Show, an ExpandedForm, a PlaceValue or an InWords. Its error is
// [ErrPlaces].
func WorkDecimalDigits(p Problem) (Working, error) {
	n, _ := p.Left.(Number)
	d, err := decimalDigits(n)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: n}}
	switch p.Kind {
	case PlaceValue:
		index, ok := d.index(p.To, p.Places)
		if !ok {
			return Working{}, ErrPlaces
		}
		worth := WorthOfDigit{index, d.Counts[index], d.worth(index, 1), d.worth(index, d.Counts[index])}
		w.Answer = Answer{Number: worth.Worth, Simplest: worth.Worth}
		w.Moves = []Move{LayDigits{d}, PointAtDigit{d, index, worth.Digit}, worth}
		return w, nil
	case InWords:
		wholes := n.Value.Num() / n.Value.Den()
		w.Moves = []Move{LayDigits{d}, SayDecimal{d, wholes, d.Counts.Total() - wholes*Power10(d.Places)}}
		return w, nil
	}
	var on Counts
	write := WriteDigits{Digits: d}
	for index := d.Top; index >= 0; index-- {
		on[index] = d.Counts[index]
		worth := d.worth(index, on[index])
		w.Moves = append(w.Moves, LayDigit{d, index, on[index], worth, on})
		if on[index] > 0 {
			write.Parts = append(write.Parts, worth)
		}
	}
	if len(write.Parts) == 0 {
		write.Parts = []Number{n}
	}
	if p.Kind == ExpandedForm {
		w.Answer.Order = write.Parts
	}
	w.Moves = append(w.Moves, write)
	return w, nil
}
