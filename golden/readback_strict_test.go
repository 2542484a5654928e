package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// pieces are the filled faces in the paint of a number.
func (s sight) pieces() []measure.Face {
	var list []measure.Face
	for _, f := range s.Faces() {
		if s.is(f.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
			list = append(list, f)
		}
	}
	return list
}

// readApart: no piece lies on another.
func readApart(s sight, _ problems.Truth) error {
	list := s.pieces()
	slices.SortFunc(list, func(a, b measure.Face) int { return a.X - b.X })
	for i, f := range list {
		for _, g := range list[i+1:] {
			if g.X >= f.Right() {
				break
			}
			if f.Overlaps(g.Box) {
				return fmt.Errorf("the pieces at %v and %v lie on one another", f.Box, g.Box)
			}
		}
	}
	return nil
}

// readEquation: the statement in the largest letters has every number of the
// problem in it, and the answer.
func readEquation(s sight, t problems.Truth) error {
	var foot []measure.Word
	for _, said := range s.Statements() {
		if len(foot) == 0 || said[0].Size > foot[0].Size {
			foot = said
		}
	}
	has := func(want *big.Rat) bool {
		return slices.ContainsFunc(foot, func(w measure.Word) bool {
			v, ok := w.Value()
			return ok && v.Cmp(want) == 0
		})
	}
	if s.problem.Rest == arithmetic.OneMore && t.Remainder.Sign() > 0 {
		return s.readRoundedUp(t)
	}
	if len(foot) == 0 {
		return nil // it is not in symbols
	}
	want := append(slices.Clone(t.Numbers), t.Value)
	switch {
	case t.Rounded != nil:
		want = []*big.Rat{t.Value} // it may be worked with the rounded numbers
	case s.problem.Kind == arithmetic.CoinsWorth:
		want = []*big.Rat{t.Value} // coins of one kind stand there together
	case t.List != nil || t.Pairs != nil || t.Name != "":
		return nil // the answer is no number
	case t.Quotient != nil && s.problem.Rest == arithmetic.LeftOver:
		want = append(t.Numbers, new(big.Rat).SetInt(t.Quotient))
	}
	for _, v := range want {
		if v != nil && !has(v) {
			return fmt.Errorf("%s is not in %q", v.RatString(), measure.Statement(foot))
		}
	}
	return nil
}

// readAgreement: the whole story has as many pieces and points as the last step.
func readAgreement(whole, last sight) error {
	count := func(s sight) (cells, circles int) {
		for _, f := range s.pieces() {
			cells += max(1, f.Cells())
		}
		for _, c := range s.Circles {
			if s.is(c.Paint, scene.First, scene.Second, scene.Result, scene.Moved) {
				circles++
			}
		}
		return cells, circles
	}
	a, b := count(whole)
	c, d := count(last)
	if a != c || b != d {
		return fmt.Errorf("%d pieces and %d circles, and in the last step %d and %d", a, b, c, d)
	}
	return nil
}
