package sight

import (
	"testing"

	"modeler/models/scene"
	"modeler/svg"
)

// The means are listed at [ToldApart].
func TestRolesAreToldApartWithoutColour(t *testing.T) {
	for _, theme := range svg.Themes {
		var faults tally
		everyPicture(t, true, func(name string, s *scene.Scene, hidden bool) {
			if err := ToldApart(s.View(hidden).Items, theme); err != nil {
				faults.add(theme.Name+": "+err.Error(), name)
			}
		})
		faults.report(t)
	}
}

// No vision takes the colours of two roles for one: their tints and their edges
// differ at a glance, though never by this alone.
func TestEveryVisionTellsTheColoursOfRolesApart(t *testing.T) {
	const atAGlance = 10
	for _, name := range []string{"colour", "dark"} {
		theme := svg.Named(name)
		for _, v := range Visions {
			for i, a := range told {
				for _, b := range told[i+1:] {
					for what, of := range map[string]func(scene.Role) string{"tint": theme.Tint, "edge": theme.Edge, "text": theme.Text} {
						if d := Difference(v.See(of(a)), v.See(of(b))); d < atAGlance {
							t.Errorf("%s, %s: the %s of %s and %s differ by %.1f", name, v.Name, what, a, b, d)
						}
					}
				}
			}
		}
	}
}

func TestToldApartCanFail(t *testing.T) {
	square := func(role scene.Role, finish scene.Finish, x, y int) scene.Item {
		return scene.Item{Role: role, Finish: finish, Shape: scene.Rect{X: x, Y: y, W: 100, H: 100}}
	}
	// A chessboard of two roles: neither stands to one side of the other.
	mixed := []scene.Item{square(scene.First, scene.Plain, 0, 0), square(scene.Second, scene.Plain, 100, 0),
		square(scene.Second, scene.Plain, 0, 100), square(scene.First, scene.Plain, 100, 100)}
	with := func(more ...scene.Item) []scene.Item { return append(more, mixed...) }
	label := scene.Item{Role: scene.First, Shape: scene.Words(50, 250, scene.Small, "12")}
	equation := scene.Item{Shape: scene.Text{X: 50, Y: 250, Size: scene.Large, Runs: []scene.Run{
		{Text: "2", Role: scene.First}, {Text: "+"}, {Text: "2", Role: scene.Second}}}}
	line := func(x1, y1, x2, y2 int) scene.Item {
		return scene.Item{Finish: scene.Bold, Shape: scene.Line{X1: x1, Y1: y1, X2: x2, Y2: y2}}
	}
	colour, ink := svg.Named("colour"), svg.Named("ink")
	for _, c := range []struct {
		name  string
		items []scene.Item
		theme *svg.Theme
		bad   bool
	}{
		{"mixed", mixed, colour, true},
		{"mixed with an equation", with(equation), colour, true},
		{"mixed and hatched", mixed, ink, false},
		{"with a label", with(label), colour, false},
		{"with both lines between", with(line(100, 0, 100, 200), line(0, 100, 200, 100)), colour, false},
		{"with one line between", with(line(100, 0, 100, 200)), colour, true},
		{"one beside the other", mixed[:2], colour, false},
		{"dark on light", []scene.Item{mixed[0], square(scene.Second, scene.Deep, 50, 50)}, colour, false},
		{"light on light", []scene.Item{mixed[0], square(scene.Second, scene.Plain, 50, 50)}, colour, true},
	} {
		if err := ToldApart(c.items, c.theme); (err != nil) != c.bad {
			t.Errorf("%s: %v", c.name, err)
		}
	}
}
