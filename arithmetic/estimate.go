package arithmetic

// RoundOne rounds one number of an estimate: Nth is 0 or 1.
type RoundOne struct {
	Nth       int
	From, To  Number
	Low, High Number // its neighbors; equal where it is round already
	Half      Number // halfway between them
	Away      Number // how far it is to the nearer one
	Halfway   bool   // it is halfway, and goes up by convention
	Stretch   Stretch
}

// CombineRounded works the estimate with both rounded numbers.
type CombineRounded struct{ Jump }

func (RoundOne) move() {}

// EstimateOnLine works an Estimate of a sum or a difference of whole numbers: each
// number is rounded on a line of its own ([RoundOnLine]), and then the rounded
// numbers are put together by one hop (CCSS 3.OA.D.8, 4.OA.A.3: rounding to see
// whether an answer is reasonable). The exact result is not worked.
func EstimateOnLine(p Problem) (Working, error) {
	o, ok := p.Left.(Operation)
	if p.Kind != Estimate || !ok || o.Op != Add && o.Op != Subtract {
		return Working{}, errNotOnLine
	}
	w := Working{Problem: p}
	var rounded [2]int64
	for nth, side := range []Expr{o.Left, o.Right} {
		if _, ok := wholeNumber(side); !ok {
			return w, errNotOnLine
		}
		m, err := roundOne(nth, side.(Number), p.To)
		if err != nil {
			return w, err
		}
		rounded[nth], _ = m.To.Int64()
		w.Moves = append(w.Moves, m)
	}
	to := rounded[0] + rounded[1]
	if o.Op == Subtract {
		to = rounded[0] - rounded[1]
	}
	if to < 0 {
		return w, ErrNegative
	}
	w.Moves = append(w.Moves, CombineRounded{Jump{From: Int(rounded[0]), By: Int(rounded[1]), To: Int(to), Back: o.Op == Subtract}})
	return w.ends(Int(to)), nil
}

func roundOne(nth int, n Number, to int64) (RoundOne, error) {
	w, t, err := RoundOnLine(Problem{Kind: Rounding, Left: n, To: to})
	m := RoundOne{Nth: nth, From: n, To: w.Answer.Number, Low: n, High: n, Half: n, Away: Int(0), Stretch: t}
	for _, move := range w.Moves {
		switch move := move.(type) {
		case Neighbors:
			m.Low, m.High = move.Low, move.High
		case FindHalfway:
			m.Half = move.At
		case GoNearer:
			m.Away, m.Halfway = move.Gap, move.Halfway
		}
	}
	return m, err
}
