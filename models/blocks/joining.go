package blocks

import (
	"cmp"
	"slices"

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

// lying is a piece of a place: where it comes from, whether it is one of the ten
// that are traded, and where it lies.
type lying struct {
	source int
	ten    bool
	room   scene.Box
}

// rodAside sets a ten from a trade, which has a line round it, off from the tens
// beside it, which stand close.
const rodAside = 6

// pile is the pieces of a place, those that have been traded too. When they have
// been pushed together, a full ten lies in the upper band, made up by the last
// pieces of the second number, and the rest in the lower one.
func (k *adding) pile(power int) (list []lying) {
	var ten [sources]int64
	if t := k.ten[power]; t != nil {
		ten = [sources]int64{t.FromFirst, t.FromSecond, t.FromCarried}
	}
	count := [sources]int64{k.laid[0].Counts[power], k.laid[1].Counts[power], k.carried[power]}
	var next [closedUp + 1]int // the next slot of each band
	for source, n := range count {
		for i := range n {
			p := lying{source: source, ten: i >= n-ten[source]}
			band := 1
			switch {
			case source == fromFirst, k.joined[power] && p.ten:
				band = 0
			case k.joined[power] && k.ten[power] == nil && count[fromFirst] > 0:
				band = closedUp
			}
			p.room = k.mat.slot(power, band, next[band])
			if source == fromTrade && band > 0 && power == 1 {
				p.room.X += rodAside
			}
			next[band]++
			list = append(list, p)
		}
	}
	return list
}

// lie draws all pieces that lie on the mat.
func (k *adding) lie(s *scene.Scene, as [sources]laid) { k.lieBut(s, -1, as) }

// lieBut draws the pieces of all places but one.
func (k *adding) lieBut(s *scene.Scene, but int, as [sources]laid) {
	for power := k.mat.top; power >= 0; power-- {
		for _, p := range k.pile(power) {
			if power != but && !(p.ten && k.gone[power]) {
				k.mat.layIn(s, power, p.room, as[p.source])
			}
		}
	}
}

// layTen draws the ten pieces of a place that have been traded.
func (k *adding) layTen(s *scene.Scene, power int, as [sources]laid) {
	for _, p := range k.pile(power) {
		if p.ten {
			k.mat.layIn(s, power, p.room, as[p.source])
		}
	}
}

// join pushes the pieces of a place together, and puts a line round them. What
// comes to lie somewhere else has just moved.
func (k *adding) join(s *scene.Scene, move arithmetic.JoinPlace) {
	before := k.pile(move.Power)
	k.joined[move.Power] = true
	after := k.pile(move.Power)
	if len(after) > 0 {
		s.Draw(scene.Moved, scene.Outline, roundPile(after))
	}
	k.lieBut(s, move.Power, midway)
	for i, p := range after {
		as := midway[p.source]
		if p.room != before[i].room {
			as = as.moved()
		}
		k.mat.layIn(s, move.Power, p.room, as)
	}
	k.count(move.Power, move.Sum)
	k.written.Touch(move.Power)
	if move.Sum < 10 {
		k.written.Write(move.Power, move.Sum)
	}
}

// roundPile is a line round pieces.
func roundPile(list []lying) scene.Polygon {
	const air = 5
	var rooms []scene.Box
	for _, p := range list {
		rooms = append(rooms, p.room)
	}
	slices.SortFunc(rooms, func(a, b scene.Box) int { return cmp.Or(a.Y-b.Y, a.X-b.X) })
	return roundRooms(rooms, air)
}

// roundTen is a line round the ten pieces of a place that are traded.
func (k *adding) roundTen(power int) scene.Polygon {
	return roundPile(slices.DeleteFunc(k.pile(power), func(p lying) bool { return !p.ten }))
}

// carriedRoom is where the piece lies that a trade has brought to a place.
func (k *adding) carriedRoom(power int) scene.Box {
	list := k.pile(power)
	return list[len(list)-1].room
}

// trade takes ten pieces away, which stay as ghosts for this step, and lays one
// of the next place.
func (k *adding) trade(s *scene.Scene, move arithmetic.TradeUp) {
	from, to := move.From, move.From+1
	k.gone[from] = true
	k.lie(s, midway)
	k.layTen(s, from, [sources]laid{ghost, ghost, ghost})
	ten := k.roundTen(from)
	group := ten.Box()
	s.Draw(scene.Gone, scene.Bold, scene.Line{X1: group.X, Y1: group.Bottom(), X2: group.Right(), Y2: group.Y})
	k.carried[to] = 1
	k.mat.layIn(s, to, k.carriedRoom(to), newOne)
	k.arrow(s, ten, k.carriedRoom(to))
	k.count(from, move.Left)
	k.written.Write(from, move.Left)
	if to > max(k.laid[0].Counts.Top(), k.laid[1].Counts.Top()) {
		k.count(to, 1)
		k.written.Write(to, 1)
	} else {
		k.written.Carry(to, 1)
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
