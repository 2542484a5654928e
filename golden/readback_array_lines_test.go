package golden

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"modeler/golden/measure"
	"modeler/models/scene"
)

// place is the middle of one thing in an array, or of one that is gone from it.
type place struct {
	x, y int
	gone bool
}

// places are the things of an array one by one: counters, or the cells of squared
// paper.
func (s sight) places() (list []place, box measure.Box) {
	cell := 0
	grow := func(b measure.Box) {
		if len(list) == 0 {
			box = b
		}
		box = around(box, b)
	}
	for _, c := range s.Circles {
		there := s.is(c.Paint, scene.First, scene.Second, scene.Result, scene.Moved)
		if there || s.ghost(c.Paint) {
			grow(measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R})
			list = append(list, place{c.X, c.Y, !there})
		}
	}
	for _, f := range s.pieces() {
		if f.Cells() > 1 {
			cell = f.W / f.Cols()
		}
	}
	cells := func(b measure.Box, gone bool) {
		for y := b.Y + cell/2; y < b.Bottom(); y += cell {
			for x := b.X + cell/2; x < b.Right(); x += cell {
				grow(b)
				list = append(list, place{x, y, gone})
			}
		}
	}
	if cell == 0 {
		return list, box
	}
	for _, f := range s.pieces() {
		cells(f.Box, false)
	}
	for _, r := range s.Rects {
		if s.ghost(r.Paint) {
			cells(r.Box, true)
		}
	}
	return list, box
}

// readLines: what is there and what is gone stands in full rows, but for the last
// one, and the numbers beside the array and over it are those of its rows and
// columns, of those that stay and of those that are gone.
func (s sight) readLines(h heap) error {
	list, box := s.places()
	if s.unscaled() {
		return s.readBarLines()
	}
	if len(list) == 0 {
		return nil // an area to scale
	}
	rows, cols := map[int][]place{}, map[int][]place{}
	for _, p := range list {
		rows[p.y], cols[p.x] = append(rows[p.y], p), append(cols[p.x], p)
	}
	last := 0
	for y := range rows {
		last = max(last, y)
	}
	for y, row := range rows {
		if y != last && len(row) != len(cols) || len(row) > len(cols) {
			return fmt.Errorf("%d in a row of %d", len(row), len(cols))
		}
	}
	gone := func(lines map[int][]place) (n int64) {
		for _, line := range lines {
			if !slices.ContainsFunc(line, func(p place) bool { return !p.gone }) {
				n++
			}
		}
		return n
	}
	r, c := int64(len(rows)), int64(len(cols))
	beside := []int64{r, gone(rows), r - gone(rows)}
	over := []int64{c, gone(cols), c - gone(cols)}
	for _, m := range s.bare() {
		side := &beside
		switch {
		case m.X < box.X:
		case m.Y < box.Y:
			side = &over
		default:
			continue
		}
		at := slices.Index(*side, m.Value.Num().Int64())
		if at < 0 {
			return fmt.Errorf("%s is written beside %d rows of %d", m.Value.RatString(), r, c)
		}
		*side = slices.Delete(*side, at, at+1) // each stands there once
	}
	for _, text := range s.Texts {
		if n, ok := strings.CutSuffix(text.Words, " in each row"); ok && n != strconv.FormatInt(c, 10) {
			return fmt.Errorf("%d columns under %q", c, text.Words)
		}
		if n, ok := strings.CutPrefix(text.Words, "− "); ok && n != strconv.FormatInt(h.gone, 10) {
			return fmt.Errorf("%d are gone beside %q", h.gone, text.Words)
		}
	}
	struck := false
	for _, p := range s.Paths {
		struck = struck || p.Stroke == s.paint[scene.Gone][1]
	}
	if !struck {
		return errors.New("no stroke goes through what is gone")
	}
	return nil
}

// readBarLines: of an array with a bar for each row, all bars lie one under
// another below their bracket, and the numbers beside them are those of the rows,
// of those that stay and of those that are gone.
func (s sight) readBarLines() error {
	var all measure.Box
	rise, there := 0, 0
	for i, f := range s.pieces() {
		if i == 0 {
			all = f.Box
		}
		if f.Rows() == 0 {
			return fmt.Errorf("the bars at %v are not alike", f.Box)
		}
		all = around(all, f.Box)
		rise = f.H / f.Rows()
	}
	if rise == 0 {
		return errors.New("there is no bar")
	}
	for _, f := range s.pieces() {
		if f.H%rise != 0 {
			return fmt.Errorf("a bar is %d high and others %d", f.H, rise)
		}
		there += f.H / rise
	}
	gone := 0
	for _, r := range s.Rects {
		if s.ghost(r.Paint) {
			all = around(all, r.Box)
			gone += r.H / rise
		}
	}
	if err := s.bracketed(measure.Face{Rect: measure.Rect{Box: all}}); err != nil {
		return err
	}
	rows := all.H / rise
	names := []int{rows, gone, there}
	for _, m := range s.bare() {
		if m.X > all.X {
			continue
		}
		at := slices.Index(names, int(m.Value.Num().Int64()))
		if at < 0 {
			return fmt.Errorf("%s is written beside %d rows, %d of them gone", m.Value.RatString(), rows, gone)
		}
		names = slices.Delete(names, at, at+1) // each stands there once
	}
	return nil
}
