package golden

import (
	"slices"
	"testing"

	"modeler/golden/measure"
	"modeler/models/scene"
	"modeler/svg"
)

// Many grids of one look are drawn together, in fewer bytes. Measured, they are the
// same faces with the same cuts as when each is drawn by itself.
func TestManyGridsAreMeasuredAsEachByItself(t *testing.T) {
	var all []scene.Item
	for i := range 40 {
		g := scene.Grid{X: 10 + i%10*60, Y: 10 + i/10*60, W: 50, H: 50, Cols: 10, Rows: 10}
		switch i % 3 {
		case 1:
			g.W, g.Cols = 5, 1
		case 2:
			g.W, g.H, g.Cols, g.Rows = 5, 5, 1, 1
		}
		all = append(all, scene.Item{Shape: g, Role: scene.Second})
	}
	for _, theme := range svg.Themes {
		file := func(items ...scene.Item) []byte {
			return svg.Render(&scene.Scene{W: 800, H: 300, Items: items}, svg.Options{Theme: theme})
		}
		faces := func(file []byte) []measure.Face {
			d, err := measure.Read(file)
			if err != nil {
				t.Fatalf("theme %s: %v", theme.Name, err)
			}
			return d.Faces()
		}
		var each []measure.Face
		bytes := 0
		for _, it := range all {
			one := file(it)
			bytes += len(one) - len(file())
			each = append(each, faces(one)...)
		}
		together := file(all...)
		same := slices.EqualFunc(faces(together), each, func(a, b measure.Face) bool {
			return a.Box == b.Box && a.Fill == b.Fill && a.Stroke == b.Stroke && slices.Equal(a.Across, b.Across) && slices.Equal(a.Down, b.Down)
		})
		if !same {
			t.Errorf("theme %s: they are measured otherwise", theme.Name)
		}
		if 3*len(together) > 2*bytes {
			t.Errorf("theme %s: %d bytes together, %d one by one", theme.Name, len(together), bytes)
		}
	}
}
