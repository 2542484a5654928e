package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// threeFactors is a product of three factors as equal blocks of rows, and what is
// multiplied first is marked in them.
type threeFactors struct {
	statement
	blockPlaces
	first  arithmetic.PairFactors
	count  arithmetic.CountPairs
	easier arithmetic.EasierPair // zero where there is none
	line   int                   // the height of what is written under the blocks
}

// tellThreeFactors tells a product of three factors.
func tellThreeFactors(w arithmetic.Working, lines statement) telling.Telling {
	a := &threeFactors{statement: lines}
	a.plan(w)
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	said := words.ArrayBlocks{Problem: w.Problem, Blocks: a.Blocks, First: a.first, Count: a.count, Easier: a.easier, Sketch: a.look == inSketch}
	result := telling.Count(a.count.Product, scene.Result)
	for _, m := range w.Moves {
		var st telling.Step
		s := &scene.Scene{Title: a.title, W: scene.PaperW, H: a.line + factsTall/2 + scene.Margin}
		mark := lit(noneLit)
		switch m := m.(type) {
		case arithmetic.LayBlocks:
			st.Title, st.Hands, st.Ask, s.Desc = said.Laid()
			st.Symbols = notation.Lines(a.stem)
		case arithmetic.PairFactors:
			st.Title, st.Hands, st.Ask, s.Desc = said.Paired()
			pair := telling.Join(number(m.First), "×", number(m.Second), "=", telling.Count(m.Product, scene.Moved))
			st.Symbols = notation.Lines(pair, telling.Join(a.stem, "=", a.rest()))
			mark = litBy(m.Pair)
			a.write(s, said.PairName(m.Pair, m.First, m.Second, m.Product), "")
		case arithmetic.CountPairs:
			st.Title, st.Hands, st.Ask, s.Desc = said.Counted()
			st.Symbols = notation.Lines(telling.Join(a.rest(), "=", result))
			a.write(s, factOf(m.Times, m.Each, arithmetic.Grouped(m.Product)), factOf(m.Times, m.Each, "?"))
		case arithmetic.EasierPair:
			st.Title, st.Hands, st.Ask, s.Desc = said.Easy()
			st.Symbols = notation.Lines(
				telling.Join(number(m.First), "×", number(m.Second), "=", telling.Count(m.Easy, scene.Moved)),
				telling.Join(number(m.Times), "×", telling.Count(m.Easy, scene.Moved), "=", telling.Count(m.Product, scene.Result)))
			mark = litBy(m.Pair)
			a.write(s, said.PairName(m.Pair, m.First, m.Second, m.Easy), "")
		}
		a.draw(s, mark)
		a.note(s, a.bottom+blockFoot+24)
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	t.Whole = a.whole(said)
	return t
}

// rest is what is left to multiply: 15 × 2, the product of the pair marked.
func (a *threeFactors) rest() notation.Line {
	first, second := telling.Count(a.count.Times, scene.Ink), telling.Count(a.count.Each, scene.Moved)
	if a.count.Pair == arithmetic.RowsInAll {
		first.Role, second.Role = scene.Moved, scene.Ink
	}
	return telling.Join(first, "×", second)
}

func (a *threeFactors) plan(w arithmetic.Working) {
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.LayBlocks:
			a.Blocks = m.Blocks
		case arithmetic.PairFactors:
			a.first = m
		case arithmetic.CountPairs:
			a.count = m
		case arithmetic.EasierPair:
			a.easier = m
		}
	}
	const height = 400
	a.role, a.blockPlaces.of = scene.First, scene.OfAnswer
	a.laidIn(scene.Box{X: scene.Margin, Y: scene.Margin, W: scene.PaperW - 2*scene.Margin, H: height + blockTop + blockFoot}, 48)
	a.line = a.bottom + blockFoot + factsTall/2
	if a.look == inSketch {
		a.line += 40
	}
}

func (a *threeFactors) pieces() []telling.Piece {
	if a.look == inCounters {
		n := a.count.Product
		return []telling.Piece{{Name: words.Things(words.Counters, n), Count: n}}
	}
	return []telling.Piece{{Name: "sheet of squared paper", Count: 1}}
}

// write writes what was found under the blocks; blank is what stands there while
// the answer is hidden, where that differs.
func (a *threeFactors) write(s *scene.Scene, found, blank string) {
	add := func(text string, role scene.Role, when scene.When) {
		t := scene.Words(scene.PaperW/2, a.line, scene.Middle, text)
		t.Bold = true
		if t.Width() > scene.PaperW-2*scene.Margin {
			t.Size, t.Bold = scene.Small, false
		}
		s.Add(scene.Item{Shape: t, Role: role, When: when})
	}
	if blank == "" {
		add(found, scene.Ink, scene.Always)
		return
	}
	add(found, scene.Result, scene.ShownOnly)
	add(blank, scene.Hidden, scene.HiddenOnly)
}

// whole is the one picture. An easier order stands over the equation.
func (a *threeFactors) whole(said words.ArrayBlocks) *scene.Scene {
	s := &scene.Scene{Title: a.title, Desc: said.Story()}
	a.draw(s, noneLit)
	a.note(s, a.bottom+blockFoot+24)
	bottom := a.line - factsTall/2
	if a.easier.Easy > 0 {
		m := a.easier
		line := telling.Join(notation.W("easier:"), number(m.First), "×", number(m.Second), "=", number(m.Easy))
		s.Add(scene.Item{Shape: scene.Text{X: scene.PaperW / 2, Y: a.line, Size: scene.Small, Runs: line.Runs()}})
		bottom += factsTall - 8
	}
	long := telling.Join(a.stem, "=", a.rest(), "=", telling.Count(a.count.Product, scene.Result))
	if !telling.EquationFits(long) {
		long = a.answered
	}
	telling.Equation(s, bottom, a.asked, long)
	return s
}
