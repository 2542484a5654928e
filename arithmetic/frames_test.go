package arithmetic

import (
	"fmt"
	"testing"
)

func plusIn(a, b int64) Problem {
	return Problem{Kind: Addition, Left: Operation{Add, Int(a), Int(b)}}
}

// Worked examples: CCSS 1.OA.C.6 makes a ten of 8 + 6, goes through ten in 13 − 4 and
// sees a double in 6 + 7; 1.OA.B.3 makes a ten in 2 + 6 + 4. 14 − 6 is from memory.
func TestFramesGoTheWaysOfTheStandards(t *testing.T) {
	way := func(moves []Move) string {
		text := ""
		for _, m := range moves {
			switch m := m.(type) {
			case FillFrame:
				text += fmt.Sprintf("%d + %d + %d ", m.Large, m.Need, m.Rest)
			case SeeDouble:
				text += fmt.Sprintf("%d + %d + %d ", m.Each, m.Each, m.Extra)
			case TakeCounters:
				text += fmt.Sprintf("%d − %d ", m.From, m.Count)
			case PutCounters:
				if m.Ten > 0 {
					text += fmt.Sprintf("%d and %d ", m.Count, m.Ten)
				}
			}
		}
		return text
	}
	chain := Problem{Kind: Expression, Left: Operation{Add, Operation{Add, Int(2), Int(6)}, Int(4)}}
	minus := func(a, b int64) Problem { return Problem{Kind: Subtraction, Left: Operation{Subtract, Int(a), Int(b)}} }
	for _, c := range []struct {
		problem Problem
		work    func(Problem) (Working, error)
		way     string
		answer  int64
	}{
		{plusIn(8, 6), AddInFrames, "8 + 2 + 4 ", 14},
		{plusIn(6, 8), AddInFrames, "8 + 2 + 4 ", 14},
		{plusIn(6, 7), AddInFrames, "6 + 6 + 1 ", 13},
		{minus(13, 4), TakeInFrames, "13 − 3 10 − 1 ", 9},
		{minus(14, 6), TakeInFrames, "14 − 4 10 − 2 ", 8},
		{chain, ChainInFrames, "6 and 4 ", 12},
	} {
		w, err := c.work(c.problem)
		if got, _ := w.Answer.Number.Int64(); err != nil || got != c.answer || way(w.Moves) != c.way {
			t.Errorf("%s: %d by %q, %v; want %d by %q", c.problem, got, way(w.Moves), err, c.answer, c.way)
		}
	}
}

// Whatever the two numbers: the moves put in and take out as many as they say, in
// cells that are free, and the counters that lie there in the end are the answer.
func TestCountersInFramesAddUp(t *testing.T) {
	for a := int64(0); a <= 22; a++ {
		for b := int64(0); b <= 22; b++ {
			w, err := AddInFrames(plusIn(a, b))
			playFrames(t, w, err, a+b, a+b <= 20)
			w, err = TakeInFrames(Problem{Kind: Subtraction, Left: Operation{Subtract, Int(a), Int(b)}})
			playFrames(t, w, err, a-b, a <= 20 && b <= a)
			blank := Operation{Add, Int(a), Unknown{}}
			w, err = FillInFrames(Problem{Kind: Missing, Rel: Equal, Left: blank, Right: Int(b)})
			if playFrames(t, w, err, b, b <= 20 && a <= b); err == nil && w.Answer.Number != Int(b-a) {
				t.Errorf("%d + ? = %d is given %s", a, b, w.Answer.Number)
			}
			for c := int64(0); c <= 4; c++ {
				w, err = ChainInFrames(Problem{Kind: Expression, Left: Operation{Add, Operation{Add, Int(a), Int(b)}, Int(c)}})
				playFrames(t, w, err, a+b+c, a+b+c <= 20)
			}
		}
	}
}

// playFrames plays the moves of a working on cells.
func playFrames(t *testing.T, w Working, err error, lie int64, fits bool) {
	t.Helper()
	if (err == nil) != fits {
		t.Errorf("%s: %v", w.Problem, err)
	}
	if err != nil {
		return
	}
	var cells [60]bool
	flip := func(from, count int64, to bool) {
		for i := range count {
			if cells[from+i] == to {
				t.Errorf("%s: cell %d is in that state already", w.Problem, from+i)
			}
			cells[from+i] = to
		}
	}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case PutCounters:
			flip(m.Cell, m.Count, true)
		case FillFrame:
			flip(m.From, m.Need, false)
			flip(m.To, m.Need, true)
		case TakeCounters:
			flip(m.Left, m.Count, false)
		}
	}
	n := int64(0)
	for _, full := range cells {
		if full {
			n++
		}
	}
	if n != lie {
		t.Errorf("%s: %d counters lie there in the end", w.Problem, n)
	}
}

func TestNumbersAndPairsInFrames(t *testing.T) {
	for n := int64(0); n <= 42; n++ {
		w, err := ShowInFrames(Problem{Kind: Show, Left: Int(n)})
		playFrames(t, w, err, n, n <= 40)
		p, err := PairInFrames(Problem{Kind: Parity, Left: Int(n)})
		playFrames(t, p, err, n, n <= 40)
		if err == nil && p.Answer.Even != (n&1 == 0) {
			t.Errorf("%d is said to be even: %v", n, p.Answer.Even)
		}
	}
	if _, err := ShowInFrames(Problem{Kind: Show, Left: InPlaces(35, 1)}); err == nil {
		t.Error("3.5 lies in frames")
	}
}
