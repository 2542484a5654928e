package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readStatements: whatever a picture says in symbols is so.
func readStatements(s sight, _ problems.Truth) error {
	for _, said := range s.Statements() {
		if err := said.Check(); err != nil {
			return err
		}
	}
	return nil
}

// unscaled reports whether a picture says that it is not to scale.
func (s sight) unscaled() bool {
	return slices.ContainsFunc(s.Texts, func(t measure.Text) bool { return strings.Contains(t.Words, "not to scale") })
}

// signed is a jump's name: +70, −8, + 2/6.
type signed struct {
	x int
	v *big.Rat
}

// jumpNames are the signed numbers above a height, from left to right.
func (s sight) jumpNames(above, below int) []signed {
	var list []signed
	for _, line := range s.Lines() {
		for i := range max(0, len(line)-1) {
			sign, number := line[i], line[i+1]
			v, ok := number.Value()
			near := number.Left-sign.Right < number.Size
			if !ok || !near || sign.Text != "+" && sign.Text != "−" || number.Y >= below || number.Y < above {
				continue
			}
			if i > 0 {
				if _, sum := line[i-1].Value(); sum && sign.X-line[i-1].X < sign.Size*3/2 {
					continue // it stands between two numbers
				}
			}
			if sign.Text == "−" {
				v = new(big.Rat).Neg(v)
			}
			list = append(list, signed{s.ledTo(sign, number, below), v})
		}
	}
	slices.SortStableFunc(list, func(a, b signed) int { return a.x - b.x })
	return list
}

// ledTo is the place that a name above a line belongs to: the lower end of the
// thin line that hangs from it, or else its own middle.
func (s sight) ledTo(sign, number measure.Word, below int) int {
	x, highest := number.X, below
	for _, p := range s.Paths {
		if len(p.Curves) > 0 || p.Closed || p.Width != "1.5" {
			continue
		}
		top, foot := p.Points[0], p.Points[len(p.Points)-1]
		if top.Y > foot.Y {
			top, foot = foot, top
		}
		hangs := top.Y > number.Y && top.Y < number.Y+number.Size*3/2 && sign.Left <= top.X && top.X <= number.Right
		if hangs && foot.Y < below && top.Y < highest {
			x, highest = foot.X, top.Y
		}
	}
	return x
}

// namesOf are the names of the jumps on a height, in the order of the jumps: those
// of jumps that go below it stand there. nil where some cannot be told apart.
func (s sight) namesOf(above, y int, jumps []measure.Jump) []signed {
	up, low := 0, s.lowNames(y)
	names := s.jumpNames(above, y)
	if len(names) == 0 {
		names = s.lengthNames(above, y, jumps)
	}
	var list []signed
	for _, j := range jumps {
		switch {
		case j.Below && len(low) > 0:
			list, low = append(list, low[0]), low[1:]
		case !j.Below && up < len(names):
			list, up = append(list, names[up]), up+1
		}
	}
	if up < len(names) {
		return append(list, names[up:]...)
	}
	if len(list) == 1 && alike(jumps) {
		return slices.Repeat(list, len(jumps)) // one name for all of a row
	}
	return list
}

// alike reports whether jumps are equally long, in one direction.
func alike(jumps []measure.Jump) bool {
	const off = 1
	for _, j := range jumps {
		if d := (j.X2 - j.X1) - (jumps[0].X2 - jumps[0].X1); max(d, -d) > off {
			return false
		}
	}
	return true
}

// lowNames are the signed numbers below a line, from left to right, that stand under
// the middle of a jump which goes below it.
func (s sight) lowNames(y int) []signed {
	var list []signed
	const row = 110
	for _, line := range s.Lines() {
		for i := range max(0, len(line)-1) {
			sign, number := line[i], line[i+1]
			v, ok := number.Value()
			if !ok || sign.Text != "+" && sign.Text != "−" || number.Left-sign.Right >= number.Size || number.Size >= scene.Large || number.Y <= y || number.Y > y+row {
				continue
			}
			if sign.Text == "−" {
				v = new(big.Rat).Neg(v)
			}
			list = append(list, signed{(sign.Left + number.Right) / 2, v})
		}
	}
	slices.SortStableFunc(list, func(a, b signed) int { return a.x - b.x })
	return list
}

// lengthNames are the numbers above a height that say how long a jump is: 1/4, or
// 457 in "457 away". They have no sign; that of the jump in the same place is
// theirs.
func (s sight) lengthNames(above, below int, jumps []measure.Jump) []signed {
	var list []signed
	for _, line := range s.Lines() {
		for i, w := range line {
			v, ok := w.Value()
			if !ok || w.Y >= below-20 || w.Y < above {
				continue
			}
			if i+1 < len(line) && line[i+1].Text == "×" || i > 0 && line[i-1].Text == "×" {
				return nil // 9 × 1 is the name of many
			}
			list = append(list, signed{w.X, v})
		}
	}
	if len(list) != len(jumps) {
		return nil
	}
	slices.SortStableFunc(list, func(a, b signed) int { return a.x - b.x })
	for i, j := range jumps {
		if j.X2 < j.X1 {
			list[i].v = new(big.Rat).Neg(list[i].v)
		}
	}
	return list
}

