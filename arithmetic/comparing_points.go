package arithmetic

import "slices"

// compareEndsOf looks at two points of a line.
func compareEndsOf(s Scale, a, b Number) LookAtPoints {
	x, y := s.Count(a), s.Count(b)
	look := LookAtPoints{First: a, Second: b, Relation: Equal, Gap: FinalName(s.Write(max(x, y) - min(x, y)))}
	switch {
	case x < y:
		look.Relation = Less
	case x > y:
		look.Relation = Greater
	}
	// An equal amount needs no common parts to be seen.
	if as, bs := s.Write(x), s.Write(y); x != y && (as.String() != a.String() || bs.String() != b.String()) && s.Form != Money {
		look.FirstAs, look.SecondAs = as, bs
	}
	return look
}

// sortNumbers puts the least first, keeping equal ones as they came.
func sortNumbers(list []Number) {
	slices.SortStableFunc(list, func(a, b Number) int { return a.Value.Cmp(b.Value) })
}
