package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// The rows under an addition: the two numbers and what they come to.
const (
	rowFirst = iota
	rowSecond
	rowSum
	rowsAdding
)

// adding is an addition while it is told. The two numbers lie in two bands. When
// the counters of a place are joined, the first ten of them fill the upper band.
type adding struct {
	problem arithmetic.Problem
	table   table
	laid    [2]arithmetic.LayOut
	trades  []arithmetic.TradeUp
	read    arithmetic.ReadOff
	joined  [arithmetic.PlaceNames]bool // places whose counters have been pushed together
	gone    [arithmetic.PlaceNames]bool // places whose ten has been traded
	carried arithmetic.Counts           // 1 where a trade has brought a counter
	state   [arithmetic.PlaceNames]scene.Role
	counted arithmetic.Counts // what stands in the row of the sum
	written telling.Columns
}

// whose says how the counters of the first number, of the second and from a trade
// are drawn.
type whose [3]laid

var (
	midway  = whose{ofFirst, ofSecond, traded}
	theSum  = whose{ofAnswer, ofAnswer, ofAnswer}
	asGhost = whose{ghost, ghost, ghost}
	asEmpty = whose{ofFirst.empty(), ofSecond.empty(), traded.empty()}
)

func tellAdded(p arithmetic.Problem) telling.Telling {
	work := arithmetic.AddByPlace
	_, changed, one := arithmetic.OnePlace(p)
	if one {
		work = arithmetic.ChangeOnePlace
	}
	w := mustWork(work(p))
	k, most, last := addingOf(w)
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(k.table.top, most...)}
	for i, move := range w.Moves {
		k.settle()
		step := telling.Step{Scene: k.table.base(rowsAdding)}
		shown := &scene.Scene{}
		desc := words.PlacesDescTwo(k.laid[0], k.laid[1])
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.table.layAll(shown, 0, k.laid[0].Counts, ofFirst)
			if desc = words.PlacesDescLaid(move); move.Nth == 1 {
				desc = words.PlacesDescTwo(k.laid[0], move)
				k.table.layAll(shown, 1, move.Counts, ofSecond)
			}
			step.Title, step.Hands, step.Ask = words.PlacesLayOut(move)
		case arithmetic.JoinPlace:
			k.join(shown, move)
			desc = words.Sentences(words.PlacesDescOn(move.On, k.table.top), words.BlocksJoined(move))
			step.Title, step.Hands, step.Ask = words.BlocksJoin(move)
		case arithmetic.TradeUp:
			k.trade(shown, move)
			desc = words.Sentences(words.BlocksTradedUp(move), words.PlacesDescOn(move.After, k.table.top))
			step.Title, step.Hands, step.Ask = words.PlacesTradeUp(move)
		case arithmetic.ReadOff:
			k.lie(shown, -1, theSum)
			k.finishRow(move)
			desc = words.PlacesDescOn(move.Counts, k.table.top)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
			if one && len(k.trades) == 0 {
				step.Hands = words.Say(step.Hands, words.PlacesOnly(changed))
			}
		}
		k.rows(shown)
		step.Symbols = k.written.Block()
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Same(desc)
		if i < last {
			finish(step.Scene, shown, nil)
		} else {
			finish(step.Scene, shown, k.posed())
			step.Scene.Desc.Hidden = k.asked()
		}
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole()
	return out
}

// addingOf gathers the moves and lays the table out. last is the index of the join
// of the largest place, from which on the picture shows the answer.
func addingOf(w arithmetic.Working) (k *adding, most []arithmetic.Counts, last int) {
	k = &adding{problem: w.Problem}
	for i, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid[move.Nth] = move
		case arithmetic.JoinPlace:
			last, most = i, append(most, move.On)
		case arithmetic.TradeUp:
			k.trades = append(k.trades, move)
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	first, second := k.laid[0].Counts, k.laid[1].Counts
	slots := []arithmetic.Counts{first.Most(k.read.Counts), second}
	for _, trade := range k.trades {
		slots[0][trade.From] = 10
		slots[1][trade.From+1]++
	}
	for power := range slots[0] {
		slots[0][power] = max(slots[0][power], min(10, first[power]+slots[1][power]))
	}
	top := max(first.Top(), second.Top(), k.read.Counts.Top())
	k.table = layTable(demand{top: top, slots: slots, sign: true})
	k.written = telling.Columns{Sign: arithmetic.Add.String(), Top: top, First: first, Second: second}
	return k, most, last
}

