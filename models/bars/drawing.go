package bars

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// strip says where the lengths of one lesson lie. Every bar begins at the same
// left edge and every whole is the same length, a whole number of units: parts
// so small that all the parts of the lesson are made of them.
//
//	left
//	 |<----- den units ----->|
//	 +-----+-----+-----+-----+-----+-----+-----+-----+
//	 |     |     |     |     |     |     |     |     |   wholes = 2
//	 +-----+-----+-----+-----+-----+-----+-----+-----+
type strip struct {
	left, unit  int // on the paper
	den, wholes int64
}

// layStrip makes the wholes as long as the paper allows beside room for labels
// at the left, in the middle of what is left over.
func layStrip(den, wholes int64, room int) strip {
	const paper = scene.PaperW - 2*scene.Margin
	s := strip{den: den, wholes: wholes, unit: (paper - room) / int(den*wholes)}
	s.left = scene.Margin + room + (paper-room-s.length())/2
	return s
}

func (s strip) length() int          { return s.unit * int(s.den*s.wholes) }
func (s strip) at(units int64) int   { return s.left + s.unit*int(units) }
func (s strip) right() int           { return s.left + s.length() }
func (s strip) each(den int64) int64 { return s.den / den } // units of one part

// units is how many units an amount is long. Its parts are made of units.
func (s strip) units(f fraction.Fraction) int64 { return f.Num() * s.each(f.Den()) }

// long is how many units strips are long, end to end.
func (s strip) long(a arithmetic.Strips) int64 { return a.Wholes*s.den + s.units(a.Part) }

// run is some equal parts side by side.
type run struct {
	from, count int64 // the unit where it begins, and how many parts
	den         int64 // parts to a whole
	old         int64 // parts to a whole before they were cut finer: their ends stay heavy; 0 for none
	fresh       bool  // they have just been cut
	role        scene.Role
	of          scene.Of
}

func (s strip) end(r run) int64 { return r.from + r.count*s.each(r.den) }

// runs are the pieces of an amount from a unit on: whole strips, then parts.
func (s strip) runs(from int64, a arithmetic.Strips, role scene.Role, of scene.Of) []run {
	wholes := run{from: from, count: a.Wholes, den: 1, role: role, of: of}
	parts := run{from: s.end(wholes), count: a.Part.Num(), den: a.Part.Den(), role: role, of: of}
	return []run{wholes, parts}
}

// cutFiner marks the parts of runs as cut from old to a whole.
func cutFiner(runs []run, old int64, fresh bool) []run {
	for i := range runs {
		if old > 0 && runs[i].den > 1 && old != runs[i].den {
			runs[i].old, runs[i].fresh = old, fresh
		}
	}
	return runs
}

// opened marks the parts of whole strips that have just been cut: the first of
// the loose parts.
func (s strip) opened(runs []run, wholes int64) []run {
	cut, rest := runs[1], runs[1]
	cut.count, cut.role = wholes*rest.den, scene.Moved
	rest.from, rest.count = s.end(cut), rest.count-cut.count
	return []run{runs[0], cut, rest}
}

// filled marks whole strips that have just been filled: the last of them.
func (s strip) filled(runs []run, wholes int64) []run {
	old, made := runs[0], runs[0]
	old.count -= wholes
	made.from, made.count, made.role = s.end(old), wholes, scene.Moved
	return []run{old, made, runs[1]}
}

// bar is one row of wholes with pieces on it.
type bar struct {
	y, h int
	cut  int64  // parts that the outline of a whole is cut in; 0 leaves it uncut
	open []bool // which wholes are cut
	runs []run
}

// shaded is the bar of one amount, its wholes cut where its parts lie.
func (s strip) shaded(y, h int, a arithmetic.Strips, role scene.Role, of scene.Of) bar {
	b := bar{y: y, h: h, runs: s.runs(0, a, role, of)}
	return s.cutAs(b, a.Part.Den())
}

