package fraction

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"
)

// rat is the value of f by the standard library.
func rat(f Fraction) *big.Rat { return big.NewRat(f.Num(), f.Den()) }

// anyInt is a random whole number, as often small as close to the largest.
func anyInt(r *rand.Rand) int64 {
	switch r.IntN(4) {
	case 0:
		return r.Int64N(41) - 20
	case 1:
		return math.MaxInt64 - r.Int64N(3)
	case 2:
		return math.MinInt64 + r.Int64N(3)
	}
	return r.Int64()>>r.IntN(63) - r.Int64()>>(1+r.IntN(62))
}

func anyFraction(r *rand.Rand) Fraction {
	den := anyInt(r)
	if den < 0 {
		den = -(den + 1)
	}
	return Must(anyInt(r), max(den, 1))
}

func source() *rand.Rand { return rand.New(rand.NewPCG(3, 4)) }

func TestAFractionStaysAsWritten(t *testing.T) {
	for _, c := range []struct {
		num, den int64
		text     string
		whole    bool
		sign     int
	}{
		{3, 4, "3/4", false, 1}, {6, 8, "6/8", false, 1}, {8, 4, "8/4", true, 1}, {5, 1, "5", true, 1},
		{0, 4, "0/4", true, 0}, {-3, 4, "-3/4", false, -1}, {math.MaxInt64, math.MaxInt64, "9223372036854775807/9223372036854775807", true, 1},
		{math.MinInt64, 2, "-9223372036854775808/2", true, -1},
	} {
		f, err := New(c.num, c.den)
		if err != nil {
			t.Errorf("New(%d, %d): %v", c.num, c.den, err)
		}
		if f.Num() != c.num || f.Den() != c.den || f.String() != c.text || f.IsWhole() != c.whole || f.Sign() != c.sign {
			t.Errorf("New(%d, %d) is %d over %d, %q, whole %v, sign %d", c.num, c.den, f.Num(), f.Den(), f, f.IsWhole(), f.Sign())
		}
	}
	if zero := (Fraction{}); zero != Whole(0) || zero.Den() != 1 {
		t.Errorf("the zero value is %d over %d, want 0 over 1", zero.Num(), zero.Den())
	}
	if Must(3, 4) == Must(6, 8) || !Must(3, 4).Equal(Must(6, 8)) {
		t.Error("3/4 and 6/8 are one amount in two forms")
	}
}

func TestAWholeIsCutInOnePartOrMore(t *testing.T) {
	if _, err := New(3, 0); err != ErrZeroDenominator {
		t.Errorf("New(3, 0): %v", err)
	}
	for _, den := range []int64{-1, -4, math.MinInt64} {
		if _, err := New(3, den); err == nil {
			t.Errorf("New(3, %d) gives no error", den)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("Must(3, 0) does not panic")
		}
	}()
	Must(3, 0)
}

func TestComparing(t *testing.T) {
	for _, c := range []struct {
		f, g   Fraction
		want   int
		source string
	}{
		{Must(2, 5), Must(2, 7), 1, "NF Progression, grade 3 (from memory): same numerator"},
		{Must(5, 8), Must(3, 8), 1, "NF Progression, grade 3 (from memory): same denominator"},
		{Must(7, 8), Must(13, 12), -1, "NF Progression, grade 4 (from memory): benchmark 1"},
		{Must(2, 4), Must(1, 2), 0, "National curriculum in England, Year 2"},
		{Must(4, 4), Whole(1), 0, "CCSS 3.NF.A.3c"},
		{Must(3, 7), Must(1, 2), -1, "CCSS 5.NF.A.2"},
		{Must(20, 100), Must(9, 100), 1, "NBT Progression, grade 4 (from memory)"},
		{Must(-1, 2), Must(-1, 3), -1, "no source"},
		{Must(-1, 2), Whole(0), -1, "no source"},
		{Must(math.MinInt64, math.MaxInt64), Whole(-1), -1, "no source"},
		{Must(math.MaxInt64-1, math.MaxInt64), Must(math.MaxInt64-2, math.MaxInt64-1), 1, "no source"},
	} {
		if got, back := c.f.Cmp(c.g), c.g.Cmp(c.f); got != c.want || back != -c.want {
			t.Errorf("%s against %s is %d, turned round %d, want %d (%s)", c.f, c.g, got, back, c.want, c.source)
		}
	}
}

