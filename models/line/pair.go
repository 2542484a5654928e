package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planPair lays out two numbers to compare on one line: the parts and the name of
// the first stand above it, those of the second below. Equal numbers are one
// point with two names.
//
//	        1/4   2/4   3/4
//	   [----|-----|-----]          the first, in its parts
//	---+--+--+--+--+--+--+--+---+-->
//	   [--|--|--|--|--|--]         the second, in its parts
//	   0                6/8     1
func planPair(p arithmetic.Problem) (*plan, error) {
	a, b, _ := p.Operands()
	w, t, err := arithmetic.PlaceOnLine(p, lineRoom)
	if err != nil || !drawable(t) {
		return nil, errors.New(words.LineFine)
	}
	pl := &plan{problem: p, working: w}
	k := pl.layPoints(t, a, b)
	if pl.uneven && fractional(t.Scale) {
		return nil, errors.New(words.LineClose)
	}
	look := w.Moves[len(w.Moves)-1].(arithmetic.LookAtPoints)
	draw := w.Moves[0].(arithmetic.DrawStretch)
	k.mark = 0
	pl.sketches = []*sketch{k}
	pl.step(words.LineDraw(draw, words.LineGuess(a, b), k.broken), comparedLine(a, b, notation.S("?")))
	sides := [2]pairSide{{scene.First, scene.OfFirst, -1}, {scene.Second, scene.OfSecond, 1}}
	for _, m := range w.Moves[1:] {
		step := len(pl.steps)
		switch m := m.(type) {
		case arithmetic.CutStretch:
			if pl.uneven {
				continue // what is not to scale has no equal parts
			}
			k.cut(t, cut{every: t.Scale.Count(m.Each), move: m, step: step, side: cutSideOf(w, m, sides), named: true})
			pl.step(words.LineCut(m, draw), partsLine(m))
		case arithmetic.MarkOnLine:
			k.band(m, sides[m.Nth], step)
			pl.step(words.LinePairMark(m), countLine(m, sides[m.Nth].role))
		case arithmetic.LookAtPoints:
			k.meet(m, sides, step)
			pl.step(words.LineLook(p, m), comparedLine(a, b, notation.S(m.Relation.String())))
		}
	}
	pl.claims(look, telling.Numeral(a, scene.First), telling.Numeral(b, scene.Second))
	pl.desc = words.LinePairDesc(p, w, look)
	k.ends(draw)
	k.liftEnds()
	k.nameWholes()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// claims writes the foot, the title and the reason of a claim or a comparison.
func (pl *plan) claims(look arithmetic.LookAtPoints, left, right notation.Line) {
	sign := notation.S(look.Relation.String())
	pl.answered = telling.Join(left, sign, right)
	pl.asked = telling.Join(left, notation.N("?", scene.Hidden), right)
	if pl.problem.Kind == arithmetic.Claim {
		pl.asked = telling.Join(notation.W(words.LineIs), left, notation.S(pl.problem.Rel.String()), right, notation.S("?"))
	}
	pl.title = words.LineClaimTitle(pl.problem, pl.working.Answer)
	pl.why = words.LineWhy(pl.problem, look)
}

// pairSide is where a number of a pair is drawn: -1 above the line, 1 below.
type pairSide struct {
	role scene.Role
	of   scene.Of
	side int
}

func comparedLine(a, b arithmetic.Number, sign notation.Term) notation.Line {
	return telling.Join(telling.Numeral(a, scene.First), sign, telling.Numeral(b, scene.Second))
}

// cutSideOf is where the marks of a cut stand: on the side of the number that was
// cut for, or on both when both are counted in these parts.
func cutSideOf(w arithmetic.Working, cut arithmetic.CutStretch, sides [2]pairSide) int {
	shared := 0
	for _, m := range w.Moves {
		if m, ok := m.(arithmetic.MarkOnLine); ok && m.Number.Value.Den() == cut.Each.Value.Den() {
			shared++
		}
	}
	if shared > 1 {
		return 0
	}
	return sides[cut.Nth].side
}

// band is a length from 0 to a number beside the line, in the parts that were
// counted.
type band struct {
	pairSide
	from   int64
	ends   []int64 // where each part ends
	worths []fraction.Fraction
	step   int
}

// cut is a cutting of the line: marks every so many units, on one side of it
// or, when side is 0, on both.
type cut struct {
	every  int64
	move   arithmetic.CutStretch
	step   int
	side   int
	until  int   // the marks go in this step; 0 for never
	named  bool  // its marks are numbered where there is room
	strong int64 // among very many marks, every so many units a longer one; 0 for none
}

// cut adds a cutting. Many fine marks are told apart by longer ones among them, as
// the tenths are among hundredths.
func (k *sketch) cut(t arithmetic.Stretch, c cut) {
	const many = 60
	if (k.hi-k.lo)/c.every > many {
		c.strong = t.Mark
		if t.Mark <= c.every || t.Mark%c.every != 0 {
			c.strong = t.Long
		}
	}
	k.cuts = append(k.cuts, c)
}

const (
	bandHigh = 20 // a band beside the line
	cutSide  = 26 // a mark on one side of the line
)

// band adds a number of a pair: its length in its parts where the line begins at
// 0, and its point with its name.
func (k *sketch) band(m arithmetic.MarkOnLine, s pairSide, step int) {
	end := k.scale.Count(m.Number)
	point := stop{at: end, label: runsOf("", m.Number), role: s.role, of: s.of, step: step, size: scene.Middle, side: s.side, dot: true}
	if k.broken || k.step == 0 || end == 0 {
		point.worth = m.Number.Value
		k.stops = append(k.stops, point)
		return
	}
	b := band{pairSide: s, from: k.scale.Count(m.From), step: step}
	at := b.from
	for _, c := range m.Counts {
		var each int64
		if k.scale.Has(c.Each) {
			each = k.scale.Count(c.Each)
		}
		if k.x(at+each)-k.x(at) < leastHop {
			// Parts that cannot be seen are not drawn: it is one length.
			b.ends, b.worths = []int64{end}, []fraction.Fraction{m.Number.Value}
			break
		}
		for range c.Times {
			at += each
			b.ends, b.worths = append(b.ends, at), append(b.worths, c.Each.Value)
		}
	}
	k.bands, k.stops = append(k.bands, b), append(k.stops, point)
}

// drawBand draws a length part by part.
func (k *sketch) drawBand(st *story, b band, axis int) {
	y := axis
	if b.side < 0 {
		y = axis - bandHigh
	}
	at := b.from
	for i, end := range b.ends {
		st.add(b.step, 0, scene.Item{Shape: scene.Rect{X: k.x(at), Y: y, W: k.x(end) - k.x(at), H: bandHigh},
			Role: b.role, Of: b.of, Worth: b.worths[i]})
		at = end
	}
}

// A gap has a row of its own beyond the names, where a brace says how long it is.
const (
	braceAway = 10 // from the names to the brace
	braceHigh = 10
	braceText = 6 // from the brace to its text
)

// braceLine is the text of a brace: 0.05 more.
func braceLine(g gap) scene.Text {
	runs := runsOf("", g.size)
	if last := &runs[len(runs)-1]; last.Den == "" {
		last.Text += " " + words.LineMore
	} else {
		runs = append(runs, scene.Run{Text: " " + words.LineMore})
	}
	return scene.Text{Size: scene.Small, Runs: runs}
}

// braceRooms are how much room the braces need above and below.
func (k *sketch) braceRooms() (up, down int) {
	for _, g := range k.gaps {
		room := braceAway + braceHigh + braceText + braceLine(g).Box().H
		if g.side < 0 {
			up = room
		} else {
			down = room
		}
	}
	return up, down
}

// drawBrace says how long a gap is, on the far side of the names that end at
// height y.
//
//	0.25     0.3
//	  |_______|
//	  0.05 more
func (k *sketch) drawBrace(st *story, g gap, y, down int) {
	near, far := y+down*braceAway, y+down*(braceAway+braceHigh)
	x1, x2 := k.x(g.from), k.x(g.to)
	brace := scene.Polyline{{X: x1, Y: near}, {X: x1, Y: far}, {X: x2, Y: far}, {X: x2, Y: near}}
	text := braceLine(g)
	b := text.Box()
	text.X, text.Y = (x1+x2)/2, far+braceText-b.Y
	if down < 0 {
		text.Y = far - braceText - b.Bottom()
	}
	for _, shape := range []scene.Shape{brace, telling.OnPaper(text)} {
		st.add(g.step, 0, scene.Item{Shape: shape, Role: scene.Result, When: scene.ShownOnly})
	}
}

// drawGap draws the length that one side lacks as a dashed outline.
func (k *sketch) drawGap(st *story, g gap, axis int) {
	if g.covered {
		return
	}
	y, high := axis-7, 14
	switch {
	case g.side < 0:
		y, high = axis-bandHigh, bandHigh
	case g.side > 0:
		y, high = axis, bandHigh
	}
	st.add(g.step, 0, scene.Item{Shape: scene.Rect{X: k.x(g.from), Y: y, W: k.x(g.to) - k.x(g.from), H: high},
		Role: scene.Result, Finish: scene.Dashed, When: scene.ShownOnly})
}

// drawCut draws the marks of a cutting.
func (k *sketch) drawCut(st *story, c cut, axis int) {
	up, down := tickUp-2, tickDown-2
	if len(k.bands) > 0 {
		up, down = cutSide, cutSide
	}
	switch {
	case c.side < 0:
		down = 0
	case c.side > 0:
		up = 0
	}
	if c.strong > 0 {
		st.add(c.step, c.until, k.comb(c.strong, axis, up, down)...)
		up, down = up/2, down/2
	}
	st.add(c.step, c.until, k.comb(c.every, axis, up, down)...)
}

// meet shows how two points stand to each other: a stroke through the one point
// of both, or the length that the first to end lacks.
func (k *sketch) meet(m arithmetic.LookAtPoints, sides [2]pairSide, step int) {
	a, b := k.scale.Count(m.First), k.scale.Count(m.Second)
	if a == b {
		k.stroke, k.strokeStep = k.x(a), step
		return
	}
	side := sides[0].side
	if b < a {
		side = sides[1].side
	}
	if len(k.bands) == 0 {
		side = 0
	}
	k.gaps = append(k.gaps, gap{from: min(a, b), to: max(a, b), size: m.Gap, side: side, step: step})
}
