package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// arraysOf are all arrays of a number that are as wide as they are high or wider.
func arraysOf(n int64) (list [][2]int64) {
	for rows := int64(1); rows*rows <= n; rows++ {
		if n%rows == 0 {
			list = append(list, [2]int64{rows, n / rows})
		}
	}
	return list
}

// readSet reads the arrays of one number in its paint: one for each pair, with
// the pair under it.
func (s sight) readSet(role scene.Role, n int64) (faces []measure.Face, err error) {
	want := arraysOf(n)
	for _, f := range s.Faces() {
		if f.Filled() && f.Fill == s.paint[role][0] {
			faces = append(faces, f)
		}
	}
	if len(faces) != len(want) {
		return nil, fmt.Errorf("%d arrays for the %d of %d", len(faces), len(want), n)
	}
	for i, f := range faces {
		if !s.unscaled() && (int64(f.Rows()) != want[i][0] || int64(f.Cols()) != want[i][1]) {
			return nil, fmt.Errorf("an array of %d × %d for %d × %d", f.Rows(), f.Cols(), want[i][0], want[i][1])
		}
		if !s.under(f, want[i]) {
			return nil, fmt.Errorf("%d × %d is not written under its array", want[i][0], want[i][1])
		}
	}
	return faces, nil
}

// under reports whether a pair of factors is written under an array.
func (s sight) under(f measure.Face, pair [2]int64) bool {
	for _, line := range s.Lines() {
		for i := range max(0, len(line)-2) {
			a, okA := line[i].Value()
			b, okB := line[i+2].Value()
			middle := line[i+1]
			if okA && okB && middle.Text == "by" && a.Cmp(whole(pair[0])) == 0 && b.Cmp(whole(pair[1])) == 0 &&
				middle.Y > f.Bottom() && middle.Y < f.Bottom()+50 && middle.X > f.X-60 && middle.X < f.Right()+60 {
				return true
			}
		}
	}
	return false
}

// marked are the sides with a bar along them, by the arrays of both numbers.
func (s sight) marked(faces []measure.Face, n int64) (sides []int64, err error) {
	pairs := arraysOf(n)
	for i, f := range faces {
		for _, r := range s.Rects {
			if r.Fill != s.paint[scene.Result][1] {
				continue
			}
			switch {
			case r.Right() == f.X && r.Y == f.Y && r.H == f.H:
				sides = append(sides, pairs[i][0])
			case r.Bottom() == f.Y && r.X == f.X && r.W == f.W:
				sides = append(sides, pairs[i][1])
			}
		}
	}
	slices.Sort(sides)
	return slices.Compact(sides), nil
}

// readCommon: the arrays of both numbers, and a bar along the sides that both have.
func readCommon(s sight, t problems.Truth) error {
	common := commonOf(t)
	if err := s.readMarked(t, common); err != nil {
		return err
	}
	for i, n := range common {
		if want := arithmetic.Grouped(n); !slices.ContainsFunc(s.Texts, func(text measure.Text) bool {
			list := strings.Split(text.Words, ", ")
			return len(list) == len(common) && list[i] == want
		}) {
			return fmt.Errorf("%d is not in the list at the foot", n)
		}
	}
	return nil
}

func commonOf(t problems.Truth) (list []int64) {
	a, b := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
	for d := int64(1); d <= min(a, b); d++ {
		if a%d == 0 && b%d == 0 {
			list = append(list, d)
		}
	}
	return list
}

// readMarked: both sets are there, and the sides that are marked are those given.
func (s sight) readMarked(t problems.Truth, want []int64) error {
	for i, role := range []scene.Role{scene.First, scene.Second} {
		n := t.Numbers[i].Num().Int64()
		faces, err := s.readSet(role, n)
		if err != nil {
			return err
		}
		sides, err := s.marked(faces, n)
		if err != nil {
			return err
		}
		if !slices.Equal(sides, want) {
			return fmt.Errorf("the sides %v of %d are marked, not %v", sides, n, want)
		}
	}
	return nil
}

