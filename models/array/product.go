package array

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// story is what all pictures of one lesson with an array share.
type story struct {
	plot
	statement
	split bool
	given bool // the split is given by the problem
	whole arithmetic.LayRows
	air   int   // kept free under the array
	count int64 // how many counters or crates there are
	found []arithmetic.FindPart
}

// statement are what is written of a problem, and which of its numbers the
// things in the array are.
type statement struct {
	title           scene.Telling
	asked, answered notation.Line
	stem            notation.Line // the left side, where the working may be written after it
	of              scene.Of
}

// roleAt alternates, so that parts that touch differ.
func roleAt(i, j int) scene.Role {
	if (i+j)%2 == 0 {
		return scene.First
	}
	return scene.Second
}

// factsTall is the room under an array for what its parts come to, and for
// the total.
const factsTall = 60

// tellProduct tells an array that is laid out, split and counted.
func tellProduct(w arithmetic.Working, lines statement) telling.Telling {
	a := &story{statement: lines}
	a.plan(w)
	if a.whole.Rows == 0 || a.whole.Cols == 0 {
		return a.tellEmpty(w)
	}
	t := telling.Telling{Answer: w.Answer, Pieces: a.pieces()}
	for _, m := range w.Moves {
		st := a.step(m)
		if a.given {
			a.conceal(st.Scene, arithmetic.Grouped(a.sum)) // as the 15 of 1 × (8 + 7)
		}
		t.Steps = append(t.Steps, st)
	}
	t.Whole = a.wholeStory(w.Moves)
	return t
}

// plan reads off the moves how the array will be split, and places it.
func (a *story) plan(w arithmetic.Working) {
	free := room{height: 470, size: largestCounter}
	a.value = 1
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.LayRows:
			a.whole = m
			if !a.split {
				a.rows, a.cols = []int64{m.Rows}, []int64{m.Cols}
			}
		case arithmetic.SplitSides:
			a.rows, a.cols, a.split, a.given = m.Rows, m.Cols, true, i == 0
			free.bare = a.given
			free.plain = len(a.rows) > 1 && len(a.cols) > 1
		case arithmetic.CountTens:
			a.parts, a.sum = []int64{m.Product}, m.Product
			if m.RowUnit == 1 && m.Rows <= 9 && m.Cols <= 9 && m.ColUnit <= 100 {
				a.value, a.cols, a.count = m.ColUnit, []int64{m.Cols}, m.Count
			}
		case arithmetic.CountRows:
			a.parts, a.sum, a.count = []int64{m.Product}, m.Product, m.Product
			free.right = 84 // the running totals
		case arithmetic.JoinParts:
			a.parts, a.sum, a.count = m.Parts, m.Sum, m.Sum
			free.right = a.partNameRoom()
		}
	}
	if a.whole.Rows > 0 && a.whole.Cols > 0 {
		a.choose(free)
	}
}

// partNameRoom is the room to the right of an array for what its parts come to.
func (a *story) partNameRoom() int {
	switch {
	case len(a.rows) > 1 && len(a.cols) > 1:
		const most = 140 // wider ones stand in parts that are wide enough
		wide := 0
		for i := range a.rows {
			wide = max(wide, scene.Advance(arithmetic.Grouped(a.parts[(i+1)*len(a.cols)-1]), scene.Middle, true))
		}
		return min(leader+wide+2*plateEdge, most)
	case len(a.rows) > 1:
		wide := 0
		for _, fact := range a.facts() {
			wide = max(wide, scene.Advance(fact, scene.Small, true))
		}
		return outside + bandEdge + wide
	}
	return 0
}

func factOf(rows, cols int64, product string) string {
	return arithmetic.Grouped(rows) + " × " + arithmetic.Grouped(cols) + " = " + product
}

func (a *story) pieces() []telling.Piece {
	var pieces []telling.Piece
	switch a.look {
	case inCounters, inCrates:
		if a.count > 0 {
			pieces = append(pieces, telling.Piece{Name: words.Things(a.thing(), a.count), Count: a.count})
		}
		if cuts := int64(len(a.rows) + len(a.cols) - 2); cuts > 0 {
			pieces = append(pieces, telling.Piece{Name: words.Things("straw", cuts), Count: cuts})
		}
	default:
		pieces = append(pieces, telling.Piece{Name: "sheet of squared paper", Count: 1})
	}
	return pieces
}

// thing is what the array is laid out with; empty when it is only sketched.
func (a *story) thing() string {
	switch a.look {
	case inCounters:
		return words.Counters
	case inCrates:
		return words.ArrayUnit(a.value)
	case inSquares:
		return words.Squares
	}
	return ""
}

