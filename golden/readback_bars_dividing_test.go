package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// floor is the whole part of a value.
func floor(v *big.Rat) *big.Rat {
	return new(big.Rat).SetInt(new(big.Int).Div(v.Num(), v.Denom()))
}

// whole64 is the whole part of a value in units of a drawing.
func whole64(v *big.Rat) int { return int(floor(v).Num().Int64()) }

// shadedFrom is where the row of one role begins and ends, its height and its lower
// edge, and how long a whole is.
func (s sight) shadedFrom(role scene.Role) (left, right, top, bottom, whole int) {
	left = 1 << 30
	for _, f := range s.pieces() {
		if s.is(f.Paint, role) {
			left, right, top, bottom = min(left, f.X), max(right, f.Right()), f.Y, f.Y+f.H
		}
	}
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == "5" {
			whole = r.W
		}
	}
	return left, right, top, bottom, whole
}

// marksBetween are the places of the heavy upright marks through a row, in the color of
// the second number.
func (s sight) marksBetween(top, bottom int) (at []int) {
	for _, l := range s.Paths {
		if b := l.Box(); b.W == 0 && b.Y <= top && b.Y+b.H >= bottom && l.Width == "5" && len(l.Points) == 2 && l.Stroke == s.paint[scene.Second][2] {
			at = append(at, b.X)
		}
	}
	slices.Sort(at)
	return at
}

// readMeasured reads how many groups are measured off a length: marks between them, as
// far apart as a group is long, and numbers that count them; what is left over is
// named as a part of a group.
func (s sight) readMeasured(t problems.Truth) error {
	left, right, top, bottom, whole := s.shadedFrom(scene.First)
	count := floor(t.Value)
	// at is where so many groups end.
	at := func(groups *big.Rat) *big.Rat {
		v := new(big.Rat).Mul(groups, t.Numbers[1])
		v.Mul(v, big.NewRat(int64(whole), 1))
		return v.Add(v, big.NewRat(int64(left), 1))
	}
	ends := s.marksBetween(top, bottom)
	parts := 0
	for _, f := range s.pieces() {
		if s.is(f.Paint, scene.First) {
			parts += f.Cols()
		}
	}
	if single := big.NewRat(int64(parts), 1).Cmp(t.Value) == 0; single {
		ends = ends[:min(1, len(ends))]
		if at(big.NewRat(int64(parts), 1)).Cmp(big.NewRat(int64(right), 1)) != 0 {
			return errors.New("a part is no group")
		}
	} else if err := agree("the groups", big.NewRat(int64(len(ends)), 1), count); err != nil {
		return err
	}
	for i, x := range ends {
		if at(big.NewRat(int64(i+1), 1)).Cmp(big.NewRat(int64(x), 1)) != 0 {
			return fmt.Errorf("group %d ends at %d", i+1, x)
		}
	}
	brace := slices.ContainsFunc(s.Paths, func(l measure.Path) bool {
		b := l.Box()
		end := whole64(at(big.NewRat(1, 1)))
		return len(l.Points) == 4 && b.Y+b.H < top && l.Stroke == s.paint[scene.Second][2] && b.X-left == end-b.X-b.W
	})
	if !brace {
		return errors.New("no brace is over the first group")
	}
	return s.readCounts(t, bottom, at, count)
}

// readCounts reads the numbers under the groups: each stands under the group that it
// counts, and the last counts all.
func (s sight) readCounts(t problems.Truth, bottom int, at func(*big.Rat) *big.Rat, count *big.Rat) error {
	rest := new(big.Rat).Sub(t.Value, count)
	most := new(big.Rat)
	for _, m := range s.Marks() {
		if m.Y < bottom || m.Y > bottom+60 || !m.Value.IsInt() {
			continue
		}
		want := whole64(at(new(big.Rat).Sub(m.Value, big.NewRat(1, 2))))
		if d := m.X - want; d < -1 || d > 1 {
			return fmt.Errorf("%s stands at %d, its group at %d", m.Value.RatString(), m.X, want)
		}
		if m.Value.Cmp(most) > 0 {
			most = m.Value
		}
	}
	if err := agree("the last count", most, count); err != nil {
		return err
	}
	named := false
	for _, line := range s.Lines() {
		for i, w := range line {
			if w.Text != "of" {
				continue
			}
			v, ok := wordBefore(line, i)
			if !ok || v.Cmp(rest) != 0 {
				return fmt.Errorf("%v of a group is left over", v)
			}
			named = true
		}
	}
	if named != (rest.Sign() > 0) {
		return errors.New("what is left over has no name")
	}
	return nil
}

// readShared reads a length divided into equal shares, and one of them on a whole of
// its own.
func (s sight) readShared(t problems.Truth) error {
	left, right, top, bottom, whole := s.shadedFrom(scene.First)
	shares := t.Numbers[1].Num().Int64()
	ends := append(s.marksBetween(top, bottom), right)
	if err := agree("the shares", big.NewRat(int64(len(ends)), 1), t.Numbers[1]); err != nil {
		return err
	}
	for i, x := range ends {
		if int64(x-left)*shares != int64(right-left)*int64(i+1) {
			return fmt.Errorf("share %d ends at %d of %d", i+1, x-left, right-left)
		}
	}
	from, to, high, low, _ := s.shadedFrom(scene.Result)
	if from != left || low-high != bottom-top {
		return errors.New("the share does not begin where the whole begins, or is not as high")
	}
	for _, line := range s.Lines() {
		name := new(big.Rat)
		for _, w := range line {
			if v, ok := w.Value(); ok && w.Right <= left {
				name.Add(name, v)
			}
		}
		y := line[0].Y
		if want := map[bool]*big.Rat{true: t.Numbers[0], false: t.Value}[y < bottom]; name.Sign() > 0 && y < low && name.Cmp(want) != 0 {
			return fmt.Errorf("%s is written beside a row of %s", name.RatString(), want.RatString())
		}
	}
	return agree("one share", big.NewRat(int64(to-from), int64(whole)), t.Value)
}
