package bars

import "modeler/arithmetic"

// numbersOf are the numbers of a problem that fraction bars have moves for.
func numbersOf(p arithmetic.Problem) ([]arithmetic.Number, bool) {
	if c, ok := arithmetic.OneSum(p); ok {
		return c.Numbers[:], true
	}
	if c, ok := arithmetic.CopiesClaim(p); ok {
		return []arithmetic.Number{c[0].Each, c[1].Each}, true
	}
	switch p.Kind {
	case arithmetic.Expression:
		w, ok, _ := arithmetic.AddEndToEnd(p)
		var list []arithmetic.Number
		for _, move := range w.Moves {
			if m, is := move.(arithmetic.LayStrips); is {
				list = append(list, m.Number)
			}
		}
		return list, ok
	case arithmetic.Ordering:
		return p.List, len(p.List) > 1
	case arithmetic.Product:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok && a.Form == arithmetic.Whole && b.Form == arithmetic.Common
	case arithmetic.Division:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok && p.Story == arithmetic.NoStory && (isFraction(b) || b.Form == arithmetic.Whole && (isFraction(a) || sharesWholes(p, a)))
	case arithmetic.Claim, arithmetic.Comparison, arithmetic.Addition, arithmetic.Subtraction:
		a, b, ok := p.Operands()
		return []arithmetic.Number{a, b}, ok
	case arithmetic.Show, arithmetic.MixedForm, arithmetic.FractionForm, arithmetic.SimplestForm, arithmetic.Renaming, arithmetic.AsSum:
		n, ok := p.Left.(arithmetic.Number)
		return []arithmetic.Number{n}, ok
	}
	return nil, false
}

// sharesWholes reports whether wholes are shared with what is left over cut up too.
func sharesWholes(p arithmetic.Problem, n arithmetic.Number) bool {
	return n.Form == arithmetic.Whole && p.Rest == arithmetic.AsPart && !p.Grouping
}

func isFraction(n arithmetic.Number) bool {
	return n.Form == arithmetic.Common || n.Form == arithmetic.Mixed
}

func work(p arithmetic.Problem) (arithmetic.Working, error) {
	if _, ok := arithmetic.OneSum(p); ok {
		return arithmetic.CompareSumByCutting(p)
	}
	if _, ok := arithmetic.CopiesClaim(p); ok {
		return arithmetic.CompareCopies(p)
	}
	if w, ok, err := arithmetic.AddEndToEnd(p); ok {
		return w, err
	}
	switch p.Kind {
	case arithmetic.Show:
		return arithmetic.ShowByCutting(p)
	case arithmetic.Claim, arithmetic.Comparison:
		return arithmetic.CompareByCutting(p)
	case arithmetic.Product:
		return arithmetic.CopiesByJoining(p)
	case arithmetic.Division:
		if _, b, _ := p.Operands(); isFraction(b) {
			return arithmetic.MeasureByCutting(p)
		}
		return arithmetic.ShareByCutting(p)
	case arithmetic.AsSum:
		return arithmetic.TakeApart(p)
	case arithmetic.Ordering:
		return arithmetic.OrderByCutting(p)
	case arithmetic.Addition:
		return arithmetic.AddByCutting(p)
	case arithmetic.Subtraction:
		return arithmetic.SubtractByCutting(p)
	}
	return arithmetic.NameByCutting(p)
}
