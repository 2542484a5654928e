package blocks

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// laid says how a row of pieces is drawn and whose they are. Pieces of no number
// are worth nothing, because worth is what a piece adds to its number.
type laid struct {
	role   scene.Role
	finish scene.Finish
	of     scene.Of
	framed bool // a line goes round each
}

var (
	ofFirst  = laid{role: scene.First, of: scene.OfFirst}
	ofSecond = laid{role: scene.Second, of: scene.OfSecond}
	ofAnswer = laid{role: scene.Result, of: scene.OfAnswer}
	ghost    = laid{role: scene.Gone, finish: scene.Dashed}
	newOne   = laid{role: scene.Moved, framed: true}  // what a trade has just brought belongs to neither number
	fromTen  = laid{role: scene.Result, framed: true} // nor does it later, until the answer is read
)

// moved is the same pieces in the step in which they arrive.
func (l laid) moved() laid { return laid{role: scene.Moved, of: l.of} }

// empty is what stays to be seen of pieces that have been traded: whose they were.
func (l laid) empty() laid { return laid{role: l.role, finish: scene.Dashed, of: l.of} }

// gone is the same pieces in the step in which they are taken away.
func (l laid) gone() laid { return laid{role: scene.Gone, finish: scene.Dashed, of: l.of} }

// lay draws the pieces of a place from slot from up to slot to.
func (m *mat) lay(s *scene.Scene, power, band int, from, to int64, as laid) {
	var rooms []scene.Box
	for i := from; i < to; i++ {
		rooms = append(rooms, m.slot(power, band, int(i)))
	}
	m.layMany(s, power, rooms, as)
}

// layMany draws pieces of one place, what is alike together: the sides of the
// cubes before their fronts.
func (m *mat) layMany(s *scene.Scene, power int, rooms []scene.Box, as laid) {
	if power < 3 {
		for _, room := range rooms {
			m.layIn(s, power, room, as)
		}
		return
	}
	sorted := [3]scene.Scene{}
	for _, room := range rooms {
		one := &scene.Scene{}
		m.layIn(one, power, room, as)
		for i, it := range one.Items {
			part := &sorted[min(i, len(sorted)-1)]
			part.Items = append(part.Items, it)
		}
	}
	for _, part := range sorted {
		s.Add(part.Items...)
	}
}

// layIn draws one piece in its room.
func (m *mat) layIn(s *scene.Scene, power int, room scene.Box, as laid) {
	if as.framed && power < 3 { // round a cube it would cut through the one beside it
		dx, _ := m.gaps(power)
		s.Draw(as.role, scene.Outline, roundRooms([]scene.Box{room}, min(dx/2, 5)))
	}
	it := scene.Item{Role: as.role, Finish: as.finish, Of: as.of}
	if as.of != scene.OfNothing {
		it.Worth = fraction.Whole(arithmetic.Power10(power))
	}
	m.piece(s, power, room, it)
}

// layAll draws all pieces of a number from the first slot on.
func (m *mat) layAll(s *scene.Scene, band int, counts arithmetic.Counts, as laid) {
	for power := m.top; power >= 0; power-- {
		m.lay(s, power, band, 0, counts[power], as)
	}
}

// piece draws one block in its room. The thousand is a cube: its front is the
// face of a hundred, its top is light and its side is dark.
//
//	  +-------+
//	 / top   /|
//	+-------+ |
//	|       |s|
//	| front |/
//	+-------+
func (m *mat) piece(s *scene.Scene, power int, room scene.Box, it scene.Item) {
	c := m.cell
	if power < 2 && it.Finish == scene.Dashed {
		it.Finish = scene.Fine // a dash would be as long as the side
	}
	switch power {
	case 0:
		it.Shape = scene.Grid{X: room.X, Y: room.Y, W: c, H: c, Cols: 1, Rows: 1}
	case 1:
		it.Shape = scene.Grid{X: room.X, Y: room.Y, W: c, H: 10 * c, Cols: 1, Rows: 10}
	case 2:
		it.Shape = scene.Grid{X: room.X, Y: room.Y, W: 10 * c, H: 10 * c, Cols: 10, Rows: 10}
	default:
		d, edge := m.depth(), 10*c
		x, y := room.X, room.Y+d
		front, back := scene.Point{X: x + edge, Y: y}, scene.Point{X: x + edge + d, Y: y - d}
		if it.Finish == scene.Dashed {
			s.Draw(it.Role, it.Finish, scene.Line{X1: front.X, Y1: front.Y, X2: back.X, Y2: back.Y}, scene.Polyline{
				{X: x, Y: y}, {X: x + d, Y: y - d}, back, {X: back.X, Y: back.Y + edge}, {X: x + edge, Y: y + edge}})
		} else {
			s.Draw(it.Role, it.Finish, scene.Polygon{{X: x, Y: y}, {X: x + d, Y: y - d}, back, front})
			s.Draw(it.Role, scene.Deep, scene.Polygon{front, back, {X: back.X, Y: back.Y + edge}, {X: x + edge, Y: y + edge}})
		}
		it.Shape = scene.Grid{X: x, Y: y, W: edge, H: edge, Cols: 10, Rows: 10}
	}
	s.Add(it)
}

