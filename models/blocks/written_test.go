package blocks

import (
	"testing"

	"modeler/arithmetic"
)

func divided(a, b int64) arithmetic.Problem {
	return operation(arithmetic.Division, arithmetic.Divide, a, b)
}

func times(a, b int64) arithmetic.Problem {
	return operation(arithmetic.Product, arithmetic.Multiply, a, b)
}

// The written procedures as schools teach them: division with the quotient over
// the dividend in the US, and on one line with it in much of Europe; multiplication
// and sums of a list in columns, with small digits for what is carried (common
// practice, no source; worked by hand).
func TestBlocksWriteTheProceduresBeside(t *testing.T) {
	for _, tc := range []struct {
		problem arithmetic.Problem
		step    int
		want    string
		europe  string
	}{
		{divided(73, 3), 1, "\n    ───\n3 ) 7 3", "  7 3 ÷ 3 ="},
		{divided(73, 3), 2, "    2\n    ───\n3 ) 7 3\n  − 6\n    ─\n    1", "  7 3 ÷ 3 = 2\n− 6\n  ─\n  1"},
		{divided(73, 3), 5,
			"    2 4 r 1\n    ───\n3 ) 7 3\n  − 6\n    ─\n    1 3\n  − 1 2\n    ───\n      1",
			"  7 3 ÷ 3 = 2 4 r 1\n− 6\n  ─\n  1 3\n− 1 2\n  ───\n    1"},
		{divided(612, 6), 6,
			"    1 0 2\n    ─────\n6 ) 6 1 2\n  − 6\n    ─\n    0 1 2\n    − 1 2\n      ───\n        0",
			"  6 1 2 ÷ 6 = 1 0 2\n− 6\n  ─\n  0 1 2\n  − 1 2\n    ───\n      0"},
		{divided(138, 6), 4, "      2\n    ─────\n6 ) 1 3 8\n  − 1 2\n    ───\n      1", "  1 3 8 ÷ 6 = 2\n− 1 2\n  ───\n    1"},
		{divided(7, 9), 3, "    0 r 7\n    ─\n9 ) 7\n  − 0\n    ─\n    7", "  7 ÷ 9 = 0 r 7\n− 0\n  ─\n  7"},
		{times(3, 47), 3, "    2\n    4 7\n×     3\n───────\n      1\n\n3 × 7 ones = 21 ones", ""},
		{times(3, 47), 6, "    2\n    4 7\n×     3\n───────\n  1 4 1\n\n3 × 7 ones = 21 ones\n3 × 4 tens = 12 tens\n3 × 47 = 120 + 21 = 141", ""},
		{times(5, 60), 5, "    6 0\n×     5\n───────\n  3 0 0\n\n5 × 6 tens = 30 tens\n5 × 60 = 300", ""},
		{list(12, 35, 28), 7, "  1\n  1 2\n  3 5\n+ 2 8\n─────\n  7 5", ""},
	} {
		steps := Model.Tell(tc.problem).Steps
		if tc.step > len(steps) {
			t.Errorf("%s has %d steps, want %d or more", tc.problem, len(steps), tc.step)
			continue
		}
		step := steps[tc.step-1]
		if got := step.Symbols.Text(); got != tc.want {
			t.Errorf("%s, step %d:\n got\n%s\nwant\n%s", tc.problem, tc.step, got, tc.want)
		}
		if got := step.Europe.Text(); got != tc.europe {
			t.Errorf("%s, step %d, Europe:\n got\n%s\nwant\n%s", tc.problem, tc.step, got, tc.europe)
		}
	}
}
