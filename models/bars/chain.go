package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// chaining draws a sum of several fractions as lengths end to end, and under them one
// length that is as long as all.
//
//	|<---------- 1 whole ---------->|
//	     1/2          1/3      1/6
//	/-------------\ /--------\ /---\
//	+----+----+----+----+----+-----+
//	|////|////|////|\\\\|\\\\|/////|
//	+----+----+----+----+----+-----+
//	|xxxxxxxxxxxxxxxxxxxxxxxxxxxxxx|
//	\------------------------------/
//	               1
type chaining struct {
	strip
	working arithmetic.Working
	laid    []arithmetic.LayStrips
	roles   []scene.Role
}

// chained is what the picture shows after a move.
type chained struct {
	on     int // how many lengths lie there
	moving bool
	cut    *arithmetic.CutAll
	fresh  bool // they have just been cut
	total  *arithmetic.Strips
	made   arithmetic.Move // what has just been done to the total
}

func tellChain(w arithmetic.Working) telling.Telling {
	c := chaining{working: w}
	den, wholes, _, _ := extent(w)
	c.strip = layStrip(den, wholes, 0)
	var strips []arithmetic.Strips
	for _, move := range w.Moves {
		if m, ok := move.(arithmetic.LayStrips); ok {
			c.laid, c.roles, strips = append(c.laid, m), append(c.roles, telling.RoleOf(m.Nth)), append(strips, m.Strips)
		}
	}
	t := telling.Telling{Pieces: append(stripPieces(strips...), telling.Piece{Name: words.BarAnswerStrip, Count: 1})}
	var now chained
	answered := c.sum(nil)
	for _, move := range w.Moves {
		now.moving, now.fresh, now.made = false, false, nil
		step := c.tell(move, &now)
		step.Scene = c.picture(now, false)
		t.Steps = append(t.Steps, step)
		if now.made != nil {
			answered = telling.Join(answered, "=", telling.Strips(*now.total, scene.Result))
		}
	}
	now.moving, now.fresh, now.made = false, false, nil
	t.Whole = c.picture(now, true)
	if now.cut != nil {
		if long := telling.Join(c.sum(nil), "=", c.sum(now.cut), answered[len(c.sum(nil)):]); telling.EquationFits(long) {
			answered = long
		}
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Join(c.sum(nil), "=", telling.Unknown()), answered)
	return t
}

// sum is the sum as it is written, or as it is cut.
func (c chaining) sum(cut *arithmetic.CutAll) notation.Line {
	var links []notation.Line
	for i, m := range c.laid {
		link := telling.Numeral(m.Number, c.roles[i])
		if cut != nil {
			link = telling.Strips(cut.To[i], c.roles[i])
		}
		links = append(links, link)
	}
	return telling.Chain("+", links...)
}

// tell makes a move and tells it, all but its picture.
func (c chaining) tell(move arithmetic.Move, now *chained) telling.Step {
	named := func(from, to arithmetic.Strips) notation.Block {
		return notation.Lines(telling.Join(telling.Strips(from, scene.Result), "=", telling.Strips(to, scene.Result)))
	}
	switch m := move.(type) {
	case arithmetic.LayStrips:
		now.on, now.moving = m.Nth+1, m.Nth > 0
		return telling.Step{Title: words.BarLayTitle(m.Number), Hands: words.BarLayNext(c.roles[m.Nth], m), Ask: words.BarAskLay(m.Strips), Symbols: notation.Lines(telling.Numeral(m.Number, c.roles[m.Nth]))}
	case arithmetic.CutAll:
		now.cut, now.fresh = &m, true
		return telling.Step{Title: words.BarCutAllTitle(m), Hands: words.BarCutChain(m, c.roles), Ask: words.BarAskCutAll(m), Symbols: notation.Lines(telling.Join(c.sum(nil), "="), c.sum(&m))}
	case arithmetic.CountParts:
		now.total, now.made = &m.Total, m
		return telling.Step{Title: words.BarCountTitle(false), Hands: words.BarCountChain(m), Ask: words.BarAskCount(m, false), Symbols: notation.Lines(telling.Join(c.sum(now.cut), "=", telling.Strips(m.Total, scene.Result)))}
	case arithmetic.MakeWholes:
		now.total, now.made = &m.To, m
		return telling.Step{Title: words.BarMakeTitle(m), Hands: words.BarMake(scene.Result, m), Ask: words.BarAskMake(m), Symbols: named(m.From, m.To)}
	case arithmetic.MergeParts:
		now.total, now.made = &m.To, m
		return telling.Step{Title: words.BarMergeTitle(m), Hands: words.BarMerge(scene.Result, m, true), Ask: words.BarAskMerge(m), Symbols: named(m.From, m.To)}
	}
	panic("bars: not a move of a sum of several fractions")
}

