package words

import (
	"strings"

	"modeler/arithmetic"
)

// Suggestion is something to do after a lesson. Problem, where there is one, is
// the problem to ask for it.
type Suggestion struct {
	Text    string
	Problem string
}

// Check says how to check an answer by the opposite operation; ok is false for a
// problem that has none. The numbers are those of the problem and its answer.
func Check(p arithmetic.Problem, a arithmetic.Answer) (s Suggestion, ok bool) {
	o, is := p.Left.(arithmetic.Operation)
	first, second, two := p.Operands()
	if !is || !two {
		return Suggestion{}, false
	}
	ask := func(text string, left arithmetic.Expr, op arithmetic.Op, right arithmetic.Expr) (Suggestion, bool) {
		return Suggestion{text, arithmetic.Operation{Op: op, Left: left, Right: right}.String()}, true
	}
	switch p.Kind {
	case arithmetic.Addition:
		return ask("Check by taking away: start with the sum and take one of the two numbers away. The other should be left.",
			a.Number, arithmetic.Subtract, second)
	case arithmetic.Subtraction:
		return ask("Check by adding back: put together what was left and what was taken away.", a.Number, arithmetic.Add, second)
	case arithmetic.Product:
		if first.Form == arithmetic.Whole && second.Form == arithmetic.Whole && first.Value.Sign() > 0 {
			return ask("Check by sharing: share the total out again among the groups.", a.Number, arithmetic.Divide, first)
		}
	case arithmetic.Division:
		if o.Op != arithmetic.Divide || p.Rest != arithmetic.LeftOver || first.Form != arithmetic.Whole || second.Form != arithmetic.Whole {
			break
		}
		back := arithmetic.Operation{Op: arithmetic.Multiply, Left: second, Right: a.Number}
		if p.Grouping {
			back.Left, back.Right = a.Number, second
		}
		if a.Remainder > 0 {
			return ask("Check by putting the groups together again, and what was left over with them.", back, arithmetic.Add, arithmetic.Int(a.Remainder))
		}
		return Suggestion{"Check by putting the groups together again.", back.String()}, true
	}
	return Suggestion{}, false
}

// Cautions are what a grown-up should know before the pieces come on the table.
// pieces are their names; cut says that some are cut with scissors.
func Cautions(pieces []string, cut bool) []string {
	const (
		small    = "Small pieces: keep them away from children under 3."
		scissors = "Scissors: cut together with the child."
	)
	var out []string
	for _, name := range pieces {
		if !strings.Contains(name, "strip") && !strings.Contains(name, "paper") && !strings.Contains(name, "line") {
			out = append(out, small)
			break
		}
	}
	if cut {
		out = append(out, scissors)
	}
	return out
}
