package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// columnWorths is what a counter is worth in a column of that name.
var columnWorths = map[string]*big.Rat{
	"hundreds": big.NewRat(100, 1), "tens": big.NewRat(10, 1), "ones": big.NewRat(1, 1),
	"tenths": big.NewRat(1, 10), "hundredths": big.NewRat(1, 100), "thousandths": big.NewRat(1, 1000),
}

// ofDecimal reports whether a table shows one decimal.
func (s sight) ofDecimal() bool {
	n, ok := s.problem.Left.(arithmetic.Number)
	return ok && s.problem.Right == nil && n.Form == arithmetic.Decimal
}

// decimalTable are the columns of a table with places after the point, the last
// first, what a counter is worth in each, and how many lie there. Each is worth ten
// times the one on its right, by its name.
func (s sight) decimalTable() (columns []measure.Rect, worths []*big.Rat, counts []int64, err error) {
	columns = s.tableColumns()
	inside := 0
	for _, c := range columns {
		var worth *big.Rat
		for _, t := range s.Texts {
			if t.X == c.X+c.W/2 && t.Y < c.Y && t.Y > c.Y-50 {
				worth = columnWorths[t.Words]
			}
		}
		if worth == nil {
			return nil, nil, nil, errors.New("a column has no name")
		}
		if n := len(worths); n > 0 && new(big.Rat).Mul(worths[n-1], whole(10)).Cmp(worth) != 0 {
			return nil, nil, nil, fmt.Errorf("a column of %s stands left of one of %s", worth.RatString(), worths[n-1].RatString())
		}
		count := int64(0)
		for _, counter := range s.Circles {
			if c.Contains(measure.Box{X: counter.X - counter.R, Y: counter.Y - counter.R, W: 2 * counter.R, H: 2 * counter.R}) && s.solid(counter.Paint) {
				count++
			}
		}
		inside += int(count)
		worths, counts = append(worths, worth), append(counts, count)
	}
	if inside != len(s.Circles) {
		return nil, nil, nil, errors.New("a counter lies in no column")
	}
	return columns, worths, counts, s.evenCounters(columns)
}

// decimalOf is what all counters are worth.
func decimalOf(worths []*big.Rat, counts []int64) *big.Rat {
	sum := new(big.Rat)
	for i, worth := range worths {
		sum.Add(sum, new(big.Rat).Mul(worth, whole(counts[i])))
	}
	return sum
}

// readDecimalDigits: under every column that has a digit stands how many counters lie
// in it, and the point right of the ones.
func (s sight) readDecimalDigits(columns []measure.Rect, worths []*big.Rat, counts []int64) error {
	digits := 0
	for _, t := range s.Texts {
		if t.Y < columns[0].Bottom() || t.Bold || len(t.Words) != 1 {
			continue
		}
		if t.Words == "." {
			ones := slices.IndexFunc(worths, func(w *big.Rat) bool { return w.Cmp(whole(1)) == 0 })
			if ones < 1 || t.X < columns[ones].Right() || t.X > columns[ones-1].X {
				return errors.New("the point does not stand between the ones and the tenths")
			}
			continue
		}
		at := slices.IndexFunc(columns, func(c measure.Rect) bool { return c.X+c.W/2 == t.X })
		if at < 0 || t.Words != fmt.Sprint(counts[at]) {
			return fmt.Errorf("%s stands under no column with as many counters", t.Words)
		}
		digits++
	}
	if digits == 0 {
		return errors.New("no digits stand under the columns")
	}
	return nil
}

// readDecimal reads the whole story of one decimal.
func (s sight) readDecimal(t problems.Truth) error {
	columns, worths, counts, err := s.decimalTable()
	if err != nil {
		return err
	}
	if err := both(agree("the number", decimalOf(worths, counts), t.Numbers[0]), s.readDecimalDigits(columns, worths, counts)); err != nil {
		return err
	}
	var foot []string
	for _, text := range s.Texts {
		if text.Bold {
			foot = append(foot, text.Words)
		}
	}
	switch s.problem.Kind {
	case arithmetic.PlaceValue:
		marked := new(big.Rat)
		for _, c := range s.Circles {
			at := slices.IndexFunc(columns, func(r measure.Rect) bool { return r.X < c.X && c.X < r.Right() })
			if s.is(c.Paint, scene.Result) {
				marked.Add(marked, worths[at])
			}
		}
		said, ok := new(big.Rat).SetString(foot[len(foot)-1])
		if !ok {
			return fmt.Errorf("the foot ends in %q", foot[len(foot)-1])
		}
		if len(foot) != 6 || foot[1] != s.problem.Left.String() {
			return fmt.Errorf("the foot is %q", foot)
		}
		return both(agree("what is marked", marked, t.Value), agree("what the foot says", said, t.Value))
	case arithmetic.InWords:
		var said []string
		for _, text := range s.Texts {
			if text.Y > columns[0].Bottom() && !text.Bold && len(text.Words) > 1 {
				said = append(said, text.Words)
			}
		}
		if got := strings.Join(said, " "); got != t.Name {
			return fmt.Errorf("%q is said, not %q", got, t.Name)
		}
		if len(foot) != 1 || foot[0] != s.problem.Left.String() {
			return fmt.Errorf("the foot is %q", foot)
		}
	}
	return nil
}

// stepsOfDecimal follows the digits as they are laid out, from the left.
func stepsOfDecimal(steps []sight, t problems.Truth) error {
	n := t.Numbers[0]
	stops := []*big.Rat{n}
	if kind := steps[0].problem.Kind; kind == arithmetic.Show || kind == arithmetic.ExpandedForm {
		stops = nil
		for _, unit := range []int64{100_000, 10_000, 1_000, 100, 10, 1} { // thousandths
			cut := new(big.Rat).Quo(n, big.NewRat(unit, 1000))
			down := new(big.Rat).SetInt(new(big.Int).Quo(cut.Num(), cut.Denom()))
			stops = append(stops, down.Mul(down, big.NewRat(unit, 1000)))
		}
		stops = slices.CompactFunc(stops, func(a, b *big.Rat) bool { return a.Cmp(b) == 0 })
		if len(stops) > 1 && stops[0].Sign() == 0 && stops[1].Cmp(whole(1)) >= 0 {
			stops = stops[1:]
		}
	}
	for i, s := range steps {
		columns, worths, counts, err := s.decimalTable()
		if err == nil {
			err = s.readDecimalDigits(columns, worths, counts)
		}
		if err == nil {
			stops, err = walk(stops, decimalOf(worths, counts))
		}
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
	}
	return arrived(stops)
}
