package golden

import (
	"fmt"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readCopies: heavy lines in the shaded row divide it in as many equal lengths as
// the first factor says. An end of a whole has a heavy line of its own.
func (s sight) readCopies(t problems.Truth) error {
	left, right, long := 1<<30, 0, 0
	for _, f := range s.pieces() {
		if s.is(f.Paint, scene.Second) {
			left, right = min(left, f.X), max(right, f.Right())
		}
	}
	var cuts []int
	for _, r := range s.Rects {
		if !r.Filled() && r.Width == "5" {
			long = r.W
		}
	}
	for _, l := range s.Paths {
		if b := l.Box(); b.W == 0 && b.H > 40 && b.X > left && b.X < right && l.Width == "5" && len(l.Points) == 2 {
			cuts = append(cuts, b.X)
		}
	}
	slices.Sort(cuts)
	cuts = append(slices.Compact(cuts), right)
	from := left
	for _, x := range cuts {
		if int64(x-from)*t.Numbers[1].Denom().Int64() != int64(long)*t.Numbers[1].Num().Int64() {
			return fmt.Errorf("a copy of %d units, a whole of %d", x-from, long)
		}
		from = x
	}
	return agree("the copies", whole(int64(len(cuts))), t.Numbers[0])
}

// readSideCopies: on each side of a claim that is so many times a fraction, marks reach
// out of the row where one copy ends and the next begins, and a brace is over each copy.
func (s sight) readSideCopies(t problems.Truth) error {
	for i, e := range []arithmetic.Expr{s.problem.Left, s.problem.Right} {
		role := [2]scene.Role{scene.First, scene.Second}[i]
		o, is := e.(arithmetic.Operation)
		if !is {
			continue
		}
		count, ok := o.Left.(arithmetic.Number).Int64()
		left, right, top, bottom, whole := s.shadedFrom(role)
		if !ok || whole == 0 {
			return errUnread
		}
		var ends []int
		for _, l := range s.Paths {
			if b := l.Box(); b.W == 0 && b.Y < top && b.Y > top-12 && b.Y+b.H > bottom && b.Y+b.H < bottom+12 && l.Width == "5" && len(l.Points) == 2 && l.Stroke == s.paint[role][2] {
				ends = append(ends, b.X)
			}
		}
		slices.Sort(ends)
		ends = append(ends, right)
		if int64(len(ends)) != count {
			return fmt.Errorf("%d copies on a side of %d", len(ends), count)
		}
		for k, x := range ends {
			if int64(x-left)*count != int64(right-left)*int64(k+1) {
				return fmt.Errorf("copy %d ends at %d of %d", k+1, x-left, right-left)
			}
		}
		braces := s.bracesIn(role, top-30, top)
		if int64(len(braces)) != count {
			return fmt.Errorf("%d braces over %d copies", len(braces), count)
		}
		inset := braces[0].X - left
		for k, b := range braces {
			from := left
			if k > 0 {
				from = ends[k-1]
			}
			if b.X-inset != from || b.X+b.W+inset != ends[k] {
				return fmt.Errorf("the brace over copy %d goes from %d to %d", k+1, b.X, b.X+b.W)
			}
		}
	}
	return nil
}
