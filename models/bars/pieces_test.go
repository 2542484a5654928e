package bars

import (
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// Paper strips are cut with scissors, and a grown-up is told so.
func TestStripsAreCut(t *testing.T) {
	told := Model.Tell(arithmetic.Problem{Kind: arithmetic.Show, Left: arithmetic.Frac(fraction.Must(3, 4))})
	if len(told.Pieces) == 0 || !told.Pieces[0].Cut {
		t.Errorf("the pieces are %+v, none of them cut", told.Pieces)
	}
}
