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

// pieces are the filled faces in the paint of a number.
func (s sight) pieces() []measure.Face {
	var list []measure.Face
	for _, f := range s.Faces() {
		if s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			list = append(list, f)
		}
	}
	return list
}

// readApart: no piece lies on another.
func readApart(s sight, _ problems.Truth) error {
	list := s.pieces()
	slices.SortFunc(list, func(a, b measure.Face) int { return a.X - b.X })
	for i, f := range list {
		for _, g := range list[i+1:] {
			if g.X >= f.Right() {
				break
			}
			if f.Overlaps(g.Box) {
				return fmt.Errorf("the pieces at %v and %v lie on one another", f.Box, g.Box)
			}
		}
	}
	return nil
}

// readEquation: the statement in the largest letters has every number of the
// problem in it, and the answer.
func readEquation(s sight, t problems.Truth) error {
	var foot []measure.Word
	for _, said := range s.Statements() {
		if len(foot) == 0 || said[0].Size > foot[0].Size {
			foot = said
		}
	}
	has := func(want *big.Rat) bool {
		return slices.ContainsFunc(foot, func(w measure.Word) bool {
			v, ok := w.Value()
			return ok && v.Cmp(want) == 0
		})
	}
	if len(foot) == 0 {
		return nil // it is not in symbols
	}
	want := append(slices.Clone(t.Numbers), t.Value)
	if t.Quotient != nil {
		want = append(t.Numbers, new(big.Rat).SetInt(t.Quotient))
	}
	for _, v := range want {
		if v != nil && !has(v) {
			return fmt.Errorf("%s is not in %q", v.RatString(), measure.Statement(foot))
		}
	}
	return nil
}

// readAgreement: the whole story has as many pieces and points as the last step.
func readAgreement(whole, last sight) error {
	count := func(s sight) (cells, circles int) {
		for _, f := range s.pieces() {
			cells += max(1, f.Cells())
		}
		for _, c := range s.Circles {
			if s.is(c.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
				circles++
			}
		}
		return cells, circles
	}
	a, b := count(whole)
	c, d := count(last)
	if a != c || b != d {
		return fmt.Errorf("%d pieces and %d circles, and in the last step %d and %d", a, b, c, d)
	}
	return nil
}

// trays are the rooms that the blocks of a place lie in, from the left.
func (s sight) trays() []measure.Rect {
	var list []measure.Rect
	for _, r := range s.Rects {
		if r.Fill == s.paint[scene.Tray][0] {
			list = append(list, r)
		}
	}
	slices.SortFunc(list, func(a, b measure.Rect) int { return a.X - b.X })
	return list
}

// filledUp: a bar with one number on it is all parts, shaded or empty.
func (s sight) filledUp(empty []measure.Box, alone bool) error {
	if !alone {
		return nil
	}
	for _, bar := range s.Rects {
		if bar.Filled() || bar.Width != "5" {
			continue
		}
		left, shaded := bar.W, false
		for _, f := range s.Faces() {
			inside := bar.Contains(f.Box) && f.Box != bar.Box
			switch {
			case inside && s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved):
				left, shaded = left-f.W, true
			case inside && (f.Dash != "" || s.ghost(f.Paint)) && !slices.ContainsFunc(empty, func(c measure.Box) bool { return c.Overlaps(f.Box) }) && f.Cols() > 0:
				left -= f.W
			}
		}
		for _, c := range empty {
			if bar.Contains(c) {
				left -= c.W
			}
		}
		if shaded && left > 0 {
			return fmt.Errorf("%d of %d units of a bar are no parts", left, bar.W)
		}
	}
	return nil
}

