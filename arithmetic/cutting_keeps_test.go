package arithmetic

import (
	"math/big"
	"testing"
)

// TestCuttingKeepsEveryAmount follows every move of many problems: cutting,
// joining, opening and making wholes never change an amount, and the result is
// what math/big says.
func TestCuttingKeepsEveryAmount(t *testing.T) {
	exact := func(n Number) *big.Rat { return big.NewRat(n.Value.Num(), n.Value.Den()) }
	var numbers []Number
	for den := int64(2); den <= 6; den++ {
		for num := int64(0); num <= 2*den; num++ {
			numbers = append(numbers, parts(num, den))
			if num > den && num < 2*den {
				numbers = append(numbers, wholesAnd(1, num-den, den))
			}
		}
	}
	numbers = append(numbers, Int(0), Int(1), Int(2))
	for _, a := range numbers {
		for _, b := range numbers {
			w, err := AddByCutting(sumOf(a, b))
			checkWorking(t, w, err, new(big.Rat).Add(exact(a), exact(b)))
			if a.Value.Cmp(b.Value) >= 0 {
				w, err = SubtractByCutting(differenceOf(a, b))
				checkWorking(t, w, err, new(big.Rat).Sub(exact(a), exact(b)))
			}
		}
	}
}

func checkWorking(t *testing.T, w Working, err error, want *big.Rat) {
	t.Helper()
	if err != nil {
		t.Errorf("%s: %v", w.Problem, err)
		return
	}
	rat := func(s Strips) *big.Rat {
		return new(big.Rat).Add(new(big.Rat).SetInt64(s.Wholes), big.NewRat(s.Part.Num(), s.Part.Den()))
	}
	for _, n := range []Number{w.Answer.Number, w.Answer.Simplest} {
		if big.NewRat(n.Value.Num(), n.Value.Den()).Cmp(want) != 0 {
			t.Errorf("%s is %s, want %s", w.Problem, n, want.RatString())
		}
	}
	for _, move := range w.Moves {
		var from, to Strips
		switch m := move.(type) {
		case CutParts:
			from, to = m.From, m.To
			if m.Into < 2 || m.To.Part.Den() != m.Into*m.From.Part.Den() {
				t.Errorf("%s: %+v", w.Problem, m)
			}
		case OpenWholes:
			from, to = m.From, m.To
		case MakeWholes:
			from, to = m.From, m.To
		case MergeParts:
			from, to = m.From, m.To
		case CountParts:
			if rat(m.Total).Cmp(want) != 0 {
				t.Errorf("%s: counted %+v, want %s", w.Problem, m.Total, want.RatString())
			}
		case TakeStrips:
			if new(big.Rat).Sub(rat(m.From), rat(m.Taken)).Cmp(rat(m.Left)) != 0 || m.Left.Wholes < 0 || m.Left.Part.Num() < 0 {
				t.Errorf("%s: %+v", w.Problem, m)
			}
		}
		if rat(from).Cmp(rat(to)) != 0 || to.Wholes < 0 || to.Part.Num() < 0 {
			t.Errorf("%s: %+v is not %+v", w.Problem, from, to)
		}
	}
}
