package places

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// shifting is a product or quotient with 10, 100 or 1,000 while it is told: in
// every move all counters go one column on, from the upper band to the lower one.
// Under the table stand the digits, one row for each move.
//
//	  |  o | oo | oo   |        2 3 4
//	  | /  | /o | /oo  |      2 3 4 0
//	o | oo | oo |      |
type shifting struct {
	problem arithmetic.Problem
	table   table
	laid    arithmetic.LayOut
	shifts  []arithmetic.ShiftPlaces
	read    arithmetic.ReadOff
	own     laid // how the number that moves is drawn
}

func tellShifted(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.ShiftByPlace(p))
	k := shiftingOf(w)
	out := telling.Telling{Answer: w.Answer, Pieces: pieces(k.table.top, k.laid.Counts)}
	done := 0
	for _, move := range w.Moves {
		step := telling.Step{Scene: k.table.base(k.rows())}
		shown := &scene.Scene{}
		answers := false
		desc := words.PlacesDescLaid(k.laid)
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.table.layAll(shown, 0, move.Counts, k.own)
			step.Symbols = notation.Lines(number(move.Number, k.own.role))
			step.Title, step.Hands, step.Ask = words.PlacesLayOut(arithmetic.LayOut{Nth: 0, Number: move.Number, Counts: move.Counts})
			step.Hands = words.PlacesLayOnly(move)
		case arithmetic.ShiftPlaces:
			done++
			answers = done == len(k.shifts)
			before := k.own
			if done > 1 {
				before = traded
			}
			k.table.layAll(shown, 0, move.Before, before)
			k.table.layAll(shown, 1, move.After, ofAnswer.moved())
			k.arrows(shown, move.Before, move.After)
			step.Symbols = notation.Lines(k.line(move))
			step.Title, step.Hands, step.Ask = words.PlacesShift(move)
			desc = words.PlacesDescShift(move, k.table.top)
		case arithmetic.ReadOff:
			answers = true
			k.end(shown)
			step.Symbols = notation.Lines(k.answered())
			step.Title, step.Hands, step.Ask = words.PlacesReadShifted(p, move)
			desc = words.PlacesDescShifted(k.laid, k.shifts, k.read, k.problem)
		}
		k.digits(shown, done, move)
		step.Scene.Title = scene.Same(words.BlocksStepTitle(p, step.Title))
		step.Scene.Desc = scene.Same(desc)
		if answers {
			finish(step.Scene, shown, k.posed())
			step.Scene.Desc.Hidden = k.asked()
		} else {
			finish(step.Scene, shown, nil)
		}
		out.Steps = append(out.Steps, step)
	}
	out.Whole = k.whole()
	return out
}

func shiftingOf(w arithmetic.Working) *shifting {
	k := &shifting{problem: w.Problem, own: ofFirst}
	var upper, lower arithmetic.Counts
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid = move
			upper = move.Counts
			if move.Nth == 1 {
				k.own = ofSecond
			}
		case arithmetic.ShiftPlaces:
			upper, lower = upper.Most(move.Before), lower.Most(move.After)
			k.shifts = append(k.shifts, move)
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	top := max(k.laid.Counts.Top(), k.read.Counts.Top())
	k.table = layTable(demand{top: top, slots: []arithmetic.Counts{upper, lower}, arrows: true})
	return k
}

// rows are the digits before the first move and after each.
func (k *shifting) rows() int { return 1 + len(k.shifts) }

// digits writes the digits before the first move and after those that are done.
func (k *shifting) digits(s *scene.Scene, done int, now arithmetic.Move) {
	k.table.writeAll(s, 0, k.laid.Counts, k.own.role)
	for i, m := range k.shifts[:done] {
		role := scene.Result
		if now == arithmetic.Move(m) {
			role = scene.Moved
		}
		k.table.writeAll(s, 1+i, m.After, role)
	}
}

// arrows lead from the counters of each place to where they are after the move,
// which is as many columns on for all of them.
func (k *shifting) arrows(s *scene.Scene, before, after arithmetic.Counts) {
	const air = 8
	t := &k.table
	far := after.Top() - before.Top()
	for power := t.top; power >= 0; power-- {
		if before[power] > 0 {
			t.slant(s, scene.Point{X: t.middle(power), Y: t.bands[0].Bottom() + air}, scene.Point{X: t.middle(power + far), Y: t.bands[1].Y - air})
		}
	}
}

// line is one move: 23 × 10 = 230.
func (k *shifting) line(m arithmetic.ShiftPlaces) notation.Line {
	sign := arithmetic.Multiply
	if m.Right {
		sign = arithmetic.Divide
	}
	role := k.own.role
	if m.Nth > 1 {
		role = scene.Result
	}
	return telling.Join(number(m.From, role), sign.String(), number(10, scene.Ink), "=", number(m.To, scene.Moved))
}

// posed is the problem before any move.
func (k *shifting) posed() *scene.Scene {
	s := &scene.Scene{}
	k.table.layAll(s, 0, k.laid.Counts, k.own)
	k.table.writeAll(s, 0, k.laid.Counts, k.own.role)
	return s
}

func (k *shifting) asked() string {
	return words.PlacesDescLaid(k.laid) + " " + words.PlacesHowShifted(k.problem)
}

func (k *shifting) askedLine() notation.Line {
	a, b, _ := k.problem.Operands()
	sign := k.problem.Left.(arithmetic.Operation).Op.String()
	return telling.Join(telling.Numeral(a, scene.First), sign, telling.Numeral(b, scene.Second), "=")
}

func (k *shifting) answered() notation.Line {
	return telling.Join(k.askedLine(), number(k.read.Number, scene.Result))
}

// end draws the number above and what it has become under it.
func (k *shifting) end(s *scene.Scene) {
	k.table.layAll(s, 0, k.laid.Counts, k.own)
	k.table.layAll(s, 1, k.read.Counts, ofAnswer)
	k.arrows(s, k.laid.Counts, k.read.Counts)
}

// whole is the number above and what it has become under it.
func (k *shifting) whole() *scene.Scene {
	t, shown := &k.table, &scene.Scene{}
	k.end(shown)
	k.digits(shown, len(k.shifts), nil)
	s := t.base(k.rows())
	finish(s, shown, k.posed())
	telling.Equation(s, t.rowsEnd(k.rows()), telling.Join(k.askedLine(), telling.Unknown()), k.answered())
	s.Title = scene.Telling{Shown: k.answered().Text(), Hidden: words.Asked(k.problem)}
	s.Desc = scene.Telling{Shown: words.PlacesDescShifted(k.laid, k.shifts, k.read, k.problem), Hidden: k.asked()}
	return s
}
