package arithmetic_test

import (
	"math/big"
	"testing"

	"modeler/arithmetic"
)

func TestRounding(t *testing.T) {
	decimal := arithmetic.InPlaces
	for _, c := range []struct {
		source  string
		n       arithmetic.Number
		to      int64
		want    string
		low     string
		high    string
		half    string
		halfway bool
	}{
		{"CCSS 3.NBT.A.1", arithmetic.Int(347), 10, "350", "340", "350", "345", false},
		{"CCSS 3.NBT.A.1", arithmetic.Int(347), 100, "300", "300", "400", "350", false},
		{"convention: halfway goes up", arithmetic.Int(345), 10, "350", "340", "350", "345", true},
		{"convention: halfway goes up", arithmetic.Int(50), 100, "100", "0", "100", "50", true},
		{"already round", arithmetic.Int(340), 10, "340", "340", "350", "345", false},
		{"CCSS 4.NBT.A.3", arithmetic.Int(9_999_999), 1_000_000, "10,000,000", "9,000,000", "10,000,000", "9,500,000", false},
		{"below the first", arithmetic.Int(4), 10, "0", "0", "10", "5", false},
		{"CCSS 5.NBT.A.4", decimal(347, 2), 1, "3", "3", "4", "3.50", false},
		{"CCSS 5.NBT.A.4", decimal(35, 1), 1, "4", "3", "4", "3.5", true},
		{"to the dollar", dollars(367), 1, "$4", "$3", "$4", "$3.50", false},
	} {
		p := arithmetic.Problem{Kind: arithmetic.Rounding, Left: c.n, To: c.to}
		w, _, err := arithmetic.RoundOnLine(p)
		if err != nil {
			t.Errorf("%s: %s: %v", c.source, p, err)
			continue
		}
		if len(w.Moves) == 1 {
			if last := w.Moves[0].(arithmetic.GoNearer); !last.Already || c.low != c.n.String() || w.Answer.Number.String() != c.want {
				t.Errorf("%s: %s: it is taken for round, and rounds to %s", c.source, p, w.Answer.Number)
			}
			continue
		}
		near, half := w.Moves[0].(arithmetic.Neighbors), w.Moves[1].(arithmetic.FindHalfway)
		last := w.Moves[2].(arithmetic.GoNearer)
		got := []string{w.Answer.Number.String(), near.Low.String(), near.High.String(), half.At.String()}
		for i, want := range []string{c.want, c.low, c.high, c.half} {
			if got[i] != want {
				t.Errorf("%s: %s: got %v, want %s", c.source, p, got, want)
			}
		}
		if last.Halfway != c.halfway {
			t.Errorf("%s: %s: halfway is %v, want %v", c.source, p, last.Halfway, c.halfway)
		}
	}
}

func TestRoundingFractionsOrToOnesIsRefused(t *testing.T) {
	for _, p := range []arithmetic.Problem{
		{Kind: arithmetic.Rounding, Left: frac(3, 4), To: 10},
		{Kind: arithmetic.Rounding, Left: arithmetic.Int(7), To: 1},
		{Kind: arithmetic.Rounding, Left: arithmetic.Int(7), To: 25},
		{Kind: arithmetic.Rounding, Left: arithmetic.Int(7), To: 0},
	} {
		if _, _, err := arithmetic.RoundOnLine(p); err == nil {
			t.Errorf("%s: no error", p)
		}
	}
}

