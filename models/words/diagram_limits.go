package words

import (
	"errors"
	"fmt"

	"modeler/arithmetic"
)

// ErrDiagramNothing and ErrDiagramNoPart say that there is nothing to draw.
var (
	ErrDiagramNothing = errors.New("there is nothing to draw a bar for")
	ErrDiagramNoPart  = errors.New("there would be no whole part to draw")
)

// DiagramMisfit says why a problem has no bar diagram; kind is false for an error
// that other models say better.
func DiagramMisfit(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNegative):
		return errors.New("the missing number would be less than 0, and no bar is so short")
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New("the numbers are too large to draw")
	case errors.Is(err, arithmetic.ErrDivideByZero):
		return errors.New("nothing can be shared among 0")
	case errors.Is(err, arithmetic.ErrNoFactor) && p.Kind == arithmetic.PartOf:
		return errors.New("the amount does not make that many equal parts of whole ones")
	case errors.Is(err, arithmetic.ErrNoFactor):
		return errors.New("no whole number of times makes the larger one")
	}
	return errors.New("a bar diagram shows whole numbers: sums, differences, products, quotients and fractions up to one whole of an amount")
}

// DiagramTooMany bounds the parts of a bar.
func DiagramTooMany(most int) error {
	return fmt.Errorf("a bar diagram shows up to %d such parts", most)
}

// DiagramTooLong bounds the numbers.
func DiagramTooLong(n, most int64) error {
	if n > most {
		return fmt.Errorf("a bar diagram shows numbers up to %s", arithmetic.Grouped(most))
	}
	return nil
}
