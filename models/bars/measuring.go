package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// measuring draws an amount on one row of wholes, and the groups that are measured off
// it, counted under them.
//
//	|<------ 1 whole ------>|<------ 1 whole ------>|
//	   2/3                1/2 of a group
//	/-------\ /-------\ /---\
//	+---+---+---+---+---+---+---+---+---+---+---+---+
//	|///|///|///|///|///|   |   |   |   |   |   |   |
//	+---+---+---+---+---+---+---+---+---+---+---+---+
//	    1        2
type measuring struct {
	strip
	working arithmetic.Working
	laid    arithmetic.LayStrips
	off     arithmetic.MeasureOff
}

// measured is what the picture shows after a move.
type measured struct {
	lies   arithmetic.Strips
	made   arithmetic.Move // what has just been done to it; nil for nothing
	groups bool            // the groups are marked
}

func tellMeasured(w arithmetic.Working) telling.Telling {
	m := measuring{working: w, laid: w.Moves[0].(arithmetic.LayStrips), off: w.Moves[len(w.Moves)-1].(arithmetic.MeasureOff)}
	den, wholes, _, _ := extent(w)
	m.strip = layStrip(den, wholes, 0)
	t := telling.Telling{Pieces: stripPieces(m.laid.Strips)}
	var now measured
	for _, move := range w.Moves {
		step := m.tell(move, &now)
		step.Scene = m.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.made = nil
	t.Whole = m.picture(now, true)
	asked := m.quotient(telling.Numeral(m.laid.Number, scene.First), telling.Numeral(m.off.Size, scene.Second))
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Join(asked, "=", telling.Unknown()), m.chain(asked))
	return t
}

func (m measuring) quotient(a, b notation.Line) notation.Line { return telling.Join(a, "÷", b) }

// chain is the quotient with its names: 2/3 ÷ 1/4 = 8/12 ÷ 3/12 = 2 2/3.
func (m measuring) chain(asked notation.Line) notation.Line {
	answer := telling.Numeral(m.working.Answer.Number, scene.Result)
	short := telling.Join(asked, "=", answer)
	all, each := telling.Strips(m.off.From, scene.First), telling.Strips(m.off.Each, scene.Second)
	if long := telling.Join(asked, "=", m.quotient(all, each), "=", answer); m.recut() && telling.EquationFits(long) {
		return long
	}
	return short
}

// recut reports whether the parts of one of the two numbers had to be cut.
func (m measuring) recut() bool {
	den := m.off.From.Part.Den()
	return den != m.laid.Strips.Part.Den() && m.laid.Strips.Part.Den() > 1 || den != m.off.Size.Value.Den()
}

// tell makes a move and tells it, all but its picture.
func (m measuring) tell(move arithmetic.Move, now *measured) telling.Step {
	first := telling.Numeral(m.laid.Number, scene.First)
	switch move := move.(type) {
	case arithmetic.LayStrips:
		*now = measured{lies: move.Strips}
		return telling.Step{Title: words.BarLayTitle(move.Number), Hands: words.BarLay(scene.First, move.Number, move.Strips, false),
			Ask: words.BarAskGroups(m.laid.Number, m.off), Symbols: notation.Lines(first)}
	case arithmetic.CutParts:
		*now = measured{lies: move.To, made: move}
		return telling.Step{Title: words.BarCutTitle(move), Hands: words.BarCut(scene.First, move, true), Ask: words.BarAskCut(move),
			Symbols: notation.Lines(telling.Join(telling.Strips(move.From, scene.First), "=", telling.Strips(move.To, scene.First)))}
	case arithmetic.OpenWholes:
		*now = measured{lies: move.To, made: move}
		return telling.Step{Title: words.BarOpenTitle(move), Hands: words.BarOpen(scene.First, scene.First, move, true), Ask: words.BarAskOpenAll(move),
			Symbols: notation.Lines(telling.Join(telling.Strips(move.From, scene.First), "=", telling.Strips(move.To, scene.First)))}
	case arithmetic.MeasureOff:
		*now = measured{lies: move.From, made: move, groups: true}
		asked := m.quotient(first, telling.Numeral(m.off.Size, scene.Second))
		lines := []notation.Line{m.chain(asked)}
		if move.Left.Part.Num() == 0 {
			lines = append(lines, telling.Join(telling.Numeral(m.working.Answer.Number, scene.Result), "×", telling.Numeral(m.off.Size, scene.Second), "=", first))
		}
		return telling.Step{Title: words.BarMeasureTitle(move), Hands: words.BarMeasure(move), Ask: words.BarAskMeasure(move), Symbols: notation.Lines(lines...)}
	}
	panic("bars: not a move of measuring")
}

