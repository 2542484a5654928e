package svg_test

import (
	"testing"

	"modeler/golden/sight"
	"modeler/models/scene"
	"modeler/svg"
)

// WCAG 2.2 success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1), for
// people who see all colours and for those who do not. Text may lie on paper, on a
// tray and on the tint of its own role. Package sight checks what really lies on
// what in the pictures there are; this holds for those still to come.
func TestEveryThemeMeetsWCAGContrast(t *testing.T) {
	for _, theme := range svg.Themes {
		for role := scene.Ink; role <= scene.Tray; role++ {
			check := func(what, over, under string, least float64) {
				t.Helper()
				if got, vision := sight.LeastContrast(over, under); got < least {
					t.Errorf("%s: %s %s %s on %s has contrast %.2f in %s, want at least %.1f", theme.Name, role, what, over, under, got, vision, least)
				}
			}
			for _, under := range []string{theme.Paper(), theme.Tint(scene.Tray), theme.Tint(role)} {
				check("text", theme.Text(role), under, sight.LeastText)
				if role == scene.Tray { // the edge of a tray only decorates
					continue
				}
				check("edge", theme.Edge(role), under, sight.LeastGraphic)
				check("heavy stroke", theme.Bold(role), under, sight.LeastGraphic)
			}
			// Labels in ink lie on every tint, and every edge may meet any tint.
			check("tint under a label in ink", theme.Tint(role), theme.Text(scene.Ink), sight.LeastText)
			for other := scene.Ink; other < scene.Tray && role != scene.Tray; other++ {
				check("edge beside "+other.String(), theme.Edge(role), theme.Tint(other), sight.LeastGraphic)
			}
		}
	}
}
