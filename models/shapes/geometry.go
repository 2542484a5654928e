package shapes

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// Half heights and widths of the shapes, about their centers.
const (
	squareSide = 300 // or near it, so that its parts are whole units
	oblongW    = 336
	oblongH    = 216
)

// cornersOf are the corners of the regular shapes, clockwise from the one straight
// up, about their centers. The places are not rounded one by one: they are chosen so
// that the triangles from the center to neighboring corners have exactly equal areas
// and the middles of the sides are whole units. The sides are equal to within 1 unit,
// those of the pentagon to within 4.
//
//	hexagon    0 −164          142 : 82 is as good as √3
//	     −142 −82   142 −82
//	     −142  82   142  82
//	           0 164
var cornersOf = map[arithmetic.Shape][]scene.Point{
	arithmetic.Triangle: {{X: 0, Y: -164}, {X: 142, Y: 82}, {X: -142, Y: 82}},
	arithmetic.Pentagon: {{X: 0, Y: -150}, {X: 144, Y: -48}, {X: 90, Y: 120}, {X: -90, Y: 120}, {X: -144, Y: -48}},
	arithmetic.Hexagon:  {{X: 0, Y: -164}, {X: 142, Y: -82}, {X: 142, Y: 82}, {X: 0, Y: 164}, {X: -142, Y: 82}, {X: -142, Y: -82}},
	arithmetic.Octagon: {{X: 0, Y: -170}, {X: 120, Y: -120}, {X: 170, Y: 0}, {X: 120, Y: 120}, {X: 0, Y: 170}, {X: -120, Y: 120},
		{X: -170, Y: 0}, {X: -120, Y: -120}},
}

// figure is a shape on the paper with its center at X, Y.
type figure struct {
	shape  arithmetic.Shape
	x, y   int
	w, h   int           // of a square or rectangle
	around []scene.Point // of a regular shape: corner, middle of a side, corner ...
}

// figureOf is a shape whose parts, so many to a whole, come out in whole units.
func figureOf(s arithmetic.Shape, parts int64) figure {
	f := figure{shape: s}
	n := int(parts)
	fit := func(length int) int { return n * max(1, (length+n/2)/n) }
	switch s {
	case arithmetic.Square:
		f.w, f.h = fit(squareSide), fit(squareSide)
	case arithmetic.Rectangle:
		f.w, f.h = fit(oblongW), fit(oblongH)
	default:
		corners := cornersOf[s]
		for i, c := range corners {
			next := corners[(i+1)%len(corners)]
			f.around = append(f.around, c, scene.Point{X: (c.X + next.X) / 2, Y: (c.Y + next.Y) / 2})
		}
	}
	return f
}

// reach is how far the figure reaches up and down from its center.
func (f figure) reach() (up, down int) {
	if f.around == nil {
		return f.h / 2, f.h - f.h/2
	}
	for _, p := range f.around {
		up, down = max(up, -p.Y), max(down, p.Y)
	}
	return up, down
}

// at is the figure with its center at x, y.
func (f figure) at(x, y int) figure {
	f.x, f.y = x, y
	return f
}

// outline is the edge of the whole figure.
func (f figure) outline() scene.Shape {
	if f.around == nil {
		return scene.Rect{X: f.x - f.w/2, Y: f.y - f.h/2, W: f.w, H: f.h}
	}
	var p scene.Polygon
	for i := 0; i < len(f.around); i += 2 {
		p = append(p, f.place(i))
	}
	return p
}

// place is a place on the edge of a regular figure, counted in half sides clockwise
// from the corner straight up.
func (f figure) place(i int) scene.Point {
	p := f.around[i%len(f.around)]
	return scene.Point{X: f.x + p.X, Y: f.y + p.Y}
}

// part is one part of the figure when it is cut in a way, from 0: row by row, or
// clockwise.
func (f figure) part(c arithmetic.ShapeCut, i int) scene.Shape {
	left, top := f.x-f.w/2, f.y-f.h/2
	switch c.Way {
	case arithmetic.InGrid:
		w, h := f.w/int(c.Cols), f.h/int(c.Rows)
		return scene.Rect{X: left + w*(i%int(c.Cols)), Y: top + h*(i/int(c.Cols)), W: w, H: h}
	case arithmetic.Diagonal:
		corner := scene.Point{X: left + f.w*i, Y: top + f.h*(1-i)} // lower left, then upper right
		return scene.Polygon{{X: left, Y: top}, corner, {X: left + f.w, Y: top + f.h}}
	}
	each, from := len(f.around)/int(c.Parts), 0
	if c.Way == arithmetic.FromSides {
		from = 1
	}
	p := scene.Polygon{{X: f.x, Y: f.y}}
	for k := range each + 1 {
		// What lies inside a side, between the ends of the part, is no corner of it.
		if at := from + i*each + k; k == 0 || k == each || at%2 == 0 {
			p = append(p, f.place(at))
		}
	}
	return p
}
