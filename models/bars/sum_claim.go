package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// claiming draws a sum and a number on one whole, to see whether they end at the
// same place.
//
//	     |<-------- 1 whole --------->|
//	         1/2            1/3
//	     /------------\ /--------\
//	     +----+----+----+----+----+---+
//	     |////|////|////|\\\\|\\\\|   |
//	     +----+----+----+----+----+---+
//	2    +-----+-----+-----+----+-----+
//	-    |xxxxx|xxxxx|     |    |     |
//	5    +-----+-----+-----+----+-----+
type claiming struct {
	strip
	problem arithmetic.Problem
	claim   arithmetic.SumClaim
	answer  arithmetic.Answer
	laid    [3]arithmetic.Strips // as they were written
	total   arithmetic.Strips    // of the sum, once it is counted
	cuts    []arithmetic.CutParts
}

// claimed is what the picture shows after a move.
type claimed struct {
	strips  [3]arithmetic.Strips
	old     [3]int64 // parts to a whole before the last cut
	fresh   int      // the number that has just been cut, from 1; 0 for none
	laid    int      // how many numbers lie there
	counted bool     // the parts of the sum are counted
	ends    *arithmetic.CompareEnds
}

// claimRoles are the roles of the numbers in the order in which they are written.
var claimRoles = [3]scene.Role{scene.First, scene.Second, scene.Result}

func tellSumClaim(w arithmetic.Working) telling.Telling {
	c := claiming{problem: w.Problem, answer: w.Answer}
	c.claim, _ = arithmetic.OneSum(w.Problem)
	den, wholes, _, _ := extent(w)
	c.strip = layStrip(den, wholes, besideRoom(c.name(c.claim.Alone())))
	var t telling.Telling
	var now claimed
	for _, move := range w.Moves {
		now.fresh = 0
		step := c.tell(move, &now)
		step.Scene = c.picture(now, false)
		t.Steps = append(t.Steps, step)
	}
	now.fresh = 0
	t.Whole = c.picture(now, true)
	asked := telling.Join(c.statement("?"))
	if w.Problem.Kind == arithmetic.Claim {
		asked = telling.Join(c.statement(w.Problem.Rel.String()), telling.Unknown())
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, c.chain())
	t.Why = words.BarSumClaimWhy(w.Problem, c.cuts, c.total, *now.ends)
	t.Pieces = stripPieces(c.laid[:]...)
	return t
}

// tell makes a move and tells it, all but its picture.
func (c *claiming) tell(move arithmetic.Move, now *claimed) telling.Step {
	switch m := move.(type) {
	case arithmetic.LayStrips:
		c.laid[m.Nth], now.strips[m.Nth], now.laid = m.Strips, m.Strips, now.laid+1
		hands := words.BarLay(claimRoles[m.Nth], m.Number, m.Strips, m.Nth == c.claim.Alone())
		if _, second := c.claim.Addends(); m.Nth == second {
			hands = append(hands, words.BarEndToEnd()...)
		}
		return telling.Step{
			Title: words.BarLayTitle(m.Number), Hands: hands, Ask: words.BarAskLay(m.Strips),
			Symbols: notation.Lines(c.name(m.Nth)),
		}
	case arithmetic.CutParts:
		c.cuts = append(c.cuts, m)
		now.strips[m.Nth], now.old[m.Nth], now.fresh = m.To, m.From.Part.Den(), m.Nth+1
		return telling.Step{
			Title: words.BarCutTitle(m), Hands: words.BarCut(claimRoles[m.Nth], m, true), Ask: words.BarAskCut(m),
			Symbols: notation.Lines(telling.CutStrips(m, claimRoles[m.Nth])),
		}
	case arithmetic.CountParts:
		c.total, now.counted = m.Total, true
		return telling.Step{
			Title: words.BarCountTitle(false), Hands: words.BarCountSum(m), Ask: words.BarAskCount(m, false),
			Symbols: notation.Lines(telling.Join(c.cutSum(), "=", telling.Strips(m.Total, scene.Ink))),
		}
	case arithmetic.CompareEnds:
		now.ends = &m
		return telling.Step{
			Title: words.BarCompareTitle, Hands: words.BarCompareSum(c.problem, m), Ask: words.BarAskCompare(),
			Symbols: notation.Lines(c.chain()),
		}
	}
	panic("bars: not a move of a claim about a sum")
}

// name is a number of the problem in its role.
func (c *claiming) name(nth int) notation.Line {
	return telling.Numeral(c.claim.Numbers[nth], claimRoles[nth])
}

func (c *claiming) sum() notation.Line {
	i, j := c.claim.Addends()
	return telling.Join(c.name(i), "+", c.name(j))
}

