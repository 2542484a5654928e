package arithmetic

// MaxTerms is how many numbers a run, or a list of multiples, has at most. The
// numbers of a run go up to [MaxPlaced].
const MaxTerms = 24

// checkAsked is [Check] for the problems that ask something of a number or of a
// row of numbers.
func checkAsked(p Problem) error {
	switch p.Kind {
	case Counting:
		return p.Run.check()
	case DecimalForm, PercentForm:
		n, _ := p.Left.(Number)
		_, err := DecimalOf(n)
		return err
	case RuleTable:
		for _, n := range p.List {
			if err := check(Operation{p.Run.Op, n, Int(p.Run.By)}); err != nil {
				return err
			}
		}
	case Multiples, Primality:
		return positive(p.Left)
	case CommonMultiples, CommonFactors:
		if err := positive(p.Left); err != nil {
			return err
		}
		return positive(p.Right)
	case FactFamily:
		// A family of products has divisions in it.
		if o, ok := p.Left.(Operation); ok && o.Op == Multiply {
			if err := positive(o.Left); err != nil {
				return err
			}
			return positive(o.Right)
		}
	case Estimate:
		o, ok := p.Left.(Operation)
		if b, is := o.Right.(Number); ok && is && o.Op == Divide && 2*b.Value.Num() < p.To*b.Value.Den() {
			return ErrDivideByZero // the second number is rounded to 0
		}
	}
	return nil
}

// positive reports that a number is not at least 1 by [ErrDivideByZero]: nothing
// is a multiple of 0, and nothing can be divided by it.
func positive(e Expr) error {
	if n, ok := e.(Number); !ok || n.Value.Sign() <= 0 {
		return ErrDivideByZero
	}
	return nil
}

// check reports a run that leaves the numbers from 0 to [MaxPlaced], or is longer
// than [MaxTerms].
func (r Run) check() error {
	if r.Terms > MaxTerms || r.From > MaxPlaced || r.By > MaxPlaced {
		return ErrOverflow
	}
	list := r.List()
	switch {
	case len(list) < r.Terms && r.Op == Subtract:
		return ErrNegative
	case len(list) < r.Terms, len(list) > 0 && list[len(list)-1] > MaxPlaced:
		return ErrOverflow
	}
	return nil
}
