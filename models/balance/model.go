// Package balance draws both sides of a statement on the pans of a balance.
package balance

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/telling"
	"modeler/models/words"
)

// Model weighs the two sides of a statement: the beam is level when they are the
// same, and the heavier side sinks when they are not (CCSS 1.OA.D.7, 1.OA.D.8).
var Model = &telling.Model{
	Name:  "balance",
	Title: "Balance",
	Doc:   "Weighs the two sides of a statement: level when they are the same, tilted when they are not, and what is missing found by taking the same from both.",
	Kinds: []arithmetic.Kind{arithmetic.Claim, arithmetic.Comparison, arithmetic.Missing},
	Examples: []string{
		"8 + 4 = ? + 5", "4 + 1 = 5 + 2", "8 + 6 = 6 + 8", "8 + ? = 11", "12 = ? + 5", "7 + ? = 9 + 6",
		"3 × 4 = 12", "2 × 5 > 9 − 4", "compare 9 + 4 and 8 + 6", "2 + (3 + 4) = 2 + 3 + 4", "5 + ? = 3 × 4",
		"48 + 27 = 27 + 48", "compare 6 × 8 and 45", "36 + ? = 50 + 8",
	},
	Fits: func(p arithmetic.Problem) error {
		_, _, err := plan(p)
		return err
	},
	Turn: turn,
	Tell: tell,
}

// Bounds of what lies on a pan.
const (
	mostCubes  = 20  // that are counted one by one
	mostBars   = 100 // that lie there as bars, one unit or more for each
	mostGroups = 4   // numbers of a side, so that their names stand side by side
	mostTimes  = 10  // equal groups of a product
)

// plan works a problem and lays it out, or says why it does not fit.
func plan(p arithmetic.Problem) (arithmetic.Working, layout, error) {
	work := arithmetic.WeighSides
	if p.Kind == arithmetic.Missing {
		work = arithmetic.FindOnBalance
	}
	w, err := work(p)
	switch {
	case errors.Is(err, arithmetic.ErrNegative):
		return w, layout{}, words.BalanceNegative
	case errors.Is(err, arithmetic.ErrOverflow):
		return w, layout{}, words.BalanceHeavy
	case err != nil:
		return w, layout{}, telling.NotMine(words.BalanceKinds)
	}
	left, right := pans(w)
	for _, pan := range []arithmetic.Pan{left, right} {
		if pan.Laid() > mostBars {
			return w, layout{}, words.BalanceHeavy
		}
		if len(pan.Groups) > mostGroups {
			return w, layout{}, words.BalanceLong
		}
		for _, g := range pan.Groups {
			if g.Times > mostTimes {
				return w, layout{}, words.BalanceTimes
			}
		}
	}
	l, ok := layOut(left, right)
	if !ok {
		return w, layout{}, words.BalanceLong
	}
	return w, l, nil
}

// pans are both sides of a working.
func pans(w arithmetic.Working) (left, right arithmetic.Pan) {
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.SetLevel:
			return m.Left, m.Right
		case arithmetic.Weigh:
			return m.Left, m.Right
		}
	}
	panic("balance: nothing is weighed")
}

// turn: the balance leads where the sign stands between two operations on numbers
// to 20, and follows where it stands beside one.
func turn(p arithmetic.Problem) int {
	var small func(e arithmetic.Expr) bool
	times := false
	small = func(e arithmetic.Expr) bool {
		switch e := e.(type) {
		case arithmetic.Number:
			v, whole := e.Int64()
			return whole && e.Form == arithmetic.Whole && v <= mostCubes
		case arithmetic.Operation:
			times = times || e.Op == arithmetic.Multiply
			return small(e.Left) && small(e.Right)
		}
		return e != nil
	}
	_, left := p.Left.(arithmetic.Operation)
	_, right := p.Right.(arithmetic.Operation)
	switch p.Kind {
	case arithmetic.Claim, arithmetic.Comparison, arithmetic.Missing:
		switch fits := small(p.Left) && small(p.Right); {
		case fits && left && right && !times:
			return telling.Leads
		case fits && (left || right):
			return telling.Follows
		}
	}
	return telling.Serves
}

func tell(p arithmetic.Problem) telling.Telling {
	w, l, err := plan(p)
	if err != nil {
		panic("balance: a problem that does not fit: " + err.Error())
	}
	if p.Kind == arithmetic.Missing {
		return tellMissing(p, w, l)
	}
	return tellWeighed(p, w, l)
}
