package line

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// The symbols of rows of equal hops.

// hopLines writes the hops of a move: 3 × 4 = 12, or 45 + 5 = 50.
func (pl *plan) hopLines(m arithmetic.HopOn) []notation.Line {
	switch pl.problem.Kind {
	case arithmetic.Counting:
		var lines []notation.Line
		for nth := m.First; nth <= m.Last; nth++ {
			sign := "+"
			if m.Back {
				sign = "−"
			}
			lines = append(lines, telling.Join(telling.Numeral(m.Number(m.Land(nth-1)), scene.Ink), sign, telling.Numeral(m.Step(), scene.Moved), "=", telling.Numeral(m.Number(m.Land(nth)), scene.Result)))
		}
		return lines
	case arithmetic.Multiples:
		var lines []notation.Line
		for nth := m.First; nth <= m.Last; nth++ {
			lines = append(lines, timesLine(nth, m.HopRow, scene.Result))
		}
		return lines
	}
	role := scene.Ink
	if m.Last == m.Count && pl.problem.Kind == arithmetic.Product {
		role = scene.Result
	}
	return []notation.Line{timesLine(m.Last, m.HopRow, role)}
}

func timesLine(nth int64, row arithmetic.HopRow, role scene.Role) notation.Line {
	return telling.Join(telling.Count(nth, scene.Ink), "×", telling.Numeral(row.Step(), scene.Second), "=", telling.Numeral(row.Number(row.Land(nth)), role))
}

func restLine(m arithmetic.StopShort) notation.Line {
	return telling.Join(telling.Count(m.Total, scene.First), "−", telling.Count(m.At, scene.Ink), "=", telling.Count(m.Rest, scene.First))
}

// rowAsked is the problem with a question mark for what is asked.
func (pl *plan) rowAsked(row arithmetic.HopRow) notation.Line {
	switch pl.problem.Kind {
	case arithmetic.Counting, arithmetic.Multiples:
		return telling.Join(pl.rowBegin(row), ",", telling.Unknown())
	}
	a, b, _ := pl.problem.Operands()
	op := pl.problem.Left.(arithmetic.Operation).Op
	return telling.Join(telling.Numeral(a, scene.First), op.String(), telling.Numeral(b, scene.Second), "=", telling.Unknown())
}

// rowBegin is the first two numbers of a run, or the first multiple.
func (pl *plan) rowBegin(row arithmetic.HopRow) notation.Line {
	if pl.problem.Kind == arithmetic.Multiples {
		return notation.Line{telling.Count(row.By, scene.Result)}
	}
	return telling.Join(telling.Numeral(row.Number(row.From), scene.First), ",", telling.Numeral(row.Number(row.Land(1)), scene.Result))
}

// rowAnswer is the answer in symbols: 4 × 3 = 12, 14 ÷ 3 = 4 r 2, or the row of
// numbers, with the middle left out where it is long.
func (pl *plan) rowAnswer() notation.Line {
	a := pl.working.Answer
	switch pl.problem.Kind {
	case arithmetic.Counting, arithmetic.Multiples:
		return shortList(pl.rowNumbers())
	}
	line := pl.rowAsked(arithmetic.HopRow{})
	line = telling.Join(line[:len(line)-1], resultLine(a))
	if a.Remainder > 0 {
		line = telling.Join(line, notation.W("r"), telling.Count(a.Remainder, scene.First))
	}
	return line
}

// rowNumbers are the numbers that are counted.
func (pl *plan) rowNumbers() []arithmetic.Number {
	var list []arithmetic.Number
	for _, n := range pl.working.Answer.List {
		list = append(list, pl.problem.Run.Number(n))
	}
	return list
}

// shortList is a row of numbers: 4, 8, 12, or 4, 8, 12, …, 48.
func shortList(list []arithmetic.Number) notation.Line {
	const most = 6
	links := make([]notation.Line, len(list))
	for i, n := range list {
		links[i] = telling.Numeral(n, scene.Result)
	}
	if all := telling.Chain(",", links...); len(list) <= most && telling.EquationFits(all) {
		return all
	}
	return telling.Join(telling.Chain(",", links[:3]...), ",", notation.W("…"), ",", links[len(links)-1])
}
