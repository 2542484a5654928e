package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// adding is a sum of two terms beside each other, in the order of the problem: an
// array, and another one or a number in lines of five:
//
//	                   3
//	               ┌───────┐
//	o o   +   1    ( o o o )
//
//	 2              1 × 3 = 3
//
// Where there are too many to lay out, the number is a bowl and the array an area.
type adding struct {
	statement
	terms   [2]arithmetic.Term
	join    arithmetic.JoinTerms
	plots   [2]plot      // of the arrays
	at      [2]scene.Box // of the terms, with the names of their rows
	size    int          // of the facts under the arrays
	bowl    bool
	lowest  int // where the terms end
	noteTop int // of the note on the scale; 0 without
}

// tellAdding tells a sum with a product in it.
func tellAdding(w arithmetic.Working, lines statement) telling.Telling {
	a := &adding{statement: lines}
	a.plan(w)
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	said := words.ArrayAdding{Problem: w.Problem, Terms: a.terms, Join: a.join, Sketch: a.bowl}
	long := telling.Join(a.stem, "=", a.sumLine(), "=", telling.Count(a.join.Sum, scene.Result))
	var counted [2]bool
	for _, m := range w.Moves {
		var st telling.Step
		s := &scene.Scene{Title: a.title, W: scene.PaperW, H: a.lowest + 2*factsTall + scene.Margin}
		switch m := m.(type) {
		case arithmetic.LayTerms:
			st.Title, st.Hands, st.Ask, s.Desc = said.Laid()
			st.Symbols = notation.Lines(a.stem)
		case arithmetic.CountTerm:
			counted[m.Nth] = true
			st.Title, st.Hands, st.Ask, s.Desc = said.Counted(m)
			role := claimRole(m.Nth)
			st.Symbols = notation.Lines(telling.Join(number(m.Rows), "×", number(m.Cols), "=", telling.Count(m.Total, role)))
		case arithmetic.JoinTerms:
			st.Title, st.Hands, st.Ask, s.Desc = said.Joined()
			st.Symbols = notation.Lines(telling.Join(a.sumLine(), "=", telling.Count(m.Sum, scene.Result)), a.answered)
			a.total(s)
		}
		a.draw(s, counted, scene.Always)
		a.conceal(s, arithmetic.Grouped(a.join.Sum))
		st.Scene = s
		t.Steps = append(t.Steps, st)
	}
	t.Whole = &scene.Scene{Title: a.title, Desc: said.Story()}
	a.draw(t.Whole, counted, scene.ShownOnly)
	if !telling.EquationFits(long) {
		long = a.answered
	}
	telling.Equation(t.Whole, a.lowest+factsTall, a.asked, long)
	return t
}

// sumLine is the sum of what the terms come to, in their roles.
func (a *adding) sumLine() notation.Line {
	return telling.Join(telling.Count(a.join.Terms[0], scene.First), "+", telling.Count(a.join.Terms[1], scene.Second))
}

func (a *adding) pieces() []telling.Piece {
	if a.bowl {
		return []telling.Piece{{Name: "sheet of squared paper", Count: 1}}
	}
	return []telling.Piece{{Name: words.Things(words.Counters, a.join.Sum), Count: a.join.Sum}}
}

const (
	termApart = 88 // from one term to the other, for the sign between them
	lineOf    = 5  // a number lies in lines of five
)

// plan reads the moves and places both terms with the largest counters that fit.
func (a *adding) plan(w arithmetic.Working) {
	const largest, least, height = 56, 18, 420
	a.terms = w.Moves[0].(arithmetic.LayTerms).Terms
	a.join = w.Moves[len(w.Moves)-1].(arithmetic.JoinTerms)
	a.size = scene.Middle
	for size := largest; size >= least; size -= 2 {
		if a.sized(size) && a.tall() <= height && a.wide() <= scene.PaperW-2*scene.Margin {
			a.place()
			return
		}
	}
	if a.terms[0].IsArray != a.terms[1].IsArray {
		a.placeBowl()
	}
}

// fits reports whether there was room.
func (a *adding) fits() bool { return a.lowest > 0 }

// sized gives both terms counters of a size; it fails where there are more than
// can be counted.
func (a *adding) sized(size int) bool {
	const mostRows, mostCols, mostLoose = 12, 20, 40
	for i, t := range a.terms {
		if t.Rows > mostRows || t.Cols > mostCols || !t.IsArray && t.Total > mostLoose {
			return false
		}
		p := plot{look: inCounters, value: 1, size: size, step: size + max(8, size/6), sum: t.Total}
		p.rise = p.step + rowGap
		p.rows, p.cols, p.parts = []int64{t.Rows}, []int64{t.Cols}, []int64{t.Total}
		if !t.IsArray {
			p.rise = p.step
			p.rows, p.cols = []int64{(t.Total + lineOf - 1) / lineOf}, []int64{min(t.Total, lineOf)}
		}
		p.measure(p.step, p.rise)
		a.plots[i] = p
	}
	return true
}

