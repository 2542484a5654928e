package blocks

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// sources is where a piece of an addition comes from: the first number, the
// second, or a trade.
const (
	fromFirst = iota
	fromSecond
	fromTrade
	sources
)

// midway is how the pieces lie while the lesson goes on.
var midway = [sources]laid{ofFirst, ofSecond, fromTen}

// counts is how many pieces of a place come from each source.
func (k *adding) counts(power int) [sources]int64 {
	return [sources]int64{k.laid[0].Counts[power], k.laid[1].Counts[power], k.carried[power]}
}

// home is the band in which the pieces of a place from one source lie, and the
// slot of the first of them.
func (k *adding) home(power, source int) (band int, slot int64) {
	count := k.counts(power)
	switch {
	case k.joined[power]:
		for _, n := range count[:source] {
			slot += n
		}
		return together, slot
	case source == fromFirst:
		return 0, 0
	case source == fromSecond:
		return 1, 0
	}
	return 1, count[fromSecond]
}

// layFrom draws the pieces of a place that come from one source, from one of them
// up to another.
func (k *adding) layFrom(s *scene.Scene, power, source int, from, to int64, as laid) {
	band, slot := k.home(power, source)
	k.mat.lay(s, power, band, slot+from, slot+to, as)
}

// lie draws all pieces that lie on the mat.
func (k *adding) lie(s *scene.Scene, as [sources]laid) {
	for power := k.mat.top; power >= 0; power-- {
		for source, count := range k.counts(power) {
			k.layFrom(s, power, source, k.gone[source][power], count, as[source])
		}
	}
}

// layTen draws the ten pieces of a trade.
func (k *adding) layTen(s *scene.Scene, move arithmetic.TradeUp, as [sources]laid) {
	for source, count := range tenFrom(move) {
		k.layFrom(s, move.From, source, 0, count, as[source])
	}
}

// tenFrom is how many of the ten pieces of a trade come from each source.
func tenFrom(move arithmetic.TradeUp) [sources]int64 {
	return [sources]int64{move.FromFirst, move.FromSecond, move.FromCarried}
}

// carriedRoom is the room of the piece that a trade brings to a place.
func (k *adding) carriedRoom(power int) scene.Box {
	band, slot := k.home(power, fromTrade)
	return k.mat.slot(power, band, int(slot))
}

// join pushes the pieces of a place together, and puts a line round them.
func (k *adding) join(s *scene.Scene, move arithmetic.JoinPlace) {
	k.joined[move.Power] = true
	if move.Sum > 0 {
		s.Draw(scene.Moved, scene.Outline, k.around(move.Power, move.Sum))
	}
	k.lie(s, midway)
	k.count(move.Power, move.Sum)
	k.written.touched[move.Power] = true
	if move.Sum < 10 {
		k.written.write(move.Power, move.Sum)
	}
}

// around is a line round the first pieces of a place that lie together.
func (k *adding) around(power int, count int64) scene.Polygon {
	const air = 5
	rooms := make([]scene.Box, count)
	for i := range rooms {
		rooms[i] = k.mat.slot(power, together, i)
	}
	return roundRooms(rooms, air)
}

// trade takes ten pieces away, which stay as ghosts for this step, and lays one
// of the next place.
func (k *adding) trade(s *scene.Scene, move arithmetic.TradeUp) {
	from, to := move.From, move.From+1
	for source, count := range tenFrom(move) {
		k.gone[source][from] = count
	}
	k.lie(s, midway)
	k.layTen(s, move, [sources]laid{ghost, ghost, ghost})
	ten := k.around(from, 10)
	group := ten.Box()
	s.Draw(scene.Gone, scene.Bold, scene.Line{X1: group.X, Y1: group.Bottom(), X2: group.Right(), Y2: group.Y})
	k.carried[to] = 1
	k.layFrom(s, to, fromTrade, 0, 1, newOne)
	k.arrow(s, ten, k.carriedRoom(to))
	k.count(from, move.Left)
	k.written.write(from, move.Left)
	if to > max(k.laid[0].Counts.Top(), k.laid[1].Counts.Top()) {
		k.count(to, 1)
		k.written.write(to, 1)
	} else {
		k.written.carry(to, 1)
	}
}

// arrow leads from ten pieces to the one they are traded for, which lies in the
// tray to the left with nothing between it and the edge.
func (k *adding) arrow(s *scene.Scene, ten scene.Polygon, one scene.Box) {
	const head = 12
	from, tip := ten.Box(), one.Right()+6
	y := one.Y + one.H/2
	if lo, hi := max(from.Y, one.Y), min(from.Bottom(), one.Bottom()); hi-lo > 2*head {
		y = (lo + hi) / 2
	}
	start := min(max(y, from.Y+head), from.Bottom()-head)
	line := scene.Polyline{{X: from.X, Y: y}, {X: tip + head, Y: y}}
	if start != y {
		bend := from.X - (trayPad+trayGap)/2
		line = scene.Polyline{{X: from.X, Y: start}, {X: bend, Y: start}, {X: bend, Y: y}, {X: tip + head, Y: y}}
	}
	s.Draw(scene.Moved, scene.Plain, line)
	s.Draw(scene.Moved, scene.Deep, scene.Polygon{{X: tip, Y: y}, {X: tip + head, Y: y - head/2}, {X: tip + head, Y: y + head/2}})
}
