package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"

	"modeler/fraction"
)

func division(a, b int64, grouping bool) Problem {
	return Problem{Kind: Division, Left: Operation{Divide, Int(a), Int(b)}, Grouping: grouping}
}

func TestALargeQuotientIsBuiltFromTheValuesOfItsDigits(t *testing.T) {
	// Progressions, Number and Operations in Base Ten 2012, grade 4 (from memory):
	// 966 ÷ 7 as a side found as 100 + 30 + 8, with 266, 56 and 0 left.
	w, err := DivisionByArray(division(966, 7, false))
	want := []Move{
		SetOut{966, 7, false},
		PlacePart{7, 100, 700, 966, 266},
		PlacePart{7, 30, 210, 266, 56},
		PlacePart{7, 8, 56, 56, 0},
		ReadSide{7, 138, 0},
	}
	if err != nil || !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("966 ÷ 7 is worked %v (%v), want %v", w.Moves, err, want)
	}
}

func TestASmallQuotientIsDealtOut(t *testing.T) {
	// CCSS 3.OA.A.2: 56 ÷ 8 as 8 shares, and as shares of 8.
	for _, grouping := range []bool{false, true} {
		w, err := DivisionByArray(division(56, 8, grouping))
		want := []Move{
			SetOut{56, 8, grouping},
			PlaceOnce{8, 8, 48},
			PlaceRest{8, 7, 56, 0, []int64{8, 16, 24, 32, 40, 48, 56}},
			ReadSide{8, 7, 0},
		}
		if err != nil || !reflect.DeepEqual(w.Moves, want) {
			t.Errorf("56 ÷ 8 is worked %v (%v), want %v", w.Moves, err, want)
		}
	}
}

func TestDivisionsOfTheSourcesComeOut(t *testing.T) {
	for _, c := range []struct{ a, b, q, r int64 }{
		{98, 4, 24, 2},     // National curriculum in England 2013, Year 5
		{98, 7, 14, 0},     // the same, Mathematics Appendix 1 (from memory)
		{432, 5, 86, 2},    // the same
		{496, 11, 45, 1},   // the same
		{432, 15, 28, 12},  // the same
		{745, 3, 248, 1},   // Progressions, Number and Operations in Base Ten 2012 (from memory)
		{901, 6, 150, 1},   // the same
		{83, 4, 20, 3},     // the same
		{3714, 12, 309, 6}, // the same
		{1655, 27, 61, 8},  // the same
		{3, 8, 0, 3},       // common practice, no source
		{0, 5, 0, 0},       // common practice, no source
	} {
		w, err := DivisionByArray(division(c.a, c.b, false))
		if err != nil || w.Answer.Number != Int(c.q) || w.Answer.Remainder != c.r {
			t.Errorf("%d ÷ %d = %v remainder %d (%v), want %d remainder %d", c.a, c.b, w.Answer.Number, w.Answer.Remainder, err, c.q, c.r)
		}
	}
	if _, err := DivisionByArray(division(7, 0, false)); !errors.Is(err, ErrDivideByZero) {
		t.Errorf("7 ÷ 0 gives %v", err)
	}
}

func TestEveryDivisionAgreesWithBigIntegers(t *testing.T) {
	r := rand.New(rand.NewPCG(56, 8))
	for range 5000 {
		a, b := r.Int64N(power(r)), 1+r.Int64N(power(r))
		q, rem := new(big.Int).QuoRem(big.NewInt(a), big.NewInt(b), new(big.Int))
		w, err := DivisionByArray(division(a, b, r.IntN(2) == 0))
		if err != nil || w.Answer.Number != Int(q.Int64()) || w.Answer.Remainder != rem.Int64() {
			t.Fatalf("%d ÷ %d = %v remainder %d (%v), want %v remainder %v", a, b, w.Answer.Number, w.Answer.Remainder, err, q, rem)
		}
		// What is placed and what is left add up to the total after every move.
		placed := big.NewInt(0)
		for _, m := range w.Moves {
			left := int64(-1)
			switch m := m.(type) {
			case PlaceOnce:
				placed.SetInt64(m.Placed)
				left = m.Left
			case PlaceRest:
				placed.SetInt64(m.Placed)
				left = m.Left
			case PlacePart:
				placed.Add(placed, big.NewInt(m.Area))
				left = m.Left
			case ReadSide:
				left = m.Left
			default:
				continue
			}
			if sum := new(big.Int).Add(placed, big.NewInt(left)); sum.Cmp(big.NewInt(a)) != 0 {
				t.Fatalf("%d ÷ %d: after %v there are %v in all", a, b, m, sum)
			}
		}
	}
}