// picture draws the amount after a move. The whole story, with its answer hidden,
// shows the amount before it is cut, and one group to measure with.
func (m measuring) picture(now measured, story bool) *scene.Scene {
	s := &scene.Scene{
		W: scene.PaperW, H: copiesTop + copiesTall + 2*countsDown + scene.Margin,
		Title: words.BarDividedTitle(m.working.Problem, m.working.Answer),
		Desc:  words.BarMeasuredDesc(m.laid.Number, m.working.Answer.Number, m.off, now.lies, now.groups),
	}
	m.wholeMark(s)
	if !story {
		m.row(s, now, scene.Always)
	} else {
		m.row(s, measured{lies: m.laid.Strips}, scene.HiddenOnly)
		m.braces(s, copiesTop, true, []mark{{0, m.long(m.off.Each), telling.Numeral(m.off.Size, scene.Second), scene.Second, scene.HiddenOnly}})
		m.row(s, now, scene.ShownOnly)
	}
	return s
}

// row draws the amount that lies there, and a mark where one group ends and the next
// begins.
func (m measuring) row(s *scene.Scene, now measured, when scene.When) {
	b := m.shaded(copiesTop, copiesTall, now.lies, scene.First, scene.OfFirst)
	switch move := now.made.(type) {
	case arithmetic.CutParts:
		b.runs = cutFiner(b.runs, move.From.Part.Den(), true)
	case arithmetic.OpenWholes:
		b.runs = m.opened(b.runs, move.Wholes)
	}
	for k := range m.wholes { // of a whole that is covered the cuts cannot be seen
		b.open[k] = b.open[k] && (k+1)*m.den > m.long(now.lies)
	}
	m.draw(s, b, when)
	if !now.groups {
		return
	}
	const reach = 8 // of the mark between groups, out of the bar
	each := m.long(m.off.Each)
	var over, under []mark
	for i := range m.off.Count {
		x := m.at((i + 1) * each)
		if i == 0 || m.off.Each.Part.Num() > 1 { // parts that are groups need no marks of their own
			over = append(over, mark{from: i * each, to: (i + 1) * each, role: scene.Second, when: when})
			s.Add(scene.Item{Shape: scene.Line{X1: x, Y1: b.y, X2: x, Y2: b.y + b.h + reach}, Role: scene.Second, Finish: scene.Bold, When: when})
		}
		under = append(under, mark{from: i * each, to: (i + 1) * each, line: telling.Join(telling.Count(i+1, scene.Result)), role: scene.Result})
	}
	over[0].line = telling.Numeral(m.off.Size, scene.Second)
	if left := m.off.Left.Part.Num(); left > 0 {
		from := m.off.Count * each
		part := telling.Join(telling.Numeral(arithmetic.Frac(m.off.Part), scene.Result), notation.W(words.BarOfAGroup))
		over = append(over, mark{from, from + m.long(m.off.Left), part, scene.Result, scene.ShownOnly})
	}
	m.braces(s, b.y, true, over)
	m.counts(s, b.y+b.h, m.spaced(under))
	if when == scene.Always {
		question := telling.Question((m.at(0)+m.at(m.off.Count*each))/2, b.y+b.h+countsDown)
		s.Add(question)
	}
}

// spaced leaves out numbers under the groups where there is no room for all: every
// second, fifth or tenth stays, and the last.
func (m measuring) spaced(marks []mark) []mark {
	const apart = 8
	wide := telling.Width(marks[len(marks)-1].line, scene.Small, false) + apart
	each := m.unit * int(marks[0].to-marks[0].from)
	for _, every := range []int{1, 2, 5, 10} {
		if each*every < wide {
			continue
		}
		var kept []mark
		for i, k := range marks {
			last := i == len(marks)-1
			if last || (i+1)%every == 0 && each*(len(marks)-1-i) >= wide {
				kept = append(kept, k)
			}
		}
		return kept
	}
	return marks[len(marks)-1:]
}

// countsDown is from the bar to the middle of a number under it.
const countsDown = 34

// counts writes the numbers of the groups under them.
func (m measuring) counts(s *scene.Scene, bottom int, marks []mark) {
	for _, k := range marks {
		s.Add(scene.Item{Shape: scene.Text{X: (m.at(k.from) + m.at(k.to)) / 2, Y: bottom + countsDown, Size: scene.Small, Runs: k.line.Runs()}, Role: k.role, When: scene.ShownOnly})
	}
}
