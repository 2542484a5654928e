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

// readWalk follows the arrows: from the first number, which is lit, to the answer,
// which is lit too. The steps come to the second number.
func (c onChart) readWalk(s sight, t problems.Truth) error {
	start, end := t.Numbers[0].Num().Int64(), t.Value.Num().Int64()
	if len(c.lit) != 2 || !s.is(c.lit[start].Paint, scene.First) || !s.is(c.lit[end].Paint, scene.Result, scene.Moved) {
		return fmt.Errorf("%v are lit", c.litNumbers())
	}
	at, far, err := c.follow(s, start)
	if err != nil {
		return err
	}
	if at != end || t.Numbers[1].Cmp(whole(far)) != 0 {
		return fmt.Errorf("the arrows end at %d, %d away", at, far)
	}
	return nil
}

// follow goes along the arrows from a number, and adds up how far they go. All arrows
// must be met.
func (c onChart) follow(s sight, at int64) (end, far int64, err error) {
	next, enters := map[int64]int64{}, map[int64]bool{}
	for _, h := range s.heads() {
		tail, ok := tailOf(s, h)
		if !ok {
			return 0, 0, errors.New("an arrow has no stroke")
		}
		from, to := c.cell(tail.X, tail.Y), c.cell(h.tip.X, h.tip.Y)
		dir := int64(1)
		if h.tip.X < tail.X || h.tip.Y < tail.Y {
			dir = -1
		}
		switch {
		case from < 0:
			enters[to] = true
			continue
		case to < 0:
			to = from + dir // over the edge
		case h.tip.X == tail.X && to-from != 10*dir, h.tip.Y == tail.Y && to-from != dir:
			return 0, 0, fmt.Errorf("an arrow goes from %d to %d", from, to)
		}
		if (dir < 0) != (s.problem.Kind == arithmetic.Subtraction) {
			return 0, 0, errors.New("an arrow goes the wrong way")
		}
		next[from] = to
	}
	for len(next) > 0 {
		to, ok := next[at]
		if !ok {
			return 0, 0, fmt.Errorf("no arrow leads on from %d", at)
		}
		d := max(to-at, at-to)
		if over := d == 1 && min(to, at)%10 == 0; over != enters[to] {
			return 0, 0, fmt.Errorf("the way from %d to %d is broken", at, to)
		}
		delete(next, at)
		at, far = to, far+d
	}
	return at, far, nil
}

// tailOf is where the stroke begins that ends at an arrow head.
func tailOf(s sight, h head) (measure.Point, bool) {
	for _, p := range s.Paths {
		if len(p.Points) == 2 && !p.Closed && p.Points[1] == h.from {
			return p.Points[0], true
		}
	}
	return measure.Point{}, false
}

// stepsOfChart: on every step the chart is whole; the lit and the crossed out are
// never fewer than before, and among those of the end; the last step shows what the
// whole story shows.
func stepsOfChart(steps []sight, t problems.Truth) error {
	last, err := steps[len(steps)-1].readChartNumbers()
	if err != nil {
		return err
	}
	sum := steps[0].problem.Kind == arithmetic.Addition || steps[0].problem.Kind == arithmetic.Subtraction
	before := onChart{}
	for i, s := range steps {
		c, err := s.readChartNumbers()
		if err == nil && sum {
			err = c.readPart(s, t)
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		for _, pair := range [][3][]int64{
			{before.litNumbers(), c.litNumbers(), last.litNumbers()}, {before.struck, c.struck, last.struck}, {before.ringed, c.ringed, last.ringed},
		} {
			if !sum && (!within(pair[0], pair[1]) || !within(pair[1], pair[2])) {
				return fmt.Errorf("step %d shows %v after %v", i+1, pair[1], pair[0])
			}
		}
		before = c
	}
	return readChart(steps[len(steps)-1], t)
}

// readPart: in the middle of a walk the arrows lead to the cell that is lit besides
// the first number.
func (c onChart) readPart(s sight, t problems.Truth) error {
	start := t.Numbers[0].Num().Int64()
	at, far, err := c.follow(s, start)
	if err != nil {
		return err
	}
	want := []int64{start}
	if at != start {
		want = []int64{min(at, start), max(at, start)}
	}
	if got := c.litNumbers(); !slices.Equal(got, want) {
		return fmt.Errorf("the arrows lead to %d, and %v are lit", at, got)
	}
	if t.Numbers[1].Cmp(new(big.Rat).SetInt64(far)) < 0 {
		return fmt.Errorf("the arrows go as far as %d", far)
	}
	return nil
}

// within reports whether all numbers of one list are in another.
func within(part, all []int64) bool {
	return !slices.ContainsFunc(part, func(n int64) bool { return !slices.Contains(all, n) })
}
