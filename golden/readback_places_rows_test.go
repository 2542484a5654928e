package golden

import (
	"fmt"
	"maps"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"modeler/golden/measure"
	"modeler/golden/problems"
)

// digitRows are the numbers under the columns, in rows from the top: of each row
// the number under each column, the ones first, "" where there is none. signs are
// what stands left of each row.
func (s sight) digitRows() (rows [][]string, signs []string) {
	columns := s.tableColumns()
	at := map[int][]string{}
	for _, t := range s.Texts {
		power := slices.IndexFunc(columns, func(c measure.Rect) bool { return t.X == c.X+c.W/2 && t.Y > c.Y })
		if _, err := strconv.Atoi(t.Words); err == nil && !t.Bold && power >= 0 && t.Anchor == "middle" && s.standsAlone(t) {
			if at[t.Y] == nil {
				at[t.Y] = make([]string, len(columns))
			}
			at[t.Y][power] = t.Words
		}
	}
	for _, y := range slices.Sorted(maps.Keys(at)) {
		rows, signs = append(rows, at[y]), append(signs, "")
		for _, t := range s.Texts {
			if t.Y == y && t.X < columns[len(columns)-1].X {
				signs[len(signs)-1] += t.Words
			}
		}
	}
	return rows, signs
}

// standsAlone reports whether a number is not part of a line like 4 > 1.
func (s sight) standsAlone(t measure.Text) bool {
	return !slices.ContainsFunc(s.Texts, func(o measure.Text) bool {
		return o.Order != t.Order && o.Y == t.Y && max(o.X-t.X, t.X-o.X) < t.Size && strings.ContainsAny(o.Words, "<=>")
	})
}

// digitsAre compares a row with the digits of a number.
func digitsAre(row []string, v *big.Rat) error {
	digits := v.Num().String()
	for power, text := range row {
		want := ""
		if power < len(digits) {
			want = digits[len(digits)-1-power : len(digits)-power]
		}
		if text != want {
			return fmt.Errorf("%q stands where %q of %s belongs", text, want, digits)
		}
	}
	return nil
}

// rowsAre: the rows are the digits of the numbers, and the sign stands beside the
// second.
func (s sight) rowsAre(sign string, numbers ...*big.Rat) error {
	rows, signs := s.digitRows()
	if len(rows) != len(numbers) {
		return fmt.Errorf("%d rows of digits for %d numbers", len(rows), len(numbers))
	}
	for i, n := range numbers {
		if err := digitsAre(rows[i], n); err != nil {
			return err
		}
		if want := map[bool]string{true: sign}[i == 1]; signs[i] != want {
			return fmt.Errorf("%q stands beside the digits of %s", signs[i], n.RatString())
		}
	}
	return nil
}

// readTakenCounters reads the rows of a subtraction: the first number, above it how many
// counters there are after the trades, the second number and what is left.
func (s sight) readTakenCounters(t problems.Truth, count func(int, func(measure.Paint) bool) int64) error {
	rows, signs := s.digitRows()
	n := t.Numbers
	if len(rows) == 3 {
		return s.rowsAre("−", n[0], n[1], t.Value)
	}
	if len(rows) != 4 || signs[2] != "−" {
		return fmt.Errorf("%d rows of digits, with the signs %q", len(rows), signs)
	}
	for power, text := range rows[0] {
		there := count(power, func(p measure.Paint) bool { return s.solid(p) || s.ghost(p) })
		if text == "" && rows[1][power] != strconv.FormatInt(there, 10) && there > 0 || text != "" && text != strconv.FormatInt(there, 10) {
			return fmt.Errorf("%q over %d counters after the trades", text, there)
		}
	}
	return both(digitsAre(rows[1], n[0]), both(digitsAre(rows[2], n[1]), digitsAre(rows[3], t.Value)))
}

// footIs: the bold number at the foot, where it is one number alone.
func (s sight) footIs(want *big.Rat) error {
	for _, t := range s.Texts {
		v, err := strconv.ParseInt(strings.ReplaceAll(t.Words, ",", ""), 10, 64)
		if alone := !strings.Contains(fmt.Sprint(s.Statements()), t.Words); err == nil && t.Bold && alone {
			return agree("the number at the foot", whole(v), want)
		}
	}
	return nil
}

// lowestDigits compares the numbers in the lowest row under the columns with the
// counters that are there. A column without a number has no counters.
func (s sight) lowestDigits(count func(int, func(measure.Paint) bool) int64) error {
	columns := s.tableColumns()
	under := map[int]measure.Text{}
	lowest := 0
	for _, t := range s.Texts {
		_, err := strconv.Atoi(t.Words)
		power := slices.IndexFunc(columns, func(c measure.Rect) bool { return t.X == c.X+c.W/2 && t.Y > c.Bottom() })
		if err != nil || t.Bold || power < 0 || t.Anchor != "middle" {
			continue
		}
		lowest = max(lowest, t.Y)
		if t.Y == lowest {
			under[power] = t
		}
	}
	for power := range columns {
		n := count(power, s.solid)
		if t := under[power]; t.Y == lowest && t.Words != strconv.FormatInt(n, 10) || t.Y < lowest && n > 0 {
			return fmt.Errorf("%d counters over the number %q", n, t.Words)
		}
	}
	return nil
}
