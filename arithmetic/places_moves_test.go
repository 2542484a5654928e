package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"
)

func of(kind Kind, op Op, a, b int64) Problem {
	return Problem{Kind: kind, Left: Operation{op, Int(a), Int(b)}}
}

// The standard's own example: 700 ÷ 70 = 10 by place value (CCSS 4.NBT.A.1); the
// others are common practice, no source.
func TestShiftingPlaces(t *testing.T) {
	for _, c := range []struct {
		p     Problem
		want  int64
		moves int
		err   error
	}{
		{of(Product, Multiply, 234, 10), 2_340, 1, nil},
		{of(Product, Multiply, 100, 45), 4_500, 2, nil},
		{of(Product, Multiply, 10, 1_000), 10_000, 3, nil},
		{of(Division, Divide, 700, 10), 70, 1, nil},
		{of(Division, Divide, 9_000_000, 1_000), 9_000, 3, nil},
		{of(Division, Divide, 705, 10), 0, 0, ErrUnevenShift},
		{of(Product, Multiply, 10_000, 1_000), 0, 0, ErrPlaces},
		{of(Product, Multiply, 0, 10), 0, 0, ErrNoShift},
		{of(Product, Multiply, 7, 20), 0, 0, ErrNoShift},
		{of(Division, Divide, 10, 5), 0, 0, ErrNoShift},
	} {
		w, err := ShiftByPlace(c.p)
		if !errors.Is(err, c.err) {
			t.Errorf("%s: error %v, want %v", c.p, err, c.err)
			continue
		}
		if v, _ := w.Answer.Number.Int64(); err == nil && (v != c.want || len(w.Moves) != c.moves+2) {
			t.Errorf("%s = %d in %d moves, want %d in %d", c.p, v, len(w.Moves)-2, c.want, c.moves)
		}
	}
}

// Every shift is 10 times or a tenth, in the counts as in the number.
func TestShiftsAreTenTimes(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 5_000 {
		k := 1 + r.IntN(3)
		n := 1 + r.Int64N(9_999_999/Power10(k))
		for _, p := range []Problem{of(Product, Multiply, n, Power10(k)), of(Division, Divide, n*Power10(k), Power10(k))} {
			w, err := ShiftByPlace(p)
			if err != nil {
				t.Fatalf("%s: %v", p, err)
			}
			for _, move := range w.Moves[1 : len(w.Moves)-1] {
				m := move.(ShiftPlaces)
				ten, from, to := big.NewInt(10), big.NewInt(m.Before.Total()), big.NewInt(m.After.Total())
				if m.Right {
					from, to = to, from
				}
				if from.Mul(from, ten).Cmp(to) != 0 || m.Before.Pieces() != m.After.Pieces() {
					t.Fatalf("%s: %v becomes %v", p, m.Before, m.After)
				}
			}
		}
	}
}

// The example of CCSS 4.NBT.A.2 is any number to 1,000,000; the names of periods
// are those of the standard's number names.
func TestSayingPeriods(t *testing.T) {
	for n, want := range map[int64][]int64{0: {0}, 305: {305}, 4_027: {4, 27}, 4_027_305: {4, 27, 305}, 9_000_000: {9, 0, 0}, 1_001: {1, 1}} {
		w, err := SayByPeriods(Problem{Kind: InWords, Left: Int(n)})
		if err != nil || len(w.Moves) != len(want)+2 {
			t.Errorf("%d: %d moves, %v", n, len(w.Moves), err)
			continue
		}
		sum := int64(0)
		for i, number := range want {
			m := w.Moves[i+1].(SayPeriod)
			if m.Number != number || m.Nth != len(want)-1-i {
				t.Errorf("%d: period %d is %d, want %d", n, m.Nth, m.Number, number)
			}
			sum += m.Worth
		}
		if sum != n {
			t.Errorf("the periods of %d come to %d", n, sum)
		}
	}
	if _, err := SayByPeriods(Problem{Kind: InWords, Left: Int(10_000_000)}); !errors.Is(err, ErrPlaces) {
		t.Errorf("10,000,000: %v", err)
	}
}

// A digit in one place is worth ten times what it is worth in the place to its
// right (CCSS 4.NBT.A.1).
func TestADigitBesideTheNextPlace(t *testing.T) {
	for _, c := range []struct{ n, to, worth, beside int64 }{
		{4_327, 10, 20, 2}, {4_327, 1, 7, 70}, {4_327, 1_000, 4_000, 400}, {9_999_999, 1_000_000, 9_000_000, 900_000},
		{4_027, 100, 0, -1}, {7, 1, 7, -1},
	} {
		w, err := WorthBesideNext(Problem{Kind: PlaceValue, Left: Int(c.n), To: c.to})
		if err != nil {
			t.Errorf("%d in %d: %v", c.to, c.n, err)
			continue
		}
		if v, _ := w.Answer.Number.Int64(); v != c.worth {
			t.Errorf("%d in %d: %d, want %d", c.to, c.n, v, c.worth)
		}
		m, has := w.Moves[len(w.Moves)-1].(LookBeside)
		if has != (c.beside >= 0) || has && (m.BesideWorth != c.beside || m.Smaller*m.Ten != m.Larger) {
			t.Errorf("%d in %d: %+v, want %d beside", c.to, c.n, m, c.beside)
		}
	}
}

// Only the place of the power of ten is worked, and those that a trade reaches.
func TestChangingOnePlace(t *testing.T) {
	for _, c := range []struct {
		p     Problem
		want  int64
		moves int // between the laying out and the reading
	}{
		{of(Addition, Add, 3_456, 100), 3_556, 1},
		{of(Addition, Add, 100, 3_456), 3_556, 1},
		{of(Addition, Add, 3_956, 100), 4_056, 3}, // join, trade, join
		{of(Subtraction, Subtract, 3_456, 100), 3_356, 1},
		{of(Subtraction, Subtract, 3_056, 100), 2_956, 2}, // trade, take
		{of(Addition, Add, 1_000_000, 10), 1_000_010, 1},
	} {
		w, err := ChangeOnePlace(c.p)
		laid := 2
		if c.p.Kind == Subtraction {
			laid = 1
		}
		if v, _ := w.Answer.Number.Int64(); err != nil || v != c.want || len(w.Moves)-laid-1 != c.moves {
			t.Errorf("%s = %d in %d moves (%v), want %d in %d", c.p, v, len(w.Moves)-laid-1, err, c.want, c.moves)
		}
	}
	if _, err := ChangeOnePlace(of(Addition, Add, 3_456, 200)); err == nil {
		t.Error("200 more is no change of one place by one")
	}
}
