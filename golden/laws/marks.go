package laws

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/models/scene"
)

// nearMark is how far, in units, a number may stand beside its place on a scale
// without a line that leads to it.
const nearMark = 16

// AtTheirMarks: along a scale every number stands at its own place, or a line
// leads there. Two names of one place stand one under the other: side by side
// neither would be at it.
func AtTheirMarks(p Picture) error {
	marks := p.marks()
	marks = slices.DeleteFunc(slices.Clone(marks), func(m mark) bool {
		// A number that a line leads to may stand beside its place.
		return !onScale(marks, m) || p.led(scene.Text{X: int(m.x), Y: int(m.y), Size: scene.Small})
	})
	for _, it := range p.visible() {
		t, ok := it.Shape.(scene.Text)
		if !ok || t.Size >= scene.Large {
			continue
		}
		from, to, ok := ends(marks, t)
		if !ok || !p.axis(from, to) || p.led(t) {
			continue
		}
		name := spoken(t)
		if strings.Contains(name, "=") && t.X > int(from.x) && t.X < int(to.x) {
			return fmt.Errorf("two names stand side by side in %s", describe(it))
		}
		v, number := valueOf(t)
		if !number || v.Cmp(from.v) < 0 || v.Cmp(to.v) > 0 {
			continue
		}
		x := new(big.Rat).Sub(v, from.v)
		x.Quo(x, new(big.Rat).Sub(to.v, from.v))
		x.Mul(x, big.NewRat(to.x-from.x, 1))
		off := x.Sub(x, big.NewRat(int64(t.X)-from.x, 1))
		if off.Abs(off).Cmp(big.NewRat(nearMark, 1)) > 0 {
			return fmt.Errorf("%s stands %s units beside its place", describe(it), off.FloatString(0))
		}
	}
	return nil
}

// ends are the first and the last mark of the scale in whose row a text stands.
func ends(marks []mark, t scene.Text) (from, to mark, ok bool) {
	var row []mark
	for _, m := range marks {
		if m.y == int64(t.Y) {
			row = append(row, m)
		}
	}
	if len(row) < 3 {
		return from, to, false
	}
	slices.SortFunc(row, func(a, b mark) int { return int(a.x - b.x) })
	from, to = row[0], row[len(row)-1]
	return from, to, from.v.Cmp(to.v) < 0
}

// axis reports whether a level stroke goes from one mark to the other, with a tick
// or a point near each: only then are the numbers those of a line.
func (p Picture) axis(from, to mark) bool {
	var ticks []scene.Box
	for _, it := range p.visible() {
		switch sh := it.Shape.(type) {
		case scene.Line:
			if sh.X1 == sh.X2 {
				ticks = append(ticks, sh.Box())
			}
		case scene.Circle:
			ticks = append(ticks, sh.Box())
		}
	}
	near := func(m mark, y int) bool {
		return slices.ContainsFunc(ticks, func(b scene.Box) bool {
			return int64(b.X) <= m.x+nearMark && int64(b.Right()) >= m.x-nearMark && b.Y <= y && b.Bottom() >= y
		})
	}
	for _, it := range p.visible() {
		line, _ := it.Shape.(scene.Polyline)
		for i := range max(0, len(line)-1) {
			a, b := line[i], line[i+1]
			if a.Y == b.Y && int64(a.X) <= from.x+nearMark && int64(b.X) >= to.x-nearMark && near(from, a.Y) && near(to, a.Y) {
				return true
			}
		}
	}
	return false
}

// led reports whether a thin line ends at a text.
func (p Picture) led(t scene.Text) bool {
	const near = 6
	b := t.Box()
	for _, it := range p.visible() {
		line, ok := it.Shape.(scene.Polyline)
		if !ok || it.Role != scene.Guide || len(line) == 0 {
			continue
		}
		end := line[len(line)-1]
		if max(end.X-t.X, t.X-end.X) <= near && end.Y >= b.Y-near && end.Y <= b.Bottom()+near {
			return true
		}
	}
	return false
}

// spoken is a text with room between its runs, so that 1 1/2 is not 11/2.
func spoken(t scene.Text) string {
	words := make([]string, len(t.Runs))
	for i, r := range t.Runs {
		words[i] = r.Text
		if r.Den != "" {
			words[i] = r.Num + "/" + r.Den
		}
	}
	return strings.Join(words, " ")
}

// plainNumber takes away what stands in a number besides its digits.
var plainNumber = strings.NewReplacer(",", "", "$", "")

// valueOf is the number that a text is: 0.3, 2/4, 1 1/2, $0.50.
func valueOf(t scene.Text) (*big.Rat, bool) {
	sum := new(big.Rat)
	fields := strings.Fields(plainNumber.Replace(spoken(t)))
	for _, f := range fields {
		v, ok := new(big.Rat).SetString(f)
		if !ok || v.Sign() < 0 || f[0] == '+' {
			return nil, false
		}
		sum.Add(sum, v)
	}
	return sum, len(fields) > 0
}
