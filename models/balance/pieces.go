package balance

import (
	"slices"

	"modeler/fraction"
	"modeler/models/scene"
)

// owner is whose the pieces of a group are.
type owner struct {
	role scene.Role
	of   scene.Of
}

// loaded is how a pan is filled in one picture.
type loaded struct {
	side   int
	lower  int // how far the pan has sunk; less than 0 where it has risen
	taken  int64
	gone   bool    // what is taken is not even a ghost any more
	owners []owner // of its groups
	of     scene.Of
	blank  string // what is in the bag: "?", or the number once it is open
	when   scene.When
}

// addPieces stands what a pan carries on it: what is taken, from the last group
// back, is a ghost.
func (b *picture) addPieces(s *scene.Scene, p loaded) {
	taken := int(p.taken)
	slots := b.slots[p.side]
	for i := len(slots) - 1; i >= 0; i-- {
		slot, own := slots[i], p.owners[i]
		if slot.Blank {
			b.addBag(s, slot, p, own)
			continue
		}
		there, off := apart(b.spots(slot), int(slot.Off))
		for _, q := range off {
			// What is subtracted was laid and is no longer there.
			s.Add(scene.Item{Shape: b.shape(q, p.lower), Role: scene.Gone, Finish: scene.Dashed, When: p.when})
		}
		b.strike(s, off, p)
		there, away := apart(there, taken)
		for _, q := range away {
			taken -= q.worth
		}
		for _, q := range there {
			s.Add(b.piece(q, p, own))
		}
		if p.gone {
			continue
		}
		for _, q := range away {
			ghost := b.piece(q, p, own)
			ghost.Role, ghost.Finish = scene.Gone, scene.Dashed
			s.Add(ghost)
		}
		b.strike(s, away, p)
	}
}

// piece is a cube or a bar on its pan. Those of a product or a difference beside a
// blank belong to none of the numbers of the problem.
func (b *picture) piece(q spot, p loaded, own owner) scene.Item {
	it := scene.Item{Shape: b.shape(q, p.lower), Role: own.role, When: p.when}
	if own.of != scene.OfNothing {
		it.Of, it.Worth = own.of, fraction.Whole(int64(q.worth))
	}
	return it
}

func (b *picture) shape(q spot, lower int) scene.Rect {
	round := 0
	if b.cube > 0 {
		round = 5
	}
	return scene.Rect{X: q.x, Y: b.panTop + lower - q.up - q.high - 1, W: q.wide, H: q.high, Round: round}
}

// strike draws one stroke through every tower, or bar, of what is gone.
func (b *picture) strike(s *scene.Scene, gone []spot, p loaded) {
	for i := 0; i < len(gone); {
		first, last := gone[i], gone[i]
		for ; i < len(gone) && gone[i].x == first.x; i++ {
			last = gone[i]
		}
		low, high := b.shape(first, p.lower), b.shape(last, p.lower)
		low, high = lowest(low, high)
		line := scene.Line{X1: first.x + 4, Y1: low.Y + low.H - 4, X2: first.x + first.wide - 4, Y2: high.Y + 4}
		s.Add(scene.Item{Shape: line, Role: scene.Gone, Finish: scene.Bold, When: p.when})
	}
}

func lowest(a, b scene.Rect) (low, high scene.Rect) {
	if a.Y < b.Y {
		return b, a
	}
	return a, b
}

// apart splits pieces in those that stay and those that are taken: the last ones. A
// bar may be split.
func apart(list []spot, taken int) (there, away []spot) {
	for i := len(list) - 1; i >= 0; i-- {
		q := list[i]
		switch {
		case taken >= q.worth:
			taken, away = taken-q.worth, append(away, q)
		case taken > 0:
			unit := q.wide / q.worth
			end := q
			end.worth, end.wide = taken, taken*unit
			end.x = q.x + (q.worth-taken)*unit
			q.worth, q.wide = q.worth-taken, end.x-q.x
			there, away, taken = append(there, q), append(away, end), 0
		default:
			there = append(there, q)
		}
	}
	slices.Reverse(there)
	slices.Reverse(away)
	return there, away
}

// addBag draws the closed bag of the blank, or the open one with what is in it.
func (b *picture) addBag(s *scene.Scene, slot slot, p loaded, own owner) {
	bag := scene.Rect{X: slot.x - b.bag[0]/2, Y: b.panTop + p.lower - b.bag[1] - 1, W: b.bag[0], H: b.bag[1], Round: 12}
	s.Add(scene.Item{Shape: bag, Role: scene.Hidden, Finish: scene.Dashed, When: p.when})
	if p.blank == "?" {
		mark := scene.Words(slot.x, bag.Y+bag.H/2, scene.Middle, "?")
		s.Add(scene.Item{Shape: mark, Role: scene.Hidden, When: p.when})
		return
	}
	var inside []spot
	if b.cube > 0 {
		wide := max(1, towers(b.found)) * b.cube
		inside = b.cubesAt(slot.x-wide/2, int(b.found))
	} else if b.found > 0 {
		wide := int(b.found) * b.unit
		inside = b.barsAt(slot.x-wide/2, 1, int(b.found), 0)
	}
	for _, q := range inside {
		s.Add(b.piece(q, p, own))
	}
}
