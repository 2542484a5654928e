package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// adding is an addition with blocks while it is told. The two numbers lie in two
// bands. What comes out of a trade lies after the second number's pieces, and
// ten pieces that are traded are the first ones of their bands, so that a line
// can go round them.
type adding struct {
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

func tellAdded(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.AddByPlace(p))
	k, most, last := addingOf(w)
	k.layOut()
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(most)}
	for i, move := range w.Moves {
		k.written.settle()
		k.settle()
		step := telling.Step{Scene: k.base()}
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
			desc = words.Sentences(words.BlocksDescOn(move.On, k.mat.top), words.BlocksJoined(move))
			step.Title, step.Hands, step.Ask = words.BlocksJoin(move)
		case arithmetic.TradeUp:
			k.trade(shown, move)
			desc = words.Sentences(words.BlocksTradedUp(move), words.BlocksDescOn(move.After, k.mat.top))
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
			telling.AddPart(step.Scene, scene.Always, shown)
		} else {
			telling.AddPart(step.Scene, scene.ShownOnly, shown)
			telling.AddPart(step.Scene, scene.HiddenOnly, k.posed())
			step.Scene.Desc.Hidden = k.asked()
		}
		t.Steps = append(t.Steps, step)
	}
	t.Whole = k.whole()
	return t
}

// addingOf gathers the moves, and the most of each piece that lies there at
// once. last is the index of the join of the largest place, from which on the
// picture shows the answer.
func addingOf(w arithmetic.Working) (k *adding, most arithmetic.Counts, last int) {
	k = &adding{problem: w.Problem}
	for i, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid[move.Nth] = move
		case arithmetic.JoinPlace:
			last, most = i, most.Most(move.On)
		case arithmetic.TradeUp:
			most = most.Most(move.After)
			k.trades = append(k.trades, move)
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	return k, most, last
}

// layOut lays the mat out. Traded pieces have slots after the second number's.
func (k *adding) layOut() {
	first, second := k.laid[0].Counts, k.laid[1].Counts
	traded := second
	for _, trade := range k.trades {
		traded[trade.From+1]++
	}
	top := max(first.Top(), second.Top(), k.read.Counts.Top())
	gutter := 0
	for n, role := range []scene.Role{scene.First, scene.Second} {
		gutter = max(gutter, telling.Width(ofRole(k.laid[n].Number, role), scene.Small, false)+bandLabelGap)
	}
	k.mat = layMat(demand{numbers: []arithmetic.Counts{first, second}, slots: []arithmetic.Counts{first, traded}, top: top, gutter: gutter, floor: floors()})
	k.written = columns{sign: arithmetic.Add.String(), top: top, first: first, second: second}
}

func (k *adding) base() *scene.Scene {
	return k.mat.base("+", ofRole(k.laid[0].Number, scene.First), ofRole(k.laid[1].Number, scene.Second))
}

// settle ends a move: what has just changed is at home.
func (k *adding) settle() {
	for power, role := range k.state {
		if role == scene.Moved {
			k.state[power] = scene.Result
		}
	}
}

// count notes how many pieces lie in a place now.
func (k *adding) count(power int, n int64) {
	k.counted[power], k.state[power] = n, scene.Moved
}

func (k *adding) tallies(s *scene.Scene) {
	for power := k.mat.top; power >= 0; power-- {
		if k.state[power] != scene.Ink {
			k.mat.tally(s, power, ofRole(k.counted[power], k.state[power]))
		}
	}
}

// posed is the problem before any move: both numbers laid out.
func (k *adding) posed() *scene.Scene {
	s := &scene.Scene{}
	k.mat.layAll(s, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(s, 1, k.laid[1].Counts, ofSecond)
	for power := k.mat.top; power >= 0; power-- {
		k.mat.tally(s, power, notation.Line{telling.Unknown()})
	}
	return s
}

func (k *adding) asked() string {
	return words.BlocksDescTwo(k.laid[0], k.laid[1]) + " " + words.BlocksAdd()
}

// whole is the story in one picture: both numbers, a ring round every ten that
// is traded with an arrow to the piece that it becomes, and the digits of the
// sum.
func (k *adding) whole() *scene.Scene {
	shown, arrows := &scene.Scene{}, &scene.Scene{}
	var traded []string
	for _, trade := range k.trades {
		ten := k.around(trade.From, trade.FromFirst, trade.FromSecond, trade.FromCarried)
		shown.Draw(scene.Moved, scene.Outline, ten)
		k.layTraded(arrows, trade.From+1, laid{role: scene.Moved})
		k.arrow(arrows, ten, k.mat.slot(trade.From+1, 1, int(k.laid[1].Counts[trade.From+1])))
		traded = append(traded, words.BlocksTradedUp(trade))
	}
	k.mat.layAll(shown, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(shown, 1, k.laid[1].Counts, ofSecond)
	telling.AddPart(shown, scene.Always, arrows)
	for power := k.mat.top; power >= 0; power-- {
		k.mat.tally(shown, power, ofRole(k.read.Counts[power], scene.Result))
	}
	s := k.base()
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "+", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, ofRole(k.read.Number, scene.Result))
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, k.mat.tallied(1), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	s.Desc = scene.Telling{
		Shown: words.Sentences(words.BlocksDescTwo(k.laid[0], k.laid[1]), words.Sentences(traded...),
			words.BlocksTogether(k.read, k.mat.top)),
		Hidden: k.asked(),
	}
	return s
}
