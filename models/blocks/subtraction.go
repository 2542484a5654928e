package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// taking is a subtraction with blocks while it is told.
type taking struct {
	problem arithmetic.Problem
	mat     mat
	laid    arithmetic.LayOut
	second  arithmetic.Counts
	ready   arithmetic.Counts                           // what lies there when every trade is done
	takes   [arithmetic.PlaceNames]arithmetic.TakePlace // by place
	done    [arithmetic.PlaceNames]bool                 // places that have been taken from
	read    arithmetic.ReadOff
	written telling.Columns
	traded  []string // what the trades did, for the description
}

func tellSubtracted(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.SubtractByPlace(p))
	k, most := takingOf(w)
	k.layOut(most)
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(most)}
	short := -1
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.mat.base()}
		shown, on := &scene.Scene{}, arithmetic.Counts{}
		mark := ""
		switch move := move.(type) {
		case arithmetic.LayOut:
			on = move.Counts
			k.mat.layAll(shown, 0, on, ofFirst)
			k.counts(shown, on, -1, -1)
			step.Title, step.Hands, step.Ask = words.BlocksLayOut(move)
		case arithmetic.TradeDown:
			on = move.After
			k.trade(shown, move)
			mark = words.BlocksTradedDown(move)
			step.Title, step.Hands, step.Ask = words.BlocksTradeDown(move, k.laid.Number, move.Short == short)
			step.Link = words.EqualAddition(move)
			short = move.Short
		case arithmetic.TakePlace:
			on = move.After
			k.take(shown, move)
			mark = words.BlocksCrossedOut(move)
			step.Title, step.Hands, step.Ask = words.BlocksTake(move)
		case arithmetic.ReadOff:
			on = move.Counts
			k.mat.layAll(shown, 0, on, ofAnswer)
			k.counts(shown, on, -1, -1)
			step.Title, step.Hands, step.Ask = words.BlocksRead(p, move)
		}
		step.Symbols = k.written.Block()
		if k.written.Raised() {
			step.Europe = k.written.Europe()
		}
		k.finish(step.Scene, shown, on, step.Title, mark)
		t.Steps = append(t.Steps, step)
	}
	t.Whole = k.whole()
	return t
}

// takingOf gathers the moves, and the most of each piece that lies there at once.
func takingOf(w arithmetic.Working) (k *taking, most arithmetic.Counts) {
	k = &taking{problem: w.Problem}
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid, k.ready, most = move, move.Counts, move.Counts
		case arithmetic.TradeDown:
			k.ready, most = move.After, most.Most(move.After)
			k.traded = append(k.traded, words.BlocksTradedDown(move))
		case arithmetic.TakePlace:
			k.takes[move.Power] = move
			k.second[move.Power] = move.Count
		case arithmetic.ReadOff:
			k.read = move
		}
	}
	return k, most
}

func (k *taking) layOut(most arithmetic.Counts) {
	top := k.laid.Counts.Top()
	lines := make([][]notation.Line, top+1)
	for power := range lines {
		lines[power] = k.tallies(power)
	}
	k.mat = layMat(demand{numbers: []arithmetic.Counts{k.laid.Counts}, slots: []arithmetic.Counts{most}, top: top, floor: floors(lines...)})
	k.written = telling.Columns{Sign: arithmetic.Subtract.String(), Top: top, First: k.laid.Counts, Second: k.second}
}

// tallies are the lines under a tray that say what was taken from it: one line
// like 12 − 8 = 4, or three under each other where four trays leave no room.
// There are none where a trade left no pieces.
func (k *taking) tallies(power int) []notation.Line {
	if power > k.ready.Top() {
		return nil
	}
	take := k.takes[power]
	from, left := ofRole(take.From, scene.First), ofRole(take.Left, scene.Result)
	away := telling.Join("−", ofRole(take.Count, scene.Second))
	if k.laid.Counts.Top() < 3 {
		return []notation.Line{telling.Join(from, away, "=", left)}
	}
	return []notation.Line{from, away, left}
}

// counts writes how many pieces lie in each tray; those of two places may have
// just changed.
func (k *taking) counts(s *scene.Scene, on arithmetic.Counts, from, to int) {
	for power := k.mat.top; power >= 0; power-- {
		role := scene.First
		switch {
		case power == from || power == to:
			role = scene.Moved
		case k.done[power]:
			role = scene.Result
		}
		k.mat.tally(s, power, ofRole(on[power], role))
	}
}

