package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readDigit: the pieces are those of the number and its digit, and so are the words.
func (s sight) readDigit(t problems.Truth) error {
	return both(s.readDigitWords(t), s.readDigitPieces(t))
}

// readDigitPieces: all the pieces are the number, and those in the color of the
// answer what its digit is worth.
func (s sight) readDigitPieces(t problems.Truth) error {
	sum, err := s.blocks(0)
	if err != nil {
		return err
	}
	all := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.First, scene.Result, scene.Moved) })
	digit := sum(func(f measure.Face) bool { return s.is(f.Paint, scene.Result) })
	return both(agree("the number", all, t.Numbers[0]), agree("what the digit is worth", digit, t.Value))
}

// readDigitWords: the largest letters say a number, its digit and what that is
// worth, in this order.
func (s sight) readDigitWords(t problems.Truth) error {
	var said []string
	for _, line := range s.Lines() {
		for _, w := range line {
			if v, ok := w.Value(); ok && w.Size == scene.Large {
				said = append(said, v.RatString())
			}
		}
	}
	digit := new(big.Rat).Quo(t.Value, whole(s.problem.To))
	if want := []string{t.Numbers[0].RatString(), digit.RatString(), t.Value.RatString()}; !slices.Equal(said, want) {
		return fmt.Errorf("the picture says %v, not %v", said, want)
	}
	return nil
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
	return steps[len(steps)-1].readDigitPieces(t)
}
