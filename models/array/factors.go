package array

import (
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
//
// The last step turns one of them on its side.
type factors struct {
	title  scene.Telling
	n      int64
	pairs  []arithmetic.FindPair
	turn   arithmetic.TurnPairs
	answer arithmetic.Answer
	unit   int
	at     []scene.Box // of every array, and of the one turned, if it is drawn
	names  []scene.Point
	lines  []int // the tops of the lines on which they stand
	top    int   // of the first line
	most   int   // the side of a square at most
	flow   bool  // the first array has no line of its own
	bottom int
	judged *arithmetic.JudgePrime // where it is asked whether the number is prime
}

// tellFactors tells all arrays of a number.
func tellFactors(w arithmetic.Working, lines statement) telling.Telling {
	a := &factors{title: lines.title, answer: w.Answer, top: scene.Margin, most: largestSquare}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.FindPair:
			a.pairs = append(a.pairs, m)
		case arithmetic.TurnPairs:
			a.turn = m
		case arithmetic.JudgePrime:
			a.judged = &m
		}
	}
	a.n = a.pairs[0].Cols
	a.place(a.turned())
	t := telling.Telling{Answer: w.Answer, Pieces: []telling.Piece{{Name: words.Things(words.Counters, a.n), Count: a.n}}}
	for i, m := range a.pairs {
		st := telling.Step{Scene: a.draw(i+1, i)}
		st.Title, st.Hands, st.Ask, st.Scene.Desc = words.ArrayPair(a.n, m, a.pairs[:i+1])
		st.Symbols = notation.Lines(telling.Join(number(m.Rows), "×", number(m.Cols), "=", number(a.n)))
		t.Steps = append(t.Steps, st)
	}
	last := telling.Step{Scene: a.drawTurned()}
	last.Title, last.Hands, last.Ask, last.Scene.Desc = words.ArrayTurn(a.n, a.turn, a.pairs, w.Answer.Pairs)
	for _, pair := range w.Answer.Pairs[len(a.pairs):] {
		last.Symbols.Lines = append(last.Symbols.Lines, telling.Join(number(pair[0]), "×", number(pair[1]), "=", number(a.n)))
	}
	if len(last.Symbols.Lines) == 0 {
		last.Symbols = notation.Lines(telling.Join(number(1), "×", number(1), "=", number(1)))
	}
	t.Steps = append(t.Steps, last)
	if a.judged != nil {
		t.Steps = append(t.Steps, a.verdict(last.Scene))
	}
	a.place(nil)
	t.Whole = a.whole()
	return t
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
		if newest < 0 {
			continue
		}
		m, blank := a.pairs[i], "?"
		if i == 0 {
			blank = words.ArrayOneRow(a.n)
		}
		a.name(s, i, words.ArrayFact(m.Rows, m.Cols), blank)
	}
	a.note(s)
	a.room(s)
	switch {
	case count < len(a.pairs) || len(a.pairs) == 1 && newest == 0:
		a.more(s, count)
	case len(a.at) == 1:
		a.noOther(s)
	}
	return s
}

// drawTurned draws all arrays, each with the name of the one it turns into, and
// one of them turned.
func (a *factors) drawTurned() *scene.Scene {
	s := a.draw(len(a.pairs), -1)
	drawn := len(a.at) > len(a.pairs)
	for i, m := range a.pairs {
		name, blank := words.ArrayBothTurns(m.Rows, m.Cols), "?"
		if drawn && m.Rows == a.last().Rows {
			name = words.ArrayFact(m.Rows, m.Cols)
		}
		if i == 0 {
			blank = words.ArrayOneRow(a.n)
		}
		a.name(s, i, name, blank)
	}
	if drawn {
		i, m := len(a.pairs), a.last()
		a.pairs = append(a.pairs, arithmetic.FindPair{Rows: m.Cols, Cols: m.Rows})
		a.array(s, i, scene.Moved, scene.Always)
		a.name(s, i, words.ArrayTurnedName(m), words.ArrayOnSide)
		a.pairs = a.pairs[:i]
	}
	return s
}

