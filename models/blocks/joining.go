package blocks

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// lie draws all pieces that lie on the mat.
func (k *adding) lie(s *scene.Scene, first, second, carried laid) {
	for power := k.mat.top; power >= 0; power-- {
		a, b := k.laid[0].Counts[power], k.laid[1].Counts[power]
		k.mat.lay(s, power, 0, k.gone[0][power], a, first)
		k.mat.lay(s, power, 1, k.gone[1][power], b, second)
		if k.carried[power] > 0 {
			k.layTraded(s, power, carried)
		}
	}
}

// fromTrade is a piece that came out of a trade. It belongs to neither number
// until the answer is read, and a line round it keeps it apart from them.
var fromTrade = laid{role: scene.Result}

// layTraded draws the piece that a trade brought to a place, and the line.
func (k *adding) layTraded(s *scene.Scene, power int, as laid) {
	slot := k.laid[1].Counts[power]
	if as.of == scene.OfNothing {
		dx, _ := k.mat.gaps(power)
		s.Draw(as.role, scene.Plain, roundRooms([]scene.Box{k.mat.slot(power, 1, int(slot))}, min(dx/2, 5)))
	}
	k.mat.lay(s, power, 1, slot, slot+1, as)
}

// join puts a ring round all pieces of a place.
func (k *adding) join(s *scene.Scene, move arithmetic.JoinPlace) {
	if move.Sum > 0 {
		s.Draw(scene.Moved, scene.Outline, k.around(move.Power, move.First, move.Second, move.Carried))
	}
	k.lie(s, ofFirst, ofSecond, fromTrade)
	k.count(move.Power, move.Sum)
	k.written.touched[move.Power] = true
	if move.Sum < 10 {
		k.written.write(move.Power, move.Sum)
	}
}

// around is a line round the first pieces of a place.
func (k *adding) around(power int, first, second, carried int64) scene.Polygon {
	dx, _ := k.mat.gaps(power)
	return roundRooms(k.rooms(power, first, second, carried), min(dx/2, 5))
}

// rooms are the slots of the first pieces of a place: of the first number, of
// the second, and what a trade brought.
func (k *adding) rooms(power int, first, second, carried int64) []scene.Box {
	var list []scene.Box
	for i := range first {
		list = append(list, k.mat.slot(power, 0, int(i)))
	}
	for i := range second + carried {
		list = append(list, k.mat.slot(power, 1, int(i)))
	}
	return list
}

// trade takes ten pieces away, which stay as ghosts for this step, and lays one
// of the next place.
func (k *adding) trade(s *scene.Scene, move arithmetic.TradeUp) {
	from, to := move.From, move.From+1
	k.gone[0][from], k.gone[1][from] = move.FromFirst, move.FromSecond
	k.carried[from] -= move.FromCarried
	k.lie(s, ofFirst, ofSecond, fromTrade)
	k.mat.lay(s, from, 0, 0, move.FromFirst, ghost)
	k.mat.lay(s, from, 1, 0, move.FromSecond+move.FromCarried, ghost)
	ten := k.around(from, move.FromFirst, move.FromSecond, move.FromCarried)
	group := ten.Box()
	s.Draw(scene.Gone, scene.Bold, scene.Line{X1: group.X, Y1: group.Bottom(), X2: group.Right(), Y2: group.Y})
	k.carried[to] = 1
	k.layTraded(s, to, laid{role: scene.Moved})
	k.arrow(s, ten, k.mat.slot(to, 1, int(k.laid[1].Counts[to])))
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
