package bars

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// naming draws one amount and, under it, the same length with another name.
//
//	     |<-------- 1 whole --------->|
//	1    +--------------+-------------+
//	-    |//////////////|             |
//	2    +--------------+-------------+
//	4    +---+---+---+---+---+---+---+-
//	-    |xxx|xxx|xxx|xxx|   |   |   |
//	8    +---+---+---+---+---+---+---+-
type naming struct {
	strip
	working arithmetic.Working
	number  arithmetic.Number
	laid    arithmetic.Strips
}

// renamed is what the lower bar shows after a move.
type renamed struct {
	to   arithmetic.Strips
	made arithmetic.Move // what has just been done to it; nil for nothing
	done bool            // there is a lower bar
	old  int64           // parts to a whole before a cut
	name bool            // its name is known: it need not be counted
}

func tellNamed(w arithmetic.Working) telling.Telling {
	laid := w.Moves[0].(arithmetic.LayStrips)
	den, wholes, _, _ := extent(w)
	lines := []notation.Line{telling.Numeral(laid.Number, scene.First)}
	for _, move := range w.Moves[1:] {
		lines = append(lines, telling.Strips(after(move), scene.Result))
	}
	n := naming{layStrip(den, wholes, besideRoom(lines...)), w, laid.Number, laid.Strips}
	var now renamed
	t := telling.Telling{Pieces: stripPieces(laid.Strips), Steps: []telling.Step{{
		Title: words.BarLayTitle(laid.Number), Hands: words.BarLay(scene.First, laid.Number, laid.Strips, false), Ask: words.BarAskLay(laid.Strips),
		Scene: n.picture(now), Symbols: notation.Lines(lines[0]),
	}}}
	names := []notation.Line{lines[0]}
	for i, move := range w.Moves[1:] {
		old := now.old
		now = renamed{to: after(move), done: true, made: move, name: !n.counts(i + 2)}
		if _, counting := move.(arithmetic.CountParts); counting {
			now.old, now.made = old, nil // counting changes nothing: the first cuts stay heavy
		}
		step := n.tell(move, &now)
		step.Scene = n.picture(now)
		t.Steps = append(t.Steps, step)
		if name := lines[i+1]; name.Text() != names[len(names)-1].Text() {
			names = append(names, name)
		}
	}
	now.made = nil
	t.Whole = n.picture(now)
	t.Why = words.BarSameLength(scene.First, scene.Result, laid.Number.String(), words.BarAmount(now.to))
	asked := telling.Join(names[0], notation.S("="), n.blank())
	if w.Problem.Blank.First {
		asked = telling.Join(n.blank(), notation.S("="), names[0])
	}
	answered := names[0]
	for _, name := range names[1:] {
		answered = telling.Join(answered, notation.S("="), name)
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, answered)
	return t
}

// counts reports whether a move counts the parts: what the move before it made has
// no name until then.
func (n naming) counts(move int) bool {
	if move >= len(n.working.Moves) {
		return false
	}
	_, ok := n.working.Moves[move].(arithmetic.CountParts)
	return ok
}

// after is what an amount has become by a move.
func after(move arithmetic.Move) arithmetic.Strips {
	switch m := move.(type) {
	case arithmetic.MakeWholes:
		return m.To
	case arithmetic.OpenWholes:
		return m.To
	case arithmetic.MergeParts:
		return m.To
	case arithmetic.CutParts:
		return m.To
	case arithmetic.CountParts:
		return m.Total
	}
	panic("bars: not a move that names an amount")
}

