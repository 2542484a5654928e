package square

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellRow tells the multiples of a number as a row of the square.
func tellRow(w arithmetic.Working) telling.Telling {
	b := &board{}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.Square{Problem: w.Problem, Answer: w.Answer}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.StartRow:
			b.head(0, arithmetic.FindLine{N: m.By})
			t.Step(said.FindLine(arithmetic.FindLine{N: m.By}), telling.Join(telling.Count(m.By, scene.First), "×", telling.Unknown()))
		case arithmetic.HopOn:
			for nth := m.First; nth <= m.Last; nth++ {
				lit, home := tile(m.By, nth, scene.Moved, scene.OfSecond, m.By), tile(m.By, nth, scene.Result, scene.OfSecond, m.By)
				if m.Last == m.Count {
					lit.When, home.When = scene.ShownOnly, scene.ShownOnly
				}
				b.under.Until(i, i+1, lit)
				b.under.Only(i+1, home)
				b.under.Finally(when(scene.ShownOnly, home)...)
			}
			t.Step(said.HopOn(m), timesLine(m))
		}
	}
	answered := shortList(w.Answer.List)
	asked := telling.Join(telling.Unknown(), ",", telling.Unknown(), ",", telling.Unknown(), ",", notation.W("…"))
	return closed(t, b.story(), said.ListTitle(), said.RowWhole(w), asked, answered)
}

// closed draws the pictures, and an equation at the foot of the whole story.
func closed(t telling.Draft, s *telling.Story, title, desc scene.Telling, asked, answered notation.Line) telling.Telling {
	told := t.Pictures(s, bottom, title, desc)
	telling.Equation(told.Whole, bottom, asked, answered)
	return told
}

// timesLine is one multiple as a product, 7 × 3 = 21 in the row of 7, or the numbers of many.
func timesLine(m arithmetic.HopOn) notation.Line {
	if m.Last > m.First {
		var list []int64
		for nth := m.First; nth <= m.Last; nth++ {
			list = append(list, m.Land(nth))
		}
		return shortList(list)
	}
	return telling.Join(telling.Count(m.By, scene.First), "×", telling.Count(m.First, scene.Ink), "=", telling.Count(m.Land(m.First), scene.Result))
}

// shortList is a row of numbers: 4, 8, 12, or 4, 8, 12, …, 48.
func shortList(list []int64) notation.Line {
	const most = 6
	if all := telling.Counts(",", scene.Result, list...); len(list) <= most && telling.EquationFits(all) {
		return all
	}
	return telling.Join(telling.Counts(",", scene.Result, list[:3]...), ",", notation.W("…"), ",", telling.Count(list[len(list)-1], scene.Result))
}

// tellCommon tells which numbers stand in two rows.
func tellCommon(w arithmetic.Working) telling.Telling {
	b := &board{}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.Square{Problem: w.Problem, Answer: w.Answer}
	met := w.Moves[len(w.Moves)-1].(arithmetic.Meet)
	for i, row := range met.Rows {
		b.head(i, arithmetic.FindLine{N: row.By, Nth: i})
		var list []int64
		for nth := int64(1); nth <= row.Count; nth++ {
			list = append(list, row.Land(nth))
			b.under.Add(i, tile(row.By, nth, telling.RoleOf(i), [...]scene.Of{scene.OfLeft, scene.OfRight}[i], row.By))
		}
		t.Step(said.Light(row), telling.Counts(",", telling.RoleOf(i), list...))
	}
	for _, n := range met.At {
		for _, row := range met.Rows {
			for nth := int64(1); nth <= row.Count; nth++ {
				if row.Land(nth) == n {
					b.over.Add(2, when(scene.ShownOnly, frame(row.By, nth, scene.Result))...)
				}
			}
		}
	}
	answered := telling.Join(telling.Counts(",", scene.Result, w.Answer.List...), ",", notation.W("…"))
	asked := telling.Join(telling.Unknown(), ",", telling.Unknown(), ",", telling.Unknown(), ",", notation.W("…"))
	t.Step(said.Both(met), answered)
	return closed(t, b.story(), said.ListTitle(), said.CommonWhole(met), asked, answered)
}

