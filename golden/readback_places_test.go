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

// tableColumns are the columns of a place-value table, the ones first: of the
// rectangles in the look of a tray, those that stand lowest.
func (s sight) tableColumns() []measure.Rect {
	var list []measure.Rect
	for _, r := range s.trays() {
		switch {
		case len(list) == 0 || r.Y == list[0].Y:
			list = append(list, r)
		case r.Y > list[0].Y:
			list = []measure.Rect{r}
		}
	}
	slices.Reverse(list)
	return list
}

// placesTable reads the counters of a table: sum adds up what those that are
// chosen are worth by the column they lie in, and count how many of them lie in a
// column.
func (s sight) placesTable() (sum func(func(measure.Paint) bool) *big.Rat, count func(int, func(measure.Paint) bool) int64, err error) {
	columns := s.tableColumns()
	count = func(power int, choose func(measure.Paint) bool) int64 {
		n := int64(0)
		for _, c := range s.Circles {
			if c.X > columns[power].X && c.X < columns[power].Right() && choose(c.Paint) {
				n++
			}
		}
		return n
	}
	sum = func(choose func(measure.Paint) bool) *big.Rat {
		total, worth := whole(0), whole(1)
		for power := range columns {
			total.Add(total, new(big.Rat).Mul(worth, whole(count(power, choose))))
			worth.Mul(worth, whole(10))
		}
		return total
	}
	for _, c := range s.Circles {
		box := measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}
		if !slices.ContainsFunc(columns, func(r measure.Rect) bool { return r.Contains(box) }) {
			return sum, count, fmt.Errorf("the counter at %d, %d lies in no column", c.X, c.Y)
		}
		for _, other := range s.Circles {
			if dx, dy := c.X-other.X, c.Y-other.Y; c.Order != other.Order && dx*dx+dy*dy < (c.R+other.R)*(c.R+other.R) {
				return sum, count, fmt.Errorf("the counters at %d, %d and %d, %d lie on one another", c.X, c.Y, other.X, other.Y)
			}
		}
	}
	return sum, count, both(s.columnNames(columns), s.evenCounters(columns))
}

// evenCounters: the counters of a row stand as far apart in every column, and on
// the middle of the column or as far to both sides; the rows stand as far apart,
// but one number may begin under another.
func (s sight) evenCounters(columns []measure.Rect) error {
	step := s.counterStep()
	if step == 0 {
		return nil // no two stand side by side
	}
	rows := map[[2]int][]int{}
	var ys []int
	for _, counter := range s.Circles {
		power := slices.IndexFunc(columns, func(c measure.Rect) bool { return counter.X > c.X && counter.X < c.Right() })
		c := columns[power]
		off := 2 * (counter.X - (c.X + c.W/2)) % step
		if off = max(off, -off); min(off, step-off) > 1 {
			return fmt.Errorf("the counter at %d stands out of line", counter.X)
		}
		rows[[2]int{power, counter.Y}] = append(rows[[2]int{power, counter.Y}], counter.X)
		ys = append(ys, counter.Y)
	}
	for _, xs := range rows {
		slices.Sort(xs)
		for i := range len(xs) - 1 {
			if xs[i+1]-xs[i] != step {
				return fmt.Errorf("counters in a row stand at %v", xs)
			}
		}
	}
	slices.Sort(ys)
	ys = slices.Compact(ys)
	parts := 1
	for i := range len(ys) - 1 {
		if gap := ys[i+1] - ys[i]; gap > step {
			parts++
		} else if gap < step {
			return fmt.Errorf("rows of counters stand at %v", ys)
		}
	}
	if parts > 2+1 { // a ghost may leave a gap
		return fmt.Errorf("rows of counters stand at %v", ys)
	}
	return nil
}

// counterStep is from the middle of one counter to that of the next; 0 when no two
// stand side by side or one under the other.
func (s sight) counterStep() int {
	step := 0
	for _, a := range s.Circles {
		for _, b := range s.Circles {
			near := 0
			switch {
			case a.Y == b.Y:
				near = b.X - a.X
			case a.X == b.X:
				near = b.Y - a.Y
			}
			if most := 2*a.R + 8; near > 0 && near <= most && (step == 0 || near < step) {
				step = near
			}
		}
	}
	return step
}

// columnNames: over every column stands its name, and over the names of three
// that of their period, where periods have names.
func (s sight) columnNames(columns []measure.Rect) error {
	over := func(x, bottom, top int) string {
		for _, t := range s.Texts {
			if t.X == x && t.Y < bottom && t.Y > top {
				return t.Words
			}
		}
		return ""
	}
	bars := s.trays()
	bars = slices.DeleteFunc(bars, func(r measure.Rect) bool { return r.Y == columns[0].Y })
	slices.Reverse(bars)
	for i, bar := range bars {
		if name := over(bar.X+bar.W/2, bar.Bottom(), bar.Y); name != []string{"ones", "thousands", "millions"}[i] {
			return fmt.Errorf("the period %d is called %q", i, name)
		}
	}
	for power, c := range columns {
		want := []string{"ones", "tens", "hundreds", "thousands"}[min(power, 3)]
		if len(bars) > 0 {
			want = []string{"ones", "tens", "hundreds"}[power%3]
			if bar := bars[power/3]; c.X < bar.X || c.Right() > bar.Right() {
				return fmt.Errorf("the column of 10 to the power of %d is not under its period", power)
			}
		} else if len(columns) > 4 {
			return fmt.Errorf("%d columns without the names of their periods", len(columns))
		}
		if name := over(c.X+c.W/2, c.Y, c.Y-50); name != want {
			return fmt.Errorf("the column of 10 to the power of %d is called %q", power, name)
		}
	}
	return nil
}

