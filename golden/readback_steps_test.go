package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// stepsOfBars: in every step a row of shaded parts is as long as one of the
// numbers, the answer, or two of the numbers together; and the last step shows
// all that the whole story shows.
func stepsOfBars(steps []sight, t problems.Truth) error {
	var lengths []*big.Rat
	numbers := t.Numbers
	if t.Value != nil {
		lengths = append(lengths, t.Value)
	}
	lengths = append(lengths, t.Sides...)
	sum := new(big.Rat)
	for _, n := range numbers { // of a sum of several, as they are laid
		sum = new(big.Rat).Add(sum, n)
		lengths = append(lengths, sum)
	}
	for i, n := range numbers {
		lengths = append(lengths, n)
		for _, m := range numbers[i+1:] {
			lengths = append(lengths, new(big.Rat).Add(n, m))
		}
	}
	for i, s := range steps {
		rows, err := s.shaded()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		for _, row := range rows {
			if !slices.ContainsFunc(lengths, func(v *big.Rat) bool { return v.Cmp(row) == 0 }) {
				return fmt.Errorf("step %d: a row is %s long", i+1, row.RatString())
			}
		}
		if err := s.tiled(); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return nil
}

// shaded are the rows of shaded parts in wholes, from the top.
func (s sight) shaded() ([]*big.Rat, error) {
	const heavy = "5"
	wholeLen := 0
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == heavy {
			wholeLen = r.W
		}
	}
	if wholeLen == 0 {
		return nil, errors.New("no whole is marked")
	}
	at := map[int]int{}
	for _, r := range s.Rects {
		if r.Filled() && s.is(r.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			at[r.Y] += r.W
		}
	}
	var rows []*big.Rat
	for _, w := range at {
		rows = append(rows, big.NewRat(int64(w), int64(wholeLen)))
	}
	return rows, nil
}

// stepsOfLine: jumps are added one after another, and what is marked in a step is
// marked in the whole story; the last step shows all of it.
func stepsOfLine(steps []sight, t problems.Truth) error {
	jumps := 0
	for i, s := range steps {
		var list []measure.Jump
		for _, j := range s.Jumps() {
			if j.Dash == "" {
				list = append(list, j)
			}
		}
		if joined := s.problem.Kind == arithmetic.Missing && i == len(steps)-1; len(list) < jumps && !joined {
			return fmt.Errorf("step %d: a jump is gone", i+1)
		}
		jumps = len(list)
	}
	return readLine(steps[len(steps)-1], t)
}