// termWide is the room for a term with its names: the number of rows, and the fact
// under it.
func (a *adding) termWide(i int) int {
	wide := a.plots[i].width()
	if a.terms[i].IsArray {
		wide += claimNames + 2*bandEdge
	}
	return max(wide, scene.Advance(a.fact(i, arithmetic.Grouped(a.terms[i].Total)), a.size, true))
}

func (a *adding) wide() int { return a.termWide(0) + termApart + a.termWide(1) }

func (a *adding) tall() int { return max(a.plots[0].h[0], a.plots[1].h[0]) }

// fact is what a term comes to.
func (a *adding) fact(i int, total string) string {
	if t := a.terms[i]; t.IsArray {
		return factOf(t.Rows, t.Cols, total)
	}
	return arithmetic.Grouped(a.terms[i].Total)
}

// place puts the terms beside each other, their middles on one height.
func (a *adding) place() {
	left := (scene.PaperW - a.wide()) / 2
	tall := a.tall()
	for i := range a.terms {
		p := &a.plots[i]
		own := p.width()
		if a.terms[i].IsArray {
			own += claimNames + 2*bandEdge
		}
		x := left + (a.termWide(i)-own)/2
		if a.terms[i].IsArray {
			x += claimNames + bandEdge
		}
		p.down = (tall - p.h[0]) / 2
		p.place(x)
		a.at[i] = scene.Box{X: left, Y: plotTop, W: a.termWide(i), H: tall}
		left += a.termWide(i) + termApart
	}
	a.lowest = plotTop + tall + 8
}

// draw draws both terms and what is found of them; when says in which version the
// facts are given.
func (a *adding) draw(s *scene.Scene, counted [2]bool, when scene.When) {
	for i, t := range a.terms {
		it := scene.Item{Role: claimRole(i), Of: scene.OfAnswer}
		p := &a.plots[i]
		switch {
		case t.IsArray:
			p.bands(s, int(t.Rows))
			p.fill(s, 0, 0, it)
			b := p.box()
			p.beside(s, b.Y, b.Bottom(), "", caption{words: arithmetic.Grouped(t.Rows)})
			p.above(s, b.X, b.Right(), scene.Middle, caption{words: arithmetic.Grouped(t.Cols)})
		case a.bowl:
			a.drawBowl(s, i, it)
		default:
			for k := range int(t.Total) {
				p.piece(s, p.x[0]+k%lineOf*p.step+p.step/2, p.y[0]+k/lineOf*p.rise+p.rise/2, worth(it, 1))
			}
		}
		x, y := a.at[i].X+a.at[i].W/2, a.lowest+factsTall/2
		if t.IsArray {
			b := p.box()
			x = b.X + b.W/2
		}
		add := func(total string, when scene.When) {
			text := scene.Words(x, y, a.size, a.fact(i, total))
			text.Bold = true
			s.Add(scene.Item{Shape: telling.OnPaper(text), Role: claimRole(i), When: when})
		}
		switch {
		case !t.IsArray && !a.bowl:
			add("", scene.Always)
		case t.IsArray && counted[i]:
			add(arithmetic.Grouped(t.Total), when)
			if when == scene.ShownOnly {
				add("?", scene.HiddenOnly)
			}
		}
	}
	first, second := a.at[0], a.at[1]
	plus := scene.Words((first.Right()+second.X)/2, first.Y+first.H/2, scene.Large, "+")
	plus.Bold = true
	s.Add(scene.Item{Shape: plus})
	if a.noteTop > 0 {
		s.Add(telling.Text(scene.Note, scene.PaperW/2, a.noteTop, scene.Small, (&story{plot: a.plots[a.arrayNth()]}).note()))
	}
}

func (a *adding) arrayNth() int {
	if a.terms[0].IsArray {
		return 0
	}
	return 1
}

// total writes the sum under the terms.
func (a *adding) total(s *scene.Scene) {
	y := a.lowest + factsTall + factsTall/2
	write := func(sum string, when scene.When) {
		line := telling.Join(a.sumLine(), "=", notation.N(sum, scene.Result))
		s.Add(scene.Item{Shape: scene.Text{X: scene.PaperW / 2, Y: y, Size: scene.Middle, Bold: true, Runs: line.Runs()}, When: when})
	}
	write(arithmetic.Grouped(a.join.Sum), scene.ShownOnly)
	write("?", scene.HiddenOnly)
}
