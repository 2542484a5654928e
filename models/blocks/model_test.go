package blocks

import (
	"errors"
	"math/rand/v2"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

func operation(kind arithmetic.Kind, op arithmetic.Op, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}}
}

func plus(a, b int64) arithmetic.Problem {
	return operation(arithmetic.Addition, arithmetic.Add, a, b)
}

func minus(a, b int64) arithmetic.Problem {
	return operation(arithmetic.Subtraction, arithmetic.Subtract, a, b)
}

func pair(kind arithmetic.Kind, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Int(a), Right: arithmetic.Int(b), Rel: arithmetic.Less}
}

// list is a sum of numbers without brackets.
func list(numbers ...int64) arithmetic.Problem {
	var sum arithmetic.Expr = arithmetic.Int(numbers[0])
	for _, n := range numbers[1:] {
		sum = arithmetic.Operation{Op: arithmetic.Add, Left: sum, Right: arithmetic.Int(n)}
	}
	return arithmetic.Problem{Kind: arithmetic.Expression, Left: sum}
}

func TestBlocksRefuseWithAReason(t *testing.T) {
	tenth := arithmetic.InPlaces(5, 1)
	sum := arithmetic.Operation{Op: arithmetic.Add, Left: arithmetic.Int(1), Right: arithmetic.Int(2)}
	for _, tc := range []struct {
		problem arithmetic.Problem
		want    error
	}{
		{arithmetic.Problem{Kind: arithmetic.Show, Left: arithmetic.Int(9_999)}, nil},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: arithmetic.Int(0)}, nil},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: arithmetic.Int(10_000)}, words.BlocksLarge},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: tenth}, words.BlocksWhole},
		{plus(9_998, 1), nil},
		{plus(9_999, 1), words.BlocksSum},
		{plus(1, 10_000), words.BlocksLarge},
		{minus(5, 5), nil},
		{minus(5, 6), words.BlocksNegative},
		{minus(-5, -6), words.BlocksWhole},
		{pair(arithmetic.Comparison, 0, 9_999), nil},
		{pair(arithmetic.Claim, 1, 1<<62), words.BlocksLarge},
		{arithmetic.Problem{Kind: arithmetic.Claim, Left: sum, Right: arithmetic.Int(3), Rel: arithmetic.Equal}, words.BlocksKind},
		{arithmetic.Problem{Kind: arithmetic.Factors, Left: arithmetic.Int(12)}, words.BlocksKind},
		{operation(arithmetic.Product, arithmetic.Multiply, 3, 4), nil},
		{operation(arithmetic.Product, arithmetic.Multiply, 24, 9), nil},
		{operation(arithmetic.Product, arithmetic.Multiply, 12, 13), words.BlocksFactors},
		{operation(arithmetic.Product, arithmetic.Multiply, 0, 9), words.BlocksNothing},
		{operation(arithmetic.Product, arithmetic.Multiply, 2, 5_000), words.BlocksProduct},
		{operation(arithmetic.Product, arithmetic.Multiply, 9, 999), words.BlocksNoRoom},
		{operation(arithmetic.Division, arithmetic.Divide, 9_999, 9), nil},
		{operation(arithmetic.Division, arithmetic.Divide, 7, 9), nil},
		{operation(arithmetic.Division, arithmetic.Divide, 0, 4), nil},
		{operation(arithmetic.Division, arithmetic.Divide, 96, 12), words.BlocksShares},
		{operation(arithmetic.Division, arithmetic.Divide, 8_999, 9), words.BlocksNoRoom},
		{arithmetic.Problem{Kind: arithmetic.Division, Grouping: true, Left: arithmetic.Operation{Op: arithmetic.Divide, Left: arithmetic.Int(12), Right: arithmetic.Int(3)}}, words.BlocksGroups},
		{arithmetic.Problem{Kind: arithmetic.Division, Rest: arithmetic.AsPart, Left: arithmetic.Operation{Op: arithmetic.Divide, Left: arithmetic.Int(13), Right: arithmetic.Int(3)}}, words.BlocksNoRest},
		{list(12, 35, 28), nil},
		{list(1, 2, 3, 4, 5), words.BlocksAddends},
		{list(5_000, 4_000, 1_000), words.BlocksSum},
	} {
		if got := Model.Fits(tc.problem); !errors.Is(got, tc.want) {
			t.Errorf("%s: %v, want %v", tc.problem, got, tc.want)
		}
	}
}

