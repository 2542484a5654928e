package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// stretch is a piece of a bar diagram, or a measure over some of them, with the
// number that stands on it; 0 where none does.
type stretch struct {
	measure.Box
	n      int64
	dashed bool
	paint  measure.Paint
}

// diagram is a bar diagram as it is seen: its rows of pieces from the top, and its
// measures.
type diagram struct {
	rows     [][]stretch
	measures []stretch
}

// diagramRow is how high a piece is, and diagramPlate a plate with a number.
const diagramRow, diagramPlate = 84, 44

// readDiagramParts finds the pieces, the numbers on their plates, and the measures.
func (s sight) readDiagramParts() (diagram, error) {
	var d diagram
	var plates []measure.Box
	for _, r := range s.Rects {
		dashed := !r.Filled() && r.Dash != ""
		switch {
		case r.H == diagramRow && (dashed || s.is(r.Paint, scene.First, scene.Second, scene.Result, scene.Moved)):
			d.put(stretch{Box: r.Box, dashed: dashed, paint: r.Paint})
		case r.H == diagramPlate:
			plates = append(plates, r.Box)
		}
	}
	for _, m := range s.bare() {
		at := slices.IndexFunc(plates, func(b measure.Box) bool { return b.Contains(measure.Box{X: m.X, Y: m.Y}) })
		if at < 0 || m.Value.Sign() == 0 {
			continue // what is 0 has no piece
		}
		x, y := plates[at].X+plates[at].W/2, plates[at].Y+plates[at].H/2
		for _, p := range s.Paths {
			if n := len(p.Points); n == 3 && p.Points[2] == (measure.Point{X: x, Y: plates[at].Y}) {
				x, y = p.Points[0].X, p.Points[0].Y
			}
		}
		if b := d.at(x, y); b != nil {
			b.n = m.Value.Num().Int64()
		} else {
			return d, fmt.Errorf("%s stands on no piece", m.Value.RatString())
		}
	}
	for _, row := range d.rows {
		for i := range row[1:] {
			if gap := row[i+1].X - row[i].Right(); gap < 0 {
				return d, errors.New("two pieces lie on one another")
			}
		}
	}
	d.measures = s.levels()
	return d, nil
}

// put adds a piece to its row, from left to right.
func (d *diagram) put(b stretch) {
	at := slices.IndexFunc(d.rows, func(row []stretch) bool { return row[0].Y == b.Y })
	if at < 0 {
		d.rows, at = append(d.rows, nil), len(d.rows)
	}
	d.rows[at] = append(d.rows[at], b)
	slices.SortFunc(d.rows[at], func(a, b stretch) int { return a.X - b.X })
	slices.SortFunc(d.rows, func(a, b []stretch) int { return a[0].Y - b[0].Y })
}

// at is the piece in which a point lies.
func (d *diagram) at(x, y int) *stretch {
	for _, row := range d.rows {
		for i := range row {
			if row[i].Contains(measure.Box{X: x, Y: y}) {
				return &row[i]
			}
		}
	}
	return nil
}

// levels are the measures: a level line, or two with a number between them, from one
// upright tick to another.
func (s sight) levels() []stretch {
	const half = 11 // of a tick
	var ticks []measure.Point
	for _, p := range s.Paths {
		if len(p.Points) == 2 && p.Points[0].X == p.Points[1].X && p.Points[1].Y-p.Points[0].Y == 2*half {
			ticks = append(ticks, measure.Point{X: p.Points[0].X, Y: p.Points[0].Y + half})
		}
	}
	var list []stretch
	for i := 0; i+1 < len(ticks); i += 2 {
		a, b := ticks[i], ticks[i+1]
		m := stretch{Box: measure.Box{X: a.X, Y: a.Y, W: b.X - a.X}}
		for _, mark := range s.bare() {
			const beside = 40
			if max(mark.Y-a.Y, a.Y-mark.Y) < beside && mark.X > a.X-60 && mark.X < b.X+60 && max(mark.X-a.X-m.W/2, a.X+m.W/2-mark.X) < 70 && !s.plated(mark) {
				m.n = mark.Value.Num().Int64()
			}
		}
		list = append(list, m)
	}
	return list
}

// plated reports whether a number stands on a plate.
func (s sight) plated(m measure.Mark) bool {
	return slices.ContainsFunc(s.Rects, func(r measure.Rect) bool {
		return r.H == diagramPlate && r.Contains(measure.Box{X: m.X, Y: m.Y})
	})
}

// ratio: two lengths are as their numbers, with the ends of each rounded to whole
// units.
func (s sight) ratio(long int, n int64, ofLong int, of int64) error {
	if s.unscaled() || of == 0 {
		return nil
	}
	off := int64(long)*of - n*int64(ofLong)
	if max(off, -off) > 2*of {
		return fmt.Errorf("%d is %d units long where %d is %d", n, long, of, ofLong)
	}
	return nil
}

// inFront are the numbers to the left of the rows, from the top.
func (s sight) inFront(d diagram) []int64 {
	var list []int64
	marks := s.bare()
	slices.SortFunc(marks, func(a, b measure.Mark) int { return a.Y - b.Y })
	for _, m := range marks {
		if !s.plated(m) && m.X < s.firstX(d) {
			list = append(list, m.Value.Num().Int64())
		}
	}
	return list
}

func (s sight) firstX(d diagram) int {
	x := s.W
	for _, row := range d.rows {
		x = min(x, row[0].X)
	}
	return x
}

