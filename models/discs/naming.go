package discs

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// naming draws one amount and, on discs beside it, the same amount with another name.
//
//	1 whole
//	 (( ))   =   (( ))
//	  6/8         3/4
type naming struct {
	sheet
	working arithmetic.Working
	number  arithmetic.Number
	laid    arithmetic.Strips
}

// renamed is what the other discs show after a move.
type renamed struct {
	to   arithmetic.Strips
	made arithmetic.Move // what has just been done to it; nil for nothing
	done bool            // there are other discs
	old  int64           // parts to a whole before a cut
	name bool            // its name is known: it need not be counted
}

func tellNamed(w arithmetic.Working) telling.Telling {
	laid := w.Moves[0].(arithmetic.LayStrips)
	e, _ := extentOf(w)
	discs := max(e.discs[0], e.discs[2])
	n := naming{layDiscs(e.den, discs, discs), w, laid.Number, laid.Strips}
	first := telling.Numeral(laid.Number, scene.First)
	var now renamed
	t := telling.Telling{Pieces: paper(2 * discs), Steps: []telling.Step{{
		Title: words.BarLayTitle(laid.Number), Hands: words.DiscLay(scene.First, laid.Number, laid.Strips, false), Ask: words.BarAskLay(laid.Strips),
		Scene: n.picture(now), Symbols: notation.Lines(first),
	}}}
	names := []notation.Line{first}
	for i, move := range w.Moves[1:] {
		old := now.old
		now = renamed{to: after(move), done: true, made: move, name: !n.counts(i + 2)}
		if _, counting := move.(arithmetic.CountParts); counting {
			now.old, now.made = old, nil // counting changes nothing: the first cuts stay heavy
		}
		step := n.tell(move, &now)
		step.Scene = n.picture(now)
		t.Steps = append(t.Steps, step)
		if name := telling.Strips(now.to, scene.Result); name.Text() != names[len(names)-1].Text() {
			names = append(names, name)
		}
	}
	now.made = nil
	t.Whole = n.picture(now)
	t.Why = words.DiscSameAmount(scene.First, scene.Result, laid.Number.String(), words.BarAmount(now.to))
	asked := telling.Join(first, notation.S("="), n.blank())
	if w.Problem.Blank.First {
		asked = telling.Join(n.blank(), notation.S("="), first)
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, telling.Chain("=", names...))
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
	panic("discs: not a move that names an amount")
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
		return telling.Step{Title: words.BarOpenTitle(m), Hands: words.DiscOpen(scene.First, scene.Result, m, now.name), Ask: words.DiscAskOpenAll(m), Symbols: same(m.From, m.To)}
	case arithmetic.MergeParts:
		return telling.Step{Title: words.BarMergeTitle(m), Hands: words.DiscMerge(scene.Result, m, now.name), Ask: words.BarAskMerge(m), Symbols: same(m.From, m.To)}
	case arithmetic.CutParts:
		now.old = m.From.Part.Den()
		return telling.Step{Title: words.BarCutTitle(m), Hands: words.DiscCut(scene.Result, m, now.name), Ask: words.BarAskCut(m), Symbols: same(m.From, m.To)}
	}
	m := move.(arithmetic.CountParts)
	return telling.Step{Title: words.BarCountTitle(false), Hands: words.DiscCountNamed(m), Ask: words.DiscAskCountNamed(m, n.working.Problem.Blank), Symbols: same(n.laid, m.Total)}
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
	s := &scene.Scene{
		W: scene.PaperW, H: n.bottom + scene.Margin,
		Title: words.BarNamedTitle(n.working.Problem, n.working.Answer),
		Desc:  words.DiscNamedDesc(n.number, n.laid, now.to, now.done, now.name),
	}
	n.wholeMark(s, 0)
	n.draw(s, n.groups[0], n.pictured(n.laid, scene.First, scene.OfFirst), scene.Always)
	n.groups[0].name(s, scene.First, telling.Numeral(n.number, scene.First), scene.Always)
	if !now.done {
		return s
	}
	p := n.pictured(now.to, scene.Result, scene.OfAnswer)
	p.runs = cutFiner(p.runs, now.old, now.made != nil)
	switch m := now.made.(type) {
	case arithmetic.MakeWholes:
		p.runs = n.filled(p.runs, m.Wholes)
	case arithmetic.OpenWholes:
		p.runs = n.opened(p.runs, m.Wholes)
	case arithmetic.MergeParts:
		if m.Every > 1 {
			p.runs[1].role = scene.Moved
		}
	}
	g := n.groups[1]
	n.sign(s, 1, scene.Ink, "=", scene.Always)
	n.draw(s, g, p, scene.ShownOnly)
	n.unsure(s, g)
	if now.name {
		g.name(s, scene.Result, telling.Strips(now.to, scene.Result), scene.ShownOnly)
	} else {
		g.name(s, scene.Hidden, n.blankIn(now.to), scene.ShownOnly)
	}
	g.name(s, scene.Hidden, n.blank(), scene.HiddenOnly)
	return s
}

// opened marks the parts of whole discs that have just been cut: the first of the
// loose parts.
func (s sheet) opened(runs []run, wholes int64) []run {
	cut, rest := runs[1], runs[1]
	cut.count, cut.role = wholes*rest.den, scene.Moved
	rest.from, rest.count = s.end(cut), rest.count-cut.count
	return []run{runs[0], cut, rest}
}
