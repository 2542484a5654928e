package arithmetic

// MarkGap marks what one bar is longer than the other, where that is asked.
type MarkGap struct{ First, Second, Gap Amount }

// FindGap finds how much longer the one bar is, and what stands between the two.
type FindGap struct {
	First, Second, Gap Amount
	Relation           Relation
}

func (MarkGap) move() {}
func (FindGap) move() {}

// CompareBars works a Comparison of two whole numbers, or a Subtraction that asks
// how many more, as two bars from one left edge (CCSS 2.OA.A.1, glossary table 1,
// compare, difference unknown). Its errors are [ErrNotWhole] and, of a
// Subtraction, [ErrNegative].
func CompareBars(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	if err != nil || p.Kind != Comparison && (p.Kind != Subtraction || p.Story != HowManyMore) {
		return Working{}, ErrNotWhole
	}
	if p.Kind == Subtraction && a < b {
		return Working{}, ErrNegative
	}
	found := FindGap{Amount{a, 0}, Amount{b, 1}, Amount{max(a, b) - min(a, b), Asked}, relationOf(Int(a), Int(b))}
	w := Working{Problem: p, Moves: []Move{LayAmount{0, found.First}, LayAmount{1, found.Second}}}
	if p.Kind == Comparison {
		w.Moves = append(w.Moves, found)
		w.Answer, err = Judge(p)
		return w, err
	}
	w.Moves = append(w.Moves, MarkGap{found.First, found.Second, found.Gap}, found)
	w.Answer = whole(found.Gap.N)
	return w, nil
}
