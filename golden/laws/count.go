package laws

import (
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

// Counting: the worth of what belongs to a number adds up to that number.
func Counting(p Picture) error {
	sums := p.sums()
	if loose := sums[scene.OfNothing]; loose != nil {
		return fmt.Errorf("%s is worth something and belongs to no number", loose.RatString())
	}
	if p.Step > 0 {
		return nil
	}
	want := p.wanted()
	present := func(of scene.Of) bool { return sums[of] != nil || want[of] == nil || want[of].Sign() == 0 }
	if !p.Hidden && !present(scene.OfAnswer) && present(scene.OfFirst) != present(scene.OfSecond) {
		return fmt.Errorf("only one of the two numbers is drawn")
	}
	for of, sum := range sums {
		if want[of] != nil && sum.Cmp(want[of]) != 0 {
			return fmt.Errorf("what belongs to %s adds up to %s, not to %s", of, sum.RatString(), want[of].RatString())
		}
	}
	return nil
}

// wanted is what each number of the problem comes to.
func (p Picture) wanted() map[scene.Of]*big.Rat {
	want := map[scene.Of]*big.Rat{scene.OfAnswer: p.Truth.Value}
	switch p.Problem.Kind {
	case arithmetic.Product, arithmetic.Expression, arithmetic.Factors, arithmetic.PartOf, arithmetic.Division, arithmetic.Missing:
		return want
	}
	for i, n := range p.Truth.Numbers {
		want[scene.OfNth(i)] = n
	}
	return want
}
