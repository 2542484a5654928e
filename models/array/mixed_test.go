package array

import (
	"math/rand/v2"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// mixed are problems with more than one array, or with something left over that is
// cut, small and large.
func mixed() []arithmetic.Problem {
	r := rand.New(rand.NewPCG(6, 28))
	n, add, less, times := arithmetic.Int, arithmetic.Add, arithmetic.Subtract, arithmetic.Multiply
	op := func(o arithmetic.Op, a, b arithmetic.Expr) arithmetic.Expr {
		return arithmetic.Operation{Op: o, Left: a, Right: b}
	}
	var list []arithmetic.Problem
	expression := func(e arithmetic.Expr) {
		if arithmetic.Check(arithmetic.Problem{Kind: arithmetic.Expression, Left: e}) == nil {
			list = append(list, arithmetic.Problem{Kind: arithmetic.Expression, Left: e})
		}
	}
	for i := range 90 {
		size := arithmetic.Power10(1 + i%3)
		some := func() arithmetic.Expr { return n(1 + r.Int64N(size)) }
		few := func() arithmetic.Expr { return n(1 + r.Int64N(12)) }
		a, b, c := some(), few(), some()
		expression(op(times, op(times, few(), a), few()))
		expression(op(times, few(), op(times, a, b)))
		expression(op(add, a, op(times, b, c)))
		expression(op(add, op(times, b, c), a))
		expression(op(add, op(times, few(), few()), op(times, few(), few())))
		expression(op(less, n(10*size), op(times, b, c)))
		expression(op(less, op(times, b, c), a))
		expression(op(times, b, op(less, n(size), a)))
		expression(op(times, op(less, n(12), b), c))
		left, right := op(times, op(times, few(), few()), few()), op(times, few(), op(times, few(), few()))
		for rel := arithmetic.Equal; rel <= arithmetic.Greater; rel++ {
			list = append(list, arithmetic.Problem{Kind: arithmetic.Claim, Rel: rel, Left: left, Right: right})
		}
		list = append(list, arithmetic.Problem{Kind: arithmetic.Comparison, Left: left, Right: op(times, few(), few())},
			arithmetic.Problem{Kind: arithmetic.CommonFactors, Left: n(1 + r.Int64N(100)), Right: n(1 + r.Int64N(100))},
			arithmetic.Problem{Kind: arithmetic.FactFamily, Left: op(times, n(1+r.Int64N(20)), n(1+r.Int64N(20)))},
			arithmetic.Problem{Kind: arithmetic.Primality, Left: n(1 + 2*int64(i))})
		p := problem(arithmetic.Division, arithmetic.Divide, n(r.Int64N(10*size)), n(1+r.Int64N(9)))
		for p.Rest = arithmetic.AsPart; p.Rest <= arithmetic.OneMore; p.Rest++ {
			list = append(list, p)
			p.Grouping = !p.Grouping
		}
	}
	return list
}

// Of a difference with an array in it what is there and what is gone are all that
// was laid out.
func TestWhatIsTakenFromAnArrayStaysAsAGhost(t *testing.T) {
	for text, want := range map[[4]int64][2]int{{0, 20, 3, 4}: {8, 12}, {0, 23, 3, 4}: {11, 12}, {1, 7, 10, 7}: {63, 7}, {1, 2, 3, 4}: {10, 2}} {
		product := arithmetic.Operation{Op: arithmetic.Multiply, Left: arithmetic.Int(text[2]), Right: arithmetic.Int(text[3])}
		e := arithmetic.Operation{Op: arithmetic.Subtract, Left: arithmetic.Int(text[1]), Right: product}
		if text[0] == 1 {
			e.Left, e.Right = product, arithmetic.Int(text[1])
		}
		there, gone := 0, 0
		for _, it := range Model.Tell(arithmetic.Problem{Kind: arithmetic.Expression, Left: e}).Whole.View(false).Items {
			if _, is := it.Shape.(scene.Circle); is && it.Role == scene.Gone {
				gone++
			} else if is {
				there++
			}
		}
		if there != want[0] || gone != want[1] {
			t.Errorf("%v draws %d and %d ghosts, want %v", e, there, gone, want)
		}
	}
}
