package arithmetic

import (
	"errors"
	"math"
	"testing"

	"modeler/fraction"
)

func TestNumbersAreWrittenInTheirForm(t *testing.T) {
	money := func(n int64, places int) Number {
		m := InPlaces(n, places)
		m.Form = Money
		return m
	}
	for _, c := range []struct {
		number Number
		want   string
	}{
		{Number{}, "0"},
		{Int(7), "7"}, {Int(402), "402"}, {Int(1204), "1,204"}, {Int(9_999_999), "9,999,999"}, {Int(1000), "1,000"}, {Int(999), "999"},
		{Int(-1204), "−1,204"}, {Int(math.MinInt64), "−9,223,372,036,854,775,808"},
		{Frac(fraction.Must(6, 8)), "6/8"}, {Frac(fraction.Must(6, 1)), "6/1"}, {Frac(fraction.Must(8, 4)), "8/4"}, {Frac(fraction.Must(0, 3)), "0/3"},
		{AsMixed(fraction.Must(7, 4)), "1 3/4"}, {AsMixed(fraction.Must(8, 4)), "2"}, {AsMixed(fraction.Must(3, 4)), "3/4"},
		{AsMixed(fraction.Must(10_001, 4)), "2,500 1/4"}, {AsMixed(fraction.Must(0, 4)), "0"},
		{InPlaces(30, 2), "0.30"}, {InPlaces(3, 1), "0.3"}, {InPlaces(347392, 3), "347.392"}, {InPlaces(120450, 2), "1,204.50"},
		{InPlaces(5, 0), "5"}, {InPlaces(0, 2), "0.00"}, {InPlaces(-5, 1), "−0.5"}, {InPlaces(1, 18), "0.000000000000000001"},
		{money(500, 2), "$5.00"}, {money(5, 0), "$5"}, {money(327, 2), "$3.27"}, {money(120450, 2), "$1,204.50"}, {money(-327, 2), "−$3.27"},
	} {
		if got := c.number.String(); got != c.want {
			t.Errorf("%+v is written %q, want %q", c.number, got, c.want)
		}
	}
}

func TestParseDecimalKeepsThePlaces(t *testing.T) {
	for _, c := range []struct {
		text   string
		num    int64
		den    int64
		places int
		form   Form
	}{
		{"0", 0, 1, 0, Whole}, {"402", 402, 1, 0, Whole}, {"007", 7, 1, 0, Whole}, {"1204.50", 120450, 100, 2, Decimal},
		{"0.30", 30, 100, 2, Decimal}, {"0.3", 3, 10, 1, Decimal}, {".5", 5, 10, 1, Decimal}, {"0.000001", 1, 1_000_000, 6, Decimal},
		{"9223372036854775807", math.MaxInt64, 1, 0, Whole}, {"0.000000000000000001", 1, 1_000_000_000_000_000_000, 18, Decimal},
	} {
		got, err := ParseDecimal(c.text)
		want := Number{Value: fraction.Must(c.num, c.den), Form: c.form, Places: c.places}
		if err != nil || got != want {
			t.Errorf("ParseDecimal(%q) = %+v, %v, want %+v", c.text, got, err, want)
		}
	}
	for _, c := range []struct {
		text string
		want error
	}{
		{"", ErrNotDecimal}, {".", ErrNotDecimal}, {"1.2.3", ErrNotDecimal}, {"-5", ErrNotDecimal}, {"+5", ErrNotDecimal}, {"1e5", ErrNotDecimal},
		{"1,204", ErrNotDecimal}, {" 5", ErrNotDecimal}, {"٣", ErrNotDecimal}, {"NaN", ErrNotDecimal},
		{"9223372036854775808", ErrOverflow}, {"0.0000000000000000001", ErrOverflow}, {"10.000000000000000000", ErrOverflow},
	} {
		if got, err := ParseDecimal(c.text); !errors.Is(err, c.want) {
			t.Errorf("ParseDecimal(%q) = %+v, %v, want %v", c.text, got, err, c.want)
		}
	}
}

func TestWholeNumbersAreFoundInAnyForm(t *testing.T) {
	for _, c := range []struct {
		number Number
		v      int64
		whole  bool
	}{
		{Int(402), 402, true}, {Frac(fraction.Must(8, 4)), 2, true}, {InPlaces(500, 2), 5, true}, {Frac(fraction.Must(7, 4)), 1, false}, {InPlaces(5, 1), 0, false},
	} {
		if v, whole := c.number.Int64(); v != c.v || whole != c.whole {
			t.Errorf("%s is the whole number %d, %v, want %d, %v", c.number, v, whole, c.v, c.whole)
		}
	}
}
