package line

import (
	"slices"

	"modeler/models/scene"
	"modeler/models/telling"
)

// label names a place on a number line: a stop below it or a hop above it.
type label struct {
	x     int // what it names
	start int // height where its leader begins: the end of a mark, the top of a hop
	runs  []scene.Run
	size  int
	bold  bool
	asked bool // with the answer hidden, a question mark in a dashed frame stands here
	role  scene.Role
	when  scene.When
	from  int
	until int

	turn   int // in this step it takes another role; 0 for never
	turned scene.Role
	posed  int         // a question mark stands here up to this step, in both versions
	also   []name      // other names of the same place
	above  bool        // it stands above the line, and other names above it
	before []scene.Run // the number of the mark here, up to the step in which the label comes

	fixed       int // nearRow or farRow where it must stand there; 0 where it may stand in either
	centre, row int // where it is put
	pass        int // of a label in the second row: where its leader passes the first
}

// name is another name of a place, as 2/4 for 1/2. It stands beyond the first,
// in line with it, so that both belong to one mark.
type name struct {
	runs []scene.Run
	role scene.Role
	when scene.When
	from int
}

// Rows in which a label may have to stand.
const (
	nearRow = iota + 1 // next to the line
	farRow
)

// Room between labels, and the room that a leader takes between the labels of
// the row that it passes.
const (
	labelGap   = 16
	leaderRoom = 8
	askedSide  = 44 // the dashed frame around a question mark
	nameGap    = 6  // between two names of one place
	straight   = 12 // how far a label may stand beside its place without a leader
	overEdge   = 8  // how far a label may reach into the margin, to stand at its place
)

func (l *label) text(x, y int) scene.Text {
	return scene.Text{X: x, Y: y, Size: l.size, Bold: l.bold, Runs: l.runs}
}

// plain is another name of the label: in the same size, but a note is small.
func (l *label) plain(n name, x, y int) scene.Text {
	size := l.size
	if n.role == scene.Note {
		size = scene.Small
	}
	return scene.Text{X: x, Y: y, Size: size, Runs: n.runs}
}

// first is the label without its other names.
func (l *label) first() *label {
	bare := *l
	bare.also = nil
	return &bare
}

// reach is how far the label goes up, down and to each side of the middle of its
// first name.
func (l *label) reach() (up, down, side int) {
	b := l.text(0, 0).Box()
	up, down, side = -b.Y, b.Bottom(), (b.W+1)/2
	if l.asked {
		up, down, side = max(up, askedSide/2), max(down, askedSide/2), max(side, askedSide/2)
	}
	for _, n := range l.also {
		side = max(side, (l.plain(n, 0, 0).Box().W+1)/2)
	}
	if high := l.beyond(); high > 0 && l.above {
		up += nameGap + high
	} else if high > 0 {
		down += nameGap + high
	}
	return up, down, side
}

// beyond is how high the other names of the label are together.
func (l *label) beyond() int {
	high := -nameGap
	for _, n := range l.also {
		high += nameGap + l.plain(n, 0, 0).Box().H
	}
	return max(0, high)
}

// alsoAt are the other names of the label, one beyond the other, with the middle
// of all at a height.
func (l *label) alsoAt(x, middle int) []scene.Text {
	texts := make([]scene.Text, len(l.also))
	near := l.beyond() / 2 // from the middle to where the next name begins
	for i, n := range l.also {
		b := l.plain(n, 0, 0).Box()
		y := middle - near - b.Y
		if l.above {
			y = middle + near - b.Bottom()
		}
		texts[i] = l.plain(n, x, y)
		near -= b.H + nameGap
	}
	return texts
}

// arrange puts labels in one row, and as many as need it in a second whose
// leaders have room of their own in the first; so no leader crosses a label or
// another leader, whatever the labels. The other names of a label in the first row
// stand in the second, right beyond it. One after the other goes to the second row
// as long as that brings the labels nearer to their places. ok is false when they
// do not fit in two rows either.
func arrange(labels []*label) (ok bool) {
	// Two rows have no room for more, and to look for it would take long.
	const most = 2 * scene.PaperW / (2 * labelGap)
	if len(labels) > most {
		return false
	}
	slices.SortStableFunc(labels, func(a, b *label) int { return a.x - b.x })
	second := make([]bool, len(labels))
	for i, l := range labels {
		second[i] = l.fixed == farRow
	}
	best := rowsOf(labels, second)
	for best.cost > 0 {
		choice, better := -1, best
		for i := range labels {
			if second[i] || labels[i].fixed == nearRow {
				continue
			}
			second[i] = true
			if try := rowsOf(labels, second); try.cost < better.cost {
				choice, better = i, try
			}
			second[i] = false
		}
		if choice < 0 {
			break
		}
		second[choice], best = true, better
	}
	for i, l := range labels {
		l.centre, l.row = best.at[i], 0
		if second[i] {
			l.row, l.pass, l.centre = 1, best.at[i], best.below[i]
		}
	}
	return best.fits
}

// rows is a way to put labels in rows: where they, or their leaders, stand in the
// first row, and those of the second row in that. The cost counts how far from
// their places they are, and that a second row is harder to read.
type rows struct {
	at, below []int
	cost      int
	fits      bool
}

func rowsOf(labels []*label, second []bool) rows {
	const lo, hi, secondRow, tooWide = scene.Margin - overEdge, scene.PaperW - scene.Margin + overEdge, 1_500, 10_000
	r := rows{at: make([]int, len(labels)), below: make([]int, len(labels)), fits: true}
	var want, sides, wantSecond, sidesSecond, nth []int
	for i, l := range labels {
		_, _, side := l.reach()
		want = append(want, l.x)
		if second[i] || l.also != nil {
			wantSecond, sidesSecond, nth = append(wantSecond, l.x), append(sidesSecond, side), append(nth, i)
		}
		if !second[i] {
			sides = append(sides, side)
			continue
		}
		sides = append(sides, leaderRoom)
		r.cost += secondRow
	}
	first, ok := telling.Spread(want, sides, labelGap, lo, hi)
	beyond, fits := telling.Spread(wantSecond, sidesSecond, labelGap, lo, hi)
	if !ok || !fits {
		r.fits = false
		r.cost += tooWide * (overflow(sides, hi-lo) + overflow(sidesSecond, hi-lo))
		return r
	}
	for i := range first {
		r.at[i] = first[i]
		if off := abs(first[i] - want[i]); off > straight {
			r.cost += off * off
		}
	}
	for j, i := range nth {
		r.below[i] = beyond[j]
		if !second[i] {
			r.cost += tooWide * abs(beyond[j]-first[i])
			r.fits = r.fits && beyond[j] == first[i]
			continue
		}
		off := abs(beyond[j] - labels[i].x)
		r.cost += off * off / 4
	}
	return r
}

// overflow is how much wider than the room labels side by side are.
func overflow(sides []int, room int) int {
	width := -labelGap
	for _, side := range sides {
		width += 2*side + labelGap
	}
	return max(0, width-room)
}
