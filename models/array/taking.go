package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// taking is an array of which some lines are taken away, with one stroke through
// them:
//
//	           7 in each row
//	      ┌  ( o o o o o o o )
//	 10   │  ( o o o o o o o )  ┐ 9
//	rows  │  ( o o o o o o o )  ┘
//	      └  ( ─◌─◌─◌─◌─◌─◌─ )    − 7
//
// Of a number that no array makes, as 23 in rows of 4, the last row is not full.
type taking struct {
	story
	lay    arithmetic.LayLines
	take   arithmetic.TakeLines
	term   arithmetic.CountTerm // the product that is counted
	first  bool                 // it is counted before anything is taken away
	long   notation.Line        // the working in one line
	asked2 notation.Line        // the problem as a difference, of 9 × 7
}

// tellTaking tells a difference with an array in it.
func tellTaking(w arithmetic.Working, lines statement) telling.Telling {
	a := &taking{}
	a.statement = lines
	a.read(w)
	a.plan()
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	said := words.ArrayTaking{Problem: w.Problem, Lay: a.lay, Take: a.take, Term: a.term, First: a.first, Thing: a.thing()}
	counted, taken := false, false
	for _, m := range w.Moves {
		var st telling.Step
		s := &scene.Scene{Title: a.title, W: scene.PaperW}
		switch m := m.(type) {
		case arithmetic.LayLines:
			st.Title, st.Hands, st.Ask, s.Desc = said.Laid()
			st.Symbols = notation.Lines(a.asked2)
			a.draw(s, false, false)
		case arithmetic.CountTerm:
			st.Title, st.Hands, st.Ask, s.Desc = said.Counted(taken)
			counted = true
			fact := telling.Join(number(m.Rows), "×", number(m.Cols), "=", telling.Count(m.Total, a.countedRole()))
			st.Symbols = notation.Lines(fact)
			if taken {
				st.Symbols = notation.Lines(fact, a.answered)
			}
			a.draw(s, counted, taken)
		case arithmetic.TakeLines:
			st.Title, st.Hands, st.Ask, s.Desc = said.Taken(counted)
			taken = true
			st.Symbols = a.takenLines(counted)
			a.draw(s, counted, taken)
		}
		s.H = a.bottom() + factsTall + scene.Margin
		if counted && taken {
			a.leaves(s)
		}
		a.conceal(s, arithmetic.Grouped(a.take.Left))
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	t.Whole = &scene.Scene{Title: a.title, Desc: said.Story()}
	a.draw(t.Whole, true, true)
	telling.Equation(t.Whole, a.low(), a.asked, a.long)
	return t
}

// read reads the moves.
func (a *taking) read(w arithmetic.Working) {
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.LayLines:
			a.lay = m
		case arithmetic.CountTerm:
			a.term = m
			a.first = a.take.Lines == 0 && a.take.Count == 0
		case arithmetic.TakeLines:
			a.take = m
		}
	}
	left := telling.Count(a.take.Left, scene.Result)
	minus := telling.Join(number(a.take.Before), "−", telling.Count(a.take.Taken, scene.Second))
	stem := a.stem
	a.asked2 = stem
	switch {
	case w.Problem.Kind == arithmetic.Product:
		a.asked2 = telling.Join(stem, "=", number(a.lay.Rows), "×", number(a.lay.Cols), "−", number(a.take.Taken))
		a.long = telling.Join(stem, "=", minus, "=", left)
	case a.first:
		a.long = telling.Join(stem, "=", minus, "=", left)
	default:
		a.long = telling.Join(stem, "=", number(a.term.Rows), "×", number(a.term.Cols), "=", left)
	}
	if !telling.EquationFits(a.long) {
		a.long = a.answered
	}
}

// countedRole is the role of the product: what is taken away where it is that.
func (a *taking) countedRole() scene.Role {
	switch {
	case !a.first:
		return scene.Result
	case a.take.Lines == arithmetic.FirstRows:
		return scene.Second
	}
	return scene.First
}

