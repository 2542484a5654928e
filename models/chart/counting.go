package chart

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tellCount tells counting by a number, and multiples, as a pattern on the chart.
func tellCount(w arithmetic.Working) telling.Telling {
	p := w.Problem
	start := w.Moves[0].(arithmetic.StartRow)
	counts := p.Kind == arithmetic.Counting
	zero := counts && (start.From == 0 || start.Land(start.Count) == 0)
	b := lay(zero)
	of := scene.OfAnswer // what every count adds
	if !counts {
		of = scene.OfSecond
	}
	t := telling.Draft{Problem: p, Answer: w.Answer}
	said := words.Chart{Problem: p, Answer: w.Answer, Row: start.HopRow}
	for i, m := range w.Moves {
		switch m := m.(type) {
		case arithmetic.StartRow:
			if counts {
				b.light(0, m.From, scene.First, scene.OfFirst, m.From, false)
			}
			t.Step(said.Start(m), startLine(m, counts))
		case arithmetic.HopOn:
			for nth := m.First; nth <= m.Last; nth++ {
				b.light(i, m.Land(nth), scene.Result, of, m.By, m.Last == m.Count)
			}
			t.Step(said.HopOn(m), hopLine(m))
		case arithmetic.SeeEnds:
			t.Step(said.Ends(m), shortList(w.Answer.List))
		}
	}
	first := telling.Unknown()
	if counts {
		first = telling.Count(start.From, scene.First)
	}
	asked := telling.Join(first, ",", telling.Unknown(), ",", telling.Unknown(), ",", notation.W("…"))
	told := closed(t, b.story(zero), b.bottom(), said.Title(), said.Whole(), asked, shortList(w.Answer.List))
	told.Pieces = []telling.Piece{{Name: words.Things(words.Counters, int64(len(w.Answer.List))), Count: int64(len(w.Answer.List))}}
	return told
}

// startLine is what is known: 7, ?, ?.
func startLine(m arithmetic.StartRow, counts bool) notation.Line {
	if counts {
		return telling.Join(telling.Count(m.From, scene.First), ",", telling.Unknown(), ",", telling.Unknown())
	}
	return telling.Join(telling.Unknown(), "×", telling.Count(m.By, scene.First))
}

// hopLine is one count as a sum, 15 + 5 = 20, or the numbers of many.
func hopLine(m arithmetic.HopOn) notation.Line {
	if m.Last > m.First {
		var list []int64
		for nth := m.First; nth <= m.Last; nth++ {
			list = append(list, m.Land(nth))
		}
		return shortList(list)
	}
	sign := arithmetic.Add
	if m.Back {
		sign = arithmetic.Subtract
	}
	return telling.Join(telling.Count(m.Land(m.First-1), scene.First), sign.String(), telling.Count(m.By, scene.Second), "=", telling.Count(m.Land(m.First), scene.Result))
}

// shortList is a row of numbers: 4, 8, 12, or 4, 8, 12, …, 48.
func shortList(list []int64) notation.Line {
	const most = 6
	if all := telling.Counts(",", scene.Result, list...); len(list) <= most && telling.EquationFits(all) {
		return all
	}
	return telling.Join(telling.Counts(",", scene.Result, list[:3]...), ",", notation.W("…"), ",", telling.Count(list[len(list)-1], scene.Result))
}

// closed draws the pictures of a story, and an equation at the foot of the whole.
func closed(t telling.Draft, s *telling.Story, bottom int, title, desc scene.Telling, asked, answered notation.Line) telling.Telling {
	told := t.Pictures(s, bottom, title, desc)
	telling.Equation(told.Whole, bottom, asked, answered)
	return told
}
