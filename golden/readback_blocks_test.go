package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// blocks weighs the blocks of a picture by their size in ones: sum adds up what
// those that are chosen are worth.
// The side of a one is at most the given one; 0 leaves it to this picture.
func (s sight) blocks(most int) (sum func(func(measure.Face) bool) *big.Rat, err error) {
	one := most
	var faces []measure.Face
	for _, f := range s.Faces() {
		if !s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) && !s.ghost(f.Paint) && !s.empty(f.Paint, scene.First, scene.Second, scene.Moved) {
			continue
		}
		faces = append(faces, f)
		if f.Cells() > 1 {
			one = f.W / f.Cols()
		}
	}
	for _, f := range faces {
		if one == 0 || f.W < one {
			one = f.W // ones only, or ones beside what is gone
		}
	}
	if most == 0 && len(faces) > 0 && !slices.ContainsFunc(faces, func(f measure.Face) bool { return f.Filled() }) {
		one = s.oneByTray(faces[0]) // all is gone
	}
	sum = func(choose func(measure.Face) bool) *big.Rat {
		total := whole(0)
		for _, f := range faces {
			if choose(f) {
				worth := whole(int64(f.Area() / (one * one)))
				if s.Cube(f) {
					worth.Mul(worth, whole(10))
				}
				total.Add(total, worth)
			}
		}
		return total
	}
	for _, f := range faces {
		if n := f.Area() / (one * one); f.Area()%(one*one) != 0 || n != 1 && n != 10 && n != 100 {
			return sum, fmt.Errorf("a block of %d × %d, with ones of %d", f.W, f.H, one)
		}
		if n := f.Cells(); n != 1 && n*one*one != f.Area() {
			return sum, fmt.Errorf("a block of %d × %d is ruled in %d", f.W, f.H, n)
		}
	}
	return sum, nil
}

// oneByTray is the side of a one where nothing is left to measure it by: the tray
// of a piece says how many it stands for.
func (s sight) oneByTray(f measure.Face) int {
	trays := s.trays()
	at := slices.IndexFunc(trays, func(tray measure.Rect) bool { return tray.Contains(f.Box) })
	if at >= 0 && len(trays)-1-at >= 2 {
		return f.W / 10
	}
	return f.W
}

// readBlocks counts the whole story: filled blocks by their fill, and empty ones,
// which are gone or traded, by their edge.
func readBlocks(s sight, t problems.Truth) error {
	if hasFloor(s.problem) {
		return s.readFloor(t)
	}
	sum, err := s.blocks(0)
	if err != nil {
		return err
	}
	if err := s.readTrays(s.one(s.least()), t); err != nil {
		return err
	}
	of := func(roles ...scene.Role) *big.Rat {
		return sum(func(f measure.Face) bool { return s.is(f.Paint, roles...) })
	}
	switch s.problem.Kind {
	case arithmetic.Show, arithmetic.ExpandedForm:
		return agree("the number", of(scene.First), t.Numbers[0])
	case arithmetic.PlaceValue:
		return s.readDigit(t)
	case arithmetic.Addition:
		both := func(role scene.Role) *big.Rat {
			return sum(func(f measure.Face) bool { return s.is(f.Paint, role) || s.empty(f.Paint, role) })
		}
		if err := agree("the first, with what was traded", both(scene.First), t.Numbers[0]); err != nil {
			return err
		}
		if err := agree("the second, with what was traded", both(scene.Second), t.Numbers[1]); err != nil {
			return err
		}
		return agree("what is solid", of(scene.First, scene.Second, scene.Moved), t.Value)
	case arithmetic.Claim, arithmetic.Comparison:
		if err := agree("the first", of(scene.First), t.Numbers[0]); err != nil {
			return err
		}
		return agree("the second", of(scene.Second), t.Numbers[1])
	case arithmetic.Subtraction:
		if err := agree("what is left", of(scene.First, scene.Result), t.Value); err != nil {
			return err
		}
		return agree("what is gone", sum(func(f measure.Face) bool { return s.ghost(f.Paint) }), t.Numbers[1])
	}
	return errUnread
}

