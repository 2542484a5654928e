package models

import (
	"slices"
	"testing"

	"modeler/arithmetic"
	"modeler/models/words"
)

// With the answer hidden every model poses an operation, a claim and a
// comparison in the same words.
func TestHiddenTitlesAreAlike(t *testing.T) {
	kinds := []arithmetic.Kind{
		arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.Division, arithmetic.PartOf,
		arithmetic.Expression, arithmetic.Claim, arithmetic.Comparison, arithmetic.Missing, arithmetic.Renaming,
	}
	for _, m := range All {
		for _, example := range m.Examples {
			l, err := Teach(example, m.Name)
			if err != nil {
				t.Errorf("%s: %v", example, err)
				continue
			}
			if got, want := l.Whole.Title.Hidden, words.Asked(l.Problem); slices.Contains(kinds, l.Problem.Kind) && got != want {
				t.Errorf("%s: %s: the title is %q, want %q", m.Name, example, got, want)
			}
		}
	}
}
