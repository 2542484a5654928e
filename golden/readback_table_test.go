package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
)

// tableRow is a row of a table: what stands left, what stands right, which is nil
// where it is not known.
type tableRow struct {
	y, left, right int
	in, out        *big.Rat
}

// tableRows are the rows of a table of two columns with equal cells.
func (s sight) tableRows() ([]tableRow, error) {
	list := s.tiles()
	if len(list)%2 != 0 || len(list) == 0 {
		return nil, fmt.Errorf("%d cells", len(list))
	}
	var rows []tableRow
	for i := 0; i < len(list); i += 2 {
		a, b := list[i], list[i+1]
		if a.Y != b.Y || a.H != b.H || a.Right() >= b.X || a.X != list[0].X || b.X != list[1].X || a.W != list[0].W || b.W != list[1].W {
			return nil, fmt.Errorf("row %d is uneven", i/2+1)
		}
		row := tableRow{y: a.Y + a.H/2, left: a.Right(), right: b.X, in: a.value(), out: b.value()}
		if row.out == nil && !b.asks() {
			return nil, fmt.Errorf("row %d has neither a number nor a question", i/2+1)
		}
		rows = append(rows, row)
	}
	return rows, nil
}

// readTable reads the finished table.
func readTable(s sight, t problems.Truth) error {
	known, err := s.readRowsOfTable(t)
	if err == nil && known != len(t.List) {
		err = fmt.Errorf("%d of %d rows are filled", known, len(t.List))
	}
	return err
}

// stepsOfTable: each step fills the next rows, the first step none, or the first
// number of a run; the last step has all.
func stepsOfTable(steps []sight, t problems.Truth) error {
	before := -1
	for i, s := range steps {
		known, err := s.readRowsOfTable(t)
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		first := 0
		if s.problem.Kind == arithmetic.Counting {
			first = 1
		}
		if known <= before || i == 0 && known != first {
			return fmt.Errorf("step %d fills %d rows after %d", i+1, known, before)
		}
		before = known
	}
	if before != len(t.List) {
		return fmt.Errorf("%d of %d rows are filled in the end", before, len(t.List))
	}
	return nil
}

// readRowsOfTable compares every row with the truth, and counts those that are
// filled.
func (s sight) readRowsOfTable(t problems.Truth) (known int, err error) {
	rows, err := s.tableRows()
	if err != nil {
		return 0, err
	}
	if len(rows) != len(t.List) {
		return 0, fmt.Errorf("%d rows for %d numbers", len(rows), len(t.List))
	}
	run := s.problem.Kind == arithmetic.Counting
	for i, row := range rows {
		switch {
		case row.out == nil:
		case known < i:
			return 0, errors.New("a row is filled before the one above it")
		case row.out.Cmp(whole(t.List[i])) != 0:
			return 0, fmt.Errorf("%s stands in row %d, not %d", row.out.RatString(), i+1, t.List[i])
		default:
			known++
		}
		if !run && (row.in == nil || row.in.Cmp(t.Numbers[i]) != 0) {
			return 0, fmt.Errorf("the number that goes in is wrong in row %d", i+1)
		}
		if run && !s.Says(ordinals[i]) {
			return 0, fmt.Errorf("%s is missing", ordinals[i])
		}
	}
	return known, s.readRules(rows, known)
}

// ordinals name the rows of a table.
var ordinals = []string{"1st", "2nd", "3rd", "4th", "5th", "6th", "7th", "8th", "9th", "10th", "11th", "12th"}

// readRules: an arrow with the rule leads to every number that is filled: from the
// number in its row, or of a run from the number above.
func (s sight) readRules(rows []tableRow, known int) error {
	run := s.problem.Kind == arithmetic.Counting
	heads := s.heads()
	for i, row := range rows[:known] {
		y := row.y
		if run {
			if i == 0 {
				continue
			}
			y = (row.y + rows[i-1].y) / 2
		}
		if !slices.ContainsFunc(heads, func(h head) bool {
			if run {
				return h.tip.X < h.from.X && h.tip.X > row.right && h.tip.Y < row.y && h.tip.Y > y
			}
			return h.tip.Y == row.y && h.from.X < h.tip.X && h.tip.X < row.right && h.tip.X > row.left
		}) {
			return fmt.Errorf("no arrow leads to row %d", i+1)
		}
		if !s.saysRule(y, row.left) {
			return fmt.Errorf("the rule is not beside the arrow to row %d", i+1)
		}
	}
	if len(heads) > len(rows) {
		return fmt.Errorf("%d arrows for %d rows", len(heads), len(rows))
	}
	return nil
}

// saysRule reports whether the sign and the number of the rule stand at a height,
// right of a place.
func (s sight) saysRule(y, left int) bool {
	sign := map[arithmetic.Op]string{arithmetic.Add: "+", arithmetic.Subtract: "−", arithmetic.Multiply: "×", arithmetic.Divide: "÷"}[s.problem.Run.Op]
	return slices.ContainsFunc(s.Lines(), func(line []measure.Word) bool {
		return slices.ContainsFunc(line, func(w measure.Word) bool {
			i := slices.Index(line, w)
			if w.Text != sign || i+1 >= len(line) || w.X < left || w.Y < y || w.Y > y+w.Size {
				return false
			}
			v, ok := line[i+1].Value()
			return ok && v.Cmp(whole(s.problem.Run.By)) == 0
		})
	})
}