// stepsOfBlocks follows what lies on the mat. Of a sum it is the first number and
// then both; of a difference the first number, less what was taken so far, place
// by place from the ones; of a number its places, the largest first. What is
// empty is what was just taken, or what was traded for pieces worth as much.
func stepsOfBlocks(steps []sight, t problems.Truth) error {
	switch {
	case hasFloor(steps[0].problem):
		return stepsOfFloor(steps, t)
	case steps[0].problem.Kind == arithmetic.PlaceValue:
		return stepsOfDigit(steps, t)
	}
	var stops []*big.Rat
	n := t.Numbers
	switch steps[0].problem.Kind {
	case arithmetic.Addition:
		stops = []*big.Rat{n[0], t.Value}
	case arithmetic.Subtraction:
		stops = []*big.Rat{n[0]}
		for _, part := range byPlace(n[1]) {
			stops = append(stops, new(big.Rat).Sub(stops[len(stops)-1], part))
		}
	case arithmetic.Show, arithmetic.ExpandedForm:
		stops = []*big.Rat{whole(0)}
		parts := byPlace(n[0])
		slices.Reverse(parts)
		for _, part := range parts {
			stops = append(stops, new(big.Rat).Add(stops[len(stops)-1], part))
		}
		stops = stops[min(1, len(stops)-1):]
	case arithmetic.Claim, arithmetic.Comparison:
		return stepsOfComparedBlocks(steps, t)
	default:
		return errUnread
	}
	stops = slices.CompactFunc(stops, func(a, b *big.Rat) bool { return a.Cmp(b) == 0 })
	var before *big.Rat
	one := 0
	for i, s := range steps {
		sum, err := s.blocks(one)
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		one = s.one(one)
		there := sum(func(f measure.Face) bool { return f.Filled() })
		gone := sum(func(f measure.Face) bool { return s.ghost(f.Paint) })
		moved := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.Moved) })
		if i > 0 && gone.Sign() > 0 {
			if taken := new(big.Rat).Sub(before, there); taken.Sign() == 0 && gone.Cmp(moved) != 0 {
				return fmt.Errorf("step %d: %s is traded for %s", i+1, gone.RatString(), moved.RatString())
			} else if taken.Sign() != 0 && taken.Cmp(gone) != 0 {
				return fmt.Errorf("step %d: %s is gone and %s is missing", i+1, gone.RatString(), taken.RatString())
			}
		}
		before = there
		if stops, err = walk(stops, there); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return arrived(stops)
}

// least is the side of the smallest piece, or of a one where all is gone.
func (s sight) least() int {
	least := 0
	ghosts := slices.DeleteFunc(s.Faces(), func(f measure.Face) bool { return !s.ghost(f.Paint) })
	if len(ghosts) > 0 && len(s.pieces()) == 0 {
		return s.oneByTray(ghosts[0])
	}
	for _, f := range s.Faces() {
		piece := s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) || s.ghost(f.Paint) || s.empty(f.Paint, scene.First, scene.Second)
		if !piece {
			continue
		}
		if least == 0 || f.W < least {
			least = f.W
		}
	}
	return max(1, least)
}

// one is the side of a one in this picture or an earlier one: all have one scale.
func (s sight) one(before int) int {
	for _, f := range s.Faces() {
		if s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) && f.Cells() > 1 {
			return f.W / f.Cols()
		}
	}
	return before
}

// walk goes on along the values that a lesson passes, to the one that a step
// shows: that of the last step, or the next.
func walk(stops []*big.Rat, at *big.Rat) ([]*big.Rat, error) {
	switch {
	case stops[0].Cmp(at) == 0:
		return stops, nil
	case len(stops) > 1 && stops[1].Cmp(at) == 0:
		return stops[1:], nil
	}
	return nil, fmt.Errorf("there is %s, where %s was and something else is next", at.RatString(), stops[0].RatString())
}

func arrived(stops []*big.Rat) error {
	if len(stops) > 1 {
		return fmt.Errorf("the last step shows %s and not %s", stops[0].RatString(), stops[len(stops)-1].RatString())
	}
	return nil
}

// byPlace is a whole number as what its digits are worth, the ones first, without
// zeros.
func byPlace(v *big.Rat) []*big.Rat {
	var parts []*big.Rat
	for n, unit := v.Num().Int64(), int64(1); n > 0; n, unit = n/10, unit*10 {
		if n%10 > 0 {
			parts = append(parts, whole(n%10*unit))
		}
	}
	return parts
}

func stepsOfComparedBlocks(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		sum, err := s.blocks(0)
		if err != nil {
			return err
		}
		first := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.First) })
		second := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.Second) })
		if i == 0 && second.Sign() == 0 {
			second = t.Numbers[1] // it is laid out next
		}
		if err := both(agree("the first", first, t.Numbers[0]), agree("the second", second, t.Numbers[1])); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return nil
}