func TestABlankInAProductOrDivisionIsFound(t *testing.T) {
	blank := Unknown{}
	missing := func(l, r Expr) Problem { return Problem{Kind: Missing, Left: l, Right: r, Rel: Equal} }
	op := func(o Op, l, r Expr) Operation { return Operation{o, l, r} }
	for _, c := range []struct {
		p    Problem
		want int64
		err  error
		lay  Move
	}{
		{missing(op(Multiply, Int(8), blank), Int(48)), 6, nil, SetOut{48, 8, false}}, // CCSS 3.OA.A.4
		{missing(Int(48), op(Multiply, Int(8), blank)), 6, nil, SetOut{48, 8, false}},
		{missing(op(Multiply, blank, Int(8)), Int(48)), 6, nil, SetOut{48, 8, true}},
		{missing(Int(5), op(Divide, blank, Int(3))), 15, nil, LayRows{3, 5}}, // CCSS 3.OA.A.4
		{missing(op(Divide, Int(48), blank), Int(8)), 6, nil, SetOut{48, 8, true}},
		{missing(op(Multiply, Int(5), blank), Int(0)), 0, nil, SetOut{0, 5, false}},
		{missing(op(Multiply, Int(8), blank), Int(50)), 0, ErrNoFactor, nil},
		{missing(op(Multiply, Int(0), blank), Int(5)), 0, ErrNoFactor, nil},
		{missing(op(Multiply, Int(0), blank), Int(0)), 0, ErrAnyFactor, nil},
		{missing(op(Divide, Int(0), blank), Int(8)), 0, ErrNoFactor, nil},
		{missing(op(Divide, blank, Int(0)), Int(8)), 0, ErrDivideByZero, nil},
		{missing(op(Add, blank, Int(3)), Int(8)), 0, ErrNotWhole, nil},
	} {
		w, err := MissingFactor(c.p)
		if !errors.Is(err, c.err) {
			t.Errorf("%v gives %v, want %v", c.p, err, c.err)
			continue
		}
		if err == nil && (w.Answer.Number != Int(c.want) || w.Moves[0] != c.lay) {
			t.Errorf("%v is %v by %v, want %d by %v", c.p, w.Answer.Number, w.Moves, c.want, c.lay)
		}
	}
}

func TestAFractionOfAnAmountMarksRows(t *testing.T) {
	part := func(num, den, total int64) Problem {
		return Problem{Kind: PartOf, Left: Operation{Of, Frac(fraction.Must(num, den)), Int(total)}}
	}
	for _, c := range []struct{ num, den, total, rows, each, sum int64 }{
		{1, 3, 12, 1, 4, 4},
		{1, 2, 40, 1, 20, 20}, // National curriculum in England 2013, Year 2: 20 is a half of 40
		{3, 4, 12, 3, 3, 9},
	} {
		w, err := PartOfAmount(part(c.num, c.den, c.total))
		if err != nil || w.Answer.Number != Int(c.sum) || w.Moves[len(w.Moves)-1] != (MarkRows{c.rows, c.each, c.sum}) {
			t.Errorf("%d/%d of %d: %v (%v)", c.num, c.den, c.total, w.Moves, err)
		}
	}
	if _, err := PartOfAmount(part(1, 5, 12)); !errors.Is(err, ErrNoFactor) {
		t.Errorf("1/5 of 12 gives %v", err)
	}
	if _, err := PartOfAmount(part(5, 4, 12)); !errors.Is(err, ErrNotWhole) {
		t.Errorf("5/4 of 12 gives %v", err)
	}
}
