package table

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellRule tells a table of what goes in and what comes out.
//
//	  in                     out
//	+-----+                +-----+
//	|  1  |  × 3  -------> |  3  |
//	+-----+                +-----+
//	|  2  |  × 3  -------> |  ?  |
func tellRule(w arithmetic.Working) telling.Telling {
	in, out := column{64, 208}, column{528, 208}
	say := w.Moves[0].(arithmetic.SayRule)
	said := words.RuleTable{Problem: w.Problem, Rule: say.Rule, In: say.In, Out: w.Answer.List}
	t := telling.Draft{Problem: w.Problem, Answer: w.Answer}
	s := &telling.Story{}
	rule := telling.Join(notation.W(words.TableRule), ruleText(say.Op.String(), say.By))
	s.Add(0, in.heading(words.TableIn), out.heading(words.TableOut), heading(scene.PaperW/2, rule))
	for row, n := range say.In {
		s.Add(0, in.cell(row, scene.First, scene.Plain), in.number(row, n, scene.First, scene.OfNth(row)))
	}
	t.Step(said.Say(), telling.Join(notation.W(words.TableIn), say.Op.String(), telling.Count(say.By, scene.Second), "=", notation.W(words.TableOut)))
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
			s.Add(i+1, through(in, out, r)...)
			out.found(s, i+1, r.Row, r.Out, scene.OfNth(len(say.In)+r.Row))
			lines = append(lines, telling.Join(telling.Count(r.In, scene.First), r.Op.String(), telling.Count(r.By, scene.Second), "=", telling.Count(r.Out, scene.Result)))
		}
		t.Step(said.Fill(rows), lines...)
	}
	told := t.Pictures(s, bottom(len(say.In)), said.Title(), said.Whole())
	told.Pieces = pieces(len(say.In))
	return told
}

// through is the way of a number from one column to the other, with what is done to
// it.
func through(in, out column, r arithmetic.FillRow) []scene.Item {
	const air = 12 // from a cell or the words to the stroke
	from, to, y := in.x+in.w+air, out.x-air, rowY(r.Row)
	rule := scene.Text{X: from, Y: y, Anchor: scene.Left, Size: scene.Middle, Runs: ruleText(r.Op.String(), r.By).Runs()}
	b := rule.Box()
	return []scene.Item{
		{Shape: rule, Role: scene.Ink},
		{Shape: scene.Line{X1: b.Right() + air, Y1: y, X2: to - headLong, Y2: y}, Role: scene.Note},
		rightHead(scene.Note, to, y),
	}
}

func pieces(rows int) []telling.Piece {
	return []telling.Piece{{Name: words.TablePaper, Count: 1}, {Name: words.TableCards(rows), Count: int64(rows)}}
}
