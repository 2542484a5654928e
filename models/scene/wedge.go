package scene

// Wedge is a part of a disc with its centre at X, Y and radius R, cut from the
// centre in Parts equal parts: Count of them, clockwise, the first one behind the
// cut number From. Cut 0 stands straight up. Count is less than Parts: a whole
// disc is a [Circle].
type Wedge struct{ X, Y, R, From, Count, Parts int }

func (Wedge) shape() {}

// Box is the box of the whole disc, in which the wedge turns.
func (w Wedge) Box() Box { return Box{w.X - w.R, w.Y - w.R, 2 * w.R, 2 * w.R} }

// Ends are the two places on the rim where the wedge begins and ends, in tenths
// of a unit.
func (w Wedge) Ends() (from, to Point) {
	return w.rim(w.From), w.rim(w.From + w.Count)
}

func (w Wedge) rim(cut int) Point { return Rim(w.X, w.Y, w.R, cut, w.Parts) }

// Outline is the edge of the wedge as straight stretches between whole units,
// from the centre round and back to it.
func (w Wedge) Outline() []Point {
	const stretches = 24
	points := []Point{{w.X, w.Y}}
	for i := range stretches + 1 {
		points = append(points, NearRim(w.X, w.Y, w.R, w.From*stretches+w.Count*i, w.Parts*stretches))
	}
	return append(points, Point{w.X, w.Y})
}

// NearRim is the whole unit nearest to [Rim]: for ticks, corners and labels.
func NearRim(x, y, r, part, parts int) Point {
	p := Rim(x, y, r, part, parts)
	return Point{(p.X + 5) / 10, (p.Y + 5) / 10}
}

// Rim is the place, in tenths of a unit, on the circle with its centre at x, y and
// radius r that is part of the whole turn away from straight up, clockwise. It is
// the one place where a position is rounded.
func Rim(x, y, r, part, parts int) Point {
	across := sine(part, parts)
	up := sine(4*part+parts, 4*parts) // a quarter turn on
	tenths := func(v int64) int {
		v *= int64(10 * r)
		if v < 0 {
			return -int((-v + unit/2) / unit)
		}
		return int((v + unit/2) / unit)
	}
	return Point{10*x + tenths(across), 10*y - tenths(up)}
}

// unit is 1 in the whole numbers that sine counts with, and halfPi a quarter turn.
const (
	unit   = 1 << 30
	halfPi = 1_686_629_713 // π/2 · 2^30 = 1686629713.06
)

// sine is the sine of part/parts of a turn, times unit. It adds the terms of its
// Taylor series in whole numbers, so that it is the same on every machine.
func sine(part, parts int) int64 {
	part = (part%parts + parts) % parts
	quarter, rest := 4*part/parts, 4*part%parts // rest/parts of a quarter turn
	if quarter%2 == 1 {
		rest = parts - rest
	}
	x := int64(halfPi) * int64(rest) / int64(parts)
	square := x * x / unit
	sum, term := int64(0), x
	for n := int64(2); term != 0; n += 2 {
		sum += term
		term = -term * square / unit / (n * (n + 1))
	}
	if quarter >= 2 {
		return -sum
	}
	return sum
}
