package sight

import (
	"fmt"

	"modeler/golden/measure"
	"modeler/models/scene"
)

// surface is a filled shape: the room that it may cover, and the room that it
// surely covers.
type surface struct {
	fill        string
	order       int
	reach, sure measure.Box
}

// point reports whether a surface is a point on a line or the head of an arrow.
func (s surface) point() bool {
	const largest = 24 // units across
	return max(s.reach.W, s.reach.H) <= largest
}

// surfaces are the filled shapes of a drawing in painting order, the paper first.
func surfaces(d measure.Drawing) []surface {
	byOrder := map[int]surface{}
	last := 0
	add := func(p measure.Paint, order int, reach, sure measure.Box) {
		if p.Filled() {
			byOrder[order] = surface{p.Fill, order, reach, sure}
			last = max(last, order)
		}
	}
	for _, r := range d.Rects {
		add(r.Paint, r.Order, r.Box, r.Box)
	}
	for _, c := range d.Circles {
		in := c.R * 7 / 10 // half the side of the square inside
		add(c.Paint, c.Order, measure.Box{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R},
			measure.Box{X: c.X - in, Y: c.Y - in, W: 2 * in, H: 2 * in})
	}
	for _, w := range d.Wedges {
		add(w.Paint, w.Order, w.Box(), measure.Box{})
	}
	for _, p := range d.Paths {
		if p.Closed {
			add(p.Paint, p.Order, p.Box(), measure.Box{})
		}
	}
	var list []surface
	for i := range last + 1 {
		if s, is := byOrder[i]; is {
			list = append(list, s)
		}
	}
	return list
}

// under are the surfaces that a room lies on: those painted before it, from the top one down to the first that it lies wholly on.
func under(list []surface, room measure.Box, order int) []surface {
	var found []surface
	for i := len(list) - 1; i >= 0; i-- {
		s := list[i]
		if s.order >= order || !s.reach.Overlaps(room) {
			continue
		}
		found = append(found, s)
		if s.sure.Contains(room) {
			break
		}
	}
	return found
}

// pair is two colours that lie on one another, the least contrast that they
// need, and what they are.
type pair struct {
	what, over, under string
	least             float64
}

// pairs are the texts, edges and solid marks of a drawing, each with every colour
// that it lies on.
func pairs(d measure.Drawing) []pair {
	list := surfaces(d)
	var found []pair
	add := func(what, colour string, least float64, room measure.Box, order int) {
		for _, below := range under(list, room, order) {
			// A line may end on a point, and a block's edge may be seen on its
			// own dark side: there it has nothing to tell apart.
			if line := least == LeastGraphic; line && (below.point() || below.fill == colour) {
				continue
			}
			found = append(found, pair{what, colour, below.fill, least})
		}
	}
	for _, t := range d.Texts {
		add(fmt.Sprintf("the text %q", t.Words), t.Fill, LeastText, textBox(t), t.Order)
	}
	for _, p := range outlines(d) {
		if p.fill != "none" && p.fill != p.Stroke {
			if p.Stroked() {
				found = append(found, pair{"the edge of a surface", p.Stroke, p.fill, LeastGraphic})
			} else {
				add("a solid mark", p.fill, LeastGraphic, p.sides[0], p.order)
			}
		}
		if !p.Stroked() {
			continue
		}
		for _, side := range p.sides {
			add("an edge or line", p.Stroke, LeastGraphic, measure.Box{X: side.X - 1, Y: side.Y - 1, W: side.W + 2, H: side.H + 2}, p.order)
		}
	}
	return found
}

// textBox is the room of a text: as wide as the widest common face sets it.
func textBox(t measure.Text) measure.Box {
	w := scene.Advance(t.Words, t.Size, t.Bold)
	x := t.X
	switch t.Anchor {
	case "middle":
		x -= w / 2
	case "end":
		x -= w
	}
	return measure.Box{X: x, Y: t.Y - t.Size*3/4, W: w, H: t.Size}
}

// Checker looks for what is too faint. It remembers the pairs of colours that it
// has seen, since all pictures share a few.
type Checker struct {
	quiet string // the colour of edges that only decorate
	seen  map[[2]string]sighting
}

type sighting struct {
	contrast float64
	vision   string
}

// NewChecker makes a checker that lets edges of the quiet colour be faint.
func NewChecker(quiet string) *Checker { return &Checker{quiet, map[[2]string]sighting{}} }

// Faint lists what in a drawing has too little contrast with what it lies on,
// for the eyes that see the least of it.
func (c *Checker) Faint(d measure.Drawing) []string {
	var list []string
	for _, p := range pairs(d) {
		if p.over == c.quiet && p.least < LeastText {
			continue
		}
		key := [2]string{p.over, p.under}
		s, has := c.seen[key]
		if !has {
			s.contrast, s.vision = LeastContrast(p.over, p.under)
			c.seen[key] = s
		}
		if s.contrast < p.least {
			list = append(list, fmt.Sprintf("%s in %s on %s has contrast %.2f in %s, less than %.1f",
				p.what, p.over, p.under, s.contrast, s.vision, p.least))
		}
	}
	return list
}
