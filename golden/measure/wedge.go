package measure

import (
	"errors"
	"math"
	"regexp"
	"strconv"
)

// Wedge is a painted part of a disc with its centre at X, Y, from one end on the
// rim clockwise to the other.
type Wedge struct {
	X, Y, R  int
	From, To [2]float64
	Large    bool // more than half of the disc
	Paint
	Order int
}

var (
	wedgePath = regexp.MustCompile(`^M(\d+) (\d+)L([\d.]+) ([\d.]+)A(\d+) (\d+) 0 ([01]) 1 ([\d.]+) ([\d.]+)Z$`)
	arcsPath  = regexp.MustCompile(`^(M[\d.]+ [\d.]+(A\d+ \d+ 0 [01] 1 [\d.]+ [\d.]+|L[\d.]+ [\d.]+))+$`)
)

// arcs reads a path with arcs or tenths of a unit in it: a wedge, or the lines that
// hatch one, which are nothing to measure.
func (r *reader) arcs(d string, s state) error {
	m := wedgePath.FindStringSubmatch(d)
	if m == nil {
		if arcsPath.MatchString(d) && !s.Filled() {
			return nil
		}
		return errors.New("arcs that are neither a wedge nor its lines")
	}
	n := make([]float64, len(m))
	for i := range m[1:] {
		var err error
		if n[i+1], err = strconv.ParseFloat(m[i+1], 64); err != nil {
			return err
		}
	}
	if m[5] != m[6] {
		return errors.New("an arc of an ellipse")
	}
	shift := [2]float64{float64(s.dx), float64(s.dy)}
	w := Wedge{X: int(n[1]) + s.dx, Y: int(n[2]) + s.dy, R: int(n[5]), From: [2]float64{n[3] + shift[0], n[4] + shift[1]},
		To: [2]float64{n[8] + shift[0], n[9] + shift[1]}, Large: m[7] == "1", Paint: s.Paint, Order: r.order}
	for _, end := range [][2]float64{w.From, w.To} {
		if off := math.Hypot(end[0]-float64(w.X), end[1]-float64(w.Y)) - float64(w.R); math.Abs(off) > 0.2 {
			return errors.New("an arc that does not end on its own circle")
		}
	}
	if turn := w.turn(); (turn > 0.5) != w.Large && math.Abs(turn-0.5) > 0.01 {
		return errors.New("an arc that goes the other way round")
	}
	r.Wedges = append(r.Wedges, w)
	return nil
}

// Box is the box of the whole disc.
func (w Wedge) Box() Box { return Box{w.X - w.R, w.Y - w.R, 2 * w.R, 2 * w.R} }

// turn is the part of the whole turn from one end to the other, clockwise.
func (w Wedge) turn() float64 {
	turn := w.angle(w.To) - w.angle(w.From)
	if turn <= 0 {
		turn++
	}
	return turn
}

// angle is the part of a turn from straight up to a place, clockwise.
func (w Wedge) angle(end [2]float64) float64 {
	a := math.Atan2(end[0]-float64(w.X), float64(w.Y)-end[1]) / (2 * math.Pi)
	if a < 0 {
		a++
	}
	return a
}

// Turn is the part of a whole turn at which the wedge begins, clockwise from straight
// up, and how much of a turn it is.
func (w Wedge) Turn() (from, size float64) { return w.angle(w.From), w.turn() }

// Cut reads the wedge as some of so many equal parts of the disc, counted
// clockwise from straight up; ok is false when its ends lie elsewhere.
func (w Wedge) Cut(parts int) (from, count int, ok bool) {
	first, size := w.angle(w.From)*float64(parts), w.turn()*float64(parts)
	from, count = int(math.Round(first)), int(math.Round(size))
	// An end is written to a tenth of a unit, so it is up to 0.071 units off its place
	// on the rim: 0.0113/R of a turn.
	near := 0.015 / float64(w.R) * float64(parts)
	ok = count > 0 && math.Abs(first-float64(from)) < near && math.Abs(size-float64(count)) < 2*near
	return from % parts, count, ok
}

// Parts reads the wedge in the fewest equal parts of the disc, at most so many, on
// whose cuts both ends lie.
func (w Wedge) Parts(most int) (from, count, parts int, ok bool) {
	for parts = 2; parts <= most; parts++ {
		if from, count, ok = w.Cut(parts); ok {
			return from, count, parts, true
		}
	}
	return 0, 0, 0, false
}