// picture draws the lengths after a move. The whole story, with its answer hidden,
// shows them as they were written.
func (c chaining) picture(now chained, story bool) *scene.Scene {
	const (
		upper  = copiesTop
		tall   = 72
		lower  = upper + tall + 16
		bottom = lower + tall + 108
	)
	den := int64(0)
	if now.cut != nil {
		den = now.cut.Den
	}
	s := &scene.Scene{
		W: scene.PaperW, H: bottom + scene.Margin,
		Title: words.BarDividedTitle(c.working.Problem, c.working.Answer),
		Desc:  words.BarChainDesc(c.working.Problem, c.laid[:now.on], den, now.total),
	}
	c.wholeMark(s)
	if !story {
		c.row(s, upper, tall, now, scene.Always)
	} else {
		c.row(s, upper, tall, chained{on: now.on}, scene.HiddenOnly)
		c.row(s, upper, tall, now, scene.ShownOnly)
	}
	if now.total == nil {
		return s
	}
	b := c.shaded(lower, tall, *now.total, scene.Result, scene.OfAnswer)
	switch m := now.made.(type) {
	case arithmetic.MakeWholes:
		b.runs = c.filled(b.runs, m.Wholes)
	case arithmetic.CountParts, arithmetic.MergeParts:
		b.runs[1].role = scene.Moved
	}
	c.draw(s, b, scene.ShownOnly)
	c.draw(s, bar{y: lower, h: tall}, scene.HiddenOnly)
	long := c.long(*now.total)
	c.braces(s, lower+tall, false, []mark{{0, long, telling.Strips(*now.total, scene.Result), scene.Result, scene.ShownOnly}})
	c.braces(s, lower+tall, false, []mark{{0, long, telling.Join(telling.Unknown()), scene.Hidden, scene.HiddenOnly}})
	return s
}

// row draws the lengths that lie there, end to end, with their names over them.
func (c chaining) row(s *scene.Scene, y, tall int, now chained, when scene.When) {
	b := bar{y: y, h: tall}
	var marks []mark
	from, finest, alike := int64(0), int64(1), true
	for i, m := range c.laid[:now.on] {
		a, old := m.Strips, int64(0)
		if now.cut != nil {
			a, old = now.cut.To[i], m.Strips.Part.Den()
		}
		role := c.roles[i]
		if now.moving && i == now.on-1 {
			role = scene.Moved
		}
		runs := cutFiner(c.runs(from, a, role, scene.OfNth(i)), old, now.fresh)
		b.runs = append(b.runs, runs...)
		to := from + c.long(a)
		marks = append(marks, mark{from, to, telling.Numeral(m.Number, c.roles[i]), c.roles[i], when})
		alike = alike && (i == 0 || a.Part.Den() == finest)
		from, finest = to, max(finest, a.Part.Den())
	}
	if !alike {
		finest = 0 // what is left of the whole is not cut in any one of the parts
	}
	c.draw(s, c.cutAs(b, finest), when)
	c.braces(s, y, true, marks)
}
