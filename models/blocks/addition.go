package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// adding is an addition with blocks while it is told. The two numbers lie in two
// bands, and what comes out of a trade lies after the second number's pieces. Ten
// pieces that will be traded come together in the upper band.
type adding struct {
	problem arithmetic.Problem
	mat     mat
	laid    [2]arithmetic.LayOut
	trades  []arithmetic.TradeUp
	ten     [places]*arithmetic.TradeUp // of each place in which there is one
	read    arithmetic.ReadOff
	joined  [places]bool      // places whose pieces have been pushed together
	gone    [places]bool      // places whose ten has been traded
	carried arithmetic.Counts // 1 where a trade has brought a piece
	counted arithmetic.Counts // pieces in the places that have been joined
	state   [arithmetic.PlaceNames]scene.Role
	written telling.Columns
}

func tellAdded(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.AddByPlace(p))
	k, most, last := addingOf(w)
	k.layOut()
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(most)}
	for i, move := range w.Moves {
		k.written.Settle()
		k.settle()
		step := telling.Step{Scene: k.mat.base()}
		shown := &scene.Scene{}
		desc := words.BlocksDescTwo(k.laid[0], k.laid[1])
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.name(shown)
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
			k.lie(shown, [sources]laid{ofAnswer, ofAnswer, ofAnswer})
			desc = words.BlocksDescOn(move.Counts, k.mat.top)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
		}
		k.tallies(shown)
		step.Symbols = k.written.Block()
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

// layOut lays the mat out: the upper band has room for a full ten where there is
// one, the lower one for what a trade brings.
func (k *adding) layOut() {
	first, second := k.laid[0].Counts, k.laid[1].Counts
	d := demand{
		numbers: []arithmetic.Counts{first, second}, slots: []arithmetic.Counts{first, second},
		top: max(first.Top(), second.Top(), k.read.Counts.Top()), floor: floors(),
	}
	for i, trade := range k.trades {
		k.ten[trade.From] = &k.trades[i]
		d.tens[trade.From] = true
		d.slots[0][trade.From] = 10
		d.slots[1][trade.From+1]++
	}
	for n, role := range []scene.Role{scene.First, scene.Second} {
		d.gutter = max(d.gutter, telling.Width(ofRole(k.laid[n].Number, role), scene.Small, false)+bandLabelGap)
	}
	k.mat = layMat(d)
	k.written = telling.Columns{Sign: arithmetic.Add.String(), Top: d.top, First: first, Second: second}
}

// name writes the two numbers beside their bands, as long as they lie there.
func (k *adding) name(s *scene.Scene) {
	k.mat.name(s, "+", ofRole(k.laid[0].Number, scene.First), ofRole(k.laid[1].Number, scene.Second))
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

// lieApart draws both numbers laid out, each in its band.
func (k *adding) lieApart(s *scene.Scene) {
	k.name(s)
	k.mat.layAll(s, 0, k.laid[0].Counts, ofFirst)
	k.mat.layAll(s, 1, k.laid[1].Counts, ofSecond)
}

// posed is the problem before any move.
func (k *adding) posed() *scene.Scene {
	s := &scene.Scene{}
	k.lieApart(s)
	for power := k.mat.top; power >= 0; power-- {
		k.mat.tally(s, power, notation.Line{telling.Unknown()})
	}
	return s
}

func (k *adding) asked() string {
	return words.BlocksDescTwo(k.laid[0], k.laid[1]) + " " + words.BlocksAdd()
}

// whole is the story in one picture. With the answer hidden it is the problem.
func (k *adding) whole() *scene.Scene {
	shown, hidden := &scene.Scene{}, &scene.Scene{}
	if k.mat.spread(hidden); len(k.trades) == 0 {
		k.mat.spread(shown)
		k.lieApart(shown)
		k.digits(shown)
	} else {
		k.end(shown)
	}
	telling.AddPart(hidden, scene.Always, k.posed())
	s := &scene.Scene{}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, hidden)
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "+", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, ofRole(k.read.Number, scene.Result))
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, k.mat.tallied(1), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	s.Desc = scene.Telling{Shown: k.told(), Hidden: k.asked()}
	return s
}

// end draws what lies there in the end, and every ten that was traded as empty
// outlines with an arrow to the piece that it became. What is solid is the sum.
// The rows are no longer those of the numbers, so no names stand beside them.
func (k *adding) end(s *scene.Scene) {
	asIs := k.mat
	k.mat = asIs.centred()
	k.joined = [places]bool{}
	for _, trade := range k.trades {
		k.joined[trade.From] = true
	}
	k.mat.spread(s)
	k.lie(s, [sources]laid{ofFirst, ofSecond, {role: scene.Moved}})
	for _, trade := range k.trades {
		k.layTen(s, trade.From, [sources]laid{ofFirst.empty(), ofSecond.empty(), {role: scene.Moved, finish: scene.Dashed}})
		ten := k.roundTen(trade.From)
		s.Draw(scene.Moved, scene.Outline, ten)
		k.arrow(s, ten, k.carriedRoom(trade.From+1))
	}
	k.digits(s)
	k.mat = asIs
}

// digits writes the digits of the sum under the trays.
func (k *adding) digits(s *scene.Scene) {
	for power := k.mat.top; power >= 0; power-- {
		k.mat.tally(s, power, ofRole(k.read.Counts[power], scene.Result))
	}
}

// told describes the whole story.
func (k *adding) told() string {
	if len(k.trades) == 0 {
		return words.Sentences(words.BlocksDescTwo(k.laid[0], k.laid[1]), words.BlocksTogether(k.read, k.mat.top))
	}
	list := []string{words.BlocksDescTogether(k.laid[0], k.laid[1])}
	for _, trade := range k.trades {
		list = append(list, words.BlocksTradedUp(trade))
	}
	return words.Sentences(append(list, words.BlocksTogether(k.read, k.mat.top))...)
}