// bandLabelGap is the room between the label of a band and the trays.
const bandLabelGap = 12

// base is the empty mat.
func (m *mat) base() *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, H: m.bottom() + tallyGap + scene.Small/2 + scene.Margin}
	m.spread(s)
	return s
}

// spread draws the trays with their names.
func (m *mat) spread(s *scene.Scene) {
	for power := m.top; power >= 0; power-- {
		tray := m.trays[power]
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: tray.X, Y: tray.Y, W: tray.W, H: tray.H, Round: 10})
		s.Add(telling.Text(scene.Note, tray.X+tray.W/2, m.up+scene.Margin+scene.Small/2+4, scene.Small, words.Place(power, 2)))
	}
}

// frame draws a heavy line round the tray of a place, its corners cut as the
// tray's are round.
func (m *mat) frame(s *scene.Scene, power int, role scene.Role) {
	const cut = 4
	tray := m.trays[power]
	l, t, r, b := tray.X, tray.Y, tray.Right(), tray.Bottom()
	s.Draw(role, scene.Bold, scene.Polygon{
		{X: l + cut, Y: t}, {X: r - cut, Y: t}, {X: r, Y: t + cut}, {X: r, Y: b - cut},
		{X: r - cut, Y: b}, {X: l + cut, Y: b}, {X: l, Y: b - cut}, {X: l, Y: t + cut},
	})
}

// name writes the numbers beside the bands in which they lie, and the sign
// between them, if there is one.
func (m *mat) name(s *scene.Scene, sign string, labels ...notation.Line) {
	for i, label := range labels {
		b := m.bands[i]
		s.Add(scene.Item{Shape: scene.Text{X: b.Right() - bandLabelGap, Y: m.labels[i], Anchor: scene.Right, Size: scene.Small, Runs: label.Runs()}})
		if i > 0 && sign != "" {
			s.Add(telling.Text(scene.Ink, b.X+(b.W-bandLabelGap)/2, b.Y-bandGap/2, scene.Small, sign))
		}
	}
}

// tally writes a line under the tray of a place.
func (m *mat) tally(s *scene.Scene, power int, line notation.Line) {
	m.tallyIn(s, power, 0, line)
}

// tallyIn writes a line in one of the rows under the tray of a place.
func (m *mat) tallyIn(s *scene.Scene, power, row int, line notation.Line) {
	tray := m.trays[power]
	s.Add(scene.Item{Shape: scene.Text{
		X: tray.X + tray.W/2, Y: m.bottom() + tallyGap + row*tallyRow, Size: scene.Small, Runs: line.Runs(),
	}})
}

// sum writes lines under the tray of a place as a sum in columns, with a rule
// before the last.
func (m *mat) sum(s *scene.Scene, power int, lines []notation.Line) {
	tray := m.trays[power]
	right := tray.X + tray.W/2 + scene.Small
	for row, line := range lines {
		y := m.bottom() + tallyGap + row*tallyRow
		s.Add(scene.Item{Shape: scene.Text{X: right, Y: y, Anchor: scene.Right, Size: scene.Small, Runs: line.Runs()}})
		if row == len(lines)-1 {
			s.Draw(scene.Ink, scene.Fine, scene.Line{X1: right - 3*scene.Small + 6, Y1: y - tallyRow/2, X2: right, Y2: y - tallyRow/2})
		}
	}
}

// tallied is how far down a number of lines under the trays reaches.
func (m *mat) tallied(lines int) int {
	return m.bottom() + tallyGap + (lines-1)*tallyRow + scene.Small/2
}
