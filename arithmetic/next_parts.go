package arithmetic

import "modeler/fraction"

// nextParts is [Next] for the problems about fractions in other forms, shapes and
// coins.
func nextParts(p Problem) (next Problem, ok bool) {
	next = p
	n, _ := p.Left.(Number)
	v := n.Value
	switch p.Kind {
	case ShapePart: // a part more, or one part finer
		if v.Num()+1 < v.Den() {
			next.Left = Frac(fraction.Must(v.Num()+1, v.Den()))
		} else {
			next.Left = Frac(fraction.Must(v.Den(), v.Den()+1))
		}
		return next, n.Form == Common
	case AsSum, EqualNames:
		next.Left = harder(n)
		return next, inParts(n) && v.Sign() > 0
	case Closer:
		m, _ := p.Right.(Number)
		next.Left, next.Right = harder(n), harder(m)
	case DecimalForm, PercentForm:
		if n.Form == Percent || n.Form == Decimal {
			next.Left = withUnits(n, v.Num()+1)
			break
		}
		// The next count of parts that is not a simpler fraction: 3/8 after 1/8.
		for num := v.Num() + 1; num < v.Num()+v.Den(); num++ {
			if fraction.GCD(num, v.Den()) == 1 {
				next.Left = Number{Value: fraction.Must(num, v.Den()), Form: n.Form}
				return next, num%v.Den() != 0
			}
		}
		return next, false
	case Coins:
		next.Left = withUnits(n, grow(v.Num()))
	case CoinsWorth:
		next.List = append(append([]Number{}, p.List...), p.List[len(p.List)-1])
	}
	return next, true
}
