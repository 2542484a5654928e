package telling

import (
	"fmt"

	"modeler/arithmetic"
)

// trades402 writes 402 − 178 as far as its two trades and the taking of the ones.
func trades402() *Columns {
	c := &Columns{Sign: "−", Top: 2, First: arithmetic.Counts{2, 0, 4}, Second: arithmetic.Counts{8, 7, 1}}
	for _, trade := range []struct{ from, left, to, now int }{{2, 3, 1, 10}, {1, 9, 0, 12}} {
		c.Replace(trade.from, int64(trade.left))
		c.Replace(trade.to, int64(trade.now))
		c.Raise(trade.to)
	}
	c.Write(0, 4)
	return c
}

func ExampleColumns_Block() {
	fmt.Println("402 − 178")
	fmt.Println(trades402().Block().Text())
	// Output:
	// 402 − 178
	//      9
	//   3 1̸0̸ 12
	//   4̸  0̸  2̸
	// − 1  7  8
	// ─────────
	//         4
}

// The layout with 10 over one digit and 1 under the next is that of schools in
// parts of Europe (from memory).
func ExampleColumns_Europe() {
	fmt.Println("402 − 178")
	fmt.Println(trades402().Europe().Text())
	// Output:
	// 402 − 178
	//      +10 +10
	//    4   0   2
	// −  1   7   8
	//   +1  +1
	// ────────────
	//            4
}
