package groups

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
)

// hand draws the things of a lesson: counters that belong to one number of the
// problem.
type hand struct {
	table
	of     scene.Of
	plates bool
}

// draw draws how things lie now, and marks what is not as it was before.
func (h hand) draw(s *scene.Scene, before, now state) {
	for i := range now.rings {
		h.ring(s, i, i >= before.rings, i < now.taken)
	}
	for i := range now.rings {
		h.fill(s, i, before, now)
	}
	for k := range now.waits {
		h.counter(s, h.onTray(k), scene.Item{Role: scene.First, Finish: scene.Deep, Of: h.of})
	}
	for j := range now.cut {
		role := scene.First
		if before.cut == 0 {
			role = scene.Moved
		}
		for i := range now.parts {
			h.wedge(s, h.onTray(now.waits+j), i, now.parts, role)
		}
	}
	for k := now.waits + now.cut; k < before.waits+before.cut; k++ {
		at := h.onTray(k)
		s.Draw(scene.Gone, scene.Dashed, scene.Circle{X: at.X, Y: at.Y, R: h.size / 2})
	}
}

// fill draws what is in a ring.
func (h hand) fill(s *scene.Scene, i int, before, now state) {
	for k := range now.in[i] {
		it := scene.Item{Role: scene.First, Finish: scene.Deep, Of: h.of}
		switch {
		case k >= before.in[i]:
			it.Role, it.Finish = scene.Moved, scene.Plain
		case i < now.taken:
			it.Role, it.Of = scene.Result, scene.OfAnswer
		}
		h.counter(s, h.inRing(i, k), it)
	}
	for k := range now.pieces {
		role := scene.First
		if before.pieces == 0 {
			role = scene.Moved
		}
		h.wedge(s, h.inRing(i, now.in[i]), k, now.parts, role)
	}
	if now.free != nil {
		for k := range now.free[i] {
			at := h.inRing(i, now.in[i]+k)
			s.Draw(scene.Note, scene.Dashed, scene.Circle{X: at.X, Y: at.Y, R: h.size / 2})
		}
	}
}

// ring draws the ring of a group, or its plate.
func (h hand) ring(s *scene.Scene, i int, fresh, taken bool) {
	b := h.rings[i]
	round := min(b.H/2, b.W/2, ringEdge+h.size)
	r := scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H, Round: round}
	if h.plates {
		s.Draw(scene.Tray, scene.Plain, r)
	}
	switch {
	case taken:
		s.Draw(scene.Result, scene.Bold, r)
	case fresh:
		s.Draw(scene.Moved, scene.Outline, r)
	default:
		s.Draw(scene.Guide, scene.Outline, r)
	}
}

func (h hand) counter(s *scene.Scene, at scene.Point, it scene.Item) {
	it.Shape, it.Worth = scene.Circle{X: at.X, Y: at.Y, R: h.size / 2}, fraction.Whole(1)
	s.Add(it)
}

// wedge draws one of the equal parts of a counter.
func (h hand) wedge(s *scene.Scene, at scene.Point, part, parts int, role scene.Role) {
	s.Add(scene.Item{
		Shape: scene.Wedge{X: at.X, Y: at.Y, R: h.size / 2, From: part, Count: 1, Parts: parts},
		Role:  role, Of: h.of, Worth: fraction.Must(1, int64(parts)),
	})
}

// board draws the tray and says what is on it; hidden is what it says while the
// answer is hidden, where that is something else.
func (h hand) board(s *scene.Scene, role scene.Role, shown, hidden string) {
	s.Draw(scene.Tray, scene.Plain, scene.Rect{X: h.tray.X, Y: h.tray.Y, W: h.tray.W, H: h.tray.H, Round: 16})
	said(s, role, scene.Left, h.seats.X-h.size/2, h.tray.Y+trayEdge+trayLabel/2-4, scene.Small, shown, hidden)
}

// said writes a line that may say something else while the answer is hidden.
func said(s *scene.Scene, role scene.Role, anchor scene.Anchor, x, y, size int, shown, hidden string) {
	text := func(role scene.Role, when scene.When, words string) {
		t := scene.Words(x, y, size, words)
		t.Anchor = anchor
		s.Add(scene.Item{Shape: t, Role: role, When: when})
	}
	if shown == hidden {
		text(role, scene.Always, shown)
		return
	}
	text(role, scene.ShownOnly, shown)
	text(scene.Hidden, scene.HiddenOnly, hidden)
}

// tag writes a number under a ring; asked is set when it is the answer.
func (h hand) tag(s *scene.Scene, ring int, n int64, asked bool) {
	b, role := h.rings[ring], scene.Note
	shown := arithmetic.Grouped(n)
	hidden := shown
	if asked {
		hidden, role = "?", scene.Result
	}
	said(s, role, scene.Centre, b.X+b.W/2, b.Bottom()+tagTall/2+2, scene.Small, shown, hidden)
}

// note writes a line under all rings. A fraction in it needs more room: noteRoom.
func (h hand) note(s *scene.Scene, c caption) {
	text := func(line notation.Line, role scene.Role, when scene.When) {
		y := h.bottom + noteRoom(c)/2 + 4
		s.Add(scene.Item{Shape: scene.Text{X: scene.PaperW / 2, Y: y, Size: scene.Middle, Runs: line.Runs()}, Role: role, When: when})
	}
	if c.role != scene.Result {
		text(c.shown, c.role, scene.Always)
		return
	}
	text(c.shown, c.role, scene.ShownOnly)
	text(c.hidden, scene.Hidden, scene.HiddenOnly)
}

// noteRoom is the height of the line under all rings.
func noteRoom(c caption) int {
	for _, t := range c.shown {
		if t.Den != "" {
			return 2 * fractionUp
		}
	}
	return noteTall
}

// fractionUp is how far a fraction in that line reaches up and down, with air.
const fractionUp = 39
