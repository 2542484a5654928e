package arithmetic

import (
	"errors"
	"math/rand/v2"
	"slices"
	"testing"

	"modeler/fraction"
)

func TestNamesOfOneAmount(t *testing.T) {
	for _, c := range []struct {
		given  fraction.Fraction
		names  []fraction.Fraction
		source string
	}{
		{fraction.Must(1, 2), []fraction.Fraction{fraction.Must(1, 2), fraction.Must(2, 4), fraction.Must(3, 6), fraction.Must(4, 8), fraction.Must(5, 10), fraction.Must(6, 12)}, "CCSS 3.NF.A.3b: 1/2 = 2/4; the others are 1 × n over 2 × n, 4.NF.A.1"},
		{fraction.Must(4, 6), []fraction.Fraction{fraction.Must(2, 3), fraction.Must(4, 6), fraction.Must(6, 9), fraction.Must(8, 12)}, "CCSS 3.NF.A.3b: 4/6 = 2/3; the others by 4.NF.A.1"},
		{fraction.Must(3, 7), []fraction.Fraction{fraction.Must(3, 7)}, "no source"},
		{fraction.Must(15, 20), []fraction.Fraction{fraction.Must(3, 4), fraction.Must(6, 8), fraction.Must(9, 12), fraction.Must(15, 20)}, "no source"},
	} {
		p := Problem{Kind: EqualNames, Left: Frac(c.given)}
		w, wall, err := NameOnWall(p, 672, 560)
		var got []fraction.Fraction
		for _, n := range w.Answer.Order {
			got = append(got, n.Value)
		}
		if err != nil || !slices.Equal(got, c.names) {
			t.Errorf("%s: %v, %v, want %v (%s)", p, got, err, c.names, c.source)
		}
		for _, n := range c.names {
			if !slices.Contains(wall.Rows, n.Den()) {
				t.Errorf("%s: the wall %v has no row for %s", p, wall.Rows, n)
			}
		}
	}
}

// Every part of a row is a whole count of units, and the wall is as wide as asked.
func TestWallsHaveWholeParts(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 4))
	for range 2_000 {
		den := 2 + r.Int64N(30)
		n := Frac(fraction.Must(1+r.Int64N(den), den))
		w, wall, err := NameOnWall(Problem{Kind: EqualNames, Left: n}, 672, 560)
		if err != nil {
			continue
		}
		for _, row := range wall.Rows {
			if wall.Units%row != 0 {
				t.Errorf("%s: parts of %d on a wall of %d units", n, row, wall.Units)
			}
		}
		if wide := 672 / wall.Units * wall.Units; wide < 560 || !slices.IsSorted(wall.Rows) {
			t.Errorf("%s: the rows %v are %d wide", n, wall.Rows, wide)
		}
		last := w.Moves[len(w.Moves)-1].(ReadRows)
		for _, row := range wall.Rows {
			// A part ends there when row × num is a multiple of den.
			ends := row*n.Value.Num()%n.Value.Den() == 0
			if ends == slices.Contains(last.Without, row) {
				t.Errorf("%s: that a part ends in the row of %d is %v", n, row, ends)
			}
		}
	}
}

func TestWhatAWallCannotName(t *testing.T) {
	for _, c := range []struct {
		p    Problem
		want error
	}{
		{Problem{Kind: SimplestForm, Left: Frac(fraction.Must(3, 4))}, ErrSame},
		{Problem{Kind: Renaming, Left: Frac(fraction.Must(1, 2)), Blank: Blank{Den: 3}}, ErrUneven},
		{Problem{Kind: EqualNames, Left: Frac(fraction.Must(1, 97))}, nil},
		{Problem{Kind: EqualNames, Left: Frac(fraction.Must(1, 997))}, ErrOverflow},
	} {
		if _, _, err := NameOnWall(c.p, 672, 560); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", c.p, err, c.want)
		}
	}
}
