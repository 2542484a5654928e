package blocks

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// sharing is a division with blocks while it is told: the number lies on the mat
// and goes into the groups under it, place by place. A piece that comes out of a
// trade lies after those that were there.
type sharing struct {
	problem arithmetic.Problem
	floor   floor
	laid    arithmetic.LayOut
	shares  []arithmetic.SharePlace // the largest place first
	trades  []arithmetic.TradeLeft
	read    arithmetic.ReadShare
	on      arithmetic.Counts // what is still to be shared
	given   arithmetic.Counts // what lies in every group
	written telling.LongDivision
}

func tellShared(p arithmetic.Problem) telling.Telling {
	w := mustWork(arithmetic.ShareByPlace(p))
	k, most, _ := sharingOf(w)
	t := telling.Telling{Answer: w.Answer, Pieces: pieces(most), Whole: k.whole()}
	for _, move := range w.Moves {
		k.written.Settle()
		step := telling.Step{Scene: k.floor.base()}
		shown, mark := &scene.Scene{}, ""
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.on = move.Counts
			k.lie(shown, -1, -1)
			step.Title, step.Hands, step.Ask = words.BlocksLayOut(move)
		case arithmetic.SharePlace:
			k.on, k.given = move.On, move.Given
			k.lie(shown, move.Power, -1)
			k.floor.came(shown, move.Power, move.Left, move.Have)
			mark = words.BlocksSharedOut(move)
			k.written.Share(move)
			step.Title, step.Hands, step.Ask = words.BlocksShare(move)
		case arithmetic.TradeLeft:
			k.on = move.On
			k.lie(shown, -1, move.From-1)
			k.floor.lay(shown, move.From, 0, 0, move.Count, ghost)
			k.floor.strike(shown, move.From, 0, 0, move.Count, scene.OfNothing)
			mark = words.BlocksTradedLeft(move)
			k.written.BringDown(move)
			step.Title, step.Hands, step.Ask = words.BlocksTradeLeft(move)
		case arithmetic.ReadShare:
			k.end(shown)
			k.counts(shown, -1)
			mark = words.BlocksShared(move)
			k.written.Rest(move.Left)
			step.Title, step.Hands, step.Ask = words.BlocksReadShare(p, move)
		}
		step.Symbols, step.Europe = k.written.Block(), k.written.Europe()
		k.finish(step.Scene, shown, step.Title, mark)
		t.Steps = append(t.Steps, step)
	}
	return t
}

// sharingOf gathers the moves, and the most of each piece that lies on the mat, and
// lays the floor out; ok is false when there is no room.
func sharingOf(w arithmetic.Working) (k *sharing, most arithmetic.Counts, ok bool) {
	k = &sharing{problem: w.Problem}
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.LayOut:
			k.laid, most = move, move.Counts
		case arithmetic.SharePlace:
			k.shares = append(k.shares, move)
		case arithmetic.TradeLeft:
			k.trades = append(k.trades, move)
			most[move.From-1] = move.Have
		case arithmetic.ReadShare:
			k.read = move
		}
	}
	return k, most, k.layOut(most)
}

func (k *sharing) layOut(most arithmetic.Counts) bool {
	lines := make([][]notation.Line, most.Top()+1)
	for _, share := range k.shares {
		lines[share.Power] = []notation.Line{k.reckoned(share), k.over()}
	}
	p := plan{mat: most, top: k.laid.Counts.Top(), floor: floors(lines...), rows: 1, labels: telling.Width(ofRole(k.read.Each, scene.Result), scene.Small, false)}
	if k.read.Left > 0 {
		p.rows = 2
	}
	for range k.read.Groups {
		p.groups = append(p.groups, k.read.Counts)
	}
	floor, ok := layFloor(p)
	k.floor = floor
	k.written = telling.LongDivision{Divisor: k.read.Groups, Dividend: k.laid.Counts}
	return ok
}

// reckoned is what the sharing of a place comes to: 3 × 2 = 6, or 3 × 2 where four
// trays leave no room.
func (k *sharing) reckoned(m arithmetic.SharePlace) notation.Line {
	line := telling.Join(ofRole(m.Groups, scene.Second), "×", ofRole(m.Each, scene.Result))
	if k.laid.Counts.Top() >= 3 {
		return line
	}
	return telling.Join(line, "=", ofRole(m.Shared, scene.First))
}

// over is what is left over in the end.
func (k *sharing) over() notation.Line {
	return append(ofRole(k.read.Left, scene.First), notation.W(words.BlocksLeftOver()))
}

