package groups

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// whole is the one picture of the story: the groups as they are in the end, with
// what is left over under them. With the answer hidden, a product and a part of an
// amount can be counted; a division lies there as it was before anything moved.
func (a *story) whole() *scene.Scene {
	s := &scene.Scene{Title: a.title}
	a.over = true
	switch {
	case a.pairs != nil:
		_, _, _, s.Desc = a.said.ReadPairs(*a.pairs)
	case a.taken != nil:
		_, _, _, s.Desc = a.said.Take(a.fraction, *a.taken)
	default:
		s.Desc = a.said.Told(a.read)
	}
	full, bottom := a.ended(scene.Margin)
	if a.set.Story == arithmetic.Making || a.taken != nil {
		s.Items = full.Items
		telling.Equation(s, bottom-10, a.asked, a.answered)
		return s
	}
	// Where one of the two is lower than the other, it stands in the middle.
	posed, low := a.posed(scene.Margin)
	if low > bottom {
		full, _ = a.ended(scene.Margin + (low-bottom)/2)
	} else {
		posed, _ = a.posed(scene.Margin + (bottom-low)/2)
	}
	for _, it := range full.Items {
		if it.When != scene.HiddenOnly {
			it.When = scene.ShownOnly
			s.Add(it)
		}
	}
	telling.AddPart(s, scene.HiddenOnly, posed)
	telling.Equation(s, max(bottom, low)-10, a.asked, a.answered)
	return s
}

// ended draws the groups in the end, from a height down.
func (a *story) ended(top int) (s *scene.Scene, bottom int) {
	s = &scene.Scene{}
	w := *a
	w.table = a.ringsAt(top)
	now := a.now
	now.waits = 0
	w.hand.draw(s, now, now)
	w.tagAll(s, true)
	bottom = w.bottom
	switch none := now.rings == 0; {
	case none && a.set.Story == arithmetic.Making:
		b := w.rings[0]
		s.Add(telling.Text(scene.Note, scene.PaperW/2, b.Y+b.H/2, scene.Small, words.GroupsNone))
	case none:
		bottom = top - ringGap
	}
	if a.waits > 0 {
		bottom = w.loose(s, bottom+ringGap)
	}
	c := a.found()
	w.bottom = bottom
	w.note(s, c)
	return s, bottom + noteRoom(c)
}

const (
	fewLoose  = 12 // as many as lie in a line beside their name
	looseTall = 48 // the height of that line
	looseGap  = 18 // from the counters to their name
)

// loose draws what is left over, outside the groups, and says so.
func (a *story) loose(s *scene.Scene, y int) (bottom int) {
	n := int(a.waits)
	h, now := a.hand, state{waits: n}
	name, blank := words.ArrayLeftOver(arithmetic.Grouped(a.waits)), words.ArrayLeftOver("?")
	if n > fewLoose {
		h.layTray(n)
		h.table = h.trayAt(y)
		h.board(s, scene.First, name, blank)
		h.draw(s, now, now)
		return h.tray.Bottom()
	}
	wide := h.rowWide(n) + looseGap + scene.Advance(name, scene.Small, false)
	left := scene.PaperW/2 - wide/2
	h.across, h.seats = n, scene.Point{X: left + h.size/2, Y: y + looseTall/2}
	h.draw(s, now, now)
	said(s, scene.First, scene.Left, left+h.rowWide(n)+looseGap, y+looseTall/2, scene.Small, name, blank)
	return y + looseTall
}

// posed draws what is given and the question, from a height down.
func (a *story) posed(top int) (s *scene.Scene, bottom int) {
	s = &scene.Scene{}
	w := *a
	w.table = a.trayAt(top)
	all := state{waits: int(a.set.Total)}
	w.board(s, scene.First, a.said.Wait(a.pairs != nil), a.said.Wait(a.pairs != nil))
	w.hand.draw(s, all, all)
	top = w.tray.Bottom() + trayGap
	switch {
	case a.pairs != nil:
		return s, top - trayGap
	case a.set.Story == arithmetic.Measuring:
		w.bottom = top - trayGap/2
		w.note(s, caption{shown: a.found().hidden, role: scene.Hidden})
		return s, w.bottom + noteTall
	}
	w.rings = nil
	w.layRings(need{rings: len(a.rings), each: 1}, top) // one line high: they are empty
	for i, b := range w.rings {
		w.ring(s, i, false, false)
		s.Add(telling.Text(scene.Hidden, b.X+b.W/2, b.Y+b.H/2, scene.Middle, "?"))
	}
	return s, w.bottom
}
