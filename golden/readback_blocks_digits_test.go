package golden

import (
	"fmt"
	"math/big"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readDigit: all the pieces are the number, and those in the color of the answer
// what its digit is worth.
func (s sight) readDigit(t problems.Truth) error {
	sum, err := s.blocks(0)
	if err != nil {
		return err
	}
	all := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.First, scene.Result, scene.Moved) })
	digit := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.Result) })
	return both(agree("the number", all, t.Numbers[0]), agree("what the digit is worth", digit, t.Value))
}

// readWorth: the line in the largest letters says in words which number it is about
// and ends in what the digit is worth: In 3,456 the 4 is worth 400.
func (s sight) readWorth(t problems.Truth) error {
	var foot []measure.Word
	for _, line := range s.Lines() {
		if len(foot) == 0 || line[0].Size > foot[0].Size {
			foot = line
		}
	}
	var numbers []*big.Rat
	for _, w := range foot {
		if v, ok := w.Value(); ok {
			numbers = append(numbers, v)
		}
	}
	if len(numbers) != 3 {
		return fmt.Errorf("the line at the foot is %q", measure.Statement(foot))
	}
	return both(agree("the number at the foot", numbers[0], t.Numbers[0]), agree("the worth at the foot", numbers[2], t.Value))
}

// stepsOfDigit: the number lies there all the time; what moves is the pieces of the
// digit, and in the end they have the color of the answer.
func stepsOfDigit(steps []sight, t problems.Truth) error {
	for i, s := range steps {
		sum, err := s.blocks(0)
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		all := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.First, scene.Result, scene.Moved) })
		if err := agree("the number", all, t.Numbers[0]); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if moved := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.Moved) }); moved.Sign() > 0 {
			if err := agree("what is pointed at", moved, t.Value); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
		}
	}
	return steps[len(steps)-1].readDigit(t)
}
