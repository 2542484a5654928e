package bars

import (
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// Every small division and every small sum of parts is told without a panic: shares of
// more than one whole too.
func TestEverySmallDivisionIsTold(t *testing.T) {
	for num := int64(0); num < 20; num++ {
		for den := int64(1); den < 9; den++ {
			for _, a := range []arithmetic.Number{arithmetic.Frac(fraction.Must(num, den)), arithmetic.AsMixed(fraction.Must(num, den))} {
				problems := []arithmetic.Problem{{Kind: arithmetic.AsSum, Left: a}}
				for b := int64(1); b < 9; b++ {
					problems = append(problems, arithmetic.Problem{Kind: arithmetic.Division, Left: arithmetic.Operation{Op: arithmetic.Divide, Left: a, Right: arithmetic.Int(b)}})
					for c := int64(1); c < 9; c++ {
						problems = append(problems, arithmetic.Problem{Kind: arithmetic.Division, Left: arithmetic.Operation{Op: arithmetic.Divide, Left: a, Right: arithmetic.Frac(fraction.Must(b, c))}})
					}
				}
				for _, p := range problems {
					if Model.Fits(p) == nil && len(Model.Tell(p).Steps) == 0 {
						t.Errorf("%s has no steps", p)
					}
				}
			}
		}
	}
}
