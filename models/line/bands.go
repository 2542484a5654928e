package line

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

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
	if s.side > 0 {
		point.also = wholeToo(m.Number)
	}
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