// counted is the number before some words: 4 in "4 equal parts".
func (s sight) counted() (int64, bool) {
	for _, t := range s.Texts {
		switch strings.TrimSpace(t.Words) {
		case "equal part", "equal parts", "group", "groups", "times as many":
			for _, n := range s.Texts {
				if v, err := strconv.ParseInt(n.Words, 10, 64); err == nil && n.Y == t.Y && n.X < t.X && t.X-n.X < 160 {
					return v, true
				}
			}
		}
	}
	return 0, false
}

// readDiagram reads the whole story of a bar diagram.
func readDiagram(s sight, t problems.Truth) error {
	d, err := s.readDiagramParts()
	if err != nil || len(d.rows) == 0 {
		return errors.Join(err, errIf(len(d.rows) == 0, "there is no bar"))
	}
	switch p := s.problem; {
	case p.Kind == arithmetic.Comparison || p.Story == arithmetic.HowManyMore:
		return s.readTwoBars(d, t)
	case p.Kind == arithmetic.Product || p.Kind == arithmetic.Division || p.Kind == arithmetic.PartOf:
		return s.readEqualBars(d, t)
	}
	return s.readPartsOfBar(d, t)
}

func errIf(bad bool, what string) error {
	if bad {
		return errors.New(what)
	}
	return nil
}

// readPartsOfBar: the measure spans the row, the numbers on the pieces add up to its
// number, they are the numbers of the problem and what was asked, and they are as
// long as they say.
func (s sight) readPartsOfBar(d diagram, t problems.Truth) error {
	if len(d.rows) != 1 || len(d.measures) != 1 {
		return fmt.Errorf("%d rows and %d measures", len(d.rows), len(d.measures))
	}
	row, over := d.rows[0], d.measures[0]
	if row[0].X != over.X || row[len(row)-1].Right() != over.Right() {
		return errors.New("the measure does not span the bar")
	}
	sum, found := int64(0), []int64{over.n}
	for i, b := range row {
		if i > 0 && row[i-1].Right() != b.X {
			return errors.New("there is a gap between two parts")
		}
		sum += b.n
		if !s.inColor(b, t) {
			return fmt.Errorf("the part of %d has the color of another number", b.n)
		}
		found = append(found, b.n)
		if err := s.ratio(b.W, b.n, over.W, over.n); err != nil {
			return err
		}
	}
	if sum != over.n {
		return fmt.Errorf("the parts come to %d and the measure says %d", sum, over.n)
	}
	var want []int64
	for _, v := range append(slices.Clone(t.Numbers), t.Value) {
		want = append(want, v.Num().Int64())
	}
	zero := func(n int64) bool { return n == 0 }
	found, want = slices.DeleteFunc(found, zero), slices.DeleteFunc(want, zero)
	slices.Sort(found)
	slices.Sort(want)
	if !slices.Equal(found, want) {
		return fmt.Errorf("the numbers are %v, not %v", found, want)
	}
	return nil
}

// inColor reports whether a piece has the color of a number that it may be: the
// numbers of the problem take turns, and what is asked has its own.
func (s sight) inColor(b stretch, t problems.Truth) bool {
	if t.Value.Cmp(whole(b.n)) == 0 && s.is(b.paint, scene.Result) {
		return true
	}
	for i, v := range t.Numbers {
		if v.Cmp(whole(b.n)) == 0 && s.is(b.paint, [...]scene.Role{scene.First, scene.Second}[i%2], scene.Moved) {
			return true
		}
	}
	return false
}

// readTwoBars: the numbers in front are those of the problem, the bars are as long as
// they say, and what the one is longer is called so.
func (s sight) readTwoBars(d diagram, t problems.Truth) error {
	front := s.inFront(d)
	if len(front) != 2 || whole(front[0]).Cmp(t.Numbers[0]) != 0 || whole(front[1]).Cmp(t.Numbers[1]) != 0 {
		return fmt.Errorf("the numbers in front are %v", front)
	}
	gap := new(big.Rat).Sub(t.Numbers[0], t.Numbers[1])
	gap.Abs(gap)
	if gap.Sign() == 0 {
		if len(d.rows) != 2 || d.rows[0][0].X != d.rows[1][0].X || d.rows[0][0].W != d.rows[1][0].W || len(d.measures) != 0 {
			return errors.New("the two bars are not alike")
		}
		return nil
	}
	if len(d.rows) != 2 || len(d.measures) != 1 {
		return fmt.Errorf("%d rows and %d measures", len(d.rows), len(d.measures))
	}
	short := 0
	if front[0] > front[1] {
		short = 1
	}
	long, other := d.rows[1-short][0], d.rows[short]
	extra, m := other[len(other)-1], d.measures[0]
	if extra.X != m.X || extra.Right() != m.Right() || extra.Right() != long.Right() || other[0].X != long.X {
		return errors.New("the measure is not on what the one bar is longer")
	}
	if err := agree("how much longer", whole(m.n), gap); err != nil {
		return err
	}
	if len(other) == 1 && front[short] != 0 {
		return errors.New("the shorter bar is not there")
	}
	roles := [...]scene.Role{scene.First, scene.Second}
	if !extra.dashed || !s.is(long.paint, roles[1-short]) || len(other) > 1 && !s.is(other[0].paint, roles[short]) {
		return errors.New("a bar has the color of another")
	}
	return both(s.ratio(extra.W, m.n, long.W, front[1-short]), s.ratio(extra.X-other[0].X, front[short], long.W, front[1-short]))
}
