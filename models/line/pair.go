package line

import (
	"errors"

	"modeler/arithmetic"
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
