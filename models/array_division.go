package models

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/words"
)

// arrayDivision is an array with a side missing:
//
//	           ? in each row
//	      ┌  ( o o o o o o o )
//	 8    │  ( o o o o o o o )      the lines are placed one after another
//	rows  └  ( o o o o o o o )
//
//	 2 left over   o o              what is still to be placed, or will not be
type arrayDivision struct {
	arrayStory
	set   arithmetic.SetOut
	read  arithmetic.ReadSide
	lines []arithmetic.PlacePart // where the side is built from parts
	said  words.ArrayShare
}

// arrayHeapMost is how many counters are drawn one by one while they wait.
const arrayHeapMost = 120

// arrayEmptyLines is how long the bands are, in counters, when nothing comes in them.
const arrayEmptyLines = 5

// tellArrayDivision tells an array whose missing side is found.
func tellArrayDivision(w arithmetic.Working, set arithmetic.SetOut, lines arrayLines) Telling {
	d := &arrayDivision{set: set}
	d.arrayLines = lines
	d.plan(w)
	d.said = words.ArrayShare{SetOut: set, Thing: d.thing()}
	t := Telling{Answer: w.Answer, Pieces: d.pieces()}
	placed := 0
	for _, m := range w.Moves {
		st := d.step(m, &placed)
		d.conceal(st.Scene, d.secret()...)
		t.Steps = append(t.Steps, st)
	}
	t.Whole = d.wholeDivision()
	return t
}

// plan reads the sides off the moves and places the array.
func (d *arrayDivision) plan(w arithmetic.Working) {
	line := []int64{}
	for _, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.PlaceOnce:
			line, d.parts, d.sum = []int64{1}, []int64{m.Placed}, m.Placed
		case arithmetic.PlaceRest:
			line, d.parts, d.sum = []int64{m.Found}, []int64{m.Placed}, m.Placed
		case arithmetic.PlacePart:
			line, d.parts = append(line, m.Part), append(d.parts, m.Area)
			d.lines = append(d.lines, m)
			f := arithmetic.FindPart{Col: len(d.found), Rows: m.Side, Cols: m.Part, Product: m.Area}
			if d.set.Grouping {
				f = arithmetic.FindPart{Row: len(d.found), Rows: m.Part, Cols: m.Side, Product: m.Area}
			}
			d.found = append(d.found, f)
		case arithmetic.ReadSide:
			d.read = m
		}
	}
	if len(line) == 0 {
		line, d.parts = []int64{arrayEmptyLines}, []int64{0}
	}
	d.rows, d.cols, d.value, d.split = []int64{d.set.Side}, line, 1, len(d.lines) > 0
	if d.set.Grouping {
		d.rows, d.cols = line, []int64{d.set.Side}
	}
	d.count = d.set.Total
	free := plotRoom{height: 400, size: 32, plain: d.set.Total > arrayHeapMost}
	if len(d.lines) > 0 {
		free.right = d.partNameRoom()
	} else if d.set.Grouping {
		free.right = 70 // the running totals
	}
	d.choose(free)
}

// step tells one move; placed counts the parts placed so far.
func (d *arrayDivision) step(m arithmetic.Move, placed *int) Step {
	var st Step
	s := &scene.Scene{Title: d.title, W: scene.PaperW}
	minus := func(a, b, c int64) notation.Line {
		return join(arrayNumber(a), "−", arrayNumber(b), "=", arrayNumber(c))
	}
	d.known(s)
	switch m := m.(type) {
	case arithmetic.SetOut:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Ready()
		st.Symbols = notation.Lines(d.asked)
		d.frame(s)
		d.sideAsked(s)
		d.rest(s, m.Total, false)
	case arithmetic.PlaceOnce:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Once(m)
		st.Symbols = notation.Lines(minus(m.Placed+m.Left, m.Placed, m.Left))
		d.frame(s)
		d.sideAsked(s)
		d.dealt(s, 0, 1, m.Placed)
		d.rest(s, m.Left, false)
	case arithmetic.PlaceRest:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Rest(m)
		st.Symbols = notation.Lines(arrayListed(m.Totals))
		if m.Left > 0 {
			st.Symbols.Lines = append(st.Symbols.Lines, minus(d.set.Total, m.Placed, m.Left))
		}
		d.frame(s)
		d.sideAsked(s)
		d.dealt(s, 1, int(m.Found), m.Placed)
		if d.set.Grouping {
			d.totals(s, m.Totals)
		}
		d.rest(s, m.Left, false)
	case arithmetic.PlacePart:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Part(m, d.lines[:*placed+1], arrayRole(*placed, 0))
		role := arrayRole(*placed, 0)
		area := notation.N(arithmetic.Grouped(m.Area), role)
		st.Symbols = notation.Lines(
			join(arrayNumber(d.found[*placed].Rows), "×", arrayNumber(d.found[*placed].Cols), "=", area),
			join(arrayNumber(m.Before), "−", area, "=", arrayNumber(m.Left)))
		*placed++
		d.placed(s, *placed, true)
		d.rest(s, m.Left, false)
	case arithmetic.ReadSide:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Read(m, d.lines)
		st.Symbols = notation.Lines(d.answerLines()...)
		d.done(s)
		d.rest(s, m.Left, true)
	}
	s.H = d.stepFoot()
	st.Scene = s
	return st
}

// answerLines are the sum of the parts, if any, and the answer.
func (d *arrayDivision) answerLines() []notation.Line {
	if len(d.lines) < 2 {
		return []notation.Line{d.answered}
	}
	return []notation.Line{join(d.partLine(), "=", notation.N(arithmetic.Grouped(d.read.Found), scene.Result)), d.answered}
}

