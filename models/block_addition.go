package models

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// blockAdding is an addition with blocks while it is told. The two numbers lie in two
// bands. What comes out of a trade lies after the second number's pieces, and
// ten pieces that are traded are the first ones of their bands, so that a line
// can go round them.
type blockAdding struct {
	problem arithmetic.Problem
	mat     mat
	laid    [2]arithmetic.LayOut
	trades  []arithmetic.TradeUp
	read    arithmetic.ReadOff
	gone    [2]arithmetic.Counts // pieces of each number that have been traded
	carried arithmetic.Counts    // 1 where a piece from a trade lies
	counted arithmetic.Counts    // pieces in the places that have been joined
	state   [arithmetic.PlaceNames]scene.Role
	written columns
}

func blocksAdded(p arithmetic.Problem) Telling {
	w := mustWork(arithmetic.AddByPlace(p))
	k, last := blockAddingOf(w)
	most := k.layOut()
	t := Telling{Answer: w.Answer, Pieces: blockPieces(most)}
	for i, move := range w.Moves {
		k.written.settle()
		k.settle()
		step := Step{Scene: k.base()}
		shown := &scene.Scene{}
		desc := words.BlocksDescTwo(k.laid[0], k.laid[1])
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.mat.layAll(shown, 0, k.laid[0].Counts, ofFirst)
			if desc = words.BlocksDescLaid(move); move.Nth == 1 {
				desc = words.BlocksDescTwo(k.laid[0], move)
				k.mat.layAll(shown, 1, move.Counts, ofSecond)
			}
			step.Title, step.Hands, step.Ask = words.BlocksLayOut(move)
		case arithmetic.JoinPlace:
			k.join(shown, move)
			desc += " " + words.BlocksJoined(move)
			step.Title, step.Hands, step.Ask = words.BlocksJoin(move)
		case arithmetic.TradeUp:
			k.trade(shown, move)
			desc += " " + words.BlocksTradedUp(move)
			step.Title, step.Hands, step.Ask = words.BlocksTradeUp(move)
		case arithmetic.ReadOff:
			k.lie(shown, ofAnswer, ofAnswer, ofAnswer)
			desc = words.BlocksDescOn(move.Counts, k.mat.top)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
		}
		k.tallies(shown)
		step.Symbols = k.written.block()
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Same(desc)
		if i < last {
			addPart(step.Scene, scene.Always, shown)
		} else {
			addPart(step.Scene, scene.ShownOnly, shown)
			addPart(step.Scene, scene.HiddenOnly, k.posed())
			step.Scene.Desc.Hidden = k.asked()
		}
		t.Steps = append(t.Steps, step)
	}
	t.Whole = k.whole()
	return t
}

// blockAddingOf gathers the moves. last is the index of the join of the largest
// place, from which on the picture shows the answer.
func blockAddingOf(w arithmetic.Working) (k *blockAdding, last int) {
	k = &blockAdding{problem: w.Problem}
	for i, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid[move.Nth] = move
		case arithmetic.JoinPlace:
			last = i
		case arithmetic.TradeUp:
			k.trades = append(k.trades, move)
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	return k, last
}

// layOut lays the mat out and returns the pieces that are needed at once.
func (k *blockAdding) layOut() (most arithmetic.Counts) {
	first, second := k.laid[0].Counts, k.laid[1].Counts
	traded := second
	for _, trade := range k.trades {
		traded[trade.From+1]++
	}
	top := max(first.Top(), second.Top(), k.read.Counts.Top())
	gutter := 0
	for n, role := range []scene.Role{scene.First, scene.Second} {
		gutter = max(gutter, blockLineWidth(ofRole(k.laid[n].Number, role), scene.Small)+bandLabelGap)
	}
	k.mat = layMat(demand{numbers: []arithmetic.Counts{first, second}, slots: []arithmetic.Counts{first, traded}, top: top, gutter: gutter, floor: floors()})
	k.written = columns{sign: arithmetic.Add.String(), top: top, first: first, second: second}
	return first.Plus(traded)
}

func (k *blockAdding) base() *scene.Scene {
	return k.mat.base("+", ofRole(k.laid[0].Number, scene.First), ofRole(k.laid[1].Number, scene.Second))
}

// settle ends a move: what has just changed is at home.
func (k *blockAdding) settle() {
	for power, role := range k.state {
		if role == scene.Moved {
			k.state[power] = scene.Result
		}
	}
}

