package balance

import (
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// Places on the paper. Each side has a pan with its numbers written on the front,
// and what they bring stands on it.
//
//	  [][]      []                      ?     []
//	  [][]  [][][]                  [    ]  [][]
//	+---------------+             +---------------+
//	|   8  +   4    |             |    ?  +  5    |   panHigh
//	+-------+-------+             +-------+-------+
//	        |             o               |           postHigh
//	        +-------------^---------------+           the beam
//	                     / \                          standHigh
//	              ------------------                  the table
const (
	panWide   = 336
	panHigh   = 56
	panInset  = 10 // from the edge of a pan to what stands on it
	postHigh  = 36
	standHigh = 84
	tilt      = 26 // how far a pan sinks or rises
	panTurn   = (scene.PaperW - 2*scene.Margin) / 4
	middle    = scene.PaperW / 2

	mostCube   = 44 // the side of a cube with its air
	leastCube  = 26
	cubeAir    = 4
	towerHigh  = 5  // cubes in a tower
	timesAir   = 6  // between the towers of a product
	signAir    = 10 // beside a sign
	barHigh    = 44
	bagAir     = 8 // between a bag and its cubes
	leastBag   = 64
	totalsHigh = 44 // for the number over what stands on a pan
)

// layout is how both pans are filled, to one scale.
type layout struct {
	cube  int    // the side of a cube with its air, 0 for bars
	unit  int    // of bars: how wide a one is
	high  int    // how high the highest stack is
	bag   [2]int // the size of the bag of a blank
	slots [2][]slot
}

// slot is the room of one group on a pan, whose center is at x.
type slot struct {
	arithmetic.PanGroup
	x, stack int // its middle, and how wide what stands there is
	sign     int // where the plus sign before it stands
}

// centre is the middle of a pan.
func centre(side int) int { return scene.Margin + panTurn + 2*side*panTurn }

// layOut chooses the largest cubes, or else the widest bars, with which both sides
// fit their pans.
func layOut(left, right arithmetic.Pan) (layout, bool) {
	both := [2]arithmetic.Pan{left, right}
	most := max(left.Laid(), right.Laid())
	if most <= mostCubes {
		for cube := mostCube; cube >= leastCube; cube -= 2 {
			if l := (layout{cube: cube}); l.fill(both, most) {
				return l, true
			}
		}
		return layout{}, false
	}
	for unit := int(panWide / most); unit > 0; unit-- {
		if l := (layout{unit: unit}); l.fill(both, most) {
			return l, true
		}
	}
	return layout{}, false
}

// fill puts the groups of both sides in their slots; ok is false when a side is
// wider than its pan.
func (l *layout) fill(both [2]arithmetic.Pan, most int64) (ok bool) {
	l.high = barHigh
	if l.cube > 0 {
		l.high = int(max(1, min(most, towerHigh))) * l.cube
		l.bag = [2]int{max(1, towers(most))*l.cube + 2*bagAir, l.high + bagAir}
	} else {
		l.bag = [2]int{max(leastBag, int(most)*l.unit), barHigh}
	}
	for side, pan := range both {
		wide := 0
		var list []slot
		var takes []int
		for i, g := range pan.Groups {
			s := slot{PanGroup: g, stack: l.stackWide(g)}
			take := max(s.stack, telling.Width(groupLine(g, scene.Ink), scene.Middle, false))
			if i > 0 {
				wide += signWide()
			}
			wide, takes, list = wide+take, append(takes, take), append(list, s)
		}
		if wide > panWide-2*panInset {
			return false
		}
		x := centre(side) - wide/2
		for i := range list {
			list[i].x = x + takes[i]/2
			if x += takes[i] + signWide(); i > 0 {
				list[i].sign = between(list[i-1], list[i])
			}
		}
		l.slots[side] = list
	}
	return true
}

// between is the middle between the names of two groups.
func between(a, b slot) int {
	half := func(s slot) int { return telling.Width(groupLine(s.PanGroup, scene.Ink), scene.Middle, false) / 2 }
	return (a.x + half(a) + b.x - half(b)) / 2
}

// towers is how many towers hold so many cubes.
func towers(n int64) int { return int(n+towerHigh-1) / towerHigh }

func signWide() int {
	return telling.Width(notation.Line{notation.S("+")}, scene.Middle, false) + 2*signAir
}

// stackWide is how wide what a group brings is.
func (l *layout) stackWide(g arithmetic.PanGroup) int {
	laid := g.Count + g.Off
	switch {
	case g.Blank:
		return l.bag[0]
	case l.cube == 0:
		return int(laid) * l.unit
	case g.Times > 0:
		each := max(1, towers(g.Count/g.Times))
		return int(g.Times)*(each*l.cube+timesAir) - timesAir
	}
	return max(1, towers(laid)) * l.cube
}

// spot is a piece on a pan: its left edge, its bottom above the pan, and how wide
// and how much it is.
type spot struct{ x, up, wide, high, worth int }

// spots are the pieces of a slot, in the order they are laid.
func (l *layout) spots(s slot) []spot {
	x, times, each := s.x-s.stack/2, int(max(1, s.Times)), int(s.Count+s.Off)
	if s.Times > 0 {
		each = int(s.Count / s.Times)
	}
	if each == 0 || s.Blank {
		return nil
	}
	if l.cube == 0 {
		return l.barsAt(x, times, each, int(s.Off))
	}
	var list []spot
	for range times {
		list = append(list, l.cubesAt(x, each)...)
		x += towers(int64(each))*l.cube + timesAir
	}
	return list
}

// cubesAt are so many cubes in towers from x on.
func (l *layout) cubesAt(x, count int) []spot {
	var list []spot
	side := l.cube - cubeAir
	for i := range count {
		list = append(list, spot{x + i/towerHigh*l.cube + cubeAir/2, i % towerHigh * l.cube, side, side, 1})
	}
	return list
}

// barsAt are so many equal bars end to end; what is taken off again is a bar of
// its own.
func (l *layout) barsAt(x, times, each, off int) []spot {
	var list []spot
	for _, worth := range append(slices.Repeat([]int{each - off}, times), off) {
		if worth > 0 {
			list = append(list, spot{x, 0, worth * l.unit, barHigh, worth})
			x += worth * l.unit
		}
	}
	return list
}

// groupLine is a group as it is written: 8, 9 − 4, 3 × 4, with the brackets that
// open before it or close after it.
func groupLine(g arithmetic.PanGroup, role scene.Role) notation.Line {
	line := notation.Line{telling.Unknown()}
	switch e := g.Expr.(type) {
	case arithmetic.Number:
		line = telling.Numeral(e, role)
	case arithmetic.Operation:
		a, _ := e.Left.(arithmetic.Number)
		b, _ := e.Right.(arithmetic.Number)
		line = telling.Join(telling.Numeral(a, role), e.Op.String(), telling.Numeral(b, role))
	}
	return bracketed(line, g)
}

func bracketed(line notation.Line, g arithmetic.PanGroup) notation.Line {
	first, last := &line[0], &line[len(line)-1]
	first.Text = strings.Repeat("(", g.Open) + first.Text
	last.Text += strings.Repeat(")", g.Close)
	return line
}

// sideLine is a whole side as it is written, with something in the place of the
// blank.
func sideLine(p arithmetic.Pan, role scene.Role, blank notation.Line) notation.Line {
	links := make([]notation.Line, len(p.Groups))
	for i, g := range p.Groups {
		if links[i] = groupLine(g, role); g.Blank {
			links[i] = bracketed(slices.Clone(blank), g)
		}
	}
	return telling.Chain("+", links...)
}
