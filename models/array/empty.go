package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellEmpty tells a product with a factor 0: rows with nothing in them, or no
// rows at all.
func (a *story) tellEmpty(w arithmetic.Working) telling.Telling {
	t := telling.Telling{Answer: w.Answer}
	for i, m := range w.Moves {
		var st telling.Step
		s := a.drawEmpty()
		switch m := m.(type) {
		case arithmetic.LayRows:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayLay(m.Rows, m.Cols, m.Cols, words.Counters)
		case arithmetic.CountRows:
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayCount(m)
			for _, n := range []caption{revealed(words.ArrayInAll("0"), scene.Result), blanked(words.ArrayInAll("?"))} {
				s.Add(captionAt(n, scene.PaperW/2, s.H-scene.Margin+factsTall/2))
			}
		}
		st.Symbols = notation.Lines(a.asked)
		if i == len(w.Moves)-1 {
			st.Symbols = notation.Lines(a.answered)
			t.Whole = a.drawEmpty()
			t.Whole.Desc = s.Desc
			telling.Equation(t.Whole, s.H-scene.Margin, a.asked, a.answered)
		}
		s.H += factsTall
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	return t
}

// drawEmpty draws up to 12 rows as empty outlines; more of them, or none, as one
// surface with words on it.
func (a *story) drawEmpty() *scene.Scene {
	const left, wide, tall = 200, 440, 36
	s := &scene.Scene{W: scene.PaperW, Title: a.title}
	p := plot{rows: []int64{1}, cols: []int64{1}, x: []int{left}, w: []int{wide}, y: []int{plotTop}, h: []int{120}}
	label := words.ArrayEmptyRows
	switch rows := int(a.whole.Rows); {
	case rows == 0:
		label = words.ArrayNoRows
		fallthrough
	case rows > 12:
		s.Draw(scene.Note, scene.Outline, scene.Rect{X: left, Y: plotTop, W: wide, H: 120, Round: 12})
		s.Add(telling.Text(scene.Note, left+wide/2, plotTop+60, scene.Small, label))
	default:
		for i := range rows {
			s.Draw(scene.Note, scene.Outline, scene.Rect{X: left - bandEdge, Y: plotTop + i*(tall+rowGap), W: wide + 2*bandEdge, H: tall, Round: 12})
		}
		p.h[0] = max(1, rows)*(tall+rowGap) - rowGap
	}
	p.rowsBeside(s, caption{words: arithmetic.Grouped(a.whole.Rows)})
	p.above(s, left, left+wide, scene.Small, caption{words: words.ArrayEach(arithmetic.Grouped(a.whole.Cols))})
	s.H = p.box().Bottom() + scene.Margin
	return s
}
