// Package measure reads an SVG file back as a viewer sees it: which shapes are
// painted, where, how large and in which paint. It knows SVG geometry only. It
// has never heard of a scene, a role or a problem, so what it counts is what a
// child would count.
//
// Coordinates are whole numbers; a file with a fraction of a unit in a position
// is refused, since equal parts would no longer be exactly equal. Only the ends of
// an arc may lie between them.
package measure

import "slices"

// Drawing is what a file paints, in painting order.
type Drawing struct {
	W, H        int // of the view box, whose origin is 0, 0
	Title, Desc string
	Rects       []Rect
	Circles     []Circle
	Wedges      []Wedge
	Paths       []Path // lines, polylines, polygons and paths
	Texts       []Text
}

// Paint is how a shape is painted; "none" paints nothing.
type Paint struct {
	Fill, Stroke string
	Width        string // of the stroke
	Dash         string // "" is an unbroken stroke
}

// Filled reports whether the inside of a shape is painted.
func (p Paint) Filled() bool { return p.Fill != "none" }

// Stroked reports whether the edge of a shape is painted.
func (p Paint) Stroked() bool { return p.Stroke != "none" }

// Box is a rectangle with its top left corner at X, Y.
type Box struct{ X, Y, W, H int }

// Right and Bottom are the edges opposite to X and Y.
func (b Box) Right() int  { return b.X + b.W }
func (b Box) Bottom() int { return b.Y + b.H }

// Area is width times height.
func (b Box) Area() int { return b.W * b.H }

// Overlaps reports whether the boxes share more than an edge.
func (b Box) Overlaps(c Box) bool {
	return b.X < c.Right() && c.X < b.Right() && b.Y < c.Bottom() && c.Y < b.Bottom()
}

// Contains reports whether c lies inside b, edges included.
func (b Box) Contains(c Box) bool {
	return b.X <= c.X && b.Y <= c.Y && c.Right() <= b.Right() && c.Bottom() <= b.Bottom()
}

// Rect is a painted rectangle. Order is its place in the painting order.
type Rect struct {
	Box
	Paint
	Order int
}

// Circle is a painted circle with its centre at X, Y.
type Circle struct {
	X, Y, R int
	Paint
	Order int
}

// Path is one unbroken stroke of a path: its corners, whether it closes, and the
// handles of its curves.
type Path struct {
	Points []Point
	Curves [][4]Point // each from its first to its last point; those are in Points too
	Closed bool
	Paint
	Order int
}

// Point is a place on the paper.
type Point struct{ X, Y int }

// Box is the smallest rectangle around the corners of the path.
func (p Path) Box() Box {
	lo, hi := p.Points[0], p.Points[0]
	for _, q := range p.Points {
		lo.X, lo.Y = min(lo.X, q.X), min(lo.Y, q.Y)
		hi.X, hi.Y = max(hi.X, q.X), max(hi.Y, q.Y)
	}
	return Box{lo.X, lo.Y, hi.X - lo.X, hi.Y - lo.Y}
}

// Text is one painted text. X is where its anchor stands and Y its baseline.
type Text struct {
	X, Y   int
	Anchor string // start, middle or end
	Size   int
	Bold   bool
	Words  string
	Paint
	Order int
}

// Says reports whether the drawing has a text of exactly these words.
func (d Drawing) Says(words string) bool {
	return slices.ContainsFunc(d.Texts, func(t Text) bool { return t.Words == words })
}