// partLine is 100 + 30 + 8 in the roles of the parts.
func (d *arrayDivision) partLine() notation.Line {
	var line notation.Line
	for k, part := range d.lines {
		if k > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(part.Part), arrayRole(k, 0)))
	}
	return line
}

func arrayNumber(n int64) notation.Term { return notation.N(arithmetic.Grouped(n), scene.Ink) }

// arrayListed is 8, 16, 24.
func arrayListed(list []int64) notation.Line {
	var line notation.Line
	for i, n := range list {
		if i > 0 {
			line = append(line, notation.S(","))
		}
		line = append(line, arrayNumber(n))
	}
	return line
}

// known names the side that the problem gives.
func (d *arrayDivision) known(s *scene.Scene) {
	b := d.box()
	if d.set.Grouping {
		d.above(s, b.X, b.Right(), scene.Small, arrayName{words: words.ArrayEach(arithmetic.Grouped(d.set.Side))})
		return
	}
	d.rowsBeside(s, arrayName{words: arithmetic.Grouped(d.set.Side)})
}

// sideAsked puts the question mark at the side that is not known.
func (d *arrayDivision) sideAsked(s *scene.Scene) {
	b := d.box()
	if d.set.Grouping {
		d.rowsBeside(s, arrayName{words: "?", role: scene.Hidden})
		return
	}
	d.above(s, b.X, b.Right(), scene.Small, arrayName{words: words.ArrayEach("?"), role: scene.Hidden})
}

// sideFound names the side that was found.
func (d *arrayDivision) sideFound(s *scene.Scene) {
	b, found := d.box(), arithmetic.Grouped(d.read.Found)
	if d.set.Grouping {
		d.rowsBeside(s, arrayShown(found, scene.Result), arrayBlank("?"))
		return
	}
	d.above(s, b.X, b.Right(), scene.Small, arrayShown(words.ArrayEach(found), scene.Result), arrayBlank(words.ArrayEach("?")))
}

// frame draws the places before anything is in them: a band for each row when
// the rows are known, the band of one row when they are not, or a dashed outline.
func (d *arrayDivision) frame(s *scene.Scene) {
	if d.look == inCounters {
		rows := int(d.set.Side)
		if d.set.Grouping {
			rows = 1
		}
		d.bands(s, rows)
		return
	}
	b := d.box()
	s.Draw(scene.Hidden, scene.Dashed, scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H})
	d.drawNote(s)
}

// dealt draws the lines placed one by one: those before from at home, the rest
// as just placed. Where single lines cannot be seen they are one area, worth
// what is placed.
func (d *arrayDivision) dealt(s *scene.Scene, from, to int, placed int64) {
	if d.set.Grouping {
		d.bands(s, to)
	}
	b := d.box()
	lines := int(max(plotSum(d.rows), 1))
	if !d.set.Grouping {
		lines = int(plotSum(d.cols))
	}
	if d.look != inCounters {
		it := scene.Item{Role: scene.Moved, Of: d.of, Worth: arrayWorth(placed)}
		shape := scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: 1, Rows: 1}
		if d.set.Grouping {
			shape.H, shape.Rows = b.H/lines*to, to
		} else {
			shape.W, shape.Cols = b.W/lines*to, to
		}
		it.Shape = shape
		s.Add(it)
		return
	}
	for k := range to {
		it := scene.Item{Role: scene.First, Of: d.of}
		if k >= from {
			it.Role = scene.Moved
		}
		for n := range int(d.set.Side) {
			r, c := n, k
			if d.set.Grouping {
				r, c = k, n
			}
			d.piece(s, b.X+c*d.plot.step+d.plot.step/2, b.Y+r*d.rise+d.rise/2, arrayPiece(it, 1))
		}
	}
}

// placed draws the first parts, the last of them as just placed.
func (d *arrayDivision) placed(s *scene.Scene, count int, moved bool) {
	d.frame(s)
	if d.set.Grouping {
		rows := int64(0)
		for _, part := range d.lines[:count] {
			rows += part.Part
		}
		d.bands(s, int(min(rows, 12)))
	}
	for k, f := range d.found[:count] {
		it := scene.Item{Role: arrayRole(f.Row, f.Col), Of: d.of}
		if moved && k == count-1 {
			it.Role = scene.Moved
		}
		d.fill(s, f.Row, f.Col, it)
		name := arrayName{words: arithmetic.Grouped(d.lines[k].Part), role: arrayRole(f.Row, f.Col)}
		if d.set.Grouping {
			d.beside(s, d.y[k], d.y[k]+d.h[k], "", name)
		} else {
			d.above(s, d.x[k], d.x[k]+d.w[k], scene.Middle, name)
		}
	}
	d.partNames(s, d.found[:count], scene.Always)
}

// done draws everything placed and the side that was found.
func (d *arrayDivision) done(s *scene.Scene) {
	switch {
	case len(d.lines) > 0:
		d.placed(s, len(d.lines), false)
		d.cuts(s, scene.Ink)
	case d.read.Found == 0:
		d.frame(s)
		d.sideFound(s)
	case d.look == inCounters:
		d.frame(s)
		d.sideFound(s)
		d.dealt(s, int(d.read.Found), int(d.read.Found), d.sum)
	default:
		d.sideFound(s)
		d.undivided(s, scene.Item{Role: scene.First, Of: d.of})
		d.drawNote(s)
	}
}

// secret are the numbers of the answer.
func (d *arrayDivision) secret() []string {
	if d.read.Left > 0 {
		return []string{arithmetic.Grouped(d.read.Found), arithmetic.Grouped(d.read.Left)}
	}
	return []string{arithmetic.Grouped(d.read.Found)}
}
