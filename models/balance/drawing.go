package balance

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// picture is a balance with the heights of its parts.
type picture struct {
	layout
	panTop, beam, table int // while it is level
	found               int64
}

// place puts the parts below each other. counted leaves room for a number over
// each pan, tilts for a pan that rises.
func place(l layout, counted, tilts bool) *picture {
	b := &picture{layout: l}
	top := scene.Margin
	if tilts {
		top += tilt
	}
	if counted {
		top += totalsHigh
	}
	b.panTop = top + l.high
	b.beam = b.panTop + panHigh + postHigh
	b.table = b.beam + standHigh
	return b
}

// addBalance draws the balance without what stands on it. lower is how far the
// left pan has sunk and the right one has risen; held has a prop under each pan.
func (b *picture) addBalance(s *scene.Scene, lower int, held bool, when scene.When) {
	const half, foot, props = 30, 130, 22
	add := func(role scene.Role, finish scene.Finish, shape scene.Shape) {
		s.Add(scene.Item{Shape: shape, Role: role, Finish: finish, When: when})
	}
	add(scene.Ink, scene.Plain, scene.Line{X1: middle - foot, Y1: b.table, X2: middle + foot, Y2: b.table})
	add(scene.Tray, scene.Plain, scene.Polygon{{X: middle, Y: b.beam}, {X: middle - half, Y: b.table}, {X: middle + half, Y: b.table}})
	left, right := centre(0), centre(1)
	add(scene.Ink, scene.Bold, scene.Line{X1: left, Y1: b.beam + lower, X2: right, Y2: b.beam - lower})
	add(scene.Ink, scene.Deep, scene.Circle{X: middle, Y: b.beam, R: 9})
	for side, down := range []int{lower, -lower} {
		x := centre(side)
		add(scene.Ink, scene.Plain, scene.Line{X1: x, Y1: b.panTop + panHigh + down, X2: x, Y2: b.beam + down})
		add(scene.Tray, scene.Plain, scene.Rect{X: x - panWide/2, Y: b.panTop + down, W: panWide, H: panHigh, Round: 10})
		add(scene.Ink, scene.Plain, scene.Line{X1: x - panWide/2, Y1: b.panTop + down, X2: x + panWide/2, Y2: b.panTop + down})
		if held {
			add(scene.Note, scene.Dashed, scene.Rect{X: x - props/2, Y: b.beam + 4, W: props, H: b.table - b.beam - 4})
		}
	}
	if held {
		add(scene.Note, scene.Fine, scene.Line{X1: left - foot/2, Y1: b.table, X2: left + foot/2, Y2: b.table})
		add(scene.Note, scene.Fine, scene.Line{X1: right - foot/2, Y1: b.table, X2: right + foot/2, Y2: b.table})
	}
}

// addNames writes a side on the front of its pan, every number under what it
// brings.
func (b *picture) addNames(s *scene.Scene, p loaded) {
	y := b.panTop + p.lower + panHigh/2
	for i, slot := range b.slots[p.side] {
		role := p.owners[i].role
		if role == scene.Moved {
			role = roleOf(p.side)
		}
		line := groupLine(slot.PanGroup, role)
		if slot.Blank && p.blank != "?" {
			line = bracketed(notation.Line{telling.Count(b.found, scene.Result)}, slot.PanGroup)
		}
		s.Add(scene.Item{Shape: scene.Text{X: slot.x, Y: y, Size: scene.Middle, Runs: line.Runs()}, When: p.when})
		if i > 0 {
			s.Add(scene.Item{Shape: scene.Words(slot.sign, y, scene.Middle, "+"), When: p.when})
		}
	}
}

// addTotal writes how much stands on a pan over it.
func (b *picture) addTotal(s *scene.Scene, p loaded, total int64, role scene.Role) {
	top := 0
	for _, slot := range b.slots[p.side] {
		for _, q := range b.spots(slot) {
			top = max(top, q.up+q.high)
		}
	}
	y := b.panTop + p.lower - top - totalsHigh/2 - 4
	s.Add(scene.Item{Shape: scene.Words(centre(p.side), y, scene.Middle, arithmetic.Grouped(total)), Role: role, When: p.when})
}

// addSign writes what stands between both sides between the pans.
func (b *picture) addSign(s *scene.Scene, sign string, role scene.Role, when scene.When) {
	t := scene.Words(middle, b.panTop+panHigh/2, scene.Middle, sign)
	t.Bold = true
	s.Add(scene.Item{Shape: t, Role: role, When: when})
}

// close ends the paper of a step.
func (b *picture) close(s *scene.Scene) { s.W, s.H = scene.PaperW, b.table+scene.Margin }

func roleOf(side int) scene.Role { return [...]scene.Role{scene.First, scene.Second}[side] }

// worked reports whether a side is more than one number.
func worked(p arithmetic.Pan) bool {
	_, is := p.Expr.(arithmetic.Operation)
	return is
}