// trade draws the pieces after a trade: the one that went as a ghost, the ten
// that came.
func (k *taking) trade(s *scene.Scene, move arithmetic.TradeDown) {
	from, to, on := move.From, move.From-1, move.After
	for power := k.mat.top; power >= 0; power-- {
		stay := on[power]
		if power == to {
			stay -= 10
			k.mat.lay(s, power, 0, stay, on[power], ofFirst.moved())
		}
		k.mat.lay(s, power, 0, 0, stay, ofFirst)
	}
	k.mat.lay(s, from, 0, on[from], on[from]+1, ghost)
	k.mat.strike(s, from, 0, on[from], on[from]+1, scene.OfNothing)
	k.counts(s, on, from, to)
	k.written.Replace(from, on[from])
	k.written.Replace(to, on[to])
	k.written.Raise(to)
}

// take draws the pieces while those of one place are taken away.
func (k *taking) take(s *scene.Scene, move arithmetic.TakePlace) {
	k.mat.layAll(s, 0, move.After, ofFirst)
	k.mat.lay(s, move.Power, 0, move.Left, move.From, ofFirst.gone())
	k.mat.strike(s, move.Power, 0, move.Left, move.From, scene.OfSecond)
	k.counts(s, move.After, move.Power, -1)
	k.done[move.Power] = true
	k.written.Touch(move.Power)
	if !move.Leading {
		k.written.Write(move.Power, move.Left)
	}
}

// finish puts the pieces of a step on its mat. A step whose pieces are the
// answer shows the number laid out when the answer is hidden.
func (k *taking) finish(s, shown *scene.Scene, on arithmetic.Counts, title, mark string) {
	line := words.BlocksStepTitle(k.problem, title)
	desc := words.Sentences(mark, words.BlocksDescOn(on, k.mat.top))
	if on.Total() != k.read.Number {
		telling.AddPart(s, scene.Always, shown)
		s.Title, s.Desc = scene.Same(line), scene.Same(desc)
		return
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed(0))
	s.Title = scene.Same(line)
	s.Desc = scene.Telling{Shown: desc, Hidden: k.asked()}
}

// posed is the problem before any move: the first number laid out, and in a row
// under each tray what is to be taken from it. The digits do not stand above
// that: what is to be traded first cannot be read in columns.
func (k *taking) posed(row int) *scene.Scene {
	s := &scene.Scene{}
	k.mat.layAll(s, 0, k.laid.Counts, ofFirst)
	for power := k.second.Top(); power >= 0; power-- {
		k.mat.tallyIn(s, power, row, telling.Join("−", ofRole(k.second[power], scene.Second)))
	}
	return s
}

func (k *taking) asked() string {
	_, second, _ := k.problem.Operands()
	b, _ := second.Int64()
	return words.BlocksDescLaid(k.laid) + " " + words.BlocksTakeAway(b, k.second)
}

// whole is the story in one picture: the pieces after the trades, what is taken
// away struck through, and what that leaves in each place.
func (k *taking) whole() *scene.Scene {
	shown, lines := &scene.Scene{}, []notation.Line{}
	var crossed arithmetic.Counts
	for power := k.mat.top; power >= 0; power-- {
		take := k.takes[power]
		crossed[power] = take.Count
		k.mat.lay(shown, power, 0, 0, take.Left, ofFirst)
		k.mat.lay(shown, power, 0, take.Left, take.From, ofFirst.gone())
		k.mat.strike(shown, power, 0, take.Left, take.From, scene.OfSecond)
		lines = k.tallies(power)
		switch len(lines) {
		case 1:
			k.mat.tally(shown, power, lines[0])
		case 3:
			k.mat.sum(shown, power, lines)
		}
	}
	s := k.mat.base()
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed(len(lines)/2))
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "−", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, ofRole(k.read.Number, scene.Result))
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, k.mat.tallied(len(lines)), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	s.Desc.Hidden = k.asked()
	s.Desc.Shown = words.Sentences(words.BlocksDescLaid(k.laid), words.Sentences(k.traded...),
		words.BlocksCrossed(crossed), words.BlocksLeft(k.read, k.mat.top))
	return s
}