// readJumpNames: on every line the jumps with a name are as long as it says, in
// the right direction.
func readJumpNames(s sight, _ problems.Truth) error {
	jumps := s.Jumps()
	if len(jumps) == 0 {
		return nil
	}
	above := 0
	for _, y := range s.lines() {
		var here []measure.Jump
		for _, j := range jumps {
			if j.Y == y {
				here = append(here, j)
			}
		}
		slices.SortStableFunc(here, func(a, b measure.Jump) int { return a.X1 + a.X2 - b.X1 - b.X2 })
		names := s.namesOf(above, y, here)
		above = y
		if len(here) == 0 || len(names) == 0 {
			continue
		}
		if len(here) != len(names) && !oneName(here, names) {
			return errUnread
		}
		for len(names) < len(here) {
			names = append(names, names[0]) // of jumps that are alike only some have names
		}
		for i, j := range here {
			if (j.X2 > j.X1) != (names[i].v.Sign() > 0) {
				return fmt.Errorf("the jump called %s goes from %d to %d", names[i].v.RatString(), j.X1, j.X2)
			}
		}
		if err := s.longAsNamed(y, here, names); err != nil {
			return err
		}
		for i, j := range here {
			const small = 16 // units; a number may stand under the wrong end of such a jump
			if slices.ContainsFunc(here, func(j measure.Jump) bool { return max(j.X2-j.X1, j.X1-j.X2) < small }) {
				break
			}
			from, to := s.nameAt(y, j.X1), s.nameAt(y, j.X2)
			if from != nil && to != nil && new(big.Rat).Sub(to, from).Cmp(names[i].v) != 0 {
				return fmt.Errorf("the jump from %s to %s is called %s", from.RatString(), to.RatString(), names[i].v.RatString())
			}
		}
	}
	return nil
}

// oneName reports whether all jumps of a line go equally far the same way, and all names
// are one, so that some of them tell all.
func oneName(jumps []measure.Jump, names []signed) bool {
	for _, j := range jumps {
		if d := (j.X2 - j.X1) - (jumps[0].X2 - jumps[0].X1); d < -1 || d > 1 {
			return false
		}
	}
	for _, n := range names {
		if n.v.Cmp(names[0].v) != 0 {
			return false
		}
	}
	return len(names) < len(jumps)
}

// nameAt is the number that stands just under a place of a line, or nil.
func (s sight) nameAt(y, x int) *big.Rat {
	const row = 75
	for _, m := range s.Marks() {
		if m.X == x && m.Y > y && m.Y < y+row {
			return m.Value
		}
	}
	return nil
}

// longAsNamed compares the lengths of jumps with their names: by the scale of the
// line, or where there is none with each other.
func (s sight) longAsNamed(y int, jumps []measure.Jump, names []signed) error {
	if s.unscaled() {
		return nil
	}
	unit := new(big.Rat)
	if a, err := s.axis(y); err == nil && a.sure {
		unit.Abs(a.Unit)
	} else {
		longest := 0
		for i, j := range jumps {
			if w := max(j.X2-j.X1, j.X1-j.X2); w > longest {
				longest = w
				unit.Quo(names[i].v, big.NewRat(int64(j.X2-j.X1), 1))
			}
		}
	}
	for i, j := range jumps {
		off := big.NewRat(int64(j.X2-j.X1), 1)
		off.Sub(off.Mul(off, unit), names[i].v)
		if off.Abs(off).Cmp(new(big.Rat).Mul(unit, big.NewRat(3, 1))) > 0 {
			return fmt.Errorf("the jump from %d to %d is called %s", j.X1, j.X2, names[i].v.RatString())
		}
	}
	return nil
}

// astray is how far, in units, a number may stand from its place on a line when
// no line leads to it.
const astray = 20

// readNumerals: along a line every number stands under or over its own place, or
// a thin line leads from the one to the other.
func readNumerals(s sight, _ problems.Truth) error {
	if s.unscaled() || len(s.Faces()) > 0 && len(s.Circles) == 0 && len(s.Jumps()) == 0 {
		return nil
	}
	for _, y := range s.lines() {
		a, err := s.axis(y)
		if !a.sure || errors.Is(err, errUnread) {
			continue
		}
		if err != nil {
			return err
		}
		for _, m := range s.Marks() {
			const row = 60
			if m.Y <= y || m.Y > y+row || s.led(m) || a.within(astray, m.X, m.Value) {
				continue
			}
			return fmt.Errorf("%s stands at the place of %s", m.Value.RatString(), a.Value(m.X).RatString())
		}
	}
	return nil
}

// led reports whether a thin line ends just above or below a number.
func (s sight) led(m measure.Mark) bool {
	return slices.ContainsFunc(s.Paths, func(p measure.Path) bool {
		const reach = 70 // from the middle of a number to the end of the line, up or down
		if len(p.Curves) > 0 || p.Closed || p.Width == "2.5" || p.Width == "5" {
			return false
		}
		return slices.ContainsFunc([]measure.Point{p.Points[0], p.Points[len(p.Points)-1]}, func(q measure.Point) bool {
			return max(q.X-m.X, m.X-q.X) <= 4 && max(q.Y-m.Y, m.Y-q.Y) <= reach && p.Box().W > 0
		})
	})
}
