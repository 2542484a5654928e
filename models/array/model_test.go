package array

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

func problem(kind arithmetic.Kind, op arithmetic.Op, a, b arithmetic.Expr) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: a, Right: b}}
}

// problems are small ones all, and larger ones at random.
func problems() []arithmetic.Problem {
	r := rand.New(rand.NewPCG(3, 14))
	n, times, by := arithmetic.Int, arithmetic.Multiply, arithmetic.Divide
	var list []arithmetic.Problem
	product := func(a, b int64) {
		list = append(list, problem(arithmetic.Product, times, n(a), n(b)))
	}
	division := func(a, b int64) {
		p := problem(arithmetic.Division, by, n(a), n(b))
		list = append(list, p)
		p.Grouping = true
		list = append(list, p)
	}
	for a := range int64(14) {
		for b := range int64(14) {
			product(a, b)
			division(a*b+r.Int64N(a+1), a+1)
		}
	}
	for range 250 {
		product(r.Int64N(100), r.Int64N(100))
		product(r.Int64N(arithmetic.Power10(1+r.IntN(4))), r.Int64N(arithmetic.Power10(1+r.IntN(4))))
		division(r.Int64N(arithmetic.Power10(1+r.IntN(4))), 1+r.Int64N(99))
	}
	for i := range int64(300) {
		den := 2 + r.Int64N(11)
		f := arithmetic.Frac(fraction.Must(r.Int64N(den+1), den))
		list = append(list, problem(arithmetic.PartOf, arithmetic.Of, f, n(den*(1+r.Int64N(1+10*(i%40))))))
		sum := arithmetic.Operation{Op: arithmetic.Add, Left: n(1 + r.Int64N(30)), Right: n(1 + r.Int64N(30))}
		list = append(list, problem(arithmetic.Expression, times, n(1+r.Int64N(30)), sum), problem(arithmetic.Expression, times, sum, n(1+r.Int64N(30))))
		a, b := 1+r.Int64N(20), 1+r.Int64N(20)
		for _, e := range []arithmetic.Operation{
			{Op: times, Left: n(a), Right: arithmetic.Unknown{}}, {Op: times, Left: arithmetic.Unknown{}, Right: n(a)},
		} {
			list = append(list, arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: e, Right: n(a * b)},
				arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: n(a * b), Right: e})
		}
		for _, e := range []arithmetic.Operation{
			{Op: by, Left: n(a * b), Right: arithmetic.Unknown{}}, {Op: by, Left: arithmetic.Unknown{}, Right: n(a)},
		} {
			list = append(list, arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: e, Right: n(b)})
		}
	}
	for i := range int64(300) {
		side := func() arithmetic.Expr {
			if r.IntN(3) == 0 {
				return n(r.Int64N(100))
			}
			return arithmetic.Operation{Op: times, Left: n(1 + r.Int64N(12)), Right: n(1 + r.Int64N(12))}
		}
		p := arithmetic.Problem{Kind: arithmetic.Comparison, Left: side(), Right: side()}
		if i%4 > 0 {
			p.Kind, p.Rel = arithmetic.Claim, arithmetic.Relation(i%4)
		}
		list = append(list, p)
	}
	for i := range int64(200) {
		list = append(list, arithmetic.Problem{Kind: arithmetic.Factors, Left: n(i + 1)})
	}
	return list
}

// pictures are the whole story and all steps.
func pictures(t telling.Telling) []*scene.Scene {
	list := []*scene.Scene{t.Whole}
	for _, st := range t.Steps {
		list = append(list, st.Scene)
	}
	return list
}

