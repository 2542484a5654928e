package arithmetic

// rowOfParts is the row of a product of a whole number and a fraction or decimal
// (CCSS 4.NF.B.4), or of a division by one (5.NF.B.7b), and its answer.
func rowOfParts(p Problem, o Operation) (row HopRow, w Working, err error) {
	a, okA := o.Left.(Number)
	b, okB := o.Right.(Number)
	switch {
	case !okA || !okB || a.Form == Percent || b.Form == Percent:
		return row, w, errNotOnLine
	case a.Value.Sign() <= 0 || b.Value.Sign() <= 0:
		return row, w, ErrNothing
	case p.Kind == Product:
		count, _ := wholeNumber(o.Left)
		s, err := CommonScale(b)
		if err != nil || count > MaxTerms || s.Count(b) > mostOnPan {
			return row, w, ErrOverflow
		}
		row = HopRow{By: s.Count(b), Count: count, Scale: s}
		return row, w.ends(row.Number(row.Land(count))), nil
	case b.Form == Whole || twoSorts(a, b):
		return row, w, errNotOnLine // that is sharing, or in two kinds of parts
	}
	s, err := CommonScale(a, b)
	if err != nil || s.Count(a) > mostOnPan || s.Count(b) > mostOnPan {
		return row, w, ErrOverflow
	}
	if b.Form == Common && b.Value.Den() != s.Parts {
		return row, w, errNotOnLine // the hops would have another name than in the problem
	}
	total, by := s.Count(a), s.Count(b)
	if total%by != 0 {
		return row, w, ErrUneven
	}
	if s.Form == Common && a.Form == Whole {
		s.Form = Mixed // 2 ÷ 1/3: the landings have whole numbers among them
	}
	return HopRow{By: by, Count: total / by, Scale: s}, w.ends(Int(total / by)), nil
}

// twoSorts reports whether a fraction and a decimal stand together.
func twoSorts(numbers ...Number) bool {
	var fractions, decimals bool
	for _, n := range numbers {
		fractions = fractions || n.Form == Common || n.Form == Mixed
		decimals = decimals || n.Form == Decimal || n.Form == Money
	}
	return fractions && decimals
}
