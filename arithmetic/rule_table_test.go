package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"
)

func ruleFor(op Op, by int64, list ...int64) Problem {
	p := Problem{Kind: RuleTable, Run: Run{Op: op, By: by}}
	for _, n := range list {
		p.List = append(p.List, Int(n))
	}
	return p
}

func TestFillTable(t *testing.T) {
	for _, c := range []struct {
		p    Problem
		want []int64
		err  error
	}{
		{Problem{Kind: Counting, Run: Run{From: 1, By: 3, Op: Add, Terms: 6}}, []int64{1, 4, 7, 10, 13, 16}, nil}, // CCSS 4.OA.C.5
		{Problem{Kind: Counting, Run: Run{From: 0, By: 6, Op: Add, Terms: 5}}, []int64{0, 6, 12, 18, 24}, nil},    // CCSS 5.OA.B.3
		{Problem{Kind: Counting, Run: Run{From: 3, By: 2, Op: Multiply, Terms: 5}}, []int64{3, 6, 12, 24, 48}, nil},
		{Problem{Kind: Counting, Run: Run{From: 5, By: 3, Op: Subtract, Terms: 4}}, nil, ErrNegative},
		{Problem{Kind: Counting, Run: Run{From: 5, By: 3, Op: Add, Terms: 1}}, nil, ErrNothing},
		{Problem{Kind: Counting, Run: Run{From: 1, By: 1, Op: Add, Terms: 4, Parts: 4}}, nil, ErrNotWhole},
		{ruleFor(Divide, 6, 54, 24, 6, 0), []int64{9, 4, 1, 0}, nil},
		{ruleFor(Divide, 6, 55), nil, ErrNotWhole},
		{ruleFor(Subtract, 6, 5), nil, ErrNegative},
		{ruleFor(Add, 6), nil, ErrNothing},
		{Problem{Kind: Addition}, nil, ErrNotWhole},
	} {
		w, err := FillTable(c.p)
		if !errors.Is(err, c.err) || err == nil && !slices.Equal(w.Answer.List, c.want) {
			t.Errorf("%s: %v, %v; want %v, %v", c.p, w.Answer.List, err, c.want, c.err)
		}
	}
}

// Every row is filled once, in order, by the rule.
func TestEveryRowIsFilledOnce(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 5))
	for range 2000 {
		by := 1 + r.Int64N(50)
		op := []Op{Add, Subtract, Multiply, Divide}[r.IntN(4)]
		var list []int64
		for range 1 + r.IntN(12) {
			list = append(list, by*(1+r.Int64N(90)))
		}
		w, err := FillTable(ruleFor(op, by, list...))
		if err != nil {
			t.Fatalf("%v %d for %v: %v", op, by, list, err)
		}
		var rows []FillRow
		for _, m := range w.Moves[1:] {
			switch m := m.(type) {
			case FillRow:
				rows = append(rows, m)
			case FillRows:
				rows = append(rows, m.Rows...)
			}
		}
		if len(rows) != len(list) {
			t.Fatalf("%d rows for %v", len(rows), list)
		}
		for i, row := range rows {
			a, b, want := big.NewInt(list[i]), big.NewInt(by), new(big.Int)
			switch op {
			case Add:
				want.Add(a, b)
			case Subtract:
				want.Sub(a, b)
			case Multiply:
				want.Mul(a, b)
			case Divide:
				want.Quo(a, b)
			}
			if row.Row != i || row.In != list[i] || want.Cmp(big.NewInt(row.Out)) != 0 {
				t.Fatalf("row %d of %v %d is %+v", i, op, by, row)
			}
		}
	}
}