// stepsOfArray: whatever is split, counted or marked, the things stay as many.
func stepsOfArray(steps []sight, t problems.Truth) error {
	arrays := 0
	if len(steps) > 0 {
		if r, is := arrayOf(steps[0].problem, t); is {
			return r.steps(steps, t)
		}
	}
	for i, s := range steps {
		var err error
		switch s.problem.Kind {
		case arithmetic.Factors:
			err = s.readPairsSoFar(t)
			n := len(s.pieces())
			if err == nil && (i == len(steps)-1 && n < (len(t.Pairs)+1)/2 || n < arrays) {
				err = fmt.Errorf("%d arrays for %d pairs", n, len(t.Pairs))
			}
			arrays = n
		case arithmetic.Claim, arithmetic.Comparison:
			err = s.readArrayClaim(t)
		case arithmetic.Product, arithmetic.Expression:
			if i > 0 || !s.unscaled() {
				err = s.readProductStep(t)
			}
		case arithmetic.PartOf:
			err = s.readPartStep(t)
		default:
			err = s.readSharing(t)
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return nil
}

// readProductStep: all the things are there from the first step on.
func (s sight) readProductStep(t problems.Truth) error {
	if s.unscaled() {
		if err := s.compareArea(t, false); err != errUnread {
			return err
		}
		return nil // an area before it is split
	}
	if r, ok := s.counters(); ok {
		return agree("the things in the array", whole(r.count), t.Value)
	}
	r, err := s.squares()
	if err != nil || r.count < 0 {
		return err
	}
	return agree("the things in the array", whole(r.count), t.Value)
}

func (s sight) readPartStep(t problems.Truth) error {
	r, ok := s.counters()
	if !ok {
		var err error
		if r, err = s.squares(); err != nil || r.count < 0 {
			return err
		}
	}
	if err := agree("the amount", whole(r.count), t.Numbers[1]); err != nil || r.marked == 0 {
		return err
	}
	return agree("the part", whole(r.marked), t.Value)
}

// readSharing: what is in the rows and what waits beside them are all there is.
func (s sight) readSharing(t problems.Truth) error {
	all := t.Numbers[0]
	if s.problem.Kind == arithmetic.Missing {
		for _, v := range append(slices.Clone(t.Numbers), t.Value) {
			if v.Cmp(all) > 0 {
				all = v
			}
		}
	}
	in := int64(0)
	for _, c := range s.Circles {
		if s.is(c.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			in++
		}
	}
	ruled := true
	for _, f := range s.Faces() {
		if s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			in += int64(f.Cells())
			ruled = ruled && f.Cells() > 0 && f.W/f.Cols() == f.H/f.Rows()
		}
	}
	waits, said := s.waiting()
	if ruled && said && in > 0 && in+waits == all.Num().Int64() && s.bowl() {
		return nil // those that wait are not drawn one by one
	}
	if ruled && in > waits && !s.unscaled() {
		return agree("the things in the rows and beside them", whole(in), all)
	}
	if !said {
		return errUnread
	}
	// Too many to draw each: the parts by their names, and what is said to wait.
	facts := 0
	for _, st := range s.Statements() {
		if len(st) == 5 && st[1].Text == "×" && st[3].Text == "=" {
			v, _ := st[4].Value()
			waits += v.Num().Int64()
			facts++
		}
	}
	if facts > 0 && len(s.pieces()) != facts {
		return fmt.Errorf("%d parts with %d facts under them", len(s.pieces()), facts)
	}
	switch one := facts == 0 && len(s.pieces()) == 1; {
	case one && s.unscaled() && s.problem.Kind == arithmetic.Division:
		// A sketch of the lines that were dealt out: whole ones.
		if left := all.Num().Int64() - waits; left > 0 && left%t.Numbers[1].Num().Int64() == 0 {
			return nil
		}
	case one && !ruled && !s.unscaled():
		waits += s.linesToScale()
	}
	if a, err := s.readArea(); err == nil {
		if len(a.parts) > 0 && len(a.parts) != len(a.faces) {
			return errors.New("a part has no number, or is not there")
		}
		for _, p := range a.parts {
			waits += p
		}
	} else if err != errUnread {
		return err
	}
	return agree("what is in the rows and what is left", whole(waits), all)
}

// linesToScale is how many things are in the lines that were dealt out, where they
// are one area to scale beside the number of its rows or under that of its columns.
func (s sight) linesToScale() int64 {
	faces := s.pieces()
	if len(faces) != 1 {
		return 0
	}
	f := faces[0]
	if rows := s.beside(f.Box, 1); rows != nil && f.H%int(rows[0]) == 0 {
		unit := f.H / int(rows[0])
		return rows[0] * int64(f.W/unit)
	}
	if cols := s.above(f.Box, 1); cols != nil && f.W%int(cols[0]) == 0 {
		unit := f.W / int(cols[0])
		return cols[0] * int64(f.H/unit)
	}
	return 0
}

// bowl reports whether there is a bowl of things that are not drawn one by one.
func (s sight) bowl() bool {
	return slices.ContainsFunc(s.Paths, func(p measure.Path) bool {
		return p.Closed && len(p.Points) == 4 && s.is(p.Paint, scene.First)
	})
}

// waiting is how many things the picture says are still to be placed.
func (s sight) waiting() (n int64, said bool) {
	for _, t := range s.Texts {
		number, what, _ := strings.Cut(t.Words, " ")
		switch what {
		case "left", "left over", "to share", "to place", "to put in rows", "to group":
		default:
			continue
		}
		if number == "none" {
			return 0, true
		}
		if v, err := strconv.ParseInt(strings.ReplaceAll(number, ",", ""), 10, 64); err == nil {
			return v, true
		}
	}
	return 0, false
}

// readPairsSoFar: every array that is drawn so far has as many squares as the
// number.
func (s sight) readPairsSoFar(t problems.Truth) error {
	if err := s.readPairNames(t, false); err != nil || s.unscaled() {
		return err
	}
	n := t.Numbers[0].Num().Int64()
	for _, f := range s.Faces() {
		if !s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			continue
		}
		if got := int64(f.Cells()); got != n && got != 1 {
			return fmt.Errorf("an array of %d × %d for %d", f.Rows(), f.Cols(), n)
		}
		if !slices.ContainsFunc(t.Pairs, func(p [2]int64) bool { return int64(f.W)*p[0] == int64(f.H)*p[1] }) {
			return fmt.Errorf("an array of %d by %d units for %d", f.W, f.H, n)
		}
	}
	return nil
}
