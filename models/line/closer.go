package line

import (
	"errors"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// planCloser lays out two numbers on one line, and how far each is from a whole
// number: the first above the line, the second below it.
//
//	            3/4 |--| 1/4 away
//	   [----|-----|-----]- - -
//	---+----------------------+-->
//	   [--|--|--|--]- - - - - -
//	   0         0.6|---------| 0.4 away
func planCloser(p arithmetic.Problem) (*plan, error) {
	w, t, err := arithmetic.CloserOnLine(p, lineRoom)
	if err != nil || !drawable(t) {
		return nil, errors.New(words.LineFine)
	}
	look := w.Moves[len(w.Moves)-1].(arithmetic.LookAtDistances)
	a, b := look.Numbers[0], look.Numbers[1]
	pl := &plan{problem: p, working: w}
	k := pl.layPoints(t, a, b, look.To)
	if pl.uneven || k.broken {
		return nil, errors.New(words.LineClose)
	}
	draw := w.Moves[0].(arithmetic.DrawStretch)
	k.mark = 0
	pl.sketches = []*sketch{k}
	both := telling.Join(telling.Numeral(a, scene.First), notation.W(words.LineOr), telling.Numeral(b, scene.Second))
	pl.step(words.LineDraw(draw, words.LineGuessCloser(p), k.broken), both)
	sides := [2]pairSide{{scene.First, scene.OfFirst, -1}, {scene.Second, scene.OfSecond, 1}}
	for _, m := range w.Moves[1:] {
		step := len(pl.steps)
		switch m := m.(type) {
		case arithmetic.CutStretch:
			k.cut(t, cut{every: t.Scale.Count(m.Each), move: m, step: step, side: cutSideOf(w, m, sides), named: true})
			pl.step(words.LineCut(m, draw), partsLine(m))
		case arithmetic.MarkOnLine:
			k.band(m, sides[m.Nth], step)
			pl.step(words.LinePairMark(m), countLine(m, sides[m.Nth].role))
		case arithmetic.LookAtDistances:
			pl.distances(k, m, sides, step)
		}
	}
	pl.asked = telling.Join(notation.W(words.LineCloserTo(p)), both, notation.S("?"))
	pl.title = words.LineCloserTitle(p, w.Answer)
	pl.why = words.LineCloserWhy(p, look)
	pl.desc = words.LineCloserDesc(p, w, look)
	k.ends(draw)
	k.liftEnds()
	k.nameWholes()
	if !k.arrange() {
		return nil, errors.New(words.LineCrowded)
	}
	return pl, nil
}

// distances marks how far both numbers are from the whole number.
func (pl *plan) distances(k *sketch, m arithmetic.LookAtDistances, sides [2]pairSide, step int) {
	goal := k.scale.Count(m.To)
	var lines []notation.Line
	for i, n := range m.Numbers {
		at := k.scale.Count(n)
		if at == goal {
			continue
		}
		k.gaps = append(k.gaps, gap{from: min(at, goal), to: max(at, goal), size: m.Away[i], side: sides[i].side, step: step,
			words: words.LineAwayOnly, covered: at > goal})
		from, to := telling.Numeral(m.To, scene.Ink), telling.Numeral(n, sides[i].role)
		if at > goal {
			from, to = to, from
		}
		lines = append(lines, telling.Join(from, "−", to, "=", telling.Numeral(m.Away[i], scene.Result)))
	}
	switch m.Relation {
	case arithmetic.Less:
		pl.answered = telling.Join(telling.Numeral(m.Numbers[0], scene.First), notation.W(words.LineIsCloser(pl.problem)))
	case arithmetic.Greater:
		pl.answered = telling.Join(telling.Numeral(m.Numbers[1], scene.Second), notation.W(words.LineIsCloser(pl.problem)))
	default:
		pl.answered = telling.Join(notation.W(words.LineBothFar(pl.problem)))
	}
	pl.step(words.LineLookCloser(pl.problem, m), append(lines, pl.answered)...)
}
