package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// An array on the paper:
//
//	              5            3          names of the columns
//	          ┌───────┐    ┌─────┐
//	      ┌  (o o o o o │ o o o)        a band for each row, so that rows
//	 7    │                              read as rows
//	rows  │  (o o o o o │ o o o)
//	      └  (o o o o o │ o o o)        │ is the cut between two parts
//	          7 × 5 = 35  7 × 3 = 21     what the parts come to
//
// Where there are too many to count, the same rectangle is squared paper, then
// an area to scale, then a sketch that says that it is not to scale.

// look is how the things in an array are drawn, from countable to sketched.
type look uint8

const (
	inCounters look = iota // a counter for each
	inCrates               // a tile for each ten, hundred or thousand
	inSquares              // squared paper
	inScale                // an area to scale
	inSketch               // a rectangle not to scale
)

// plot is the place of an array on the paper.
type plot struct {
	look       look
	rows, cols []int64 // the parts of the sides
	parts      []int64 // what the parts come to, row by row
	sum        int64   // what they come to together
	value      int64   // what one counter or crate is worth
	x, w       []int   // left edge and width of every part of the columns
	y, h       []int   // top edge and height of every part of the rows
	outer      bool    // whether columns in parts are named whole too, over their names
	outerRows  bool    // likewise rows
	oneNamed   bool    // only one of the parts of the rows has its number beside it
	down       int     // how much lower than plotTop the array begins
	step, rise int     // of counters and crates: from one to the next along a row, and from row to row
	size       int     // of counters: the diameter; of crates: the height
	across     int     // of crates: the width
}

// room is the room that a plot is given.
type room struct {
	right  int  // kept free for names to the right of the array
	height int  // the most that the array may take
	size   int  // the largest counter or square, largestCounter or less
	plain  bool // no counters: parts on both sides, whose products stand inside
	bare   bool // sides in parts are not named whole
	left   bool // the array stands at the left of its room, not in the middle
}

// largestCounter is how far across a counter is at most: a small array fills the
// paper without looking like another thing.
const largestCounter = 64

const (
	plotTop   = scene.Margin + 72 // room for the names of the columns
	toBrace   = 10                // from the array to the bracket of a side
	braceDeep = 10                // depth of a bracket
	toName    = 8                 // from a bracket to its name
	outerTall = 62                // from a bracket over parts to the one over all of them
	partGap   = 14                // between two parts of counters
	rowGap    = 8                 // between the bands of two rows
	bandEdge  = 8                 // a band is wider than its row by this at each end
)

// choose takes the look that shows most and still fits, and places the array.
// The sides must not be 0.
func (p *plot) choose(free room) {
	p.outer, p.outerRows = !free.bare, !free.bare
	left := p.nameRoom()
	avail := scene.PaperW - 2*scene.Margin - left - free.right
	if m, n := sumOf(p.rows), sumOf(p.cols); free.plain && max(m, n) <= 200 && int(n)*leastScale > avail {
		// Rather to scale than with the number of all rows.
		p.outerRows = false
		if narrow := p.nameRoom(); int(n)*leastScale <= avail+left-narrow {
			avail, left = avail+left-narrow, narrow
		} else {
			p.outerRows = true
		}
	}
	m, n := sumOf(p.rows), sumOf(p.cols)
	switch {
	case p.value > 1:
		p.crates(avail, free)
	case !free.plain && m <= 12 && n <= 20 && p.counters(avail, free):
	case m <= 60 && n <= 60 && p.toScale(inSquares, avail, free, 16):
	case m <= 200 && n <= 200 && p.toScale(inScale, avail, free, leastScale):
	default:
		avail += free.right // a sketch has room for all names inside
		if !p.sketch(avail, scene.Middle, plateEdge, free) {
			p.outerRows = false
			avail, left = avail+left-p.nameRoom(), p.nameRoom()
			_ = p.sketch(avail, scene.Middle, plateEdge, free) || p.sketch(avail, scene.Small, smallEdge, free)
		}
	}
	if free.left {
		avail = p.width()
	}
	p.place(scene.Margin + left + (avail-p.width())/2)
}

// leastScale is the least side of one thing in an area to scale.
const leastScale = 5

// rowsName is the longer form of the word under the number of rows.
const rowsName = "rows"

