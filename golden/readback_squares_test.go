package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// wholes are the large squares of a picture, in rows from the top and from the left:
// heavy outlines, all of one size, which is cut in tenths of it. Side by side they
// are the row of one number, and of two numbers one each where there are two squares
// in all.
func (s sight) wholes() (rows [][]measure.Box, err error) {
	const heavy = "5"
	var list []measure.Box
	for _, r := range s.Rects {
		if r.Filled() || r.Width != heavy || r.Stroke != s.paint[scene.Ink][2] {
			continue
		}
		if r.W != r.H || r.W%10 != 0 || len(list) > 0 && r.W != list[0].W {
			return nil, fmt.Errorf("a whole of %d × %d", r.W, r.H)
		}
		list = append(list, r.Box)
	}
	if len(list) == 0 {
		return nil, errors.New("no whole is marked")
	}
	slices.SortFunc(list, func(a, b measure.Box) int { return (a.Y-b.Y)*s.W + a.X - b.X })
	a, b, _ := s.problem.Operands()
	small := a.Value.Num() <= a.Value.Den() && b.Value.Num() <= b.Value.Den()
	single := s.comparesSquares() && len(list) == 2 && small
	for i, box := range list {
		if i == 0 || single || box.Y != list[i-1].Y {
			rows = append(rows, nil)
		}
		rows[len(rows)-1] = append(rows[len(rows)-1], box)
	}
	return rows, nil
}

func (s sight) comparesSquares() bool {
	return s.problem.Kind == arithmetic.Claim || s.problem.Kind == arithmetic.Comparison
}

// squared is how much of a row of wholes is covered by the shapes that are chosen.
// Each lies in one whole, on the lattice of its hundredths, and no two lie on each
// other.
func (s sight) squared(row []measure.Box, choose func(measure.Face) bool) (covered map[int]bool, err error) {
	covered = map[int]bool{}
	for _, f := range s.Faces() {
		at := slices.IndexFunc(row, func(w measure.Box) bool { return w.Contains(f.Box) })
		if at < 0 || !choose(f) {
			continue
		}
		cell := row[at].W / 10
		x, y := f.X-row[at].X, f.Y-row[at].Y
		if x%cell+y%cell+f.W%cell+f.H%cell != 0 {
			return nil, fmt.Errorf("the piece at %v is not made of hundredths", f.Box)
		}
		for col := x / cell; col < (x+f.W)/cell; col++ {
			for down := y / cell; down < (y+f.H)/cell; down++ {
				n := at*100 + col*10 + down
				if covered[n] {
					return nil, fmt.Errorf("hundredth %d is covered twice", n)
				}
				covered[n] = true
			}
		}
	}
	return covered, nil
}

// amount is how much is covered, counted down the columns without a gap.
func amount(covered map[int]bool) (*big.Rat, error) {
	for n := range len(covered) {
		if !covered[n] {
			return nil, fmt.Errorf("%d hundredths are shaded, but not the one after %d", len(covered), n)
		}
	}
	return big.NewRat(int64(len(covered)), 100), nil
}

// shadedIn is how much of a row is filled in one of the roles.
func (s sight) shadedIn(row []measure.Box, roles ...scene.Role) (*big.Rat, error) {
	covered, err := s.squared(row, func(f measure.Face) bool { return s.is(f.Paint, roles...) })
	if err != nil {
		return nil, err
	}
	return big.NewRat(int64(len(covered)), 100), nil
}

// filledIn is how much of a row is filled for any number, without a gap.
func (s sight) filledIn(row []measure.Box) (*big.Rat, error) {
	covered, err := s.squared(row, func(f measure.Face) bool { return s.is(f.Paint, scene.First, scene.Second, scene.Moved) })
	if err != nil {
		return nil, err
	}
	return amount(covered)
}

// readRuling: a whole is cut in 10 columns, in 100 small squares or not at all, and
// what is shaded on it is cut alike.
func (s sight) readRuling(rows [][]measure.Box) error {
	for _, row := range rows {
		for _, box := range row {
			across, down := 1, 1
			for _, f := range s.Faces() {
				if f.Box == box && !f.Filled() && f.Cells() > 1 {
					across, down = f.Cols(), max(down, f.Rows())
				}
			}
			if across*down != 1 && across*down != 10 && across*down != 100 {
				return fmt.Errorf("a whole is cut in %d", across*down)
			}
			for _, f := range s.Faces() {
				if !f.Filled() || !box.Contains(f.Box) {
					continue
				}
				if f.Cols() == 0 || f.Rows() == 0 || f.W/f.Cols() != box.W/across || f.H/f.Rows() != box.H/down {
					return fmt.Errorf("the piece at %v is cut in %d by %d, its whole in %d by %d", f.Box, f.Cols(), f.Rows(), across, down)
				}
			}
		}
	}
	return nil
}

// readSquares measures the whole story.
func readSquares(s sight, t problems.Truth) error {
	rows, err := s.wholes()
	if err != nil {
		return err
	}
	if err := s.readRuling(rows); err != nil {
		return err
	}
	if s.comparesSquares() {
		return both(s.readSquarePair(rows, t), s.readSquareGap(t))
	}
	first, err := s.shadedIn(rows[0], scene.First)
	if err != nil {
		return err
	}
	all, err := s.filledIn(rows[0])
	if err != nil {
		return err
	}
	switch s.problem.Kind {
	case arithmetic.Addition:
		return both(agree("the first", first, t.Numbers[0]), agree("all that is shaded", all, t.Value))
	case arithmetic.Subtraction:
		gone, err := s.goneSquares(rows[0])
		if err != nil {
			return err
		}
		return both(agree("what is left", first, t.Value), agree("what is gone", gone, t.Numbers[1]))
	}
	return both(agree("the number", all, t.Numbers[0]), s.readSquareParts(t))
}

