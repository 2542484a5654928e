package hundredths

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// move tells one move and draws what it changes.
func (l *lesson) move(move arithmetic.Move) {
	switch m := move.(type) {
	case arithmetic.RuleSquares:
		l.now.rows[0].parts = m.Parts
		l.posed = l.now
		l.add(words.SquaresRule(m), telling.Join(notation.N("1", scene.Ink), "=", parts(m.Parts, m.Parts, scene.Ink)))
	case arithmetic.ShadeDigit:
		l.digit(m)
	case arithmetic.ShadeSquares:
		l.shade(m)
	case arithmetic.ShadeOn:
		l.shadeOn(m)
	case arithmetic.CrossSquares:
		l.cross(m)
	case arithmetic.CutSquares:
		l.cut(m)
	case arithmetic.CompareSquares:
		l.compare(m)
	case arithmetic.SplitSquare:
		l.now.rows[0].parts, l.now.rows[0].each = 100, m.Each
		l.add(words.SquaresSplit(m), telling.Join(notation.N("100", scene.Ink), "÷", telling.Count(m.Parts, scene.Ink), "=", telling.Count(m.Each, scene.Ink)))
	case arithmetic.ShadeParts:
		l.shadeParts(m)
	case arithmetic.JoinSquares:
		l.joinColumns(m)
	case arithmetic.ReadSquares:
		l.read(m)
	}
}

// shadeRun shades small squares on a row, in the step in which that is done.
func (l *lesson) shadeRun(r int, run run) {
	run.fresh = len(l.steps) > 0
	l.now.rows[r].runs = append(l.now.rows[r].runs, run)
}

func (l *lesson) digit(m arithmetic.ShadeDigit) {
	l.shadeRun(0, run{from: m.Total - m.Count*m.Each, to: m.Total, role: scene.First, of: scene.OfFirst})
	if len(l.now.caption) > 0 {
		l.now.caption = telling.Join(l.now.caption, "+")
	}
	l.now.caption = telling.Join(l.now.caption, telling.Count(m.Count, scene.First), notation.W(words.SquarePlace(m.Power, m.Count)))
	l.posed = l.now.settled()
	l.posed.caption = notation.Line{telling.Unknown()}
	l.told = []string{words.SquaresNumber(m.Number, l.countsSo(m))}
	l.asked = []string{words.SquaresShaded(l.countsSo(m))}
	l.add(words.SquaresDigit(m, l.countsSo(m)), l.now.caption)
}

// countsSo is what is shaded after a digit: the digits so far, whose counts are
// those of the moves.
func (l *lesson) countsSo(last arithmetic.ShadeDigit) (c arithmetic.Counts) {
	for _, move := range l.Moves {
		m, ok := move.(arithmetic.ShadeDigit)
		if ok && m.Power >= last.Power {
			c[m.Power] = m.Count
		}
	}
	return c
}

func (l *lesson) shade(m arithmetic.ShadeSquares) {
	role := telling.RoleOf(m.Nth)
	name := telling.Numeral(m.Number, role)
	two := len(l.now.rows) > 1
	l.now.rows[m.Nth].hidden, l.now.rows[m.Nth].parts = false, m.Parts
	if two {
		l.now.rows[m.Nth].name = name
	} else {
		l.now.caption = name
		l.now.rows[0].parts = max(l.now.rows[0].parts, m.Parts)
	}
	l.shadeRun(m.Nth, run{to: m.Total, role: role, of: scene.OfNth(m.Nth)})
	l.posed = l.now.settled()
	if two && m.Nth == 1 {
		l.posed.sign = notation.Line{telling.Unknown()}
	}
	l.told = append(l.told, words.SquaresLies(m))
	l.asked = append(l.asked, words.SquaresLies(m))
	l.add(words.SquaresShade(m, two), name)
}

func (l *lesson) shadeOn(m arithmetic.ShadeOn) {
	l.shadeRun(0, run{from: m.From, to: m.Total, role: scene.Second, of: scene.OfSecond})
	l.now.caption = telling.Join(l.now.caption, "+", telling.Numeral(m.Number, scene.Second))
	l.posed = l.now.settled()
	told := words.SquaresOn(m)
	l.told = append(l.told, told.Desc.Shown)
	l.asked = append(l.asked, told.Desc.Shown)
	l.add(told, telling.Join(l.now.caption, "=", telling.Unknown()))
}

func (l *lesson) cross(m arithmetic.CrossSquares) {
	first := &l.now.rows[0].runs[0]
	first.to = m.Left
	l.now.rows[0].runs = append(l.now.rows[0].runs, run{from: m.Left, to: m.From, role: scene.Gone, of: scene.OfFirst})
	l.now.caption = telling.Join(l.now.caption, "−", telling.Numeral(m.Number, scene.Second))
	l.posed.caption = l.now.caption
	told := words.SquaresCross(m)
	l.told = append(l.told, told.Desc.Shown)
	l.add(told, telling.Join(l.now.caption, "=", telling.Unknown()))
	l.conceal()
}

