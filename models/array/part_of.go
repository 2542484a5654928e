package array

import (
	"slices"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// partOf is an amount in equal rows, some of them marked:
//
//	      ┌ ┏━━━━━━━━━━━━┓
//	 3    │ ┃  o o o o   ┃ 4
//	rows  │ ┗━━━━━━━━━━━━┛
//	      │    o o o o
//	      └    o o o o
type partOf struct {
	story
	of   fraction.Fraction
	set  arithmetic.SetOut
	mark arithmetic.MarkRows
}

// tellPartOf tells a fraction of an amount.
func tellPartOf(w arithmetic.Working, f fraction.Fraction, lines statement) telling.Telling {
	a := &partOf{of: f}
	a.statement = lines
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.SetOut:
			a.set = m
		case arithmetic.MarkRows:
			a.mark = m
		}
	}
	a.plan()
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	each := telling.Count(a.mark.Each, scene.Ink)

	shared := telling.Step{Scene: a.draw(false)}
	shared.Title, shared.Hands, shared.Ask, shared.Scene.Desc = words.ArrayEqualRows(f, a.set, a.mark.Each, a.thing())
	shared.Symbols = notation.Lines(telling.Join(number(a.set.Total), "÷", number(a.set.Side), "=", each))

	marked := telling.Step{Scene: a.draw(true)}
	marked.Title, marked.Hands, marked.Ask, marked.Scene.Desc = words.ArrayMark(f, a.set, a.mark)
	marked.Symbols = notation.Lines(a.answered)
	if a.mark.Rows > 1 {
		sum := telling.Count(a.mark.Sum, scene.Result)
		marked.Symbols = notation.Lines(telling.Join(number(a.mark.Rows), "×", each, "=", sum), a.answered)
	}
	t.Steps = []telling.Step{shared, marked}
	t.Whole = a.draw(true)
	t.Whole.Desc = marked.Scene.Desc
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, a.asked, a.answered)
	return t
}

// plan places the rows. Where single counters are too many, every row is a bar.
func (a *partOf) plan() {
	free := room{height: 440, size: largestCounter, right: 110}
	a.value, a.count, a.sum = 1, a.set.Total, a.set.Total
	a.rows, a.cols, a.parts = []int64{a.set.Side}, []int64{a.mark.Each}, []int64{a.set.Total}
	a.choose(free)
	if a.look == inCounters {
		return
	}
	bars := plot{value: 1, look: inSketch, sum: a.set.Total, cols: a.cols}
	for range a.set.Side {
		bars.rows, bars.parts = append(bars.rows, 1), append(bars.parts, a.mark.Each)
	}
	left := bars.nameRoom()
	bars.sketch(scene.PaperW-2*scene.Margin-left-free.right, scene.Small, smallEdge, free)
	bars.h = slices.Repeat([]int{min(64, max(44, free.height/int(a.set.Side)))}, len(bars.rows))
	bars.place(scene.Margin + left + (scene.PaperW-2*scene.Margin-left-free.right-bars.width())/2)
	a.plot = bars
}

// draw draws the rows, with those that are asked for marked or not.
func (a *partOf) draw(marked bool) *scene.Scene {
	const around = 4 // from the marked rows to their outline
	s := &scene.Scene{W: scene.PaperW, Title: a.title, H: a.box().Bottom() + 12 + scene.Margin}
	a.rowsBeside(s, caption{words: arithmetic.Grouped(a.set.Side)})
	b := a.box()
	each := arithmetic.Grouped(a.mark.Each)
	a.above(s, b.X, b.Right(), scene.Small, revealed(words.ArrayEach(each), scene.Ink), blanked(words.ArrayEach("?")))
	things := func(row int) scene.Item {
		if marked && row < int(a.mark.Rows) {
			return scene.Item{Role: scene.Result, Of: scene.OfAnswer}
		}
		return scene.Item{Role: scene.First, Of: a.statement.of}
	}
	var outline scene.Box
	if a.look == inCounters {
		bands := a.bandBoxes(int(a.set.Side))
		a.bands(s, len(bands))
		for r := range bands {
			for c := range int(a.mark.Each) {
				a.piece(s, b.X+c*a.plot.step+a.plot.step/2, b.Y+r*a.rise+a.rise/2, worth(things(r), 1))
			}
		}
		outline = bands[0]
		if a.mark.Rows > 0 {
			outline.H = bands[a.mark.Rows-1].Bottom() - outline.Y
		}
	} else {
		for r := range a.rows {
			a.fill(s, r, 0, things(r))
			part := a.part(r, 0)
			name := telling.Text(things(r).Role, part.X+part.W/2, part.Y+part.H/2, scene.Small, each)
			name.When = scene.ShownOnly
			s.Add(plateUnder(name, 8), name)
		}
		outline = a.part(0, 0)
		outline.H *= int(max(a.mark.Rows, 1))
	}
	if marked && a.mark.Rows > 0 {
		s.Add(scene.Item{
			Shape: scene.Rect{X: outline.X - around, Y: outline.Y - around, W: outline.W + 2*around, H: outline.H + 2*around, Round: 14},
			Role:  scene.Result, Finish: scene.Bold,
		})
	}
	if marked {
		for _, n := range []caption{revealed(arithmetic.Grouped(a.mark.Sum), scene.Result), blanked("?")} {
			it := captionAt(n, outline.Right()+around+outside, outline.Y+outline.H/2)
			t := it.Shape.(scene.Text)
			t.Anchor = scene.Left
			it.Shape = t
			s.Add(it)
		}
	}
	return s
}
