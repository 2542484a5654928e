package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// family is one array and the facts that are read off it:
//
//	          8
//	      ┌───────────────┐
//	 7    ( o o o o o o o o )
//	rows  ( o o o o o o o o )      56 in all
//	      ( o o o o o o o o )
//
//	  7 × 8 = 56      8 × 7 = 56
//	  56 ÷ 7 = 8      56 ÷ 8 = 7
type family struct {
	story
	facts []arithmetic.Fact
}

// factRise is the height of one line of facts.
const factRise = 56

// tellFamily tells the facts of a product.
func tellFamily(w arithmetic.Working) telling.Telling {
	a := &family{}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.LayRows:
			a.whole = m
		case arithmetic.ReadFact:
			a.facts = append(a.facts, m.Fact)
		}
	}
	total := a.facts[0].Result
	a.title = words.ArrayFamilyTitle(w.Problem, total)
	a.of, a.value, a.count, a.sum = scene.OfAnswer, 1, total, total
	a.rows, a.cols, a.parts = []int64{a.whole.Rows}, []int64{a.whole.Cols}, []int64{total}
	a.choose(room{height: 400, size: 56})
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	read := 0
	for _, m := range w.Moves {
		var st telling.Step
		s := &scene.Scene{Title: a.title, W: scene.PaperW, H: a.low() + scene.Margin}
		switch m := m.(type) {
		case arithmetic.LayRows:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayLay(m.Rows, m.Cols, m.Cols, a.thing())
			st.Symbols = notation.Lines(telling.Join(number(m.Rows), "×", number(m.Cols)))
			a.base(s, nil)
		case arithmetic.ReadFact:
			read++
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayFamilyFact(m, a.facts[:read])
			st.Symbols = notation.Lines(a.fact(m.Fact, true))
			a.base(s, &m.Fact)
			a.list(s, read, true)
		}
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	t.Whole = &scene.Scene{Title: a.title, Desc: words.ArrayFamilyStory(w.Problem, a.facts), W: scene.PaperW, H: a.low() + scene.Margin}
	a.base(t.Whole, nil)
	a.list(t.Whole, len(a.facts), false)
	return t
}

// low is where the facts end.
func (a *family) low() int { return a.under() + (len(a.facts)+1)/2*factRise }

// under is where the facts begin.
func (a *family) under() int {
	y := a.box().Bottom() + 24
	if a.note() != "" {
		y += 36
	}
	return y
}

// base draws the array as a fact sees it: as rows, or as columns. What the fact
// finds is named in the role of the answer.
func (a *family) base(s *scene.Scene, f *arithmetic.Fact) {
	columns := f != nil && (f.Op == arithmetic.Multiply && f.Left != a.whole.Rows || f.Op == arithmetic.Divide && f.Right != a.whole.Rows)
	b := a.box()
	if columns && a.look == inCounters {
		a.columns(s)
	} else {
		a.bands(s, int(a.whole.Rows))
	}
	a.lines(s, f != nil, columns)
	rows, cols := caption{words: arithmetic.Grouped(a.whole.Rows)}, caption{words: arithmetic.Grouped(a.whole.Cols)}
	if f != nil && f.Op == arithmetic.Divide {
		found := &cols
		if columns {
			found = &rows
		}
		found.role = scene.Result
	}
	a.rowsBeside(s, rows)
	a.above(s, b.X, b.Right(), scene.Middle, cols)
	if a.note() != "" {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, b.Bottom()+30, scene.Small, a.note()))
	}
}

// lines draws the rows or, seen from the side, the columns; one of them is marked
// while a fact is read.
func (a *family) lines(s *scene.Scene, marked, columns bool) {
	rows, cols := int(a.whole.Rows), int(a.whole.Cols)
	one, others := region{0, 0, 1, cols}, region{1, 0, rows - 1, cols}
	if columns {
		one, others = region{0, 0, rows, 1}, region{0, 1, rows, cols - 1}
	}
	it := scene.Item{Role: scene.First, Of: a.of}
	if others.rows > 0 && others.cols > 0 {
		a.things(s, others, it)
	}
	if marked {
		it.Role = scene.Moved
	}
	a.things(s, one, it)
}

// columns draws the surfaces that every column lies on.
func (a *family) columns(s *scene.Scene) {
	const edge = 4
	b := a.box()
	for c := range int(a.whole.Cols) {
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: b.X + c*a.plot.step + edge/2, Y: b.Y - 2, W: a.plot.step - edge, H: b.H + 4, Round: 12})
	}
}

// fact writes a fact; while the answer is hidden it asks for the product.
func (a *family) fact(f arithmetic.Fact, shown bool) notation.Line {
	left, result := number(f.Left), telling.Count(f.Result, scene.Result)
	switch {
	case shown:
	case f.Op == arithmetic.Divide: // ? ÷ 7 = 8 asks for the same number
		left, result.Role = telling.Unknown(), scene.Ink
	default:
		result = telling.Unknown()
	}
	return telling.Join(left, f.Op.String(), number(f.Right), "=", result)
}

// list writes the first facts under the array, two in a line; in a step the last
// of them is the newest.
func (a *family) list(s *scene.Scene, count int, step bool) {
	const half = 180 // from the middle of the paper to that of a fact
	for k, f := range a.facts[:count] {
		x := scene.PaperW/2 - half + k%2*2*half
		if len(a.facts) == 2 {
			x = scene.PaperW/2 - half + k*2*half
		}
		y := a.under() + k/2*factRise + factRise/2
		write := func(l notation.Line, when scene.When) {
			t := scene.Text{X: x, Y: y, Size: scene.Middle, Bold: !step || k == count-1, Runs: l.Runs()}
			s.Add(scene.Item{Shape: t, When: when})
		}
		write(a.fact(f, true), scene.ShownOnly)
		write(a.fact(f, false), scene.HiddenOnly)
	}
}
