package line

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// sketch is one number line with what stands on it. The label of every hop
// stands above, the label of every stop below.
//
//	      +200        +70     +8      one or two rows of labels
//	                           |      leaders where a label is not at its hop
//	    /      \     /   \    ^
//	---+--------+---+-----+--+-+-->   axis
//	   |        |         | /   \     leaders
//	  345      545      615  623      one or two rows of labels
type sketch struct {
	ruler
	mark, long int64 // as of the stretch; 0 when not to scale
	scale      arithmetic.Scale
	lengths    []length
	bands      []band
	cuts       []cut
	gaps       []gap
	hops       []hop
	stops      []stop
	numbered   int64    // label every so many units where there is room; 0 for none
	twoWays    bool     // hops back go below the line, hops forward above it
	hush       int64    // of numbered: not this one, which would give the answer away; -1 for none
	axisY      int      // once it is drawn
	placed     []*label // the numbers of the marks, in both rows next to the line
	stroke     int      // the x of a stroke through one point of two numbers, 0 for none
	strokeStep int

	above, below []*label
}

// hop is a jump. A hop that is asked for has its number in the version with
// the answer, and a question mark in the other.
type hop struct {
	from, to    int64
	label       []scene.Run
	role        scene.Role
	of          scene.Of
	worth       fraction.Fraction
	when        scene.When
	finish      scene.Finish
	alone       bool // it is never drawn together with other hops
	tells       bool // its size happens to be the answer: no label while that is hidden
	step, until int
}

// stop is a place with a name, and a point when dot is set.
type stop struct {
	at          int64
	label       []scene.Run
	role        scene.Role
	of          scene.Of
	worth       fraction.Fraction
	dot         bool
	asked       bool // its name is the answer
	bold        bool // its name stands out
	size        int  // of its name; 0 goes by whether it has a point
	side        int  // -1 when its name stands above the line
	row         int  // nearRow or farRow, where its name must stand there
	turn        int  // in this step the name takes another role; 0 for never
	turned      scene.Role
	also        []name      // other names of the place
	before      []scene.Run // the number of the mark here, up to the step
	posed       int         // a question mark stands here up to this step, in both versions
	when        scene.When
	step, until int
}

// gap is what one side lacks to reach where the other ends.
type gap struct {
	from, to int64
	size     arithmetic.Number
	side     int // where the band of the shorter one is: -1 above the line, 1 below, 0 on it
	step     int
	words    string // beside its size; "" is "more"
	role     scene.Role
	of       scene.Of
	worth    fraction.Fraction
	covered  bool // something lies on the line there, so that only its brace is drawn
}

// length is a length from 0, as a band on the line.
type length struct {
	to    int64
	role  scene.Role
	of    scene.Of
	worth fraction.Fraction
	step  int
}

// arrange makes the labels and finds their places. ok is false when they do not
// fit.
func (k *sketch) arrange() bool {
	var together []*label
	for _, h := range k.hops {
		if h.label == nil {
			continue
		}
		l := &label{x: (k.x(h.from) + k.x(h.to)) / 2, start: k.rise(h) + 4, runs: h.label, size: scene.Small,
			role: h.role, when: h.when, from: h.step, until: h.until}
		if h.tells {
			l.when = scene.ShownOnly
		}
		if k.dips(h) {
			l.fixed = nearRow
			k.below = append(k.below, l)
			continue
		}
		k.above = append(k.above, l)
		if h.alone {
			arrange([]*label{l})
			continue
		}
		together = append(together, l)
	}
	for _, s := range k.stops {
		if s.label == nil {
			continue
		}
		size, bold := scene.Small, false
		if s.dot || s.size > 0 {
			size, bold = scene.Middle, s.role == scene.Result
		}
		l := &label{x: k.x(s.at), start: k.reachDown() + 4, runs: s.label, size: size, bold: bold || s.bold, asked: s.asked,
			posed: s.posed, turn: s.turn, turned: s.turned, also: s.also, before: s.before, above: s.side < 0, role: s.role, when: s.when, from: s.step, until: s.until}
		if s.row > 0 {
			l.fixed = s.row
		}
		if k.twoWays {
			l.start, l.fixed = tickDown+4, farRow
		}
		if s.side < 0 {
			l.start = k.reachUp() + 4
			k.above, together = append(k.above, l), append(together, l)
		} else {
			k.below = append(k.below, l)
		}
	}
	return arrange(together) && arrange(k.below)
}

const (
	tallHop   = 56 // the rise of a hop that is wide enough for its label
	shortHop  = 24 // the rise of the narrowest
	leaderUp  = 16 // between the hops and their labels
	tickUp    = 10
	tickDown  = 10
	leaderLow = 20 // between the marks and their labels
	dotRadius = 8
)

