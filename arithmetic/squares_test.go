package arithmetic

import (
	"errors"
	"math/big"
	"testing"

	"modeler/fraction"
)

func TestSquaresWorkPublishedExamples(t *testing.T) {
	tenths := func(n int64) Number { return Frac(fraction.Must(n, 10)) }
	hundredths := func(n int64) Number { return Frac(fraction.Must(n, 100)) }
	dec := InPlaces
	for _, c := range []struct {
		name   string
		work   func(Problem) (Working, error)
		p      Problem
		want   string
		source string
	}{
		{"0.62", ShowOnSquares, Problem{Kind: Show, Left: dec(62, 2)}, "0.62", "CCSS 4.NF.C.6"},
		{"3/10 as hundredths", RenameOnSquares, Problem{Kind: Renaming, Left: tenths(3), Blank: Blank{Den: 100}}, "30/100", "CCSS 4.NF.C.5"},
		{"3/10 + 4/100", AddOnSquares, Problem{Kind: Addition, Left: Operation{Add, tenths(3), hundredths(4)}}, "34/100", "CCSS 4.NF.C.5"},
		{"0.71 as a fraction", RenameOnSquares, Problem{Kind: FractionForm, Left: dec(71, 2)}, "71/100", "National curriculum in England, Year 5"},
		{"62/100 as a decimal", RenameOnSquares, Problem{Kind: DecimalForm, Left: hundredths(62)}, "0.62", "CCSS 4.NF.C.6"},
		{"1/4 as a decimal", RenameOnSquares, Problem{Kind: DecimalForm, Left: Frac(fraction.Must(1, 4))}, "0.25", "National curriculum in England, Year 4"},
		{"3/4 as a decimal", RenameOnSquares, Problem{Kind: DecimalForm, Left: Frac(fraction.Must(3, 4))}, "0.75", "National curriculum in England, Year 4"},
		{"4/25 as a percent", RenameOnSquares, Problem{Kind: PercentForm, Left: Frac(fraction.Must(4, 25))}, "16%", "no source"},
		{"1.2 − 0.75", SubtractOnSquares, Problem{Kind: Subtraction, Left: Operation{Subtract, dec(12, 1), dec(75, 2)}}, "0.45", "no source"},
	} {
		w, err := c.work(c.p)
		if err != nil || w.Answer.Number.String() != c.want {
			t.Errorf("%s is %s, %v, want %s (%s)", c.name, w.Answer.Number, err, c.want, c.source)
		}
	}
	// 0.2 > 0.09, though 9 is more than 2 (NBT Progression, grade 4; from memory).
	w, err := CompareOnSquares(Problem{Kind: Comparison, Left: dec(2, 1), Right: dec(9, 2)})
	if err != nil || w.Answer.Relation != Greater {
		t.Errorf("0.2 and 0.09: %v, %v", w.Answer.Relation, err)
	}
}

func TestSquaresRefuse(t *testing.T) {
	for name, c := range map[string]struct {
		err  error
		want error
	}{
		"thousandths":     {second(ShowOnSquares(Problem{Kind: Show, Left: InPlaces(347, 3)})), ErrUneven},
		"thirds":          {second(RenameOnSquares(Problem{Kind: DecimalForm, Left: Frac(fraction.Must(1, 3))})), ErrUneven},
		"a decimal":       {second(RenameOnSquares(Problem{Kind: DecimalForm, Left: InPlaces(3, 1)})), ErrSame},
		"less than there": {second(SubtractOnSquares(Problem{Kind: Subtraction, Left: Operation{Subtract, InPlaces(3, 1), InPlaces(45, 2)}})), ErrNegative},
		"below 0":         {second(HundredthsOf(Frac(fraction.Must(-1, 2)))), ErrNegative},
		"too large":       {second(HundredthsOf(Int(1 << 40))), ErrOverflow},
	} {
		if !errors.Is(c.err, c.want) {
			t.Errorf("%s: %v, want %v", name, c.err, c.want)
		}
	}
}

func second(_ any, err error) error { return err }

// Every sum and difference of hundredths to 1.5 agrees with exact fractions, and what
// the second number fills, its columns and the rest make it up.
func TestSquaresAddAndSubtractExactly(t *testing.T) {
	for a := int64(0); a <= 150; a += 3 {
		for b := int64(0); b <= 150; b += 7 {
			left, right := InPlaces(a, 2), InPlaces(b, 2)
			w, err := AddOnSquares(Problem{Kind: Addition, Left: Operation{Add, left, right}})
			if err != nil {
				t.Fatal(err)
			}
			on := w.Moves[2].(ShadeOn)
			if on.Fill+10*on.Columns+on.Rest != b || (on.Columns > 0 || on.Rest > 0) && (a+on.Fill)%10 != 0 || on.Rest > 9 {
				t.Errorf("%s + %s is shaded with %+v", left, right, on)
			}
			v := w.Answer.Number.Value
			if big.NewRat(v.Num(), v.Den()).Cmp(big.NewRat(a+b, 100)) != 0 {
				t.Errorf("%s + %s = %s", left, right, w.Answer.Number)
			}
			if b > a {
				continue
			}
			w, err = SubtractOnSquares(Problem{Kind: Subtraction, Left: Operation{Subtract, left, right}})
			if err != nil {
				t.Fatal(err)
			}
			v = w.Answer.Number.Value
			if big.NewRat(v.Num(), v.Den()).Cmp(big.NewRat(a-b, 100)) != 0 {
				t.Errorf("%s − %s = %s", left, right, w.Answer.Number)
			}
		}
	}
}
