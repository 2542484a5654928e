package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/golden/measure"
	"modeler/models/scene"
)

// onPlate is a plate of a number bond: its number, -1 where it has none, the counters
// on it by role, and those that are gone.
type onPlate struct {
	measure.Box
	n        int64
	counters map[scene.Role]int64
	gone     int64
	rows     map[int][]int // the middles of all circles, row by row
}

func (p onPlate) all() (sum int64) {
	for _, n := range p.counters {
		sum += n
	}
	return sum
}

// readPlates finds the plates, from the top down and from left to right. Every counter
// lies on one.
func (s sight) readPlates() ([]onPlate, error) {
	var list []onPlate
	for _, r := range s.Rects {
		if !r.Filled() {
			list = append(list, onPlate{Box: r.Box, n: -1, counters: map[scene.Role]int64{}, rows: map[int][]int{}})
		}
	}
	slices.SortStableFunc(list, func(a, b onPlate) int {
		if a.Y != b.Y {
			return a.Y - b.Y
		}
		return a.X - b.X
	})
	at := func(b measure.Box) *onPlate {
		for i := range list {
			if list[i].Contains(b) {
				return &list[i]
			}
		}
		return nil
	}
	for _, m := range s.bareOf(scene.Large + 1) {
		if p := at(measure.Box{X: m.X, Y: m.Y}); p != nil {
			p.n = m.Value.Num().Int64()
		}
	}
	for _, c := range s.Circles {
		p := at(measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R})
		if p == nil {
			return list, fmt.Errorf("a counter at %d, %d lies on no plate", c.X, c.Y)
		}
		p.rows[c.Y] = append(p.rows[c.Y], c.X)
		if c.Dash != "" {
			p.gone++
		}
		for _, role := range []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved} {
			if s.is(c.Paint, role) {
				p.counters[role]++
			}
		}
	}
	for _, p := range list {
		if err := p.inRows(); err != nil {
			return list, err
		}
	}
	return list, nil
}

// inRows: the first row of a plate is in its middle, the others begin where it begins,
// and the counters of a row are equally far apart but for a gap after each five.
func (p onPlate) inRows() error {
	if p.all() == 0 {
		return nil // what is gone from here is only some of what was there
	}
	var ys []int
	for y, xs := range p.rows {
		ys = append(ys, y)
		slices.Sort(xs)
	}
	slices.Sort(ys)
	for i, y := range ys {
		xs, top := p.rows[y], p.rows[ys[0]]
		if i == 0 && xs[0]+xs[len(xs)-1] != 2*p.X+p.W || xs[0] != top[0] || len(xs) > len(top) {
			return fmt.Errorf("a row of counters begins at %d", xs[0])
		}
		if i > 1 && ys[i]-ys[i-1] != ys[1]-ys[0] {
			return errors.New("a counter is out of its row")
		}
		for k := range len(xs) - 1 {
			const five = 8
			gap, wide := xs[k+1]-xs[k], top[1]-top[0]
			if gap != wide && (k%5 != 4 || gap != wide+five) {
				return fmt.Errorf("two counters are %d apart, and others %d", gap, wide)
			}
		}
	}
	return nil
}

// numbersAre: a plate has the number, and as many counters in the roles, or none where
// it is too large to count or they are gone from it.
func (s sight) numbersAre(p onPlate, want *big.Rat, counted bool, roles ...scene.Role) error {
	if err := agree("the number on a plate", whole(p.n), want); err != nil {
		return err
	}
	if !counted {
		return errIf(p.all() > 0, "there are counters for a large number")
	}
	in := p.gone
	for r, n := range p.counters {
		if r == scene.Moved || slices.Contains(roles, r) {
			in += n
		}
	}
	if in != p.all()+p.gone {
		return errors.New("a counter has the color of another number")
	}
	return agree("the counters on a plate", whole(in), want)
}
