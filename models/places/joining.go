package places

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// lying is a counter of a place: where it comes from (0 and 1 the two numbers, 2 a
// trade), whether it is one of the ten that are traded, and where it lies.
type lying struct {
	source int
	ten    bool
	at     scene.Circle
}

// pile is the counters of a place, those that have been traded too.
func (k *adding) pile(power int) (list []lying) {
	count := [3]int64{k.laid[0].Counts[power], k.laid[1].Counts[power], k.carried[power]}
	all := count[0] + count[1] + count[2]
	for source, n := range count {
		for i := range n {
			p := lying{source: source}
			switch at := len(list); {
			case !k.joined[power] && source == 0:
				p.at = k.table.slot(power, 0, int(i))
			case !k.joined[power] && source == 1:
				p.at = k.table.slot(power, 1, int(i))
			case !k.joined[power]:
				p.at = k.table.slot(power, 1, int(count[1]+i))
			default:
				p.ten = at < 10 && all >= 10
				p.at = k.table.slot(power, at/10, at%10)
			}
			list = append(list, p)
		}
	}
	return list
}

// lie draws the counters of all places but one, as they lie.
func (k *adding) lie(s *scene.Scene, but int, as whose) {
	for power := k.table.top; power >= 0; power-- {
		for _, p := range k.pile(power) {
			if power != but && !(p.ten && k.gone[power]) {
				k.table.lay(s, power, p.at, as[p.source])
			}
		}
	}
}

// ten is where the ten counters lie that are traded, and draws them.
func (k *adding) ten(s *scene.Scene, power int, as whose) (list []scene.Circle) {
	for _, p := range k.pile(power) {
		if p.ten {
			k.table.lay(s, power, p.at, as[p.source])
			list = append(list, p.at)
		}
	}
	return list
}

// join pushes the counters of a place together. What comes to lie somewhere else
// has just moved.
func (k *adding) join(s *scene.Scene, move arithmetic.JoinPlace) {
	before := k.pile(move.Power)
	k.joined[move.Power] = true
	k.table.light(s, move.Power, scene.Moved)
	k.lie(s, move.Power, midway)
	for i, p := range k.pile(move.Power) {
		as := midway[p.source]
		if p.at != before[i].at {
			as = as.moved()
		}
		k.table.lay(s, move.Power, p.at, as)
	}
	k.count(move.Power, move.Sum)
	k.written.Touch(move.Power)
	if move.Sum < 10 {
		k.written.Write(move.Power, move.Sum)
	}
}

// trade takes ten counters away, which stay as ghosts for this step, and lays one
// in the next column.
func (k *adding) trade(s *scene.Scene, move arithmetic.TradeUp) {
	from, to := move.From, move.From+1
	k.gone[from] = true
	k.lie(s, -1, midway)
	frame := k.table.around(k.ten(s, from, asGhost))
	s.Draw(scene.Gone, scene.Bold, scene.Line{X1: frame.X, Y1: frame.Y + frame.H, X2: frame.X + frame.W, Y2: frame.Y})
	k.carried[to] = 1
	one := k.newest(to)
	k.table.lay(s, to, one, traded.moved())
	k.table.arrow(s, frame.Box(), one, from)
	k.count(from, move.Left)
	k.written.Write(from, move.Left)
	if to > max(k.laid[0].Counts.Top(), k.laid[1].Counts.Top()) {
		k.count(to, 1)
		k.written.Write(to, 1)
	} else {
		k.written.Carry(to, 1)
	}
}

// newest is where the counter lies that a trade has brought to a place.
func (k *adding) newest(power int) scene.Circle {
	list := k.pile(power)
	return list[len(list)-1].at
}
