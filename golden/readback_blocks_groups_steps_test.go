package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
)

// stepsOfFloor follows what lies on the mat and in the boxes: nothing comes and
// nothing goes once all is laid out, and equal groups stay equal.
func stepsOfFloor(steps []sight, t problems.Truth) error {
	kind := steps[0].problem.Kind
	all := t.Value
	if kind == arithmetic.Division {
		all = t.Numbers[0]
	}
	one := 0
	for _, s := range steps {
		one = max(one, s.one(one))
	}
	if one == 0 {
		one = steps[0].least()
	}
	laid := whole(0)
	for i, s := range steps {
		g, err := s.ground(one)
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		boxes := g.inBoxes(g.solid)
		sum := g.onMat()
		for _, n := range boxes {
			sum += n
		}
		want := all
		if kind == arithmetic.Expression && i < len(t.Numbers) {
			laid.Add(laid, t.Numbers[i])
			want = laid
		}
		if err := agree(fmt.Sprintf("step %d: all blocks", i+1), whole(sum), want); err != nil {
			return err
		}
		if kind != arithmetic.Expression && len(slices.Compact(slices.Clone(boxes))) != 1 {
			return fmt.Errorf("step %d: the boxes hold %v", i+1, boxes)
		}
		if kind != arithmetic.Expression || i >= len(t.Numbers) {
			if err := g.readLabels(func(f measure.Face) bool { return g.solid(f) || g.hollow(f) }); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
		}
		if last := i == len(steps)-1; last && kind == arithmetic.Division {
			return agree("what is left in the end", whole(g.onMat()), new(big.Rat).SetInt(t.Remainder))
		} else if last {
			return agree("what is on the mat in the end", whole(g.onMat()), all)
		}
	}
	return nil
}
