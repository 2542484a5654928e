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

// withoutStrips is a picture down to the strips that show larger what is left
// over, and the height at which they begin; 0 when there are none.
func (s sight) withoutStrips() (sight, int) {
	top := 0
	for _, t := range s.Texts {
		if name := t.Words; strings.Contains(name, "left over") && strings.Contains(name, "cut in") || strings.HasSuffix(name, "tenths") {
			top = t.Y - t.Size
		}
	}
	if top == 0 {
		return s, 0
	}
	s.Rects = slices.DeleteFunc(slices.Clone(s.Rects), func(r measure.Rect) bool { return r.Y > top })
	s.Paths = slices.DeleteFunc(slices.Clone(s.Paths), func(p measure.Path) bool { return p.Box().Y > top })
	return s, top
}

// readStrips: one strip for each thing left over, cut as its name says, and what
// is marked of all of them is what a row gets.
func (s sight) readStrips(top int, t problems.Truth) error {
	var strips, marked []measure.Face
	inside := func(m measure.Face) bool {
		return slices.ContainsFunc(strips, func(f measure.Face) bool { return f.Contains(m.Box) })
	}
	for _, f := range s.Faces() {
		switch {
		case f.Y < top:
		case f.Fill == s.paint[scene.Result][0]:
			marked = append(marked, f)
		case f.Fill == s.paint[scene.Tray][0]:
			strips = append(strips, f)
		}
	}
	for i, f := range strips {
		if i > 0 && (f.W != strips[i-1].W && f.Y == strips[i-1].Y || f.H != strips[0].H) {
			return errors.New("the strips are not of one size")
		}
	}
	if slices.ContainsFunc(marked, func(m measure.Face) bool { return !inside(m) }) {
		return errors.New("a part lies on no strip")
	}
	parts := int64(10)
	if s.problem.Rest == arithmetic.AsPart {
		parts = t.Numbers[1].Num().Int64()
	}
	sum, unit, y := new(big.Rat), big.NewRat(1, 1), 0
	left := t.Remainder.Int64()
	for len(strips) > 0 {
		// The strips of one name: as many as were left over.
		if int64(len(strips)) < left {
			return fmt.Errorf("%d strips for %d left over", len(strips), left)
		}
		cells := int64(0)
		for _, f := range strips[:left] {
			if int64(f.Cells()) != parts {
				return fmt.Errorf("a strip is cut in %d, not in %d", f.Cells(), parts)
			}
			on := int64(0)
			for _, m := range marked {
				if f.Contains(m.Box) {
					on += int64(m.Cells())
					if m.W*int(parts) != f.W*m.Cells() || m.H != f.H {
						return fmt.Errorf("%d of %d parts of a strip are %d of %d units long", m.Cells(), parts, m.W, f.W)
					}
				}
			}
			if s.problem.Rest == arithmetic.AsPart && on != 1 {
				return fmt.Errorf("%d parts of a strip are marked", on)
			}
			cells, y = cells+on, f.Y
		}
		strips = strips[left:]
		unit.Quo(unit, whole(parts))
		sum.Add(sum, new(big.Rat).Mul(unit, whole(cells)))
		if s.problem.Rest == arithmetic.AsPart {
			break
		}
		left = left*10 - cells*t.Numbers[1].Num().Int64()
	}
	if y == 0 {
		return errors.New("there are no strips")
	}
	if left > 0 && s.problem.Rest == arithmetic.AsDecimal {
		return errNotAll
	}
	return agree("what a row gets of what is left over", sum, new(big.Rat).Sub(t.Value, new(big.Rat).SetInt(t.Quotient)))
}

// errNotAll says that something is left over still, as in the middle of a lesson.
var errNotAll = errors.New("something is left over still")

// readCutRest reads the array and what is left over, and then the strips.
func readCutRest(s sight, t problems.Truth) error {
	upper, top := s.withoutStrips()
	if top == 0 {
		return errors.New("what is left over is not cut")
	}
	upper.problem.Rest = arithmetic.LeftOver
	return both(readArray(upper, t), s.readStrips(top, t))
}

// stepsOfCutRest: the steps of a division, and then the strips.
func stepsOfCutRest(steps []sight, t problems.Truth) error {
	var plain []sight
	for i, s := range steps {
		upper, top := s.withoutStrips()
		upper.problem.Rest = arithmetic.LeftOver
		plain = append(plain, upper)
		if top == 0 {
			continue
		}
		if err := s.readStrips(top, t); err != nil && (i == len(steps)-1 || err != errNotAll) {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return stepsOfArray(plain, t)
}

// readRoundedUp: the line in the largest letters has the numbers of a division,
// its quotient and remainder, and what it is rounded up to: 17 ÷ 5 = 3 r 2 → 4.
func (s sight) readRoundedUp(t problems.Truth) error {
	var foot []measure.Word
	for _, line := range s.Lines() {
		if len(foot) == 0 || line[0].Size > foot[0].Size {
			foot = line
		}
	}
	up := new(big.Int).Add(t.Quotient, big.NewInt(1))
	g := func(n *big.Int) string { return arithmetic.Grouped(n.Int64()) }
	want := []string{g(t.Numbers[0].Num()), "÷", g(t.Numbers[1].Num()), "=", g(t.Quotient), "r", g(t.Remainder), "→", g(up)}
	var found []string
	for _, w := range foot {
		found = append(found, w.Text)
	}
	if !slices.Equal(found, want) {
		return fmt.Errorf("%v at the foot, not %v", found, want)
	}
	return nil
}

// readNoLine: where there are too few for one line, all are left over, drawn one by
// one or in a bowl.
func (s sight) readNoLine(t problems.Truth) error {
	n := int64(0)
	for _, f := range s.pieces() {
		n += int64(f.Cells())
	}
	for _, c := range s.Circles {
		if s.is(c.Paint, scene.First) {
			n++
		}
	}
	if !s.Says(t.Remainder.String() + " left over") {
		return errors.New("what is left over has no number")
	}
	if n == 0 && s.bowl() {
		return nil
	}
	return agree("what is left over", whole(n), t.Numbers[0])
}
