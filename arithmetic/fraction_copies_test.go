package arithmetic

import (
	"math/big"
	"testing"

	"modeler/fraction"
)

// CCSS 4.NF.B.4a, 4.NF.B.4b and 4.NF.B.4c.
func TestCopiesOfAFractionAreJoined(t *testing.T) {
	for _, test := range []struct {
		count, num, den int64
		product, named  string
	}{
		{5, 1, 4, "5/4", "1 1/4"}, {3, 2, 5, "6/5", "1 1/5"}, {5, 3, 8, "15/8", "1 7/8"}, {2, 1, 4, "2/4", "1/2"}, {3, 1, 3, "3/3", "1"},
	} {
		p := Problem{Kind: Product, Left: Operation{Multiply, Int(test.count), Frac(fraction.Must(test.num, test.den))}}
		w, err := CopiesByJoining(p)
		if err != nil || w.Answer.Number.String() != test.product || w.Answer.Simplest.String() != test.named {
			t.Errorf("%s: %s, %s, %v", p, w.Answer.Number, w.Answer.Simplest, err)
		}
	}
}

func TestEveryRowOfCopiesIsExact(t *testing.T) {
	for count := int64(1); count < 14; count++ {
		for num := int64(1); num < 14; num++ {
			for den := int64(1); den < 14; den++ {
				p := Problem{Kind: Product, Left: Operation{Multiply, Int(count), Frac(fraction.Must(num, den))}}
				w, err := CopiesByJoining(p)
				if err != nil {
					t.Fatal(p, err)
				}
				want := new(big.Rat).Mul(big.NewRat(count, 1), big.NewRat(num, den))
				for _, n := range []Number{w.Answer.Number, w.Answer.Simplest} {
					if big.NewRat(n.Value.Num(), n.Value.Den()).Cmp(want) != 0 {
						t.Errorf("%s: %s", p, n)
					}
				}
			}
		}
	}
}
