package words

import (
	"errors"
	"fmt"

	"modeler/arithmetic"
)

// ErrNoGroups says that a problem is none of those that equal groups show.
var ErrNoGroups = errors.New("equal groups show products, divisions and equal parts of an amount, and even and odd numbers")

// ErrGroupsTooCrowded says that the counters would be too small to count.
var ErrGroupsTooCrowded = errors.New("the counters would be too small to be counted; use smaller numbers")

// GroupsMisfit says why a problem cannot be worked with equal groups.
func GroupsMisfit(p arithmetic.Problem, err error) error {
	switch {
	case errors.Is(err, arithmetic.ErrNoFactor) && p.Kind == arithmetic.PartOf:
		return errors.New("the amount does not make that many equal groups of whole ones")
	case errors.Is(err, arithmetic.ErrNoFactor):
		return errors.New("no whole number makes " + p.String() + " true, so the groups would not be equal")
	case errors.Is(err, arithmetic.ErrAnyFactor):
		return errors.New("every number makes " + p.String() + " true, so there is no one picture")
	case errors.Is(err, arithmetic.ErrNotWhole):
		return errors.New("equal groups are made of whole numbers of things")
	case errors.Is(err, arithmetic.ErrDivideByZero):
		return errors.New("nothing can be shared among 0 groups")
	case errors.Is(err, arithmetic.ErrOverflow):
		return errors.New("the numbers are too large to draw")
	}
	return ErrNoGroups
}

// GroupsTooMany bounds what is drawn: so many things, in so many groups.
func GroupsTooMany(things, groups, mostThings, mostGroups int64) error {
	switch {
	case things > mostThings:
		return fmt.Errorf("equal groups are drawn with up to %d counters, and this needs %s", mostThings, arithmetic.Grouped(things))
	case groups > mostGroups:
		return fmt.Errorf("up to %d groups are drawn here, and this needs %s", mostGroups, arithmetic.Grouped(groups))
	}
	return nil
}

// GroupsTooFine bounds the parts that a counter is cut in.
func GroupsTooFine(parts, most int64) error {
	if parts > most {
		return fmt.Errorf("what is left over is cut in up to %d parts here, and %s are more", most, arithmetic.Grouped(parts))
	}
	return nil
}
