package models

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// lineSketch is one number line with what stands on it. The label of every hop
// stands above, the label of every stop below.
//
//	      +200        +70     +8      one or two rows of labels
//	                           |      leaders where a label is not at its hop
//	    /      \     /   \    ^
//	---+--------+---+-----+--+-+-->   axis
//	   |        |         | /   \     leaders
//	  345      545      615  623      one or two rows of labels
type lineSketch struct {
	lineRuler
	mark, long int64 // as of the stretch; 0 when not to scale
	scale      arithmetic.Scale
	lengths    []lineLength
	bands      []lineBand
	cuts       []lineCut
	gaps       []lineGap
	hops       []lineHop
	stops      []lineStop
	flags      []lineFlag
	numbered   int64        // label every so many units where there is room; 0 for none
	hush       int64        // of numbered: not this one, which would give the answer away; -1 for none
	axisY      int          // once it is drawn
	placed     []*lineLabel // the numbers of the marks, in both rows next to the line
	stroke     int          // the x of a stroke through one point of two numbers, 0 for none
	strokeStep int

	above, below []*lineLabel
}

// lineHop is a jump. A hop that is asked for has its number in the version with
// the answer, and a question mark in the other.
type lineHop struct {
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

// lineStop is a place with a name, and a point when dot is set.
type lineStop struct {
	at          int64
	label       []scene.Run
	role        scene.Role
	of          scene.Of
	worth       fraction.Fraction
	dot         bool
	asked       bool // its name is the answer
	size        int  // of its name; 0 goes by whether it has a point
	side        int  // -1 when its name stands above the line
	turn        int  // in this step the name takes another role; 0 for never
	turned      scene.Role
	later       []scene.Run // what the name says from that step on, while the answer is shown; nil for the same
	posed       int         // a question mark stands here up to this step, in both versions
	when        scene.When
	step, until int
}

// lineGap is what one side lacks to reach where the other ends.
type lineGap struct {
	from, to int64
	size     arithmetic.Number
	side     int // where the band of the shorter one is: -1 above the line, 1 below, 0 on it
	step     int
}

// lineFlag is a word above a place.
type lineFlag struct {
	at   int64
	name string
	step int
}

// lineLength is a length from 0, as a band on the line.
type lineLength struct {
	to    int64
	role  scene.Role
	of    scene.Of
	worth fraction.Fraction
	step  int
}

// arrange makes the labels and finds their places. ok is false when they do not
// fit.
func (k *lineSketch) arrange() bool {
	var together []*lineLabel
	for _, h := range k.hops {
		if h.label == nil {
			continue
		}
		l := &lineLabel{x: (k.x(h.from) + k.x(h.to)) / 2, start: k.rise(h) + 4, runs: h.label, size: scene.Small,
			role: h.role, when: h.when, from: h.step, until: h.until}
		if h.tells {
			l.when = scene.ShownOnly
		}
		k.above = append(k.above, l)
		if h.alone {
			arrange([]*lineLabel{l})
			continue
		}
		together = append(together, l)
	}
	for _, f := range k.flags {
		l := &lineLabel{x: k.x(f.at), start: tickUp + 6, runs: []scene.Run{{Text: f.name}}, size: scene.Small, role: scene.Note, from: f.step}
		k.above, together = append(k.above, l), append(together, l)
	}
	for _, g := range k.gaps {
		start := tickUp + 4
		if len(k.bands) > 0 {
			start = k.reachUp() + 4
		}
		l := &lineLabel{x: (k.x(g.from) + k.x(g.to)) / 2, start: start, runs: runsOf("", g.size), size: scene.Small, role: scene.Result,
			when: scene.ShownOnly, from: g.step}
		k.above, together = append(k.above, l), append(together, l)
	}
	for _, s := range k.stops {
		if s.label == nil {
			continue
		}
		size, bold := scene.Small, false
		if s.dot || s.size > 0 {
			size, bold = scene.Middle, s.role == scene.Result
		}
		l := &lineLabel{x: k.x(s.at), start: k.reachDown() + 4, runs: s.label, size: size, bold: bold, asked: s.asked,
			posed: s.posed, turn: s.turn, turned: s.turned, later: s.later, role: s.role, when: s.when, from: s.step, until: s.until}
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
func (k *lineSketch) rise(h lineHop) int {
	w := k.x(h.to) - k.x(h.from)
	return min(max(w, -w, shortHop), tallHop)
}

// reachUp is how far the drawing goes up from the axis.
func (k *lineSketch) reachUp() int {
	top := tickUp
	for _, h := range k.hops {
		top = max(top, k.rise(h))
	}
	return max(top, k.bandsReach())
}

// bandsReach is how far the bands of a pair and their marks go to each side.
func (k *lineSketch) bandsReach() int {
	if len(k.bands) > 0 {
		return cutSide
	}
	return 0
}

// reachDown is how far it goes down.
func (k *lineSketch) reachDown() int { return max(tickDown, k.bandsReach()) }

// draw puts the whole line on a story with its content below height top, and
// returns where it ends.
func (k *lineSketch) draw(st *lineStory, top int) int {
	above, below := heights(k.above), heights(k.below)
	axis := top + k.reachUp()
	if len(k.above) > 0 {
		axis += above.total() + leaderUp
	}
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
	return axis + k.reachDown() + leaderLow + below.total()
}

func (k *lineSketch) drawHops(st *lineStory, axis int) {
	for _, h := range k.hops {
		st.add(h.step, h.until, scene.Item{
			Shape: scene.Hop{X1: k.x(h.from), X2: k.x(h.to), Y: axis, Rise: k.rise(h)},
			Role:  h.role, Of: h.of, Worth: h.worth, When: h.when, Finish: h.finish})
	}
}

func (k *lineSketch) drawStops(st *lineStory, axis int) {
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

// rowHeights are how far the labels of each row reach up and down.
type rowHeights [2]struct{ up, down int }

func heights(labels []*lineLabel) (h rowHeights) {
	for _, l := range labels {
		up, down, _ := l.reach()
		h[l.row].up, h[l.row].down = max(h[l.row].up, up), max(h[l.row].down, down)
	}
	return h
}

const rowGap = 10

func (h rowHeights) total() int {
	t := h[0].up + h[0].down
	if second := h[1].up + h[1].down; second > 0 {
		t += rowGap + second
	}
	return t
}

// drawLabels draws labels and their leaders: above the hops when down is -1, and
// below the marks when it is 1. Distances are measured from the axis.
func (k *lineSketch) drawLabels(st *lineStory, labels []*lineLabel, rows rowHeights, axis, down int) {
	edge := k.reachDown() + 4 // where leaders may begin to slant
	near := [2]int{k.reachDown() + leaderLow}
	if down < 0 {
		edge, near[0] = k.reachUp()+4, k.reachUp()+leaderUp
	}
	tall := rows[0].up + rows[0].down
	near[1] = near[0] + tall + rowGap
	for _, l := range labels {
		up, low, _ := l.reach()
		middle, end := near[l.row]+rows[l.row].up, near[l.row]+rows[l.row].up-up
		if down < 0 {
			middle, end = near[l.row]+rows[l.row].down, near[l.row]+rows[l.row].down-low
		}
		k.drawLabel(st, l, l.text(l.centre, axis+down*middle))
		if l.row == 0 && l.start >= edge-10 && abs(l.centre-l.x) <= 8 {
			continue // it stands right at what it names
		}
		at := func(x, distance int) scene.Point { return scene.Point{X: x, Y: axis + down*distance} }
		leader := scene.Polyline{at(l.x, l.start), at(l.x, edge)}
		if l.row == 1 {
			leader = append(leader, at(l.pass, near[0]), at(l.pass, near[0]+tall))
		}
		leader = append(leader, at(l.centre, near[l.row]), at(l.centre, end))
		st.add(l.from, l.until, scene.Item{Shape: leader, Role: scene.Guide, Finish: scene.Fine, When: l.when})
	}
}

// drawLabel draws a label; one that is asked for is a question mark in a dashed
// frame while the answer is hidden.
func (k *lineSketch) drawLabel(st *lineStory, l *lineLabel, t scene.Text) {
	name := scene.Item{Shape: t, Role: l.role, When: l.when}
	if l.asked {
		name.When = scene.ShownOnly
	}
	if l.turn > 0 {
		st.add(l.from, l.turn, name)
		if name.Role = l.turned; l.later != nil {
			plain := name
			plain.Role, plain.When = l.role, scene.HiddenOnly
			st.add(l.turn, l.until, plain)
			t.Runs, name.When = l.later, scene.ShownOnly
		} else {
			t.Bold = true
		}
		name.Shape = t
		st.add(l.turn, l.until, name)
	} else {
		st.add(l.from, l.until, name)
	}
	if !l.asked {
		return
	}
	from := l.from
	if l.posed > 0 {
		from = 0
		for _, it := range askedFor(t.X, t.Y) {
			it.When = scene.ShownOnly
			st.add(0, l.posed, it)
		}
	}
	st.add(from, l.until, askedFor(t.X, t.Y)...)
}

// askedFor is the dashed frame with a question mark that stands for what is not
// known yet.
func askedFor(x, y int) []scene.Item {
	mark := text(scene.Hidden, x, y, scene.Middle, "?")
	mark.When = scene.HiddenOnly
	return []scene.Item{
		{Shape: scene.Rect{X: x - askedSide/2, Y: y - askedSide/2, W: askedSide, H: askedSide, Round: 8},
			Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly},
		mark,
	}
}

// number labels the marks of the line at height y where no label stands in the
// way: every small mark where there is room, or every long one, or fewer.
func (k *lineSketch) number(st *lineStory, y int) {
	if k.numbered == 0 {
		return
	}
	every := k.numbered
	for _, wider := range []int64{2, 5, 10, 20, 50, 100} {
		if k.fits(every) {
			break
		}
		every = k.numbered * wider
	}
	if k.mark > 0 && k.fits(k.mark) {
		every = k.mark
	}
	for at := (k.lo + every - 1) / every * every; at <= k.hi; at += every {
		l := k.tickLabel(at)
		if x := k.x(at); k.free(k.below, l, x) {
			k.placed = append(k.placed, l)
			when := scene.Always
			if at == k.hush {
				when = scene.ShownOnly
			}
			st.add(0, 0, scene.Item{Shape: l.text(x, y), Role: scene.Note, When: when})
		}
	}
}

// numberCut labels the marks of a cutting that are not long marks too, below the
// line or, for one that stands above it, above.
func (k *lineSketch) numberCut(st *lineStory, c lineCut, below, above int) {
	y, labels := below, k.below
	if c.side < 0 {
		y, labels = above, k.above
	}
	if !c.named || c.side < 0 && len(k.above) == 0 || !k.fitsCut(c) {
		return
	}
	for at := (k.lo + c.every - 1) / c.every * c.every; at <= k.hi; at += c.every {
		l := &lineLabel{runs: runsOf("", c.move.Mark(at/c.every)), size: scene.Small}
		if x := k.x(at); at%k.long != 0 && k.free(labels, l, x) && (c.side < 0 || clear(k.placed, x, labelGap)) {
			st.add(c.step, 0, scene.Item{Shape: l.text(x, y), Role: scene.Note})
		}
	}
}

// fitsCut reports whether there is room for a label at every mark of a cutting.
func (k *lineSketch) fitsCut(c lineCut) bool {
	l := &lineLabel{runs: runsOf("", c.move.Mark(k.hi/c.every-1)), size: scene.Small}
	_, _, side := l.reach()
	return int64(k.width)*c.every/(k.hi-k.lo) >= int64(2*side+labelGap+4)
}

// free reports whether a label can stand at x in the first row.
func (k *lineSketch) free(labels []*lineLabel, l *lineLabel, x int) bool {
	_, _, side := l.reach()
	l.x, l.centre = x, x
	const edge = scene.Margin - 8 // the 0 of a line stands close to the margin
	return x-side >= edge && x+side <= scene.PaperW-edge && clear(labels, x, side)
}

func (k *lineSketch) tickLabel(at int64) *lineLabel {
	return &lineLabel{runs: runsOf("", k.scale.WriteShort(at)), size: scene.Small}
}

// fits reports whether every so many units there is room for a label.
func (k *lineSketch) fits(every int64) bool {
	if every >= k.hi-k.lo {
		return true
	}
	_, _, side := k.tickLabel(k.hi - k.hi%every).reach()
	_, _, inner := k.tickLabel(k.hi - k.hi%every - every).reach()
	return int64(k.width)*every/(k.hi-k.lo) >= int64(2*max(side, inner)+labelGap+4)
}

// clear reports whether a label of a half width can stand at x in the first row.
func clear(labels []*lineLabel, x, side int) bool {
	for _, other := range labels {
		_, _, room := other.reach()
		centre := other.centre
		if other.row == 1 {
			room, centre = leaderRoom, other.pass
		}
		if abs(centre-x) < side+room+labelGap/2 {
			return false
		}
	}
	return true
}

// runsOf is a number as a label, with a sign before it. A mixed number is set
// close.
func runsOf(sign string, n arithmetic.Number) []scene.Run {
	var runs []scene.Run
	for _, t := range numeral(n, scene.Ink) {
		runs = append(runs, scene.Run{Text: t.Text, Num: t.Num, Den: t.Den})
	}
	if sign != "" && runs[0].Den == "" {
		runs[0].Text = sign + runs[0].Text
	} else if sign != "" {
		runs = append([]scene.Run{{Text: sign}}, runs...)
	}
	return runs
}

func abs(n int) int { return max(n, -n) }