func (p *plot) counters(avail int, free room) bool {
	const (
		least = 18 // the smallest that is easily counted on a phone
		apart = 8  // the least between two counters
		share = 7  // between large counters: one part in so many
	)
	m, n := int(sumOf(p.rows)), int(sumOf(p.cols))
	gaps := partGap * (len(p.cols) - 1)
	pitch := min((avail-gaps-2*bandEdge)/n, free.height/m-rowGap)
	d := min(pitch-apart, pitch-pitch/share, free.size) &^ 1
	if d < least {
		return false
	}
	step := d + max(apart, d/(share-1))
	p.look, p.size, p.step, p.rise = inCounters, d, step, step+rowGap
	p.w, p.h = nil, nil
	p.measure(p.step, p.rise)
	return true
}

func (p *plot) crates(avail int, free room) {
	const high, apart = 46, 10
	wide := scene.Advance(arithmetic.Grouped(p.value), scene.Small, false) + 20
	p.look, p.size = inCrates, high
	p.step = min(wide+apart, avail/int(sumOf(p.cols)))
	p.across = min(wide, p.step-4)
	p.rise = high + apart + rowGap
	p.measure(p.step, p.rise)
}

// toScale makes one thing the same number of units wide and high, at least
// least; it fails when the array would be too large or too thin to see.
func (p *plot) toScale(l look, avail int, free room, least int) bool {
	const most, thin = 40, 12
	m, n := int(sumOf(p.rows)), int(sumOf(p.cols))
	unit := min(avail/n, free.height/m, free.size, most)
	if unit < least || unit*min(m, n) < thin {
		return false
	}
	p.look, p.step, p.rise = l, unit, unit
	p.w, p.h = nil, nil
	p.measure(unit, unit)
	return p.legible()
}

// legible reports whether the names of the parts have room beside each other,
// and those inside the parts in them. The last parts may be named outside.
func (p *plot) legible() bool {
	const apart, tall = 10, lineTall
	wide := func(n int64) int { return scene.Advance(arithmetic.Grouped(n), scene.Middle, true) }
	for j := 1; j < len(p.cols); j++ {
		if p.w[j-1]+p.w[j] < wide(p.cols[j-1])+wide(p.cols[j])+2*apart {
			return false
		}
	}
	for i := 1; i < len(p.rows) && !p.oneNamed; i++ {
		if p.h[i-1]+p.h[i] < 2*tall+4 {
			return false
		}
	}
	if len(p.rows) == 1 && len(p.cols) > 1 {
		return factsWide(p.facts(), scene.Small) <= scene.PaperW-2*scene.Margin-p.nameRoom()
	}
	if len(p.rows) > 1 && len(p.cols) > 1 {
		for i := range len(p.rows) - 1 {
			for j := range len(p.cols) - 1 {
				if p.h[i] < insideTall || p.w[j] < wide(p.parts[i*len(p.cols)+j])+2*plateEdge {
					return false
				}
			}
		}
	}
	return true
}

// measure makes every part as wide and high as its number says.
func (p *plot) measure(step, rise int) {
	for _, c := range p.cols {
		p.w = append(p.w, int(c)*step)
	}
	for _, r := range p.rows {
		p.h = append(p.h, int(r)*rise)
	}
}

// place puts the parts beside and under each other. Counters have a gap between
// parts from the first picture on, so that nothing moves when they are split.
func (p *plot) place(left int) {
	gap := 0
	if p.look <= inCrates {
		gap = partGap
	}
	p.x, p.y = nil, nil
	x, y := left, plotTop+p.outerUp()+p.down
	for _, w := range p.w {
		p.x = append(p.x, x)
		x += w + gap
	}
	for _, h := range p.h {
		p.y = append(p.y, y)
		y += h + gap
	}
}

func (p *plot) width() int {
	sum := 0
	for _, w := range p.w {
		sum += w
	}
	if p.look <= inCrates {
		sum += partGap * (len(p.w) - 1)
	}
	return sum
}

// box is the whole array, without the ends of its bands.
func (p *plot) box() scene.Box {
	i, j := len(p.y)-1, len(p.x)-1
	return scene.Box{X: p.x[0], Y: p.y[0], W: p.x[j] + p.w[j] - p.x[0], H: p.y[i] + p.h[i] - p.y[0]}
}

// part is the rectangle of one part.
func (p *plot) part(i, j int) scene.Box { return scene.Box{X: p.x[j], Y: p.y[i], W: p.w[j], H: p.h[i]} }

func sumOf(parts []int64) int64 {
	sum := int64(0)
	for _, n := range parts {
		sum += n
	}
	return sum
}
