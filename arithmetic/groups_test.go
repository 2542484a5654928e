package arithmetic

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"reflect"
	"testing"

	"modeler/fraction"
)

// CCSS 3.OA.A.1: 5 × 7 is the total of 5 groups of 7.
func TestAProductIsMadeGroupByGroup(t *testing.T) {
	w, err := ProductByGroups(product(5, 7))
	want := []Move{
		SetGroups{Making, 0, 5, 7},
		MakeGroups{0, 1, 1, 7, []int64{7}, 0, 0},
		MakeGroups{1, 1, 2, 7, []int64{14}, 0, 0},
		MakeGroups{2, 1, 3, 7, []int64{21}, 0, 0},
		MakeGroups{3, 1, 4, 7, []int64{28}, 0, 0},
		MakeGroups{4, 1, 5, 7, []int64{35}, 0, 0},
		ReadGroups{Making, 5, 7, 35, 0, []int64{7, 14, 21, 28, 35}, whole(35)},
	}
	if err != nil || !reflect.DeepEqual(w.Moves, want) {
		t.Errorf("5 × 7 is worked %v (%v), want %v", w.Moves, err, want)
	}
}

// CCSS 3.OA.A.2: 56 ÷ 8 is the number in each of 8 shares, and the number of shares
// of 8.
func TestSharingAndMeasuringAreTwoStories(t *testing.T) {
	shared, err := DivisionByGroups(division(56, 8, false))
	if err != nil || !reflect.DeepEqual(shared.Moves[:2], []Move{SetGroups{Sharing, 56, 8, 0}, DealRounds{8, 0, 1, 1, 8, 48}}) {
		t.Errorf("56 ÷ 8 is shared %v (%v)", shared.Moves, err)
	}
	measured, err := DivisionByGroups(division(56, 8, true))
	if err != nil || !reflect.DeepEqual(measured.Moves[:2], []Move{SetGroups{Measuring, 56, 0, 8}, MakeGroups{0, 1, 1, 8, []int64{8}, 8, 48}}) {
		t.Errorf("56 ÷ 8 is measured off %v (%v)", measured.Moves, err)
	}
	for _, w := range []Working{shared, measured} {
		if w.Answer.Number != Int(7) || w.Answer.Remainder != 0 {
			t.Errorf("56 ÷ 8 = %v", w.Answer)
		}
	}
}

// National curriculum in England 2013, year 5: 98 ÷ 4 is 24 remainder 2, 24 1/2, or
// about 25.
func TestWhatIsLeftOverIsDealtWithAsTheProblemAsks(t *testing.T) {
	two := func(num int64) Number { return AsMixed(fraction.Must(num, 4)) }
	for _, c := range []struct {
		rest     Rest
		grouping bool
		want     Answer
		last     Move // before the answer is read
	}{
		{LeftOver, false, Answer{Number: Int(24), Simplest: Int(24), Remainder: 2}, DealRounds{4, 20, 4, 24, 16, 2}},
		{AsPart, false, Answer{Number: two(98), Simplest: AsMixed(fraction.Must(49, 2))}, DealParts{4, 2, Frac(fraction.Must(2, 4)), two(98)}},
		{AsPart, true, Answer{Number: two(98), Simplest: AsMixed(fraction.Must(49, 2))}, PartGroup{2, 4, 2, Frac(fraction.Must(2, 4)), two(98)}},
		{OneMore, true, whole(25), RoundUp{Measuring, 2, 2, 25}},
		{OneMore, false, whole(25), RoundUp{Sharing, 2, 2, 25}},
	} {
		p := division(98, 4, c.grouping)
		p.Rest = c.rest
		w, err := DivisionByGroups(p)
		if err != nil || w.Answer.Number != c.want.Number || w.Answer.Simplest != c.want.Simplest || w.Answer.Remainder != c.want.Remainder {
			t.Errorf("%s = %v (%v), want %v", p, w.Answer, err, c.want)
			continue
		}
		if got := w.Moves[len(w.Moves)-2]; !reflect.DeepEqual(got, c.last) {
			t.Errorf("%s: the last move is %v, want %v", p, got, c.last)
		}
	}
	p := division(98, 4, false)
	p.Rest = AsDecimal
	if _, err := DivisionByGroups(p); !errors.Is(err, ErrNotWhole) {
		t.Errorf("%s gives %v", p, err)
	}
}

