package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readBars reads every row of bars as a length in wholes: a whole is a heavy
// outline, what is shaded on it counts.
func readBars(s sight, t problems.Truth) error {
	const heavy = "5"
	wholeLen := 0
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == heavy {
			if wholeLen != 0 && wholeLen != r.W {
				return fmt.Errorf("wholes of %d and of %d", wholeLen, r.W)
			}
			wholeLen = r.W
		}
	}
	if wholeLen == 0 {
		return fmt.Errorf("no whole is marked")
	}
	// rows are the lengths of one fill, row by row from the top.
	rows := func(role scene.Role) []*big.Rat {
		at := map[int]int{}
		var ys []int
		for _, r := range s.Rects {
			if r.Filled() && s.is(r.Paint, role) {
				if at[r.Y] == 0 {
					ys = append(ys, r.Y)
				}
				at[r.Y] += r.W
			}
		}
		slices.Sort(ys)
		var sums []*big.Rat
		for _, y := range ys {
			sums = append(sums, big.NewRat(int64(at[y]), int64(wholeLen)))
		}
		return sums
	}
	if err := both(s.tiled(), both(s.readCuts(t), s.readFractionNames(t))); err != nil {
		return err
	}
	first, second := rows(scene.First), rows(scene.Second)
	each := func(what string, found []*big.Rat, want *big.Rat) error {
		if len(found) == 0 && want.Sign() != 0 {
			return fmt.Errorf("%s is not there", what)
		}
		for _, f := range found {
			if err := agree(what, f, want); err != nil {
				return err
			}
		}
		return nil
	}
	switch s.problem.Kind {
	case arithmetic.Addition:
		if err := each("the sum", rows(scene.Result), t.Value); err != nil {
			return err
		}
		fallthrough
	case arithmetic.Claim, arithmetic.Comparison:
		if _, ok := arithmetic.CopiesClaim(s.problem); ok {
			return both(both(each("the left side", first, t.Sides[0]), each("the right side", second, t.Sides[1])), both(s.readGap(t), s.readSideCopies(t)))
		}
		if err := each("the first", first, t.Numbers[0]); err != nil {
			return err
		}
		if s.problem.Kind != arithmetic.Addition && len(t.Numbers) == 3 {
			if err := each("the third", rows(scene.Result), t.Numbers[2]); err != nil {
				return err
			}
		}
		return both(each("the second", second, t.Numbers[1]), s.readGap(t))
	case arithmetic.Subtraction:
		if err := each("what is left", append(first, rows(scene.Result)...), t.Value); err != nil {
			return err
		}
		return each("what is gone", second, t.Numbers[1])
	case arithmetic.Ordering:
		if len(first) != len(t.Sorted) {
			return fmt.Errorf("%d bars for %d numbers", len(first), len(t.Sorted))
		}
		for i, want := range t.Sorted {
			if err := agree("the bars from the top", first[i], want); err != nil {
				return err
			}
		}
		return nil
	case arithmetic.Product:
		return both(each("the copies", second, t.Value), s.readCopies(t))
	case arithmetic.Division:
		if err := each("the number", first, t.Numbers[0]); err != nil {
			return err
		}
		if _, b, _ := s.problem.Operands(); b.Form == arithmetic.Whole {
			return s.readShared(t)
		}
		return s.readMeasured(t)
	case arithmetic.Expression:
		return both(each("the sum", rows(scene.Result), t.Value), s.readChain(t))
	case arithmetic.AsSum:
		if err := each("the number", append(first, rows(scene.Result)...), t.Value); err != nil {
			return err
		}
		return s.readApart(t)
	case arithmetic.Show:
		return each("the number", first, t.Numbers[0])
	case arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming:
		if err := each("the number", first, t.Numbers[0]); err != nil {
			return err
		}
		return each("its other name", rows(scene.Result), t.Numbers[0])
	}
	return errUnread
}

// readGap: the dashed outline between two bars that are compared reaches from the
// end of the shorter one to the end of the longer one.
func (s sight) readGap(t problems.Truth) error {
	if len(t.Numbers) != 2 || !slices.Contains([]arithmetic.Kind{arithmetic.Claim, arithmetic.Comparison}, s.problem.Kind) {
		return nil
	}
	ends := map[int]bool{}
	for _, f := range s.pieces() {
		ends[f.Right()] = true
	}
	if t.Numbers[0].Sign() == 0 || t.Numbers[1].Sign() == 0 {
		for _, f := range s.pieces() {
			ends[f.X] = true // nothing ends where the other bar begins
		}
	}
	for _, r := range s.Rects {
		if !r.Filled() && r.Dash != "" && r.Stroke == s.paint[scene.Result][2] && (!ends[r.X] || !ends[r.Right()]) {
			return fmt.Errorf("the gap reaches from %d to %d, where no bar ends", r.X, r.Right())
		}
	}
	return nil
}

// tiled: in every row the shaded parts lie end to end.
func (s sight) tiled() error {
	rows := map[int][]measure.Box{}
	for _, f := range s.Faces() {
		if f.Filled() && s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			rows[f.Y] = append(rows[f.Y], f.Box)
		}
	}
	for _, row := range rows {
		slices.SortFunc(row, func(a, b measure.Box) int { return a.X - b.X })
		for i := range row[1:] {
			if row[i].Right() != row[i+1].X || row[i].H != row[i+1].H {
				return fmt.Errorf("the parts at %v and %v do not lie end to end", row[i], row[i+1])
			}
		}
	}
	return nil
}
