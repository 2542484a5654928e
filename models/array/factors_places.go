package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/words"
)

const (
	setGap     = 36 // between two arrays beside or under each other
	setName    = 44 // room for the name under an array
	seenSquare = 10 // the smallest square that is drawn as one

	largestSquare = 56
)

// place puts the arrays beside each other as long as they fit, on one baseline,
// then on the next line; after them the one turned, if there is one.
func (a *factors) place(turned *scene.Box) {
	wide := scene.PaperW - 2*scene.Margin
	a.unit = min(a.most, wide/int(a.n))
	a.at, a.names, a.lines = nil, nil, nil
	x, top := 0, a.top
	var line, blocks []scene.Box
	var rooms []int
	flush := func() {
		tall := 0
		for _, b := range line {
			tall = max(tall, b.H)
		}
		left := scene.Margin + (wide-(x-setGap))/2
		a.lines = append(a.lines, top)
		for _, b := range line {
			room := rooms[len(a.at)]
			a.at = append(a.at, scene.Box{X: left + (room-b.W)/2, Y: top + tall - b.H, W: b.W, H: b.H})
			a.names = append(a.names, scene.Point{X: left + room/2, Y: top + tall + setName/2})
			left += room + setGap
		}
		top += tall + setName + setGap/2
		line, x = nil, 0
	}
	for _, m := range a.pairs {
		b := a.box(m)
		name := words.ArrayBothTurns(m.Rows, m.Cols)
		if a.flow {
			name = words.ArrayFact(m.Rows, m.Cols) + words.ArrayBy + "  "
		}
		blocks, rooms = append(blocks, b), append(rooms, max(b.W, scene.Advance(name, scene.Small, false)))
	}
	if turned != nil {
		blocks, rooms = append(blocks, *turned), append(rooms, max(turned.W, scene.Advance(words.ArrayTurnedName(a.last()), scene.Small, false)))
	}
	for i, b := range blocks {
		// The first array has a line of its own: it is all that is drawn while
		// the others are asked for.
		if i == 1 && !a.flow || len(line) > 0 && x+rooms[i] > wide {
			flush()
		}
		line, x = append(line, b), x+rooms[i]+setGap
	}
	flush()
	if len(blocks) == 1 && !a.flow {
		top += askedTall
	}
	a.bottom = top - setGap/2
}

// box is the size of an array. Where single squares are too small to be seen it
// is not to scale: a few rows are higher than they would be.
func (a *factors) box(m arithmetic.FindPair) scene.Box {
	const least, row = 22, 6
	b := scene.Box{W: int(m.Cols) * a.unit, H: int(m.Rows) * a.unit}
	if !a.toScale() {
		b.H = min(b.W, max(b.H, least+row*min(4, int(m.Rows))))
	}
	return b
}

func (a *factors) toScale() bool { return a.unit >= seenSquare }

// last is the last array that is not as high as it is wide.
func (a *factors) last() arithmetic.FindPair {
	last := a.pairs[0]
	for _, m := range a.pairs {
		if m.Rows < m.Cols {
			last = m
		}
	}
	return last
}

// turned is the size of the last array turned on its side; nil where that would
// be itself or too high.
func (a *factors) turned() *scene.Box {
	const most = 300
	a.unit = min(a.most, (scene.PaperW-2*scene.Margin)/int(a.n))
	b := a.box(a.last())
	if b.W == b.H || b.W > most {
		return nil
	}
	return &scene.Box{W: b.H, H: b.W}
}
