package blocks

import (
	"errors"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/words"
)

func digitOf(n, place int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.PlaceValue, Left: arithmetic.Int(n), To: place}
}

// Only the pieces of the digit that is asked for are lit, and nothing else of the
// number is gone.
func TestThePiecesOfTheDigitAreLit(t *testing.T) {
	for _, tc := range []struct{ number, place, worth int64 }{
		{3_456, 100, 400}, {706, 10, 0}, {706, 100, 700}, {9_999, 1_000, 9_000}, {21, 1, 1}, {0, 1, 0},
	} {
		p := digitOf(tc.number, tc.place)
		if err := Model.Fits(p); err != nil {
			t.Fatalf("%s: %v", p, err)
		}
		for _, hidden := range []bool{false, true} {
			s := Model.Tell(p).Whole
			lit := int64(0)
			for _, it := range s.View(hidden).Items {
				if it.Role == scene.Result && it.Of == scene.OfFirst {
					lit += it.Worth.Num()
				}
			}
			if lit != tc.worth || worth(s, scene.OfFirst, hidden) != tc.number {
				t.Errorf("%s, hidden %v: %d of %d is lit", p, hidden, lit, worth(s, scene.OfFirst, hidden))
			}
		}
	}
}

func TestADigitThatIsNotThereIsRefused(t *testing.T) {
	if err := Model.Fits(digitOf(345, 1_000)); !errors.Is(err, words.BlocksNoPlace) {
		t.Errorf("the thousands of 345: %v", err)
	}
}

// The parts of an expanded form stand under their pieces, and not while the answer
// is hidden.
func TestExpandedFormIsHidden(t *testing.T) {
	p := arithmetic.Problem{Kind: arithmetic.ExpandedForm, Left: arithmetic.Int(347)}
	told := Model.Tell(p)
	if got := told.Whole.Title; got.Shown != "347 = 300 + 40 + 7" || got.Hidden != "347 in expanded form" {
		t.Errorf("the titles are %q and %q", got.Shown, got.Hidden)
	}
	for _, text := range said(told.Whole, true) {
		if text == "300" || text == "40" {
			t.Errorf("%s stands there while the answer is hidden", text)
		}
	}
}