// rise is how high a hop goes: all that are wider than high go equally high.
func (k *sketch) rise(h hop) int {
	w := k.x(h.to) - k.x(h.from)
	return min(max(w, -w, shortHop), tallHop)
}

// dips reports whether a hop goes below the line: a hop back, where others go
// forward over the same stretch.
func (k *sketch) dips(h hop) bool { return k.twoWays && h.to < h.from }

// reachUp is how far the drawing goes up from the axis.
func (k *sketch) reachUp() int {
	top := tickUp
	for _, h := range k.hops {
		if !k.dips(h) {
			top = max(top, k.rise(h))
		}
	}
	return max(top, k.bandsReach())
}

// bandsReach is how far the bands of a pair and their marks go to each side.
func (k *sketch) bandsReach() int {
	if len(k.bands) > 0 {
		return cutSide
	}
	return 0
}

// reachDown is how far it goes down.
func (k *sketch) reachDown() int {
	low := tickDown
	for _, h := range k.hops {
		if k.dips(h) {
			low = max(low, k.rise(h))
		}
	}
	return max(low, k.bandsReach())
}

// draw puts the whole line on a story with its content below height top, and
// returns where it ends.
func (k *sketch) draw(st *story, top int) int {
	above, below := heights(k.above), heights(k.below)
	axis := top + k.reachUp()
	if len(k.above) > 0 {
		axis += above.total() + leaderUp
	}
	up, down := k.braceRooms()
	axis += up
	k.axisY = axis
	st.add(0, 0, k.axis(axis)...)
	for _, l := range k.lengths {
		st.add(l.step, 0, scene.Item{Shape: scene.Rect{X: k.x(0), Y: axis - 7, W: k.x(l.to) - k.x(0), H: 14},
			Role: l.role, Of: l.of, Worth: l.worth})
	}
	for _, b := range k.bands {
		k.drawBand(st, b, axis)
	}
	for _, g := range k.gaps {
		k.drawGap(st, g, axis)
	}
	if k.mark > 0 {
		st.add(0, 0, k.comb(k.mark, axis, tickUp-3, tickDown-3)...)
	}
	if k.long > 0 {
		st.add(0, 0, k.comb(k.long, axis, max(tickUp+4, k.bandsReach()), max(tickDown+4, k.bandsReach()))...)
	}
	for _, c := range k.cuts {
		k.drawCut(st, c, axis)
	}
	if k.stroke > 0 {
		st.add(k.strokeStep, 0, scene.Item{Shape: scene.Line{X1: k.stroke, Y1: axis - k.reachUp(), X2: k.stroke, Y2: axis + k.reachDown()},
			Role: scene.Result, Finish: scene.Bold, When: scene.ShownOnly})
	}
	k.drawHops(st, axis)
	k.drawStops(st, axis)
	k.drawLabels(st, k.above, above, axis, -1)
	k.number(st, axis+k.reachDown()+leaderLow+below[0].up)
	for _, c := range k.cuts {
		k.numberCut(st, c, axis+k.reachDown()+leaderLow+below[0].up, axis-k.reachUp()-leaderUp-above[0].down)
	}
	k.drawLabels(st, k.below, below, axis, 1)
	bottom := axis + k.reachDown() + leaderLow + below.total()
	for _, g := range k.gaps {
		if g.side < 0 {
			k.drawBrace(st, g, top+up, -1)
		} else {
			k.drawBrace(st, g, bottom, 1)
		}
	}
	return bottom + down
}

func (k *sketch) drawHops(st *story, axis int) {
	for _, h := range k.hops {
		rise := k.rise(h)
		if k.dips(h) {
			rise = -rise
		}
		st.add(h.step, h.until, scene.Item{
			Shape: scene.Hop{X1: k.x(h.from), X2: k.x(h.to), Y: axis, Rise: rise},
			Role:  h.role, Of: h.of, Worth: h.worth, When: h.when, Finish: h.finish})
	}
}

func (k *sketch) drawStops(st *story, axis int) {
	for _, s := range k.stops {
		x := k.x(s.at)
		if s.dot {
			st.add(s.step, s.until, scene.Item{Shape: scene.Circle{X: x, Y: axis, R: dotRadius}, Role: s.role,
				Of: s.of, Worth: s.worth, When: s.when, Finish: scene.Deep})
			continue
		}
		st.add(s.step, s.until, scene.Item{Shape: scene.Line{X1: x, Y1: axis - tickUp, X2: x, Y2: axis + tickDown}, When: s.when})
	}
}
