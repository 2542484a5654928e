package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// comparing draws two numbers on one whole.
//
//	     |<-------- 1 whole --------->|
//	3    +------+------+------+-------+
//	-    |//////|//////|//////|       |
//	4    +------+------+------|-------+
//	6    +---+---+---+---+---+|---+---+
//	-    |\\\|\\\|\\\|\\\|\\\|\\\|    |
//	8    +---+---+---+---+---+|---+---+
//	                   both end here
type comparing struct {
	strip
	problem arithmetic.Problem
	numbers [2]arithmetic.Number
	answer  arithmetic.Answer
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
	c := comparing{problem: w.Problem, answer: w.Answer}
	c.numbers[0], c.numbers[1], _ = w.Problem.Operands()
	den, wholes, _, _ := extent(w)
	c.strip = layStrip(den, wholes, besideRoom(telling.Numeral(c.numbers[0], scene.First), telling.Numeral(c.numbers[1], scene.Second)))

	var t telling.Telling
	var now compared
	for _, move := range w.Moves {
		now.fresh = 0
		var step telling.Step
		switch m := move.(type) {
		case arithmetic.LayStrips:
			c.laid[m.Nth], now.strips[m.Nth], now.laid = m.Strips, m.Strips, m.Nth+1
			step = telling.Step{
				Title:   words.BarLayTitle(m.Number),
				Hands:   words.BarLay(bothRoles[m.Nth], m.Number, m.Strips, m.Nth > 0),
				Ask:     words.BarAskLay(m.Strips),
				Symbols: notation.Lines(telling.Numeral(m.Number, bothRoles[m.Nth])),
			}
		case arithmetic.CutParts:
			c.cuts = append(c.cuts, m)
			now.old[m.Nth], now.strips[m.Nth], now.fresh = m.From.Part.Den(), m.To, m.Nth+1
			step = telling.Step{
				Title:   words.BarCutTitle(m),
				Hands:   words.BarCut(bothRoles[m.Nth], m, true),
				Ask:     words.BarAskCut(m),
				Symbols: notation.Lines(telling.CutStrips(m, bothRoles[m.Nth])),
			}
		case arithmetic.CompareEnds:
			now.ends = &m
			step = telling.Step{
				Title:   words.BarCompareTitle,
				Hands:   words.BarCompare(w.Problem, m),
				Ask:     words.BarAskCompare(),
				Symbols: notation.Lines(telling.ComparedStrips(c.problem, m, c.cuts)),
			}
			if m.Instead.Left != nil {
				step.Symbols.Lines = append(step.Symbols.Lines, statement(m.Instead))
			}
			t.Why = words.BarWhy(w.Problem, m, c.cuts)
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
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, telling.ComparedStrips(c.problem, *now.ends, c.cuts))
	t.Pieces = stripPieces(c.laid[:]...)
	return t
}

// statement is a claim about two numbers, in their roles.
func statement(p arithmetic.Problem) notation.Line {
	a, b, _ := p.Operands()
	return telling.Join(telling.Numeral(a, scene.First), notation.S(p.Rel.String()), telling.Numeral(b, scene.Second))
}

// Heights of the picture, from the top of the paper.
const (
	comparedTop    = scene.Margin + 48 // of the first bar
	comparedTall   = 72                // of a bar
	comparedGap    = 48                // between the bars
	comparedSecond = comparedTop + comparedTall + comparedGap
	comparedBottom = comparedSecond + comparedTall
)

// picture draws the two bars after a move. The whole story, with its answer
// hidden, shows the numbers as they were written.
func (c comparing) picture(now compared, story bool) *scene.Scene {
	below := 58 // room under the bars for what the ends show: a few words
	if c.answer.Relation != arithmetic.Equal {
		below = 96 // a brace and a fraction
	}
	s := &scene.Scene{
		W: scene.PaperW, H: comparedBottom + below + scene.Margin,
		Title: words.BarVerdict(c.problem, c.answer),
		Desc:  words.BarComparedDesc(c.problem, c.laid[:now.laid], c.cuts, now.ends),
	}
	c.wholeMark(s)
	if !story {
		c.bars(s, now, scene.Always)
	} else {
		c.bars(s, compared{strips: c.laid, laid: 2}, scene.HiddenOnly)
		c.bars(s, now, scene.ShownOnly)
	}
	if now.ends != nil {
		c.drawEnds(s, [2]int{comparedTop, comparedSecond}, comparedTall, [2]int64{c.long(now.ends.First), c.long(now.ends.Second)}, false, *now.ends)
	}
	return s
}

// bars draws the numbers that lie there, each beside its bar.
func (c comparing) bars(s *scene.Scene, now compared, when scene.When) {
	for i, y := range [2]int{comparedTop, comparedSecond} {
		if i >= now.laid {
			continue
		}
		b := c.shaded(y, comparedTall, now.strips[i], bothRoles[i], scene.OfNth(i))
		b.runs = cutFiner(b.runs, now.old[i], now.fresh == i+1)
		c.draw(s, b, when)
		c.beside(s, y+comparedTall/2, bothRoles[i], telling.Numeral(c.numbers[i], bothRoles[i]), when)
	}
}

// drawEnds joins equal ends of two bars by one line, or measures the gap between
// two. tops are the heights of the bars, tall how high each is, and long how many
// units. named says that names stand over the lower bar: no line runs through them.
func (s strip) drawEnds(sc *scene.Scene, tops [2]int, tall int, long [2]int64, named bool, ends arithmetic.CompareEnds) {
	const reach = 12 // of the line beyond the bars
	bottom := tops[1] + tall
	brace := bottom + reach
	add := func(finish scene.Finish, shape scene.Shape) {
		sc.Add(scene.Item{Shape: shape, Role: scene.Result, Finish: finish, When: scene.ShownOnly})
	}
	end := [2]int{s.at(long[0]), s.at(long[1])}
	lo, hi := min(end[0], end[1]), max(end[0], end[1])
	if lo == hi {
		if named {
			add(scene.Bold, scene.Line{X1: lo, Y1: tops[0] - reach, X2: lo, Y2: tops[0] + tall + reach})
			add(scene.Bold, scene.Line{X1: lo, Y1: tops[1] - reach, X2: lo, Y2: bottom + reach})
		} else {
			add(scene.Bold, scene.Line{X1: lo, Y1: tops[0] - reach, X2: lo, Y2: bottom + reach})
		}
		add(scene.Plain, telling.OnPaper(scene.Words(lo, brace+22, scene.Small, words.BarBothEnd)))
		return
	}
	shorter := tops[0]
	if end[1] < end[0] {
		shorter = tops[1]
	}
	add(scene.Dashed, scene.Rect{X: lo, Y: shorter, W: hi - lo, H: tall})
	from := tops[0] + tall
	if named {
		add(scene.Dotted, scene.Line{X1: end[0], Y1: from, X2: end[0], Y2: from + reach})
		from = tops[1] - reach
	}
	add(scene.Dotted, scene.Line{X1: end[0], Y1: from, X2: end[0], Y2: brace})
	add(scene.Dotted, scene.Line{X1: end[1], Y1: bottom, X2: end[1], Y2: brace})
	add(scene.Plain, scene.Polyline{{X: lo, Y: brace}, {X: lo, Y: brace + 10}, {X: hi, Y: brace + 10}, {X: hi, Y: brace}})
	label := scene.Words((lo+hi)/2, brace+46, scene.Small, words.BarMore)
	if !ends.SameCount {
		label.Runs = append(telling.Numeral(arithmetic.AsMixed(ends.Gap), scene.Result).Runs(), scene.Run{Text: " " + words.BarMore})
	}
	add(scene.Plain, telling.OnPaper(label))
}
