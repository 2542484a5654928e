package golden

import (
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// byDigit are the factors of a product by one digit: the number of more digits and
// the digit; ok is false for other problems.
func (s sight) byDigit(t problems.Truth) (n, times *big.Rat, ok bool) {
	a, b := t.Numbers[0], t.Numbers[1]
	ten := whole(10)
	for _, power := range []int64{10, 100, 1_000} {
		if a.Cmp(whole(power)) == 0 || b.Cmp(whole(power)) == 0 {
			return nil, nil, false // the counters move to the next column
		}
	}
	if s.problem.Kind != arithmetic.Product || (a.Cmp(ten) < 0) == (b.Cmp(ten) < 0) {
		return nil, nil, false
	}
	if a.Cmp(ten) < 0 {
		a, b = b, a
	}
	return a, b, true
}

// readTimes reads a product by one digit: in every column so many rows of the digit,
// what is solid comes to the product, and so do the rows, traded or not.
func (s sight) readTimes(t problems.Truth, n, times *big.Rat) error {
	sum, count, err := s.placesTable()
	if err != nil {
		return err
	}
	inRows := func(p measure.Paint) bool {
		return s.is(p, scene.First, scene.Second) || s.empty(p, scene.First, scene.Second)
	}
	digits := n.Num().String()
	for power := range s.tableColumns() {
		want := int64(0)
		if power < len(digits) {
			want = int64(digits[len(digits)-1-power]-'0') * times.Num().Int64()
		}
		if got := count(power, inRows); got != want {
			return fmt.Errorf("%d counters in rows of 10 to the power of %d, not %d", got, power, want)
		}
	}
	err = both(agree("what is solid", sum(s.solid), t.Value), agree("the rows", sum(inRows), t.Value))
	return both(err, both(s.rowsAre("×", n, times, t.Value), s.lowestDigits(count)))
}

// moving is the number whose counters move: the first or the second.
func (s sight) moving(t problems.Truth, of func(...scene.Role) *big.Rat) (*big.Rat, error) {
	first, second := of(scene.First), of(scene.Second)
	switch {
	case second.Sign() == 0:
		return t.Numbers[0], agree("the first number", first, t.Numbers[0])
	case first.Sign() == 0:
		return t.Numbers[1], agree("the second number", second, t.Numbers[1])
	}
	return nil, fmt.Errorf("both numbers lie there")
}

// stops are the numbers from one to the other, each 10 times or a tenth of the one
// before.
func (s sight) stops(from, to *big.Rat) []*big.Rat {
	list := []*big.Rat{from}
	ten := whole(10)
	if from.Cmp(to) > 0 {
		ten = big.NewRat(1, 10)
	}
	for len(list) < 5 && list[len(list)-1].Cmp(to) != 0 {
		list = append(list, new(big.Rat).Mul(list[len(list)-1], ten))
	}
	return list
}

// readSlants: from every column with counters above, an arrow leads as many
// columns on as all counters go.
func (s sight) readSlants(far int) error {
	if s.problem.Kind == arithmetic.Division {
		far = -far
	}
	var starts []int
	for _, p := range s.Paths {
		if !p.Closed && len(p.Points) == 2 && p.Box().W > 0 && p.Box().H > 0 {
			starts = append(starts, p.Points[0].X)
		}
	}
	slices.Sort(starts)
	tips := s.tips()
	used := 0
	for _, c := range s.tableColumns() {
		if slices.ContainsFunc(s.Circles, func(o measure.Circle) bool {
			return s.is(o.Paint, scene.First, scene.Second) && o.X > c.X && o.X < c.Right()
		}) {
			used++
		}
	}
	if len(tips) != len(starts) || used != len(starts) && used > 0 {
		return fmt.Errorf("%d arrows with %d heads from %d columns", len(starts), len(tips), used)
	}
	for i, x := range starts {
		if from, to := s.columnAt(x), s.columnAt(tips[i].X); from < 0 || to != from+far {
			return fmt.Errorf("an arrow leads from the place %d to the place %d, not %d places on", from, to, far)
		}
	}
	return nil
}

// stepsOfShift: the number lies there, then in every step what it was and what it
// is after one more move.
func stepsOfShift(steps []sight, t problems.Truth) error {
	if n, _, ok := steps[0].byDigit(t); ok {
		return followCounters(steps, []*big.Rat{n, t.Value})
	}
	rows := []*big.Rat(nil)
	for i, s := range steps {
		sum, _, err := s.placesTable()
		if err != nil {
			return err
		}
		of := func(roles ...scene.Role) *big.Rat {
			return sum(func(p measure.Paint) bool { return s.is(p, roles...) })
		}
		own := of(scene.First, scene.Second)
		switch {
		case i == 0:
			n, err := s.moving(t, of)
			if err != nil {
				return fmt.Errorf("step 1: %w", err)
			}
			rows = s.stops(n, t.Value)
		case i == len(steps)-1:
			err = both(agree("the number", own, rows[0]), agree("the answer", of(scene.Result), t.Value))
			err = both(err, both(s.rowsAre("", rows...), s.readSlants(len(rows)-1)))
		case i >= len(rows):
			err = fmt.Errorf("one move too many")
		default:
			err = both(agree("what it was", of(scene.First, scene.Second, scene.Result), rows[i-1]), agree("what it is", of(scene.Moved), rows[i]))
			err = both(err, both(s.rowsAre("", rows[:i+1]...), s.readSlants(1)))
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	if len(steps) != len(rows)+1 {
		return fmt.Errorf("%d steps for %d moves", len(steps), len(rows)-1)
	}
	return nil
}
