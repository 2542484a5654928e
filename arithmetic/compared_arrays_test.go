package arithmetic

import (
	"errors"
	"slices"
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

func TestASplitSideIsAnArrayInParts(t *testing.T) {
	op := func(a, b int64) Expr { return Operation{Multiply, Int(a), Int(b)} }
	sum := func(a, b Expr) Expr { return Operation{Add, a, b} }
	for _, c := range []struct {
		left, right Expr
		rows, cols  []int64
		parts       []int64
		cut         bool // the whole one can be cut the same way
		rel         Relation
	}{
		// CCSS 3.OA.B.5: 8 × 7 as 8 × (5 + 2) = (8 × 5) + (8 × 2) = 40 + 16 = 56.
		{op(8, 7), sum(op(8, 5), op(8, 2)), []int64{8}, []int64{5, 2}, []int64{40, 16}, true, Equal},
		{op(8, 7), Operation{Multiply, Int(8), sum(Int(5), Int(2))}, []int64{8}, []int64{5, 2}, []int64{40, 16}, true, Equal},
		{op(8, 7), sum(op(8, 5), op(8, 3)), []int64{8}, []int64{5, 3}, []int64{40, 24}, false, Less},
		{op(7, 8), sum(op(5, 8), op(2, 8)), []int64{5, 2}, []int64{8}, []int64{40, 16}, true, Equal},
		{Int(56), sum(op(8, 5), op(8, 2)), []int64{8}, []int64{5, 2}, []int64{40, 16}, false, Equal},
	} {
		p := Problem{Kind: Claim, Left: c.left, Right: c.right, Rel: Equal}
		w, err := CompareProducts(p)
		if err != nil {
			t.Errorf("%v: %v", p, err)
			continue
		}
		side := w.Moves[0].(LayArrays).Sides[1]
		if !slices.Equal(side.RowParts, c.rows) || !slices.Equal(side.ColParts, c.cols) || !slices.Equal(side.Parts, c.parts) {
			t.Errorf("%v has the right side %+v", p, side)
		}
		_, cut := w.Moves[1].(CutArray)
		if judged := w.Moves[len(w.Moves)-1].(JudgeArrays); cut != c.cut || judged.Relation != c.rel {
			t.Errorf("%v is worked %+v", p, w.Moves)
		}
	}
}
