package frames

import "modeler/arithmetic"

// mark is what is in a cell.
type mark uint8

const (
	free  mark = iota
	full       // a counter
	moved      // a counter that has just come
	left       // where a counter was that went to another frame
	taken      // where a counter was that was taken away
)

// cell is what is in a cell, and of which number it is.
type cell struct {
	mark
	nth int
}

// state is how the counters lie between two moves.
type state struct {
	cells  [arithmetic.MostShownFrames]cell
	paired bool // cells are filled column by column, in pairs
	double *arithmetic.SeeDouble
}

// settled is a state in which nothing is new any more. What was taken away in the
// move before is gone.
func (s state) settled() state {
	for i, c := range s.cells {
		switch c.mark {
		case moved:
			s.cells[i].mark = full
		case left, taken:
			s.cells[i] = cell{}
		}
	}
	return s
}

// put puts counters of a number in the cells from one on.
func (s *state) put(nth int, from, count int64) {
	for i := range count {
		s.cells[from+i] = cell{moved, nth}
	}
}

// mark marks cells from one on.
func (s *state) mark(m mark, from, count int64) {
	for i := range count {
		s.cells[from+i].mark = m
	}
}

// after is how the counters lie after a move; kept leaves the places marked where
// others went, for the whole story.
func (s state) after(m arithmetic.Move, kept bool) state {
	if !kept {
		s = s.settled()
	}
	switch m := m.(type) {
	case arithmetic.PutCounters:
		s.put(m.Nth, m.Cell, m.Count)
	case arithmetic.FillFrame:
		s.mark(left, m.From, m.Need)
		s.put(m.Nth, m.To, m.Need)
	case arithmetic.SeeDouble:
		s.double = &m
		if m.Extra > 0 {
			s.mark(moved, m.Cell, m.Extra)
		}
	case arithmetic.TakeCounters:
		s.mark(taken, m.Left, m.Count)
	case arithmetic.PairUp:
		s.paired = true
		s.mark(moved, 0, m.Total)
	}
	return s
}

// frames is how many frames a lesson needs.
func frames(moves []arithmetic.Move) int {
	last := int64(0)
	for _, m := range moves {
		if m, ok := m.(arithmetic.PutCounters); ok {
			last = max(last, m.Cell+m.Count-1)
		}
	}
	return int(last/arithmetic.TenFrame) + 1
}