// alignedRows: what is shaded starts where a whole does, or where something in
// another bar starts or ends.
func (s sight) alignedRows() error {
	starts, edges := map[int]int{}, map[int]map[int]bool{}
	for _, f := range s.pieces() {
		if x, has := starts[f.Y]; !has || f.X < x {
			starts[f.Y] = f.X
		}
		for _, x := range []int{f.X, f.Right()} {
			if edges[x] == nil {
				edges[x] = map[int]bool{}
			}
			edges[x][f.Y] = true
		}
	}
	for y, x := range starts {
		others := len(edges[x])
		if edges[x][y] {
			others--
		}
		if others == 0 && !slices.ContainsFunc(s.Rects, func(r measure.Rect) bool { return !r.Filled() && r.Width == "5" && r.X == x }) {
			return fmt.Errorf("a row of parts starts at %d", x)
		}
	}
	return nil
}

// readTrays: every block lies in a tray with blocks of its own size, each tray is
// for blocks a tenth as large as the one before, and the number under a tray is
// how many blocks lie there or what they are worth.
func (s sight) readTrays(one int, t problems.Truth) error {
	trays := s.trays()
	for _, m := range s.bare() {
		named := slices.ContainsFunc(t.Numbers, func(n *big.Rat) bool { return n.Cmp(m.Value) == 0 })
		if len(trays) > 0 && m.X < trays[0].X && !named {
			return fmt.Errorf("%s is written beside the blocks", m.Value.RatString())
		}
	}
	for _, f := range s.pieces() {
		if !slices.ContainsFunc(trays, func(tray measure.Rect) bool { return tray.Contains(f.Box) }) {
			return fmt.Errorf("the block at %v lies in no tray", f.Box)
		}
	}
	for i, tray := range trays {
		worth := int64(1)
		for range len(trays) - 1 - i {
			worth *= 10
		}
		n := int64(0)
		for _, f := range s.Faces() {
			filled := s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved)
			empty := s.ghost(f.Paint) || s.empty(f.Paint, scene.First, scene.Second)
			if !filled && !empty || !tray.Overlaps(f.Box) {
				continue
			}
			if !tray.Contains(f.Box) {
				return fmt.Errorf("the block at %v lies half in a tray", f.Box)
			}
			is := int64(f.Area() / (one * one))
			if s.Cube(f) {
				is *= 10
			}
			if is != worth && !(empty && is*10 == worth) {
				return fmt.Errorf("a block of %d lies among those of %d", is, worth)
			}
			if filled {
				n++
			}
			if is > 1 && f.Cells() == 1 && (filled || f.Dash == "") && !s.Cube(f) {
				return fmt.Errorf("the block at %v is not ruled", f.Box)
			}
		}
		for _, said := range s.Statements() {
			w := said[len(said)-1]
			if v, ok := w.Value(); ok && w.X > tray.X && w.X < tray.Right() && w.Y < tray.Bottom()+60 && slices.ContainsFunc(said, func(w measure.Word) bool { return w.Text == "−" }) && v.Cmp(whole(n)) != 0 {
				return fmt.Errorf("%d blocks of %d lie over %q", n, worth, said)
			}
		}
		// Of numbers one under another, as in a column, the lowest counts.
		var under, column []measure.Mark
		for _, m := range s.bare() {
			const reach = 130
			if m.Y < tray.Bottom() || m.Y > tray.Bottom()+reach || m.X < tray.X || m.X > tray.Right() {
				continue
			}
			column = append(column, m)
			if !s.inStatement(m) {
				under = append(under, m)
			}
		}
		slices.SortFunc(column, func(a, b measure.Mark) int { return a.Y - b.Y })
		if len(column) == 3 && column[0].Y < column[1].Y && column[1].Y < column[2].Y {
			if v := new(big.Rat).Sub(column[0].Value, column[1].Value); v.Cmp(column[2].Value) != 0 {
				return fmt.Errorf("%s less %s is not %s", column[0].Value.RatString(), column[1].Value.RatString(), column[2].Value.RatString())
			}
		}
		slices.SortFunc(under, func(a, b measure.Mark) int { return b.Y - a.Y })
		if len(under) > 0 {
			if v := under[0].Value.Num().Int64(); v != n && v != n*worth {
				return fmt.Errorf("%d blocks of %d lie over the number %d", n, worth, v)
			}
		}
	}
	return nil
}

