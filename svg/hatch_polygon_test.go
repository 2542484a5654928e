package svg

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"modeler/fraction"
	"modeler/models/scene"
)

// Every line of a hatched polygon lies inside it, as near as whole units come, and
// there are some.
func TestPolygonsAreHatchedInside(t *testing.T) {
	segment := regexp.MustCompile(`M(-?\d+) (-?\d+)L(-?\d+) (-?\d+)`)
	for _, corners := range []scene.Polygon{
		{{X: 200, Y: 20}, {X: 342, Y: 102}, {X: 342, Y: 266}, {X: 200, Y: 348}},
		{{X: 100, Y: 100}, {X: 100, Y: 300}, {X: 400, Y: 300}},
		{{X: 50, Y: 90}, {X: 210, Y: 90}, {X: 250, Y: 160}, {X: 10, Y: 160}},
	} {
		for _, role := range []scene.Role{scene.First, scene.Second, scene.Result, scene.Moved} {
			s := &scene.Scene{W: 400, H: 400}
			s.Add(scene.Item{Shape: corners, Role: role, Of: scene.OfFirst, Worth: fraction.Must(1, 4)})
			file := string(Render(s, Options{Theme: ink}))
			lines := segment.FindAllStringSubmatch(strings.ReplaceAll(file, "Z", ""), -1)
			found := 0
			for _, m := range lines {
				var x1, y1, x2, y2 int
				fmt.Sscan(strings.Join(m[1:], " "), &x1, &y1, &x2, &y2)
				if edgeOf(corners, x1, y1) {
					continue
				}
				found++
				if !near(corners, x1+x2, y1+y2) {
					t.Errorf("role %s: the line from %d %d to %d %d leaves %v", role, x1, y1, x2, y2, corners)
				}
			}
			if found < 5 {
				t.Errorf("role %s: %d lines in %v", role, found, corners)
			}
		}
	}
}

// edgeOf reports whether a place is a corner: the edge of the polygon is drawn from
// there.
func edgeOf(corners scene.Polygon, x, y int) bool {
	for _, c := range corners {
		if c.X == x && c.Y == y {
			return true
		}
	}
	return false
}

// near reports whether a place, given twice, lies inside a polygon that turns one way,
// or within two units of its edge.
func near(corners scene.Polygon, x, y int) bool {
	left, right := false, false
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		side := (b.X-a.X)*(y-2*a.Y) - (b.Y-a.Y)*(x-2*a.X)
		room := 4 * (max(b.X-a.X, a.X-b.X) + max(b.Y-a.Y, a.Y-b.Y))
		left, right = left || side < -room, right || side > room
	}
	return !(left && right)
}
