package fraction

import (
	"errors"
	"math"
	"math/big"
	"testing"
)

func TestTheSameAmountInOtherParts(t *testing.T) {
	for _, c := range []struct {
		f      Fraction
		by     int64
		want   Fraction
		source string
	}{
		{Must(2, 3), 4, Must(8, 12), "CCSS 4.NF.A.1, instance of a/b = (n × a)/(n × b)"},
		{Must(4, 3), 5, Must(20, 15), "NF Progression, grade 4 (from memory)"},
		{Must(3, 10), 10, Must(30, 100), "CCSS 4.NF.C.5"},
		{Must(1, 2), 2, Must(2, 4), "CCSS 3.NF.A.3b"},
		{Must(-3, 4), 2, Must(-6, 8), "no source"},
		{Must(0, 4), 3, Must(0, 12), "no source"},
		{Must(3, 4), 1, Must(3, 4), "no source"},
	} {
		finer, err := c.f.CutFiner(c.by)
		if err != nil || finer != c.want {
			t.Errorf("%s cut finer by %d is %s, %v, want %s (%s)", c.f, c.by, finer, err, c.want, c.source)
		}
		back, err := c.want.Merge(c.by)
		if err != nil || back != c.f {
			t.Errorf("%s merged by %d is %s, %v, want %s (%s)", c.want, c.by, back, err, c.f, c.source)
		}
		in, err := c.f.In(c.want.Den())
		if err != nil || in != c.want {
			t.Errorf("%s in parts of which %d make a whole is %s, %v (%s)", c.f, c.want.Den(), in, err, c.source)
		}
	}
}

func TestPartsThatDoNotJoinEvenly(t *testing.T) {
	for _, c := range []struct {
		f Fraction
		n int64
	}{{Must(3, 4), 2}, {Must(2, 5), 2}, {Must(6, 8), 4}, {Must(6, 8), 0}, {Must(6, 8), -2}} {
		if got, err := c.f.Merge(c.n); !errors.Is(err, ErrUneven) {
			t.Errorf("%s merged by %d is %s, %v", c.f, c.n, got, err)
		}
	}
	for _, c := range []struct {
		f   Fraction
		den int64
	}{{Must(1, 3), 8}, {Must(3, 4), 2}, {Must(5, 8), 4}} {
		if got, err := c.f.In(c.den); !errors.Is(err, ErrUneven) {
			t.Errorf("%s in %d parts is %s, %v", c.f, c.den, got, err)
		}
	}
	if got, err := Must(6, 8).In(4); err != nil || got != Must(3, 4) {
		t.Errorf("6/8 in fourths is %s, %v", got, err)
	}
}

func TestMixedNumbers(t *testing.T) {
	for _, c := range []struct {
		f      Fraction
		wholes int64
		part   Fraction
		source string
	}{
		{Must(17, 8), 2, Must(1, 8), "CCSS 4.NF.B.3b"},
		{Must(36, 5), 7, Must(1, 5), "NF Progression, grade 4 (from memory)"},
		{Must(6, 5), 1, Must(1, 5), "National curriculum in England, Year 5"},
		{Must(50, 9), 5, Must(5, 9), "CCSS 5.NF.B.3"},
		{Must(6, 1), 6, Whole(0), "CCSS 3.NF.A.3c"},
		{Must(8, 4), 2, Must(0, 4), "no source"},
		{Must(3, 4), 0, Must(3, 4), "no source"},
		{Must(math.MaxInt64, 2), 4611686018427387903, Must(1, 2), "2^63 - 1 = 2 × (2^62 - 1) + 1"},
	} {
		wholes, part := c.f.Mixed()
		if wholes != c.wholes || part != c.part {
			t.Errorf("%s is %d and %s, want %d and %s (%s)", c.f, wholes, part, c.wholes, c.part, c.source)
		}
		if back, err := FromMixed(c.wholes, c.part); err != nil || back != c.f {
			t.Errorf("%d and %s is %s, %v, want %s", c.wholes, c.part, back, err, c.f)
		}
	}
}

func TestFormsKeepTheAmount(t *testing.T) {
	r := source()
	for range 50_000 {
		f, n := anyFraction(r), anyInt(r)
		s := f.Simplest()
		if want := rat(f); s.Num() != want.Num().Int64() || s.Den() != want.Denom().Int64() {
			t.Fatalf("%s in simplest form is %s, want %s", f, s, want)
		}
		if finer, err := f.CutFiner(n); err == nil {
			back, err := finer.Merge(n)
			if !finer.Equal(f) || finer.Den() != f.Den()*n || err != nil || back != f {
				t.Fatalf("%s cut finer by %d is %s, and merged again %s, %v", f, n, finer, back, err)
			}
		} else if n > 0 && errors.Is(err, ErrOverflow) {
			num := new(big.Int).Mul(big.NewInt(f.Num()), big.NewInt(n))
			den := new(big.Int).Mul(big.NewInt(f.Den()), big.NewInt(n))
			if holds(num) && holds(den) {
				t.Fatalf("%s cut finer by %d: %v", f, n, err)
			}
		}
		if f.Sign() < 0 {
			continue
		}
		wholes, part := f.Mixed()
		whole := new(big.Int).Quo(big.NewInt(f.Num()), big.NewInt(f.Den()))
		if whole.Int64() != wholes || part.Cmp(Whole(1)) >= 0 || part.Den() != f.Den() {
			t.Fatalf("%s is %d and %s", f, wholes, part)
		}
		if back, err := FromMixed(wholes, part); err != nil || back != f {
			t.Fatalf("%d and %s is %s, %v, want %s", wholes, part, back, err, f)
		}
	}
}

func TestDivisorsAndMultiplesAgreeWithBigInt(t *testing.T) {
	r := source()
	for range 50_000 {
		a, b := anyInt(r), anyInt(r)
		want := new(big.Int).GCD(nil, nil, new(big.Int).Abs(big.NewInt(a)), new(big.Int).Abs(big.NewInt(b)))
		if want.Sign() == 0 || !want.IsInt64() {
			want.SetInt64(1)
		}
		if got := GCD(a, b); want.Cmp(big.NewInt(got)) != 0 {
			t.Fatalf("GCD(%d, %d) = %d, want %s", a, b, got, want)
		}
		m, err := LCM(a, b)
		if a < 1 || b < 1 {
			if !errors.Is(err, ErrZeroDenominator) {
				t.Fatalf("LCM(%d, %d): %v", a, b, err)
			}
			continue
		}
		multiple := new(big.Int).Mul(big.NewInt(a), big.NewInt(b))
		multiple.Quo(multiple, want)
		if err == nil && multiple.Cmp(big.NewInt(m)) != 0 || err != nil && holds(multiple) {
			t.Fatalf("LCM(%d, %d) = %d, %v, want %s", a, b, m, err, multiple)
		}
	}
	for _, c := range [][3]int64{{0, 0, 1}, {0, 7, 7}, {math.MinInt64, 0, 1}, {math.MinInt64, 6, 2}, {math.MaxInt64, math.MaxInt64, math.MaxInt64}, {-12, 18, 6}} {
		if got := GCD(c[0], c[1]); got != c[2] {
			t.Errorf("GCD(%d, %d) = %d, want %d", c[0], c[1], got, c[2])
		}
	}
}
