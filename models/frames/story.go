package frames

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// story is a lesson while it is told.
type story struct {
	board
	statement
	said  words.TenFrames
	given state  // as the numbers of the problem lie there before anything is done
	now   state  // as it is after the moves so far
	ended state  // with what was done on the way
	how   string // what was done on the way
	parts []int64
	pairs int64
	alone int64 // counters without a partner
	apart bool  // the two numbers lie in a frame each
}

func tell(p arithmetic.Problem) telling.Telling {
	w, err := work(p)
	if err != nil {
		panic("frames: a problem that does not fit: " + err.Error())
	}
	if p.Kind == arithmetic.WaysToMake {
		return tellWays(w)
	}
	k := plan(w)
	t := telling.Telling{Answer: w.Answer, Pieces: k.pieces()}
	for i, m := range w.Moves {
		t.Steps = append(t.Steps, k.step(m, i == 0))
	}
	t.Whole = k.whole(w.Moves[len(w.Moves)-1])
	return t
}

// plan reads off the moves what there will be, and places it.
func plan(w arithmetic.Working) *story {
	k := &story{board: lay(frames(w.Moves)), statement: statementOf(w)}
	k.said = words.TenFrames{Problem: w.Problem}
	for _, m := range w.Moves {
		k.ended = k.ended.after(m, true)
		switch m := m.(type) {
		case arithmetic.PutCounters:
			if m.Nth != arithmetic.Asked {
				k.given = k.given.after(m, true)
			} else {
				k.parts = append(k.parts, m.Count)
			}
			k.said.Total, k.apart = m.Now, m.Apart
		case arithmetic.FillFrame:
			k.how = k.said.HowFilled(m)
		case arithmetic.TakeCounters:
			k.parts = append(k.parts, m.Count)
			k.how = k.said.HowTaken(k.parts)
		case arithmetic.PairUp:
			k.pairs, k.alone = m.Pairs, m.Left
		case arithmetic.ReadFilled:
			k.how = k.said.HowFilledUp(m.Parts)
		}
	}
	k.given = k.given.settled()
	for i := range k.ended.cells {
		if c := &k.ended.cells[i]; c.mark == moved {
			c.mark = full
		}
	}
	return k
}

func (k *story) pieces() []telling.Piece {
	n := int64(len(k.frames))
	list := []telling.Piece{{Name: words.Things(words.Frame, n), Count: n}}
	if k.said.Total > 0 {
		list = append(list, telling.Piece{Name: words.Things(words.Counters, k.said.Total), Count: k.said.Total})
	}
	return list
}

// step tells one move. What lies there from the start is at home.
func (k *story) step(m arithmetic.Move, first bool) telling.Step {
	k.now = k.now.after(m, false)
	if first {
		k.now = k.now.settled()
	}
	var t words.Told
	shown, asked := &scene.Scene{}, false
	switch m := m.(type) {
	case arithmetic.PutCounters:
		t = k.said.Put(m)
	case arithmetic.FillFrame:
		t = k.said.FillFrame(m)
	case arithmetic.SeeDouble:
		t = k.said.SeeDouble(m)
	case arithmetic.AddToDouble:
		t, asked = k.said.AddToDouble(m), true
		t.Desc = k.said.EndsDoubled(m)
	case arithmetic.TakeCounters:
		t = k.said.Take(m)
	case arithmetic.PairUp:
		t = k.said.PairUp(m)
	case arithmetic.ReadFrames:
		t, asked = k.said.Read(m), true
		t.Desc = k.said.Ends(m, k.how)
	case arithmetic.ReadFilled:
		t, asked = k.said.Filled(m), true
		t.Desc = k.said.EndsFilled(m, k.how)
	case arithmetic.ReadPairs:
		t, asked = k.said.ReadPairs(m), true
		t.Desc = k.said.EndsPaired(m)
	}
	k.picture(shown, k.now, asked)
	s := &scene.Scene{W: scene.PaperW, H: k.bottom + scene.Margin - 10, Desc: t.Desc}
	title := words.BlocksStepTitle(k.said.Problem, t.Title)
	s.Title = scene.Telling{Shown: title, Hidden: title}
	if k.said.Kind == arithmetic.Show {
		s.Title.Hidden = words.FramesQuestion
	}
	k.finish(s, shown, asked)
	return telling.Step{Title: t.Title, Hands: t.Hands, Ask: t.Ask, Scene: s, Symbols: k.symbols(m)}
}

