package arithmetic

import "modeler/fraction"

// nextAsked is [Next] for the problems that ask something of a number or of a row
// of numbers.
func nextAsked(p Problem) (next Problem, ok bool) {
	next = p
	if d, is := p.Left.(Number); is && d.Form == Decimal && (p.Kind == PlaceValue || p.Kind == ExpandedForm || p.Kind == InWords) {
		next.Left = withUnits(d, grow(d.Value.Num()))
		return next, true
	}
	n, _ := wholeNumber(p.Left)
	m, _ := wholeNumber(p.Right)
	switch p.Kind {
	case PlaceValue, ExpandedForm, InWords:
		next.Left = Int(grow(n))
	case Parity:
		next.Left = Int(n + 3) // from even to odd, and back
	case WaysToMake, Multiples:
		next.Left = Int(n + 1)
	case Primality:
		next.Left = Int(n + 2)
	case CommonMultiples:
		next.Right = Int(m + 1)
		if m+1 == n {
			next.Right = Int(m + 2)
		}
	case CommonFactors:
		next.Right = Int(m + fraction.GCD(n, m)) // the greatest factor stays or grows
	case Counting:
		next.Run.From++
		return next, next.Run.check() == nil
	case RuleTable:
		next.Run.By++
		next.List = nil
		for _, n := range p.List {
			switch v := n.Value.Num(); p.Run.Op {
			case Subtract:
				n = Int(v + 1)
			case Divide:
				n = Int(v / p.Run.By * next.Run.By)
			}
			next.List = append(next.List, n)
		}
	case Estimate, FactFamily:
		o, _ := p.Left.(Operation)
		a, okA := o.Left.(Number)
		b, okB := o.Right.(Number)
		if !okA || !okB {
			return p, false
		}
		a, b = harderPair(o.Op, a, b)
		next.Left = Operation{Op: o.Op, Left: a, Right: b}
	default:
		return p, false
	}
	return next, true
}

// asksOfNumbers reports whether a kind asks something of a number or of a row of
// numbers.
func (k Kind) asksOfNumbers() bool {
	switch k {
	case PlaceValue, ExpandedForm, InWords, Parity, Counting, RuleTable, Estimate, FactFamily, WaysToMake, Multiples, CommonMultiples, CommonFactors, Primality:
		return true
	}
	return false
}
