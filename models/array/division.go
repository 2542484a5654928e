package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// division is an array with a side missing, and what is still to be placed
// beside it, in tens:
//
//	           ? in each row       56 to share
//	      ┌  ( o o o o o     )      o o o o o
//	 8    │  ( o o o o o     )      o o o o o
//	rows  └  ( o o o o o     )
//	                                o o o o o
//
// Until the side is found the rows are as long as they can be, so that their
// length does not give it away. In the whole story they are as long as they are,
// and what is left over lies under them.
type division struct {
	story
	set   arithmetic.SetOut
	read  arithmetic.ReadSide
	lines []arithmetic.PlacePart // where the side is built from parts
	said  words.ArrayShare
	free  scene.Box // the places for what comes, as large as they can be
	wait  waiting
	cutting
}

// emptyColumns is how long the bands are, in counters, when nothing comes in them.
const emptyColumns = 5

// tellDivision tells an array whose missing side is found.
func tellDivision(w arithmetic.Working, set arithmetic.SetOut, lines statement) telling.Telling {
	d := &division{set: set}
	d.statement = lines
	d.plan(w)
	d.said = words.ArrayShare{SetOut: set, Thing: d.thing()}
	t := telling.Telling{Answer: w.Answer, Pieces: d.pieces()}
	placed, traded, read := 0, 0, false
	for _, m := range w.Moves {
		var st telling.Step
		if read {
			st = d.restStep(m, &traded)
		} else {
			st = d.step(m, &placed)
		}
		_, now := m.(arithmetic.ReadSide)
		read = read || now
		d.conceal(st.Scene, d.secret()...)
		t.Steps = append(t.Steps, st)
	}
	t.Whole = d.wholeDivision()
	return t
}

// plan reads the sides off the moves and places the array.
func (d *division) plan(w arithmetic.Working) {
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
		case arithmetic.CutRest:
			d.cut = &m
		case arithmetic.TradeRest:
			d.trades = append(d.trades, m)
		case arithmetic.OneMoreLine:
			d.more = &m
		}
	}
	if len(line) == 0 {
		line, d.parts = []int64{emptyColumns}, []int64{0}
		if d.set.Grouping {
			line = []int64{1} // the place for the first row, which stays empty
		}
	}
	d.rows, d.cols, d.value, d.split = []int64{d.set.Side}, line, 1, len(d.lines) > 0
	if d.set.Grouping {
		d.rows, d.cols = line, []int64{d.set.Side}
	}
	d.count = d.set.Total
	d.laySteps()
}

// step tells one move; placed counts the parts placed so far.
func (d *division) step(m arithmetic.Move, placed *int) telling.Step {
	var st telling.Step
	s := &scene.Scene{Title: d.title, W: scene.PaperW}
	minus := func(a, b, c int64) notation.Line {
		return telling.Join(number(a), "−", number(b), "=", number(c))
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
		st.Symbols = notation.Lines(telling.Counts(",", scene.Ink, m.Totals...))
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
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Part(m, d.lines[:*placed+1], roleAt(*placed, 0))
		*placed++
		st.Symbols, st.Europe = d.partialQuotients(*placed), d.continental(*placed)
		if d.bothNamed() {
			d.sideAsked(s)
		}
		d.placed(s, *placed, true)
		d.rest(s, m.Left, false)
	case arithmetic.ReadSide:
		st.Title, st.Hands, st.Ask, s.Desc = d.said.Read(m, d.lines)
		st.Symbols = notation.Lines(d.answerLines()...)
		if len(d.lines) > 0 {
			st.Europe = d.continental(len(d.lines))
		}
		d.done(s)
		d.rest(s, m.Left, true)
		d.check(s)
	}
	s.H = d.stepFoot()
	st.Scene = s
	return st
}

// answerLines are the sum of the parts, if any, and the answer, or what is found of
// it before something is done with what is left over.
func (d *division) answerLines() []notation.Line {
	answered := d.answered
	if d.goesOn() {
		answered = telling.Join(d.stem, "=", telling.Count(d.read.Found, scene.Result), notation.W("r"), telling.Count(d.read.Left, scene.First))
	}
	if len(d.lines) < 2 {
		return []notation.Line{answered}
	}
	return []notation.Line{telling.Join(d.partLine(), "=", telling.Count(d.read.Found, scene.Result)), answered}
}

// partLine is 100 + 30 + 8 in the roles of the parts.
func (d *division) partLine() notation.Line { return telling.Chain("+", d.partTerms()...) }

func (d *division) partTerms() []notation.Line {
	var parts []notation.Line
	for k, part := range d.lines {
		parts = append(parts, notation.Line{telling.Count(part.Part, roleAt(k, 0))})
	}
	return parts
}

func number(n int64) notation.Term { return telling.Count(n, scene.Ink) }

// secret are the numbers of the answer.
func (d *division) secret() []string {
	if d.read.Left > 0 {
		return []string{arithmetic.Grouped(d.read.Found), arithmetic.Grouped(d.read.Left)}
	}
	return []string{arithmetic.Grouped(d.read.Found)}
}