// more asks for the arrays that are still to be found, in their place.
func (a *factors) more(s *scene.Scene, count int) {
	const least, edge = 56, 10
	y := 0
	if len(a.pairs) == 1 {
		y = a.underFirst()
	}
	for _, top := range a.lines {
		if y == 0 && top > a.at[count-1].Bottom() {
			y = top
		}
	}
	if y == 0 || a.bottom-y < least {
		return
	}
	b := scene.Box{X: scene.PaperW / 4, Y: y, W: scene.PaperW / 2, H: a.bottom - y - edge}
	s.Draw(scene.Hidden, scene.Dashed, scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H, Round: 12})
	s.Add(captionAt(caption{words: "?", role: scene.Hidden}, b.X+b.W/2, b.Y+b.H/2))
}

// underFirst is where the room under the first array begins.
func (a *factors) underFirst() int { return a.names[0].Y + setName/2 + setGap/2 }

// noOther says that the first array is the only one.
func (a *factors) noOther(s *scene.Scene) {
	y := a.underFirst()
	none := telling.Text(scene.Note, scene.PaperW/2, y+(a.bottom-y)/2, scene.Small, words.ArrayNoOther)
	none.When = scene.ShownOnly
	s.Add(none)
}

func (a *factors) array(s *scene.Scene, i int, role scene.Role, when scene.When) {
	b, m := a.at[i], a.pairs[i]
	it := scene.Item{Role: role, When: when, Of: scene.OfNth(i), Worth: fraction.Whole(a.n)}
	it.Shape = scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H}
	if a.toScale() {
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: int(m.Cols), Rows: int(m.Rows)}
	}
	s.Add(it)
}

// name names an array; with the answer hidden blank stands there.
func (a *factors) name(s *scene.Scene, i int, name, blank string) {
	at := a.names[i]
	shown := telling.Text(scene.Ink, at.X, at.Y, scene.Small, name)
	shown.When = scene.ShownOnly
	hidden := telling.Text(scene.Hidden, at.X, at.Y, scene.Small, blank)
	hidden.When = scene.HiddenOnly
	s.Add(shown, hidden)
}

// note says, under the arrays, that they are not to scale.
func (a *factors) note(s *scene.Scene) {
	if !a.toScale() {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, a.bottom+noteTall/2, scene.Small, words.ArrayNotToScale))
		s.H += noteTall - scene.Margin/2
	}
}

// noteTall is the room for the note.
const noteTall = 40

// whole is all arrays and the list of factors. With the answer hidden it is the
// one row that every number makes, and room for the others.
func (a *factors) whole() *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, Title: a.title, Desc: words.ArraySet(a.n, a.pairs, a.answer.Pairs)}
	if a.judged != nil {
		s.Desc = words.ArrayPrime(*a.judged, a.pairs)
	}
	a.array(s, 0, scene.First, scene.Always)
	a.name(s, 0, words.ArrayBothTurns(1, a.n), words.ArrayOneRow(a.n))
	for i := 1; i < len(a.pairs); i++ {
		a.array(s, i, scene.First, scene.ShownOnly)
		shown := telling.Text(scene.Ink, a.names[i].X, a.names[i].Y, scene.Small, words.ArrayBothTurns(a.pairs[i].Rows, a.pairs[i].Cols))
		shown.When = scene.ShownOnly
		s.Add(shown)
	}
	top := a.underFirst()
	asked := scene.Box{X: scene.PaperW / 4, Y: top, W: scene.PaperW / 2, H: a.bottom - top}
	mark := captionAt(blanked("?"), asked.X+asked.W/2, asked.Y+asked.H/2)
	s.Add(scene.Item{Shape: scene.Rect{X: asked.X, Y: asked.Y, W: asked.W, H: asked.H, Round: 12}, Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly}, mark)
	if len(a.pairs) == 1 {
		a.noOther(s)
	}
	if a.judged != nil {
		a.judge(s)
		return s
	}
	a.list(s)
	return s
}
