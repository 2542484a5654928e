package arithmetic

import "modeler/fraction"

// HopRow is a row of equal hops along a line: from a number, so many hops of one
// size. From and By count units of the scale; that of whole numbers is the zero value.
type HopRow struct {
	From, By, Count int64
	Back            bool
	Line            int // 0, or 1 on the lower of two lines
	Scale           Scale
}

// Number is a count of units as a number.
func (r HopRow) Number(units int64) Number {
	if r.Scale.Parts <= 1 || units == 0 {
		return Int(units)
	}
	return r.Scale.Write(units)
}

// Step is the length of a hop as a number: 1/4, also where a landing has its wholes
// written apart.
func (r HopRow) Step() Number {
	if r.Scale.Form == Mixed {
		return Frac(fraction.Must(r.By, r.Scale.Parts))
	}
	return r.Number(r.By)
}

// Worth is the value of a count of units.
func (r HopRow) Worth(units int64) fraction.Fraction {
	return fraction.Must(units, max(1, r.Scale.Parts))
}

// Land is where the nth hop lands; the 0th is the start.
func (r HopRow) Land(nth int64) int64 {
	if r.Back {
		return r.From - nth*r.By
	}
	return r.From + nth*r.By
}

// StartRow puts the counter where a row begins. Total is the number that a division
// looks for, or 0.
type StartRow struct {
	HopRow
	Total int64
}

// HopOn makes the hops of a row from the First, counted from 1, to the Last.
type HopOn struct {
	HopRow
	First, Last int64
}

// StopShort is what is left over between the last landing and the total, of a row of
// whole numbers.
type StopShort struct{ At, Total, Rest int64 }

// CountHops counts the hops of a division.
type CountHops struct {
	HopRow
	Total, Rest int64
}

// StartBoth begins two rows on two lines from 0.
type StartBoth struct{ Rows [2]HopRow }

// Meet finds the numbers on which both rows land, in order.
type Meet struct {
	Rows [2]HopRow
	At   []int64
}

func (StartRow) move()  {}
func (HopOn) move()     {}
func (StopShort) move() {}
func (CountHops) move() {}
func (StartBoth) move() {}
func (Meet) move()      {}

// alone is how many hops of a row are told one by one; where there are more, the
// others follow in one move.
const alone = 3

// HopEqually works, by equal hops on a line, a Product (the first factor counts the
// hops, CCSS 3.OA.A.1, 4.NF.B.4), a Division in groups with its rest (3.OA.A.2,
// 4.OA.A.3), Counting forward or back, and Multiples (4.OA.B.4). The hops may be
// fractions or decimals; a division by one must come out even (5.NF.B.7b). Its errors
// are [ErrNothing] where there is no hop, [ErrUneven] where a fraction leaves a rest,
// and [ErrOverflow] for more than [MaxTerms].
func HopEqually(p Problem) (Working, HopRow, error) {
	row, w, err := rowOf(p)
	switch {
	case err != nil:
		return w, row, err
	case row.By == 0 || row.Count == 0:
		return w, row, ErrNothing
	case row.Count > MaxTerms || row.From > mostOnPan || row.By > mostOnPan:
		return w, row, ErrOverflow
	case row.Back && row.Land(row.Count) < 0:
		return w, row, ErrNegative
	}
	total := int64(0)
	if p.Kind == Division {
		total = row.Land(row.Count) + w.Answer.Remainder
	}
	w.Problem = p
	w.Moves = append(w.Moves, StartRow{row, total})
	w.Moves = append(w.Moves, hopOn(row)...)
	if rest := w.Answer.Remainder; rest > 0 {
		w.Moves = append(w.Moves, StopShort{row.Land(row.Count), total, rest})
	}
	if p.Kind == Division {
		w.Moves = append(w.Moves, CountHops{row, total, w.Answer.Remainder})
	}
	return w, row, nil
}

// hopOn tells the hops of a row: each, or the first two and then the others.
func hopOn(row HopRow) []Move {
	var moves []Move
	for nth := int64(1); nth <= row.Count; nth++ {
		if nth == alone && row.Count > alone {
			return append(moves, HopOn{row, nth, row.Count})
		}
		moves = append(moves, HopOn{row, nth, nth})
	}
	return moves
}

