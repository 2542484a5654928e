package arithmetic_test

import (
	"slices"
	"testing"

	"modeler/arithmetic"
)

func sum(op arithmetic.Op, a, b arithmetic.Expr) arithmetic.Operation {
	return arithmetic.Operation{Op: op, Left: a, Right: b}
}

// The two false sums of fractions are those that children write most often, by
// adding tops and bottoms (from memory).
func TestASideOfAStatementEndsOnItsOwnName(t *testing.T) {
	claim := func(left, right arithmetic.Expr) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Claim, Rel: arithmetic.Equal, Left: left, Right: right}
	}
	for _, c := range []struct {
		p             arithmetic.Problem
		end           string
		parts         int64
		first, second string // in common parts; empty where they need none
		gap           string
		relation      arithmetic.Relation
	}{
		{claim(sum(arithmetic.Add, frac(1, 2), frac(1, 3)), frac(2, 5)), "5/6", 6, "25/30", "12/30", "13/30", arithmetic.Greater},
		{claim(sum(arithmetic.Add, frac(1, 4), frac(2, 4)), frac(3, 8)), "3/4", 4, "6/8", "3/8", "3/8", arithmetic.Greater},
		{claim(sum(arithmetic.Subtract, arithmetic.Int(402), arithmetic.Int(178)), arithmetic.Int(376)), "224", 0, "", "", "152", arithmetic.Less},
		{claim(sum(arithmetic.Add, frac(1, 2), frac(1, 4)), frac(3, 4)), "3/4", 4, "", "", "0", arithmetic.Equal},
	} {
		w, _, err := arithmetic.CompareTrains(c.p)
		if err != nil {
			t.Errorf("%s: %v", c.p, err)
			continue
		}
		side, look := w.Moves[0].(arithmetic.HopTrain), w.Moves[2].(arithmetic.LookAtPoints)
		if side.End.String() != c.end || side.Parts.Parts != c.parts {
			t.Errorf("%s: it ends on %s in %d parts, want %s in %d", c.p, side.End, side.Parts.Parts, c.end, c.parts)
		}
		if look.Relation != c.relation || look.Gap.String() != c.gap || look.Renamed() != (c.first != "") {
			t.Errorf("%s: %s %s by %s, renamed: %v", c.p, look.First, look.Relation, look.Gap, look.Renamed())
		}
		if look.Renamed() && (look.FirstAs.String() != c.first || look.SecondAs.String() != c.second) {
			t.Errorf("%s: compared as %s and %s, want %s and %s", c.p, look.FirstAs, look.SecondAs, c.first, c.second)
		}
	}
}

func TestAChainIsOneHopForEachNumber(t *testing.T) {
	whole := arithmetic.Int
	chain := func(e arithmetic.Expr) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Expression, Left: e}
	}
	for _, c := range []struct {
		source string
		p      arithmetic.Problem
		want   string
	}{
		{"CCSS 1.OA.B.3, 2 + 6 + 4", chain(sum(arithmetic.Add, sum(arithmetic.Add, whole(2), whole(6)), whole(4))), "2 +6 +4 = 12"},
		{"from left to right", chain(sum(arithmetic.Add, sum(arithmetic.Subtract, whole(20), whole(3)), whole(8))), "20 −3 +8 = 25"},
		{"like parts", chain(sum(arithmetic.Add, sum(arithmetic.Add, frac(1, 8), frac(3, 8)), frac(2, 8))), "1/8 +3/8 +2/8 = 6/8"},
	} {
		w, _, err := arithmetic.AddChain(c.p)
		if got := hopsOf(w); err != nil || got != c.want {
			t.Errorf("%s: %s: got %s, %v; want %s", c.source, c.p, got, err, c.want)
		}
	}
	below := chain(sum(arithmetic.Add, sum(arithmetic.Subtract, whole(3), whole(8)), whole(9)))
	if _, _, err := arithmetic.AddChain(below); err != arithmetic.ErrNegative {
		t.Errorf("%s: got %v, want %v", below, err, arithmetic.ErrNegative)
	}
}

// Before the line is cut in common parts, a mixed number has its own.
func TestAJumpIsSplitAsItIsWritten(t *testing.T) {
	for _, c := range []struct {
		p    arithmetic.Problem
		want []string
		as   int
	}{
		{two(arithmetic.Subtract, mixed(35, 12), mixed(11, 8)), []string{"1", "3/8"}, 0},
		{two(arithmetic.Add, arithmetic.Int(345), arithmetic.Int(278)), []string{"200", "70", "8"}, 0},
		{two(arithmetic.Add, arithmetic.InPlaces(3, 1), arithmetic.InPlaces(45, 2)), []string{"0.40", "0.05"}, 1},
		{two(arithmetic.Add, frac(1, 2), frac(1, 3)), nil, 0},
	} {
		w, err := jump(c.p)
		if err != nil {
			t.Fatalf("%s: %v", c.p, err)
		}
		start := w.Moves[0].(arithmetic.StartAt)
		var got []string
		for _, n := range start.Parts {
			got = append(got, n.String())
		}
		if !slices.Equal(got, c.want) || len(start.As) != c.as {
			t.Errorf("%s: split as %v, %d rewritten; want %v and %d", c.p, got, len(start.As), c.want, c.as)
		}
	}
}

func TestCountsSayMoreThanTheNumber(t *testing.T) {
	one := func(n arithmetic.Number) arithmetic.Problem {
		return arithmetic.Problem{Kind: arithmetic.Show, Left: n}
	}
	for _, c := range []struct {
		n     arithmetic.Number
		times []int64
		each  []string
	}{
		{arithmetic.InPlaces(30, 2), []int64{30}, []string{"0.01"}},
		{arithmetic.InPlaces(3, 1), []int64{3}, []string{"0.1"}},
		{arithmetic.InPlaces(62, 2), []int64{1, 1}, []string{"0.6", "0.02"}},
		{frac(24, 6), []int64{4}, []string{"6/6"}},
		{frac(29, 6), []int64{4, 5}, []string{"6/6", "1/6"}},
		{frac(3, 100), []int64{3}, []string{"1/100"}},
	} {
		w, _, err := arithmetic.PlaceOnLine(one(c.n), 700)
		if err != nil {
			t.Fatalf("%s: %v", c.n, err)
		}
		m := w.Moves[len(w.Moves)-1].(arithmetic.MarkOnLine)
		var times []int64
		var each []string
		for _, count := range m.Counts {
			times, each = append(times, count.Times), append(each, count.Each.String())
		}
		if !slices.Equal(times, c.times) || !slices.Equal(each, c.each) {
			t.Errorf("%s: %v lengths of %v, want %v of %v", c.n, times, each, c.times, c.each)
		}
	}
}
