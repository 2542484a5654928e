package places

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// slots are the counters of a place from number from up to number to: those of the
// upper band come first.
func (k *taking) slots(power int, from, to int64) (list []scene.Circle) {
	for i := from; i < to; i++ {
		if upper := k.upper[power]; i >= upper {
			list = append(list, k.table.slot(power, 1, int(i-upper)))
		} else {
			list = append(list, k.table.slot(power, 0, int(i)))
		}
	}
	return list
}

func (k *taking) lay(s *scene.Scene, power int, from, to int64, as laid) {
	for _, at := range k.slots(power, from, to) {
		k.table.lay(s, power, at, as)
	}
}

// lie draws all counters.
func (k *taking) lie(s *scene.Scene, on arithmetic.Counts, as laid) {
	for power := k.table.top; power >= 0; power-- {
		k.lay(s, power, 0, on[power], as)
	}
}

// rows writes how many counters there are to take from, what is to be taken, and
// what is left where that has been done. The numbers of two places may have just
// changed.
func (k *taking) rows(s *scene.Scene, one, other int) {
	t := &k.table
	for power := t.top; power >= 0; power-- {
		role := scene.First
		if power == one || power == other {
			role = scene.Moved
		}
		t.write(s, power, rowFrom, digit(k.from[power], role))
		if k.done[power] && !(k.takes[power].Leading) {
			t.write(s, power, rowLeft, digit(k.takes[power].Left, scene.Result))
		}
	}
	t.sign(s, rowTaken, arithmetic.Subtract.String())
	t.writeAll(s, rowTaken, k.second, scene.Second)
	t.rule(s, rowLeft)
}

// trade draws the counters after a trade: the one that went as a ghost, the ten
// that came.
func (k *taking) trade(s *scene.Scene, move arithmetic.TradeDown) {
	from, to, on := move.From, move.From-1, move.After
	gone := k.slots(from, on[from], on[from]+1)
	if k.from[from] == k.upper[from] {
		k.upper[from] = on[from]
	}
	k.from = on
	k.changed[from], k.changed[to] = true, true
	for power := k.table.top; power >= 0; power-- {
		stay := on[power]
		if power == to {
			stay = k.upper[to]
			k.lay(s, power, stay, on[power], ofFirst.moved())
		}
		k.lay(s, power, 0, stay, ofFirst)
	}
	k.table.lay(s, from, gone[0], ghost)
	k.table.strike(s, from, gone, scene.OfNothing)
	k.rows(s, from, to)
	k.written.Replace(from, on[from])
	k.written.Replace(to, on[to])
	k.written.Raise(to)
}

// take draws the counters while those of one place are taken away.
func (k *taking) take(s *scene.Scene, move arithmetic.TakePlace) {
	k.lie(s, move.After, ofFirst)
	k.lay(s, move.Power, move.Left, move.From, ofFirst.gone())
	k.table.strike(s, move.Power, k.slots(move.Power, move.Left, move.From), scene.OfSecond)
	k.done[move.Power] = true
	k.rows(s, move.Power, -1)
	k.written.Touch(move.Power)
	if !move.Leading {
		k.written.Write(move.Power, move.Left)
	}
}