// lie draws what lies on the mat and in the groups. In one place the groups may
// just have got their pieces; in another the mat may just have got those of a
// trade.
func (k *sharing) lie(s *scene.Scene, shared, traded int) {
	for power := k.floor.top; power >= 0; power-- {
		own := k.on[power]
		if power == traded {
			own = k.laid.Counts[power]
			k.floor.lay(s, power, 0, own, k.on[power], ofFirst.moved())
		}
		k.floor.lay(s, power, 0, 0, own, ofFirst)
		as := ofFirst
		if power == shared {
			as = as.moved()
		}
		for box := range k.floor.boxes {
			k.floor.layBox(s, box, power, 0, k.given[power], as)
		}
	}
	k.counts(s, max(shared, traded))
	role := scene.Result
	if shared >= 0 && k.given[shared] > 0 {
		role = scene.Moved
	}
	if k.given != (arithmetic.Counts{}) {
		k.label(s, ofRole(k.given.Total(), role))
	}
}

// counts writes how many pieces lie in each tray; those of one may have changed.
func (k *sharing) counts(s *scene.Scene, changed int) {
	for power := k.floor.top; power >= 0; power-- {
		role := scene.First
		if power == changed {
			role = scene.Moved
		}
		k.floor.tally(s, power, ofRole(k.on[power], role))
	}
}

// label writes the same under every group.
func (k *sharing) label(s *scene.Scene, line notation.Line) {
	for _, b := range k.floor.boxes {
		s.Add(scene.Item{Shape: scene.Text{X: b.X + b.W/2, Y: b.Bottom() + labelGap, Size: scene.Small, Runs: line.Runs()}})
	}
}

// end draws what lies there in the end, one group as the answer.
func (k *sharing) end(s *scene.Scene) {
	for box := range k.floor.boxes {
		as := ofFirst
		if box == 0 {
			as.role = scene.Result
		}
		for power := k.floor.top; power >= 0; power-- {
			k.floor.layBox(s, box, power, 0, k.read.Counts[power], as)
		}
	}
	k.floor.lay(s, 0, 0, 0, k.read.Left, ofFirst)
	k.label(s, ofRole(k.read.Each, scene.Result))
}

// posed is the problem before any move: the number on the mat, and under every
// group a question mark.
func (k *sharing) posed() *scene.Scene {
	s := &scene.Scene{}
	k.floor.layAll(s, 0, k.laid.Counts, ofFirst)
	k.label(s, notation.Line{telling.Unknown()})
	return s
}

func (k *sharing) asked() string { return words.BlocksDescToShare(k.laid, k.read.Groups) }

// finish puts the pieces of a step on its floor. From the step on in which every
// group has its share, the problem is shown when the answer is hidden.
func (k *sharing) finish(s, shown *scene.Scene, title, mark string) {
	s.Title = scene.Same(words.BlocksStepTitle(k.problem, title))
	desc := words.Sentences(mark, words.BlocksDescShare(k.on, k.given, k.floor.top, k.read.Groups))
	if k.given != k.read.Counts || k.read.Each == 0 && mark == "" {
		telling.AddPart(s, scene.Always, shown)
		s.Desc = scene.Same(desc)
		return
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
	s.Desc = scene.Telling{Shown: desc, Hidden: k.asked()}
}

// whole is the story in one picture: every group has its share. On the mat empty
// outlines show what lay there, and what was traded is struck through. What is left over lies there.
func (k *sharing) whole() *scene.Scene {
	shown := &scene.Scene{}
	for _, share := range k.shares {
		power, own := share.Power, k.laid.Counts[share.Power]
		left := share.Left
		k.floor.lay(shown, power, 0, left, own, laid{role: scene.First, finish: scene.Dashed})
		k.floor.came(shown, power, max(left, own), share.Have)
		if power > 0 {
			k.floor.lay(shown, power, 0, 0, left, ghost)
			k.floor.strike(shown, power, 0, 0, left, scene.OfNothing)
		}
		if !share.Leading {
			k.floor.tally(shown, power, k.reckoned(share))
		}
	}
	k.end(shown)
	if k.read.Left > 0 {
		k.floor.tallyIn(shown, 0, 1, k.over())
	}
	s := k.floor.base()
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
	a, b, _ := k.problem.Operands()
	asked := telling.Join(telling.Numeral(a, scene.First), "÷", telling.Numeral(b, scene.Second), "=")
	answered := telling.Join(asked, ofRole(k.read.Each, scene.Result))
	if k.read.Left > 0 {
		answered = telling.Join(answered, notation.W("r"), ofRole(k.read.Left, scene.First))
	}
	asked = telling.Join(asked, telling.Unknown())
	telling.Equation(s, k.floor.end(), asked, answered)
	s.Title = scene.Telling{Shown: answered.Text(), Hidden: asked.Text()}
	told := []string{words.BlocksDescLaid(k.laid)}
	for _, trade := range k.trades {
		told = append(told, words.BlocksTradedLeft(trade))
	}
	s.Desc = scene.Telling{Shown: words.Sentences(append(told, words.BlocksShared(k.read))...), Hidden: k.asked()}
	return s
}
