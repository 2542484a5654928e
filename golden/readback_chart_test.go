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

// onChart is what lies on the numbers of a hundred chart.
type onChart struct {
	face   measure.Face
	lit    map[int64]tile // filled cells
	framed []int64        // heavy outlines
	ringed []int64
	struck []int64
}

// cell is the number in whose cell a place lies, or -1 beside the chart. The place of
// 0 is above that of 10.
func (c onChart) cell(x, y int) int64 {
	w, h := c.face.W/10, c.face.H/10
	col, row := (x-c.face.X)/w, (y-c.face.Y+h)/h-1
	switch {
	case x <= c.face.X || x >= c.face.Right() || y >= c.face.Bottom():
		return -1
	case row == -1 && col == 9:
		return 0
	case row < 0:
		return -1
	}
	return int64(10*row + col + 1)
}

// readChartNumbers finds the chart, with every number in its cell, and what lies on
// them.
func (s sight) readChartNumbers() (c onChart, err error) {
	for _, f := range s.Faces() {
		if f.Cols() == 10 && f.Rows() == 10 {
			c.face = f
		}
	}
	if c.face.W == 0 {
		return c, errors.New("there is no square of ten by ten")
	}
	seen := map[int64]bool{}
	for _, line := range s.Lines() {
		for _, w := range line {
			n := c.cell(w.X, w.Y-w.Size/3)
			if n < 0 {
				continue
			}
			if v, ok := w.Value(); !ok || v.Cmp(whole(n)) != 0 || seen[n] {
				return c, fmt.Errorf("%q stands at the place of %d", w.Text, n)
			}
			seen[n] = true
		}
	}
	for n := int64(1); n <= 100; n++ {
		if !seen[n] {
			return c, fmt.Errorf("%d is missing", n)
		}
	}
	c.lit = map[int64]tile{}
	for _, t := range s.tiles() {
		n := c.cell(t.X+t.W/2, t.Y+t.H/2)
		switch {
		case n < 0:
		case t.Filled():
			c.lit[n] = t
		case t.Width == "5":
			c.framed = append(c.framed, n)
		}
	}
	for _, r := range s.Rects { // a ring around three digits is longer than high
		x, y := r.X+r.W/2, r.Y+r.H/2
		if n := c.cell(x, y); n == 100 && s.empty(r.Paint, scene.Second) && r.W < c.face.W/10 && r.H < c.face.H/10 && r.W > r.H {
			if 2*((x-c.face.X)%(c.face.W/10)) > c.face.W/10+2 || 2*((y-c.face.Y)%(c.face.H/10)) > c.face.H/10+2 {
				return c, fmt.Errorf("the ring at %d, %d is not around one number", x, y)
			}
			c.ringed = append(c.ringed, n)
		}
	}
	for _, ring := range s.Circles {
		n := c.cell(ring.X, ring.Y)
		if n < 0 {
			continue // it explains the rings under the chart
		}
		w, h := c.face.W/10, c.face.H/10
		offX, offY := 2*((ring.X-c.face.X)%w)-w, 2*((ring.Y-c.face.Y)%h)-h
		if max(offX, -offX) > 1 || max(offY, -offY) > 1 || 2*ring.R > min(w, h) {
			return c, fmt.Errorf("the ring at %d, %d is not around one number", ring.X, ring.Y)
		}
		c.ringed = append(c.ringed, n)
	}
	c.readStruck(s)
	return c, nil
}

// readStruck finds the slanting strokes through numbers.
func (c *onChart) readStruck(s sight) {
	for _, p := range s.Paths {
		if len(p.Points) != 2 || p.Points[0].X == p.Points[1].X || p.Points[0].Y == p.Points[1].Y {
			continue
		}
		a, b := p.Points[0], p.Points[1]
		if n := c.cell((a.X+b.X)/2, (a.Y+b.Y)/2); n > 0 && c.cell(a.X, a.Y) == n && c.cell(b.X, b.Y) == n {
			c.struck = append(c.struck, n)
		}
	}
	slices.Sort(c.struck)
	slices.Sort(c.ringed)
}

// litNumbers are the numbers with a filled cell, in order.
func (c onChart) litNumbers() []int64 {
	var list []int64
	for n := range c.lit {
		list = append(list, n)
	}
	slices.Sort(list)
	return list
}

