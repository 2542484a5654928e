package array

import (
	"fmt"
	"math/big"
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
)

func TestEveryArrayKeepsItsLabelsApartAndOnThePaper(t *testing.T) {
	told := 0
	for _, p := range append(problems(), mixed()...) {
		if Model.Fits(p) != nil {
			continue
		}
		told++
		for k, s := range pictures(Model.Tell(p)) {
			for _, hidden := range []bool{false, true} {
				if err := legible(s.View(hidden)); err != nil {
					t.Errorf("%v, picture %d, hidden %t: %v", p, k, hidden, err)
				}
			}
		}
	}
	if told < 2500 {
		t.Errorf("only %d problems fit", told)
	}
}

// legible checks one picture: shapes on the paper, texts apart, and no text
// half over the edge of a shape.
func legible(s scene.Scene) error {
	paper := scene.Box{W: s.W, H: s.H}
	var texts []scene.Box
	for _, it := range s.Items {
		b := it.Shape.Box()
		if !paper.Contains(b) {
			return fmt.Errorf("%#v leaves the paper of %d by %d", it.Shape, s.W, s.H)
		}
		switch sh := it.Shape.(type) {
		case scene.Text:
			if b.X < scene.Margin || b.Right() > s.W-scene.Margin {
				return fmt.Errorf("%v stands in the margin", sh.Runs)
			}
			for _, other := range texts {
				if b.Overlaps(other) {
					return fmt.Errorf("%v touches another text", sh.Runs)
				}
			}
			texts = append(texts, b)
		case scene.Grid:
			if sh.W%sh.Cols != 0 || sh.H%sh.Rows != 0 {
				return fmt.Errorf("the cells of %v are not whole", sh)
			}
		}
	}
	for _, it := range s.Items {
		b := it.Shape.Box()
		switch it.Shape.(type) {
		case scene.Rect, scene.Grid, scene.Circle:
		default:
			continue
		}
		for _, text := range texts {
			if b.Overlaps(text) && !b.Contains(text) {
				return fmt.Errorf("the text in %v lies over the edge of %#v", text, it.Shape)
			}
		}
	}
	return nil
}

func TestEveryArrayIsWorthItsNumber(t *testing.T) {
	for _, p := range problems() {
		if Model.Fits(p) != nil {
			continue
		}
		if p.Kind == arithmetic.Claim || p.Kind == arithmetic.Comparison {
			continue // see TestAClaimOfProductsDrawsBothSides
		}
		of, want := total(p)
		for k, s := range pictures(Model.Tell(p)) {
			for _, hidden := range []bool{false, true} {
				got := map[scene.Of]*big.Rat{}
				for _, it := range s.View(hidden).Items {
					if it.Of != scene.OfNothing {
						if got[it.Of] == nil {
							got[it.Of] = new(big.Rat)
						}
						got[it.Of].Add(got[it.Of], big.NewRat(it.Worth.Num(), it.Worth.Den()))
					}
				}
				if p.Kind == arithmetic.Factors {
					for of, sum := range got {
						if sum.Cmp(want) != 0 {
							t.Errorf("%v, picture %d: the array %q is worth %v", p, k, of, sum)
						}
					}
					continue
				}
				if marked := got[scene.OfAnswer]; p.Kind == arithmetic.PartOf && marked != nil {
					// The rows marked are the answer, the others the rest of the amount.
					if got[of] == nil {
						got[of] = new(big.Rat)
					}
					got[of].Add(got[of], marked)
				}
				if sum := got[of]; sum == nil && want.Sign() != 0 || sum != nil && sum.Cmp(want) != 0 {
					t.Errorf("%v, picture %d, hidden %t: %q is worth %v, want %v", p, k, hidden, of, sum, want)
				}
			}
		}
	}
}

// total is how many things the array has, by math/big, and which number of
// the problem that is.
func total(p arithmetic.Problem) (scene.Of, *big.Rat) {
	var numbers []*big.Rat
	var ops []arithmetic.Op
	blank := -1
	var walk func(e arithmetic.Expr)
	walk = func(e arithmetic.Expr) {
		switch e := e.(type) {
		case arithmetic.Number:
			numbers = append(numbers, big.NewRat(e.Value.Num(), e.Value.Den()))
		case arithmetic.Unknown:
			blank = len(numbers)
		case arithmetic.Operation:
			walk(e.Left)
			ops = append(ops, e.Op)
			walk(e.Right)
		}
	}
	walk(p.Left)
	if p.Right != nil {
		walk(p.Right)
	}
	mul := func(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }
	switch p.Kind {
	case arithmetic.Product:
		return scene.OfAnswer, mul(numbers[0], numbers[1])
	case arithmetic.Expression:
		if ops[0] == arithmetic.Add { // (a + b) × c
			return scene.OfAnswer, mul(new(big.Rat).Add(numbers[0], numbers[1]), numbers[2])
		}
		return scene.OfAnswer, mul(numbers[0], new(big.Rat).Add(numbers[1], numbers[2]))
	case arithmetic.PartOf:
		return scene.OfSecond, numbers[1]
	case arithmetic.Missing:
		if ops[0] == arithmetic.Divide && blank == 0 {
			return scene.OfAnswer, mul(numbers[0], numbers[1])
		}
		// The total is the larger of the two, or they are equal and it is the
		// one that stands alone.
		_, alone := p.Right.(arithmetic.Number)
		first := (ops[0] == arithmetic.Divide) == alone
		if first {
			return scene.OfFirst, numbers[0]
		}
		return scene.OfSecond, numbers[1]
	}
	return scene.OfFirst, numbers[0]
}

func TestNoArrayGivesItsHiddenAnswerAway(t *testing.T) {
	for _, p := range problems() {
		if Model.Fits(p) != nil || p.Kind == arithmetic.Factors || p.Kind == arithmetic.Claim || p.Kind == arithmetic.Comparison {
			continue
		}
		told := Model.Tell(p)
		given := strings.FieldsFunc(p.String(), notDigit)
		secret := []string{told.Answer.Number.String()}
		if told.Answer.Remainder > 0 {
			secret = append(secret, arithmetic.Grouped(told.Answer.Remainder))
		}
		for k, s := range pictures(told) {
			said := []string{s.Title.Hidden, s.Desc.Hidden}
			for _, it := range s.View(true).Items {
				if text, is := it.Shape.(scene.Text); is {
					for _, run := range text.Runs {
						said = append(said, run.Text, run.Num, run.Den)
					}
				}
			}
			for _, text := range said {
				for _, word := range strings.FieldsFunc(text, notDigit) {
					if slices.Contains(secret, word) && !slices.Contains(given, word) {
						t.Errorf("%v, picture %d says %q", p, k, text)
					}
				}
			}
		}
	}
}

func notDigit(r rune) bool { return (r < '0' || r > '9') && r != ',' }
