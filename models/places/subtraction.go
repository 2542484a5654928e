package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// The rows under a subtraction: how many counters there are to take from, what is
// taken, what is left. The whole story has the digits before the trades above them.
const (
	rowFrom = iota
	rowTaken
	rowLeft
	rowsTaking
)

// taking is a subtraction while it is told. The counters of a number lie in the
// upper band, and ten that a trade brings in the lower one.
type taking struct {
	problem arithmetic.Problem
	table   table
	laid    arithmetic.LayOut
	second  arithmetic.Counts
	ready   arithmetic.Counts                           // what lies there when every trade is done
	upper   arithmetic.Counts                           // counters of the upper band
	takes   [arithmetic.PlaceNames]arithmetic.TakePlace // by place
	done    [arithmetic.PlaceNames]bool                 // places that have been taken from
	from    arithmetic.Counts                           // what there is to take from, as far as the trades have come
	changed [arithmetic.PlaceNames]bool                 // places that a trade has changed
	read    arithmetic.ReadOff
	trades  []arithmetic.TradeDown
	written telling.Columns
}

func tellSubtracted(p arithmetic.Problem) telling.Telling {
	work := arithmetic.SubtractByPlace
	_, changed, one := arithmetic.OnePlace(p)
	if one {
		work = arithmetic.ChangeOnePlace
	}
	w := mustWork(work(p))
	k, most := takingOf(w)
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(k.table.top, most...)}
	short := -1
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.table.base(rowsTaking)}
		shown, on := &scene.Scene{}, arithmetic.Counts{}
		mark := ""
		switch move := move.(type) {
		case arithmetic.LayOut:
			on, k.upper, k.from = move.Counts, move.Counts, move.Counts
			k.lie(shown, on, ofFirst)
			k.rows(shown, -1, -1)
			step.Title, step.Hands, step.Ask = words.PlacesLayOut(move)
		case arithmetic.TradeDown:
			on = move.After
			k.trade(shown, move)
			mark = words.BlocksTradedDown(move)
			step.Title, step.Hands, step.Ask = words.PlacesTradeDown(move, k.laid.Number, move.Short == short)
			step.Link = words.EqualAddition(move)
			short = move.Short
		case arithmetic.TakePlace:
			on = move.After
			k.take(shown, move)
			mark = words.BlocksCrossedOut(move)
			step.Title, step.Hands, step.Ask = words.BlocksTake(move)
		case arithmetic.ReadOff:
			on = move.Counts
			k.lie(shown, on, ofAnswer)
			k.finishRow()
			k.rows(shown, -1, -1)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
			if one && len(k.trades) == 0 {
				step.Hands = words.Say(step.Hands, words.PlacesOnly(changed))
			}
		}
		step.Symbols = k.written.Block()
		if k.written.Raised() {
			step.Europe = k.written.Europe()
		}
		k.finish(&step, shown, on, mark)
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole()
	return out
}

// takingOf gathers the moves, and how the counters lie after each.
func takingOf(w arithmetic.Working) (k *taking, most []arithmetic.Counts) {
	k = &taking{problem: w.Problem}
	var lower arithmetic.Counts
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid, k.ready, most = move, move.Counts, append(most, move.Counts)
		case arithmetic.TradeDown:
			k.ready, most = move.After, append(most, move.After)
			lower[move.From-1] = 10
			k.trades = append(k.trades, move)
		case arithmetic.TakePlace:
			k.takes[move.Power] = move
			k.second[move.Power] = move.Count
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	top := k.laid.Counts.Top()
	d := demand{top: top, slots: []arithmetic.Counts{k.laid.Counts}, frames: true, sign: true}
	if len(k.trades) > 0 {
		d.slots = append(d.slots, lower)
	}
	k.table = layTable(d)
	k.written = telling.Columns{Sign: arithmetic.Subtract.String(), Top: top, First: k.laid.Counts, Second: k.second}
	return k, most
}

// finishRow writes the digits of the places that stayed as they were.
func (k *taking) finishRow() {
	for power := k.read.Counts.Top(); power >= 0; power-- {
		if !k.done[power] {
			k.done[power] = true
			k.takes[power].Left = k.read.Counts[power]
			k.written.Write(power, k.read.Counts[power])
		}
	}
}

// finish puts the counters of a step on its table. A step whose counters are the
// answer shows the problem when the answer is hidden.
func (k *taking) finish(step *telling.Step, shown *scene.Scene, on arithmetic.Counts, mark string) {
	s := step.Scene
	s.Title = scene.Same(words.BlocksStepTitle(k.problem, step.Title))
	s.Desc = scene.Same(words.Sentences(mark, words.PlacesDescOn(on, k.table.top)))
	if on.Total() != k.read.Number {
		finish(s, shown, nil)
		return
	}
	finish(s, shown, k.posed(0))
	s.Desc.Hidden = k.asked()
}

// posed is the problem before any move, with its rows so much further down.
func (k *taking) posed(down int) *scene.Scene {
	s, t := &scene.Scene{}, &k.table
	t.layAll(s, 0, k.laid.Counts, ofFirst)
	t.writeAll(s, down+rowFrom, k.laid.Counts, scene.First)
	t.sign(s, down+rowTaken, arithmetic.Subtract.String())
	t.writeAll(s, down+rowTaken, k.second, scene.Second)
	t.rule(s, down+rowLeft)
	t.write(s, 0, down+rowLeft, notation.Line{telling.Unknown()})
	return s
}

func (k *taking) asked() string {
	_, second, _ := k.problem.Operands()
	b, _ := second.Int64()
	return words.PlacesDescLaid(k.laid) + " " + words.BlocksTakeAway(b, k.second)
}

// whole is the story in one picture: the counters after the trades, what is taken
// away struck through, and under them the digits, those that were traded struck with
// the new ones above.
func (k *taking) whole() *scene.Scene {
	shown, t := &scene.Scene{}, &k.table
	down := 0
	if len(k.trades) > 0 {
		down = 1
	}
	var crossed arithmetic.Counts
	for power := t.top; power >= 0; power-- {
		take := k.takes[power]
		crossed[power] = take.Count
		k.lay(shown, power, 0, take.Left, ofFirst)
		k.lay(shown, power, take.Left, take.From, ofFirst.gone())
		t.strike(shown, power, k.slots(power, take.Left, take.From), scene.OfSecond)
		was := digit(k.laid.Counts[power], scene.First)
		was[0].Struck = k.changed[power]
		t.write(shown, power, down+rowFrom, was)
		if k.changed[power] && power <= k.ready.Top() {
			t.write(shown, power, 0, digit(k.ready[power], scene.First)) // above the struck one, as it is written
		}
		if power <= k.read.Counts.Top() {
			t.write(shown, power, down+rowLeft, digit(k.read.Counts[power], scene.Result))
		}
	}
	t.sign(shown, down+rowTaken, arithmetic.Subtract.String())
	t.writeAll(shown, down+rowTaken, k.second, scene.Second)
	t.rule(shown, down+rowLeft)
	s := t.base(down + rowsTaking)
	finish(s, shown, k.posed(down))
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "−", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, number(k.read.Number, scene.Result))
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, t.rowsEnd(down+rowsTaking), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	var traded []string
	for _, trade := range k.trades {
		traded = append(traded, words.BlocksTradedDown(trade))
	}
	s.Desc = scene.Telling{Shown: words.Sentences(words.PlacesDescLaid(k.laid), words.Sentences(traded...),
		words.PlacesCrossed(crossed), words.BlocksLeft(k.read, t.top)), Hidden: k.asked()}
	return s
}
