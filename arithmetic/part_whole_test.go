package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"
)

// The situations are those with parts and a whole in table 1 of the glossary of the
// Common Core State Standards for Mathematics (2010), with its numbers.
func TestPartsAndWholesOfTheStandards(t *testing.T) {
	n, blank := Int, Unknown{}
	missing := func(left Expr, right Number) Problem {
		return Problem{Kind: Missing, Rel: Equal, Left: left, Right: right}
	}
	for _, c := range []struct {
		situation   string
		problem     Problem
		parts       [2]int64
		whole       int64
		asked, took bool // asked: the whole is what is asked
	}{
		{"add to, result unknown", Problem{Kind: Addition, Left: sum(Add, n(2), n(3))}, [2]int64{2, 3}, 5, true, false},
		{"add to, change unknown", missing(sum(Add, n(2), blank), n(5)), [2]int64{2, 3}, 5, false, false},
		{"add to, start unknown", missing(sum(Add, blank, n(3)), n(5)), [2]int64{2, 3}, 5, false, false},
		{"take from, result unknown", Problem{Kind: Subtraction, Left: sum(Subtract, n(5), n(2))}, [2]int64{3, 2}, 5, false, true},
		{"take from, change unknown", missing(sum(Subtract, n(5), blank), n(3)), [2]int64{3, 2}, 5, false, true},
		{"take from, start unknown", missing(sum(Subtract, blank, n(2)), n(3)), [2]int64{3, 2}, 5, true, true},
	} {
		w, plan, err := PartWhole(c.problem)
		if err != nil {
			t.Errorf("%s: %v", c.situation, err)
			continue
		}
		if got := [2]int64{plan.Parts[0].N, plan.Parts[1].N}; got != c.parts || plan.Whole.N != c.whole || plan.Taken != c.took {
			t.Errorf("%s: %v make %d, taken away %v", c.situation, got, plan.Whole.N, plan.Taken)
		}
		if asked := plan.Whole.Nth == Asked; asked != c.asked {
			t.Errorf("%s: the whole is asked: %v", c.situation, asked)
		}
		last, found := w.Moves[len(w.Moves)-1], false
		if c.asked {
			_, found = last.(AddParts)
		} else {
			_, found = last.(FindOther)
		}
		if !found {
			t.Errorf("%s: the last move is %T", c.situation, last)
		}
	}
}

// Whichever number is missing, it is the one that math/big finds, and the parts make
// the whole.
func TestMissingPartsAgreeWithBigIntegers(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 3000 {
		a, b := r.Int64N(10_000_000), r.Int64N(10_000_000)
		c := new(big.Int).Add(big.NewInt(a), big.NewInt(b)).Int64()
		for _, k := range []struct {
			left  Expr
			right int64
			want  int64
		}{
			{sum(Add, Int(a), Unknown{}), c, b}, {sum(Add, Unknown{}, Int(b)), c, a},
			{sum(Subtract, Int(c), Unknown{}), a, b}, {sum(Subtract, Unknown{}, Int(b)), a, c},
		} {
			p := Problem{Kind: Missing, Rel: Equal, Left: k.left, Right: Int(k.right)}
			turned := Problem{Kind: Missing, Rel: Equal, Left: Int(k.right), Right: k.left}
			for _, q := range []Problem{p, turned} {
				w, plan, err := PartWhole(q)
				got, _ := w.Answer.Number.Int64()
				if err != nil || got != k.want {
					t.Fatalf("%s: %d, %v; want %d", q, got, err, k.want)
				}
				if plan.Parts[0].N+plan.Parts[1].N != plan.Whole.N {
					t.Fatalf("%s: the parts %v do not make %d", q, plan.Parts, plan.Whole.N)
				}
			}
		}
	}
}

func TestPartsThatDoNotFit(t *testing.T) {
	const most = int64(1)<<62 + 1<<61
	for _, c := range []struct {
		p    Problem
		want error
	}{
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Add, Int(8), Unknown{}), Right: Int(5)}, ErrNegative},
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Subtract, Int(5), Unknown{}), Right: Int(8)}, ErrNegative},
		{Problem{Kind: Missing, Rel: Equal, Left: sum(Subtract, Unknown{}, Int(most)), Right: Int(most)}, ErrOverflow},
		{Problem{Kind: Addition, Left: sum(Add, Int(most), Int(most))}, ErrOverflow},
		{Problem{Kind: Addition, Left: sum(Add, Int(1), InPlaces(5, 1))}, ErrNotWhole},
		{Problem{Kind: Expression, Left: sum(Subtract, sum(Add, Int(1), Int(2)), Int(3))}, ErrNotWhole},
		{Problem{Kind: Subtraction, Story: HowManyMore, Left: sum(Subtract, Int(5), Int(3))}, ErrNotWhole},
	} {
		if _, _, err := PartWhole(c.p); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", c.p, err, c.want)
		}
	}
}