func TestEveryArrayKeepsItsLabelsApartAndOnThePaper(t *testing.T) {
	told := 0
	for _, p := range problems() {
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

func TestAClaimOfProductsDrawsBothSides(t *testing.T) {
	n := arithmetic.Int
	p := arithmetic.Problem{
		Kind: arithmetic.Claim, Rel: arithmetic.Equal,
		Left:  arithmetic.Operation{Op: arithmetic.Multiply, Left: n(3), Right: n(4)},
		Right: arithmetic.Operation{Op: arithmetic.Multiply, Left: n(2), Right: n(7)},
	}
	told := Model.Tell(p)
	count := map[scene.Of]int{}
	for _, it := range told.Whole.Items {
		if _, is := it.Shape.(scene.Circle); is {
			count[it.Of]++
		}
	}
	if count[scene.OfLeft] != 12 || count[scene.OfRight] != 14 {
		t.Errorf("%v is drawn with %v counters", p, count)
	}
	if told.Answer.True || told.Answer.Relation != arithmetic.Less || !strings.Contains(told.Why.String(), "2 more") {
		t.Errorf("%v is judged %+v because %q", p, told.Answer, told.Why)
	}
	last := told.Steps[len(told.Steps)-1].Symbols.Text()
	if last != "3 × 4 ≠ 2 × 7" {
		t.Errorf("%v ends in %q", p, last)
	}
}

func TestStepsOfAnArrayKeepOneScale(t *testing.T) {
	for _, p := range problems() {
		if Model.Fits(p) != nil {
			continue
		}
		told := Model.Tell(p)
		first := told.Steps[0].Scene
		for i, st := range told.Steps {
			if st.Scene.W != first.W || st.Scene.H != first.H {
				t.Errorf("%v: step %d is %d by %d, step 1 is %d by %d", p, i+1, st.Scene.W, st.Scene.H, first.W, first.H)
			}
			if st.Title == "" || len(st.Hands) == 0 || len(st.Symbols.Lines) == 0 || st.Scene.Desc.Shown == "" || st.Scene.Desc.Hidden == "" {
				t.Errorf("%v: step %d does not tell everything: %+v", p, i+1, st)
			}
		}
		if told.Whole.Title.Shown == told.Whole.Title.Hidden || told.Whole.Desc.Shown == told.Whole.Desc.Hidden {
			t.Errorf("%v: the whole story tells the same with the answer hidden", p)
		}
		if told.Whole.H > 1000 || first.H > 1100 {
			t.Errorf("%v: the pictures are %d and %d high", p, told.Whole.H, first.H)
		}
	}
}

func TestArraysRefuseWhatTheyCannotShow(t *testing.T) {
	n := arithmetic.Int
	for _, c := range []struct {
		p    arithmetic.Problem
		want string
	}{
		{problem(arithmetic.Product, arithmetic.Multiply, n(10_000), n(2)), "up to 9,999"},
		{problem(arithmetic.Product, arithmetic.Multiply, n(1234), n(567)), "12 parts"},
		{problem(arithmetic.Product, arithmetic.Multiply, arithmetic.Frac(fraction.Must(1, 2)), n(2)), "whole numbers"},
		{problem(arithmetic.Division, arithmetic.Divide, n(10_000), n(2)), "up to 9,999"},
		{problem(arithmetic.Division, arithmetic.Divide, n(500), n(100)), "up to 99"},
		{problem(arithmetic.PartOf, arithmetic.Of, arithmetic.Frac(fraction.Must(1, 5)), n(12)), "equal rows"},
		{problem(arithmetic.PartOf, arithmetic.Of, arithmetic.Frac(fraction.Must(1, 13)), n(26)), "up to 12"},
		{arithmetic.Problem{Kind: arithmetic.Factors, Left: n(201)}, "up to 200"},
		{arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: arithmetic.Operation{Op: arithmetic.Multiply, Left: n(8), Right: arithmetic.Unknown{}}, Right: n(50)}, "no whole number"},
		{arithmetic.Problem{Kind: arithmetic.Show, Left: n(5)}, "products"},
	} {
		if err := Model.Fits(c.p); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%v is refused with %v, want %q", c.p, err, c.want)
		}
	}
}
