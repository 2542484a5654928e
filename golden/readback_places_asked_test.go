package golden

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// readAskedPlaces reads the tables of one number that is named, taken apart, asked
// about or moved. of adds up the counters of some roles.
func (s sight) readAskedPlaces(t problems.Truth, of func(...scene.Role) *big.Rat) error {
	n := t.Numbers[0]
	switch s.problem.Kind {
	case arithmetic.InWords:
		return both(agree("the number", of(scene.First), n), both(both(s.rowsAre("", n), s.footIs(n)), both(s.readPeriods(n), s.readSaid(t.Name))))
	case arithmetic.ExpandedForm:
		return both(agree("the number", of(scene.First), n), both(s.readParts(n), s.footIs(n)))
	case arithmetic.PlaceValue:
		err := both(agree("the number", of(scene.First, scene.Result), n), agree("the digit", of(scene.Result), s.digitWorth(n)))
		return both(err, both(s.rowsAre("", n), s.readTenTimes()))
	}
	if n, times, ok := s.byDigit(t); ok {
		return s.readTimes(t, n, times)
	}
	own, err := s.moving(t, of)
	if err != nil {
		return err
	}
	rows := s.stops(own, t.Value)
	return both(agree("the answer", of(scene.Result), t.Value), both(s.rowsAre("", rows...), s.readSlants(len(rows)-1)))
}

// digitWorth is what the digit is worth that a problem asks about.
func (s sight) digitWorth(n *big.Rat) *big.Rat {
	to := big.NewInt(s.problem.To)
	digit := new(big.Int).Div(n.Num(), to)
	digit.Mod(digit, big.NewInt(10))
	return new(big.Rat).SetInt(digit.Mul(digit, to))
}

// readParts: under the digits of the number stands every digit with its zeros.
func (s sight) readParts(n *big.Rat) error {
	rows, signs := s.digitRows()
	parts := byPlace(n)
	slices.Reverse(parts)
	if len(parts) == 0 {
		parts = []*big.Rat{n}
	}
	if len(rows) != 1+len(parts) {
		return fmt.Errorf("%d rows for %d parts", len(rows), len(parts))
	}
	for i, v := range append([]*big.Rat{n}, parts...) {
		if want := []string{"", "=", "+"}[min(i, 2)]; signs[i] != want {
			return fmt.Errorf("%q stands beside %s", signs[i], v.RatString())
		}
		if err := digitsAre(rows[i], v); err != nil {
			return err
		}
	}
	return nil
}

// tips are where the arrows of a picture end, from the left.
func (s sight) tips() (list []measure.Point) {
	for _, p := range s.Paths {
		if p.Closed && len(p.Points) == 3 && p.Filled() {
			list = append(list, p.Points[0])
		}
	}
	slices.SortFunc(list, func(a, b measure.Point) int { return a.X - b.X })
	return list
}

// columnAt is the place of the column whose middle is at x; -1 when there is none.
func (s sight) columnAt(x int) int {
	return slices.IndexFunc(s.tableColumns(), func(c measure.Rect) bool { return c.X+c.W/2 == x })
}

// readTenTimes: a line goes round the column of the digit, and the arrow, if there
// is one, leads from a column to the next larger one and says so.
func (s sight) readTenTimes() error {
	columns := s.tableColumns()
	lit := -1
	for _, p := range s.Paths {
		if p.Closed && p.Width == "5" {
			lit = slices.IndexFunc(columns, func(c measure.Rect) bool { return p.Box() == c.Box })
		}
	}
	if lit < 0 || arithmetic.Power10(lit) != s.problem.To {
		return fmt.Errorf("the column of 10 to the power of %d is marked", lit)
	}
	tips := s.tips()
	if len(tips) == 0 {
		return nil
	}
	to := s.columnAt(tips[0].X)
	from := -1
	for _, p := range s.Paths {
		if !p.Closed && len(p.Points) == 4 {
			from = s.columnAt(p.Points[0].X)
		}
	}
	if len(tips) != 1 || from < 0 || to != from+1 || from != lit && to != lit || !s.Says("10 times") {
		return fmt.Errorf("an arrow leads from the place %d to the place %d", from, to)
	}
	return nil
}

// readPeriods: the numbers beside the words are what three digits each make.
func (s sight) readPeriods(n *big.Rat) error {
	digits := n.Num().String()
	var want, got []string
	for len(digits) > 3 {
		want = append(want, strings.TrimLeft(digits[len(digits)-3:len(digits)-1], "0")+digits[len(digits)-1:])
		digits = digits[:len(digits)-3]
	}
	want = append(want, digits)
	slices.Reverse(want)
	for i := range want {
		if len(want[i]) == 2 && want[i][0] == '0' {
			want[i] = want[i][1:]
		}
	}
	for _, t := range s.Texts {
		if t.Anchor == "end" && !t.Bold {
			got = append(got, t.Words)
		}
	}
	if !slices.Equal(got, want) {
		return fmt.Errorf("the periods are %v, not %v", got, want)
	}
	return nil
}

// readSaid: the words beside the numbers, one period after another, are the name of
// the number. Nothing is said for a period without counters.
func (s sight) readSaid(name string) error {
	var said []string
	for _, t := range s.Texts {
		if t.Anchor == "start" && t.Words != "(nothing to say)" {
			said = append(said, t.Words)
		}
	}
	if got := strings.Join(said, " "); got != name {
		return fmt.Errorf("it is said %q, not %q", got, name)
	}
	return nil
}
