package groups

import (
	"modeler/models/scene"
)

// table is where everything lies, in every picture of a lesson:
//
//	┌─────────────────────────────────┐
//	│            17 to share          │   the tray, where there is a total
//	│   o o o o o   o o o o o   o o   │
//	└─────────────────────────────────┘
//	  ( o o o o o )   ( o o o o o )       the rings, all of one size
//	  (  o o      )   (  o o      )
//	        7               14            their tags
//	            7 in each                 the note
type table struct {
	size, step int // of a counter across, and from one to the next
	rings      []scene.Box
	cols       int // counters beside each other in a ring
	across     int // and on the tray
	tray       scene.Box
	seats      scene.Point // the first counter on the tray
	tags       bool
	lines      int // of rings
	bottom     int // of the rings and their tags
}

// Sizes, in units.
const (
	largestCounter = 34
	largestCut     = 64 // where some are cut
	easyCounter    = 26 // as small as they get to save a line
	fewLines       = 3  // where there are no more of them
	leastCounter   = 20
	ringEdge       = 12 // from a ring to what is in it
	ringGap        = 18 // from ring to ring, and from line to line of them
	tagTall        = 36 // the number under a ring
	noteTall       = 50 // the line under all rings
	fiveGap        = 8  // after every five in a row
	trayEdge       = 14 // from the tray's edge to what is on it
	trayLabel      = 40 // what the tray is called
	trayGap        = 24 // from the tray to the rings
	mostTall       = 620
	inner          = scene.PaperW - 2*scene.Margin
)

// need is what a lesson has to have room for.
type need struct {
	rings, each int
	tray        bool
	total       int // on it
	pairs       bool
	tags        bool
	least, most int // sizes of counters, where they have bounds of their own
}

// lay finds the fewest lines of rings that have room, and of those the largest
// counters; ok is false when there are none.
func lay(n need) (best table, ok bool) {
	for size := max(n.most, largestCounter); size >= max(n.least, leastCounter); size -= 2 {
		t := table{size: size, step: size + max(6, size/5), tags: n.tags, cols: columns(n.each)}
		if n.pairs {
			t.cols = 1
		}
		top := scene.Margin
		if n.tray {
			if !t.layTray(n.total) {
				continue
			}
			top = t.tray.Bottom() + trayGap
		}
		if !t.layRings(n, top) || t.bottom > mostTall || ok && (t.lines >= best.lines || size < easyCounter && best.lines <= fewLines) {
			continue
		}
		best, ok = t, true
	}
	return best, ok
}

// columns is how many counters stand beside each other in a ring: a few as on a
// die, more in fives, so that they are seen at a glance.
func columns(each int) int {
	switch {
	case each > 20:
		return 10
	case each > 6:
		return 5
	case each > 4 || each == 3:
		return 3
	}
	return max(1, min(each, 2))
}

// rowWide is how wide so many counters in a row are.
func (t table) rowWide(n int) int { return n*t.step + (n-1)/5*fiveGap - (t.step - t.size) }

// layTray places a tray for a total, in one row or in twenties; false when these
// have no room.
func (t *table) layTray(total int) bool {
	const twenty = 20
	t.across = max(1, min(total, twenty))
	if t.rowWide(total) <= inner-2*trayEdge {
		t.across = max(1, total)
	}
	wide, rows := t.rowWide(t.across), max(1, (total+t.across-1)/t.across)
	t.tray = scene.Box{X: scene.Margin, Y: scene.Margin, W: inner, H: trayLabel + rows*t.step + 2*trayEdge - (t.step - t.size)}
	t.seats = scene.Point{X: scene.PaperW/2 - wide/2 + t.size/2, Y: t.tray.Y + trayEdge + trayLabel + t.size/2}
	return wide <= inner-2*trayEdge
}

// onTray is the middle of the k-th counter on the tray.
func (t table) onTray(k int) scene.Point {
	row, col := k/t.across, k%t.across
	return scene.Point{X: t.seats.X + col*t.step + col/5*fiveGap, Y: t.seats.Y + row*t.step}
}

// layRings places the rings in as few lines as they have room in, equally many in
// each; false when one alone is too wide.
func (t *table) layRings(n need, top int) bool {
	rows := max(1, (n.each+t.cols-1)/t.cols)
	w := t.rowWide(t.cols) + 2*ringEdge
	h := rows*t.step - (t.step - t.size) + 2*ringEdge
	tag := 0
	if t.tags {
		tag = tagTall
		w = max(w, 48) // room for two digits under it
	}
	fit := (inner + ringGap) / (w + ringGap)
	if fit == 0 {
		return false
	}
	t.lines = (n.rings + fit - 1) / fit
	beside := (n.rings + t.lines - 1) / t.lines
	left := scene.PaperW/2 - (beside*(w+ringGap)-ringGap)/2
	for i := range n.rings {
		t.rings = append(t.rings, scene.Box{X: left + i%beside*(w+ringGap), Y: top + i/beside*(h+tag+ringGap), W: w, H: h})
	}
	t.bottom = top + t.lines*(h+tag+ringGap) - ringGap
	return true
}

// inRing is the middle of the k-th counter in a ring.
func (t table) inRing(ring, k int) scene.Point {
	b := t.rings[ring]
	row, col := k/t.cols, k%t.cols
	return scene.Point{
		X: b.X + (b.W-t.rowWide(t.cols))/2 + t.size/2 + col*t.step + col/5*fiveGap,
		Y: b.Y + ringEdge + t.size/2 + row*t.step,
	}
}

// ringsAt is the table with its rings from a height down.
func (t table) ringsAt(top int) table {
	by := top - t.rings[0].Y
	rings := make([]scene.Box, len(t.rings))
	for i, b := range t.rings {
		b.Y += by
		rings[i] = b
	}
	t.rings, t.bottom = rings, t.bottom+by
	return t
}

// trayAt is the table with its tray from a height down.
func (t table) trayAt(top int) table {
	t.seats.Y += top - t.tray.Y
	t.tray.Y = top
	return t
}
