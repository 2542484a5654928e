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

	turn   int // in this step it takes another role, or says something else; 0 for never
	turned scene.Role
	later  []scene.Run // what it says then, while the answer is shown; nil for the same
	posed  int         // a question mark stands here up to this step, in both versions

	centre, row int // where it is put
	pass        int // of a label in the second row: where its leader passes the first
}

// Room between labels, and the room that a leader takes between the labels of
// the row that it passes.
const (
	labelGap   = 14
	leaderRoom = 8
	askedSide  = 44 // the dashed frame around a question mark
)

func (l *label) text(x, y int) scene.Text {
	return scene.Text{X: x, Y: y, Size: l.size, Bold: l.bold, Runs: l.runs}
}

// reach is how far the label goes up, down and to each side of its middle.
func (l *label) reach() (up, down, side int) {
	b := l.text(0, 0).Box()
	up, down, side = -b.Y, b.Bottom(), (b.W+1)/2
	if l.later != nil {
		b = scene.Text{Size: l.size, Bold: l.bold, Runs: l.later}.Box()
		up, down, side = max(up, -b.Y), max(down, b.Bottom()), max(side, (b.W+1)/2)
	}
	if l.asked {
		up, down, side = max(up, askedSide/2), max(down, askedSide/2), max(side, askedSide/2)
	}
	return up, down, side
}

// arrange puts labels in one row, or in two when one is too short for them or
// would push a label far from its place. In two rows every other label stands in
// the second, and its leader has room of its own in the first; so no leader
// crosses a label or another leader, whatever the labels. ok is false when they
// do not fit in two rows either.
func arrange(labels []*label) (ok bool) {
	const lo, hi, far = scene.Margin, scene.PaperW - scene.Margin, 60
	slices.SortStableFunc(labels, func(a, b *label) int { return a.x - b.x })
	want, sides := make([]int, len(labels)), make([]int, len(labels))
	for i, l := range labels {
		_, _, side := l.reach()
		want[i], sides[i] = l.x, side
	}
	one, fits := telling.Spread(want, sides, labelGap, lo, hi)
	if fits && farthest(want, one) <= far {
		for i, l := range labels {
			l.centre, l.row = one[i], 0
		}
		return true
	}
	// The second row first, then the passages of its leaders in the first row.
	var upper []*label
	var wantUpper, sidesUpper []int
	passing := slices.Clone(sides)
	for i := 1; i < len(labels); i += 2 {
		upper, wantUpper, sidesUpper = append(upper, labels[i]), append(wantUpper, want[i]), append(sidesUpper, sides[i])
		passing[i] = leaderRoom
	}
	second, fits2 := telling.Spread(wantUpper, sidesUpper, labelGap, lo, hi)
	first, fits1 := telling.Spread(want, passing, labelGap/2, lo, hi)
	if !fits1 || !fits2 {
		if fits {
			for i, l := range labels {
				l.centre, l.row = one[i], 0
			}
		}
		return fits
	}
	for i, l := range labels {
		l.centre, l.row = first[i], 0
	}
	for i, l := range upper {
		l.row, l.pass, l.centre = 1, l.centre, second[i]
	}
	return true
}

func farthest(want, at []int) int {
	far := 0
	for i := range want {
		far = max(far, want[i]-at[i], at[i]-want[i])
	}
	return far
}
