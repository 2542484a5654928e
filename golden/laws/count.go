package laws

import (
	"errors"
	"fmt"
	"math/big"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// sums adds up the worth of what is visible, by the number it belongs to.
func (p Picture) sums() map[scene.Of]*big.Rat {
	sums := map[scene.Of]*big.Rat{}
	for _, it := range p.visible() {
		if it.Worth.Sign() == 0 {
			continue
		}
		if sums[it.Of] == nil {
			sums[it.Of] = new(big.Rat)
		}
		sums[it.Of].Add(sums[it.Of], rat(it.Worth))
	}
	return sums
}

// Counting: the worth of what belongs to a number adds up to that number in the
// whole story, and something is drawn. In a step it may be on its way.
func Counting(p Picture) error {
	sums := p.sums()
	if loose := sums[scene.OfNothing]; loose != nil {
		return fmt.Errorf("%s is worth something and belongs to no number", loose.RatString())
	}
	if p.Step > 0 {
		return nil
	}
	want := p.wanted()
	zero := p.Truth.Value == nil || p.Truth.Value.Sign() == 0
	for of, v := range want {
		if sum := sums[of]; sum != nil && sum.Cmp(v) != 0 {
			return fmt.Errorf("what belongs to %s adds up to %s, not to %s", of, sum.RatString(), v.RatString())
		}
	}
	for of := range sums {
		if want[of] == nil && p.Problem.Kind != arithmetic.Factors {
			return fmt.Errorf("something belongs to %s, which is not in the problem", of)
		}
	}
	if len(sums) == 0 && !zero && !p.Hidden {
		return errors.New("nothing in the picture is worth anything")
	}
	return p.bothDrawn(sums, want)
}

// bothDrawn: where two numbers are put together or side by side, a picture that
// draws one of them and not the answer draws the other too.
func (p Picture) bothDrawn(sums, want map[scene.Of]*big.Rat) error {
	switch p.Problem.Kind {
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Claim, arithmetic.Comparison:
	default:
		return nil
	}
	present := func(of scene.Of) bool { return sums[of] != nil || want[of] == nil || want[of].Sign() == 0 }
	if !p.Hidden && sums[scene.OfAnswer] == nil && present(scene.OfFirst) != present(scene.OfSecond) {
		return errors.New("only one of the two numbers is drawn")
	}
	return nil
}

// wanted is what each number of the problem comes to.
func (p Picture) wanted() map[scene.Of]*big.Rat {
	want := map[scene.Of]*big.Rat{}
	for i, n := range p.Truth.Numbers {
		want[scene.OfNth(i)] = n
	}
	if p.Truth.Value != nil {
		want[scene.OfAnswer] = p.Truth.Value
	}
	switch p.Problem.Kind {
	case arithmetic.Claim, arithmetic.Comparison:
		want[scene.OfAnswer] = new(big.Rat).Sub(p.Truth.Sides[0], p.Truth.Sides[1])
		want[scene.OfAnswer].Abs(want[scene.OfAnswer]) // the gap
		want[scene.OfLeft], want[scene.OfRight] = p.Truth.Sides[0], p.Truth.Sides[1]
	case arithmetic.PartOf:
		// The part that is taken belongs to the answer, the rest to the amount.
		want[scene.OfSecond] = new(big.Rat).Sub(p.Truth.Numbers[1], p.Truth.Value)
	}
	return want
}
