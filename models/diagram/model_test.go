package diagram

import (
	"errors"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

func problem(kind arithmetic.Kind, op arithmetic.Op, a, b int64) arithmetic.Problem {
	return arithmetic.Problem{Kind: kind, Left: arithmetic.Operation{Op: op, Left: arithmetic.Int(a), Right: arithmetic.Int(b)}}
}

func TestLimitsAreSaid(t *testing.T) {
	chain := problem(arithmetic.Expression, arithmetic.Add, 1, 2)
	for range 4 {
		chain.Left = arithmetic.Operation{Op: arithmetic.Add, Left: chain.Left, Right: arithmetic.Int(3)}
	}
	for _, c := range []struct {
		p    arithmetic.Problem
		want string // "" fits
	}{
		{problem(arithmetic.Addition, arithmetic.Add, 9_999_998, 1), ""},
		{problem(arithmetic.Addition, arithmetic.Add, 9_999_999, 1), "numbers up to 9,999,999"},
		{problem(arithmetic.Addition, arithmetic.Add, 0, 0), "nothing to draw"},
		{problem(arithmetic.Addition, arithmetic.Add, 7, 0), ""},
		{chain, "up to 5"},
		{problem(arithmetic.Product, arithmetic.Multiply, 20, 3), ""},
		{problem(arithmetic.Product, arithmetic.Multiply, 21, 3), "up to 20"},
		{problem(arithmetic.Product, arithmetic.Multiply, 3, 0), "nothing to draw"},
		{problem(arithmetic.Division, arithmetic.Divide, 5, 8), "no whole part"},
		{problem(arithmetic.Comparison, arithmetic.Add, 1, 2), "whole numbers"},
	} {
		err := fits(c.p)
		if c.want == "" && err != nil || c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)) {
			t.Errorf("%s: %v, want %q", c.p, err, c.want)
		}
	}
	half := arithmetic.Problem{Kind: arithmetic.Addition, Left: arithmetic.Operation{Op: arithmetic.Add, Left: arithmetic.Int(1), Right: arithmetic.InPlaces(5, 1)}}
	if err := fits(half); !errors.Is(err, telling.ErrNotMine) {
		t.Errorf("%s: %v, want another model's", half, err)
	}
}

// A story of comparing leads to this picture; a plain calculation to others.
func TestStoriesLeadHere(t *testing.T) {
	more, plain := problem(arithmetic.Subtraction, arithmetic.Subtract, 9, 5), problem(arithmetic.Subtraction, arithmetic.Subtract, 9, 5)
	more.Story = arithmetic.HowManyMore
	if turn(more) != telling.Leads || turn(plain) != telling.Serves {
		t.Errorf("turns %d and %d", turn(more), turn(plain))
	}
}

// Lengths to scale are off by half a unit at most. Others keep the order, can be seen,
// and fill the room; equal amounts are equally long in both.
func TestLengths(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	sketches := 0
	for range 20_000 {
		amounts := make([]int64, 1+r.IntN(mostParts))
		all := int64(0)
		for i := range amounts {
			amounts[i] = r.Int64N(arithmetic.Power10(1 + r.IntN(6)))
			all += amounts[i]
		}
		if all == 0 {
			continue
		}
		long, scaled := lengths(amounts, full)
		length := 0
		for _, l := range long {
			length += l
		}
		if length > full+len(long) || length*6 < full*5-6*len(long) {
			t.Fatalf("%v: %v, %d long", amounts, long, length)
		}
		if !scaled {
			sketches++
		}
		for i, a := range amounts {
			if off := int64(long[i])*all - a*int64(length); scaled && max(off, -off) > 3*all {
				t.Fatalf("%v: %v is not to scale", amounts, long)
			}
			if a > 0 && long[i] < least || a == 0 && long[i] != 0 {
				t.Fatalf("%v: %v cannot be seen", amounts, long)
			}
			for j, b := range amounts {
				if a == b && long[i] != long[j] || a < b && long[i] > long[j] {
					t.Fatalf("%v: %v in another order", amounts, long)
				}
			}
		}
	}
	if sketches == 0 {
		t.Error("no lengths out of scale were tried")
	}
}

// With the answer hidden the missing part is a dashed outline with a question mark.
func TestTheMissingPartIsAQuestion(t *testing.T) {
	v := tell(problem(arithmetic.Subtraction, arithmetic.Subtract, 402, 178)).Whole.View(true)
	dashed := slices.ContainsFunc(v.Items, func(it scene.Item) bool { return it.Role == scene.Hidden && it.Finish == scene.Dashed })
	asked := slices.ContainsFunc(v.Items, func(it scene.Item) bool {
		text, is := it.Shape.(scene.Text)
		return is && text.Size == scene.Middle && text.Runs[0].Text == "?"
	})
	if !dashed || !asked {
		t.Errorf("a dashed outline: %v, a question mark: %v", dashed, asked)
	}
}