// crossed reports whether a piece is only a dashed outline.
func (s sight) crossed(f measure.Face) bool { return s.ghost(f.Paint) && f.Dash != "" }

// goneSquares is how much is only an outline of what is gone: it follows what is left.
func (s sight) goneSquares(row []measure.Box) (*big.Rat, error) {
	gone, err := s.squared(row, s.crossed)
	if err != nil {
		return nil, err
	}
	covered, err := s.squared(row, func(f measure.Face) bool { return f.Filled() || s.crossed(f) })
	if err != nil {
		return nil, err
	}
	if _, err := amount(covered); err != nil {
		return nil, err
	}
	return big.NewRat(int64(len(gone)), 100), nil
}

func (s sight) readSquarePair(rows [][]measure.Box, t problems.Truth) error {
	if len(rows) != 2 {
		return fmt.Errorf("%d rows of wholes for two numbers", len(rows))
	}
	for i, row := range rows {
		found, err := s.filledIn(row)
		if err != nil {
			return err
		}
		other, err := s.shadedIn(row, []scene.Role{scene.Second, scene.First}[i])
		if err != nil || other.Sign() > 0 {
			return fmt.Errorf("a piece of the other number: %v, %w", other, err)
		}
		if err := agree("number "+fmt.Sprint(i+1), found, t.Numbers[i]); err != nil {
			return err
		}
	}
	return nil
}

// readSquareGap: what is marked as missing is as much as the two differ by.
func (s sight) readSquareGap(t problems.Truth) error {
	area, side := 0, 0
	for _, r := range s.Rects {
		switch {
		case !r.Filled() && r.Width == "5" && r.Stroke == s.paint[scene.Result][2]:
			area += r.W * r.H
		case !r.Filled() && r.Width == "5":
			side = r.W
		}
	}
	gap := new(big.Rat).Sub(t.Numbers[0], t.Numbers[1])
	return agree("what is missing", big.NewRat(int64(area), int64(side*side)), gap.Abs(gap))
}

// readSquareParts: where a whole is marked in equal parts, they are as many as the
// fraction says, and each has as many hundredths.
func (s sight) readSquareParts(t problems.Truth) error {
	n, _ := s.problem.Left.(arithmetic.Number)
	rows, err := s.wholes()
	if err != nil || n.Form != arithmetic.Common {
		return err
	}
	count := 0
	side := rows[0][0].W
	for _, p := range s.Paths {
		if len(p.Points) < 5 || p.Points[0] != p.Points[len(p.Points)-1] && !p.Closed || p.Stroke != s.paint[scene.Ink][2] {
			continue
		}
		count++
		twice := 0 // the area, by the corners (Gauss; from memory)
		for i := range p.Points {
			a, b := p.Points[i], p.Points[(i+1)%len(p.Points)]
			twice += a.X*b.Y - b.X*a.Y
		}
		if max(twice, -twice)*int(n.Value.Den()) != 2*side*side {
			return fmt.Errorf("a part has not one of %d equal parts of the whole", n.Value.Den())
		}
	}
	if count > 0 && count != int(n.Value.Den())*len(rows[0]) {
		return fmt.Errorf("%d parts are marked", count)
	}
	return nil
}

// stepsOfSquares follows what is shaded: nothing, then digit by digit or number by
// number, never less than before, to the last. What is taken away leaves the rest.
func stepsOfSquares(steps []sight, t problems.Truth) error {
	stops := []*big.Rat{whole(0)}
	switch p := steps[0].problem; p.Kind {
	case arithmetic.Claim, arithmetic.Comparison:
		return stepsOfSquarePair(steps, t)
	case arithmetic.Show:
		for places := range 3 {
			scale := big.NewRat(arithmetic.Power10(places), 1)
			cut := new(big.Rat).Mul(t.Numbers[0], scale)
			down := new(big.Rat).SetInt(new(big.Int).Quo(cut.Num(), cut.Denom()))
			stops = append(stops, down.Quo(down, scale))
		}
	case arithmetic.Addition:
		stops = append(stops, t.Numbers[0], t.Value)
	case arithmetic.Subtraction:
		stops = append(stops, t.Numbers[0], t.Value)
	default:
		stops = append(stops, t.Numbers[0])
	}
	stops = slices.CompactFunc(stops, func(a, b *big.Rat) bool { return a.Cmp(b) == 0 })
	for i, s := range steps {
		rows, err := s.wholes()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if err := s.readRuling(rows); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		at, err := s.filledIn(rows[0])
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if stops, err = walk(stops, at); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		gone, err := s.goneSquares(rows[0])
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if gone.Sign() > 0 && (s.problem.Kind != arithmetic.Subtraction || gone.Cmp(t.Numbers[1]) != 0) {
			return fmt.Errorf("step %d: %s is gone", i+1, gone.RatString())
		}
		if err := s.readSquareParts(t); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return arrived(stops)
}

// stepsOfSquarePair: the first number lies there from the first step, both from the
// second, however finely they are cut.
func stepsOfSquarePair(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		rows, err := s.wholes()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if i > 0 {
			if err := s.readSquarePair(rows, t); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
			continue
		}
		if len(rows) != 1 {
			return fmt.Errorf("step 1: %d rows of wholes", len(rows))
		}
		found, err := s.filledIn(rows[0])
		if err != nil {
			return err
		}
		if err := agree("the first", found, t.Numbers[0]); err != nil {
			return fmt.Errorf("step 1: %w", err)
		}
	}
	return nil
}
