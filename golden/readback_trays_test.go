package golden

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

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
	if err := s.readTrayNames(trays); err != nil {
		return err
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

// readTrayNames: the word over a tray is the name of its place.
func (s sight) readTrayNames(trays []measure.Rect) error {
	places := []string{"ones", "tens", "hundreds", "thousands"}
	for _, t := range s.Texts {
		named := slices.Index(places, t.Words)
		if named < 0 {
			continue
		}
		for i, tray := range trays {
			const over = 50
			if t.X > tray.X && t.X < tray.Right() && t.Y < tray.Y && t.Y > tray.Y-over && named != len(trays)-1-i {
				return fmt.Errorf("the tray of the %s is called %s", places[len(trays)-1-i], t.Words)
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
