package golden

import (
	"fmt"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/problems"
)

// readParity: where a number is said to be even or odd, it is.
func readParity(s sight, t problems.Truth) error {
	if s.problem.Kind != arithmetic.Parity {
		return nil
	}
	for _, text := range s.Texts {
		even, odd := strings.Contains(text.Words, "even"), strings.Contains(text.Words, "odd")
		if even != odd && even != t.Even && !strings.Contains(text.Words, "odd one") {
			return fmt.Errorf("%q is written for %s", text.Words, t.Numbers[0].RatString())
		}
	}
	return nil
}
