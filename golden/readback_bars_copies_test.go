package golden

import (
	"fmt"
	"slices"

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
