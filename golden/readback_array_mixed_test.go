package golden

import (
	"errors"
	"fmt"
	"math/big"

	"modeler/arithmetic"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// arrayReaders read the pictures of one sort of problem that is more than one
// array: the whole story and the steps.
type arrayReaders struct {
	whole func(sight, problems.Truth) error
	steps func([]sight, problems.Truth) error
}

// arrayOf finds the readers of a problem by its shape; those of plain products,
// divisions and factors are in readback_array_test.go.
func arrayOf(p arithmetic.Problem, t problems.Truth) (arrayReaders, bool) {
	left, isOperation := p.Left.(arithmetic.Operation)
	switch p.Kind {
	case arithmetic.Product:
		if a, b := t.Numbers[0], t.Numbers[1]; nines(a, b) {
			return arrayReaders{readTaking, stepsOfTaking}, true
		}
	case arithmetic.Expression:
		switch {
		case len(t.Numbers) == 3 && left.Op == arithmetic.Multiply && onlyTimes(left):
			return arrayReaders{readThree, eachStep(readThree)}, true
		case left.Op == arithmetic.Subtract, left.Op == arithmetic.Multiply && (lessInside(left.Left) || lessInside(left.Right)):
			return arrayReaders{readTaking, stepsOfTaking}, true
		case left.Op == arithmetic.Add && !distributed(left):
			return arrayReaders{readAdding, eachStep(readAdding)}, true
		}
	case arithmetic.Claim, arithmetic.Comparison:
		right, _ := p.Right.(arithmetic.Operation)
		if isOperation && right.Left != nil && onlyTimes(left) && onlyTimes(right) && len(t.Numbers) > 4 {
			return arrayReaders{readBlocksClaim, stepsOfBlocksClaim}, true
		}
	case arithmetic.CommonFactors:
		return arrayReaders{readCommon, stepsOfCommon}, true
	case arithmetic.Primality:
		return arrayReaders{readPrime, stepsOfPrime}, true
	case arithmetic.FactFamily:
		return arrayReaders{readFamily, eachStep(readFamilyArray)}, true
	case arithmetic.Division:
		if (p.Rest == arithmetic.AsPart || p.Rest == arithmetic.AsDecimal) && t.Remainder.Sign() > 0 {
			return arrayReaders{readCutRest, stepsOfCutRest}, true
		}
	}
	return arrayReaders{}, false
}

// nines reports whether a product is told as ten less one.
func nines(a, b *big.Rat) bool {
	four, nine := whole(4), whole(9)
	return a.Cmp(four) >= 0 && b.Cmp(four) >= 0 && a.Cmp(nine) <= 0 && b.Cmp(nine) <= 0 && (a.Cmp(nine) == 0 || b.Cmp(nine) == 0)
}

func onlyTimes(e arithmetic.Expr) bool {
	o, is := e.(arithmetic.Operation)
	return !is && e != nil || o.Op == arithmetic.Multiply && onlyTimes(o.Left) && onlyTimes(o.Right)
}

func lessInside(e arithmetic.Expr) bool {
	o, is := e.(arithmetic.Operation)
	return is && o.Op == arithmetic.Subtract
}

// distributed reports whether both sides are products with the same number of rows
// or rows of one size, which are one array in two parts.
func distributed(o arithmetic.Operation) bool {
	a, okA := o.Left.(arithmetic.Operation)
	b, okB := o.Right.(arithmetic.Operation)
	return okA && okB && (a.Left == b.Left || a.Right == b.Right)
}

// eachStep reads every step by itself.
func eachStep(read func(sight, problems.Truth) error) func([]sight, problems.Truth) error {
	return func(steps []sight, t problems.Truth) error {
		for i, s := range steps {
			if err := read(s, t); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
		}
		return nil
	}
}

// worthOf is what a number or an operation on numbers comes to.
func worthOf(e arithmetic.Expr) *big.Rat {
	t, err := problems.Work(arithmetic.Problem{Kind: arithmetic.Expression, Left: e})
	if err != nil {
		return new(big.Rat)
	}
	return t.Value
}

// laidOut is what there is before anything is taken away.
func laidOut(p arithmetic.Problem, t problems.Truth) *big.Rat {
	o := p.Left.(arithmetic.Operation)
	switch {
	case p.Kind == arithmetic.Product && t.Numbers[0].Cmp(whole(9)) == 0:
		return new(big.Rat).Mul(whole(10), t.Numbers[1])
	case p.Kind == arithmetic.Product:
		return new(big.Rat).Mul(whole(10), t.Numbers[0])
	case o.Op == arithmetic.Subtract:
		return worthOf(o.Left)
	case lessInside(o.Left):
		return new(big.Rat).Mul(worthOf(o.Left.(arithmetic.Operation).Left), worthOf(o.Right))
	}
	return new(big.Rat).Mul(worthOf(o.Left), worthOf(o.Right.(arithmetic.Operation).Left))
}

// heap is how many things are there, and how many of them are ghosts. Where they
// are not drawn one by one it is areas, and ones is false.
type heap struct {
	there, gone int64
	ones        bool
}

func (s sight) heap() heap {
	h := heap{ones: !s.unscaled()}
	for _, c := range s.Circles {
		switch {
		case s.is(c.Paint, scene.First, scene.Second, scene.Result, scene.Moved):
			h.there++
		case s.ghost(c.Paint):
			h.gone++
		}
	}
	area, cell := int64(0), int64(0)
	for _, f := range s.pieces() {
		area += int64(f.Area())
		if n := int64(f.Cells()); n > 1 {
			cell = int64(f.Area()) / n
		}
	}
	for _, f := range s.pieces() {
		if f.Cells() == 1 && int64(f.Area()) != cell {
			h.ones = false
		}
	}
	ghosts := int64(0)
	for _, r := range s.Rects {
		if s.ghost(r.Paint) {
			ghosts += int64(r.Area())
		}
	}
	switch {
	case area == 0:
	case h.ones && cell > 0:
		h.there, h.gone = h.there+area/cell, h.gone+ghosts/cell
	default:
		h = heap{there: area, gone: ghosts}
	}
	return h
}

// readTaking: what stays is the answer, and with what is gone it is all that was
// laid out.
func readTaking(s sight, t problems.Truth) error {
	h, all := s.heap(), laidOut(s.problem, t)
	if err := s.readLines(h); err != nil {
		return err
	}
	if h.there == 0 || h.gone == 0 {
		return errors.New("nothing is taken away")
	}
	if h.ones {
		return both(agree("what is left", whole(h.there), t.Value), agree("what was there", whole(h.there+h.gone), all))
	}
	return agree("what is left of all", big.NewRat(h.there, h.there+h.gone), new(big.Rat).Quo(t.Value, all))
}

// stepsOfTaking: everything is there at first, and at last what is left.
func stepsOfTaking(steps []sight, t problems.Truth) error {
	all := laidOut(steps[0].problem, t)
	for i, s := range steps {
		h := s.heap()
		if i == 0 && (h.gone > 0 || h.ones && whole(h.there).Cmp(all) != 0) {
			return fmt.Errorf("step 1: %d things and %d gone, for %s", h.there, h.gone, all.RatString())
		}
		if h.gone > 0 {
			if err := readTaking(s, t); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
		}
	}
	if steps[len(steps)-1].heap().gone == 0 {
		return errors.New("nothing is taken away in the end")
	}
	return nil
}
