package array

import (
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// factors is a number as the set of all its arrays, drawn to one scale:
//
//	▢▢▢▢▢▢▢▢▢▢▢▢
//	1 × 12 or 12 × 1
//
//	▢▢▢▢▢▢               ▢▢▢▢
//	▢▢▢▢▢▢               ▢▢▢▢
//	                     ▢▢▢▢
//	2 × 6 or 6 × 2       3 × 4 or 4 × 3
type factors struct {
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

// tellFactors tells all arrays of a number.
func tellFactors(w arithmetic.Working, lines statement) telling.Telling {
	a := &factors{title: lines.title, answer: w.Answer}
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
	t := telling.Telling{Answer: w.Answer, Pieces: []telling.Piece{{Name: words.Things(words.Counters, a.n), Count: a.n}}}
	for i, m := range a.pairs {
		st := telling.Step{Scene: a.draw(i+1, i)}
		st.Title, st.Hands, st.Ask, st.Scene.Desc = words.ArrayPair(a.n, m, a.pairs[:i+1])
		st.Symbols = notation.Lines(telling.Join(number(m.Rows), "×", number(m.Cols), "=", number(a.n)))
		t.Steps = append(t.Steps, st)
	}
	last := telling.Step{Scene: a.draw(len(a.pairs), -1)}
	last.Title, last.Hands, last.Ask, last.Scene.Desc = words.ArrayTurn(a.n, a.turn, a.pairs, w.Answer.Pairs)
	for _, pair := range w.Answer.Pairs[len(a.pairs):] {
		last.Symbols.Lines = append(last.Symbols.Lines, telling.Join(number(pair[0]), "×", number(pair[1]), "=", number(a.n)))
	}
	if len(last.Symbols.Lines) == 0 {
		last.Symbols = notation.Lines(telling.Join(number(1), "×", number(1), "=", number(1)))
	}
	t.Steps = append(t.Steps, last)
	t.Whole = a.whole()
	return t
}

const (
	setGap     = 36 // between two arrays beside or under each other
	setName    = 44 // room for the name under an array
	seenSquare = 10 // the smallest square that is drawn as one
)

// place puts the arrays beside each other as long as they fit, on one baseline,
// then on the next line.
func (a *factors) place() {
	const most = 56 // the side of a square
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
		left := scene.Margin + (wide-(x-setGap))/2
		for _, i := range line {
			b := blocks[i]
			a.at = append(a.at, scene.Box{X: left + (b.room-b.w)/2, Y: top + tall - b.h, W: b.w, H: b.h})
			a.names = append(a.names, scene.Point{X: left + b.room/2, Y: top + tall + setName/2})
			left += b.room + setGap
		}
		top += tall + setName + setGap/2
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
		line, x = append(line, i), x+b.room+setGap
	}
	flush()
	if len(a.pairs) == 1 {
		top += askedTall
	}
	a.bottom = top - setGap/2
}

// askedTall is the least room under the first array, for what is asked there.
const askedTall = 90

// draw draws the first arrays, the newest of them as just found; newest is
// negative when none is.
func (a *factors) draw(count, newest int) *scene.Scene {
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

func (a *factors) array(s *scene.Scene, i int, role scene.Role, when scene.When) {
	b, m := a.at[i], a.pairs[i]
	it := scene.Item{Role: role, When: when, Of: scene.OfNth(i), Worth: fraction.Whole(a.n)}
	it.Shape = scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H}
	if a.unit >= seenSquare {
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: int(m.Cols), Rows: int(m.Rows)}
	}
	s.Add(it)
}

func (a *factors) name(s *scene.Scene, i int, blank string) {
	m, at := a.pairs[i], a.names[i]
	shown := telling.Text(scene.Ink, at.X, at.Y, scene.Small, words.ArrayBothTurns(m.Rows, m.Cols))
	shown.When = scene.ShownOnly
	hidden := telling.Text(scene.Hidden, at.X, at.Y, scene.Small, blank)
	hidden.When = scene.HiddenOnly
	s.Add(shown, hidden)
}

// whole is all arrays and the list of factors. With the answer hidden it is the
// one row that every number makes, and room for the others.
func (a *factors) whole() *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, Title: a.title, Desc: words.ArraySet(a.n, a.pairs, a.answer.Pairs)}
	a.array(s, 0, scene.First, scene.Always)
	a.name(s, 0, words.ArrayOneRow(a.n))
	for i := 1; i < len(a.pairs); i++ {
		a.array(s, i, scene.First, scene.ShownOnly)
		shown := telling.Text(scene.Ink, a.names[i].X, a.names[i].Y, scene.Small, words.ArrayBothTurns(a.pairs[i].Rows, a.pairs[i].Cols))
		shown.When = scene.ShownOnly
		s.Add(shown)
	}
	top := a.names[0].Y + setName/2 + setGap/2
	asked := scene.Box{X: scene.PaperW / 4, Y: top, W: scene.PaperW / 2, H: a.bottom - top}
	mark := captionAt(blanked("?"), asked.X+asked.W/2, asked.Y+asked.H/2)
	s.Add(scene.Item{Shape: scene.Rect{X: asked.X, Y: asked.Y, W: asked.W, H: asked.H, Round: 12}, Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly}, mark)
	if len(a.pairs) == 1 {
		none := telling.Text(scene.Note, scene.PaperW/2, asked.Y+asked.H/2, scene.Small, words.ArrayNoOther)
		none.When = scene.ShownOnly
		s.Add(none)
	}
	a.list(s)
	return s
}

// list writes the factors at the foot, smaller and on more lines where they need
// it.
func (a *factors) list(s *scene.Scene) {
	const name, gap = 40, 12
	size := scene.Large
	lines := wrap(words.ArrayFactorList(a.answer.Pairs), size, scene.PaperW-2*scene.Margin)
	if len(lines) > 1 {
		size = scene.Middle
		lines = wrap(words.ArrayFactorList(a.answer.Pairs), size, scene.PaperW-2*scene.Margin)
	}
	y := a.bottom + gap
	if a.unit < seenSquare {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, y+name/2, scene.Small, words.ArrayToScale))
		y += name
	}
	s.Add(telling.Text(scene.Ink, scene.PaperW/2, y+name/2, scene.Small, words.ArrayFactorsAre(a.n)))
	y += name + size*3/4
	for i, line := range lines {
		t := scene.Words(scene.PaperW/2, y+i*size*5/4, size, line)
		t.Bold = true
		s.Add(scene.Item{Shape: t, Role: scene.Result, When: scene.ShownOnly})
	}
	s.Add(captionAt(blanked("?"), scene.PaperW/2, y))
	s.H = y + (len(lines)-1)*size*5/4 + size/2 + scene.Margin
}

// wrap sets a list with commas in lines no wider than wide, in bold.
func wrap(list []string, size, wide int) []string {
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