// cutAs cuts the wholes of a bar in which parts lie, in den parts each. Of a bar
// without pieces the first whole is cut.
func (s strip) cutAs(b bar, den int64) bar {
	b.cut, b.open = den, make([]bool, s.wholes)
	empty := true
	for _, r := range b.runs {
		if r.count == 0 {
			continue
		}
		empty = false
		for k := r.from / s.den; r.den > 1 && k*s.den < s.end(r); k++ {
			b.open[k] = true
		}
	}
	b.open[0] = b.open[0] || empty
	return b
}

// draw paints a bar: the empty wholes, the shaded parts, the old cuts over the
// new ones, and the outline of every whole.
func (s strip) draw(sc *scene.Scene, b bar, when scene.When) {
	add := func(role scene.Role, finish scene.Finish, shape scene.Shape) {
		sc.Add(scene.Item{Shape: shape, Role: role, Finish: finish, When: when})
	}
	for k := range s.wholes {
		g := scene.Grid{X: s.at(k * s.den), Y: b.y, W: s.unit * int(s.den), H: b.h, Cols: 1, Rows: 1}
		if b.cut > 1 && b.open[k] {
			g.Cols = int(b.cut)
		}
		add(scene.Guide, scene.Outline, g)
	}
	for _, r := range b.runs {
		s.drawRun(sc, b, r, when)
	}
	for k := range s.wholes {
		add(scene.Ink, scene.Bold, scene.Rect{X: s.at(k * s.den), Y: b.y, W: s.unit * int(s.den), H: b.h})
	}
	for _, r := range b.runs {
		if r.fresh {
			s.drawCuts(sc, b, r, when)
		}
	}
}

// thin is a part so narrow that the edges of pieces side by side would leave
// little colour between them.
const thin = 14

func (s strip) drawRun(sc *scene.Scene, b bar, r run, when scene.When) {
	item := scene.Item{Role: r.role, Of: r.of, When: when}
	if r.role == scene.Gone {
		item.Finish = scene.Dashed
	}
	each := s.each(r.den)
	if wide := s.unit * int(each); wide < thin && r.count > 1 {
		if r.of != scene.OfNothing {
			item.Worth = fraction.Must(r.count, r.den)
		}
		item.Shape = scene.Grid{X: s.at(r.from), Y: b.y, W: wide * int(r.count), H: b.h, Cols: int(r.count), Rows: 1}
		sc.Add(item)
	} else {
		if r.of != scene.OfNothing {
			item.Worth = fraction.Must(1, r.den)
		}
		for i := range r.count {
			item.Shape = scene.Rect{X: s.at(r.from + i*each), Y: b.y, W: wide, H: b.h}
			sc.Add(item)
		}
	}
	if r.old == 0 {
		return
	}
	for u := r.from; u <= s.end(r); u += s.each(r.old) {
		sc.Add(scene.Item{Shape: scene.Line{X1: s.at(u), Y1: b.y, X2: s.at(u), Y2: b.y + b.h}, Role: r.role, Finish: scene.Bold, When: when})
	}
}

// crowded is a part so narrow that strokes through the bar would crowd it.
const crowded = 32

// drawCuts marks cuts that have just been made: they reach out of the bar. Where
// there are many, a mark over the bar shows where each of them is.
func (s strip) drawCuts(sc *scene.Scene, b bar, r run, when scene.When) {
	const reach = 8
	bottom := b.y + b.h + reach
	if s.unit*int(s.each(r.den)) < crowded {
		bottom = b.y
	}
	for u := r.from + s.each(r.den); u < s.end(r); u += s.each(r.den) {
		if (u-r.from)%s.each(r.old) == 0 {
			continue
		}
		sc.Add(scene.Item{Shape: scene.Line{X1: s.at(u), Y1: b.y - reach, X2: s.at(u), Y2: bottom}, Role: scene.Moved, When: when})
	}
}

// strike puts one stroke through the pieces between two units.
func (s strip) strike(sc *scene.Scene, b bar, from, to int64, when scene.When) {
	const inset = 10
	if from == to {
		return
	}
	sc.Add(scene.Item{
		Shape: scene.Line{X1: s.at(from) + inset/2, Y1: b.y + b.h - inset, X2: s.at(to) - inset/2, Y2: b.y + inset},
		Role:  scene.Gone, Finish: scene.Bold, When: when,
	})
}