// inStatement reports whether a sign stands beside a number.
func (s sight) inStatement(m measure.Mark) bool {
	return slices.ContainsFunc(s.Texts, func(t measure.Text) bool {
		dx, dy := t.X-m.X, t.Y-t.Size*36/100-m.Y
		return strings.ContainsAny(t.Words, "=<>−+") && max(dx, -dx) < 90 && max(dy, -dy) <= 2
	})
}

// cells are the parts of a bar that are not shaded: thin faces in a heavy outline,
// less the shaded ones.
func (s sight) emptyCells() []measure.Box {
	var list []measure.Box
	pieces := s.pieces()
	for _, f := range s.Faces() {
		if f.Filled() || f.Width == "5" || f.Dash != "" || f.Cols() == 0 {
			continue
		}
		w := f.W / f.Cols()
		for i := range f.Cols() {
			cell := measure.Box{X: f.X + i*w, Y: f.Y, W: w, H: f.H}
			if !slices.ContainsFunc(pieces, func(p measure.Face) bool { return p.Overlaps(cell) }) {
				list = append(list, cell)
			}
		}
	}
	return list
}

// readCuts: every part of a bar, shaded or not, is one of equal parts of the
// whole, and those of a fraction are the parts that it names or finer ones.
func (s sight) readCuts(t problems.Truth) error {
	const heavy = "5"
	wholeLen := 0
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == heavy {
			wholeLen = r.W
		}
	}
	named := map[scene.Role]int64{}
	a, b, two := s.problem.Operands()
	if two {
		named[scene.First], named[scene.Second] = a.Value.Den(), b.Value.Den()
	} else if n, is := s.problem.Left.(arithmetic.Number); is {
		named[scene.First] = n.Value.Den()
	}
	for _, f := range s.pieces() {
		cols := f.Cols()
		if cols == 0 || f.W%cols != 0 || wholeLen%(f.W/cols) != 0 {
			return fmt.Errorf("a part of %d of %d units is not one of equal parts", f.W/max(1, cols), wholeLen)
		}
		parts := int64(wholeLen / (f.W / cols))
		for role, den := range named {
			if s.is(f.Paint, role) && parts != 1 && parts%den != 0 {
				return fmt.Errorf("parts of which %d make a whole, for a fraction with the denominator %d", parts, den)
			}
		}
	}
	rows := map[int]int{} // by height, how long a shaded part is
	for _, f := range s.pieces() {
		if w := f.W / f.Cols(); rows[f.Y] == 0 || w < rows[f.Y] {
			rows[f.Y] = w
		}
	}
	alone := false // each number has a bar of its own
	switch s.problem.Kind {
	case arithmetic.Claim, arithmetic.Comparison:
		_, _, alone = s.problem.Operands()
	case arithmetic.Show, arithmetic.Ordering, arithmetic.Renaming, arithmetic.SimplestForm, arithmetic.MixedForm, arithmetic.FractionForm:
		alone = true
	}
	empty := s.emptyCells()
	for _, c := range empty {
		part := rows[c.Y]
		uneven := part > 0 && c.W%part != 0 && part%c.W != 0
		if alone && part > 0 && part != wholeLen {
			uneven = c.W != part && c.W != wholeLen
		}
		if uneven || wholeLen%c.W != 0 && c.W%wholeLen != 0 {
			return fmt.Errorf("an empty part of %d beside shaded ones of %d", c.W, part)
		}
	}
	return both(s.alignedRows(), s.filledUp(empty, alone))
}