// cutSum is the sum in the parts that it is cut in.
func (c *claiming) cutSum() notation.Line {
	i, j := c.claim.Addends()
	now := c.laid
	for _, cut := range c.cuts {
		now[cut.Nth] = cut.To
	}
	return telling.Join(telling.Strips(now[i], claimRoles[i]), "+", telling.Strips(now[j], claimRoles[j]))
}

// statement is both sides with a sign between them.
func (c *claiming) statement(sign string) notation.Line {
	if c.claim.Left {
		return telling.Join(c.sum(), sign, c.name(c.claim.Alone()))
	}
	return telling.Join(c.name(c.claim.Alone()), sign, c.sum())
}

// chain is what is true of the two sides, by way of the parts of the sum where
// there is room: 1/2 + 1/4 = 2/4 + 1/4 = 3/4. Of an equality that is not true it
// says what the sum is: 1/2 + 1/3 = 5/6 ≠ 2/5.
func (c *claiming) chain() notation.Line {
	relation := c.answer.Relation.String()
	if c.problem.Rel == arithmetic.Equal && c.answer.Relation != arithmetic.Equal {
		total := telling.Strips(c.total, scene.Ink)
		if c.claim.Left {
			return telling.Join(c.sum(), "=", total, "≠", c.name(2))
		}
		return telling.Join(c.name(0), "≠", total, "=", c.sum())
	}
	if c.cutSum().Text() == c.sum().Text() {
		return c.statement(relation)
	}
	line := telling.Join(c.sum(), "=", c.cutSum(), relation, c.name(c.claim.Alone()))
	if !c.claim.Left {
		line = telling.Join(c.name(c.claim.Alone()), relation, c.cutSum(), "=", c.sum())
	}
	if !telling.EquationFits(line) {
		return c.statement(relation)
	}
	return line
}

// Heights of the picture, from the top of the paper.
const (
	claimTop    = scene.Margin + 144 // of the sum: under the mark of the whole and the labels
	claimTall   = 72
	claimSecond = claimTop + claimTall + 48
	claimBottom = claimSecond + claimTall
)

// picture draws both rows after a move. The whole story, with its answer hidden,
// shows the numbers as they were written.
func (c *claiming) picture(now claimed, story bool) *scene.Scene {
	below := 58
	if c.answer.Relation != arithmetic.Equal {
		below = 96
	}
	total := (*arithmetic.Strips)(nil)
	if now.counted {
		total = &c.total
	}
	s := &scene.Scene{
		W: scene.PaperW, H: claimBottom + below + scene.Margin,
		Title: words.BarVerdict(c.problem, c.answer),
		Desc:  words.BarSumClaimDesc(c.problem, c.laid, now.laid, c.cuts, total, now.ends),
	}
	c.wholeMark(s)
	if !story {
		c.rows(s, now, scene.Always)
	} else {
		c.rows(s, claimed{strips: c.laid, laid: 3}, scene.HiddenOnly)
		c.rows(s, now, scene.ShownOnly)
	}
	if now.ends != nil {
		i, j := c.claim.Addends()
		upper, lower := c.long(c.laid[i])+c.long(c.laid[j]), c.long(c.laid[c.claim.Alone()])
		c.drawEnds(s, [2]int{claimTop, claimSecond}, claimTall, [2]int64{upper, lower}, false, *now.ends)
	}
	return s
}

// rows draws the sum, end to end, and the number under it.
func (c *claiming) rows(s *scene.Scene, now claimed, when scene.When) {
	i, j := c.claim.Addends()
	b := bar{y: claimTop, h: claimTall}
	var marks []mark
	from := int64(0)
	for n, nth := range []int{i, j} {
		if n >= now.laid {
			break
		}
		runs := c.runs(from, now.strips[nth], claimRoles[nth], scene.OfNth(nth))
		b.runs = append(b.runs, cutFiner(runs, now.old[nth], now.fresh == nth+1)...)
		to := from + c.long(now.strips[nth])
		marks = append(marks, mark{from, to, c.name(nth), claimRoles[nth], when})
		from = to
	}
	if den := now.strips[i].Part.Den(); now.laid == 1 || den == now.strips[j].Part.Den() {
		b = c.cutAs(b, den)
	}
	c.draw(s, b, when)
	c.braces(s, claimTop, true, marks)
	if k := c.claim.Alone(); now.laid == 3 {
		b := c.shaded(claimSecond, claimTall, now.strips[k], claimRoles[k], scene.OfNth(k))
		b.runs = cutFiner(b.runs, now.old[k], now.fresh == k+1)
		c.draw(s, b, when)
		c.beside(s, claimSecond+claimTall/2, claimRoles[k], c.name(k), when)
	}
}
