package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// The rows under a product: the number, how often it is taken, what it comes to.
const (
	rowNumber = iota
	rowTimes
	rowProduct
	rowsTimes
)

// repeating is a product by one digit while it is told: the number lies there row
// by row, and the rows of a place are counted and traded together. In the lower
// band lies what the trade before has brought.
//
//	| ooo | oooo | ooooooo |   6 rows of 347
//	| ooo | oooo | ooooooo |
//	  ...    ...     ...
//	|     | oooo |         |   from the trade of 42 ones
type repeating struct {
	problem arithmetic.Problem
	table   table
	laid    arithmetic.LayOut
	rows    arithmetic.RepeatRows
	trades  []arithmetic.TradeTensUp
	read    arithmetic.ReadOff
	own     laid // how a row of the number is drawn
	carried arithmetic.Counts
	gone    arithmetic.Counts // counters of each place that have been traded
	state   [arithmetic.PlaceNames]scene.Role
	counted arithmetic.Counts // what stands in the row of the product
	written telling.Columns
}

func tellTimes(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.MultiplyByDigit(p))
	k, most, last := repeatingOf(w)
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(k.table.top, most...)}
	for i, move := range w.Moves {
		k.settle()
		step := telling.Step{Scene: k.table.base(rowsTimes)}
		shown := &scene.Scene{}
		desc := words.PlacesDescRows(k.rows)
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.layRow(shown, 0, k.own)
			step.Title, _, step.Ask = words.PlacesLayOut(move)
			step.Hands = words.PlacesLayOnly(move)
			desc = words.PlacesDescLaid(move)
		case arithmetic.RepeatRows:
			k.layRow(shown, 0, k.own)
			for row := 1; row < int(move.Times); row++ {
				k.layRow(shown, row, k.own.moved())
			}
			step.Title, step.Hands, step.Ask = words.PlacesRows(p, move)
		case arithmetic.CountPlaceRows:
			k.table.light(shown, move.Power, scene.Moved)
			k.lie(shown, k.own, traded)
			k.count(move.Power, move.Total)
			k.written.Touch(move.Power)
			if move.Total < 10 {
				k.written.Write(move.Power, move.Total)
			}
			desc = words.Sentences(words.PlacesDescOn(move.On, k.table.top), words.PlacesDescCounted(move))
			step.Title, step.Hands, step.Ask = words.PlacesCountRows(move)
		case arithmetic.TradeTensUp:
			k.trade(shown, move)
			desc = words.Sentences(words.PlacesTraded(move), words.PlacesDescOn(move.After, k.table.top))
			step.Title, step.Hands, step.Ask = words.PlacesTradeTens(move)
		case arithmetic.ReadOff:
			k.lie(shown, ofAnswer, ofAnswer)
			desc = words.PlacesDescOn(move.Counts, k.table.top)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
		}
		k.digits(shown)
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

// repeatingOf gathers the moves and lays the table out. last is the index of the
// count of the largest place, from which on the picture shows the answer.
func repeatingOf(w arithmetic.Working) (k *repeating, most []arithmetic.Counts, last int) {
	k = &repeating{problem: w.Problem, own: ofFirst}
	var lower arithmetic.Counts
	across := int64(1)
	for i, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid = move
			if move.Nth == 1 {
				k.own = ofSecond
			}
			for _, n := range move.Counts {
				across = max(across, n)
			}
		case arithmetic.RepeatRows:
			k.rows, most = move, append(most, move.All)
		case arithmetic.CountPlaceRows:
			last = i
		case arithmetic.TradeTensUp:
			lower[move.From+1] = move.Tens
			across = max(across, move.Tens)
			k.trades = append(k.trades, move)
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	k.own.of = scene.OfAnswer // all the rows together are the product
	top := max(k.laid.Counts.Top(), k.read.Counts.Top())
	d := demand{top: top, slots: []arithmetic.Counts{k.laid.Counts}, sign: true, across: int(across), down: int(k.rows.Times)}
	if len(k.trades) > 0 {
		d.slots = append(d.slots, lower)
	}
	k.table = layTable(d)
	times := arithmetic.Counts{k.rows.Times}
	k.written = telling.Columns{Sign: arithmetic.Multiply.String(), Top: top, First: k.laid.Counts, Second: times}
	return k, most, last
}

func (k *repeating) settle() {
	k.written.Settle()
	for power, role := range k.state {
		if role == scene.Moved {
			k.state[power] = scene.Result
		}
	}
}

func (k *repeating) count(power int, n int64) { k.counted[power], k.state[power] = n, scene.Moved }

// digits writes the number, how often it is taken and what the counted places come
// to.
func (k *repeating) digits(s *scene.Scene) {
	k.factors(s)
	for power := k.table.top; power >= 0; power-- {
		if k.state[power] != scene.Ink {
			k.table.write(s, power, rowProduct, digit(k.counted[power], k.state[power]))
		}
	}
}

func (k *repeating) factors(s *scene.Scene) {
	other := scene.Second
	if k.own.role == scene.Second {
		other = scene.First
	}
	k.table.writeAll(s, rowNumber, k.laid.Counts, k.own.role)
	k.table.sign(s, rowTimes, arithmetic.Multiply.String())
	k.table.write(s, 0, rowTimes, digit(k.rows.Times, other))
	k.table.rule(s, rowProduct)
}

// posed is the problem: all rows, with nothing traded.
func (k *repeating) posed() *scene.Scene {
	s := &scene.Scene{}
	for row := range int(k.rows.Times) {
		k.layRow(s, row, k.own)
	}
	k.factors(s)
	k.table.write(s, 0, rowProduct, notation.Line{telling.Unknown()})
	return s
}

func (k *repeating) asked() string { return words.PlacesDescRows(k.rows) + " " + words.BlocksAdd() }

// whole is what lies there in the end, with the tens that were traded as empty
// outlines. With nothing traded it is the rows.
func (k *repeating) whole() *scene.Scene {
	shown, t := &scene.Scene{}, &k.table
	k.lie(shown, k.own, laid{scene.Moved, scene.Deep, scene.OfNothing})
	for _, trade := range k.trades {
		list := k.pile(trade.From)
		for i, at := range list[:trade.Gone] {
			as := k.own
			if i >= len(list)-int(k.carried[trade.From]) {
				as = traded
			}
			t.lay(shown, trade.From, at, as.empty())
		}
		k.taken(shown, trade)
	}
	k.factors(shown)
	t.writeAll(shown, rowProduct, k.read.Counts, scene.Result)
	s := t.base(rowsTimes)
	finish(s, shown, k.posed())
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "×", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, number(k.read.Number, scene.Result))
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, t.rowsEnd(rowsTimes), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	list := []string{words.PlacesDescRows(k.rows)}
	for _, trade := range k.trades {
		list = append(list, words.PlacesTraded(trade))
	}
	s.Desc = scene.Telling{Shown: words.Sentences(append(list, words.BlocksTogether(k.read, t.top))...), Hidden: k.asked()}
	return s
}
