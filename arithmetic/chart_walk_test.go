package arithmetic

import (
	"errors"
	"math/big"
	"slices"
	"testing"
)

func sumOnChart(op Op, a, b int64) Problem {
	return Problem{Kind: KindOf(op), Left: Operation{Op: op, Left: Int(a), Right: Int(b)}}
}

// Every sum and difference on the chart: the stops follow one another by 10 or by 1,
// and their end is what math/big says.
func TestEveryWalkOnTheChart(t *testing.T) {
	for a := range int64(OnChart + 2) {
		for b := range int64(OnChart + 2) {
			for _, op := range []Op{Add, Subtract} {
				want := new(big.Int).Add(big.NewInt(a), big.NewInt(b))
				if op == Subtract {
					want.Sub(big.NewInt(a), big.NewInt(b))
				}
				on := a <= OnChart && b <= OnChart && want.Sign() >= 0 && want.Cmp(big.NewInt(OnChart)) <= 0 && b > 0
				w, err := WalkOnChart(sumOnChart(op, a, b))
				if (err == nil) != on {
					t.Fatalf("%d %s %d: %v", a, op, b, err)
				}
				if !on {
					continue
				}
				at := a
				for _, m := range w.Moves[1:] {
					walk := m.(WalkChart)
					if walk.From != at {
						t.Fatalf("%d %s %d: a walk from %d begins at %d", a, op, b, at, walk.From)
					}
					for _, stop := range walk.Stops {
						if d := max(stop-at, at-stop); d != walk.Step || (stop < at) != (op == Subtract) {
							t.Fatalf("%d %s %d: from %d to %d", a, op, b, at, stop)
						}
						at = stop
					}
					if walk.To != at {
						t.Fatalf("%d %s %d: %d is not %d", a, op, b, walk.To, at)
					}
				}
				if want.Cmp(big.NewInt(at)) != 0 || !w.Answer.Number.Value.Equal(Int(at).Value) {
					t.Fatalf("%d %s %d ends at %d", a, op, b, at)
				}
			}
		}
	}
}

// CCSS 1.NBT.C.5: 10 more or 10 less without counting is one step.
func TestTenMoreIsOneStep(t *testing.T) {
	for n := int64(1); n <= 90; n++ {
		w, err := WalkOnChart(sumOnChart(Add, n, 10))
		if err != nil || len(w.Moves) != 2 || len(w.Moves[1].(WalkChart).Stops) != 1 {
			t.Errorf("%d + 10: %v, %v", n, w.Moves, err)
		}
	}
}

func TestEdgeOf(t *testing.T) {
	for _, c := range []struct {
		op           Op
		a, b         int64
		from, to     int64
		goesOverEdge bool
	}{
		{Add, 68, 7, 70, 71, true}, {Subtract, 63, 7, 61, 60, true}, {Add, 70, 3, 70, 71, true}, {Subtract, 71, 1, 71, 70, true},
		{Add, 61, 9, 0, 0, false}, {Subtract, 70, 9, 0, 0, false}, {Add, 0, 3, 0, 1, true},
	} {
		w, err := WalkOnChart(sumOnChart(c.op, c.a, c.b))
		if err != nil {
			t.Fatal(err)
		}
		from, to, ok := w.Moves[len(w.Moves)-1].(WalkChart).EdgeOf()
		if from != c.from || to != c.to || ok != c.goesOverEdge {
			t.Errorf("%d %s %d: from %d to %d, %v", c.a, c.op, c.b, from, to, ok)
		}
	}
}

func TestCountOnChart(t *testing.T) {
	for _, c := range []struct {
		run  Run
		ends []int64
		err  error
	}{
		{Run{From: 0, By: 5, Op: Add, Terms: 11}, []int64{0, 5}, nil},      // CCSS 2.NBT.A.2
		{Run{From: 7, By: 10, Op: Add, Terms: 10}, []int64{7}, nil},        // 1.NBT.C.5
		{Run{From: 100, By: 10, Op: Subtract, Terms: 11}, []int64{0}, nil}, // 2.NBT.A.2
		{Run{From: 3, By: 3, Op: Add, Terms: 12}, nil, nil},                // all ten last digits but one
		{Run{From: 10, By: 10, Op: Add, Terms: 11}, nil, ErrOverflow},
	} {
		w, _, err := CountOnChart(Problem{Kind: Counting, Run: c.run})
		if !errors.Is(err, c.err) {
			t.Errorf("%+v: %v, want %v", c.run, err, c.err)
			continue
		}
		if err != nil {
			continue
		}
		see, has := w.Moves[len(w.Moves)-1].(SeeEnds)
		if has != (c.ends != nil) || !slices.Equal(see.Ends, c.ends) {
			t.Errorf("%+v ends in %v, want %v", c.run, see.Ends, c.ends)
		}
	}
}

// A number is prime exactly where math/big says so, and what is crossed out is not.
func TestPrimeBySieve(t *testing.T) {
	for n := int64(1); n <= OnChart; n++ {
		w, err := PrimeBySieve(Problem{Kind: Primality, Left: Int(n)})
		if err != nil {
			t.Fatal(err)
		}
		if want := big.NewInt(n).ProbablyPrime(20); w.Answer.True != want {
			t.Errorf("%d is said to be prime: %v", n, w.Answer.True)
		}
		for _, m := range w.Moves {
			if out, ok := m.(CrossOut); ok {
				for _, x := range out.List {
					if big.NewInt(x).ProbablyPrime(20) || x > n || x%out.Prime != 0 {
						t.Errorf("%d: %d is crossed out by %d", n, x, out.Prime)
					}
				}
			}
		}
	}
	if _, err := PrimeBySieve(Problem{Kind: Primality, Left: Int(101)}); !errors.Is(err, ErrOverflow) {
		t.Errorf("101: %v", err)
	}
}

func TestMeetOnChart(t *testing.T) {
	for _, c := range []struct {
		a, b int64
		at   []int64
		err  error
	}{
		{4, 6, []int64{12, 24, 36}, nil}, {7, 9, []int64{63}, nil}, {5, 5, []int64{5, 10, 15}, nil},
		{8, 12, []int64{24, 48, 72}, nil}, // CCSS 6.NS.B.4 asks for numbers to 12
		{24, 30, nil, ErrOverflow},
	} {
		w, err := MeetOnChart(Problem{Kind: CommonMultiples, Left: Int(c.a), Right: Int(c.b)}, OnChart)
		if !errors.Is(err, c.err) || err == nil && !slices.Equal(w.Moves[3].(Meet).At, c.at) {
			t.Errorf("%d and %d: %v, %v", c.a, c.b, w.Moves, err)
		}
	}
}