// rowOf is the row of a problem, and its answer.
func rowOf(p Problem) (row HopRow, w Working, err error) {
	switch p.Kind {
	case Counting:
		if p.Run.Op != Add && p.Run.Op != Subtract {
			return row, w, errNotOnLine
		}
		w.Answer.List = p.Run.List()
		row = HopRow{From: p.Run.From, By: p.Run.By, Count: int64(p.Run.Terms - 1), Back: p.Run.Op == Subtract}
		if p.Run.Parts > 1 {
			row.Scale = Scale{Parts: p.Run.Parts, Form: Mixed}
		}
		return row, w, nil
	case Multiples:
		n, ok := wholeNumber(p.Left)
		if !ok || n > mostOnPan || p.Run.Terms > MaxTerms {
			return row, w, errNotOnLine
		}
		row = HopRow{By: n, Count: int64(p.Run.Terms)}
		for nth := range row.Count {
			w.Answer.List = append(w.Answer.List, row.Land(nth+1))
		}
		return row, w, nil
	}
	o, ok := p.Left.(Operation)
	a, okA := wholeNumber(o.Left)
	b, okB := wholeNumber(o.Right)
	if ok && (p.Kind == Product && okA || p.Kind == Division) && !(okA && okB) {
		return rowOfParts(p, o)
	}
	switch {
	case !ok || !okA || !okB:
		return row, w, errNotOnLine
	case p.Kind == Product && o.Op == Multiply:
		if a > MaxTerms || b > mostOnPan {
			return row, w, ErrOverflow
		}
		return HopRow{By: b, Count: a}, w.ends(Int(a * b)), nil
	case p.Kind == Division && o.Op == Divide && p.Grouping && b > 0:
		w = w.ends(Int(a / b))
		w.Answer.Remainder = a % b
		return HopRow{By: b, Count: a / b}, w, nil
	}
	return row, w, errNotOnLine
}

// MeetOnLines works CommonMultiples by two rows of equal hops from 0, one above the
// other, as far as the third number on which both land, or only to the first where
// that takes more hops than most (CCSS 6.NS.B.4). The answer always has three.
func MeetOnLines(p Problem, most int64) (Working, error) {
	return meet(p, func(rows [2]HopRow, at []int64) []int64 {
		if at[2]/min(rows[0].By, rows[1].By) > most {
			return at[:1]
		}
		return at
	})
}

// MeetOnChart is [MeetOnLines] on a chart that ends with a number: as far as the
// last of the three that is on it. Its error is [ErrOverflow] where none is.
func MeetOnChart(p Problem, last int64) (Working, error) {
	return meet(p, func(_ [2]HopRow, at []int64) []int64 {
		for len(at) > 0 && at[len(at)-1] > last {
			at = at[:len(at)-1]
		}
		return at
	})
}

// meet works [CommonMultiples] by two rows from 0. shown chooses how many of the
// first three meetings are reached.
func meet(p Problem, shown func(rows [2]HopRow, at []int64) []int64) (Working, error) {
	a, okA := wholeNumber(p.Left)
	b, okB := wholeNumber(p.Right)
	if p.Kind != CommonMultiples || !okA || !okB || a == 0 || b == 0 {
		return Working{}, errNotOnLine
	}
	if a > mostOnPan || b > mostOnPan {
		return Working{}, ErrOverflow
	}
	rows := [2]HopRow{{By: a}, {By: b, Line: 1}}
	w := Working{Problem: p}
	// The rows go on in turns, whichever is behind, until they have met three times.
	for at := [2]int64{a, b}; len(w.Answer.List) < 3; {
		if at[0] == at[1] {
			w.Answer.List = append(w.Answer.List, at[0])
			at[0] += a
		}
		if at[0] < at[1] {
			at[0] += a
		} else if at[1] < at[0] {
			at[1] += b
		}
	}
	met := Meet{At: shown(rows, w.Answer.List)}
	if len(met.At) == 0 {
		return Working{}, ErrOverflow
	}
	last := met.At[len(met.At)-1]
	for i := range rows {
		rows[i].Count = last / rows[i].By
	}
	met.Rows = rows
	w.Moves = []Move{StartBoth{rows}, HopOn{rows[0], 1, rows[0].Count}, HopOn{rows[1], 1, rows[1].Count}, met}
	return w, nil
}
