package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
)

// stepsOfGroups: nothing is lost on the way, groups fill as their story says, and
// the last step is the end of it.
func stepsOfGroups(steps []sight, t problems.Truth) error {
	before := int64(-1)
	for i, s := range steps {
		g, err := s.gather(t)
		if err == nil {
			err = both(s.readGroupTags(g, t), s.readGroupNames(g))
		}
		if err == nil {
			err = s.readGroupStep(g, t)
		}
		in := new(big.Rat)
		for _, v := range g.in {
			in.Add(in, v)
		}
		if now := in.Num().Int64() / in.Denom().Int64(); err == nil && now < before {
			err = errors.New("there is less in the groups than before")
		} else {
			before = now
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return readGroups(steps[len(steps)-1], t)
}

// readGroupStep: what is in the groups and what is outside are all there is, and
// the groups that are not empty are equal, but for one of what was left over.
func (s sight) readGroupStep(g gathered, t problems.Truth) error {
	all := new(big.Rat).Set(g.outside)
	sizes := map[string]int{}
	for _, in := range g.in {
		all.Add(all, in)
		if in.Sign() > 0 {
			sizes[in.RatString()]++
		}
	}
	if len(sizes) > 1 && s.problem.Rest == arithmetic.LeftOver {
		return fmt.Errorf("the groups are not equal: %v", sizes)
	}
	switch s.problem.Kind {
	case arithmetic.Division, arithmetic.Parity:
		return agree("all that there is", all, t.Numbers[0])
	case arithmetic.PartOf:
		return agree("all that there is", all, t.Numbers[1])
	case arithmetic.Missing:
		if known, _ := filledTotal(s.problem); known {
			groups, each := filledIn(s.problem, t)
			return agree("all that there is", all, new(big.Rat).Mul(groups, each))
		}
	}
	return nil
}

// seated: the counters of every ring begin in the same corner and stand in rows,
// fives apart, and so do those outside.
func (g gathered) seated(all []measure.Point) error {
	left := slices.Clone(all)
	var corner *measure.Point
	for _, r := range g.rings {
		var in []measure.Point
		left = slices.DeleteFunc(left, func(p measure.Point) bool {
			inside := p.X > r.X && p.X < r.Right() && p.Y > r.Y && p.Y < r.Bottom()
			if inside {
				in = append(in, measure.Point{X: p.X - r.X, Y: p.Y - r.Y})
			}
			return inside
		})
		if err := inRows(in); err != nil {
			return err
		}
		if len(in) > 0 && corner == nil {
			corner = &in[0]
		}
		if len(in) > 0 && in[0] != *corner {
			return errors.New("the counters of a group begin in another corner")
		}
	}
	return inRows(left)
}

// inRows sorts points into rows and says where they do not stand in rows that begin
// under each other, with the same steps along each, wider after every five.
func inRows(points []measure.Point) error {
	slices.SortFunc(points, func(a, b measure.Point) int {
		if a.Y != b.Y {
			return a.Y - b.Y
		}
		return a.X - b.X
	})
	var rows [][]int
	for i, p := range points {
		if i == 0 || p.Y != points[i-1].Y {
			rows = append(rows, nil)
		}
		last := len(rows) - 1
		rows[last] = append(rows[last], p.X)
	}
	for k, row := range rows {
		first := rows[0]
		if len(row) > len(first) || !slices.Equal(row, first[:len(row)]) || k+1 < len(rows) && len(row) != len(first) {
			return errors.New("the counters do not stand in rows")
		}
		for i := 2; i < len(row); i++ {
			step, before := row[i]-row[i-1], row[1]-row[0]
			if i%5 != 0 && step != before || i%5 == 0 && (step < before || step > 2*before) {
				return errors.New("the counters of a row do not stand in fives")
			}
		}
	}
	return nil
}
