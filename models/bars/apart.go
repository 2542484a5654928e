package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// apart draws an amount with each of its pieces named, and under it the same amount cut
// in two.
//
//	|<----------- 1 whole ---------->|
//	  1/8 1/8 1/8
//	+---+---+---+---+---+---+---+---+
//	|///|///|///|   |   |   |   |   |
//	+---+---+---+---+---+---+---+---+
//	|xxx|xxx:xxx|
//	+---+---+---+
//	 1/8   2/8
type apart struct {
	strip
	working arithmetic.Working
	units   arithmetic.SplitUnits
	number  arithmetic.Number
}

func tellApart(w arithmetic.Working) telling.Telling {
	laid := w.Moves[0].(arithmetic.LayStrips)
	den, wholes, _, _ := extent(w)
	a := apart{layStrip(den, wholes, 0), w, w.Moves[1].(arithmetic.SplitUnits), laid.Number}
	number := telling.Numeral(a.number, scene.First)
	t := telling.Telling{Pieces: stripPieces(laid.Strips)}
	var named bool
	var other *arithmetic.SplitInTwo
	for _, move := range w.Moves {
		var step telling.Step
		switch m := move.(type) {
		case arithmetic.LayStrips:
			step = telling.Step{Title: words.BarLayTitle(m.Number), Hands: words.BarLay(scene.First, m.Number, m.Strips, false), Ask: words.BarAskApart(m.Number), Symbols: notation.Lines(number)}
		case arithmetic.SplitUnits:
			named = true
			step = telling.Step{Title: words.BarUnitsTitle(m), Hands: words.BarUnits(m), Ask: words.BarAskUnits(m), Symbols: notation.Lines(telling.Join(number, "=", a.sum()))}
		case arithmetic.SplitInTwo:
			other = &m
			step = telling.Step{Title: words.BarInTwoTitle, Hands: words.BarInTwo(m), Ask: words.BarAskInTwo(), Symbols: notation.Lines(telling.Join(number, "=", two(m)))}
		}
		step.Scene = a.picture(named, other)
		t.Steps = append(t.Steps, step)
	}
	t.Whole = a.picture(named, other)
	answered := telling.Join(number, "=", a.sum())
	if units := a.units; !telling.EquationFits(answered) && units.From.Wholes == 0 {
		answered = telling.Join(number, "=", telling.Count(int64(len(units.Units)), scene.Ink), "×", telling.Numeral(units.Units[0], scene.Result))
	}
	switch {
	case other == nil:
	case !telling.EquationFits(answered):
		answered = telling.Join(number, "=", two(*other))
	default:
		if longer := telling.Join(answered, "=", two(*other)); telling.EquationFits(longer) {
			answered = longer
		}
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Join(number, "=", telling.Unknown()), answered)
	return t
}

// sum is all pieces: 1/8 + 1/8 + 1/8.
func (a apart) sum() notation.Line {
	line := telling.Numeral(a.units.Units[0], scene.Result)
	for _, u := range a.units.Units[1:] {
		line = telling.Join(line, "+", telling.Numeral(u, scene.Result))
	}
	return line
}

func two(m arithmetic.SplitInTwo) notation.Line {
	return telling.Join(telling.Strips(m.First, scene.Result), "+", telling.Strips(m.Second, scene.Result))
}

// picture draws the amount; named says that its pieces have their names.
func (a apart) picture(named bool, other *arithmetic.SplitInTwo) *scene.Scene {
	const (
		upper  = copiesTop
		tall   = 72
		lower  = upper + tall + 24
		bottom = lower + tall + 108
	)
	s := &scene.Scene{
		W: scene.PaperW, H: bottom + scene.Margin,
		Title: words.BarApartTitle(a.working.Problem, a.working.Answer),
		Desc:  words.BarApartDesc(a.working.Problem, a.working.Answer, a.units, named, other),
	}
	if len(a.working.Moves) < 3 { // there is no other way
		s.H -= bottom - upper - tall - 12
	}
	a.wholeMark(s)
	laid := a.units.From
	a.draw(s, a.shaded(upper, tall, laid, scene.First, scene.OfFirst), scene.Always)
	if named {
		a.braces(s, upper, true, a.names())
		a.braces(s, upper, true, []mark{{0, a.long(laid), telling.Join(telling.Unknown()), scene.Hidden, scene.HiddenOnly}})
	}
	if other == nil {
		return s
	}
	b := bar{y: lower, h: tall, runs: append(a.runs(0, other.First, scene.Result, scene.OfAnswer), a.runs(a.long(other.First), other.Second, scene.Result, scene.OfAnswer)...)}
	a.draw(s, a.cutAs(b, laid.Part.Den()), scene.ShownOnly)
	a.draw(s, bar{y: lower, h: tall}, scene.HiddenOnly)
	cut := a.at(a.long(other.First))
	const reach = 8
	s.Add(scene.Item{Shape: scene.Line{X1: cut, Y1: lower - reach, X2: cut, Y2: lower + tall + reach}, Role: scene.Ink, Finish: scene.Bold, When: scene.ShownOnly})
	a.braces(s, lower+tall, false, []mark{
		{0, a.long(other.First), telling.Strips(other.First, scene.Result), scene.Result, scene.ShownOnly},
		{a.long(other.First), a.long(laid), telling.Strips(other.Second, scene.Result), scene.Result, scene.ShownOnly},
	})
	return s
}

// names are the braces over the pieces, each with its name where there is room for all,
// or else the first of every size.
func (a apart) names() []mark {
	const apart = 14
	var marks []mark
	from, was := int64(0), ""
	for _, u := range a.units.Units {
		name := telling.Numeral(u, scene.Result)
		long := a.long(arithmetic.StripsOf(u))
		m := mark{from, from + long, name, scene.Result, scene.ShownOnly}
		if telling.Width(name, scene.Middle, false)+apart > a.unit*int(long) && u.String() == was {
			m.line = nil
		}
		marks = append(marks, m)
		from, was = from+long, u.String()
	}
	return marks
}