// solid is every counter that lies there, and gone every one that does not.
func (s sight) solid(p measure.Paint) bool {
	return s.is(p, scene.First, scene.Second, scene.Result, scene.Moved)
}

// readPlaces counts the whole story.
func readPlaces(s sight, t problems.Truth) error {
	if s.ofDecimal() {
		return s.readDecimal(t)
	}
	sum, count, err := s.placesTable()
	if err != nil {
		return err
	}
	of := func(roles ...scene.Role) *big.Rat {
		return sum(func(p measure.Paint) bool { return s.is(p, roles...) })
	}
	alsoTraded := func(role scene.Role) *big.Rat {
		return sum(func(p measure.Paint) bool { return s.is(p, role) || s.empty(p, role) })
	}
	n := t.Numbers
	switch s.problem.Kind {
	case arithmetic.Show:
		return both(both(agree("the number", of(scene.First), n[0]), s.lowestDigits(count)), both(s.rowsAre("", n[0]), s.footIs(n[0])))
	case arithmetic.ExpandedForm, arithmetic.PlaceValue, arithmetic.InWords, arithmetic.Product, arithmetic.Division:
		return s.readAskedPlaces(t, of)
	case arithmetic.Addition:
		err := both(agree("the first, with what was traded", alsoTraded(scene.First), n[0]),
			agree("the second, with what was traded", alsoTraded(scene.Second), n[1]))
		err = both(err, both(agree("what is solid", sum(s.solid), t.Value), s.rowsAre("+", n[0], n[1], t.Value)))
		return both(err, s.lowestDigits(count))
	case arithmetic.Subtraction:
		err := both(agree("what is left", of(scene.First), t.Value), agree("what is gone", sum(s.ghost), n[1]))
		return both(err, both(s.readTakenCounters(t, count), s.lowestDigits(count)))
	case arithmetic.Claim, arithmetic.Comparison:
		return both(both(agree("the first", of(scene.First), n[0]), agree("the second", of(scene.Second), n[1])), s.rowsAre("", n[0], n[1]))
	}
	return errUnread
}

// stepsOfPlaces follows what lies on the table, as with blocks.
func stepsOfPlaces(steps []sight, t problems.Truth) error {
	if steps[0].ofDecimal() {
		return stepsOfDecimal(steps, t)
	}
	n := t.Numbers
	stops := []*big.Rat{n[0]}
	switch steps[0].problem.Kind {
	case arithmetic.Addition:
		stops = append(stops, t.Value)
	case arithmetic.Subtraction:
		for _, part := range byPlace(n[1]) {
			stops = append(stops, new(big.Rat).Sub(stops[len(stops)-1], part))
		}
	case arithmetic.Product, arithmetic.Division:
		return stepsOfShift(steps, t)
	case arithmetic.PlaceValue, arithmetic.InWords:
	case arithmetic.Show, arithmetic.ExpandedForm:
		stops = []*big.Rat{whole(0)}
		parts := byPlace(n[0])
		slices.Reverse(parts)
		for _, part := range parts {
			stops = append(stops, new(big.Rat).Add(stops[len(stops)-1], part))
		}
		stops = stops[min(1, len(stops)-1):]
	case arithmetic.Claim, arithmetic.Comparison:
		stops = append(stops, new(big.Rat).Add(n[0], n[1]))
	default:
		return errUnread
	}
	return followCounters(steps, slices.CompactFunc(stops, func(a, b *big.Rat) bool { return a.Cmp(b) == 0 }))
}

// followCounters: what lies there passes the stops one after another, and what is
// gone is what was taken, or was traded for counters worth as much.
func followCounters(steps []sight, stops []*big.Rat) error {
	var before *big.Rat
	for i, s := range steps {
		sum, count, err := s.placesTable()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		there, gone := sum(s.solid), sum(s.ghost)
		moved := sum(func(p measure.Paint) bool { return s.is(p, scene.Moved) })
		if i > 0 && gone.Sign() > 0 {
			if taken := new(big.Rat).Sub(before, there); taken.Sign() == 0 && gone.Cmp(moved) != 0 {
				return fmt.Errorf("step %d: %s is traded for %s", i+1, gone.RatString(), moved.RatString())
			} else if taken.Sign() != 0 && taken.Cmp(gone) != 0 {
				return fmt.Errorf("step %d: %s is gone and %s is missing", i+1, gone.RatString(), taken.RatString())
			}
		}
		before = there
		if stops, err = walk(stops, there); err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		if k := s.problem.Kind; k == arithmetic.Show || k == arithmetic.Addition && i == len(steps)-1 {
			if err := s.lowestDigits(count); err != nil {
				return fmt.Errorf("step %d: %w", i+1, err)
			}
		}
	}
	return arrived(stops)
}
