package arithmetic

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"testing"
)

// operation is a short way to write an expression.
func operation(o Op, l, r Expr) Expr { return Operation{o, l, r} }

func expression(e Expr) Problem { return Problem{Kind: Expression, Left: e} }

func TestProductsComeBeforeSumsAndDifferences(t *testing.T) {
	times := func(a, b int64) Expr { return operation(Multiply, Int(a), Int(b)) }
	for _, c := range []struct {
		e      Expr
		want   []Move
		source string
	}{
		{
			operation(Add, Int(2), times(1, 3)),
			[]Move{
				LayTerms{[2]Term{{false, 0, 0, 2}, {true, 1, 3, 3}}},
				CountTerm{1, 1, 3, 3},
				JoinTerms{[2]int64{2, 3}, 5},
			}, "common practice, no source",
		},
		{
			operation(Add, times(3, 4), times(2, 5)),
			[]Move{
				LayTerms{[2]Term{{true, 3, 4, 12}, {true, 2, 5, 10}}},
				CountTerm{0, 3, 4, 12}, CountTerm{1, 2, 5, 10},
				JoinTerms{[2]int64{12, 10}, 22},
			}, "common practice, no source",
		},
		{
			operation(Subtract, Int(20), times(3, 4)),
			[]Move{LayLines{5, 4, 0, 20}, CountTerm{1, 3, 4, 12}, TakeLines{FirstRows, 3, 4, 2, 20, 12, 8}}, "common practice, no source",
		},
		{
			operation(Subtract, Int(23), times(3, 4)),
			[]Move{LayLines{5, 4, 3, 23}, CountTerm{1, 3, 4, 12}, TakeLines{FirstRows, 3, 4, 2, 23, 12, 11}}, "common practice, no source",
		},
		{
			operation(Subtract, times(10, 7), Int(7)),
			[]Move{LayLines{10, 7, 0, 70}, CountTerm{0, 10, 7, 70}, TakeLines{LastRows, 1, 7, 9, 70, 7, 63}}, "nine times as ten times less one; common practice, no source",
		},
		{
			operation(Subtract, times(3, 4), Int(2)),
			[]Move{LayLines{3, 4, 0, 12}, CountTerm{0, 3, 4, 12}, TakeLines{LastOnes, 1, 2, 0, 12, 2, 10}}, "common practice, no source",
		},
		{
			operation(Multiply, Int(8), operation(Subtract, Int(10), Int(2))),
			[]Move{LayLines{8, 10, 0, 80}, TakeLines{LastCols, 2, 8, 8, 80, 16, 64}, CountTerm{0, 8, 8, 64}}, "the brackets first",
		},
		{
			operation(Subtract, times(8, 10), times(8, 2)),
			[]Move{LayLines{8, 10, 0, 80}, CountTerm{0, 8, 10, 80}, TakeLines{LastCols, 2, 8, 8, 80, 16, 64}}, "the same, written out",
		},
	} {
		p := expression(c.e)
		w, ok, err := AddTerms(p)
		if !ok {
			w, ok, err = TakeFromArray(p)
		}
		if !ok || err != nil || !reflect.DeepEqual(w.Moves, c.want) {
			t.Errorf("%v is worked %+v (%t, %v), want %+v (%s)", p, w.Moves, ok, err, c.want, c.source)
		}
	}
	w, err := ProductByArray(product(9, 7))
	if want := []Move{LayLines{10, 7, 0, 70}, CountTerm{0, 10, 7, 70}, TakeLines{LastRows, 1, 7, 9, 70, 7, 63}}; err != nil || !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("9 × 7 is worked %+v (%v)", w.Moves, err)
	}
	if w, _ := ProductByArray(product(6, 9)); !reflect.DeepEqual(w.Moves[2], TakeLines{LastCols, 1, 6, 9, 60, 6, 54}) {
		t.Errorf("6 × 9 is worked %+v", w.Moves)
	}
}

func TestMixedOperationsAgreeWithPlainArithmetic(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 9))
	n := func() int64 { return r.Int64N(1 + Power10(r.IntN(4))) }
	for range 4000 {
		a, b, c := n(), n(), n()
		for _, e := range []struct {
			e    Expr
			want int64
		}{
			{operation(Add, Int(a), operation(Multiply, Int(b), Int(c))), a + b*c},
			{operation(Add, operation(Multiply, Int(b), Int(c)), Int(a)), a + b*c},
			{operation(Subtract, Int(a), operation(Multiply, Int(b), Int(c))), a - b*c},
			{operation(Subtract, operation(Multiply, Int(b), Int(c)), Int(a)), b*c - a},
			{operation(Multiply, Int(a), operation(Subtract, Int(b), Int(c))), a * (b - c)},
			{operation(Multiply, operation(Subtract, Int(b), Int(c)), Int(a)), a * (b - c)},
			{operation(Subtract, operation(Multiply, Int(a), Int(b)), operation(Multiply, Int(c), Int(b))), (a - c) * b},
		} {
			p := expression(e.e)
			w, ok, err := AddTerms(p)
			if !ok {
				w, ok, err = TakeFromArray(p)
			}
			if !ok {
				t.Fatalf("%v is not worked", p)
			}
			if err != nil {
				if !errors.Is(err, ErrNothing) || e.want > 0 && a*b*c != 0 && a != c {
					t.Fatalf("%v: %v", p, err)
				}
				continue
			}
			if w.Answer.Number != Int(e.want) || e.want <= 0 {
				t.Fatalf("%v = %v, want %d", p, w.Answer.Number, e.want)
			}
			for _, m := range w.Moves {
				switch m := m.(type) {
				case LayLines:
					if m.Rows*m.Cols+m.Rest != m.Total || m.Rest >= m.Cols {
						t.Fatalf("%v lays %+v", p, m)
					}
				case TakeLines:
					if m.Count*m.Each != m.Taken || m.Before-m.Taken != m.Left {
						t.Fatalf("%v takes %+v", p, m)
					}
				}
			}
		}
	}
}