func TestBlocksWriteEveryTradeInColumns(t *testing.T) {
	// The written procedures as US textbooks print them: small digits above,
	// what is traded struck (common practice, no source).
	for _, tc := range []struct {
		problem arithmetic.Problem
		step    int
		want    string
	}{
		{minus(402, 178), 1, "  4 0 2\n− 1 7 8\n───────\n"},
		{minus(402, 178), 2, "  3 10\n  4̸  0̸ 2\n− 1  7 8\n────────\n"},
		{minus(402, 178), 3, "     9\n  3 1̸0̸ 12\n  4̸  0̸  2̸\n− 1  7  8\n─────────\n"},
		{minus(402, 178), 7, "     9\n  3 1̸0̸ 12\n  4̸  0̸  2̸\n− 1  7  8\n─────────\n  2  2  4"},
		{minus(14, 6), 4, "  0 14\n  1̸  4̸\n−    6\n──────\n     8"},
		{minus(402, 398), 7, "     9\n  3 1̸0̸ 12\n  4̸  0̸  2̸\n− 3  9  8\n─────────\n        4"},
		{plus(345, 278), 4, "    1\n  3 4 5\n+ 2 7 8\n───────\n      3"},
		{plus(345, 278), 8, "  1 1\n  3 4 5\n+ 2 7 8\n───────\n  6 2 3"},
		{plus(8, 7), 5, "    8\n+   7\n─────\n  1 5"},
		{pair(arithmetic.Claim, 347, 374), 4, "3 4 7\n3 7 4"},
		{pair(arithmetic.Claim, 347, 374), 5, "347 < 374"},
	} {
		steps := Model.Tell(tc.problem).Steps
		if tc.step > len(steps) {
			t.Errorf("%s has %d steps, want %d or more", tc.problem, len(steps), tc.step)
			continue
		}
		if got := steps[tc.step-1].Symbols.Text(); got != tc.want {
			t.Errorf("%s, step %d:\n got\n%s\nwant\n%s", tc.problem, tc.step, got, tc.want)
		}
	}
}

func TestBlocksNameThePiecesThatAreNeededAtOnce(t *testing.T) {
	// Counted by hand on a table.
	for _, tc := range []struct {
		problem arithmetic.Problem
		want    []telling.Piece
	}{
		{minus(402, 178), []telling.Piece{{Name: "hundreds", Count: 4}, {Name: "tens", Count: 10}, {Name: "ones", Count: 12}}},
		{plus(345, 278), []telling.Piece{{Name: "hundreds", Count: 6}, {Name: "tens", Count: 12}, {Name: "ones", Count: 13}}},
		{pair(arithmetic.Comparison, 98, 102), []telling.Piece{{Name: "hundred", Count: 1}, {Name: "tens", Count: 9}, {Name: "ones", Count: 10}}},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: arithmetic.Int(1_001)}, []telling.Piece{{Name: "thousand", Count: 1}, {Name: "one", Count: 1}}},
		{plus(0, 0), nil},
	} {
		got := Model.Tell(tc.problem).Pieces
		same := len(got) == len(tc.want)
		for i := range got {
			same = same && got[i] == tc.want[i]
		}
		if !same {
			t.Errorf("%s needs %v, want %v", tc.problem, got, tc.want)
		}
	}
}

// worth adds up what belongs to a number in one version of a picture.
func worth(s *scene.Scene, of scene.Of, hidden bool) int64 {
	sum := int64(0)
	for _, it := range s.View(hidden).Items {
		if it.Of == of {
			sum += it.Worth.Num()
		}
	}
	return sum
}

