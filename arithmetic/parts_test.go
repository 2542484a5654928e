package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"
)

func product(a, b int64) Problem {
	return Problem{Kind: Product, Left: Operation{Multiply, Int(a), Int(b)}}
}

func TestProductsOfTheStandardsAreSplitAsTheyShow(t *testing.T) {
	for _, c := range []struct {
		a, b       int64
		rows, cols []int64
		parts      []int64
		sum        int64
		source     string
	}{
		{8, 7, []int64{8}, []int64{5, 2}, []int64{40, 16}, 56, "CCSS 3.OA.B.5: 8 × 7 = 8 × (5 + 2)"},
		{7, 8, []int64{5, 2}, []int64{8}, []int64{40, 16}, 56, "the same facts, with the factor 7 in front"},
		{39, 7, []int64{30, 9}, []int64{7}, []int64{210, 63}, 273, "National curriculum in England 2013, Year 4: 39 × 7 = 30 × 7 + 9 × 7"},
		{36, 94, []int64{30, 6}, []int64{90, 4}, []int64{2700, 120, 540, 24}, 3384, "Progressions, Number and Operations in Base Ten 2012, grade 4 (from memory)"},
		{8, 549, []int64{8}, []int64{500, 40, 9}, []int64{4000, 320, 72}, 4392, "the same, from memory"},
		{23, 23, []int64{20, 3}, []int64{20, 3}, []int64{400, 60, 60, 9}, 529, "Whitacre & Nickerson 2016 report 409, with two cells left out"},
		{406, 3, []int64{400, 6}, []int64{3}, []int64{1200, 18}, 1218, "a place with 0 has no part; common practice, no source"},
	} {
		w, err := ProductByArray(product(c.a, c.b))
		if err != nil {
			t.Fatalf("%d × %d: %v", c.a, c.b, err)
		}
		if lay := w.Moves[0].(LayRows); lay != (LayRows{c.a, c.b}) {
			t.Errorf("%d × %d lays out %v", c.a, c.b, lay)
		}
		if split := w.Moves[1].(SplitSides); !reflect.DeepEqual(split, SplitSides{c.rows, c.cols}) {
			t.Errorf("%d × %d is split %v, want %v by %v (%s)", c.a, c.b, split, c.rows, c.cols, c.source)
		}
		join := w.Moves[len(w.Moves)-1].(JoinParts)
		if !reflect.DeepEqual(join, JoinParts{c.parts, c.sum}) {
			t.Errorf("%d × %d joins %v, want %v = %d (%s)", c.a, c.b, join, c.parts, c.sum, c.source)
		}
	}
}

func TestEasyProductsAreCountedDirectly(t *testing.T) {
	for _, c := range []struct {
		a, b int64
		want Move
	}{
		{3, 8, CountRows{3, 8, []int64{8, 16, 24}, 24}},
		{1, 9, CountRows{1, 9, nil, 9}},
		{9, 1, CountRows{9, 1, nil, 9}},
		{0, 4, CountRows{0, 4, nil, 0}},
		{4, 0, CountRows{4, 0, nil, 0}},
		{10, 4, CountRows{10, 4, []int64{4, 8, 12, 16, 20, 24, 28, 32, 36, 40}, 40}},
		{9, 80, CountTens{9, 1, 8, 10, 72, 10, 720}},       // CCSS 3.NBT.A.3
		{5, 60, CountTens{5, 1, 6, 10, 30, 10, 300}},       // CCSS 3.NBT.A.3
		{40, 60, CountTens{4, 10, 6, 10, 24, 100, 2400}},   // common practice, no source
		{300, 2, CountTens{3, 100, 2, 1, 6, 100, 600}},     // common practice, no source
		{10, 20, CountTens{1, 10, 2, 10, 2, 100, 200}},     // common practice, no source
		{2, 4000, CountTens{2, 1, 4, 1000, 8, 1000, 8000}}, // common practice, no source
	} {
		w, err := ProductByArray(product(c.a, c.b))
		if err != nil || len(w.Moves) != 2 || !reflect.DeepEqual(w.Moves[1], c.want) {
			t.Errorf("%d × %d is worked %v (%v), want %v", c.a, c.b, w.Moves, err, c.want)
		}
	}
}