// tell tells a move, all but its picture.
func (n naming) tell(move arithmetic.Move, now *renamed) telling.Step {
	same := func(from, to arithmetic.Strips) notation.Block {
		name := telling.Strips(to, scene.Result)
		if !now.name {
			name = n.blankIn(to)
		}
		return notation.Lines(telling.Join(telling.Strips(from, scene.First), notation.S("="), name))
	}
	switch m := move.(type) {
	case arithmetic.MakeWholes:
		return telling.Step{Title: words.BarMakeTitle(m), Hands: words.BarMake(scene.Result, m), Ask: words.BarAskMake(m), Symbols: same(m.From, m.To)}
	case arithmetic.OpenWholes:
		return telling.Step{Title: words.BarOpenTitle(m), Hands: words.BarOpen(scene.First, scene.Result, m, now.name), Ask: words.BarAskOpenAll(m), Symbols: same(m.From, m.To)}
	case arithmetic.MergeParts:
		return telling.Step{Title: words.BarMergeTitle(m), Hands: words.BarMerge(scene.Result, m, now.name), Ask: words.BarAskMerge(m), Symbols: same(m.From, m.To)}
	case arithmetic.CutParts:
		now.old = m.From.Part.Den()
		return telling.Step{Title: words.BarCutTitle(m), Hands: words.BarCut(scene.Result, m, now.name), Ask: words.BarAskCut(m), Symbols: same(m.From, m.To)}
	}
	m := move.(arithmetic.CountParts)
	return telling.Step{Title: words.BarCountTitle(false), Hands: words.BarCount(m, false, false), Ask: words.BarAskCountNamed(m, n.working.Problem.Blank), Symbols: same(n.laid, m.Total)}
}

// blank is what stands for the name that is asked for.
func (n naming) blank() notation.Line {
	b := n.working.Problem.Blank
	if n.working.Problem.Kind != arithmetic.Renaming {
		return telling.Join(telling.Unknown())
	}
	num, den := "?", "?"
	if b.Num > 0 {
		num = strconv.FormatInt(b.Num, 10)
	}
	if b.Den > 0 {
		den = strconv.FormatInt(b.Den, 10)
	}
	return telling.Join(notation.F(num, den, scene.Hidden))
}

// blankIn is the blank while the parts of an amount wait to be counted.
func (n naming) blankIn(a arithmetic.Strips) notation.Line {
	if n.working.Problem.Kind == arithmetic.Renaming {
		return n.blank()
	}
	return telling.Join(notation.F("?", strconv.FormatInt(a.Part.Den(), 10), scene.Hidden))
}

func (n naming) picture(now renamed) *scene.Scene {
	const (
		upper  = scene.Margin + 48
		tall   = 72
		lower  = upper + tall + 28
		bottom = lower + tall + 12
	)
	s := &scene.Scene{
		W: scene.PaperW, H: bottom + scene.Margin,
		Title: words.BarNamedTitle(n.working.Problem, n.working.Answer),
		Desc:  words.BarNamedDesc(n.number, n.laid, now.to, now.done, now.name),
	}
	n.wholeMark(s)
	n.draw(s, n.shaded(upper, tall, n.laid, scene.First, scene.OfFirst), scene.Always)
	n.beside(s, upper+tall/2, scene.First, telling.Numeral(n.number, scene.First), scene.Always)
	if !now.done {
		return s
	}
	b := n.shaded(lower, tall, now.to, scene.Result, scene.OfAnswer)
	b.runs = cutFiner(b.runs, now.old, now.made != nil)
	switch m := now.made.(type) {
	case arithmetic.MakeWholes:
		b.runs = n.filled(b.runs, m.Wholes)
	case arithmetic.OpenWholes:
		b.runs = n.opened(b.runs, m.Wholes)
	case arithmetic.MergeParts:
		if m.Every > 1 {
			b.runs[1].role = scene.Moved
		}
	}
	n.draw(s, b, scene.ShownOnly)
	n.draw(s, bar{y: lower, h: tall}, scene.HiddenOnly)
	end := n.long(now.to)
	n.unsure(s, lower, tall, 0, end)
	s.Draw(scene.Guide, scene.Dotted, scene.Line{X1: n.at(end), Y1: upper + tall, X2: n.at(end), Y2: lower})
	if now.name {
		n.beside(s, lower+tall/2, scene.Result, telling.Strips(now.to, scene.Result), scene.ShownOnly)
	} else {
		n.beside(s, lower+tall/2, scene.Hidden, n.blankIn(now.to), scene.ShownOnly)
	}
	n.beside(s, lower+tall/2, scene.Hidden, n.blank(), scene.HiddenOnly)
	return s
}