// readFractionNames: every fraction that is written in a picture of bars is a
// number of the problem, the answer, how far two of them are apart, or what two
// are together; one part alone names the parts.
func (s sight) readFractionNames(t problems.Truth) error {
	values := slices.Clone(t.Numbers)
	if t.Value != nil {
		values = append(values, t.Value)
	}
	values = append(values, t.Sides...)
	if len(t.Sides) == 2 {
		values = append(values, new(big.Rat).Sub(t.Sides[0], t.Sides[1]), new(big.Rat).Sub(t.Sides[1], t.Sides[0]))
	}
	for _, line := range s.Lines() {
		if slices.ContainsFunc(line, func(w measure.Word) bool { return strings.ContainsAny(w.Text, "=<>≠+−") }) {
			continue // read as a statement
		}
		for _, w := range line {
			v, ok := w.Value()
			if !ok || !strings.Contains(w.Text, "/") || v.Num().IsInt64() && v.Num().Int64() == 1 && s.problem.Kind != arithmetic.Claim && s.problem.Kind != arithmetic.Comparison {
				continue
			}
			if !slices.ContainsFunc(values, func(x *big.Rat) bool { return x.Cmp(v) == 0 }) {
				return fmt.Errorf("%s is written, which is no number of the problem", w.Text)
			}
		}
	}
	return nil
}

// readSides: the numbers over an array and beside it are its columns and rows.
func (s sight) readSides(box measure.Box, rows, cols int64) error {
	if rows == 0 || cols == 0 {
		return nil
	}
	over, left := int64(0), int64(0)
	for _, m := range s.bare() {
		v := m.Value.Num().Int64()
		switch {
		case m.Y < box.Y && m.Y > box.Y-60 && m.X > box.X-20 && m.X < box.Right()+20:
			over += v
		case m.X < box.X && m.Y > box.Y-30 && m.Y < box.Bottom()+30:
			left += v
		}
	}
	if over != 0 && over != cols {
		return fmt.Errorf("%d columns under the number %d", cols, over)
	}
	if left != 0 && left != rows && left != 2*rows { // the parts, the whole side or both
		return fmt.Errorf("%d rows beside numbers that come to %d", rows, left)
	}
	for _, t := range s.Texts {
		if n, ok := strings.CutSuffix(t.Words, " in each row"); ok && n != "?" && n != arithmetic.Grouped(cols) {
			return fmt.Errorf("%d columns under %q", cols, t.Words)
		}
	}
	return nil
}

// readSplits: a line that splits an array runs between its counters or along the
// edges of its parts.
func (s sight) readSplits() error {
	for _, p := range s.Paths {
		if len(p.Points) != 2 || p.Closed || p.Stroke != s.paint[scene.Ink][2] || p.Box().W+p.Box().H < 60 {
			continue
		}
		b := p.Box()
		for _, c := range s.Circles {
			if b.X < c.X+c.R && b.Right() > c.X-c.R && b.Y < c.Y+c.R && b.Bottom() > c.Y-c.R {
				return fmt.Errorf("a line runs through the counter at %d, %d", c.X, c.Y)
			}
		}
		for _, f := range s.pieces() {
			upright := b.W == 0 && b.X > f.X && b.X < f.Right() && b.Y < f.Bottom() && b.Bottom() > f.Y
			level := b.H == 0 && b.Y > f.Y && b.Y < f.Bottom() && b.X < f.Right() && b.Right() > f.X
			if upright && b.H >= f.H || level && b.W >= f.W {
				return fmt.Errorf("a line runs through the part at %v", f.Box)
			}
		}
	}
	return nil
}

// readLandings: every jump leaves from and lands on a tick, a point or the end of
// a strip, and every point lies where a jump does, if there are jumps in one row.
func readLandings(s sight, _ problems.Truth) error {
	if s.Says("?") {
		return nil // an end that is asked for
	}
	for _, y := range s.lines() {
		places := map[int]bool{}
		for _, c := range s.Circles {
			places[c.X] = places[c.X] || c.Y == y
		}
		for _, r := range s.Rects {
			if r.Y <= y && r.Bottom() >= y {
				places[r.X], places[r.Right()] = true, true
			}
		}
		for _, p := range s.Paths {
			if len(p.Curves) > 0 {
				continue
			}
			if b := p.Box(); b.H == 0 && b.Y == y {
				places[b.X] = true
			}
			for i := range p.Points[1:] {
				q, r := p.Points[i], p.Points[i+1]
				if q.X == r.X && min(q.Y, r.Y) <= y && y <= max(q.Y, r.Y) && !p.Closed {
					places[q.X] = true
				}
			}
		}
		for _, j := range s.Jumps() {
			if j.Y == y && j.Dash == "" && (!places[j.X1] || !places[j.X2]) {
				return fmt.Errorf("a jump from %d to %d without a mark at its ends", j.X1, j.X2)
			}
		}
	}
	return nil
}