func (l *lesson) cut(m arithmetic.CutSquares) {
	l.now.rows[m.Nth].parts = m.Parts * m.Each
	runs := l.now.rows[m.Nth].runs
	for i := range runs {
		runs[i].fresh = true
	}
	role := telling.RoleOf(m.Nth)
	told := words.SquaresCut(m)
	l.told = append(l.told, told.Desc.Shown)
	if m.Parts == 1 {
		l.add(told, telling.Join(telling.Numeral(m.Number, role), "=", parts(m.Total, m.Parts*m.Each, role)))
	} else {
		l.add(told, telling.Join(telling.Numeral(m.Number, role), "=", parts(m.Count, m.Parts, role), "=", parts(m.Total, m.Parts*m.Each, role)))
	}
	if len(l.now.rows) == 1 {
		l.conceal()
	}
}

func (l *lesson) compare(m arithmetic.CompareSquares) {
	each := 100 / m.Parts
	l.now.gap = [2]int64{min(m.First, m.Second) * each, max(m.First, m.Second) * each}
	if m.Second < m.First {
		l.now.gapRow = 1
	}
	l.now.more = words.SquaresMore(m)
	l.now.sign = notation.Line{signOf(m.Relation)}
	l.why = words.SquaresWhy(l.Problem, m)
	l.told = append(l.told, l.why.String())
	between := signOf(m.Relation)
	counted := telling.Join(parts(m.First, m.Parts, scene.First), between, parts(m.Second, m.Parts, scene.Second))
	lines := []notation.Line{counted, l.compared(true)}
	if m.Parts == 1 {
		lines = lines[1:]
	}
	l.add(words.SquaresCompare(l.Problem, m), lines...)
	l.conceal()
}

func (l *lesson) shadeParts(m arithmetic.ShadeParts) {
	for k := range m.Count {
		l.shadeRun(0, run{from: k * m.Each, to: (k + 1) * m.Each, role: scene.First, of: scene.OfFirst})
	}
	l.now.caption = telling.Numeral(m.Number, scene.First)
	l.posed = l.now.settled()
	split := l.Moves[0].(arithmetic.SplitSquare)
	lies := words.SquaresSplitAs(split, m)
	l.told = append(l.told, lies)
	l.asked = append(l.asked, lies)
	l.add(words.SquaresShadeParts(m),
		telling.Join(telling.Count(m.Count, scene.First), "×", telling.Count(m.Each, scene.Ink), "=", telling.Count(m.Total, scene.First)),
		telling.Join(l.now.caption, "=", parts(m.Total, 100, scene.First)))
	l.conceal()
}

func (l *lesson) joinColumns(m arithmetic.JoinSquares) {
	l.now.rows[0].parts = m.Parts
	for i := range l.now.rows[0].runs {
		l.now.rows[0].runs[i].fresh = true
	}
	told := words.SquaresJoin(m)
	l.told = append(l.told, told.Desc.Shown)
	l.add(told, telling.Join(parts(m.Total, 100, scene.First), "=", parts(m.Columns, m.Parts, scene.First)))
	l.conceal()
}

func (l *lesson) read(m arithmetic.ReadSquares) {
	switch {
	case l.Problem.Kind == arithmetic.Show:
	case l.now.rows[0].each > 0:
		l.now.rows[0].runs = []run{{to: m.Total, role: scene.First, of: scene.OfFirst}}
	}
	told := words.SquaresRead(l.Problem, m)
	if l.Problem.Kind == arithmetic.Show {
		l.told = append(l.told, words.SquaresIs(m))
	} else {
		l.told = append(l.told, words.SquaresSo(l.equation(true).Text()))
		l.now.caption = l.equation(true)
	}
	l.add(told, l.lastLines(m)...)
	l.conceal()
}

// lastLines are what is written when the answer is read.
func (l *lesson) lastLines(m arithmetic.ReadSquares) []notation.Line {
	count := parts(m.Shaded, m.Parts, scene.Result)
	answer := l.equation(true)
	n := m.Number
	switch l.Problem.Kind {
	case arithmetic.Show:
		return []notation.Line{l.now.caption, answer}
	case arithmetic.DecimalForm, arithmetic.PercentForm:
		return []notation.Line{telling.Join(telling.Numeral(l.Problem.Left.(arithmetic.Number), scene.First), "=", count, "=", telling.Numeral(n, scene.Result))}
	}
	return []notation.Line{answer}
}
