package discs

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// comparing draws two numbers on discs of one size, side by side. What the smaller
// one lacks is outlined on its own disc.
//
//	1 whole        1 whole
//	 (( ))    <     (( ))
//	  2/3            3/4
//	              1/12 more
type comparing struct {
	sheet
	problem arithmetic.Problem
	answer  arithmetic.Answer
	numbers [2]arithmetic.Number
	laid    [2]arithmetic.Strips  // as they were written
	cuts    []arithmetic.CutParts // made so far
}

// compared is what the picture shows after a move.
type compared struct {
	strips [2]arithmetic.Strips
	old    [2]int64 // parts to a whole before the last cut
	fresh  int      // the number that has just been cut, from 1; 0 for none
	laid   int      // how many numbers lie there
	ends   *arithmetic.CompareEnds
}

var bothRoles = [2]scene.Role{scene.First, scene.Second}

func tellCompared(w arithmetic.Working) telling.Telling {
	e, _ := extentOf(w)
	discs := max(e.discs[0], e.discs[1])
	c := comparing{sheet: layDiscs(e.den, discs, discs), problem: w.Problem, answer: w.Answer}
	c.numbers[0], c.numbers[1], _ = w.Problem.Operands()
	t := telling.Telling{Pieces: paper(e.discs[0] + e.discs[1])}
	var now compared
	for _, move := range w.Moves {
		now.fresh = 0
		var step telling.Step
		switch m := move.(type) {
		case arithmetic.LayStrips:
			c.laid[m.Nth], now.strips[m.Nth], now.laid = m.Strips, m.Strips, m.Nth+1
			step = layStep(m)
		case arithmetic.CutParts:
			c.cuts = append(c.cuts, m)
			now.old[m.Nth], now.strips[m.Nth], now.fresh = m.From.Part.Den(), m.To, m.Nth+1
			step = cutStep(m)
		case arithmetic.CompareEnds:
			now.ends = &m
			step = telling.Step{
				Title:   words.DiscCompareTitle,
				Hands:   words.DiscCompare(w.Problem, m),
				Ask:     words.DiscAskCompare(),
				Symbols: notation.Lines(telling.ComparedStrips(w.Problem, m, c.cuts)),
			}
			if m.Instead.Left != nil {
				step.Symbols.Lines = append(step.Symbols.Lines, statement(m.Instead))
			}
			t.Why = words.DiscWhy(w.Problem, m, c.cuts)
		}
		step.Scene = c.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.fresh = 0
	t.Whole = c.picture(now, true)
	asked := telling.Join(telling.Numeral(c.numbers[0], scene.First), telling.Unknown(), telling.Numeral(c.numbers[1], scene.Second))
	if w.Problem.Kind == arithmetic.Claim {
		asked = telling.Join(statement(w.Problem), telling.Unknown())
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, telling.ComparedStrips(w.Problem, *now.ends, c.cuts))
	return t
}

// layStep tells that a number is laid out, all but its picture.
func layStep(m arithmetic.LayStrips) telling.Step {
	role := bothRoles[m.Nth]
	return telling.Step{
		Title:   words.BarLayTitle(m.Number),
		Hands:   words.DiscLay(role, m.Number, m.Strips, m.Nth > 0),
		Ask:     words.BarAskLay(m.Strips),
		Symbols: notation.Lines(telling.Numeral(m.Number, role)),
	}
}

// cutStep tells that parts are cut finer, all but its picture.
func cutStep(m arithmetic.CutParts) telling.Step {
	role := bothRoles[m.Nth]
	return telling.Step{
		Title:   words.BarCutTitle(m),
		Hands:   words.DiscCut(role, m, true),
		Ask:     words.BarAskCut(m),
		Symbols: notation.Lines(telling.CutStrips(m, role)),
	}
}

// statement is a claim about two numbers, in their roles.
func statement(p arithmetic.Problem) notation.Line {
	a, b, _ := p.Operands()
	return telling.Join(telling.Numeral(a, scene.First), notation.S(p.Rel.String()), telling.Numeral(b, scene.Second))
}

// picture draws the discs after a move. The whole story, with its answer hidden,
// shows the numbers as they were written.
func (c comparing) picture(now compared, story bool) *scene.Scene {
	verdict := 44 // room under the labels for what the discs show: a few words
	if c.answer.Relation != arithmetic.Equal {
		verdict = 72 // or a fraction
	}
	s := &scene.Scene{
		W: scene.PaperW, H: c.bottom + verdict + scene.Margin,
		Title: words.BarVerdict(c.problem, c.answer),
		Desc:  words.DiscComparedDesc(c.problem, c.laid[:now.laid], c.cuts, now.ends),
	}
	if !story {
		c.discs(s, now, scene.Always)
	} else {
		c.discs(s, compared{strips: c.laid, laid: 2}, scene.HiddenOnly)
		c.discs(s, now, scene.ShownOnly)
	}
	marks := []int{0, 1}
	c.wholeMark(s, marks[:now.laid]...)
	if now.ends != nil {
		c.drawEnds(s, *now.ends)
	}
	return s
}

// discs draws the numbers that lie there, each with its name.
func (c comparing) discs(s *scene.Scene, now compared, when scene.When) {
	for i := range now.laid {
		p := c.pictured(now.strips[i], bothRoles[i], scene.OfNth(i))
		p.runs = cutFiner(p.runs, now.old[i], now.fresh == i+1)
		c.draw(s, c.groups[i], p, when)
		name := renamedLine(c.numbers[i], now.strips[i], bothRoles[i])
		if now.ends != nil && when == scene.Always { // a new name that is the other number would tell
			c.groups[i].name(s, bothRoles[i], name, scene.ShownOnly)
			c.groups[i].name(s, bothRoles[i], telling.Numeral(c.numbers[i], bothRoles[i]), scene.HiddenOnly)
			continue
		}
		c.groups[i].name(s, bothRoles[i], name, when)
	}
}

// drawEnds writes the sign between the discs, outlines what the smaller number lacks
// and says under the larger how much that is.
func (c comparing) drawEnds(s *scene.Scene, ends arithmetic.CompareEnds) {
	c.sign(s, 1, scene.Result, ends.Relation.String(), scene.ShownOnly)
	c.sign(s, 1, scene.Hidden, "?", scene.HiddenOnly)
	y := c.bottom + 22
	if ends.Relation != arithmetic.Equal {
		y += 14
	}
	say := func(x int, runs ...scene.Run) {
		t := telling.OnPaper(scene.Text{X: x, Y: y, Size: scene.Small, Runs: runs})
		s.Add(scene.Item{Shape: t, Role: scene.Result, When: scene.ShownOnly})
	}
	first, second := c.long(ends.First), c.long(ends.Second)
	if ends.Relation == arithmetic.Equal {
		say(scene.PaperW/2, scene.Run{Text: words.DiscSame})
		return
	}
	less, more := 0, 1
	if first.Cmp(second) > 0 {
		less, more = 1, 0
	}
	c.lack(s, c.groups[less], [2]fraction.Fraction{first, second}[less], [2]fraction.Fraction{first, second}[more])
	if ends.SameCount {
		say(c.groups[more].label.X, scene.Run{Text: words.BarMore})
		return
	}
	runs := telling.Numeral(arithmetic.AsMixed(ends.Gap), scene.Result).Runs()
	say(c.groups[more].label.X, append(runs, scene.Run{Text: " " + words.BarMore})...)
}

// long is an amount as one fraction; fits has seen that there is one.
func (c comparing) long(a arithmetic.Strips) fraction.Fraction {
	v, err := a.Value()
	if err != nil {
		panic(err)
	}
	return v
}

// lack outlines on the discs of a group what lies between two amounts.
func (c comparing) lack(s *scene.Scene, g group, from, to fraction.Fraction) {
	for k, spot := range g.spots {
		den := from.Den() * to.Den()
		first := int64(k) * den
		a := max(from.Num()*to.Den(), first) - first
		b := min(to.Num()*from.Den(), first+den) - first
		if a < b {
			s.Add(scene.Item{Shape: c.shape(spot, a, b-a, den), Role: scene.Result, Finish: scene.Bold, When: scene.ShownOnly})
		}
	}
}
