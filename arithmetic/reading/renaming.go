package reading

import "modeler/arithmetic"

// renaming is a number and a fraction with a blank in it. It can also be meant
// as a division with an unknown.
func (p *parser) renaming(left, right piece, rel arithmetic.Relation) (Reading, *fault) {
	first := left.expr == nil
	known, part := left, right
	if first {
		known, part = right, left
	}
	n, ok := known.expr.(arithmetic.Number)
	switch {
	case known.expr == nil:
		return Reading{}, twoUnknowns(p, right)
	case rel != arithmetic.Equal:
		return Reading{}, unknownInequality(p, left, right)
	case known.unknowns > 0:
		return Reading{}, twoUnknowns(p, known)
	case !ok:
		return Reading{}, blankInside(p, p.tokenAt(part.start))
	}
	b := p.tokenAt(part.start).part
	b.First = first
	r := p.renamed(n, b, append(known.spans, part.spans...))
	division := arithmetic.Operation{Op: arithmetic.Divide, Left: arithmetic.Unknown{}, Right: arithmetic.Unknown{}}
	if b.Num != 0 {
		division.Left = arithmetic.Int(b.Num)
	} else {
		division.Right = arithmetic.Int(b.Den)
	}
	if n.Form == arithmetic.Whole {
		also := arithmetic.Problem{Kind: arithmetic.Missing, Left: n, Rel: arithmetic.Equal, Right: division}
		if first {
			also.Left, also.Right = also.Right, also.Left
		}
		r.Also = append(r.Also, also)
	}
	return r, nil
}
