package area

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

// plan says where the squares of one lesson lie. Every square is one whole, as wide
// as it is high, and so wide that its columns and its rows are whole units.
//
//	              4/5
//	     /--------------------\
//	    +====+====+====+====+====+
//	  / |xxxx|xxxx|xxxx|xxxx|////|
//	2 | +----+----+----+----+----+
//	- | |xxxx|xxxx|xxxx|xxxx|////|   8 parts, and 15 make 1 whole
//	3 \ +----+----+----+----+----+
//	    |\\\\|\\\\|\\\\|\\\\|    |
//	    +====+====+====+====+====+
type plan struct {
	working      arithmetic.Working
	down, across arithmetic.AreaSide
	lay          arithmetic.LayRow
	cut          *arithmetic.CutRows
	take         *arithmetic.TakeRows
	count        *arithmetic.CountSmall
	split        *arithmetic.SplitArea
	add          *arithmetic.AddAreas
	named        *arithmetic.NameArea

	x, y, unit int // the corner of the first square, and the side of every square
	right      int // room for the names of narrow parts at the right
	below      int // and of low ones under the squares
}

// lay reads the moves of a working and places its squares.
func lay(w arithmetic.Working) *plan {
	p := &plan{working: w}
	a, _, _ := w.Problem.Operands()
	for _, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.LayRow:
			p.lay, p.across = m, m.Side
		case arithmetic.CutRows:
			p.cut = &m
		case arithmetic.TakeRows:
			p.take, p.down = &m, m.Side
		case arithmetic.CountSmall:
			p.count = &m
		case arithmetic.SplitArea:
			p.split = &m
		case arithmetic.AddAreas:
			p.add = &m
		case arithmetic.NameArea:
			p.named = &m
		}
	}
	if p.take == nil { // a whole number down the side: every row of squares is taken
		p.down = arithmetic.AreaSide{Number: a, Squares: p.lay.Copies, Parts: fraction.Whole(p.lay.Copies)}
	}
	p.place()
	return p
}

const (
	braceGap   = 8   // from the squares to a brace
	braceDepth = 10  // of a brace
	braceAir   = 3   // from its ends to those of what it spans
	labelGap   = 8   // from a brace to its label
	tallLabel  = 74  // a stacked fraction
	flatLabel  = 40  // a number without a bar
	largest    = 384 // the side of a square, where one is enough
	tallest    = 520 // all squares under each other
	beyond     = 84  // room for names beside the squares
	under      = 112 // and under them
)

// place makes the squares as large as the paper allows, in its middle where there is
// room.
func (p *plan) place() {
	left := braceGap + braceDepth + labelGap
	wide := 0
	for _, piece := range p.sidePieces(p.down) {
		wide = max(wide, telling.Width(telling.Numeral(piece, scene.First), scene.Middle, false))
	}
	left += max(wide, telling.Width(telling.Numeral(p.down.Number, scene.First), scene.Middle, false))
	top := braceGap + braceDepth + labelGap + flatLabel
	if p.across.Parts.Den() > 1 && p.across.Number.Form != arithmetic.Decimal {
		top += tallLabel - flatLabel
	}
	p.size(left)
	for range 3 { // room for names outside makes the squares smaller, and more names stand outside
		for _, n := range p.outside() {
			if n.narrow {
				p.right = beyond
			}
			if n.low {
				p.below = under
			}
		}
		p.size(left)
	}
	const paper = scene.PaperW - 2*scene.Margin
	p.y = scene.Margin + top
	p.x = max(scene.Margin+left, min((scene.PaperW-p.wide())/2, scene.PaperW-scene.Margin-p.right-p.wide()))
	if p.right > 0 {
		p.x = scene.Margin + left + (paper-left-p.right-p.wide())/2
	}
}

// outside are the names of the parts where there are several.
func (p *plan) outside() []name {
	if p.split == nil || p.unit == 0 {
		return nil
	}
	return p.names()
}

// size finds the side of the squares beside so much room.
func (p *plan) size(left int) {
	const paper = scene.PaperW - 2*scene.Margin
	high := tallest
	if p.down.Squares == 1 {
		high = largest
	}
	free := min(largest, (paper-left-p.right)/int(p.across.Squares), high/int(p.down.Squares))
	p.unit = free / p.step() * p.step()
}

// step is what the side of a square must be a multiple of.
func (p *plan) step() int {
	n, err := fraction.LCM(p.across.Parts.Den(), p.down.Parts.Den())
	if err != nil {
		return largest + 1
	}
	return int(n)
}

// least is the smallest side with which the parts can still be seen.
func (p *plan) least() int {
	const part = 8
	return part * int(max(p.across.Parts.Den(), p.down.Parts.Den()))
}

func (p *plan) wide() int   { return p.unit * int(p.across.Squares) }
func (p *plan) high() int   { return p.unit * int(p.down.Squares) }
func (p *plan) bottom() int { return p.y + p.high() }

// column and row are the width and height of a small part.
func (p *plan) column() int { return p.unit / int(p.across.Parts.Den()) }
func (p *plan) row() int    { return p.unit / int(p.down.Parts.Den()) }

// rectangle is the area of the product.
func (p *plan) rectangle() scene.Box {
	return scene.Box{X: p.x, Y: p.y, W: p.column() * int(p.across.Parts.Num()), H: p.row() * int(p.down.Parts.Num())}
}

// sidePieces are what a side is split in: its wholes and its part.
func (p *plan) sidePieces(side arithmetic.AreaSide) []arithmetic.Number {
	if !side.Split {
		return []arithmetic.Number{side.Number}
	}
	return []arithmetic.Number{arithmetic.Int(side.Wholes()), arithmetic.Frac(side.Part())}
}

// stretch is a piece of a side on the paper: where it begins, how long it is and in
// how many equal cells it is cut.
type stretch struct {
	from, long, cells int
	whole             bool // the cells are whole squares
}

// stretches are the pieces of a side from a place on, the parts as large as given.
func (p *plan) stretches(side arithmetic.AreaSide, from, part int) []stretch {
	if !side.Split {
		n := int(side.Parts.Num())
		return []stretch{{from, n * part, n, side.Parts.Den() == 1}}
	}
	wholes, parts := int(side.Wholes()), int(side.Part().Num())
	return []stretch{{from, wholes * p.unit, wholes, true}, {from + wholes*p.unit, parts * part, parts, false}}
}
