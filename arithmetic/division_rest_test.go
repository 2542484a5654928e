package arithmetic

import (
	"errors"
	"math/big"
	"testing"

	"modeler/fraction"
)

func TestWhatIsLeftOverInFourWays(t *testing.T) {
	divide := func(a, b int64, rest Rest) (Working, error) {
		return DivisionByArray(Problem{Kind: Division, Left: Operation{Divide, Int(a), Int(b)}, Rest: rest})
	}
	// 98 ÷ 4 is 24 r 2, 24 1/2, 24.5 or about 25 (National curriculum in England
	// 2013, Year 5).
	for rest, want := range map[Rest]Answer{
		LeftOver:  {Number: Int(24), Simplest: Int(24), Remainder: 2},
		AsPart:    {Number: Number{fraction.Must(98, 4), Mixed, 0}, Simplest: Number{fraction.Must(49, 2), Mixed, 0}},
		AsDecimal: {Number: InPlaces(245, 1), Simplest: InPlaces(245, 1)},
		OneMore:   {Number: Int(25), Simplest: Int(25)},
	} {
		w, err := divide(98, 4, rest)
		if a := w.Answer; err != nil || !a.Number.Value.Equal(want.Number.Value) || a.Number.Form != want.Number.Form ||
			a.Simplest.String() != want.Simplest.String() || a.Remainder != want.Remainder {
			t.Errorf("98 ÷ 4%s = %+v (%v), want %+v", rest.asked(), a, err, want)
		}
	}
	for a := int64(0); a <= 300; a++ {
		for b := int64(1); b <= 9; b++ {
			exact := big.NewRat(a, b)
			for _, rest := range []Rest{AsPart, AsDecimal} {
				w, err := divide(a, b, rest)
				if thousandths := new(big.Rat).Mul(exact, big.NewRat(1000, 1)); rest == AsDecimal && !thousandths.IsInt() {
					if !errors.Is(err, ErrEndless) {
						t.Fatalf("%d ÷ %d does not end: %v", a, b, err)
					}
					continue
				}
				v := w.Answer.Number.Value
				if err != nil || big.NewRat(v.Num(), v.Den()).Cmp(exact) != 0 || w.Answer.Remainder != 0 {
					t.Fatalf("%d ÷ %d%s = %v (%v)", a, b, rest.asked(), w.Answer.Number, err)
				}
			}
			up := new(big.Int).Div(big.NewInt(a+b-1), big.NewInt(b))
			if w, err := divide(a, b, OneMore); err != nil || w.Answer.Number != Int(up.Int64()) {
				t.Fatalf("%d ÷ %d rounded up = %v (%v), want %v", a, b, w.Answer.Number, err, up)
			}
		}
	}
}
