package arithmetic

import (
	"errors"
	"testing"
)

func TestProductsAreComparedAsArrays(t *testing.T) {
	op := func(a, b int64) Expr { return Operation{Multiply, Int(a), Int(b)} }
	for _, c := range []struct {
		left, right Expr
		rel         Relation
		turned      bool
		gap         int64
		err         error
	}{
		{op(6, 4), op(4, 6), Equal, true, 0, nil}, // CCSS 3.OA.B.5: 6 × 4 = 24, so 4 × 6 = 24
		{op(3, 4), op(2, 6), Equal, false, 0, nil},
		{op(4, 4), op(4, 4), Equal, false, 0, nil},
		{op(7, 8), Int(54), Greater, false, 2, nil},
		{Int(20), op(3, 7), Less, false, 1, nil},
		{Int(20), Int(21), NoRelation, false, 0, ErrNotWhole},
		{op(3, 4), Operation{Add, Int(5), Int(7)}, NoRelation, false, 0, ErrNotWhole},
	} {
		p := Problem{Kind: Claim, Left: c.left, Right: c.right, Rel: Equal}
		w, err := CompareProducts(p)
		if !errors.Is(err, c.err) {
			t.Errorf("%v gives %v, want %v", p, err, c.err)
		}
		if err != nil {
			continue
		}
		_, turned := w.Moves[1].(TurnArray)
		judged := w.Moves[len(w.Moves)-1].(JudgeArrays)
		if turned != c.turned || judged != (JudgeArrays{c.rel, c.gap}) || w.Answer.True != (c.rel == Equal) {
			t.Errorf("%v is worked %v, true %t", p, w.Moves, w.Answer.True)
		}
	}
}
