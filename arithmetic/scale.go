package arithmetic

import "modeler/fraction"

// Scale is the unit in which the numbers of a number line are counted, and the
// form in which a count of units is written: cents of a dollar, hundredths,
// fourths, or ones.
type Scale struct {
	Parts  int64 // units in one whole, at least 1
	Form   Form
	Places int // of a Decimal or Money
}

// CommonScale is the largest unit in which every one of the numbers, as written,
// is a whole count. Fractions keep their common denominator (1/2 and 1/3 are
// counted in sixths), decimals the longest of their places. Its error is
// [ErrOverflow].
func CommonScale(numbers ...Number) (Scale, error) {
	s := Scale{Parts: 1}
	var fractions, mixed, money, decimals bool
	for _, n := range numbers {
		parts, err := fraction.LCM(s.Parts, n.Value.Den())
		if err != nil {
			return s, ErrOverflow
		}
		s.Parts = parts
		switch n.Form {
		case Common:
			fractions = true
		case Money:
			money = true
		case Decimal:
			decimals = true
		case Mixed, Whole:
			mixed = true
		}
		s.Places = max(s.Places, n.Places)
	}
	switch {
	case fractions && mixed:
		s.Form = Mixed
	case fractions:
		s.Form = Common
	case money:
		s.Form, s.Places = Money, max(s.Places, 2)
		s.Parts = Power10(s.Places)
	case decimals:
		s.Form, s.Parts = Decimal, Power10(s.Places)
	case s.Parts > 1:
		s.Form = Mixed
	}
	for _, n := range numbers {
		if _, ok := s.count(n.Value); !ok {
			return s, ErrOverflow
		}
	}
	return s, nil
}

func (s Scale) count(f fraction.Fraction) (int64, bool) {
	g, err := f.In(s.Parts)
	return g.Num(), err == nil
}

// Count is how many units the number is. The number must be one that the scale
// was made for, or a sum or difference of such.
func (s Scale) Count(n Number) int64 {
	c, ok := s.count(n.Value)
	if !ok {
		panic("arithmetic: the number is not on the scale")
	}
	return c
}

// Has reports whether the number is a whole count of units.
func (s Scale) Has(n Number) bool {
	_, ok := s.count(n.Value)
	return ok
}

// Write is a count of units as a number in the form of the scale.
func (s Scale) Write(units int64) Number {
	switch s.Form {
	case Decimal:
		return InPlaces(units, s.Places)
	case Money:
		n := InPlaces(units, s.Places)
		n.Form = Money
		return n
	case Common:
		return Frac(fraction.Must(units, s.Parts))
	case Mixed:
		return AsMixed(fraction.Must(units, s.Parts))
	}
	return Int(units)
}

// FinalName is the number as it is finally named: a fraction in its simplest form,
// and as a mixed number when it is more than one whole. Other forms stay.
func FinalName(n Number) Number {
	if n.Form != Common && n.Form != Mixed {
		return n
	}
	return AsMixed(n.Value.Simplest())
}

// WriteShort is [Scale.Write] as a label on the scale of a line: wholes are
// written as whole numbers, and decimals without the zeros they do not need.
func (s Scale) WriteShort(units int64) Number {
	if s.Form == Common && units%s.Parts == 0 {
		return Int(units / s.Parts)
	}
	if s.Form != Decimal {
		return s.Write(units)
	}
	for s.Places > 0 && units%10 == 0 {
		units, s.Places = units/10, s.Places-1
	}
	return InPlaces(units, s.Places)
}