// readChart reads what the finished chart shows.
func readChart(s sight, t problems.Truth) error {
	c, err := s.readChartNumbers()
	if err != nil {
		return err
	}
	switch s.problem.Kind {
	case arithmetic.Counting, arithmetic.Multiples:
		return c.readCounted(s, t)
	case arithmetic.CommonMultiples:
		return c.readCommon(s, t)
	case arithmetic.Addition, arithmetic.Subtraction:
		return c.readWalk(s, t)
	case arithmetic.Parity:
		return c.readEvens(t)
	}
	return c.readSieve(s, t)
}

// readCounted: the numbers of the run are lit, and no others. The first number of a
// count looks unlike the others.
func (c onChart) readCounted(s sight, t problems.Truth) error {
	want := slices.Sorted(slices.Values(t.List))
	if got := c.litNumbers(); !slices.Equal(got, want) {
		return fmt.Errorf("%v are lit, not %v", got, want)
	}
	for n, tile := range c.lit {
		first := s.problem.Kind == arithmetic.Counting && n == t.List[0]
		if s.is(tile.Paint, scene.First) != first {
			return fmt.Errorf("%d looks like another than it is", n)
		}
	}
	return s.readList(t.List)
}

// multiplesOf are the multiples of a number from itself to another number.
func multiplesOf(n, last int64) []int64 {
	var list []int64
	for m := n; m <= last; m += n {
		list = append(list, m)
	}
	return list
}

// readCommon: the multiples of the first number are lit, those of the second have
// rings, as far as the last number of both that is on the chart; the least is framed.
func (c onChart) readCommon(s sight, t problems.Truth) error {
	last := int64(0)
	for _, n := range t.List {
		if n <= 100 {
			last = n
		}
	}
	a, b := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
	switch {
	case !slices.Equal(c.litNumbers(), multiplesOf(a, last)):
		return fmt.Errorf("%v are lit", c.litNumbers())
	case !slices.Equal(c.ringed, multiplesOf(b, last)):
		return fmt.Errorf("%v have rings", c.ringed)
	case len(c.framed) != 1 || c.framed[0] != t.List[0]:
		return fmt.Errorf("%v are framed, and %d is the least", c.framed, t.List[0])
	}
	return both(s.readKey(a, b), s.readList(t.List))
}

// readKey: under the chart stand both marks with the numbers they are for.
func (s sight) readKey(a, b int64) error {
	for _, n := range []int64{a, b} {
		if !s.Says(fmt.Sprintf("multiples of %d", n)) {
			return fmt.Errorf("the mark of %d is not explained", n)
		}
	}
	return nil
}

// readEvens: the even numbers are lit and the number is framed.
func (c onChart) readEvens(t problems.Truth) error {
	n := t.Numbers[0].Num().Int64()
	_, lit := c.lit[n]
	switch {
	case !slices.Equal(c.litNumbers(), multiplesOf(2, 100)):
		return fmt.Errorf("%v are lit", c.litNumbers())
	case len(c.framed) != 1 || c.framed[0] != n:
		return fmt.Errorf("%v are framed", c.framed)
	case lit != t.Even:
		return errors.New("the number is in the wrong column")
	}
	return nil
}

// readSieve: the number is framed; crossed out are 1 and the numbers up to it that
// have a prime below them as factor, no greater than the first one that crosses the
// number out itself. A prime is lit.
func (c onChart) readSieve(s sight, t problems.Truth) error {
	n := t.Numbers[0].Num().Int64()
	if len(c.framed) != 1 || c.framed[0] != n {
		return fmt.Errorf("%v are framed", c.framed)
	}
	want := []int64{1}
	for m := int64(2); m <= n; m++ {
		if f := leastFactor(m); f < m && f <= leastFactor(n) {
			want = append(want, m)
		}
	}
	if !slices.Equal(c.struck, want) {
		return fmt.Errorf("%v are crossed out, not %v", c.struck, want)
	}
	if mark, lit := c.lit[n]; lit && s.is(mark.Paint, scene.Result) != t.True || lit != t.True {
		return errors.New("the number looks like another than it is")
	}
	return nil
}

// leastFactor is the least factor of a number besides 1; of 1 it is 1.
func leastFactor(n int64) int64 {
	for f := int64(2); f <= n; f++ {
		if new(big.Int).Rem(big.NewInt(n), big.NewInt(f)).Sign() == 0 {
			return f
		}
	}
	return 1
}