// Until something is taken away, a trade changes the pieces and not the number.
func TestNoTradeChangesTheNumber(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 300 {
		a := r.Int64N(largest + 1)
		b := r.Int64N(a + 1)
		p := minus(a, b)
		w := mustWork(arithmetic.SubtractByPlace(p))
		for i, step := range Model.Tell(p).Steps {
			if _, taken := w.Moves[i].(arithmetic.TakePlace); taken {
				break
			}
			if got := worth(step.Scene, scene.OfFirst, false); got != a {
				t.Errorf("%s, step %d: %d lies on the mat", p, i+1, got)
			}
		}
	}
}

// Whatever fits has room: the fullest mats, and random ones. The size of a one
// is that of layMat, at least leastCell.
func TestEveryNumberHasRoomOnTheMat(t *testing.T) {
	problems := []arithmetic.Problem{
		plus(4_999, 4_999), plus(999, 9_000), plus(8_999, 999), minus(9_888, 1_999), minus(9_999, 9_999),
		pair(arithmetic.Comparison, 9_999, 9_999), pair(arithmetic.Comparison, 9_999, 0), plus(0, 0), minus(1_000, 1),
	}
	r := rand.New(rand.NewPCG(5, 6))
	for range 150 {
		a, b := r.Int64N(5_000), r.Int64N(5_000)
		problems = append(problems, plus(a, b), minus(max(a, b), min(a, b)), pair(arithmetic.Claim, 2*a, 2*b))
	}
	for _, p := range problems {
		if err := Model.Fits(p); err != nil {
			t.Fatalf("%s: %v", p, err)
		}
		told := Model.Tell(p)
		for i, step := range told.Steps {
			if s := step.Scene; s.W != scene.PaperW || s.H < 100 || s.H > 800 {
				t.Errorf("%s, step %d is %d × %d", p, i+1, s.W, s.H)
			}
		}
		for _, it := range told.Whole.Items {
			if g, ok := it.Shape.(scene.Grid); ok && min(g.W/g.Cols, g.H/g.Rows) < leastCell {
				t.Errorf("%s: a one is %d units wide", p, g.W/g.Cols)
			}
		}
	}
}

func TestTheAnswerStaysHidden(t *testing.T) {
	for _, p := range []arithmetic.Problem{minus(402, 178), plus(345, 278), pair(arithmetic.Claim, 347, 374), minus(14, 6)} {
		told := Model.Tell(p)
		last := told.Steps[len(told.Steps)-1].Scene
		for name, s := range map[string]*scene.Scene{"the whole": told.Whole, "the last step": last} {
			a, _, _ := p.Operands()
			first, _ := a.Int64()
			if got := worth(s, scene.OfFirst, true); got != first {
				t.Errorf("%s, %s: %d lies there with the answer hidden, want %d", p, name, got, first)
			}
			if got := worth(s, scene.OfAnswer, true); got != 0 {
				t.Errorf("%s, %s: %d of the answer is drawn with the answer hidden", p, name, got)
			}
		}
	}
}

// With the answer hidden, what is to be taken away stands under the trays and
// nothing else: a digit above it would invite taking it from a place that has
// less, which is the commonest wrong answer (the smaller digit from the larger:
// Brown and Burton 1978, from memory).
func TestHiddenSubtractionsAreNotPosedInColumns(t *testing.T) {
	for _, p := range []arithmetic.Problem{minus(402, 178), minus(1_000, 1), minus(9_000, 4_567)} {
		told := Model.Tell(p)
		for _, s := range []*scene.Scene{told.Whole, told.Steps[len(told.Steps)-1].Scene} {
			for _, text := range said(s, true) {
				if strings.Trim(text, "0123456789?") == "" {
					t.Errorf("%s: %q stands there by itself", p, text)
				}
			}
		}
	}
}

func TestHiddenTitlesAskTheProblem(t *testing.T) {
	for _, tc := range []struct {
		problem arithmetic.Problem
		want    string
	}{
		{minus(402, 178), "402 − 178 = ?"},
		{plus(345, 278), "345 + 278 = ?"},
		{pair(arithmetic.Claim, 347, 374), "347 < 374?"},
		{pair(arithmetic.Comparison, 1_204, 1_240), "1,204 ? 1,240"},
	} {
		if got := Model.Tell(tc.problem).Whole.Title.Hidden; got != tc.want {
			t.Errorf("the title is %q, want %q", got, tc.want)
		}
	}
}
