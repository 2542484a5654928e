package arithmetic

import (
	"errors"
	"math/big"
	"slices"
	"testing"
)

// 8 + 6 = 8 + 2 + 4 = 10 + 4 = 14 is the example of CCSS 1.OA.C.6 (2010). The others
// are common practice, no source.
func TestMakingTen(t *testing.T) {
	for _, c := range []struct {
		a, b       int64
		at         int
		need, rest int64
	}{{8, 6, 1, 2, 4}, {6, 8, 0, 2, 4}, {9, 9, 1, 1, 8}, {5, 7, 0, 3, 2}, {9, 2, 1, 1, 1}} {
		w, err := MakeTen(Problem{Kind: Addition, Left: sum(Add, Int(c.a), Int(c.b))})
		if err != nil {
			t.Errorf("%d + %d: %v", c.a, c.b, err)
			continue
		}
		s := w.Moves[2].(SplitNumber)
		if s.At != c.at || s.Need != c.need || s.Rest != c.rest {
			t.Errorf("%d + %d is split as %+v", c.a, c.b, s)
		}
	}
	for a := range int64(13) {
		for b := range int64(13) {
			w, err := MakeTen(Problem{Kind: Addition, Left: sum(Add, Int(a), Int(b))})
			if fits := a < 10 && b < 10 && a+b > 10; fits != (err == nil) {
				t.Errorf("%d + %d: %v", a, b, err)
			} else if fits {
				s, end := w.Moves[2].(SplitNumber), w.Moves[4].(AddToTen)
				if s.Kept+s.Need != 10 || s.Need+s.Rest != s.Split || s.Kept+s.Split != a+b || end.Sum != a+b {
					t.Errorf("%d + %d: %+v, %+v", a, b, s, end)
				}
			}
		}
	}
}

// 5 = 2 + 3 and 5 = 4 + 1 are the examples of CCSS K.OA.A.3 (2010).
func TestWaysToMake(t *testing.T) {
	w, err := Ways(Problem{Kind: WaysToMake, Left: Int(5)})
	if want := [][2]int64{{0, 5}, {1, 4}, {2, 3}}; err != nil || !slices.Equal(w.Answer.Pairs, want) {
		t.Errorf("ways to make 5: %v, %v; want %v", w.Answer.Pairs, err, want)
	}
	for n := range int64(40) {
		w, err := Ways(Problem{Kind: WaysToMake, Left: Int(n)})
		if err != nil {
			t.Fatal(err)
		}
		both := int64(0) // each way, and turned where that is another one
		for i, pair := range w.Answer.Pairs {
			if both++; pair[0] != pair[1] {
				both++
			}
			if pair[0] != int64(i) || pair[0] > pair[1] || pair[0]+pair[1] != n {
				t.Errorf("%v is no way to make %d", pair, n)
			}
		}
		last := w.Moves[len(w.Moves)-1].(TurnWays)
		if both != n+1 || last.All != both || last.Pairs != int64(len(w.Answer.Pairs)) {
			t.Errorf("%d ways to make %d, and the move says %+v", both, n, last)
		}
	}
	if _, err := Ways(Problem{Kind: WaysToMake, Left: InPlaces(5, 1)}); !errors.Is(err, ErrNotWhole) {
		t.Errorf("ways to make 0.5: %v", err)
	}
}

// If 8 + 3 = 11 is known, 3 + 8 = 11 is too (CCSS 1.OA.B.3), and 11 − 8 and 11 − 3
// follow (1.OA.B.4). Every fact is true in math/big, and all are different.
func TestFamiliesOfFacts(t *testing.T) {
	for a := int64(0); a <= 12; a++ {
		for b := int64(0); b <= 12; b++ {
			for _, op := range []Op{Add, Multiply} {
				w, err := Family(Problem{Kind: FactFamily, Left: sum(op, Int(a), Int(b))})
				if op == Multiply && a*b == 0 {
					if !errors.Is(err, ErrDivideByZero) {
						t.Errorf("%d × %d: %v", a, b, err)
					}
					continue
				}
				if err != nil {
					t.Fatal(err)
				}
				facts := append(slices.Clone(w.Moves[3].(JoinFacts).Facts), w.Moves[4].(SplitFacts).Facts...)
				if want := 4; a == b && len(facts) != want/2 || a != b && len(facts) != want {
					t.Errorf("%d %s %d has %d facts", a, op, b, len(facts))
				}
				seen := map[BondFact]bool{}
				for _, f := range facts {
					if seen[f] {
						t.Errorf("%+v stands there twice", f)
					}
					seen[f] = true
					if !isTrue(f) {
						t.Errorf("%+v is not so", f)
					}
				}
			}
		}
	}
}

func isTrue(f BondFact) bool {
	x, y, v := big.NewRat(f.A.N, 1), big.NewRat(f.B.N, 1), new(big.Rat)
	switch f.Op {
	case Add:
		v.Add(x, y)
	case Subtract:
		v.Sub(x, y)
	case Multiply:
		v.Mul(x, y)
	default:
		v.Quo(x, y)
	}
	return v.Cmp(big.NewRat(f.C.N, 1)) == 0
}

// The numbers from 11 to 19 are a ten and some ones (CCSS 1.NBT.B.2b, 2010).
func TestTensAndOnes(t *testing.T) {
	for n := range int64(120) {
		w, err := TensAndOnes(Problem{Kind: ExpandedForm, Left: Int(n)})
		if fits := n > 10 && n < 100 && n%10 != 0; fits != (err == nil) {
			t.Errorf("%d: %v", n, err)
			continue
		} else if !fits {
			continue
		}
		m := w.Moves[1].(SplitPlaces)
		if m.Tens+m.Ones != n || m.Ones > 9 || m.Tens != 10*m.TenCount || !slices.Equal(w.Answer.List, []int64{m.Tens, m.Ones}) {
			t.Errorf("%d is split as %+v", n, m)
		}
	}
}
