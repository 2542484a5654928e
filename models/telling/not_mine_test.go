package telling

import (
	"errors"
	"fmt"
	"testing"
)

func TestNotMineKeepsTheReason(t *testing.T) {
	why := errors.New("base-ten blocks show whole numbers")
	err := fmt.Errorf("wrapped: %w", NotMine(why))
	if !errors.Is(err, ErrNotMine) || !errors.Is(err, why) {
		t.Errorf("%v: found as not mine: %v, as the reason: %v", err, errors.Is(err, ErrNotMine), errors.Is(err, why))
	}
	if got := NotMine(why).Error(); got != why.Error() {
		t.Errorf("it reads %q, want %q", got, why)
	}
	if errors.Is(why, ErrNotMine) {
		t.Error("every reason is found as not mine")
	}
}
