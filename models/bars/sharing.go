package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// sharing draws an amount divided into equal shares, and under it one share alone.
//
//	     |<-------- 1 whole --------->|
//	1    +--------+---------+---------+
//	-    |//|//|//|  |   |  |  |   |  |
//	3    +--------+---------+---------+
//	1    +--+--+--+--+---+--+--+---+--+
//	-    |xx|  |  |  |   |  |  |   |  |
//	9    +--+--+--+--+---+--+--+---+--+
type sharing struct {
	strip
	working arithmetic.Working
	laid    arithmetic.LayStrips
	share   arithmetic.ShareParts
}

// shared is what the picture shows after a move.
type shared struct {
	lies arithmetic.Strips
	made arithmetic.Move // what has just been done; nil for nothing
	each *arithmetic.Strips
}

func tellShared(w arithmetic.Working) telling.Telling {
	h := sharing{working: w, laid: w.Moves[0].(arithmetic.LayStrips)}
	lines := []notation.Line{telling.Numeral(h.laid.Number, scene.First)}
	for _, move := range w.Moves {
		switch move := move.(type) {
		case arithmetic.ShareParts:
			h.share = move
			lines = append(lines, telling.Strips(move.Each, scene.Result))
		case arithmetic.MakeWholes, arithmetic.MergeParts:
			lines = append(lines, telling.Strips(after(move), scene.Result))
		}
	}
	den, wholes, _, _ := extent(w)
	h.strip = layStrip(den, wholes, besideRoom(lines...))
	t := telling.Telling{Pieces: stripPieces(h.laid.Strips)}
	var now shared
	for _, move := range w.Moves {
		step := h.tell(move, &now)
		step.Scene = h.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.made = nil
	t.Whole = h.picture(now, true)
	asked := h.quotient()
	answered := telling.Join(asked, "=", lines[1])
	for _, name := range lines[2:] {
		answered = telling.Join(answered, "=", name)
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Join(asked, "=", telling.Unknown()), answered)
	return t
}

func (h sharing) quotient() notation.Line {
	return telling.Join(telling.Numeral(h.laid.Number, scene.First), "÷", telling.Count(h.share.Shares, scene.Second))
}

// tell makes a move and tells it, all but its picture.
func (h sharing) tell(move arithmetic.Move, now *shared) telling.Step {
	same := func(from, to arithmetic.Strips, role scene.Role) notation.Block {
		return notation.Lines(telling.Join(telling.Strips(from, role), "=", telling.Strips(to, role)))
	}
	now.made = move
	switch m := move.(type) {
	case arithmetic.LayStrips:
		now.lies = m.Strips
		return telling.Step{Title: words.BarLayTitle(m.Number), Hands: words.BarLay(scene.First, m.Number, m.Strips, false),
			Ask: words.BarAskShareFirst(m.Number), Symbols: notation.Lines(telling.Numeral(m.Number, scene.First))}
	case arithmetic.CutParts:
		now.lies = m.To
		return telling.Step{Title: words.BarCutTitle(m), Hands: words.BarCut(scene.First, m, true), Ask: words.BarAskCut(m), Symbols: same(m.From, m.To, scene.First)}
	case arithmetic.OpenWholes:
		now.lies = m.To
		return telling.Step{Title: words.BarOpenTitle(m), Hands: words.BarOpen(scene.First, scene.First, m, true), Ask: words.BarAskOpenAll(m), Symbols: same(m.From, m.To, scene.First)}
	case arithmetic.ShareParts:
		now.each = &m.Each
		return telling.Step{Title: words.BarShareTitle(m), Hands: words.BarShare(m), Ask: words.BarAskShare(m),
			Symbols: notation.Lines(telling.Join(h.quotient(), "=", telling.Strips(m.Each, scene.Result)))}
	case arithmetic.MakeWholes:
		now.each = &m.To
		return telling.Step{Title: words.BarMakeTitle(m), Hands: words.BarMake(scene.Result, m), Ask: words.BarAskMake(m), Symbols: same(m.From, m.To, scene.Result)}
	case arithmetic.MergeParts:
		now.each = &m.To
		return telling.Step{Title: words.BarMergeTitle(m), Hands: words.BarMerge(scene.Result, m, true), Ask: words.BarAskMerge(m), Symbols: same(m.From, m.To, scene.Result)}
	}
	panic("bars: not a move of sharing")
}

// picture draws the amount and a share of it after a move. The whole story, with its
// answer hidden, shows the amount before it is cut.
func (h sharing) picture(now shared, story bool) *scene.Scene {
	const (
		upper  = scene.Margin + 48
		tall   = 72
		lower  = upper + tall + 40
		bottom = lower + tall + 12
	)
	share := ""
	if now.each != nil {
		share = words.BarAmount(*now.each)
	}
	s := &scene.Scene{
		W: scene.PaperW, H: bottom + scene.Margin,
		Title: words.BarDividedTitle(h.working.Problem, h.working.Answer),
		Desc:  words.BarSharedDesc(h.laid.Number, h.share.Shares, now.lies, share),
	}
	h.wholeMark(s)
	h.beside(s, upper+tall/2, scene.First, telling.Numeral(h.laid.Number, scene.First), scene.Always)
	b := h.shaded(upper, tall, now.lies, scene.First, scene.OfFirst)
	switch m := now.made.(type) {
	case arithmetic.CutParts:
		b.runs = cutFiner(b.runs, m.From.Part.Den(), true)
	case arithmetic.OpenWholes:
		b.runs = h.opened(b.runs, m.Wholes)
	}
	if !story {
		h.draw(s, b, scene.Always)
	} else {
		h.draw(s, b, scene.ShownOnly)
		h.draw(s, h.shaded(upper, tall, h.laid.Strips, scene.First, scene.OfFirst), scene.HiddenOnly)
	}
	if now.each == nil {
		return s
	}
	each := h.long(h.share.Each)
	when := scene.Always
	if story {
		when = scene.ShownOnly
	}
	for i := range h.share.Shares - 1 {
		x := h.at((i + 1) * each)
		s.Add(scene.Item{Shape: scene.Line{X1: x, Y1: upper - 8, X2: x, Y2: upper + tall + 8}, Role: scene.Second, Finish: scene.Bold, When: when})
	}
	one := h.shaded(lower, tall, *now.each, scene.Result, scene.OfAnswer)
	switch m := now.made.(type) {
	case arithmetic.MakeWholes:
		one.runs = h.filled(one.runs, m.Wholes)
	case arithmetic.ShareParts, arithmetic.MergeParts:
		one.runs[1].role = scene.Moved
	}
	h.draw(s, one, scene.ShownOnly)
	h.draw(s, bar{y: lower, h: tall}, scene.HiddenOnly)
	s.Add(scene.Item{Shape: scene.Line{X1: h.at(each), Y1: upper + tall + 8, X2: h.at(each), Y2: lower}, Role: scene.Guide, Finish: scene.Dotted, When: when})
	h.beside(s, lower+tall/2, scene.Result, telling.Strips(*now.each, scene.Result), scene.ShownOnly)
	h.beside(s, lower+tall/2, scene.Hidden, telling.Join(telling.Unknown()), scene.HiddenOnly)
	return s
}