func TestPointsAreCompared(t *testing.T) {
	decimal := arithmetic.InPlaces
	for _, c := range []struct {
		source string
		a, b   arithmetic.Number
		want   arithmetic.Relation
		gap    *big.Rat
	}{
		{"CCSS 4.NF.A.1", frac(3, 4), frac(6, 8), arithmetic.Equal, big.NewRat(0, 1)},
		{"Progressions 3-5 NF grade 3 (from memory)", frac(5, 8), frac(3, 8), arithmetic.Greater, big.NewRat(1, 4)},
		{"Progressions 3-5 NF grade 4 (from memory)", frac(7, 8), frac(13, 12), arithmetic.Less, big.NewRat(5, 24)},
		{"CCSS 4.NF.C.7, 0.2 and 0.09 (from memory)", decimal(2, 1), decimal(9, 2), arithmetic.Greater, big.NewRat(11, 100)},
		{"two forms of one half", decimal(5, 1), frac(1, 2), arithmetic.Equal, big.NewRat(0, 1)},
		{"CCSS 3.NF.A.3c", frac(4, 4), arithmetic.Int(1), arithmetic.Equal, big.NewRat(0, 1)},
	} {
		p := arithmetic.Problem{Kind: arithmetic.Claim, Left: c.a, Right: c.b, Rel: c.want}
		w, stretch, err := arithmetic.PlaceOnLine(p, 700)
		if err != nil {
			t.Fatalf("%s: %s: %v", c.source, p, err)
		}
		gap := big.NewRat(w.Answer.Gap.Num(), w.Answer.Gap.Den())
		if w.Answer.Relation != c.want || !w.Answer.True || gap.Cmp(c.gap) != 0 {
			t.Errorf("%s: %s: got %s, %v apart; want %s, %v", c.source, p, w.Answer.Relation, gap, c.want, c.gap)
		}
		for _, n := range []arithmetic.Number{c.a, c.b} {
			if at := stretch.Scale.Count(n); at < stretch.Lo || at > stretch.Hi {
				t.Errorf("%s: %s lies outside %d to %d", p, n, stretch.Lo, stretch.Hi)
			}
		}
	}
}

// The counts that a child makes from the left end reach the number.
func TestCountsReachTheNumber(t *testing.T) {
	for _, n := range []arithmetic.Number{
		frac(3, 4), frac(11, 4), mixed(11, 4), mixed(103, 4), arithmetic.Int(7), arithmetic.Int(47), arithmetic.Int(4567),
		arithmetic.Int(4500), arithmetic.InPlaces(62, 2), arithmetic.InPlaces(362, 2), arithmetic.InPlaces(625, 3), dollars(327), arithmetic.Int(0),
	} {
		w, _, err := arithmetic.PlaceOnLine(arithmetic.Problem{Kind: arithmetic.Show, Left: n}, 700)
		if err != nil {
			t.Fatalf("%s: %v", n, err)
		}
		rat := func(n arithmetic.Number) *big.Rat { return big.NewRat(n.Value.Num(), n.Value.Den()) }
		for _, m := range w.Moves {
			if m, ok := m.(arithmetic.MarkOnLine); ok {
				sum := rat(m.From)
				for _, c := range m.Counts {
					sum.Add(sum, new(big.Rat).Mul(big.NewRat(c.Times, 1), rat(c.Each)))
				}
				if sum.Cmp(rat(n)) != 0 {
					t.Errorf("%s: the counts reach %v", n, sum)
				}
			}
		}
	}
}

func TestTrainsEndWhereTheSumsSay(t *testing.T) {
	op := func(o arithmetic.Op, a, b int64) arithmetic.Expr {
		return arithmetic.Operation{Op: o, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}
	}
	for _, c := range []struct {
		source      string
		left, right arithmetic.Expr
		want        arithmetic.Relation
	}{
		{"CCSS 1.OA.D.7", op(arithmetic.Add, 4, 1), op(arithmetic.Add, 5, 2), arithmetic.Less},
		{"CCSS 1.OA.D.7", op(arithmetic.Add, 5, 2), op(arithmetic.Add, 2, 5), arithmetic.Equal},
		{"CCSS 1.OA.D.7", arithmetic.Int(7), op(arithmetic.Subtract, 8, 1), arithmetic.Equal},
	} {
		p := arithmetic.Problem{Kind: arithmetic.Claim, Left: c.left, Right: c.right, Rel: arithmetic.Equal}
		w, _, err := arithmetic.CompareTrains(p)
		if err != nil || w.Answer.Relation != c.want || w.Answer.True != (c.want == arithmetic.Equal) {
			t.Errorf("%s: %s: got %s, %v, %v; want %s", c.source, p, w.Answer.Relation, w.Answer.True, err, c.want)
		}
	}
}
