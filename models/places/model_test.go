package places

import (
	"errors"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

func of(kind arithmetic.Kind, op arithmetic.Op, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}}
}

func about(kind arithmetic.Kind, n int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(n)}
}

func beside(kind arithmetic.Kind, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(a), Right: arithmetic.Int(b), Rel: arithmetic.Less}
}

func TestLimitsHaveReasons(t *testing.T) {
	plus := func(a, b int64) arithmetic.Problem { return of(arithmetic.Addition, arithmetic.Add, a, b) }
	minus := func(a, b int64) arithmetic.Problem { return of(arithmetic.Subtraction, arithmetic.Subtract, a, b) }
	times := func(a, b int64) arithmetic.Problem { return of(arithmetic.Product, arithmetic.Multiply, a, b) }
	by := func(a, b int64) arithmetic.Problem { return of(arithmetic.Division, arithmetic.Divide, a, b) }
	for _, c := range []struct {
		p   arithmetic.Problem
		why error
	}{
		{about(arithmetic.Show, 9_999_999), nil},
		{about(arithmetic.Show, 10_000_000), words.PlacesLarge},
		{plus(9_999_998, 1), nil},
		{plus(9_999_999, 1), words.PlacesSum},
		{minus(5, 6), words.PlacesNegative},
		{minus(6, 6), nil},
		{beside(arithmetic.Claim, 20, 7), words.PlacesSmall},
		{beside(arithmetic.Claim, 21, 7), nil},
		{times(999_999, 10), nil},
		{times(1_000_000, 10), words.PlacesProduct},
		{times(9_999, 9), nil},
		{times(10_000, 9), words.PlacesShiftKind},
		{times(7, 8), words.PlacesShiftKind},
		{by(700, 100), nil},
		{by(705, 10), words.PlacesUneven},
		{by(56, 8), words.PlacesShiftKind},
	} {
		if err := Model.Fits(c.p); !errors.Is(err, c.why) || (err == nil) != (c.why == nil) {
			t.Errorf("%s: %v, want %v", c.p, err, c.why)
		}
	}
}

func TestTurns(t *testing.T) {
	for _, c := range []struct {
		p    arithmetic.Problem
		want int
	}{
		{about(arithmetic.InWords, 5), telling.Leads},
		{about(arithmetic.Show, 9_999), telling.Follows},
		{about(arithmetic.Show, 10_000), telling.Leads},
		{about(arithmetic.Show, 20), telling.Serves},
		{about(arithmetic.ExpandedForm, 60_409), telling.Leads},
		{of(arithmetic.Addition, arithmetic.Add, 402, 100), telling.Follows},
		{of(arithmetic.Addition, arithmetic.Add, 6_000, 5_000), telling.Leads},
		{of(arithmetic.Addition, arithmetic.Add, 8, 9), telling.Serves},
		{beside(arithmetic.Comparison, 12, 40_000), telling.Leads},
		{of(arithmetic.Product, arithmetic.Multiply, 23, 10), telling.Leads},
		{of(arithmetic.Product, arithmetic.Multiply, 3, 10), telling.Follows}, // a fact
		{of(arithmetic.Division, arithmetic.Divide, 30, 10), telling.Follows},
		{of(arithmetic.Product, arithmetic.Multiply, 6, 347), telling.Serves},
	} {
		if got := Model.Turn(c.p); got != c.want {
			t.Errorf("%s: turn %d, want %d", c.p, got, c.want)
		}
	}
}

// Ten counters or fewer lie in one band, so that they are seen as two fives at most.
func TestNoBandHasMoreThanTwoFives(t *testing.T) {
	for _, p := range []arithmetic.Problem{
		of(arithmetic.Addition, arithmetic.Add, 9_999, 9_999), of(arithmetic.Addition, arithmetic.Add, 999_999, 1),
		of(arithmetic.Subtraction, arithmetic.Subtract, 8_888_888, 7_999_999), of(arithmetic.Subtraction, arithmetic.Subtract, 8_000_000, 1),
	} {
		for _, s := range Model.Tell(p).Steps {
			columns := map[int]int{} // counters by column and row of the picture
			for _, it := range s.Scene.View(false).Items {
				if c, ok := it.Shape.(scene.Circle); ok {
					columns[c.X]++
				}
			}
			for x, n := range columns {
				if n > 10 {
					t.Errorf("%s, %s: %d counters stand one under the other at %d", p, s.Title, n, x)
				}
			}
		}
	}
}

// The other writing stands beside every move from the first trade on, and beside
// none where nothing is traded.
func TestEuropeIsWrittenFromTheFirstTradeOn(t *testing.T) {
	for _, c := range []struct{ a, b, from int64 }{{52_304, 17_160, 1}, {52_304, 11_102, 100}} {
		p := of(arithmetic.Subtraction, arithmetic.Subtract, c.a, c.b)
		for i, s := range Model.Tell(p).Steps {
			if has := len(s.Europe.Lines) > 0; has != (int64(i) >= c.from) {
				t.Errorf("%s, step %d: another writing: %v", p, i+1, has)
			}
		}
	}
}
