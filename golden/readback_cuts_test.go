package golden

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

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
		_, copies := arithmetic.CopiesClaim(s.problem)
		_, _, two := s.problem.Operands()
		alone = copies || two
	case arithmetic.Show, arithmetic.Product, arithmetic.Division, arithmetic.AsSum, arithmetic.Ordering, arithmetic.Renaming, arithmetic.SimplestForm, arithmetic.MixedForm, arithmetic.FractionForm:
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
	if s.problem.Kind == arithmetic.AsSum || s.problem.Kind == arithmetic.Expression {
		return nil // each is read at its brace
	}
	values := slices.Clone(t.Numbers)
	if t.Value != nil {
		values = append(values, t.Value)
	}
	values = append(values, t.Sides...)
	if s.problem.Kind == arithmetic.Division {
		values = append(values, new(big.Rat).Sub(t.Value, floor(t.Value)))
	}
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