// tellFactors tells where a number stands, and so which two numbers make it.
func tellFactors(w arithmetic.Working) telling.Telling {
	b := &board{}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.Square{Problem: w.Problem, Answer: w.Answer}
	nth := 0
	light := func(step int, m arithmetic.MeetAt) {
		of := scene.OfFirst
		if nth > 0 {
			of = scene.OfNth(nth + 1)
		}
		nth++
		b.under.Add(step, when(scene.ShownOnly,
			tile(m.Row, m.Col, scene.First, of, m.Product), tile(m.Row, 0, scene.Result, "", 0), tile(0, m.Col, scene.Result, "", 0))...)
	}
	seen := map[[2]int64]bool{}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.MeetAt:
			light(i, m)
			seen[[2]int64{m.Row, m.Col}] = true
			t.Step(said.Place(m), productLine(m.Row, m.Col, m.Product))
		case arithmetic.FindAll:
			var lines []notation.Line
			for _, pair := range m.On {
				if !seen[pair] {
					light(i, arithmetic.MeetAt{Row: pair[0], Col: pair[1], Product: m.Number})
				}
			}
			for _, pair := range w.Answer.Pairs {
				if pair[0] <= pair[1] {
					lines = append(lines, productLine(pair[0], pair[1], m.Number))
				}
			}
			t.Step(said.FindAll(m), lines...)
		}
	}
	find := w.Moves[len(w.Moves)-1].(arithmetic.FindAll)
	return b.withNote(t, said, find, len(w.Moves)-1)
}

// withNote writes under the square, in the last step, which pairs are too large for
// it.
func (b *board) withNote(t telling.Draft, said words.Square, find arithmetic.FindAll, last int) telling.Telling {
	const noteTall = 38
	low := bottom
	if pairs := words.SquareOff(find); pairs != "" {
		lines := []string{words.SquareBeyond + " " + pairs}
		if scene.Advance(lines[0], scene.Small, false) > scene.PaperW-2*scene.Margin {
			lines = []string{words.SquareBeyond, pairs}
		}
		for _, line := range lines {
			off := telling.Text(scene.Note, scene.PaperW/2, low+noteTall/2+10, scene.Small, line)
			off.When = scene.ShownOnly
			b.over.Add(last, off)
			low += noteTall
		}
	}
	told := t.Pictures(b.story(), low, said.FactorsTitle(), said.FactorsWhole(find))
	var factors []int64
	for _, pair := range t.Answer.Pairs {
		factors = append(factors, pair[0])
	}
	asked := telling.Join(telling.Count(find.Number, scene.First), "=", telling.Unknown(), "×", telling.Unknown())
	telling.Equation(told.Whole, low, asked, telling.Counts(",", scene.Result, factors...))
	return told
}

// productLine is a fact: 3 × 8 = 24.
func productLine(row, col, product int64) notation.Line {
	return telling.Join(telling.Count(row, scene.Result), "×", telling.Count(col, scene.Result), "=", telling.Count(product, scene.First))
}

// tellMirror tells that one fact and the same fact turned stand alike on both sides
// of the line from corner to corner.
func tellMirror(w arithmetic.Working) telling.Telling {
	b := &board{}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	see := w.Moves[2].(arithmetic.SeeMirror)
	said := words.SquareMirror{Problem: w.Problem, See: see}
	line := func(m arithmetic.MeetAt, role scene.Role) notation.Line {
		return telling.Join(telling.Count(m.Row, role), "×", telling.Count(m.Col, role), "=", telling.Count(m.Product, scene.Result))
	}
	for i, m := range []arithmetic.MeetAt{see.First, see.Second} {
		role, of := telling.RoleOf(i), [...]scene.Of{scene.OfLeft, scene.OfRight}[i]
		b.under.Add(i, tile(m.Row, m.Col, role, of, m.Product), tile(m.Row, 0, role, "", 0), tile(0, m.Col, role, "", 0))
		b.over.Add(i, patch(between(1, 1, m.Row, m.Col), frameIn, role, scene.Bold))
		t.Step(said.Place(m, i), line(m, role))
	}
	sides := telling.Join(telling.Count(see.First.Row, scene.First), "×", telling.Count(see.First.Col, scene.First))
	turned := telling.Join(telling.Count(see.Second.Row, scene.Second), "×", telling.Count(see.Second.Col, scene.Second))
	b.over.Add(2, when(scene.ShownOnly, frame(see.First.Row, see.First.Col, scene.Result), frame(see.Second.Row, see.Second.Col, scene.Result))...)
	answered := telling.Join(sides, "=", turned)
	asked := telling.Join(sides, telling.Unknown(), turned)
	t.Step(said.Mirror(), answered)
	told := closed(t, b.story(), said.Title(), said.Whole(), asked, answered)
	told.Why = said.Why()
	return told
}
