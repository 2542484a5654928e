package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"

	"modeler/fraction"
)

// Glossary table 1 of the Common Core State Standards for Mathematics (2010): Lucy has
// two apples, Julie has five; how many more does Julie have than Lucy?
func TestTheDifferenceIsWhatOneBarIsLonger(t *testing.T) {
	w, err := CompareBars(Problem{Kind: Subtraction, Story: HowManyMore, Left: sum(Subtract, Int(5), Int(2))})
	if err != nil {
		t.Fatal(err)
	}
	found, ok := w.Moves[len(w.Moves)-1].(FindGap)
	if !ok || found.Gap.N != 3 || found.Relation != Greater || w.Answer.Number != Int(3) {
		t.Errorf("%+v, answer %s", found, w.Answer.Number)
	}
	for _, c := range []struct {
		a, b, gap int64
		rel       Relation
	}{{178, 402, 224, Less}, {7, 7, 0, Equal}, {9, 0, 9, Greater}} {
		w, err := CompareBars(Problem{Kind: Comparison, Left: Int(c.a), Right: Int(c.b)})
		found, ok := w.Moves[len(w.Moves)-1].(FindGap)
		if err != nil || !ok || found.Gap.N != c.gap || found.Relation != c.rel || w.Answer.Relation != c.rel {
			t.Errorf("compare %d and %d: %+v, %v", c.a, c.b, found, err)
		}
	}
	if _, err := CompareBars(Problem{Kind: Subtraction, Story: HowManyMore, Left: sum(Subtract, Int(2), Int(5))}); !errors.Is(err, ErrNegative) {
		t.Errorf("2 − 5: %v", err)
	}
}

// Glossary table 2 of the same standards, with its numbers: 3 × 6 = 18 in equal groups,
// 18 ÷ 3 with the group size unknown, 18 ÷ 6 with the number of groups unknown; and
// to compare, 3 times 6 dollars is 18, 18 is 3 times 6, and 18 is 3 times as much as 6.
func TestEqualPartsOfTheStandards(t *testing.T) {
	for _, c := range []struct {
		p                         Problem
		count, size, total, asked int64
	}{
		{Problem{Kind: Product, Left: sum(Multiply, Int(3), Int(6))}, 3, 6, 18, 18},
		{Problem{Kind: Division, Left: sum(Divide, Int(18), Int(3))}, 3, 6, 18, 6},
		{Problem{Kind: Division, Left: sum(Divide, Int(18), Int(6)), Grouping: true}, 3, 6, 18, 3},
		{Problem{Kind: Product, Story: TimesAsMany, Left: sum(Multiply, Int(3), Int(6))}, 3, 6, 18, 18},
		{Problem{Kind: Division, Story: TimesAsMany, Left: sum(Divide, Int(18), Int(3))}, 3, 6, 18, 6},
		{Problem{Kind: Division, Story: TimesAsMany, Left: sum(Divide, Int(18), Int(6)), Grouping: true}, 3, 6, 18, 3},
	} {
		w, e, err := EqualPartsBar(c.p)
		if err != nil || e.Count.N != c.count || e.Size.N != c.size || e.Total.N != c.total || e.Left != 0 {
			t.Errorf("%s: %+v, %v", c.p, e, err)
			continue
		}
		if got, _ := w.Answer.Number.Int64(); got != c.asked {
			t.Errorf("%s: the answer is %d, want %d", c.p, got, c.asked)
		}
		if e.Unit != (c.p.Story == TimesAsMany) {
			t.Errorf("%s: a bar of one part: %v", c.p, e.Unit)
		}
	}
}

func TestEqualPartsAgreeWithBigIntegers(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 9))
	for range 3000 {
		a, b := r.Int64N(10_000_000), 1+r.Int64N(30)
		q, m := new(big.Int).DivMod(big.NewInt(a), big.NewInt(b), new(big.Int))
		w, e, err := EqualPartsBar(Problem{Kind: Division, Left: sum(Divide, Int(a), Int(b)), Grouping: r.IntN(2) == 0})
		if err != nil || w.Answer.Number != Int(q.Int64()) || e.Left != m.Int64() || e.Count.N*e.Size.N+e.Left != a {
			t.Fatalf("%d ÷ %d: %+v, %v; want %s r %s", a, b, e, err, q, m)
		}
		num := 1 + r.Int64N(b)
		p := Problem{Kind: PartOf, Left: sum(Of, Frac(fraction.Must(num, b)), Int(a))}
		_, e, err = EqualPartsBar(p)
		want := new(big.Rat).Mul(big.NewRat(num, b), big.NewRat(a, 1))
		switch {
		case m.Sign() != 0:
			if !errors.Is(err, ErrNoFactor) {
				t.Fatalf("%s: %v", p, err)
			}
		case err != nil || want.Cmp(big.NewRat(e.Sum, 1)) != 0:
			t.Fatalf("%s: %d, %v; want %s", p, e.Sum, err, want.RatString())
		}
	}
}

func TestEqualPartsThatDoNotFit(t *testing.T) {
	for _, c := range []struct {
		p    Problem
		want error
	}{
		{Problem{Kind: Division, Left: sum(Divide, Int(8), Int(0))}, ErrDivideByZero},
		{Problem{Kind: Division, Story: TimesAsMany, Left: sum(Divide, Int(13), Int(4))}, ErrNoFactor},
		{Problem{Kind: Division, Rest: AsPart, Left: sum(Divide, Int(13), Int(4))}, ErrNotWhole},
		{Problem{Kind: Product, Left: sum(Multiply, Int(1<<40), Int(1<<40))}, ErrOverflow},
		{Problem{Kind: PartOf, Left: sum(Of, Frac(fraction.Must(5, 4)), Int(12))}, ErrNotWhole},
	} {
		if _, _, err := EqualPartsBar(c.p); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", c.p, err, c.want)
		}
	}
}
