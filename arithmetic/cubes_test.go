package arithmetic

import "testing"

func problemOf(kind Kind, op Op, a, b int64) Problem {
	return Problem{Kind: kind, Left: Operation{op, Int(a), Int(b)}}
}

// Whatever the numbers: every move of a difference starts where the one before ended,
// and what a sum snaps together stays as many.
func TestCubesAddUp(t *testing.T) {
	for a := int64(0); a <= 102; a++ {
		for b := int64(0); b <= 102; b++ {
			w, err := TakeWithCubes(problemOf(Subtraction, Subtract, a, b))
			if fits := a <= 100 && b <= a && a > 0; (err == nil) != fits {
				t.Fatalf("%d − %d: %v", a, b, err)
			}
			at := a
			for _, m := range w.Moves {
				from, count, left := at, int64(0), at
				switch m := m.(type) {
				case TakeTrains:
					from, count, left = m.From, m.Worth, m.Left
				case TakeCubes:
					from, count, left = m.From, m.Count, m.Left
					if m.Trains*10+m.Stay != left && !(m.Breaks || m.Train == m.Count+m.Stay) || m.Stay+m.Count != m.Train {
						t.Errorf("%d − %d: %d of a train of %d leave %d", a, b, m.Count, m.Train, m.Stay)
					}
				}
				if from != at || left != at-count {
					t.Errorf("%d − %d: %+v after %d", a, b, m, at)
				}
				at = left
			}
			if err == nil && at != a-b {
				t.Errorf("%d − %d ends at %d", a, b, at)
			}
			w, err = AddWithCubes(problemOf(Addition, Add, a, b))
			if fits := a+b <= 100 && a+b > 0; (err == nil) != fits {
				t.Fatalf("%d + %d: %v", a, b, err)
			}
			for _, m := range w.Moves {
				m, ok := m.(SnapOnes)
				if ok && (m.More+m.Less != a+b || m.First+m.Over != m.Sum || m.Sum > 10 || m.Ten != (m.Sum == 10) || m.Over+m.Rest != b%10) {
					t.Errorf("%d + %d: %+v", a, b, m)
				}
			}
		}
	}
}

// CCSS K.CC.C.6 compares two groups of up to 10 by matching; the numbers here are from
// memory of common practice, no source.
func TestCubesCompare(t *testing.T) {
	for _, c := range []struct {
		a, b, short, gap int64
		longer           int
		rel              Relation
	}{
		{7, 12, 7, 5, 1, Less}, {12, 7, 7, 5, 0, Greater}, {9, 9, 9, 0, 0, Equal}, {20, 0, 0, 20, 0, Greater},
	} {
		w, err := MatchWithCubes(Problem{Kind: Comparison, Left: Int(c.a), Right: Int(c.b)})
		if err != nil {
			t.Fatal(err)
		}
		if m := w.Moves[2]; m != (MatchTrains{c.a, c.b, c.short, c.gap, c.longer}) {
			t.Errorf("%d and %d: %+v", c.a, c.b, m)
		}
		if w.Answer.Relation != c.rel || w.Moves[3] != Move(SayTrains{c.a, c.b, c.gap, c.rel}) {
			t.Errorf("%d and %d: %+v, %+v", c.a, c.b, w.Answer, w.Moves[3])
		}
	}
	more := problemOf(Subtraction, Subtract, 5, 9)
	more.Story = HowManyMore
	if _, err := MatchWithCubes(more); err != ErrNegative {
		t.Errorf("how many more is 5 than 9: %v", err)
	}
}

func TestCubesStopWhereTheyAreTooMany(t *testing.T) {
	product := func(a, b int64) error {
		_, err := MultiplyWithCubes(problemOf(Product, Multiply, a, b))
		return err
	}
	show := func(n int64) error {
		_, err := ShowWithCubes(Problem{Kind: Show, Left: Int(n)})
		return err
	}
	pair := func(n int64) error {
		_, err := PairWithCubes(Problem{Kind: Parity, Left: Int(n)})
		return err
	}
	for _, c := range []struct {
		name string
		err  error
		want error
	}{
		{"12 × 8", product(12, 8), nil}, {"10 × 10", product(10, 10), nil}, {"13 × 1", product(13, 1), ErrCubes}, {"11 × 10", product(11, 10), ErrCubes},
		{"1 × 11", product(1, 11), ErrCubes}, {"0 × 3", product(0, 3), ErrNoCubes},
		{"0", show(0), ErrNoCubes}, {"100", show(100), nil}, {"101", show(101), ErrCubes},
		{"pairs of 40", pair(40), nil}, {"pairs of 41", pair(41), ErrCubes}, {"pairs of 0", pair(0), ErrNoCubes},
	} {
		if c.err != c.want {
			t.Errorf("%s: %v, want %v", c.name, c.err, c.want)
		}
	}
}
