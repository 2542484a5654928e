package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// block is what lies on one surface.
type block struct {
	measure.Box
	rows, cols, count int64 // 0 where it is one rectangle that is not to scale
}

// blocksOfRows are the surfaces with what lies on them, from the top, from the left.
func (s sight) blocksOfRows() (list []block, err error) {
	for _, r := range s.trays() {
		b := block{Box: r.Box}
		var inside []measure.Circle
		for _, c := range s.Circles {
			if s.is(c.Paint, scene.First, scene.Second, scene.Moved) && r.Contains(measure.Box{X: c.X, Y: c.Y}) {
				inside = append(inside, c)
			}
		}
		var all measure.Box
		area, cell := 0, 0
		for _, f := range s.pieces() {
			if !r.Contains(f.Box) {
				continue
			}
			if area == 0 {
				all = f.Box
			}
			all = around(all, f.Box)
			area += f.Area()
			if f.Cells() > 1 {
				cell = f.W / f.Cols()
			}
		}
		switch {
		case len(inside) > 0:
			cols, rows, full := measure.Lattice(inside)
			if !full {
				return nil, errors.New("the rows of a block are not full")
			}
			b.rows, b.cols, b.count = int64(rows), int64(cols), int64(len(inside))
		case area == 0:
			return nil, errors.New("a block is empty")
		case cell > 0:
			if area != all.Area() {
				return nil, errors.New("a part of a block is missing")
			}
			b.rows, b.cols = int64(all.H/cell), int64(all.W/cell)
			b.count = b.rows * b.cols
		}
		list = append(list, b)
	}
	slices.SortStableFunc(list, func(a, b block) int { return a.Y - b.Y })
	return list, nil
}

// readThree: as many blocks as the first factor says, each with as many rows and
// columns as the others.
func readThree(s sight, t problems.Truth) error {
	list, err := s.blocksOfRows()
	if err != nil {
		return err
	}
	return s.alike(list, t.Numbers)
}

func (s sight) alike(list []block, factors []*big.Rat) error {
	if err := agree("the blocks", whole(int64(len(list))), factors[0]); err != nil {
		return err
	}
	for _, b := range list {
		if b.count == 0 && s.unscaled() {
			continue
		}
		if err := both(agree("the rows of a block", whole(b.rows), factors[1]), agree("the columns of a block", whole(b.cols), factors[2])); err != nil {
			return err
		}
	}
	for _, text := range s.Texts {
		if n, ok := strings.CutSuffix(strings.TrimSuffix(text.Words, "s"), " block"); ok && text.Y > list[0].Bottom() && text.Y < list[len(list)-1].Bottom()+60 && n != factors[0].RatString() {
			return fmt.Errorf("%s blocks over %q", factors[0].RatString(), text.Words)
		}
	}
	first := list[0]
	named := func(m measure.Mark, v *big.Rat) bool { return m.Value.Cmp(v) == 0 }
	over, beside := false, false
	for _, m := range s.bare() {
		over = over || m.Y < first.Y && m.Y > first.Y-60 && m.X > first.X && m.X < first.Right() && named(m, factors[2])
		beside = beside || m.X < first.X && m.Y > first.Y-20 && m.Y < first.Bottom()+20 && named(m, factors[1])
	}
	if !over || !beside {
		return fmt.Errorf("the first block is not named %s by %s", factors[1].RatString(), factors[2].RatString())
	}
	return nil
}

// readBlocksClaim: the blocks of the left side over those of the right one.
func readBlocksClaim(s sight, t problems.Truth) error {
	list, err := s.blocksOfRows()
	if err != nil {
		return err
	}
	left, right := sideFactors(t, true), sideFactors(t, false)
	n := int(left[0].Num().Int64())
	if len(list) < n {
		return fmt.Errorf("%d blocks", len(list))
	}
	for i, b := range list {
		other := scene.Second
		if i >= n {
			other = scene.First
		}
		for _, c := range s.Circles {
			if s.is(c.Paint, other) && b.Contains(measure.Box{X: c.X, Y: c.Y}) {
				return errors.New("a counter lies in a block of the other side")
			}
		}
	}
	if err := s.alike(list[:n], left); err != nil || len(list) == n {
		return err
	}
	return s.alike(list[n:], right)
}

// sideFactors are the three factors of one side of a claim; of a product of two
// there is one block.
func sideFactors(t problems.Truth, left bool) []*big.Rat {
	n := t.Numbers
	three := func(list []*big.Rat) []*big.Rat {
		if len(list) == 2 {
			return []*big.Rat{whole(1), list[0], list[1]}
		}
		return list
	}
	product := func(list []*big.Rat) *big.Rat {
		p := whole(1)
		for _, v := range list {
			p.Mul(p, v)
		}
		return p
	}
	at := 3
	if len(n) == 5 && product(n[:2]).Cmp(t.Sides[0]) == 0 && product(n[2:]).Cmp(t.Sides[1]) == 0 {
		at = 2
	}
	if left {
		return three(n[:at])
	}
	return three(n[at:])
}

// stepsOfBlocksClaim: the left side, then the right one below it.
func stepsOfBlocksClaim(steps []sight, t problems.Truth) error {
	n := int(sideFactors(t, true)[0].Num().Int64())
	for i, s := range steps {
		if err := readBlocksClaim(s, t); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if both := len(s.trays()) > n; both != (i > 0) {
			return fmt.Errorf("step %d: both sides are there: %v", i+1, both)
		}
	}
	return nil
}
