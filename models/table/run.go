package table

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellRun tells the numbers of a run one under the other, each with its place.
//
//	 term   number
//	+----+ +-------+
//	| 1  | |   3   |----+
//	+----+ +-------+    | × 2
//	| 2  | |   6   |<---+
func tellRun(w arithmetic.Working) telling.Telling {
	const between, ruleAir, side = 16, 56, 14 // columns; to the rule beside an arrow; from the arrow to the rule
	say := w.Moves[0].(arithmetic.SayRule)
	rule := scene.Text{Size: scene.Middle, Anchor: scene.Left, Runs: ruleText(say.Op.String(), say.By).Runs()}
	place, term := column{w: 130}, column{w: 240}
	place.x = (scene.PaperW - place.w - between - term.w - ruleAir - side - rule.Width()) / 2
	term.x = place.x + place.w + between
	said := words.RunTable{Problem: w.Problem, Rule: say.Rule, List: w.Answer.List}

	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	s := &telling.Story{}
	s.Add(0, place.heading(words.TableTerm), term.heading(words.TableNumber))
	for row := range w.Answer.List {
		nth := telling.Text(scene.Ink, place.middle(), rowY(row), scene.Middle, words.Ordinal(row+1))
		s.Add(0, place.cell(row, scene.Guide, scene.Outline), nth)
	}
	s.Add(0, term.cell(0, scene.First, scene.Plain), term.number(0, say.In[0], scene.First, scene.OfFirst))
	t.Step(said.Say(), telling.Join(telling.Count(say.In[0], scene.First), ",", telling.Unknown(), ",", telling.Unknown()))
	for i, m := range w.Moves[1:] {
		var rows []arithmetic.FillRow
		switch m := m.(type) {
		case arithmetic.FillRow:
			rows = []arithmetic.FillRow{m}
		case arithmetic.FillRows:
			rows = m.Rows
		}
		var lines []notation.Line
		for _, r := range rows {
			rule.X, rule.Y = term.x+term.w+ruleAir+side, (rowY(r.Row)+rowY(r.Row-1))/2
			s.Add(i, append(down(term, r.Row, ruleAir), scene.Item{Shape: rule, Role: scene.Ink})...) // it is what is to be done
			term.found(s, i+1, r.Row, r.Out, scene.OfNth(r.Row+1))
			role := scene.Result
			if r.Row == 1 {
				role = scene.First
			}
			lines = append(lines, telling.Join(telling.Count(r.In, role), r.Op.String(), telling.Count(r.By, scene.Second), "=", telling.Count(r.Out, scene.Result)))
		}
		t.Step(said.Fill(rows), lines...)
	}
	told := t.Pictures(s, bottom(len(w.Answer.List)), said.Title(), said.Whole())
	told.Pieces = pieces(len(w.Answer.List))
	return told
}

// down is the arrow from the number above a row to that of the row.
func down(c column, row, reach int) []scene.Item {
	const apart, air = 12, 6 // the end of one arrow from the beginning of the next; from the cell
	x, from, to := c.x+c.w+air, rowY(row-1)+apart, rowY(row)-apart
	return []scene.Item{
		{Shape: scene.Polyline{{X: x, Y: from}, {X: x + reach - air, Y: from}, {X: x + reach - air, Y: to}, {X: x + headLong, Y: to}}, Role: scene.Note},
		leftHead(scene.Note, x, to),
	}
}
