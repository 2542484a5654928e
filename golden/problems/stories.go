package problems

import "modeler/arithmetic"

// storied tells some of the problems of whole numbers as a comparison: how many
// more, or times as many. A quotient then comes out whole.
func (d *Dealer) storied(p arithmetic.Problem) arithmetic.Problem {
	a, b, _ := p.Operands()
	if d.IntN(4) > 0 || a.Form != arithmetic.Whole || b.Form != arithmetic.Whole || p.Rest != arithmetic.LeftOver {
		return p
	}
	switch n := value(p.Left); p.Kind {
	case arithmetic.Subtraction:
		p.Story = arithmetic.HowManyMore
	case arithmetic.Product:
		p.Story = arithmetic.TimesAsMany
	case arithmetic.Division:
		if n.IsInt() {
			p.Story = arithmetic.TimesAsMany
		}
	}
	return p
}