// takenLines writes what is taken away.
func (a *taking) takenLines(counted bool) notation.Block {
	left := telling.Count(a.take.Left, scene.Result)
	if !counted { // 8 × (10 − 2) = 8 × 8
		inner := telling.Join(number(a.take.Kept+a.take.Count), "−", telling.Count(a.take.Count, scene.Second), "=", number(a.take.Kept))
		return notation.Lines(inner)
	}
	minus := telling.Join(number(a.take.Before), "−", telling.Count(a.take.Taken, scene.Second), "=", left)
	if len(a.answered) == len(minus) {
		return notation.Lines(minus)
	}
	return notation.Lines(minus, a.answered)
}

// plan places the array, with the lines that will be taken apart from the rest
// from the first picture on.
func (a *taking) plan() {
	m := a.take
	a.value, a.count, a.sum = 1, a.lay.Total, a.lay.Total
	a.rows, a.cols = []int64{a.lay.Rows}, []int64{a.lay.Cols}
	last := int64(0) // the row that is not full
	if a.lay.Rest > 0 {
		last = 1
	}
	switch m.Lines {
	case arithmetic.FirstRows:
		a.rows = []int64{m.Count, m.Kept + last}
	case arithmetic.LastRows:
		a.rows = []int64{m.Kept, m.Count}
	case arithmetic.LastCols:
		a.cols = []int64{m.Kept, m.Count}
	}
	a.parts = []int64{m.Taken, m.Left}
	free := room{height: 430, size: largestCounter}
	free.right = outside + bandEdge + max(scene.Advance(a.lessName(), scene.Middle, true), scene.Advance(a.factName(), scene.Small, true))
	if m.Lines == arithmetic.LastCols {
		free.right = 0
	}
	free.plain = a.lay.Rows*a.lay.Cols > 240
	a.oneNamed = m.Lines == arithmetic.FirstRows
	a.choose(free)
	if a.look == inSketch || a.look == inScale && a.lay.Rest > 0 {
		a.bars(free)
	}
}

// bars draws every row as a bar of the same length. Where a row is taken in part,
// or is not full, the bar has as many units, or a multiple of them.
func (a *taking) bars(free room) {
	const most, high, low, least = 12, 48, 30, 12
	rows, cols := sumOf(a.rows), int(a.lay.Cols)
	whole := a.lay.Rest == 0 && (a.take.Lines == arithmetic.FirstRows || a.take.Lines == arithmetic.LastRows)
	avail := scene.PaperW - 2*scene.Margin - a.nameRoom() - free.right
	wide := avail / cols * cols
	if whole {
		wide = avail
	}
	thinnest := int(max(a.lay.Rest, 1)) * wide / cols
	switch some := int(a.take.Each) % cols; a.take.Lines {
	case arithmetic.LastCols:
		thinnest = int(a.take.Count) * wide / cols
	case arithmetic.LastOnes:
		thinnest = min(some, cols-some) * wide / cols
	}
	if a.look = inSketch; wide == 0 || rows > most || !whole && thinnest < least {
		a.x = nil
		return
	}
	a.rise = max(low, min(high, free.height/int(rows)))
	a.h, a.w = nil, nil
	for _, r := range a.rows {
		a.h = append(a.h, int(r)*a.rise)
	}
	for _, c := range a.cols {
		a.w = append(a.w, int(c)*wide/cols)
	}
	a.place(scene.Margin + a.nameRoom() + (avail-wide)/2)
}

// fits reports whether the array has room on the paper.
func (a *taking) fits() bool {
	if len(a.x) == 0 {
		return false
	}
	// The names of two parts of the rows beside each other.
	return a.take.Lines != arithmetic.LastRows || a.h[0]+a.h[1] >= 2*lineTall+4
}

// lessName is what stands beside the lines that are taken away.
func (a *taking) lessName() string { return "− " + arithmetic.Grouped(a.take.Taken) }

// factName is the product that is taken away, where it is one.
func (a *taking) factName() string {
	if a.take.Lines != arithmetic.FirstRows {
		return ""
	}
	return factOf(a.term.Rows, a.term.Cols, arithmetic.Grouped(a.term.Total))
}
