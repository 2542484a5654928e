package measure

import "slices"

// Face is a rectangle with the lines that cut it from edge to edge.
type Face struct {
	Rect
	Across, Down []int // where it is cut: x of upright cuts, y of level cuts, sorted
}

// Cols and Rows are in how many equal columns and rows a face is cut; 0 when
// they are not equal.
func (f Face) Cols() int { return equalParts(f.X, f.Right(), f.Across) }
func (f Face) Rows() int { return equalParts(f.Y, f.Bottom(), f.Down) }

// Cells is in how many equal cells a face is cut; 0 when they are not equal.
func (f Face) Cells() int { return f.Cols() * f.Rows() }

func equalParts(from, to int, cuts []int) int {
	n := len(cuts) + 1
	if (to-from)%n != 0 {
		return 0
	}
	for i, c := range cuts {
		if c != from+(i+1)*(to-from)/n {
			return 0
		}
	}
	return n
}

// Faces are the rectangles of a drawing but for the paper, with their cuts. Only
// cuts painted after a rectangle show on it.
func (d Drawing) Faces() []Face {
	var faces []Face
	for _, r := range d.Rects {
		if r.Box == (Box{0, 0, d.W, d.H}) {
			continue
		}
		f := Face{Rect: r}
		for _, p := range d.Paths {
			if p.Order < r.Order || len(p.Points) != 2 || len(p.Curves) > 0 || !p.Stroked() {
				continue
			}
			a, b := p.Points[0], p.Points[1]
			switch {
			case a.X == b.X && min(a.Y, b.Y) == r.Y && max(a.Y, b.Y) == r.Bottom() && r.X < a.X && a.X < r.Right():
				f.Across = append(f.Across, a.X)
			case a.Y == b.Y && min(a.X, b.X) == r.X && max(a.X, b.X) == r.Right() && r.Y < a.Y && a.Y < r.Bottom():
				f.Down = append(f.Down, a.Y)
			}
		}
		slices.Sort(f.Across)
		slices.Sort(f.Down)
		f.Across, f.Down = slices.Compact(f.Across), slices.Compact(f.Down)
		faces = append(faces, f)
	}
	return faces
}

// Cube reports whether a face is the front of a solid: two closed quadrangles
// lean against it, one on its upper edge and one on its right edge, or one line
// goes round both from corner to corner.
func (d Drawing) Cube(f Face) bool {
	top, side := false, false
	for _, p := range d.Paths {
		has := func(x, y int) bool { return slices.Contains(p.Points, Point{x, y}) }
		switch {
		case p.Closed && len(p.Points) == 4:
			top = top || has(f.X, f.Y) && has(f.Right(), f.Y) && p.Box().Bottom() == f.Y
			side = side || has(f.Right(), f.Y) && has(f.Right(), f.Bottom()) && p.Box().X == f.Right()
		case !p.Closed && len(p.Points) == 5 && p.Points[0] == Point{f.X, f.Y} && p.Points[4] == Point{f.Right(), f.Bottom()}:
			return true
		}
	}
	return top && side
}
