package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// copying draws copies of a fraction end to end on one row of wholes.
//
//	|<------ 1 whole ------>|<------ 1 whole ------>|
//	   2/5       2/5        2/5
//	/-------\ /-------\ /-------\
//	+---+---+---+---+---+---+---+---+---+---+
//	|///|///|///|///|///|///|   |   |   |   |
//	+---+---+---+---+---+---+---+---+---+---+
//	\-----------------------/
//	         1 1/5
type copying struct {
	strip
	working arithmetic.Working
	join    arithmetic.JoinCopies
}

// copied is what the picture shows after a move.
type copied struct {
	joined, moving bool
	total          *arithmetic.Strips
	filled         int64 // whole strips that have just been filled
}

func tellCopies(w arithmetic.Working) telling.Telling {
	c := copying{working: w, join: w.Moves[1].(arithmetic.JoinCopies)}
	den, wholes, _, _ := extent(w)
	c.strip = layStrip(den, wholes, 0)
	var t telling.Telling
	var now copied
	for _, move := range w.Moves {
		now.moving, now.filled = false, 0
		step := c.tell(move, &now)
		step.Scene = c.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.moving, now.filled = false, 0
	t.Whole = c.picture(now, true)
	product := c.product()
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, telling.Join(product, "=", telling.Unknown()), c.chain(product))
	t.Pieces = stripPieces(c.join.Total)
	return t
}

func (c copying) product() notation.Line {
	a, b, _ := c.working.Problem.Operands()
	return telling.Join(telling.Numeral(a, scene.First), "×", telling.Numeral(b, scene.Second))
}

// chain is the product with all its names.
func (c copying) chain(line notation.Line) notation.Line {
	line = telling.Join(line, "=", telling.Strips(c.join.Total, scene.Result))
	for _, move := range c.working.Moves[3:] {
		line = telling.Join(line, "=", telling.Strips(after(move), scene.Result))
	}
	return line
}

// tell makes a move and tells it, all but its picture.
func (c copying) tell(move arithmetic.Move, now *copied) telling.Step {
	each := telling.Strips(c.join.Each, scene.Second)
	renamed := func(from, to arithmetic.Strips) notation.Block {
		return notation.Lines(telling.Join(telling.Strips(from, scene.Result), "=", telling.Strips(to, scene.Result)))
	}
	switch m := move.(type) {
	case arithmetic.LayStrips:
		return telling.Step{
			Title: words.BarLayTitle(m.Number), Hands: words.BarLay(scene.Second, m.Number, m.Strips, false), Ask: words.BarAskLay(m.Strips),
			Symbols: notation.Lines(each),
		}
	case arithmetic.JoinCopies:
		now.joined, now.moving = true, true
		line := each
		for range min(m.Count, mostParts) - 1 {
			line = telling.Join(line, "+", each)
		}
		if !telling.EquationFits(line) {
			line = c.product()
		}
		return telling.Step{Title: words.BarJoinTitle(m), Hands: words.BarJoin(m), Ask: words.BarAskJoin(m), Symbols: notation.Lines(line)}
	case arithmetic.CountParts:
		now.total = &m.Total
		return telling.Step{
			Title: words.BarCountTitle(false), Hands: words.BarCountCopies(c.join), Ask: words.BarAskCount(m, false),
			Symbols: notation.Lines(telling.Join(c.product(), "=", telling.Strips(m.Total, scene.Result))),
		}
	case arithmetic.MakeWholes:
		now.total, now.filled = &m.To, m.Wholes
		return telling.Step{Title: words.BarMakeTitle(m), Hands: words.BarMake(scene.Result, m), Ask: words.BarAskMake(m), Symbols: renamed(m.From, m.To)}
	case arithmetic.MergeParts:
		now.total = &m.To
		return telling.Step{Title: words.BarMergeTitle(m), Hands: words.BarMerge(scene.Result, m, true), Ask: words.BarAskMerge(m), Symbols: renamed(m.From, m.To)}
	}
	panic("bars: not a move of copies")
}

// Heights of the picture of copies, from the top of the paper.
const (
	copiesTop    = scene.Margin + 144 // of the bar: under the mark of the whole and the labels
	copiesTall   = 84
	copiesBottom = copiesTop + copiesTall + 108 // under the label of all
)

// picture draws the copies after a move. The whole story, with its answer hidden,
// shows one of them.
func (c copying) picture(now copied, story bool) *scene.Scene {
	s := &scene.Scene{
		W: scene.PaperW, H: copiesBottom + scene.Margin,
		Title: words.BarCopiesTitle(c.working.Problem, c.working.Answer),
		Desc:  words.BarCopiesDesc(c.join, now.joined, now.total, story),
	}
	c.wholeMark(s)
	if !story {
		c.row(s, now, scene.Always)
	} else {
		c.row(s, copied{}, scene.HiddenOnly)
		c.row(s, now, scene.ShownOnly)
	}
	if now.total != nil {
		all := c.long(c.join.Total)
		bottom := copiesTop + copiesTall
		c.braces(s, bottom, false, []mark{{0, all, telling.Strips(*now.total, scene.Result), scene.Result, scene.ShownOnly}})
		c.braces(s, bottom, false, []mark{{0, all, telling.Join(telling.Unknown()), scene.Hidden, scene.HiddenOnly}})
	}
	return s
}

// row draws the copies that lie there, a heavy line where one ends and the next
// begins.
func (c copying) row(s *scene.Scene, now copied, when scene.When) {
	each := c.long(c.join.Each)
	b := bar{y: copiesTop, h: copiesTall}
	count, of := int64(1), scene.OfSecond
	if now.joined {
		count, of = c.join.Count, scene.OfAnswer
	}
	for i := range count {
		r := c.runs(i*each, c.join.Each, scene.Second, of)[1]
		if now.moving && i > 0 {
			r.role = scene.Moved
		}
		b.runs = append(b.runs, r)
	}
	b = c.cutAs(b, c.join.Each.Part.Den())
	c.draw(s, b, when)
	for i := range count - 1 {
		x := c.at((i + 1) * each)
		s.Add(scene.Item{Shape: scene.Line{X1: x, Y1: b.y, X2: x, Y2: b.y + b.h}, Role: scene.Ink, Finish: scene.Bold, When: when})
	}
	if now.filled > 0 {
		for k := range now.filled {
			s.Add(scene.Item{Shape: scene.Line{X1: c.at(k * c.den), Y1: b.y + b.h + 4, X2: c.at((k + 1) * c.den), Y2: b.y + b.h + 4}, Role: scene.Moved, Finish: scene.Bold, When: when})
		}
	}
	c.braces(s, b.y, true, c.copyMarks(count, each, when))
}

// copyMarks name the copies: each of them where there is room, or else the first.
func (c copying) copyMarks(count, each int64, when scene.When) []mark {
	const apart = 14
	name := telling.Strips(c.join.Each, scene.Second)
	tight := telling.Width(name, scene.Middle, false)+apart > c.unit*int(each)
	marks := make([]mark, count)
	for i := range count {
		marks[i] = mark{i * each, (i + 1) * each, name, scene.Second, when}
		if tight && i > 0 {
			marks[i].line = nil
		}
	}
	return marks
}
