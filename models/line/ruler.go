package line

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// Places of a number line on the paper.
//
//	    margin                                      margin
//	|     |---+---+---------+---------+---------+---->|     |
//	          0         lineRoom (or less)     hi
//	|     |--/\/--+---------+---------+---------+---->|     |
//	              lo        brokenRoom         hi
const (
	lineLeft   = 36  // where a line that begins at 0 has its 0
	brokenLeft = 88  // where a line with a break has its first mark
	lineRight  = 736 // the last mark: half a name of three digits fits beside it
	lineRoom   = lineRight - lineLeft
	brokenRoom = lineRight - brokenLeft
	leastHop   = 14 // the narrowest hop that can still be seen
	leastApart = 6  // the smallest distance of two points that can be told apart
)

// ruler maps counts of units to places on the paper.
type ruler struct {
	lo, hi int64
	unit   int64 // every count on the line is a multiple of it from lo
	step   int   // paper units for one unit; 0 when the stretch is too long for whole steps
	left   int
	width  int
	broken bool

	// A line not to scale has only its stops, from the lowest up, and their places.
	stops  []int64
	places []int
}

// rulerFor lays a stretch on the paper, exactly to scale where every unit can
// have a whole step.
// The names of its ends reach so far to each side, and stay between the margins
// where the steps allow it.
func rulerFor(t arithmetic.Stretch, ends [2]int) ruler {
	r := ruler{lo: t.Lo, hi: t.Hi, unit: max(t.Unit, 1), left: lineLeft, broken: t.Lo != 0}
	room := lineRoom
	if r.broken {
		r.left, room = brokenLeft, brokenRoom
	}
	units := (r.hi - r.lo) / r.unit
	left := max(r.left, scene.Margin-overEdge+ends[0])
	if less := min(lineRight, scene.PaperW-scene.Margin+overEdge-ends[1]) - left; wideEnough(int64(less), int64(room), units) {
		r.left, room = left, less
	}
	r.step = int(int64(room) / units)
	r.width = r.step * int(units)
	if r.step == 0 {
		marks := 2
		if t.Mark > 0 {
			marks = int((t.Hi - t.Lo) / t.Mark)
		}
		r.width = room / marks * marks
	}
	r.left += (room - r.width) / 2
	return r
}

// wideEnough reports whether a line of whole steps loses little when it has less
// room.
func wideEnough(less, room, units int64) bool {
	if room < units {
		return true
	}
	return less/units*units*10 >= room/units*units*9
}

// unevenRuler lays hops side by side that are too uneven to be drawn to scale:
// each is as wide as its label needs, a longer hop is wider than a shorter one by
// as much as there is room for, and equal hops are equally wide.
func unevenRuler(stops []int64, needs map[int64]int, ends [2]int) ruler {
	stops = slices.Compact(slices.Sorted(slices.Values(stops)))
	r := ruler{lo: stops[0], hi: stops[len(stops)-1], stops: stops, left: brokenLeft, broken: stops[0] != 0}
	if !r.broken {
		r.left = lineLeft
	}
	r.left = max(r.left, scene.Margin+ends[0])
	room := min(lineRight, scene.PaperW-scene.Margin-ends[1]) - r.left
	ranks, shares := make([]int, len(stops)-1), make([]int, len(stops)-1)
	needed, ranked, total := 0, 0, 0
	for i := range shares {
		for by, width := range needs {
			if by <= stops[i+1]-stops[i] {
				ranks[i], shares[i] = ranks[i]+1, max(shares[i], width)
			}
		}
		needed, ranked = needed+shares[i], ranked+ranks[i]
	}
	const least = 24 // by which a longer hop is wider, also where room is short
	wider := max(least, (room-needed)/max(ranked, 1))
	for i := range shares {
		shares[i] += wider * ranks[i]
		total += shares[i]
	}
	x := r.left
	r.places = append(r.places, x)
	for _, share := range shares {
		x += share * room / total
		r.places = append(r.places, x)
	}
	r.width = x - r.left
	return r
}

// endSides are how far the names of the ends of a stretch reach to each side.
func endSides(t arithmetic.Stretch) (sides [2]int) {
	for i, at := range []int64{t.Lo, t.Hi} {
		size := scene.Middle
		if fractional(t.Scale) {
			size = scene.Small
		}
		sides[i] = (scene.Text{Size: size, Bold: true, Runs: runsOf("", t.Scale.WriteShort(at))}.Width() + 1) / 2
	}
	return sides
}

// uneven reports whether the line is not to scale.
func (r ruler) uneven() bool { return r.stops != nil }

// x is the place of a count. On a stretch too long for whole steps it is rounded
// once, to less than half of a pen's width.
func (r ruler) x(at int64) int {
	if r.uneven() {
		i, _ := slices.BinarySearch(r.stops, at)
		return r.places[i]
	}
	if r.step > 0 && (at-r.lo)%r.unit == 0 {
		return r.left + int((at-r.lo)/r.unit)*r.step
	}
	span := r.hi - r.lo
	return r.left + int(((at-r.lo)*int64(r.width)*2+span)/(2*span))
}

// axis draws the line at height y: with an arrow, since it goes on, and with a
// break where it does not begin at 0.
func (r ruler) axis(y int) []scene.Item {
	const tip, head, half = scene.PaperW - scene.Margin, 14, 7
	line := scene.Polyline{{X: r.left, Y: y}, {X: tip - head, Y: y}}
	if r.broken {
		at := r.left - 44
		line = scene.Polyline{{X: at - 12, Y: y}, {X: at, Y: y}, {X: at + 5, Y: y - 11}, {X: at + 15, Y: y + 11},
			{X: at + 20, Y: y}, {X: tip - head, Y: y}}
	}
	return []scene.Item{
		{Shape: line},
		{Shape: scene.Polygon{{X: tip, Y: y}, {X: tip - head, Y: y - half}, {X: tip - head, Y: y + half}}, Finish: scene.Deep},
	}
}

// mostStrokes is how many marks are drawn one by one; more are one comb.
const mostStrokes = 24

// comb draws marks every so many units, up above the line and down below it:
// one by one, or as one fine line that goes along the line and up and down at each
// mark.
//
//	 |  |  |  |
//	-+--+--+--+-
//	 |  |  |  |
func (r ruler) comb(every int64, y, up, down int) []scene.Item {
	if r.step > 0 && every%r.unit != 0 {
		return nil // they would not come out on whole steps
	}
	var marks []scene.Item
	var comb scene.Polyline
	for at := (r.lo + every - 1) / every * every; at <= r.hi; at += every {
		x := r.x(at)
		marks = append(marks, scene.Item{Shape: scene.Line{X1: x, Y1: y - up, X2: x, Y2: y + down}, Role: scene.Ink, Finish: scene.Fine})
		comb = append(comb, scene.Point{X: x, Y: y}, scene.Point{X: x, Y: y - up}, scene.Point{X: x, Y: y + down}, scene.Point{X: x, Y: y})
	}
	if len(marks) > mostStrokes {
		return []scene.Item{{Shape: comb, Finish: scene.Fine}}
	}
	return marks
}
