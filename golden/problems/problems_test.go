package problems

import (
	"math/big"
	"testing"

	"modeler/arithmetic"
	"modeler/fraction"
)

func op(o arithmetic.Op, a, b arithmetic.Expr) arithmetic.Operation {
	return arithmetic.Operation{Op: o, Left: a, Right: b}
}

// The problems and answers are those of the Common Core State Standards for
// Mathematics (2010) named beside them.
func TestWorkAgreesWithTheStandards(t *testing.T) {
	n := arithmetic.Int
	f := func(a, b int64) arithmetic.Number { return arithmetic.Frac(fraction.Must(a, b)) }
	blank := arithmetic.Unknown{}
	for _, c := range []struct {
		source  string
		problem arithmetic.Problem
		want    *big.Rat
	}{
		{"3.OA.A.1", one(arithmetic.Product, arithmetic.Multiply, n(5), n(7)), big.NewRat(35, 1)},
		{"3.OA.A.4", arithmetic.Problem{Kind: arithmetic.Missing, Left: op(arithmetic.Multiply, n(8), blank), Right: n(48)}, big.NewRat(6, 1)},
		{"3.OA.A.4", arithmetic.Problem{Kind: arithmetic.Missing, Left: n(5), Right: op(arithmetic.Divide, blank, n(3))}, big.NewRat(15, 1)},
		{"1.OA.D.8", arithmetic.Problem{Kind: arithmetic.Missing, Left: n(5), Right: op(arithmetic.Subtract, blank, n(3))}, big.NewRat(8, 1)},
		{"1.OA.D.8", arithmetic.Problem{Kind: arithmetic.Missing, Left: op(arithmetic.Add, n(8), blank), Right: n(11)}, big.NewRat(3, 1)},
		{"5.NF.A.1", one(arithmetic.Addition, arithmetic.Add, f(2, 3), f(5, 4)), big.NewRat(23, 12)},
		{"5.NF.B.7a", one(arithmetic.Division, arithmetic.Divide, f(1, 3), n(4)), big.NewRat(1, 12)},
		{"5.OA.A.2", arithmetic.Problem{Kind: arithmetic.Expression, Left: op(arithmetic.Multiply, n(2), op(arithmetic.Add, n(8), n(7)))}, big.NewRat(30, 1)},
	} {
		got, err := Work(c.problem)
		if err != nil || got.Value.Cmp(c.want) != 0 {
			t.Errorf("%s: %s is %v (%v), want %v", c.source, c.problem, got.Value, err, c.want)
		}
	}
	if got, _ := Work(arithmetic.Problem{Kind: arithmetic.Claim, Rel: arithmetic.Equal, Left: op(arithmetic.Add, n(4), n(1)), Right: op(arithmetic.Add, n(5), n(2))}); got.True || got.Order != -1 {
		t.Errorf("1.OA.D.7: 4 + 1 = 5 + 2 is %v", got.True)
	}
}

// Halves round up: common practice, no source.
func TestRoundUp(t *testing.T) {
	for _, c := range [][3]int64{{347, 10, 350}, {344, 10, 340}, {345, 10, 350}, {5, 10, 10}, {4, 10, 0}, {1500, 1000, 2000}, {0, 10, 0}} {
		if got := roundUp(new(big.Rat).SetInt64(c[0]), new(big.Rat).SetInt64(c[1])); got.Cmp(new(big.Rat).SetInt64(c[2])) != 0 {
			t.Errorf("%d to the nearest %d is %v, want %d", c[0], c[1], got, c[2])
		}
	}
}

func TestWorkRefusesWhatCannotBeWorked(t *testing.T) {
	if _, err := Work(one(arithmetic.Division, arithmetic.Divide, arithmetic.Int(7), arithmetic.Int(0))); err == nil {
		t.Error("7 ÷ 0 was worked")
	}
}

// Every problem that is dealt can be worked, has a kind of its own and is dealt
// again from the same seed.
func TestDealtProblemsCanBeWorked(t *testing.T) {
	d, again := Deal(1), Deal(1)
	for i := range 5000 {
		p := d.Next()
		if p.Kind != Kinds[i%len(Kinds)] {
			t.Fatalf("problem %d is of kind %s", i, p.Kind)
		}
		if q := again.Next(); q.String() != p.String() {
			t.Fatalf("problem %d is %s and then %s", i, p, q)
		}
		if err := arithmetic.Check(p); err != nil {
			t.Errorf("%s: %v", p, err)
		}
		if _, err := Work(p); err != nil {
			t.Errorf("%s: %v", p, err)
		}
	}
}
