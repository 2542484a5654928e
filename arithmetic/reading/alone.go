package reading

import "modeler/arithmetic"

// alone is an expression with nothing said about it.
func (p *parser) alone(c piece) (Reading, *fault) {
	if c.expr == nil || c.unknowns > 0 {
		return Reading{}, unknownAlone(p, c)
	}
	c = c.multiplied()
	r := Reading{Spans: c.spans}
	switch e := c.expr.(type) {
	case arithmetic.Number:
		r.Problem = arithmetic.Problem{Kind: arithmetic.Show, Left: e}
		if v := e.Value; e.Form == arithmetic.Common && v.Num() >= v.Den() {
			r.Also = append(r.Also, dividing(arithmetic.Int(v.Num()), arithmetic.Int(v.Den()), false))
		}
	case arithmetic.Operation:
		r.Problem, r.Also = operation(e, c)
	}
	return r, nil
}

var kinds = map[arithmetic.Op]arithmetic.Kind{
	arithmetic.Add: arithmetic.Addition, arithmetic.Subtract: arithmetic.Subtraction,
	arithmetic.Multiply: arithmetic.Product, arithmetic.Divide: arithmetic.Division, arithmetic.Of: arithmetic.PartOf,
}

// operation is the problem that an operation asks. A plain division sign between
// whole numbers is read as sharing, among the second number, and can also mean
// groups of the second number; nothing can be shared among part of a one, so
// dividing by a fraction, a decimal or money means groups.
func operation(o arithmetic.Operation, c piece) (arithmetic.Problem, []arithmetic.Problem) {
	a, okA := o.Left.(arithmetic.Number)
	b, okB := o.Right.(arithmetic.Number)
	if !okA || !okB {
		return arithmetic.Problem{Kind: arithmetic.Expression, Left: o}, nil
	}
	if o.Op != arithmetic.Divide {
		return arithmetic.Problem{Kind: kinds[o.Op], Left: o, Story: c.sign.story}, nil
	}
	grouped := c.sign.grouping || b.Form != arithmetic.Whole
	var also []arithmetic.Problem
	if arithmetic.IsPartOfOne(o) && !grouped && c.sign.story == arithmetic.NoStory { // CCSS 5.NF.B.3
		fraction, left := dividing(a, b, false), dividing(a, b, false)
		fraction.Rest = arithmetic.AsPart
		return fraction, append(also, left)
	}
	if !grouped && !c.sign.sharing && b.Value.Sign() > 0 && a.Value.Cmp(b.Value) >= 0 {
		also = append(also, dividing(a, b, true))
	}
	if c.signText == "/" && fits(a, b) {
		also = append(also, arithmetic.Problem{Kind: arithmetic.Show, Left: over(a, b)})
	}
	return dividing(a, b, grouped), also
}

func dividing(a, b arithmetic.Number, grouped bool) arithmetic.Problem {
	return arithmetic.Problem{Kind: arithmetic.Division, Grouping: grouped,
		Left: arithmetic.Operation{Op: arithmetic.Divide, Left: a, Right: b}}
}
