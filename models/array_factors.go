package models

import (
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// arrayFactors is a number as the set of all its arrays, drawn to one scale:
//
//	▢▢▢▢▢▢▢▢▢▢▢▢
//	1 × 12 or 12 × 1
//
//	▢▢▢▢▢▢               ▢▢▢▢
//	▢▢▢▢▢▢               ▢▢▢▢
//	                     ▢▢▢▢
//	2 × 6 or 6 × 2       3 × 4 or 4 × 3
type arrayFactors struct {
	title  scene.Telling
	n      int64
	pairs  []arithmetic.FindPair
	turn   arithmetic.TurnPairs
	answer arithmetic.Answer
	unit   int
	at     []scene.Box // of every array
	names  []scene.Point
	bottom int
}

// tellArrayFactors tells all arrays of a number.
func tellArrayFactors(w arithmetic.Working, lines arrayLines) Telling {
	a := &arrayFactors{title: lines.title, answer: w.Answer}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.FindPair:
			a.pairs = append(a.pairs, m)
		case arithmetic.TurnPairs:
			a.turn = m
		}
	}
	a.n = a.pairs[0].Cols
	a.place()
	t := Telling{Answer: w.Answer, Pieces: []Piece{{words.Things(words.Counters, a.n), a.n}}}
	for i, m := range a.pairs {
		st := Step{Scene: a.draw(i+1, i)}
		st.Title, st.Hands, st.Ask, st.Scene.Desc = words.ArrayPair(a.n, m, a.pairs[:i+1])
		st.Symbols = notation.Lines(join(arrayNumber(m.Rows), "×", arrayNumber(m.Cols), "=", arrayNumber(a.n)))
		t.Steps = append(t.Steps, st)
	}
	last := Step{Scene: a.draw(len(a.pairs), -1)}
	last.Title, last.Hands, last.Ask, last.Scene.Desc = words.ArrayTurn(a.n, a.turn, a.pairs, w.Answer.Pairs)
	for _, pair := range w.Answer.Pairs[len(a.pairs):] {
		last.Symbols.Lines = append(last.Symbols.Lines, join(arrayNumber(pair[0]), "×", arrayNumber(pair[1]), "=", arrayNumber(a.n)))
	}
	if len(last.Symbols.Lines) == 0 {
		last.Symbols = notation.Lines(join(arrayNumber(1), "×", arrayNumber(1), "=", arrayNumber(1)))
	}
	t.Steps = append(t.Steps, last)
	t.Whole = a.whole()
	return t
}

const (
	arraySetGap     = 36 // between two arrays beside or under each other
	arraySetName    = 44 // room for the name under an array
	arraySeenSquare = 10 // the smallest square that is drawn as one
)

// place puts the arrays beside each other as long as they fit, on one baseline,
// then on the next line.
func (a *arrayFactors) place() {
	const most = 40
	wide := scene.PaperW - 2*scene.Margin
	a.unit = min(most, wide/int(a.n))
	type block struct{ w, h, room int }
	x, top := 0, scene.Margin
	var line []int
	var blocks []block
	flush := func() {
		tall := 0
		for _, i := range line {
			tall = max(tall, blocks[i].h)
		}
		left := scene.Margin + (wide-(x-arraySetGap))/2
		for _, i := range line {
			b := blocks[i]
			a.at = append(a.at, scene.Box{X: left + (b.room-b.w)/2, Y: top + tall - b.h, W: b.w, H: b.h})
			a.names = append(a.names, scene.Point{X: left + b.room/2, Y: top + tall + arraySetName/2})
			left += b.room + arraySetGap
		}
		top += tall + arraySetName + arraySetGap/2
		line, x = nil, 0
	}
	for i, m := range a.pairs {
		b := block{w: int(m.Cols) * a.unit, h: int(m.Rows) * a.unit}
		b.room = max(b.w, scene.Advance(words.ArrayBothTurns(m.Rows, m.Cols), scene.Small, false))
		blocks = append(blocks, b)
		// The first array has a line of its own: it is all that is drawn while
		// the others are asked for.
		if i == 1 || len(line) > 0 && x+b.room > wide {
			flush()
		}
		line, x = append(line, i), x+b.room+arraySetGap
	}
	flush()
	if len(a.pairs) == 1 {
		top += arrayAskedTall
	}
	a.bottom = top - arraySetGap/2
}

// arrayAskedTall is the least room under the first array, for what is asked there.
const arrayAskedTall = 90

