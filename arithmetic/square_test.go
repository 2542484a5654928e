package arithmetic

import (
	"errors"
	"math/big"
	"slices"
	"testing"
)

// All facts to 10 × 10 (CCSS 3.OA.C.7), forward and looked up in all three ways.
func TestEveryFactOfTheSquare(t *testing.T) {
	for a := int64(1); a <= OnSquare; a++ {
		for b := int64(1); b <= OnSquare; b++ {
			product := new(big.Int).Mul(big.NewInt(a), big.NewInt(b)).Int64()
			times := func(l, r Expr) Operation { return Operation{Op: Multiply, Left: l, Right: r} }
			w, err := MultiplyOnSquare(Problem{Kind: Product, Left: times(Int(a), Int(b))})
			if err != nil || w.Moves[2].(MeetAt) != (MeetAt{a, b, product}) || w.Moves[3].(SeeArray) != (SeeArray{a, b, product}) {
				t.Fatalf("%d × %d: %v, %v", a, b, w.Moves, err)
			}
			for _, c := range []struct {
				p        Problem
				want     int64
				row, col int64
			}{
				{Problem{Kind: Division, Left: Operation{Op: Divide, Left: Int(product), Right: Int(a)}}, b, a, b},
				{Problem{Kind: Missing, Left: times(Int(a), Unknown{}), Right: Int(product), Rel: Equal}, b, a, b},
				{Problem{Kind: Missing, Left: times(Unknown{}, Int(b)), Right: Int(product), Rel: Equal}, a, a, b},
				{Problem{Kind: Missing, Left: Int(product), Right: times(Unknown{}, Int(b)), Rel: Equal}, a, a, b},
			} {
				w, err := LookUpFactor(c.p)
				if err != nil || !w.Answer.Number.Value.Equal(Int(c.want).Value) {
					t.Fatalf("%s: %v, %v", c.p, w.Answer.Number, err)
				}
				if m := w.Moves[1].(GoAlong); m.Row != c.row || m.Col != c.col || m.Total != product {
					t.Errorf("%s: %+v", c.p, m)
				}
			}
		}
	}
}

func TestWhatIsNotOnTheSquare(t *testing.T) {
	divide := func(a, b int64) Problem {
		return Problem{Kind: Division, Left: Operation{Op: Divide, Left: Int(a), Right: Int(b)}}
	}
	for _, c := range []struct {
		name string
		err  error
		want error
	}{
		{"57 ÷ 8", unworked(LookUpFactor(divide(57, 8))), ErrOverflow},
		{"88 ÷ 8", unworked(LookUpFactor(divide(88, 8))), ErrOverflow},
		{"44 ÷ 11", unworked(LookUpFactor(divide(44, 11))), ErrOverflow},
		{"8 ÷ 0", unworked(LookUpFactor(divide(8, 0))), ErrNotWhole},
		{"11 × 2", unworked(MultiplyOnSquare(Problem{Kind: Product, Left: Operation{Op: Multiply, Left: Int(11), Right: Int(2)}})), ErrOverflow},
		{"0 × 2", unworked(MultiplyOnSquare(Problem{Kind: Product, Left: Operation{Op: Multiply, Left: Int(0), Right: Int(2)}})), ErrOverflow},
		{"factors of 13", unworked(FactorsOnSquare(Problem{Kind: Factors, Left: Int(13)})), ErrOverflow},
		{"factors of 101", unworked(FactorsOnSquare(Problem{Kind: Factors, Left: Int(101)})), ErrOverflow},
		{"multiples of 4 and 4", unworked(MeetOnSquare(Problem{Kind: CommonMultiples, Left: Int(4), Right: Int(4)})), ErrOverflow},
		{"11 multiples of 7", unworked(CountOnSquare(Problem{Kind: Multiples, Left: Int(7), Run: Run{Terms: 11}})), ErrOverflow},
	} {
		if !errors.Is(c.err, c.want) {
			t.Errorf("%s: %v, want %v", c.name, c.err, c.want)
		}
	}
}

func unworked(_ Working, err error) error { return err }

// CCSS 4.OA.B.4 has the factor pairs of whole numbers to 100.
func TestFactorsOnSquare(t *testing.T) {
	for _, c := range []struct {
		n       int64
		on, off [][2]int64
	}{
		{24, [][2]int64{{3, 8}, {4, 6}, {6, 4}, {8, 3}}, [][2]int64{{1, 24}, {2, 12}, {12, 2}, {24, 1}}},
		{7, [][2]int64{{1, 7}, {7, 1}}, nil},
		{49, [][2]int64{{7, 7}}, [][2]int64{{1, 49}, {49, 1}}},
	} {
		w, err := FactorsOnSquare(Problem{Kind: Factors, Left: Int(c.n)})
		if err != nil {
			t.Fatal(err)
		}
		find := w.Moves[len(w.Moves)-1].(FindAll)
		if !slices.Equal(find.On, c.on) || !slices.Equal(find.Off, c.off) {
			t.Errorf("%d: on the square %v, beyond it %v", c.n, find.On, find.Off)
		}
	}
}