func TestComparingAgreesWithBigRat(t *testing.T) {
	r := source()
	for range 100_000 {
		f, g := anyFraction(r), anyFraction(r)
		if got, want := f.Cmp(g), rat(f).Cmp(rat(g)); got != want {
			t.Fatalf("%s against %s is %d, want %d", f, g, got, want)
		}
		if f.Equal(g) != (rat(f).Cmp(rat(g)) == 0) {
			t.Fatalf("%s equals %s: %v", f, g, f.Equal(g))
		}
		if f.Sign() != rat(f).Sign() || f.IsWhole() != rat(f).IsInt() {
			t.Fatalf("%s has sign %d, whole %v", f, f.Sign(), f.IsWhole())
		}
	}
}

// holds reports whether v fits in 64 bits; math.MinInt64, the one number that
// has no opposite, is counted as not fitting.
func holds(v *big.Int) bool { return v.IsInt64() && v.Int64() != math.MinInt64 }

func TestWholeNumberStepsNoticeOverflow(t *testing.T) {
	r := source()
	steps := []struct {
		name  string
		step  func(a, b int64) (int64, bool)
		exact func(z, a, b *big.Int) *big.Int
	}{
		{"add", add, (*big.Int).Add}, {"sub", sub, (*big.Int).Sub}, {"mul", mul, (*big.Int).Mul},
	}
	check := func(a, b int64) {
		for _, s := range steps {
			want := s.exact(new(big.Int), big.NewInt(a), big.NewInt(b))
			got, ok := s.step(a, b)
			if ok && want.Cmp(big.NewInt(got)) != 0 || !ok && holds(want) {
				t.Fatalf("%s(%d, %d) = %d, %v, want %s", s.name, a, b, got, ok, want)
			}
		}
	}
	edges := []int64{0, 1, -1, 2, math.MaxInt64, math.MaxInt64 - 1, math.MinInt64, math.MinInt64 + 1, 1 << 31, 1 << 32, -1 << 32, 3037000500}
	for _, a := range edges {
		for _, b := range edges {
			check(a, b)
		}
	}
	for range 100_000 {
		check(anyInt(r), anyInt(r))
	}
}

func TestErrorsAreTold(t *testing.T) {
	large := Must(math.MaxInt64, 2)
	for name, err := range map[string]error{
		"add": second(large.Add(large)), "sub": second(Must(math.MinInt64, 3).Sub(large)), "mul": second(large.Mul(large)),
		"cut finer": second(large.CutFiner(2)), "common unit": second(CommonUnit(Must(1, math.MaxInt64), Must(1, 2))),
		"from mixed": second(FromMixed(math.MaxInt64, Must(1, 2))), "div": second(large.Div(Must(1, 3))),
		"div by the least number": second(large.Div(Whole(math.MinInt64))),
	} {
		if !errors.Is(err, ErrOverflow) {
			t.Errorf("%s: %v, want %v", name, err, ErrOverflow)
		}
	}
	for name, err := range map[string]error{
		"cut finer by 0": second(large.CutFiner(0)), "in 0 parts": second(large.In(0)), "common multiple of 0": second(LCM(0, 3)),
		"common multiple below 0": second(LCM(3, -3)),
	} {
		if !errors.Is(err, ErrZeroDenominator) {
			t.Errorf("%s: %v, want %v", name, err, ErrZeroDenominator)
		}
	}
	if _, err := large.Div(Must(0, 5)); !errors.Is(err, ErrDivideByZero) {
		t.Errorf("div by 0/5: %v, want %v", err, ErrDivideByZero)
	}
}

func second[V any](_ V, err error) error { return err }
