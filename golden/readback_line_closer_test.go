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
)

// readCloser reads which of two numbers is closer to a whole number: their points, the
// distances that are named, and the statement at the foot where there is one.
func (s sight) readCloser(y int, t problems.Truth) error {
	a, err := s.axis(y)
	// Two numbers that are both 1 leave too few numbers under the line to tell its
	// scale: then they have to stand on one place.
	together := errors.Is(err, errUnread) && t.Numbers[0].Cmp(t.Numbers[1]) == 0 && len(slices.Compact(slices.Sorted(slices.Values(a.points)))) == 1
	if err != nil && !together {
		return err
	}
	to := big.NewRat(s.problem.To, 1)
	var away []*big.Rat
	for _, n := range t.Numbers {
		if !together && !slices.ContainsFunc(a.points, func(x int) bool { return a.near(x, n) }) {
			return fmt.Errorf("no point stands at %s", n.RatString())
		}
		d := new(big.Rat).Sub(n, to)
		away = append(away, d.Abs(d))
	}
	if !together {
		if err := s.lengths(a, t.Numbers); err != nil {
			return err
		}
	}
	named := 0
	for _, line := range s.Lines() {
		for i, w := range line {
			if w.Text != "away" {
				continue
			}
			v, ok := wordBefore(line, i)
			if !ok || !slices.ContainsFunc(away, func(d *big.Rat) bool { return d.Cmp(v) == 0 }) {
				return fmt.Errorf("something is %v away", v)
			}
			named++
		}
		if err := s.saysCloser(line, t); err != nil {
			return err
		}
	}
	for _, d := range away {
		if d.Sign() > 0 {
			named--
		}
	}
	if named != 0 {
		return errors.New("a distance has no name, or two")
	}
	return nil
}

// saysCloser reads "7/8 is closer to 1" or "both are equally far from 1".
func (s sight) saysCloser(line []measure.Word, t problems.Truth) error {
	var said []string
	for _, w := range line {
		said = append(said, w.Text)
	}
	text := strings.Join(said, " ")
	to := arithmetic.Grouped(s.problem.To)
	switch {
	case strings.Contains(text, "equally"):
		if t.Order != 0 || text != "both are equally far from "+to {
			return fmt.Errorf("the picture says %q", text)
		}
	case strings.Contains(text, "is closer"):
		i := slices.Index(said, "is")
		v, ok := wordBefore(line, i)
		if !ok || t.Order == 0 || v.Cmp(t.Numbers[(t.Order+1)/2]) != 0 || !strings.HasSuffix(text, " is closer to "+to) {
			return fmt.Errorf("the picture says %q", text)
		}
	}
	return nil
}

// wordBefore is the number before the i-th word: a whole number and a fraction
// beside it are one.
func wordBefore(line []measure.Word, i int) (*big.Rat, bool) {
	if i < 1 {
		return nil, false
	}
	v, ok := line[i-1].Value()
	if ok && i > 1 && !v.IsInt() {
		if whole, is := line[i-2].Value(); is && whole.IsInt() && line[i-1].Left-line[i-2].Right < line[i-1].Size {
			v = new(big.Rat).Add(v, whole)
		}
	}
	return v, ok
}
