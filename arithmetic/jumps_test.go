package arithmetic_test

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

// hopsOf writes the hops of a working: 345 +200 +70 +8 = 623.
func hopsOf(w arithmetic.Working) string {
	var b strings.Builder
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.StartAt:
			b.WriteString(m.At.String())
		case arithmetic.Jump:
			sign := " +"
			if m.Back {
				sign = " −"
			}
			b.WriteString(sign + m.By.String())
		}
	}
	return b.String() + " = " + w.Answer.Number.String()
}

func two(op arithmetic.Op, a, b arithmetic.Number) arithmetic.Problem {
	kind := arithmetic.Addition
	if op == arithmetic.Subtract {
		kind = arithmetic.Subtraction
	}
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: a, Right: b}}
}

func jump(p arithmetic.Problem) (arithmetic.Working, error) {
	if p.Kind == arithmetic.Addition {
		return arithmetic.AddByJumps(p)
	}
	return arithmetic.SubtractByJumps(p)
}

func dollars(cents int64) arithmetic.Number {
	n := arithmetic.InPlaces(cents, 2)
	n.Form = arithmetic.Money
	return n
}

func frac(num, den int64) arithmetic.Number { return arithmetic.Frac(fraction.Must(num, den)) }

func mixed(num, den int64) arithmetic.Number {
	return arithmetic.Number{Value: fraction.Must(num, den), Form: arithmetic.Mixed}
}

func TestJumpsAreThoseOfATeacher(t *testing.T) {
	whole := arithmetic.Int
	add, sub := arithmetic.Add, arithmetic.Subtract
	for _, c := range []struct {
		source string
		p      arithmetic.Problem
		want   string
	}{
		{"CCSS 1.OA.C.6, making ten", two(add, whole(8), whole(6)), "8 +2 +4 = 14"},
		{"CCSS 1.OA.C.6, leading to a ten", two(sub, whole(13), whole(4)), "13 −3 −1 = 9"},
		{"common practice, no source", two(add, whole(345), whole(278)), "345 +200 +70 +8 = 623"},
		{"common practice, no source", two(add, whole(46), whole(25)), "46 +20 +4 +1 = 71"},
		{"compensating: common practice, no source", two(add, whole(48), whole(27)), "48 +2 +25 = 75"},
		{"compensating: common practice, no source", two(add, whole(398), whole(17)), "398 +2 +15 = 415"},
		{"compensating: common practice, no source", two(add, whole(345), whole(19)), "345 +20 −1 = 364"},
		{"compensating: common practice, no source", two(add, whole(298), whole(99)), "298 +100 −1 = 397"},
		{"compensating: common practice, no source", two(add, whole(98), whole(457)), "98 +2 +400 +50 +5 = 555"},
		{"compensating: common practice, no source", two(sub, whole(73), whole(29)), "73 −30 +1 = 44"},
		{"compensating: common practice, no source", two(add, dollars(250), dollars(399)), "$2.50 +$4.00 −$0.01 = $6.49"},
		{"common practice, no source", two(add, whole(60), whole(70)), "60 +40 +30 = 130"},
		{"common practice, no source", two(sub, whole(402), whole(178)), "402 −100 −70 −8 = 224"},
		{"common practice: close numbers count up", two(sub, whole(402), whole(398)), "398 +2 +2 = 4"},
		{"common practice: giving change", two(sub, dollars(500), dollars(327)), "$3.27 +$0.03 +$0.70 +$1.00 = $1.73"},
		{"common practice, no source", two(add, arithmetic.InPlaces(3, 1), arithmetic.InPlaces(45, 2)), "0.3 +0.40 +0.05 = 0.75"},
		{"Progressions 3-5 NF grade 4 (from memory)", two(add, frac(7, 5), frac(4, 5)), "7/5 +4/5 = 11/5"},
		{"common practice, no source", two(add, mixed(3, 2), mixed(11, 4)), "1 1/2 +2 +3/4 = 4 1/4"},
		{"nothing is added", two(add, whole(8), whole(0)), "8 = 8"},
		{"all is taken away", two(sub, whole(8), whole(8)), "8 −8 = 0"},
		{"read in periods", two(add, whole(1), whole(9_999_999)), "1 +10,000,000 −1 = 10,000,000"},
	} {
		w, err := jump(c.p)
		if got := hopsOf(w); err != nil || got != c.want {
			t.Errorf("%s: %s: got %s, %v; want %s", c.source, c.p, got, err, c.want)
		}
	}
}