// count notes how many pieces lie in a place now.
func (k *blockAdding) count(power int, n int64) {
	k.counted[power], k.state[power] = n, scene.Moved
}

func (k *blockAdding) tallies(s *scene.Scene) {
	for power := k.mat.top; power >= 0; power-- {
		if k.state[power] != scene.Ink {
			k.mat.tally(s, power, ofRole(k.counted[power], k.state[power]))
		}
	}
}

// lie draws all pieces that lie on the mat.
func (k *blockAdding) lie(s *scene.Scene, first, second, carried laid) {
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
func (k *blockAdding) layTraded(s *scene.Scene, power int, as laid) {
	slot := k.laid[1].Counts[power]
	if as.of == scene.OfNothing {
		dx, _ := k.mat.gaps(power)
		s.Draw(as.role, scene.Plain, roundRooms([]scene.Box{k.mat.slot(power, 1, int(slot))}, min(dx/2, 5)))
	}
	k.mat.lay(s, power, 1, slot, slot+1, as)
}

// join lays a ground under all pieces of a place.
func (k *blockAdding) join(s *scene.Scene, move arithmetic.JoinPlace) {
	if move.Sum > 0 {
		s.Draw(scene.Moved, scene.Plain, k.around(move.Power, move.First, move.Second, move.Carried))
	}
	k.lie(s, ofFirst, ofSecond, fromTrade)
	k.count(move.Power, move.Sum)
	k.written.touched[move.Power] = true
	if move.Sum < 10 {
		k.written.write(move.Power, move.Sum)
	}
}

// around is a line round the first pieces of a place.
func (k *blockAdding) around(power int, first, second, carried int64) scene.Polygon {
	dx, _ := k.mat.gaps(power)
	return roundRooms(k.rooms(power, first, second, carried), min(dx/2, 5))
}

// rooms are the slots of the first pieces of a place: of the first number, of
// the second, and what a trade brought.
func (k *blockAdding) rooms(power int, first, second, carried int64) []scene.Box {
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
func (k *blockAdding) trade(s *scene.Scene, move arithmetic.TradeUp) {
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
func (k *blockAdding) arrow(s *scene.Scene, ten scene.Polygon, one scene.Box) {
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

// posed is the problem before any move: both numbers laid out.
func (k *blockAdding) posed() *scene.Scene {
	s := &scene.Scene{}
	k.mat.layAll(s, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(s, 1, k.laid[1].Counts, ofSecond)
	for power := k.mat.top; power >= 0; power-- {
		k.mat.tally(s, power, notation.Line{unknown()})
	}
	return s
}

func (k *blockAdding) asked() string {
	return words.BlocksDescTwo(k.laid[0], k.laid[1]) + " " + words.BlocksAdd()
}

// whole is the story in one picture: both numbers, a ground under every ten that
// is traded with an arrow to the piece that it becomes, and the digits of the
// sum.
func (k *blockAdding) whole() *scene.Scene {
	shown, arrows := &scene.Scene{}, &scene.Scene{}
	var traded []string
	for _, trade := range k.trades {
		ten := k.around(trade.From, trade.FromFirst, trade.FromSecond, trade.FromCarried)
		shown.Draw(scene.Moved, scene.Plain, ten)
		k.layTraded(arrows, trade.From+1, laid{role: scene.Moved})
		k.arrow(arrows, ten, k.mat.slot(trade.From+1, 1, int(k.laid[1].Counts[trade.From+1])))
		traded = append(traded, words.BlocksTradedUp(trade))
	}
	k.mat.layAll(shown, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(shown, 1, k.laid[1].Counts, ofSecond)
	addPart(shown, scene.Always, arrows)
	for power := k.mat.top; power >= 0; power-- {
		k.mat.tally(shown, power, ofRole(k.read.Counts[power], scene.Result))
	}
	s := k.base()
	addPart(s, scene.ShownOnly, shown)
	addPart(s, scene.HiddenOnly, k.posed())
	a, b, _ := k.problem.Operands()
	asked := join(numeral(a, scene.First), "+", numeral(b, scene.Second), "=")
	answered := join(asked, ofRole(k.read.Number, scene.Result))
	asked = join(asked, unknown())
	equation(s, k.mat.tallied(1), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	s.Desc = scene.Telling{
		Shown: words.Sentences(words.BlocksDescTwo(k.laid[0], k.laid[1]), words.Sentences(traded...),
			words.BlocksTogether(k.read, k.mat.top)),
		Hidden: k.asked(),
	}
	return s
}
