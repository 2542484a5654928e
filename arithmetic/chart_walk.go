package arithmetic

import "slices"

// OnChart is the last number of a hundred chart: ten rows of ten, from 1. The
// number 0 has its place before 1, at the end of a row of its own.
const OnChart = 100

// rowOfChart is how many numbers stand in a row.
const rowOfChart = 10

// FindOnChart puts a finger on a number, from where so many tens and ones are to be
// walked.
type FindOnChart struct {
	At, Tens, Ones int64
	Back           bool
}

// WalkChart goes from a number to another in steps of 10, from row to row, or of 1,
// along a row: By in all. Stops are the numbers stepped on, the last one is To.
type WalkChart struct {
	From, By, To, Step int64
	Back               bool
	Stops              []int64
}

// EdgeOf is the pair of numbers between which a walk along a row goes over to the
// next row, or back to the one before; ok is false when it stays in its row.
func (m WalkChart) EdgeOf() (from, to int64, ok bool) {
	at := m.From
	for _, stop := range m.Stops {
		if m.Step == 1 && min(at, stop)%rowOfChart == 0 {
			return at, stop, true
		}
		at = stop
	}
	return 0, 0, false
}

func (FindOnChart) move() {}
func (WalkChart) move()   {}

// WalkOnChart works an Addition or Subtraction of whole numbers on a hundred chart:
// the tens first, a row for each, and then the ones (CCSS 1.NBT.C.4, 1.NBT.C.5,
// 2.NBT.B.5). Its errors are [ErrNotWhole], [ErrNegative], [ErrOverflow] for what is
// not on the chart, and [ErrNothing] where no step is to be made.
func WalkOnChart(p Problem) (Working, error) {
	o, ok := p.Left.(Operation)
	a, okA := wholeNumber(o.Left)
	b, okB := wholeNumber(o.Right)
	if !ok || !okA || !okB || p.Kind != Addition && p.Kind != Subtraction {
		return Working{}, ErrNotWhole
	}
	back := p.Kind == Subtraction
	switch {
	case a > OnChart || b > OnChart || !back && a+b > OnChart:
		return Working{}, ErrOverflow
	case back && b > a:
		return Working{}, ErrNegative
	case b == 0:
		return Working{}, ErrNothing
	}
	w := Working{Problem: p, Moves: []Move{FindOnChart{a, b / rowOfChart, b % rowOfChart, back}}}
	at := a
	for _, leg := range [2][2]int64{{rowOfChart, b / rowOfChart}, {1, b % rowOfChart}} {
		if leg[1] > 0 {
			walk := walkFrom(at, leg[0], leg[1], back)
			w.Moves = append(w.Moves, walk)
			at = walk.To
		}
	}
	return w.ends(Int(at)), nil
}

func walkFrom(at, step, count int64, back bool) WalkChart {
	m := WalkChart{From: at, By: step * count, Step: step, Back: back}
	for range count {
		if back {
			at -= step
		} else {
			at += step
		}
		m.Stops = append(m.Stops, at)
	}
	m.To = at
	return m
}

// SeeEnds is a pattern on the chart: the last digits that come again and again,
// the least first. Column is one where they all stand in one column.
type SeeEnds struct {
	HopRow
	Ends []int64
}

func (SeeEnds) move() {}

// fewEnds is how many last digits make a pattern that is seen at once, of at least
// so many numbers.
const fewEnds, leastSeen = 5, 4

// CountOnChart is [HopEqually] for Counting and Multiples on the hundred chart, and
// at the end the pattern there is. Its error is [ErrOverflow] for what is not on the
// chart.
func CountOnChart(p Problem) (Working, HopRow, error) {
	if p.Kind != Counting && p.Kind != Multiples {
		return Working{}, HopRow{}, errNotOnLine
	}
	w, row, err := HopEqually(p)
	if err != nil {
		return w, row, err
	}
	var ends []int64
	for _, n := range w.Answer.List {
		if n > OnChart {
			return w, row, ErrOverflow
		}
		ends = append(ends, n%rowOfChart)
	}
	slices.Sort(ends)
	ends = slices.Compact(ends)
	if len(ends) <= fewEnds && len(ends) < len(w.Answer.List) && len(w.Answer.List) >= leastSeen {
		w.Moves = append(w.Moves, SeeEnds{row, ends})
	}
	return w, row, nil
}