// stepsOfCommon: the first set, both, the sides they share and the greatest.
func stepsOfCommon(steps []sight, t problems.Truth) error {
	common := commonOf(t)
	if len(steps) != 4 {
		return fmt.Errorf("%d steps", len(steps))
	}
	if _, err := steps[0].readSet(scene.First, t.Numbers[0].Num().Int64()); err != nil {
		return fmt.Errorf("step 1: %w", err)
	}
	for i, want := range [][]int64{nil, common, common[len(common)-1:]} {
		if err := steps[i+1].readMarked(t, want); err != nil {
			return fmt.Errorf("step %d: %w", i+2, err)
		}
	}
	return nil
}

// readPrime: all arrays of the number, and what is said of it.
func readPrime(s sight, t problems.Truth) error {
	if err := s.readVerdict(t); err != nil {
		return err
	}
	if s.unscaled() {
		return s.readPairNames(pairsOf(t), true)
	}
	for _, f := range s.pieces() {
		if n := t.Numbers[0].Num().Int64(); !s.is(f.Paint, scene.First) || int64(f.Cells()) != n {
			return fmt.Errorf("an array of %d squares for %d", f.Cells(), n)
		}
	}
	return s.readPairs(pairsOf(t))
}

// pairsOf adds every pair of factors to what is true, both turns.
func pairsOf(t problems.Truth) problems.Truth {
	t.Pairs = nil
	n := t.Numbers[0].Num().Int64()
	for rows := int64(1); rows <= n; rows++ {
		if n%rows == 0 {
			t.Pairs = append(t.Pairs, [2]int64{rows, n / rows})
		}
	}
	return t
}

func (s sight) readVerdict(t problems.Truth) error {
	n := t.Numbers[0].Num()
	want := arithmetic.Grouped(n.Int64()) + " is not prime"
	if n.ProbablyPrime(0) { // exact below 2^64
		want = arithmetic.Grouped(n.Int64()) + " is prime"
	}
	if !slices.ContainsFunc(s.Texts, func(text measure.Text) bool {
		said, _, _ := strings.Cut(text.Words, ":")
		return said == want
	}) {
		return errors.New("it does not say that " + want)
	}
	return nil
}

// stepsOfPrime: one array after another, the verdict last.
func stepsOfPrime(steps []sight, t problems.Truth) error {
	t = pairsOf(t)
	for i, s := range steps {
		if err := s.readPairsSoFar(t); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return steps[len(steps)-1].readVerdict(t)
}

// readFamilyArray: the array of the two factors.
func readFamilyArray(s sight, t problems.Truth) error {
	product := new(big.Rat).Mul(t.Numbers[0], t.Numbers[1])
	h := s.heap()
	if !h.ones {
		return errors.New("the things in the array cannot be counted")
	}
	if err := agree("the things in the array", whole(h.there), product); err != nil {
		return err
	}
	over, beside := false, false
	for _, m := range s.bare() {
		over = over || m.Value.Cmp(t.Numbers[1]) == 0
		beside = beside || m.Value.Cmp(t.Numbers[0]) == 0
	}
	if !over || !beside {
		return errors.New("the sides of the array are not named")
	}
	rows, cols := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
	if len(s.Circles) == 0 {
		return nil // squared paper, which was counted
	}
	if c, r, full := measure.Lattice(s.Circles); !full || int64(r) != rows || int64(c) != cols {
		return fmt.Errorf("%d rows and %d columns for %d rows of %d", r, c, rows, cols)
	}
	return s.overAndBeside(s.Circles, rows, cols)
}

// readFamily: the array and all facts about it.
func readFamily(s sight, t problems.Truth) error {
	if err := readFamilyArray(s, t); err != nil {
		return err
	}
	a, b := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
	facts := map[string]bool{}
	for _, f := range [][3]any{{a, "×", b}, {b, "×", a}} {
		facts[fmt.Sprintf("%v %v %v = %v", arithmetic.Grouped(f[0].(int64)), f[1], arithmetic.Grouped(f[2].(int64)), arithmetic.Grouped(a*b))] = true
	}
	for _, by := range []int64{a, b} {
		facts[arithmetic.Grouped(a*b)+" ÷ "+arithmetic.Grouped(by)+" = "+arithmetic.Grouped(a*b/by)] = true
	}
	seen := 0
	for _, st := range s.Statements() {
		if !facts[st.String()] {
			return fmt.Errorf("%q is no fact of the family", st)
		}
		seen++
	}
	if seen != len(facts) {
		return fmt.Errorf("%d facts for %d", seen, len(facts))
	}
	return nil
}