func TestLessThanNothingIsAnError(t *testing.T) {
	if _, err := arithmetic.SubtractByJumps(two(arithmetic.Subtract, arithmetic.Int(3), arithmetic.Int(8))); err != arithmetic.ErrNegative {
		t.Errorf("3 − 8: got %v, want %v", err, arithmetic.ErrNegative)
	}
}

// Every hop starts where the one before landed, and the hops together are the
// way, whatever the numbers.
func TestHopsAddUp(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	for range 20000 {
		a, b := r.Int64N(1<<r.IntN(24)+1), r.Int64N(1<<r.IntN(24)+1)
		p := two(arithmetic.Add, arithmetic.Int(a), arithmetic.Int(b))
		want := a + b
		if r.IntN(2) == 0 && a >= b {
			p, want = two(arithmetic.Subtract, arithmetic.Int(a), arithmetic.Int(b)), a-b
		}
		w, err := jump(p)
		if err != nil {
			t.Fatalf("%s: %v", p, err)
		}
		if err := followsOn(w, want); err != nil {
			t.Fatalf("%s: %v", p, err)
		}
	}
}

func followsOn(w arithmetic.Working, want int64) error {
	rat := func(n arithmetic.Number) *big.Rat { return big.NewRat(n.Value.Num(), n.Value.Den()) }
	if rat(w.Answer.Number).Cmp(big.NewRat(want, 1)) != 0 {
		return fmt.Errorf("the answer is %s, want %d", w.Answer.Number, want)
	}
	var at *big.Rat
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.StartAt:
			at = rat(m.At)
		case arithmetic.Jump:
			if rat(m.From).Cmp(at) != 0 {
				return fmt.Errorf("a hop starts at %s, the last one landed at %s", m.From, at.RatString())
			}
			by := rat(m.By)
			if by.Sign() <= 0 {
				return fmt.Errorf("a hop of %s", m.By)
			}
			if m.Back {
				by.Neg(by)
			}
			if at.Add(at, by); at.Cmp(rat(m.To)) != 0 {
				return fmt.Errorf("a hop of %s from %s lands at %s", m.By, m.From, m.To)
			}
		}
	}
	return nil
}

func TestMissingNumbersAreFound(t *testing.T) {
	whole := arithmetic.Int
	blank := arithmetic.Unknown{}
	missing := func(left, right arithmetic.Expr) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Missing, Rel: arithmetic.Equal, Left: left, Right: right}
	}
	op := func(o arithmetic.Op, l, r arithmetic.Expr) arithmetic.Expr {
		return arithmetic.Operation{Op: o, Left: l, Right: r}
	}
	for _, c := range []struct {
		source string
		p      arithmetic.Problem
		hops   string
	}{
		{"CCSS 1.OA.D.8", missing(op(arithmetic.Add, whole(8), blank), whole(11)), " +2 +1 = 3"},
		{"CCSS 1.OA.D.8", missing(whole(5), op(arithmetic.Subtract, blank, whole(3))), " +3 = 8"},
		{"CCSS 1.OA.B.4", missing(op(arithmetic.Add, whole(8), blank), whole(10)), " +2 = 2"},
		{"the first addend", missing(op(arithmetic.Add, blank, whole(3)), whole(11)), " −1 −2 = 8"},
		{"what was taken away", missing(op(arithmetic.Subtract, whole(11), blank), whole(8)), " −1 −2 = 3"},
		{"nothing", missing(op(arithmetic.Subtract, whole(8), blank), whole(8)), " = 0"},
	} {
		w, err := arithmetic.FindByJumps(c.p)
		if got := hopsOf(w); err != nil || got != c.hops {
			t.Errorf("%s: %s: got %q, %v; want %q", c.source, c.p, got, err, c.hops)
		}
	}
	for _, p := range []arithmetic.Problem{
		missing(op(arithmetic.Add, whole(8), blank), whole(5)),
		missing(op(arithmetic.Subtract, whole(8), blank), whole(11)),
		missing(op(arithmetic.Add, blank, whole(8)), whole(5)),
	} {
		if _, err := arithmetic.FindByJumps(p); err != arithmetic.ErrNegative {
			t.Errorf("%s: got %v, want %v", p, err, arithmetic.ErrNegative)
		}
	}
}
