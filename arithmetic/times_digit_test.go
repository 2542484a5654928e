package arithmetic

import (
	"errors"
	"math/big"
	"testing"
)

// The National curriculum in England, 2013, year 4 multiplies two- and three-digit
// numbers by a one-digit number in columns; 24 × 6 = 144, 342 × 7 = 2394 and 2741 ×
// 6 = 16446 are its examples of short multiplication (appendix 1).
func TestMultiplyingByADigit(t *testing.T) {
	for _, c := range []struct{ a, b, want int64 }{{24, 6, 144}, {342, 7, 2_394}, {2_741, 6, 16_446}, {9, 9_999, 89_991}, {2, 10, 20}} {
		w, err := MultiplyByDigit(of(Product, Multiply, c.a, c.b))
		if v, _ := w.Answer.Number.Int64(); err != nil || v != c.want {
			t.Errorf("%d × %d = %d (%v), want %d", c.a, c.b, v, err, c.want)
		}
	}
	for _, p := range []Problem{of(Product, Multiply, 7, 8), of(Product, Multiply, 1, 24), of(Product, Multiply, 24, 12), of(Product, Multiply, 10_000, 2), of(Addition, Add, 24, 6)} {
		if _, err := MultiplyByDigit(p); !errors.Is(err, ErrNoDigit) {
			t.Errorf("%s: %v", p, err)
		}
	}
}

// Whatever the factors: every trade keeps the total, and in the end the digits of
// the product lie there.
func TestTradesOfTensKeepTheProduct(t *testing.T) {
	for number := int64(10); number <= 9_999; number += 7 {
		for times := int64(2); times <= 9; times++ {
			w, err := MultiplyByDigit(of(Product, Multiply, times, number))
			if err != nil {
				t.Fatal(err)
			}
			want := new(big.Int).Mul(big.NewInt(number), big.NewInt(times)).Int64()
			for _, move := range w.Moves {
				if m, ok := move.(TradeTensUp); ok && (m.After.Total() != want || m.Gone != 10*m.Tens || m.Left > 9) {
					t.Fatalf("%d × %d: %+v", times, number, m)
				}
			}
			if read := w.Moves[len(w.Moves)-1].(ReadOff); read.Counts.Total() != want || read.Number != want {
				t.Fatalf("%d × %d = %+v", times, number, read)
			}
		}
	}
}