// finish puts what is shown on a scene; where it is the answer, the problem stands
// there instead while that is hidden.
func (k *story) finish(s, shown *scene.Scene, asked bool) {
	if !asked {
		telling.AddPart(s, scene.Always, shown)
		return
	}
	telling.AddPart(s, scene.ShownOnly, shown)
	telling.AddPart(s, scene.HiddenOnly, k.posed())
}

// picture draws the frames with the labels under them.
func (k *story) picture(s *scene.Scene, now state, result bool) {
	shows := k.said.Kind == arithmetic.Show || k.said.Kind == arithmetic.Parity || k.said.Kind == arithmetic.Missing
	k.draw(s, now, result && !shows)
	if now.paired {
		k.rings(s, k.pairs)
		if k.alone > 0 {
			k.lonely(s, k.pairs)
		}
	}
	for i := range k.frames {
		k.tally(s, i, now)
	}
}

// tally writes under a frame how many lie in it, how many were taken from it, or how
// many pairs there are. Nothing is written under an empty frame beside another.
func (k *story) tally(s *scene.Scene, frame int, now state) {
	in := now.cells[frame*arithmetic.TenFrame : (frame+1)*arithmetic.TenFrame]
	lie, gone := count(in, full)+count(in, moved), count(in, taken)
	line, role := notation.Line{telling.Count(lie, scene.Ink)}, scene.Ink
	switch {
	case now.paired:
		line = notation.Line{notation.W(words.FramesPairs(lie/2, lie%2))}
	case gone > 0:
		line, role = notation.Line{notation.N("− "+telling.Digits(gone), scene.Ink)}, scene.Gone
	case lie == 0 && len(k.frames) > 1:
		return
	}
	k.label(s, frame, scene.Always, role, line)
}

func count(cells []cell, m mark) (n int64) {
	for _, c := range cells {
		if c.mark == m {
			n++
		}
	}
	return n
}

// posed is the problem before anything is done.
func (k *story) posed() *scene.Scene {
	s := &scene.Scene{}
	k.draw(s, k.given, false)
	switch k.said.Kind {
	case arithmetic.Missing:
		for i, c := range k.given.cells[:len(k.frames)*arithmetic.TenFrame] {
			if c.mark == free {
				x, y := middle(k.at(i, false))
				s.Add(telling.Text(scene.Hidden, x, y, scene.Middle, "?"))
				break
			}
		}
	case arithmetic.Addition:
		if k.apart {
			k.tally(s, 0, k.given)
			k.tally(s, 1, k.given)
		}
	}
	return s
}

// whole is the one picture of the story: how the counters lie in the end, with what
// was done on the way.
func (k *story) whole(last arithmetic.Move) *scene.Scene {
	s, shown := &scene.Scene{Title: k.title}, &scene.Scene{}
	switch m := last.(type) {
	case arithmetic.ReadFrames:
		s.Desc = k.said.Ends(m, k.how)
	case arithmetic.AddToDouble:
		s.Desc = k.said.EndsDoubled(m)
	case arithmetic.ReadFilled:
		s.Desc = k.said.EndsFilled(m, k.how)
	case arithmetic.ReadPairs:
		s.Desc = k.said.EndsPaired(m)
	}
	k.picture(shown, k.ended, false)
	k.finish(s, shown, true)
	telling.Equation(s, k.bottom-14, k.asked, k.answered)
	return s
}