// CCSS 3.OA.A.4: 8 × ? = 48 and 5 = ? ÷ 3. The others are common practice, no source.
func TestABlankChoosesTheStory(t *testing.T) {
	blank := Unknown{}
	for _, c := range []struct {
		left  Operation
		other int64
		story GroupStory
		want  int64
	}{
		{Operation{Multiply, Int(8), blank}, 48, Sharing, 6},
		{Operation{Multiply, blank, Int(8)}, 48, Measuring, 6},
		{Operation{Divide, Int(48), blank}, 8, Measuring, 6},
		{Operation{Divide, blank, Int(3)}, 5, Making, 15},
	} {
		for _, turned := range []bool{false, true} {
			p := Problem{Kind: Missing, Rel: Equal, Left: c.left, Right: Int(c.other)}
			if turned {
				p.Left, p.Right = p.Right, p.Left
			}
			w, err := MissingByGroups(p)
			if err != nil || w.Answer.Number != Int(c.want) || w.Moves[0].(SetGroups).Story != c.story {
				t.Errorf("%s is told as story %v with the answer %v (%v), want %d", p, w.Moves, w.Answer.Number, err, c.want)
			}
		}
	}
	for _, c := range []struct {
		left  Operation
		other int64
		want  error
	}{
		{Operation{Multiply, Int(8), blank}, 49, ErrNoFactor},
		{Operation{Multiply, Int(0), blank}, 0, ErrAnyFactor},
		{Operation{Divide, blank, Int(0)}, 5, ErrDivideByZero},
		{Operation{Divide, Int(0), blank}, 8, ErrNoFactor},
	} {
		p := Problem{Kind: Missing, Rel: Equal, Left: c.left, Right: Int(c.other)}
		if _, err := MissingByGroups(p); !errors.Is(err, c.want) {
			t.Errorf("%s gives %v, want %v", p, err, c.want)
		}
	}
}

// CCSS 2.OA.C.3: a number is even when all can be paired.
func TestPairsSayWhatIsEven(t *testing.T) {
	for n := range int64(41) {
		w, err := ParityByPairs(Problem{Kind: Parity, Left: Int(n)})
		want := ReadPairs{n, n / 2, n % 2, big.NewInt(n).Bit(0) == 0}
		if err != nil || w.Answer.Even != want.Even || w.Moves[len(w.Moves)-1] != Move(want) {
			t.Errorf("%d is read %v (%v), want %v", n, w.Moves, err, want)
		}
	}
}

// Nothing is lost: what is in the groups and what is on the table are the total
// after every move, and there are not many moves.
func TestNothingIsLostBetweenTheMoves(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 5))
	for range 4000 {
		total, by := r.Int64N(200), 1+r.Int64N(20)
		p := division(total, by, r.IntN(2) == 0)
		p.Rest = []Rest{LeftOver, AsPart, OneMore}[r.IntN(3)]
		w, err := DivisionByGroups(p)
		if err != nil || len(w.Moves) > 15 {
			t.Fatalf("%s: %d moves (%v)", p, len(w.Moves), err)
		}
		for _, m := range w.Moves {
			all := int64(-1)
			switch m := m.(type) {
			case DealRounds:
				all = m.Groups*m.Each + m.Left
			case MakeGroups:
				all = m.Groups*m.Each + m.Left
				if last := m.Totals[len(m.Totals)-1]; last != m.Groups*m.Each || len(m.Totals) != int(m.More) || m.Before+m.More != m.Groups {
					t.Errorf("%s: %+v does not fit together", p, m)
				}
			case ReadGroups:
				all = m.Groups*m.Each + m.Left
			default:
				continue
			}
			if all != total {
				t.Errorf("%s: after %+v there are %d", p, m, all)
			}
		}
		value := new(big.Rat).SetFrac64(total, by)
		switch got := big.NewRat(w.Answer.Number.Value.Num(), w.Answer.Number.Value.Den()); {
		case p.Rest == AsPart && got.Cmp(value) != 0:
			t.Errorf("%s = %s", p, got)
		case p.Rest == OneMore && (got.Cmp(value) < 0 || got.Sub(got, big.NewRat(1, 1)).Cmp(value) >= 0):
			t.Errorf("%s = %s", p, w.Answer.Number)
		case p.Rest == LeftOver && got.Mul(got, big.NewRat(by, 1)).Add(got, big.NewRat(w.Answer.Remainder, 1)).Cmp(big.NewRat(total, 1)) != 0:
			t.Errorf("%s = %s r %d", p, w.Answer.Number, w.Answer.Remainder)
		}
	}
}

func TestAPartOfAnAmountTakesSomeOfTheGroups(t *testing.T) {
	// CCSS 4.NF.B.4 for the meaning; the numbers are common practice, no source.
	for _, c := range []struct{ num, den, total, want int64 }{{1, 3, 12, 4}, {3, 4, 20, 15}, {0, 4, 8, 0}, {5, 5, 10, 10}, {1, 2, 0, 0}} {
		p := Problem{Kind: PartOf, Left: Operation{Of, Frac(fraction.Must(c.num, c.den)), Int(c.total)}}
		w, err := PartByGroups(p)
		want := TakeGroups{c.num, c.den, c.total / c.den, c.want}
		if err != nil || w.Answer.Number != Int(c.want) || w.Moves[len(w.Moves)-1] != Move(want) {
			t.Errorf("%s: %v (%v), want %v", p, w.Moves, err, want)
		}
	}
	p := Problem{Kind: PartOf, Left: Operation{Of, Frac(fraction.Must(1, 3)), Int(10)}}
	if _, err := PartByGroups(p); !errors.Is(err, ErrNoFactor) {
		t.Errorf("%s gives %v", p, err)
	}
}
