package golden

import (
	"math/big"
	"slices"
	"strconv"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/problems"
)

// readGroupTags: the numbers under the rings count what is in them so far, where the
// groups are made, and the rings, where these are measured off.
func (s sight) readGroupTags(g gathered, t problems.Truth) error {
	counts := s.problem.Kind == arithmetic.Division
	if s.problem.Kind == arithmetic.Missing {
		total, _ := filledTotal(s.problem)
		counts = total
	}
	sum := new(big.Rat)
	for i, r := range g.rings {
		sum.Add(sum, g.in[i])
		for _, m := range s.bare() {
			const reach = 40
			if m.X != r.X+r.W/2 || m.Y < r.Bottom() || m.Y > r.Bottom()+reach {
				continue
			}
			want := sum
			if counts {
				want = whole(int64(i + 1))
			}
			if err := agree("the number under a group", m.Value, want); err != nil {
				return err
			}
		}
	}
	return nil
}

// filledTotal reports whether the total of a problem with a blank is known.
func filledTotal(p arithmetic.Problem) (known, ok bool) {
	o, ok := p.Left.(arithmetic.Operation)
	if !ok {
		o, ok = p.Right.(arithmetic.Operation)
	}
	_, blank := o.Left.(arithmetic.Unknown)
	return o.Op == arithmetic.Multiply || !blank, ok
}

// readGroupNames: what the picture says of the groups in words is so.
func (s sight) readGroupNames(g gathered) error {
	all := new(big.Rat).Set(g.outside)
	for _, in := range g.in {
		all.Add(all, in)
	}
	for _, text := range s.Texts {
		number, what, _ := strings.Cut(text.Words, " ")
		v, err := strconv.ParseInt(number, 10, 64)
		if number == "none" {
			v, err = 0, nil
		}
		if err != nil {
			continue
		}
		n := whole(v)
		switch {
		case what == "left" || what == "left over" || strings.HasPrefix(what, "to "):
			err = agree(text.Words, g.outside, n)
		case what == "in all":
			err = agree(text.Words, all, n)
		case what == "on each plate":
			for _, in := range g.in {
				err = both(err, agree(text.Words, in, n))
			}
		case what == "at most on a plate":
			err = agree(text.Words, slices.MaxFunc(g.in, (*big.Rat).Cmp), n)
		case strings.HasPrefix(what, "group"), strings.HasPrefix(what, "pair"):
			err = agree(text.Words, whole(int64(len(g.rings))), n)
		case strings.HasPrefix(what, "on "):
			taken := new(big.Rat)
			for i, in := range g.in {
				if g.marked[i] {
					taken.Add(taken, in)
				}
			}
			err = agree(text.Words, taken, n)
		}
		if err != nil {
			return err
		}
	}
	return nil
}