// settle ends a move: what has just changed is at home.
func (k *adding) settle() {
	k.written.Settle()
	for power, role := range k.state {
		if role == scene.Moved {
			k.state[power] = scene.Result
		}
	}
}

// count notes what stands in the row of the sum.
func (k *adding) count(power int, n int64) { k.counted[power], k.state[power] = n, scene.Moved }

// finishRow writes the digits of the places that stayed as they were.
func (k *adding) finishRow(m arithmetic.ReadOff) {
	for power := k.table.top; power >= 0; power-- {
		if k.state[power] == scene.Ink {
			k.counted[power], k.state[power] = m.Counts[power], scene.Result
			k.written.Write(power, m.Counts[power])
		}
	}
}

// rows writes the two numbers and what the joined places come to.
func (k *adding) rows(s *scene.Scene) {
	k.numbers(s)
	for power := k.table.top; power >= 0; power-- {
		if k.state[power] != scene.Ink {
			k.table.write(s, power, rowSum, digit(k.counted[power], k.state[power]))
		}
	}
}

// numbers writes the two numbers under each other.
func (k *adding) numbers(s *scene.Scene) {
	t := &k.table
	t.writeAll(s, rowFirst, k.laid[0].Counts, scene.First)
	t.sign(s, rowSecond, arithmetic.Add.String())
	t.writeAll(s, rowSecond, k.laid[1].Counts, scene.Second)
	t.rule(s, rowSum)
}

// posed is the problem before any move.
func (k *adding) posed() *scene.Scene {
	s := &scene.Scene{}
	k.table.layAll(s, 0, k.laid[0].Counts, ofFirst)
	k.table.layAll(s, 1, k.laid[1].Counts, ofSecond)
	k.numbers(s)
	k.table.write(s, 0, rowSum, notation.Line{telling.Unknown()})
	return s
}

func (k *adding) asked() string {
	return words.PlacesDescTwo(k.laid[0], k.laid[1]) + " " + words.BlocksAdd()
}

// whole is the story in one picture: what lies there in the end, and every ten that
// was traded as empty outlines with an arrow to the counter that it became. With
// nothing traded, and with the answer hidden, the two numbers lie apart.
func (k *adding) whole() *scene.Scene {
	shown, t := &scene.Scene{}, &k.table
	if len(k.trades) == 0 {
		t.layAll(shown, 0, k.laid[0].Counts, ofFirst)
		t.layAll(shown, 1, k.laid[1].Counts, ofSecond)
	} else {
		k.end(shown)
	}
	k.numbers(shown)
	t.writeAll(shown, rowSum, k.read.Counts, scene.Result)
	s := t.base(rowsAdding)
	finish(s, shown, k.posed())
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "+", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, number(k.read.Number, scene.Result))
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, t.rowsEnd(rowsAdding), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	list := []string{words.PlacesDescTwo(k.laid[0], k.laid[1])}
	for _, trade := range k.trades {
		list = append(list, words.BlocksTradedUp(trade))
	}
	s.Desc = scene.Telling{Shown: words.Sentences(append(list, words.BlocksTogether(k.read, t.top))...), Hidden: k.asked()}
	return s
}

// end draws the counters after the last move.
func (k *adding) end(s *scene.Scene) {
	k.lie(s, -1, whose{ofFirst, ofSecond, laid{scene.Moved, scene.Deep, scene.OfNothing}})
	for _, trade := range k.trades {
		frame := k.table.around(k.ten(s, trade.From, asEmpty))
		s.Draw(scene.Moved, scene.Outline, frame)
		k.table.arrow(s, frame.Box(), k.newest(trade.From+1), trade.From)
	}
}