func TestEveryProductAgreesWithBigIntegers(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 5000 {
		a, b := r.Int64N(power(r)), r.Int64N(power(r))
		want := new(big.Int).Mul(big.NewInt(a), big.NewInt(b))
		w, err := ProductByArray(product(a, b))
		if !want.IsInt64() {
			if !errors.Is(err, ErrOverflow) {
				t.Fatalf("%d × %d does not fit, but the error is %v", a, b, err)
			}
			continue
		}
		if err != nil || w.Answer.Number != Int(want.Int64()) {
			t.Fatalf("%d × %d = %v (%v), want %v", a, b, w.Answer.Number, err, want)
		}
		sum := new(big.Int)
		for _, m := range w.Moves {
			switch m := m.(type) {
			case FindPart:
				part := new(big.Int).Mul(big.NewInt(m.Rows), big.NewInt(m.Cols))
				if part.Cmp(big.NewInt(m.Product)) != 0 {
					t.Fatalf("%d × %d has a part %v", a, b, m)
				}
				sum.Add(sum, part)
			case CountRows:
				sum.SetInt64(m.Product)
			case TakeLines: // 9 × 7 is 10 × 7 less 7
				if m.Taken != m.Count*m.Each || m.Before-m.Taken != m.Left {
					t.Fatalf("%d × %d takes %+v", a, b, m)
				}
				sum.SetInt64(m.Left)
			case CountTens:
				sum.Mul(big.NewInt(m.Count), big.NewInt(m.Unit))
			}
		}
		if sum.Cmp(want) != 0 {
			t.Fatalf("the parts of %d × %d come to %v, want %v", a, b, sum, want)
		}
	}
}

// power is ten to a random power up to 10, so that small and large numbers come
// up alike.
func power(r *rand.Rand) int64 { return Power10(1 + r.IntN(10)) }

func TestASumTimesAFactorIsSplitWhereTheSumSays(t *testing.T) {
	op := func(o Op, l, r Expr) Operation { return Operation{o, l, r} }
	for _, c := range []struct {
		e          Expr
		rows, cols []int64
		sum        int64
	}{
		{op(Multiply, Int(2), op(Add, Int(8), Int(7))), []int64{2}, []int64{8, 7}, 30},
		{op(Multiply, op(Add, Int(10), Int(3)), Int(4)), []int64{10, 3}, []int64{4}, 52},
		{op(Add, op(Multiply, Int(8), Int(5)), op(Multiply, Int(8), Int(2))), []int64{8}, []int64{5, 2}, 56}, // CCSS 3.OA.B.5
		{op(Add, op(Multiply, Int(5), Int(6)), op(Multiply, Int(2), Int(6))), []int64{5, 2}, []int64{6}, 42},
	} {
		w, ok, err := DistributeArray(Problem{Kind: Expression, Left: c.e})
		if !ok || err != nil || w.Answer.Number != Int(c.sum) {
			t.Errorf("%v = %v (%t, %v), want %d", c.e, w.Answer.Number, ok, err, c.sum)
			continue
		}
		if split := w.Moves[0].(SplitSides); !reflect.DeepEqual(split, SplitSides{c.rows, c.cols}) {
			t.Errorf("%v is split %v", c.e, split)
		}
	}
	for _, e := range []Expr{
		op(Add, op(Multiply, Int(2), Int(3)), op(Multiply, Int(4), Int(5))),
		op(Multiply, Int(2), op(Subtract, Int(8), Int(7))),
		op(Add, op(Add, Int(1), Int(2)), Int(3)),
		op(Multiply, op(Add, Int(1), Int(2)), op(Add, Int(3), Int(4))),
		op(Multiply, op(Multiply, Int(1), Int(2)), Int(3)),
	} {
		if _, ok, _ := DistributeArray(Problem{Kind: Expression, Left: e}); ok {
			t.Errorf("%v is no sum times a factor", e)
		}
	}
}
