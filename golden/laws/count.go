package laws

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

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
	for of, sum := range sums {
		list := want[of]
		if amounts := p.amounts(); len(list) == 0 && amounts != nil {
			list = amounts
		}
		if len(list) == 0 {
			return fmt.Errorf("something belongs to %s, which is not in the problem", of)
		}
		if !slices.ContainsFunc(list, func(v *big.Rat) bool { return v.Cmp(sum) == 0 }) {
			return fmt.Errorf("what belongs to %s adds up to %s, not to %s", of, sum.RatString(), list[0].RatString())
		}
	}
	if kind := p.Problem.Kind; (kind == arithmetic.Factors || kind == arithmetic.Primality) && len(sums) > 0 && sums[scene.OfFirst] == nil {
		return errors.New("nothing belongs to the one number of the problem")
	}
	if len(sums) == 0 && !zero && !p.Hidden {
		return errors.New("nothing in the picture is worth anything")
	}
	return p.bothDrawn(sums, want)
}

// bothDrawn: where two numbers are put together or side by side, a picture that
// draws one of them and not the answer draws the other too.
func (p Picture) bothDrawn(sums map[scene.Of]*big.Rat, want map[scene.Of][]*big.Rat) error {
	switch p.Problem.Kind {
	case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Claim, arithmetic.Comparison:
	default:
		return nil
	}
	present := func(of scene.Of) bool { return sums[of] != nil || want[of] == nil || want[of][0].Sign() == 0 }
	first, second := scene.OfFirst, scene.OfSecond
	_, isLeft := p.Problem.Left.(arithmetic.Operation)
	_, isRight := p.Problem.Right.(arithmetic.Operation)
	if isLeft && isRight {
		first, second = scene.OfLeft, scene.OfRight
	}
	if !p.Hidden && sums[scene.OfAnswer] == nil && present(first) != present(second) {
		return errors.New("only one of the two numbers is drawn")
	}
	return nil
}

// wanted is what each number of the problem comes to; where there are two amounts
// the picture may show either.
func (p Picture) wanted() map[scene.Of][]*big.Rat {
	want := map[scene.Of][]*big.Rat{}
	t := p.Truth
	for i, n := range t.Numbers {
		want[scene.OfNth(i)] = []*big.Rat{n}
	}
	if t.Value != nil {
		want[scene.OfAnswer] = []*big.Rat{t.Value}
	}
	switch p.Problem.Kind {
	case arithmetic.Claim, arithmetic.Comparison:
		gap := new(big.Rat).Sub(t.Sides[0], t.Sides[1])
		want[scene.OfAnswer] = []*big.Rat{gap.Abs(gap)}
		want[scene.OfLeft], want[scene.OfRight] = t.Sides[:1], t.Sides[1:]
	case arithmetic.PartOf:
		// The part that is taken belongs to the answer, the rest to the amount.
		want[scene.OfSecond] = []*big.Rat{new(big.Rat).Sub(t.Numbers[1], t.Value)}
	case arithmetic.PlaceValue:
		// What the digit is worth may belong to the answer, the rest to the number.
		want[scene.OfFirst] = append(want[scene.OfFirst], new(big.Rat).Sub(t.Numbers[0], t.Value))
	case arithmetic.Estimate:
		for i, n := range t.Rounded {
			want[scene.OfNth(i)] = append(want[scene.OfNth(i)], n)
		}
	}
	return want
}

// amounts are what the things that a picture shows may come to, each belonging to
// a number of its own, where the answer is a row of numbers or of pairs: one of
// those numbers, or all that was counted. It is nil for other problems.
func (p Picture) amounts() []*big.Rat {
	t := p.Truth
	list := slices.Clone(t.Numbers)
	for _, n := range t.List {
		list = append(list, big.NewRat(n, 1))
	}
	switch p.Problem.Kind {
	case arithmetic.Counting:
		way := big.NewRat(t.List[len(t.List)-1]-t.List[0], max(1, p.Problem.Run.Parts))
		return append(list, way.Abs(way))
	case arithmetic.WaysToMake, arithmetic.Factors, arithmetic.Primality:
		for _, pair := range t.Pairs {
			list = append(list, big.NewRat(pair[0], 1), big.NewRat(pair[1], 1))
		}
		return list
	case arithmetic.RuleTable, arithmetic.Multiples, arithmetic.CommonMultiples, arithmetic.CommonFactors, arithmetic.ExpandedForm:
		return list
	case arithmetic.EqualNames:
		return list // each name is an amount of its own
	case arithmetic.FactFamily:
		return append(list, t.Value)
	}
	return nil
}
