package models

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
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

// bar is one row of wholes with pieces on it.
type bar struct {
	y, h  int
	cut   int64 // parts that the outline of a whole is cut in; 0 leaves it uncut
	first int64 // the first whole that is cut
	last  int64 // and the first that no longer is
	runs  []run
}

// shaded is the bar of one amount, its wholes cut where its parts lie.
func (s strip) shaded(y, h int, a arithmetic.Strips, role scene.Role, of scene.Of) bar {
	return bar{y: y, h: h, runs: s.runs(0, a, role, of)}.cutAs(a)
}

// cutAs cuts the wholes in which the parts of an amount lie, at least one where
// it has parts at all.
func (b bar) cutAs(a arithmetic.Strips) bar {
	b.cut, b.first = a.Part.Den(), a.Wholes
	b.last = a.Wholes + (a.Part.Num()+b.cut-1)/b.cut
	if a.Wholes == 0 {
		b.last = max(b.last, 1)
	}
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
		if b.cut > 1 && b.first <= k && k < b.last {
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

func (s strip) drawRun(sc *scene.Scene, b bar, r run, when scene.When) {
	each := s.each(r.den)
	item := scene.Item{Role: r.role, Of: r.of, When: when}
	if r.role == scene.Gone {
		item.Finish = scene.Dashed
	}
	if r.of != scene.OfNothing {
		item.Worth = fraction.Must(1, r.den)
	}
	for i := range r.count {
		item.Shape = scene.Rect{X: s.at(r.from + i*each), Y: b.y, W: s.unit * int(each), H: b.h}
		sc.Add(item)
	}
	if r.old == 0 {
		return
	}
	for u := r.from; u <= s.end(r); u += s.each(r.old) {
		sc.Add(scene.Item{Shape: scene.Line{X1: s.at(u), Y1: b.y, X2: s.at(u), Y2: b.y + b.h}, Role: r.role, Finish: scene.Bold, When: when})
	}
}

// drawCuts marks cuts that have just been made: they reach out of the bar.
func (s strip) drawCuts(sc *scene.Scene, b bar, r run, when scene.When) {
	const reach = 8
	for u := r.from + s.each(r.den); u < s.end(r); u += s.each(r.den) {
		if (u-r.from)%s.each(r.old) == 0 {
			continue
		}
		sc.Add(scene.Item{Shape: scene.Line{X1: s.at(u), Y1: b.y - reach, X2: s.at(u), Y2: b.y + b.h + reach}, Role: scene.Moved, When: when})
	}
}

// strike puts one stroke through the pieces of a run.
func (s strip) strike(sc *scene.Scene, b bar, r run, when scene.When) {
	const inset = 10
	if r.count == 0 {
		return
	}
	sc.Add(scene.Item{
		Shape: scene.Line{X1: s.at(r.from) + inset/2, Y1: b.y + b.h - inset, X2: s.at(s.end(r)) - inset/2, Y2: b.y + inset},
		Role:  scene.Gone, Finish: scene.Bold, When: when,
	})
}

// wholeMark says above the bars how long one whole is.
//
//	|<------- 1 whole ------->|
func (s strip) wholeMark(sc *scene.Scene) {
	const (
		y    = scene.Margin + 18 // middle of the words
		tick = 12                // half the height of the end marks
		gap  = 10                // between the words and the line
		wide = 170               // a whole this long has its own mark
	)
	for k := range s.wholes {
		x1, x2 := s.at(k*s.den), s.at((k+1)*s.den)
		if k > 0 && x2-x1 < wide {
			return
		}
		label := text(scene.Note, (x1+x2)/2, y, scene.Small, words.BarWhole)
		box := label.Shape.Box()
		sc.Add(label)
		sc.Draw(scene.Note, scene.Fine,
			scene.Line{X1: x1, Y1: y - tick, X2: x1, Y2: y + tick}, scene.Line{X1: x2, Y1: y - tick, X2: x2, Y2: y + tick},
			scene.Line{X1: x1, Y1: y, X2: box.X - gap, Y2: y}, scene.Line{X1: box.Right() + gap, Y1: y, X2: x2, Y2: y})
	}
}

// unsure draws what is asked: a dashed outline so many units long, inside the
// outline of the wholes, with a question mark in its first whole. It reports
// whether there was room for them.
func (s strip) unsure(sc *scene.Scene, y, h int, units int64) bool {
	const (
		inset = 7
		room  = 50
	)
	box := scene.Rect{X: s.left + inset, Y: y + inset, W: s.at(units) - s.left - 2*inset, H: h - 2*inset}
	if box.W < room {
		return false
	}
	ask := text(scene.Hidden, (s.left+s.at(min(units, s.den)))/2, y+h/2, scene.Middle, "?")
	ask.When = scene.HiddenOnly
	sc.Add(scene.Item{Shape: box, Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly}, ask)
	return true
}

// beside writes a number at the left of a bar.
func (s strip) beside(sc *scene.Scene, y int, role scene.Role, line notation.Line, when scene.When) {
	const gap = 16
	sc.Add(scene.Item{
		Shape: scene.Text{X: s.left - gap, Y: y, Anchor: scene.Right, Size: scene.Middle, Runs: line.Runs()},
		Role:  role, When: when,
	})
}

// besideRoom is the room that numbers beside bars need, the gap to the bar
// included.
func besideRoom(lines ...notation.Line) int {
	const gap = 16
	room := 0
	for _, line := range lines {
		room = max(room, scene.Text{Size: scene.Middle, Runs: line.Runs()}.Width()+gap)
	}
	return room
}

// mark is a brace over or under some units, with the number they make.
type mark struct {
	from, to int64
	line     notation.Line
	role     scene.Role
	when     scene.When
}

// braces draws marks along one side of a bar: up is above it. Labels stand in
// the middle of their braces unless they would touch; then they move apart.
func (s strip) braces(sc *scene.Scene, edge int, up bool, marks []mark) {
	const (
		gap   = 8  // from the bar to the brace
		depth = 10 // of the brace
		tall  = 44 // from the brace to the middle of the label
		inset = 4  // neighbouring braces do not touch
		apart = 14 // between labels
	)
	way := 1
	if up {
		way = -1
	}
	near, far := edge+way*gap, edge+way*(gap+depth)
	labels := make([]scene.Text, len(marks))
	left := scene.Margin
	for i, m := range marks {
		x1, x2 := s.at(m.from)+inset, s.at(m.to)-inset
		if m.to > m.from {
			sc.Add(scene.Item{Shape: scene.Polyline{{X: x1, Y: near}, {X: x1, Y: far}, {X: x2, Y: far}, {X: x2, Y: near}}, Role: m.role, When: m.when})
		}
		labels[i] = scene.Text{X: (s.at(m.from) + s.at(m.to)) / 2, Y: far + way*tall, Size: scene.Middle, Runs: m.line.Runs()}
		labels[i].X += max(0, left-labels[i].Box().X)
		left = labels[i].Box().Right() + apart
	}
	right := scene.PaperW - scene.Margin
	for i := len(marks) - 1; i >= 0; i-- {
		labels[i].X -= max(0, labels[i].Box().Right()-right)
		right = labels[i].Box().X - apart
		sc.Add(scene.Item{Shape: labels[i], Role: marks[i].role, When: marks[i].when})
	}
}

// stripsLine is strips as a line of terms: 3/4, 2, 1 3/4, 1 5/4.
func stripsLine(a arithmetic.Strips, role scene.Role) notation.Line {
	var line notation.Line
	if a.Wholes > 0 {
		line = append(line, notation.N(arithmetic.Grouped(a.Wholes), role))
	}
	if a.Part.Num() > 0 || a.Wholes == 0 {
		line = append(line, numeral(arithmetic.Frac(a.Part), role)...)
	}
	return line
}