func (a *story) step(m arithmetic.Move) telling.Step {
	var st telling.Step
	s := &scene.Scene{Title: a.title}
	times := telling.Join(telling.Count(a.whole.Rows, scene.Ink), "×", telling.Count(a.whole.Cols, scene.Ink))
	switch m := m.(type) {
	case arithmetic.LayRows:
		if a.given {
			st.Title, st.Hands, st.Ask, s.Desc = words.ArrayOne(m, a.rows, a.cols, a.sum)
			st.Symbols = notation.Lines(telling.Join(times, "=", telling.Count(a.sum, scene.Result)))
			a.drawOne(s)
			break
		}
		st.Title, st.Hands, st.Ask, s.Desc = words.ArrayLay(m.Rows, m.Cols, sumOf(a.cols), a.thing())
		st.Symbols = notation.Lines(times)
		if m.Rows >= 2 && m.Rows <= 5 {
			st.Symbols = notation.Lines(telling.Join(times, "=", telling.Counts("+", scene.Ink, slices.Repeat([]int64{m.Cols}, int(m.Rows))...)))
		}
		a.drawLaid(s)
	case arithmetic.CountRows:
		st.Title, st.Hands, st.Ask, s.Desc = words.ArrayCount(m)
		st.Symbols = notation.Lines(telling.Join(times, "=", telling.Count(m.Product, scene.Result)))
		a.drawLaid(s)
		a.totals(s, m.Totals)
		a.inAll(s, m.Product)
	case arithmetic.CountTens:
		st.Title, st.Hands, st.Ask, s.Desc = words.ArrayTens(m)
		st.Symbols = notation.Lines(
			telling.Join(telling.Count(m.Rows, scene.Ink), "×", telling.Count(m.Cols, scene.Ink), "=", telling.Count(m.Count, scene.Ink)),
			telling.Join(times, "=", telling.Count(m.Product, scene.Result)))
		a.drawLaid(s)
		a.inAll(s, m.Product)
	case arithmetic.SplitSides:
		st.Title, st.Hands, st.Ask = words.ArraySplit(m.Rows, m.Cols, a.look <= inCrates, a.given)
		s.Desc = scene.Same(words.ArrayParts(m.Rows, m.Cols, nil, a.given))
		st.Symbols = notation.Lines(telling.Join(a.left(times), "=", splitLine(m)))
		a.drawParts(s, scene.Moved)
	case arithmetic.FindPart:
		a.found = append(a.found, m)
		role := roleAt(m.Row, m.Col)
		st.Title, st.Hands, st.Ask = words.ArrayPart(m, role)
		s.Desc = scene.Same(words.ArrayParts(a.rows, a.cols, a.found, a.given))
		st.Symbols = notation.Lines(telling.Join(telling.Count(m.Rows, role), "×", telling.Count(m.Cols, role), "=", telling.Count(m.Product, role)))
		a.drawParts(s, scene.Ink)
		a.partNames(s, a.found, scene.Always)
	case arithmetic.JoinParts:
		st.Title, st.Hands, st.Ask = words.ArrayJoin(m, a.roles())
		s.Desc = words.ArrayJoined(a.rows, a.cols, a.found, m, a.given)
		st.Symbols = notation.Lines(telling.Join(a.sumLine(), "=", telling.Count(m.Sum, scene.Result)), a.answered)
		if !a.given && max(a.whole.Rows, a.whole.Cols) > 10 {
			st.Symbols = a.partialProducts()
		}
		a.drawParts(s, scene.Ink)
		a.partNames(s, a.found, scene.Always)
		a.inAll(s, m.Sum)
	}
	s.W, s.H = scene.PaperW, a.foot(true)+scene.Margin
	st.Scene = s
	return st
}

// left is the left side of the equation: the problem's own where the split is
// given.
func (a *story) left(times notation.Line) notation.Line {
	if a.given {
		return a.asked[:len(a.asked)-2]
	}
	return times
}

// wholeStory is the one picture: the array with its parts, and the equation.
func (a *story) wholeStory(moves []arithmetic.Move) *scene.Scene {
	s := &scene.Scene{Title: a.title}
	line := a.answered
	for _, m := range moves {
		switch m := m.(type) {
		case arithmetic.CountRows:
			_, _, _, s.Desc = words.ArrayCount(m)
			a.drawLaid(s)
			a.totals(s, m.Totals)
		case arithmetic.CountTens:
			_, _, _, s.Desc = words.ArrayTens(m)
			a.drawLaid(s)
		case arithmetic.JoinParts:
			s.Desc = words.ArrayJoined(a.rows, a.cols, a.found, m, a.given)
			a.drawParts(s, scene.Ink)
			a.partNames(s, a.found, scene.ShownOnly)
			line = a.longLine()
		}
	}
	bottom := a.foot(false) - 8
	if a.split && len(line) == len(a.answered) {
		bottom = sumBelow(s, bottom, a.terms())
	}
	telling.Equation(s, bottom, a.asked, line)
	return s
}