// draw draws the first arrays, the newest of them as just found; newest is
// negative when none is.
func (a *arrayFactors) draw(count, newest int) *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, H: a.bottom + scene.Margin, Title: a.title}
	for i := range count {
		role := scene.First
		if i == newest && i > 0 {
			role = scene.Moved
		}
		a.array(s, i, role, scene.Always)
		blank := "?"
		if i == 0 {
			blank = words.ArrayOneRow(a.n)
		}
		a.name(s, i, blank)
	}
	return s
}

func (a *arrayFactors) array(s *scene.Scene, i int, role scene.Role, when scene.When) {
	b, m := a.at[i], a.pairs[i]
	it := scene.Item{Role: role, When: when, Of: scene.OfNth(i), Worth: fraction.Whole(a.n)}
	it.Shape = scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H}
	if a.unit >= arraySeenSquare {
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: int(m.Cols), Rows: int(m.Rows)}
	}
	s.Add(it)
}

func (a *arrayFactors) name(s *scene.Scene, i int, blank string) {
	m, at := a.pairs[i], a.names[i]
	shown := text(scene.Ink, at.X, at.Y, scene.Small, words.ArrayBothTurns(m.Rows, m.Cols))
	shown.When = scene.ShownOnly
	hidden := text(scene.Hidden, at.X, at.Y, scene.Small, blank)
	hidden.When = scene.HiddenOnly
	s.Add(shown, hidden)
}

// whole is all arrays and the list of factors. With the answer hidden it is the
// one row that every number makes, and room for the others.
func (a *arrayFactors) whole() *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, Title: a.title, Desc: words.ArraySet(a.n, a.pairs, a.answer.Pairs)}
	a.array(s, 0, scene.First, scene.Always)
	a.name(s, 0, words.ArrayOneRow(a.n))
	for i := 1; i < len(a.pairs); i++ {
		a.array(s, i, scene.First, scene.ShownOnly)
		shown := text(scene.Ink, a.names[i].X, a.names[i].Y, scene.Small, words.ArrayBothTurns(a.pairs[i].Rows, a.pairs[i].Cols))
		shown.When = scene.ShownOnly
		s.Add(shown)
	}
	top := a.names[0].Y + arraySetName/2 + arraySetGap/2
	asked := scene.Box{X: scene.PaperW / 4, Y: top, W: scene.PaperW / 2, H: a.bottom - top}
	mark := plotLabel(arrayBlank("?"), asked.X+asked.W/2, asked.Y+asked.H/2)
	s.Add(scene.Item{Shape: scene.Rect{X: asked.X, Y: asked.Y, W: asked.W, H: asked.H, Round: 12}, Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly}, mark)
	if len(a.pairs) == 1 {
		none := text(scene.Note, scene.PaperW/2, asked.Y+asked.H/2, scene.Small, words.ArrayNoOther)
		none.When = scene.ShownOnly
		s.Add(none)
	}
	a.list(s)
	return s
}

// list writes the factors at the foot, smaller and on more lines where they need
// it.
func (a *arrayFactors) list(s *scene.Scene) {
	const name, gap = 40, 12
	size := scene.Large
	lines := arrayWrap(words.ArrayFactorList(a.answer.Pairs), size, scene.PaperW-2*scene.Margin)
	if len(lines) > 1 {
		size = scene.Middle
		lines = arrayWrap(words.ArrayFactorList(a.answer.Pairs), size, scene.PaperW-2*scene.Margin)
	}
	y := a.bottom + gap
	if a.unit < arraySeenSquare {
		s.Add(text(scene.Note, scene.PaperW/2, y+name/2, scene.Small, words.ArrayToScale))
		y += name
	}
	s.Add(text(scene.Ink, scene.PaperW/2, y+name/2, scene.Small, words.ArrayFactorsAre(a.n)))
	y += name + size*3/4
	for i, line := range lines {
		t := scene.Words(scene.PaperW/2, y+i*size*5/4, size, line)
		t.Bold = true
		s.Add(scene.Item{Shape: t, Role: scene.Result, When: scene.ShownOnly})
	}
	s.Add(plotLabel(arrayBlank("?"), scene.PaperW/2, y))
	s.H = y + (len(lines)-1)*size*5/4 + size/2 + scene.Margin
}

// arrayWrap sets a list with commas in lines no wider than wide, in bold.
func arrayWrap(list []string, size, wide int) []string {
	var lines []string
	line := ""
	for i, n := range list {
		if i < len(list)-1 {
			n += ","
		}
		longer := strings.TrimPrefix(line+" "+n, " ")
		if line != "" && scene.Advance(longer, size, true) > wide {
			lines, longer = append(lines, line), n
		}
		line = longer
	}
	return append(lines, line)
}
