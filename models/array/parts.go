package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// What the parts of a split array come to stands on a plate in each of them, or
// beside those that are too small for it, with a line to the part:
//
//	           90        4
//	     ┌────────────┬────┐  ┌─────┐
//	 30  │   [2,700]  │  ·─┼──┤ 120 │   right of a part too narrow for its name
//	     ├────────────┼────┤  └─────┘
//	  6  └──────┬─────┴──·─┘──[ 24 ]
//	         [ 540 ]                    under a part too low for it
//
// An array with one row of parts has the whole fact under each: 7 × 5 = 35.

const (
	insideTall = 52 // the lowest part that has its name inside
	plateEdge  = 10 // from a name to the edge of its plate
	smallEdge  = 4  // the same where names are small
	plateTall  = 44
	leader     = 30 // from the array to a plate beside it
	outside    = 14 // from the array to a name beside it
	lineTall   = scene.Middle * 112 / 100
)

// inCells reports whether what the parts come to stands on plates.
func (a *story) inCells() bool {
	return a.look == inSketch || len(a.rows) > 1 && len(a.cols) > 1
}

// partNames writes what the found parts come to. In a whole story with the
// answer hidden the facts are asked instead.
func (a *story) partNames(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	switch {
	case a.inCells():
		a.cellNames(s, found, when)
	case len(a.rows) == 1:
		a.factsBelow(s, found, when)
	default:
		a.factsRight(s, found, when)
	}
}

// facts are the names of all parts of an array split one way.
func (a *plot) facts() []string {
	var out []string
	for _, r := range a.rows {
		for _, c := range a.cols {
			out = append(out, factOf(r, c, arithmetic.Grouped(a.parts[len(out)])))
		}
	}
	return out
}

func (a *story) factsBelow(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	var middles, lengths []int
	facts := a.facts()
	low, high := scene.Margin, scene.PaperW-scene.Margin
	if a.box().H < 84 {
		low = a.x[0] - bandEdge // beside a low array stand the names of its rows
	}
	size := scene.Middle
	if factsWide(facts, size) > high-low {
		size = scene.Small
	}
	for j, fact := range facts {
		middles = append(middles, a.x[j]+a.w[j]/2)
		lengths = append(lengths, scene.Advance(fact, size, true))
	}
	middles = spread(middles, lengths, factGap, low, high)
	y := a.box().Bottom() + a.air + 8 + factsTall/2
	for k, f := range found {
		a.fact(s, f, scene.Text{X: middles[f.Col], Y: y, Size: size, Bold: true}, facts[k], when)
	}
}

// factGap stands between two facts under an array.
const factGap = 24

// factsWide is the room that facts take beside each other.
func factsWide(facts []string, size int) int {
	wide := factGap * (len(facts) - 1)
	for _, fact := range facts {
		wide += scene.Advance(fact, size, true)
	}
	return wide
}

func (a *story) factsRight(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	const tall, gap = scene.Small * 112 / 100, 4
	var middles, lengths []int
	for i := range a.rows {
		middles = append(middles, a.y[i]+a.h[i]/2)
		lengths = append(lengths, tall)
	}
	b := a.box()
	middles = spread(middles, lengths, gap, scene.Margin, b.Bottom()+tall)
	x := b.Right() + outside
	if a.look <= inCrates {
		x += bandEdge
	}
	facts := a.facts()
	for k, f := range found {
		a.fact(s, f, scene.Text{X: x, Y: middles[f.Row], Anchor: scene.Left, Size: scene.Small, Bold: true}, facts[k], when)
	}
}

// fact adds one fact, and the question in its place when it is shown only.
func (a *story) fact(s *scene.Scene, f arithmetic.FindPart, t scene.Text, words string, when scene.When) {
	t.Runs = []scene.Run{{Text: words}}
	s.Add(scene.Item{Shape: t, Role: roleAt(f.Row, f.Col), When: when})
	if when == scene.ShownOnly {
		t.Runs = []scene.Run{{Text: factOf(f.Rows, f.Cols, "?")}}
		s.Add(scene.Item{Shape: t, Role: roleAt(f.Row, f.Col), When: scene.HiddenOnly})
	}
}

// cellNames names parts inside, or right of or under the last ones.
func (a *story) cellNames(s *scene.Scene, found []arithmetic.FindPart, when scene.When) {
	right, below := a.cellNamesOutside()
	size, edge := scene.Middle, plateEdge
	for k := range a.parts {
		if _, is := right[k]; !is && scene.Advance(arithmetic.Grouped(a.parts[k]), size, true)+2*edge > a.w[k%len(a.cols)]-4 {
			size, edge = scene.Small, smallEdge
		}
	}
	for k, f := range found {
		b := a.part(f.Row, f.Col)
		t := scene.Words(b.X+b.W/2, b.Y+b.H/2, size, arithmetic.Grouped(a.parts[k]))
		t.Bold = size == scene.Middle
		from := scene.Point{X: t.X, Y: t.Y}
		if y, is := right[k]; is {
			t.X, t.Y = a.box().Right()+leader+edge+t.Width()/2, y
			a.lead(s, from, scene.Point{X: t.X - t.Width()/2 - edge, Y: y})
		} else if below[k] {
			t.Y = b.Bottom() + 8 + factsTall/2
			a.lead(s, from, scene.Point{X: t.X, Y: t.Y - plateTall/2})
		}
		a.plate(s, t, edge, scene.Always)
		s.Add(scene.Item{Shape: t, Role: roleAt(f.Row, f.Col), When: when})
		if when == scene.ShownOnly {
			s.Add(captionAt(blanked("?"), t.X, t.Y))
		}
	}
}

// lead draws a line from a point in a part to the plate beside it.
func (a *story) lead(s *scene.Scene, from, to scene.Point) {
	const dot = 5
	s.Draw(scene.Ink, scene.Fine, scene.Line{X1: from.X, Y1: from.Y, X2: to.X, Y2: to.Y})
	s.Draw(scene.Ink, scene.Deep, scene.Polygon{
		{X: from.X - dot, Y: from.Y}, {X: from.X, Y: from.Y - dot}, {X: from.X + dot, Y: from.Y}, {X: from.X, Y: from.Y + dot},
	})
}

// cellNamesOutside says which parts, counted row by row, are named to the right
// of the array and at which height, and which under it.
func (a *story) cellNamesOutside() (right map[int]int, below map[int]bool) {
	const gap = 6
	right, below = map[int]int{}, map[int]bool{}
	var order, middles, lengths []int
	for i := range a.rows {
		for j := range a.cols {
			k, b := i*len(a.cols)+j, a.part(i, j)
			wide := scene.Advance(arithmetic.Grouped(a.parts[k]), scene.Middle, true) + 2*plateEdge
			switch {
			case a.look == inSketch:
			case b.W < wide && j == len(a.cols)-1:
				order, middles, lengths = append(order, k), append(middles, b.Y+b.H/2), append(lengths, plateTall)
			case b.H < insideTall && i == len(a.rows)-1:
				below[k] = true
			}
		}
	}
	for n, y := range spread(middles, lengths, gap, scene.Margin, a.box().Bottom()+plateTall) {
		right[order[n]] = y
	}
	return right, below
}

// plate keeps the lines of the array from under a name.
func (a *story) plate(s *scene.Scene, t scene.Text, edge int, when scene.When) {
	b := t.Box()
	s.Add(scene.Item{
		Shape: scene.Rect{X: b.X - edge, Y: t.Y - plateTall/2, W: b.W + 2*edge, H: plateTall, Round: 10},
		Role:  scene.Note, When: when,
	})
}
