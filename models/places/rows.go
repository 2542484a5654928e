package places

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// spot is the counter number i in a row of a band; a row of n is centred.
func (k *repeating) spot(power, band, row, i, n int) scene.Circle {
	t := &k.table
	return scene.Circle{X: t.middle(power) - (n-1)*t.step/2 + i*t.step, Y: t.bands[band].Y + t.r + row*t.step, R: t.r}
}

// layRow draws one row of the number.
func (k *repeating) layRow(s *scene.Scene, row int, as laid) {
	for power := k.table.top; power >= 0; power-- {
		n := int(k.laid.Counts[power])
		for i := range n {
			k.table.lay(s, power, k.spot(power, 0, row, i, n), as)
		}
	}
}

// pile is where the counters of a place lie, those that have been traded too: row
// by row, and then what a trade has brought.
func (k *repeating) pile(power int) (list []scene.Circle) {
	n := int(k.laid.Counts[power])
	for row := range int(k.rows.Times) {
		for i := range n {
			list = append(list, k.spot(power, 0, row, i, n))
		}
	}
	for i := range int(k.carried[power]) {
		list = append(list, k.spot(power, 1, 0, i, int(k.carried[power])))
	}
	return list
}

// rest draws the counters of a place that have not been traded.
func (k *repeating) rest(s *scene.Scene, power int, row, new laid) {
	list := k.pile(power)
	for i, at := range list[k.gone[power]:] {
		as := row
		if i+int(k.gone[power]) >= len(list)-int(k.carried[power]) {
			as = new
		}
		k.table.lay(s, power, at, as)
	}
}

// lie draws all counters that are there: those of the rows, and those that a trade
// has brought.
func (k *repeating) lie(s *scene.Scene, row, new laid) {
	for power := k.table.top; power >= 0; power-- {
		k.rest(s, power, row, new)
	}
}

// trade takes all the tens of a place away, which stay as ghosts for this step, and
// lays as many counters in the next column.
func (k *repeating) trade(s *scene.Scene, move arithmetic.TradeTensUp) {
	from, to, t := move.From, move.From+1, &k.table
	k.gone[from], k.carried[to] = move.Gone, move.Tens
	for power := t.top; power >= 0; power-- {
		new := traded
		if power == to {
			new = traded.moved()
		}
		k.rest(s, power, k.own, new)
	}
	gone := k.pile(from)[:move.Gone]
	for _, at := range gone {
		t.lay(s, from, at, ghost)
	}
	k.taken(s, move)
	k.count(from, move.Left)
	k.written.Write(from, move.Left)
	if to > k.laid.Counts.Top() {
		k.count(to, move.Tens)
		k.written.Write(to, move.Tens)
	} else {
		k.written.Carry(to, move.Tens)
	}
}

// taken draws a stroke through the counters that a trade has taken, and an arrow to
// those that it has brought.
func (k *repeating) taken(s *scene.Scene, m arithmetic.TradeTensUp) {
	gone, come := k.table.around(k.pile(m.From)[:m.Gone]).Box(), k.pile(m.From+1)
	s.Draw(scene.Gone, scene.Bold, scene.Line{X1: gone.X, Y1: gone.Bottom(), X2: gone.Right(), Y2: gone.Y})
	k.table.arrow(s, gone, come[len(come)-1], m.From)
}
