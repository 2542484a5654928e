package sight

import "modeler/golden/measure"

// outline is a painted shape as the rooms that its edge runs through.
type outline struct {
	measure.Paint
	fill  string // "none" for what has no inside
	order int
	sides []measure.Box
}

// outlines are the shapes of a drawing, but for the paper.
func outlines(d measure.Drawing) []outline {
	var list []outline
	for i, r := range d.Rects {
		if i == 0 {
			continue // the paper
		}
		list = append(list, outline{r.Paint, r.Fill, r.Order, []measure.Box{
			{X: r.X, Y: r.Y, W: r.W}, {X: r.X, Y: r.Bottom(), W: r.W},
			{X: r.X, Y: r.Y, H: r.H}, {X: r.Right(), Y: r.Y, H: r.H},
		}})
	}
	for _, c := range d.Circles {
		list = append(list, outline{c.Paint, c.Fill, c.Order, []measure.Box{{X: c.X - c.R, Y: c.Y - c.R, W: 2 * c.R, H: 2 * c.R}}})
	}
	for _, w := range d.Wedges {
		list = append(list, outline{w.Paint, w.Fill, w.Order, []measure.Box{w.Box()}})
	}
	for _, p := range d.Paths {
		o := outline{p.Paint, "none", p.Order, nil}
		if p.Closed {
			o.fill = p.Fill
		}
		if len(p.Curves) > 0 || !p.Stroked() {
			o.sides = []measure.Box{p.Box()}
		} else {
			o.sides = segments(p)
		}
		list = append(list, o)
	}
	return list
}

// segments are the boxes round the straight stretches of a path. That of a
// slanting stretch holds more than the stretch.
func segments(p measure.Path) []measure.Box {
	points := p.Points
	if p.Closed {
		points = append(append([]measure.Point{}, points...), points[0])
	}
	var list []measure.Box
	for i := range points[1:] {
		list = append(list, measure.Path{Points: points[i : i+2]}.Box())
	}
	return list
}