// readTotals: a number to the right of a row is what there is up to that row, or
// the answer.
func (s sight) readTotals(r rectangle, t problems.Truth) error {
	for _, m := range s.bare() {
		if r.rows == 0 || m.X < r.box.Right() || m.Y < r.box.Y || m.Y > r.box.Bottom() || s.inPlate(m) {
			continue
		}
		row := int64(m.Y-r.box.Y)*r.rows/int64(r.box.H) + 1
		if m.Value.Cmp(t.Value) != 0 && m.Value.Cmp(whole(row*r.cols)) != 0 {
			return fmt.Errorf("%s is written at row %d of %d", m.Value.RatString(), row, r.cols)
		}
	}
	return nil
}

// inPlate reports whether a number stands on a plate of its own.
func (s sight) inPlate(m measure.Mark) bool {
	return slices.ContainsFunc(s.Rects, func(r measure.Rect) bool {
		return r.Fill == s.paint[scene.Ink][0] && r.Stroked() && r.Contains(measure.Box{X: m.X, Y: m.Y})
	})
}

// readTicks: the ticks of a line that no jump, point or number belongs to lie
// evenly among the others.
func readTicks(s sight, _ problems.Truth) error {
	for _, y := range s.lines() {
		a, err := s.axis(y)
		if err != nil || !a.sure {
			continue
		}
		own := map[int]bool{}
		for _, x := range a.points {
			own[x] = true
		}
		for _, j := range s.Jumps() {
			own[j.X1], own[j.X2] = true, true
		}
		// Ticks may stand on one side of the line only: those of each side are even.
		for _, side := range []int{-1, 1} {
			places, half, onOther := map[int]bool{}, false, false
			for _, p := range s.Paths {
				for i := range max(0, len(p.Points)-1) {
					q, r := p.Points[i], p.Points[i+1]
					up, down := min(q.Y, r.Y) < y, max(q.Y, r.Y) > y
					if q.X != r.X || min(q.Y, r.Y) > y || max(q.Y, r.Y) < y || p.Closed || len(p.Curves) > 0 {
						continue
					}
					if side < 0 && up || side > 0 && down {
						places[q.X] = true
						half = half || up != down
					} else {
						onOther = true
					}
				}
			}
			if onOther && !half {
				continue
			}
			var ticks []int
			for x := range places {
				if !own[x] || s.problem.Kind == arithmetic.Show {
					ticks = append(ticks, x)
				}
			}
			slices.Sort(ticks)
			if len(ticks) > 2 && !evenly(ticks, places) {
				return fmt.Errorf("the ticks at %v are not even", ticks)
			}
		}
	}
	return nil
}

// evenly reports whether ticks lie on a grid over the line, to a unit, of which a
// good part of the places is marked. Grids finer than dense are not looked for, and
// a line with places so near each other passes.
func evenly(ticks []int, places map[int]bool) bool {
	const dense = 12
	var all []int
	for x := range places {
		all = append(all, x)
	}
	slices.Sort(all)
	for i := range all[1:] {
		if all[i+1]-all[i] < dense {
			return true
		}
	}
	lo, long := ticks[0], ticks[len(ticks)-1]-ticks[0]
	on := func(x, n int) bool {
		k := ((x-lo)*n + long/2) / long
		off := (x-lo)*n - k*long
		return max(off, -off) <= n+n/4
	}
	for n := 1; n <= long/dense; n++ {
		marked := 0
		for _, x := range all {
			if lo <= x && x <= lo+long && on(x, n) {
				marked++
			}
		}
		if marked*100 >= 38*(n+1) && !slices.ContainsFunc(ticks, func(x int) bool { return !on(x, n) }) {
			return true
		}
	}
	return false
}

// errNoJump says that a line has points and nothing that leads from one to the other.
var errNoJump = errors.New("there is no jump")
