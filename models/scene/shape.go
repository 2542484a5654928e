package scene

// Shape is one of a small closed set, so that whatever reads a scene (the SVG
// writer, the laws) is one type switch.
type Shape interface {
	// Box is the smallest rectangle that holds the shape; of a text, the room
	// that is reserved for it.
	Box() Box
	shape()
}

// Box is a rectangle with its top left corner at X, Y.
type Box struct{ X, Y, W, H int }

// Right and Bottom are the edges opposite to X and Y.
func (b Box) Right() int  { return b.X + b.W }
func (b Box) Bottom() int { return b.Y + b.H }

// Overlaps reports whether the boxes share more than an edge.
func (b Box) Overlaps(c Box) bool {
	return b.X < c.Right() && c.X < b.Right() && b.Y < c.Bottom() && c.Y < b.Bottom()
}

// Contains reports whether c lies inside b, edges included.
func (b Box) Contains(c Box) bool {
	return b.X <= c.X && b.Y <= c.Y && c.Right() <= b.Right() && c.Bottom() <= b.Bottom()
}

// Rect is a rectangle; Round is the radius of its corners.
type Rect struct{ X, Y, W, H, Round int }

// Grid is a rectangle cut by lines in Cols × Rows equal cells. Cols must divide
// W and Rows must divide H. It is the stamp for block faces and areas: a few
// bytes, however many cells.
type Grid struct{ X, Y, W, H, Cols, Rows int }

// Line is a straight line.
type Line struct{ X1, Y1, X2, Y2 int }

// Circle has its centre at X, Y and radius R.
type Circle struct{ X, Y, R int }

// Polygon is a closed outline through its corners.
type Polygon []Point

// Polyline is an open line through its points: braces, brackets.
type Polyline []Point

// Point is a place on the paper.
type Point struct{ X, Y int }

// Hop is a jump along a line from X1 to X2, both on height Y: an arc that rises
// Rise above it, or below it where Rise is less than 0, with an arrow head at X2.
type Hop struct{ X1, X2, Y, Rise int }

func (Rect) shape()     {}
func (Grid) shape()     {}
func (Line) shape()     {}
func (Circle) shape()   {}
func (Polygon) shape()  {}
func (Polyline) shape() {}
func (Hop) shape()      {}
func (Text) shape()     {}

func (r Rect) Box() Box     { return Box{r.X, r.Y, r.W, r.H} }
func (g Grid) Box() Box     { return Box{g.X, g.Y, g.W, g.H} }
func (c Circle) Box() Box   { return Box{c.X - c.R, c.Y - c.R, 2 * c.R, 2 * c.R} }
func (p Polygon) Box() Box  { return around(p) }
func (p Polyline) Box() Box { return around(p) }
func (l Line) Box() Box     { return around([]Point{{l.X1, l.Y1}, {l.X2, l.Y2}}) }
func (h Hop) Box() Box      { return around([]Point{{h.X1, h.Y}, {h.X2, h.Y - h.Rise}}) }

func around(points []Point) Box {
	lo, hi := points[0], points[0]
	for _, p := range points[1:] {
		lo.X, lo.Y = min(lo.X, p.X), min(lo.Y, p.Y)
		hi.X, hi.Y = max(hi.X, p.X), max(hi.Y, p.Y)
	}
	return Box{lo.X, lo.Y, hi.X - lo.X, hi.Y - lo.Y}
}
