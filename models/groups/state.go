package groups

import (
	"modeler/arithmetic"
)

// state is what lies where between two moves.
type state struct {
	rings  int   // that are drawn
	in     []int // counters in each of them
	pieces int   // parts of counters in each of them
	parts  int   // equal parts that a counter is cut in; 0 is none
	waits  int   // whole counters on the tray
	cut    int   // counters on the tray that are cut
	taken  int   // of the rings
	free   []int // places that stay free in each ring; nil is none
}

// start is how things lie before anything is moved.
func start(set arithmetic.SetGroups, rings int) state {
	s := state{in: make([]int, rings), waits: int(set.Total)}
	if set.Story != arithmetic.Measuring {
		s.rings = int(set.Groups)
	}
	return s
}

// after is how things lie after a move.
func (s state) after(m arithmetic.Move) state {
	s.in = append([]int{}, s.in...)
	switch m := m.(type) {
	case arithmetic.MakeGroups:
		for i := m.Before; i < m.Groups; i++ {
			s.in[i] = int(m.Each)
		}
		s.rings, s.waits = max(s.rings, int(m.Groups)), int(m.Left)
	case arithmetic.DealRounds:
		for i := range s.in {
			s.in[i] = int(m.Each)
		}
		s.waits = int(m.Left)
	case arithmetic.SplitRest:
		s.waits, s.cut, s.parts = 0, int(m.Left), int(m.Parts)
	case arithmetic.DealParts:
		s.cut, s.pieces = 0, int(m.Pieces)
	case arithmetic.PartGroup:
		s.free = make([]int, len(s.in))
		s.in[s.rings], s.free[s.rings] = int(m.Left), int(m.Empty)
		s.rings, s.waits = s.rings+1, 0
	case arithmetic.RoundUp:
		s.free, s.waits = make([]int, len(s.in)), 0
		if m.Story == arithmetic.Measuring {
			s.in[s.rings], s.free[s.rings] = int(m.Left), int(m.Empty)
			s.rings++
			break
		}
		for i := range s.in {
			if i < int(m.Left) {
				s.in[i]++
			} else {
				s.free[i] = 1
			}
		}
	case arithmetic.TakeGroups:
		s.taken = int(m.Groups)
	}
	return s
}

// needOf is what a working has to have room for.
func needOf(w arithmetic.Working) need {
	set := w.Moves[0].(arithmetic.SetGroups)
	n := need{rings: int(set.Groups), each: int(set.Each), total: int(set.Total), tray: set.Story != arithmetic.Making}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.MakeGroups:
			n.rings, n.tags = max(n.rings, int(m.Groups)), true
		case arithmetic.DealRounds:
			n.each = int(m.Each)
		case arithmetic.SplitRest:
			n.least, n.most = leastCut, largestCut
			if m.Parts <= 4 {
				n.least = leastInFour
			}
		case arithmetic.DealParts:
			n.each++
		case arithmetic.PartGroup:
			n.rings++
		case arithmetic.RoundUp:
			if m.Story == arithmetic.Measuring {
				n.rings++
			} else {
				n.each++
			}
		case arithmetic.ReadPairs:
			n.pairs, n.tags = true, false
		}
	}
	n.rings = max(n.rings, 1) // one that is asked for
	if n.each == 0 {
		n.each = 2 // an empty ring is as large as a small one
	}
	return n
}

// The sizes of the smallest counters that are cut, in many parts and in up to four.
const leastCut, leastInFour = 30, 24
