package groups

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// story is a lesson while it is told: the moves, where things lie, and what has
// been said.
type story struct {
	statement
	hand
	set    arithmetic.SetGroups
	read   arithmetic.ReadGroups
	pairs  *arithmetic.ReadPairs
	taken  *arithmetic.TakeGroups
	totals []int64 // of the groups made so far
	said   words.EqualGroups
	now    state
	waits  int64
	over   bool // what lies on the tray is left over
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("groups: a problem that does not fit: " + err.Error())
	}
	a := plan(p, w)
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	for _, m := range w.Moves {
		t.Steps = append(t.Steps, a.step(m))
	}
	t.Whole = a.whole()
	return t
}

// plan reads off the moves what there will be, and places it.
func plan(p arithmetic.Problem, w arithmetic.Working) *story {
	a := &story{statement: statementOf(p, w), set: w.Moves[0].(arithmetic.SetGroups)}
	n := needOf(w)
	t, ok := lay(n)
	if !ok {
		panic("groups: a problem that does not fit: " + p.String())
	}
	a.hand = hand{table: t, of: a.statement.of, plates: a.set.Story == arithmetic.Sharing}
	a.said = words.EqualGroups{SetGroups: a.set, Thing: words.Counters, Rest: p.Rest, Part: p.Kind == arithmetic.PartOf}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.ReadGroups:
			a.read = m
		case arithmetic.ReadPairs:
			a.pairs = &m
		case arithmetic.TakeGroups:
			a.taken = &m
		case arithmetic.SplitRest:
			a.said.Thing = words.PaperCircles
		}
	}
	a.now, a.waits = start(a.set, n.rings), a.set.Total
	return a
}

func (a *story) pieces() []telling.Piece {
	var list []telling.Piece
	if n := max(a.set.Total, a.read.Total); n > 0 {
		list = append(list, telling.Piece{Name: words.Things(a.said.Thing, n), Count: n, Cut: a.said.Thing == words.PaperCircles})
	}
	if a.plates {
		list = append(list, telling.Piece{Name: words.Things(words.Plates, a.set.Groups), Count: a.set.Groups})
	}
	return list
}

// step tells one move.
func (a *story) step(m arithmetic.Move) telling.Step {
	var st telling.Step
	s := &scene.Scene{Title: a.title, W: scene.PaperW, H: a.bottom + noteRoom(a.found()) + scene.Margin - 10}
	before := a.now
	a.now = before.after(m)
	tag := caption{}
	switch m := m.(type) {
	case arithmetic.SetGroups:
		st.Title, st.Hands, st.Ask, s.Desc = a.said.Ready()
		if a.pairs != nil {
			st.Title, st.Hands, st.Ask, s.Desc = a.said.Lay()
		}
		st.Symbols = notation.Lines(a.asked)
	case arithmetic.MakeGroups:
		a.totals, a.waits = append(a.totals, m.Totals...), m.Left
		st.Title, st.Hands, st.Ask, s.Desc = a.said.Make(m)
		if a.pairs != nil {
			st.Title, st.Hands, st.Ask, s.Desc = a.said.Pair(m)
		}
		st.Symbols = a.making(m)
	case arithmetic.DealRounds:
		a.waits = m.Left
		st.Title, st.Hands, st.Ask, s.Desc = a.said.Deal(m)
		st.Symbols = notation.Lines(minus(m.Took+m.Left, m.Took, m.Left))
		tag = plain(m.Each, words.GroupsOnEach)
	case arithmetic.SplitRest:
		st.Title, st.Hands, st.Ask, s.Desc = a.said.Split(m, a.read.Each)
		one := fraction.Must(m.Parts, m.Parts)
		st.Symbols = notation.Lines(telling.Join(number(1), "=", telling.Numeral(arithmetic.Frac(one), scene.Ink)))
		tag = plain(a.read.Each, words.GroupsOnEach)
	case arithmetic.DealParts:
		a.waits = 0
		st.Title, st.Hands, st.Ask, s.Desc = a.said.DealParts(m)
		st.Symbols = notation.Lines(telling.Join(number(m.Pieces), "÷", number(m.Groups), "=", telling.Numeral(m.Share, scene.Moved)))
	case arithmetic.PartGroup:
		a.waits = 0
		st.Title, st.Hands, st.Ask, s.Desc = a.said.PartGroup(m)
		st.Symbols = notation.Lines(telling.Join(number(m.Left), "÷", number(m.Each), "=", telling.Numeral(m.Share, scene.Moved)))
	case arithmetic.RoundUp:
		a.waits = 0
		st.Title, st.Hands, st.Ask, s.Desc = a.said.RoundUp(m)
		st.Symbols = notation.Lines(a.oneMore(m))
	case arithmetic.ReadGroups:
		a.over = true
		st.Title, st.Hands, st.Ask, s.Desc = a.said.Read(m)
		st.Symbols = a.answerLines()
		tag = a.found()
	case arithmetic.TakeGroups:
		st.Title, st.Hands, st.Ask, s.Desc = a.said.Take(a.fraction, m)
		st.Symbols = a.taking(m)
		tag = a.found()
	case arithmetic.ReadPairs:
		a.over = true
		st.Title, st.Hands, st.Ask, s.Desc = a.said.ReadPairs(m)
		st.Symbols = a.evenLines(m)
		tag = a.found()
	}
	_, last := m.(arithmetic.ReadGroups)
	a.picture(s, before, last)
	if tag.shown != nil {
		a.note(s, tag)
	}
	st.Scene = s
	return st
}
