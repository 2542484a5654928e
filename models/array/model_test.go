package array

import (
	"math/rand/v2"
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
		if i%3 == 0 {
			p.Left, p.Right = n(1+r.Int64N(100)), splitSide(r)
			if o := p.Right.(arithmetic.Operation); i%2 == 0 && o.Op == arithmetic.Multiply {
				p.Left = arithmetic.Operation{Op: times, Left: o.Left, Right: n(1 + r.Int64N(14))}
			}
		}
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

// splitSide is an array in parts: 8 × 5 + 8 × 2 or 8 × (5 + 2).
func splitSide(r *rand.Rand) arithmetic.Expr {
	n := func(most int64) arithmetic.Expr { return arithmetic.Int(1 + r.Int64N(most)) }
	op := func(op arithmetic.Op, a, b arithmetic.Expr) arithmetic.Expr {
		return arithmetic.Operation{Op: op, Left: a, Right: b}
	}
	rows, a, b := n(9), n(10), n(9)
	switch r.IntN(3) {
	case 0:
		return op(arithmetic.Multiply, rows, op(arithmetic.Add, a, b))
	case 1:
		return op(arithmetic.Add, op(arithmetic.Multiply, rows, a), op(arithmetic.Multiply, rows, b))
	}
	return op(arithmetic.Add, op(arithmetic.Multiply, a, rows), op(arithmetic.Multiply, b, rows))
}

// pictures are the whole story and all steps.
func pictures(t telling.Telling) []*scene.Scene {
	list := []*scene.Scene{t.Whole}
	for _, st := range t.Steps {
		list = append(list, st.Scene)
	}
	return list
}

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
	split := Model.Tell(arithmetic.Problem{
		Kind: arithmetic.Claim, Rel: arithmetic.Equal, Left: p.Left, // 3 × 4 = 3 × 1 + 3 × 3
		Right: arithmetic.Operation{
			Op: arithmetic.Add, Left: arithmetic.Operation{Op: arithmetic.Multiply, Left: n(3), Right: n(1)},
			Right: arithmetic.Operation{Op: arithmetic.Multiply, Left: n(3), Right: n(3)},
		},
	})
	cuts := map[int]int{}
	for k, s := range pictures(split) {
		for _, it := range s.Items {
			if l, is := it.Shape.(scene.Line); is && l.X1 == l.X2 {
				cuts[k]++
			}
		}
	}
	// The second array is cut from the first step on, the first one from the second.
	if !split.Answer.True || cuts[1] != 1 || cuts[2] != 2 || cuts[0] != 2 {
		t.Errorf("3 × 4 = 3 × 1 + 3 × 3 is judged %+v, with the cuts %v", split.Answer, cuts)
	}
	last := told.Steps[len(told.Steps)-1].Symbols.Text()
	if last != "3 × 4 ≠ 2 × 7" {
		t.Errorf("%v ends in %q", p, last)
	}
}

func TestStepsOfAnArrayKeepOneScale(t *testing.T) {
	for _, p := range append(problems(), mixed()...) {
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
