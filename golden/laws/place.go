package laws

import (
	"fmt"
	"strings"

	"modeler/models/scene"
)

// Inside: every shape lies on the paper.
func Inside(p Picture) error {
	paper := scene.Box{W: p.Scene.W, H: p.Scene.H}
	for _, it := range p.visible() {
		if b := it.Shape.Box(); !paper.Contains(b) {
			return fmt.Errorf("%s leaves the paper of %d × %d", describe(it), paper.W, paper.H)
		}
	}
	return nil
}

// LabelsApart: no two texts share room.
func LabelsApart(p Picture) error {
	var texts []scene.Item
	for _, it := range p.visible() {
		if _, ok := it.Shape.(scene.Text); !ok {
			continue
		}
		for _, other := range texts {
			if it.Shape.Box().Overlaps(other.Shape.Box()) {
				return fmt.Errorf("%s and %s overlap", describe(other), describe(it))
			}
		}
		texts = append(texts, it)
	}
	return nil
}

// LabelsClear: a text lies wholly on a piece or wholly off it, and no line that
// is painted over it or under it runs through it. What strikes something out may.
func LabelsClear(p Picture) error {
	items := p.visible()
	for _, label := range items {
		text, ok := label.Shape.(scene.Text)
		if !ok {
			continue
		}
		room := text.Box()
		for _, it := range items {
			if _, also := it.Shape.(scene.Text); also || it.Role == scene.Gone && it.Finish == scene.Bold {
				continue
			}
			if runsThrough(it.Shape, room) {
				return fmt.Errorf("%s runs through %s", describe(it), describe(label))
			}
		}
	}
	return nil
}

// Upright: ticks and cuts stand upright or lie level. A few points may make a
// bracket, a break or a line to a label; many are ticks drawn in one stroke.
func Upright(p Picture) error {
	const few = 8
	for _, it := range p.visible() {
		line, ok := it.Shape.(scene.Polyline)
		if !ok || len(line) <= few {
			continue
		}
		for i := range line[1:] {
			if a, b := line[i], line[i+1]; a.X != b.X && a.Y != b.Y {
				return fmt.Errorf("%s leans from %v to %v", describe(it), a, b)
			}
		}
	}
	return nil
}

// runsThrough reports whether the outline of a shape passes through a room. The
// inner lines of a grid are not outline: a label may stand on a face.
func runsThrough(sh scene.Shape, room scene.Box) bool {
	switch sh := sh.(type) {
	case scene.Line, scene.Polyline, scene.Polygon, scene.Hop, scene.Wedge:
		points := outline(sh)
		for i := range points[1:] {
			if crosses(points[i], points[i+1], room) {
				return true
			}
		}
		return false
	}
	b := sh.Box()
	return b.Overlaps(room) && !b.Contains(room)
}

// outline is a shape as straight stretches. A jump's curve is followed in
// sixteen of them, as the curve of package svg with its handles.
func outline(sh scene.Shape) []scene.Point {
	switch sh := sh.(type) {
	case scene.Line:
		return []scene.Point{{X: sh.X1, Y: sh.Y1}, {X: sh.X2, Y: sh.Y2}}
	case scene.Polyline:
		return sh
	case scene.Wedge:
		return sh.Outline()
	case scene.Polygon:
		return append(append([]scene.Point{}, sh...), sh[0])
	case scene.Hop:
		var points []scene.Point
		const n = 16
		in := (sh.X2 - sh.X1) / 5
		x := [4]int{sh.X1, sh.X1 + in, sh.X2 - in, sh.X2}
		y := [4]int{sh.Y, sh.Y - sh.Rise*4/3, sh.Y - sh.Rise*4/3, sh.Y}
		for t := 0; t <= n; t++ {
			u := n - t
			at := func(v [4]int) int {
				return (v[0]*u*u*u + 3*v[1]*t*u*u + 3*v[2]*t*t*u + v[3]*t*t*t) / (n * n * n)
			}
			points = append(points, scene.Point{X: at(x), Y: at(y)})
		}
		return points
	}
	return nil
}

// crosses reports whether a straight stretch passes through the inside of a box:
// it is not wholly beyond one side, and the corners do not all lie on one side
// of it.
func crosses(a, b scene.Point, box scene.Box) bool {
	if max(a.X, b.X) <= box.X || min(a.X, b.X) >= box.Right() || max(a.Y, b.Y) <= box.Y || min(a.Y, b.Y) >= box.Bottom() {
		return false
	}
	side := func(x, y int) int { return (b.X-a.X)*(y-a.Y) - (b.Y-a.Y)*(x-a.X) }
	left, right := false, false
	for _, s := range []int{side(box.X, box.Y), side(box.Right(), box.Y), side(box.X, box.Bottom()), side(box.Right(), box.Bottom())} {
		left, right = left || s < 0, right || s > 0
	}
	return left && right
}

// describe names an item in an error.
func describe(it scene.Item) string {
	if t, ok := it.Shape.(scene.Text); ok {
		return fmt.Sprintf("the text %q at %v", label(t), t.Box())
	}
	kind := strings.TrimPrefix(fmt.Sprintf("%T", it.Shape), "scene.")
	return fmt.Sprintf("the %s %s at %v", it.Role, strings.ToLower(kind), it.Shape.Box())
}

// label is what a text says, fractions with a slash.
func label(t scene.Text) string {
	var b strings.Builder
	for _, r := range t.Runs {
		if r.Den != "" {
			b.WriteString(r.Num + "/" + r.Den)
		} else {
			b.WriteString(r.Text)
		}
	}
	return b.String()
}
