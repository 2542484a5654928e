package square

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellProduct tells where a row and a column meet, and the array that the number
// there counts: the rectangle from the corner of the square.
func tellProduct(w arithmetic.Working) telling.Telling {
	see := w.Moves[3].(arithmetic.SeeArray)
	b := &board{asked: map[[2]int64]bool{{see.Rows, see.Cols}: true}}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.Square{Problem: w.Problem, Answer: w.Answer}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.FindLine:
			b.line(i, m)
			t.Step(said.FindLine(m), notation.Line{telling.Count(m.N, telling.RoleOf(m.Nth))})
		case arithmetic.MeetAt:
			b.over.Add(i, when(scene.ShownOnly, frame(m.Row, m.Col, scene.Result))...)
			t.Step(said.MeetAt(m), t.Answered())
		case arithmetic.SeeArray:
			area := patch(between(1, 1, m.Rows, m.Cols), frameIn, scene.Result, scene.Plain)
			area.Of, area.Worth, area.When = scene.OfAnswer, fraction.Whole(m.Cells), scene.ShownOnly
			b.under.Add(i, area)
			t.Step(said.SeeArray(m), t.Answered())
		}
	}
	// While the answer is hidden, the row and the column stay to be looked along.
	for _, m := range w.Moves[:2] {
		b.under.Finally(when(scene.HiddenOnly, band(m.(arithmetic.FindLine)))...)
	}
	return t.Close(b.story(), bottom, said.Whole(w))
}

// line lights the row or column of a number from a step on, until the rectangle takes
// its place, and the number at its head for good.
func (b *board) line(step int, m arithmetic.FindLine) {
	const seen = 3 // the step in which the rectangle is seen
	b.head(step, m)
	long := band(m)
	b.under.Until(step, seen, long)
	b.under.Only(seen, when(scene.HiddenOnly, long)...)
}

// head lights the number at the edge.
func (b *board) head(step int, m arithmetic.FindLine) {
	row, col := m.N, int64(0)
	if m.Column {
		row, col = 0, m.N
	}
	b.under.Add(step, tile(row, col, telling.RoleOf(m.Nth), telling.OfPlace(m.Nth), m.N))
}

// band is all cells of a row or a column.
func band(m arithmetic.FindLine) scene.Item {
	if m.Column {
		return patch(between(1, m.N, side, m.N), tileIn, telling.RoleOf(m.Nth), scene.Plain)
	}
	return patch(between(m.N, 1, m.N, side), tileIn, telling.RoleOf(m.Nth), scene.Plain)
}

// tellLookUp tells how the other factor is looked up: along the row of the known one
// to the product, and up to the edge.
func tellLookUp(w arithmetic.Working) telling.Telling {
	b := &board{}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	said := words.Square{Problem: w.Problem, Answer: w.Answer}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.FindLine:
			b.head(i, m)
			b.under.Add(i, band(m))
			t.Step(said.FindLine(m), t.Asked())
		case arithmetic.GoAlong:
			at := tile(m.Row, m.Col, telling.RoleOf(m.Nth), telling.OfPlace(m.Nth), m.Total)
			mark := frame(m.Row, m.Col, telling.RoleOf(m.Nth))
			b.under.Only(i, at)
			b.over.Only(i, mark)
			at.When, mark.When = scene.ShownOnly, scene.ShownOnly
			b.under.Finally(at)
			b.over.Finally(mark)
			t.Step(said.GoAlong(m), t.Asked())
		case arithmetic.ReadEdge:
			row, col, way := int64(0), m.Col, between(1, m.Col, m.Row-1, m.Col)
			if m.Left {
				row, col, way = m.Row, 0, between(m.Row, 1, m.Row, m.Col-1)
			}
			found := []scene.Item{tile(row, col, scene.Result, scene.OfAnswer, m.Answer)}
			if way.W > 0 && way.H > 0 {
				found = append(found, patch(way, tileIn, scene.Result, scene.Plain))
			}
			b.under.Add(i, when(scene.ShownOnly, found...)...)
			t.Step(said.ReadEdge(m), t.Answered())
		}
	}
	return t.Close(b.story(), bottom, said.Whole(w))
}
