package arithmetic

// FindPair finds an array of the number that is as wide as it is high or wider.
// Failed are the numbers of rows that were tried since the pair before and left
// some over.
type FindPair struct {
	Rows, Cols int64
	Failed     []int64
}

// TurnPairs ends the search: from Rows rows on, every array is one found before,
// turned. Failed are the rows tried in vain since the last pair.
type TurnPairs struct {
	Rows   int64
	Failed []int64
}

func (FindPair) move()  {}
func (TurnPairs) move() {}

// FactorPairs finds all arrays of a whole number from 1 up, trying 1 row, 2 rows
// and so on until the arrays would be higher than wide (CCSS 4.OA.B.4).
func FactorPairs(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	if !ok || n < 1 {
		return Working{}, ErrNotWhole
	}
	if n > largestFactored {
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p}
	var failed []int64
	rows := int64(1)
	for ; rows*rows <= n; rows++ {
		if n%rows != 0 {
			failed = append(failed, rows)
			continue
		}
		w.Moves = append(w.Moves, FindPair{rows, n / rows, failed})
		w.Answer.Pairs = append(w.Answer.Pairs, [2]int64{rows, n / rows})
		failed = nil
	}
	w.Moves = append(w.Moves, TurnPairs{rows, failed})
	for i := len(w.Answer.Pairs) - 1; i >= 0; i-- {
		if pair := w.Answer.Pairs[i]; pair[0] != pair[1] {
			w.Answer.Pairs = append(w.Answer.Pairs, [2]int64{pair[1], pair[0]})
		}
	}
	return w, nil
}

// largestFactored bounds the work and the length of the trace.
const largestFactored = 1_000_000
