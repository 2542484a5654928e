package bars

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// copiesClaim draws two sides of a claim as copies of fractions from one left edge.
//
//	         |<----- 1 whole ----->|<----- 1 whole ----->|
//	             2/5       2/5       2/5
//	         /-------\ /-------\ /-------\
//	3 × 2/5  |///|///|///|///|///|///|   |   |   |   |
//	          1/5 1/5 1/5 1/5 1/5 1/5
//	6 × 1/5  |\\\|\\\|\\\|\\\|\\\|\\\|   |   |   |   |
//	                                 both end here
type copiesClaim struct {
	strip
	working arithmetic.Working
	sides   [2]arithmetic.LayCopies
}

// Heights of the picture, from the top of the paper.
const (
	sidesTop   = copiesTop
	sidesTall  = 64
	sidesGap   = 48  // between the bars
	sidesNamed = 122 // and where the lower copies have names over them
)

// tops are the upper edges of the two bars.
func (c copiesClaim) tops() [2]int {
	second := sidesTop + sidesTall + sidesGap
	if !c.sides[1].Alone {
		second = sidesTop + sidesTall + sidesNamed
	}
	if c.sides[0].Alone {
		return [2]int{comparedTop, second - sidesTop + comparedTop}
	}
	return [2]int{sidesTop, second}
}

func tellCopiesClaim(w arithmetic.Working) telling.Telling {
	c := copiesClaim{working: w, sides: [2]arithmetic.LayCopies{w.Moves[0].(arithmetic.LayCopies), w.Moves[1].(arithmetic.LayCopies)}}
	den, wholes, _, _ := extent(w)
	c.strip = layStrip(den, wholes, besideRoom(c.name(0), c.name(1)))
	var t telling.Telling
	var ends *arithmetic.CompareEnds
	laid := 0
	for _, move := range w.Moves {
		var step telling.Step
		switch m := move.(type) {
		case arithmetic.LayCopies:
			laid++
			line := c.name(m.Nth)
			if !m.Alone {
				line = telling.Join(line, "=", telling.Strips(m.Total, bothRoles[m.Nth]))
			}
			step = telling.Step{Title: words.BarCopiesLayTitle(m), Hands: words.BarCopiesLay(m), Ask: words.BarAskCopiesLay(m), Symbols: notation.Lines(line)}
		case arithmetic.CompareEnds:
			ends = &m
			step = telling.Step{Title: words.BarCompareTitle, Hands: words.BarCopiesCompare(w.Problem, m), Ask: words.BarAskCompare(), Symbols: notation.Lines(c.statement(m.Relation))}
			t.Why = words.BarCopiesWhy(w.Problem, c.sides, m)
		}
		step.Scene = c.picture(laid, ends)
		t.Steps = append(t.Steps, step)
	}
	t.Whole = c.picture(laid, ends)
	asked := telling.Join(c.name(0), telling.Unknown(), c.name(1))
	if w.Problem.Kind == arithmetic.Claim {
		asked = telling.Join(c.statement(w.Problem.Rel), telling.Unknown())
	}
	telling.Equation(t.Whole, t.Whole.H-scene.Margin, asked, c.statement(ends.Relation))
	t.Pieces = stripPieces(c.sides[0].Total, c.sides[1].Total)
	return t
}

// name is one side as it is written, in its role.
func (c copiesClaim) name(nth int) notation.Line {
	m, role := c.sides[nth], bothRoles[nth]
	if m.Alone {
		return telling.Numeral(m.Each, role)
	}
	return telling.Join(telling.Count(m.Count, role), "×", telling.Numeral(m.Each, role))
}

func (c copiesClaim) statement(r arithmetic.Relation) notation.Line {
	return telling.Join(c.name(0), notation.S(r.String()), c.name(1))
}

// picture draws the sides that lie there, and what their ends show.
func (c copiesClaim) picture(laid int, ends *arithmetic.CompareEnds) *scene.Scene {
	below := 58 // room under the bars for what the ends show: a few words
	if c.working.Answer.Relation != arithmetic.Equal {
		below = 96 // a brace and a fraction
	}
	tops := c.tops()
	s := &scene.Scene{
		W: scene.PaperW, H: tops[1] + sidesTall + below + scene.Margin,
		Title: words.BarVerdict(c.working.Problem, c.working.Answer),
		Desc:  words.BarCopiesClaimDesc(c.working.Problem, c.sides[:laid], ends),
	}
	c.wholeMark(s)
	for i, y := range tops[:laid] {
		c.side(s, i, y)
	}
	if ends != nil {
		c.drawEnds(s, tops, sidesTall, [2]int64{c.long(ends.First), c.long(ends.Second)}, !c.sides[1].Alone, *ends)
	}
	return s
}

// side draws one side: its copies with their names, and a mark where one ends and the
// next begins.
func (c copiesClaim) side(s *scene.Scene, nth, y int) {
	const reach = 6
	m, role := c.sides[nth], bothRoles[nth]
	c.draw(s, c.shaded(y, sidesTall, m.Total, role, [2]scene.Of{scene.OfLeft, scene.OfRight}[nth]), scene.Always)
	c.beside(s, y+sidesTall/2, role, c.name(nth), scene.Always)
	if m.Alone {
		return
	}
	each := c.long(arithmetic.StripsOf(m.Each))
	name := telling.Numeral(m.Each, role)
	tight := telling.Width(name, scene.Middle, false)+14 > c.unit*int(each)
	var marks []mark
	for i := range m.Count {
		k := mark{i * each, (i + 1) * each, name, role, scene.Always}
		if tight && i > 0 {
			k.line = nil
		}
		marks = append(marks, k)
		if x := c.at((i + 1) * each); i < m.Count-1 {
			s.Add(scene.Item{Shape: scene.Line{X1: x, Y1: y - reach, X2: x, Y2: y + sidesTall + reach}, Role: role, Finish: scene.Bold})
		}
	}
	c.braces(s, y, true, marks)
}
