package sight

import (
	"fmt"
	"slices"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

const dealt = 2000 // random problems to look at

// everyPicture hands over every picture of every example, and the whole stories of
// the dealt problems with, on demand, their steps; each in both versions.
func everyPicture(t *testing.T, dealtSteps bool, look func(name string, s *scene.Scene, hidden bool)) {
	t.Helper()
	both := func(name string, s *scene.Scene) {
		look(name, s, false)
		look(name+", hidden", s, true)
	}
	for _, m := range models.All {
		for _, example := range m.Examples {
			r, err := reading.Read(example)
			if err != nil || m.Fits(r.Problem) != nil {
				t.Errorf("%s: %q gives no lesson", m.Name, example)
				continue
			}
			told := m.Tell(r.Problem)
			both(m.Name+": "+example, told.Whole)
			for i, s := range told.Steps {
				both(fmt.Sprintf("%s: %s, step %d", m.Name, example, i+1), s.Scene)
			}
		}
	}
	d := problems.Deal(12)
	for range dealt {
		p := d.Next()
		for _, m := range models.All {
			if m.Fits(p) != nil {
				continue
			}
			told := m.Tell(p)
			both(m.Name+": "+p.String(), told.Whole)
			for i, s := range told.Steps {
				if dealtSteps {
					both(fmt.Sprintf("%s: %s, step %d", m.Name, p.String(), i+1), s.Scene)
				}
			}
		}
	}
}

// tally counts faults, so that one fault in a thousand pictures is one line.
type tally struct {
	count map[string]int
	first map[string]string
}

func (c *tally) add(fault, where string) {
	if c.count == nil {
		c.count, c.first = map[string]int{}, map[string]string{}
	}
	if c.count[fault]++; c.count[fault] == 1 {
		c.first[fault] = where
	}
}

func (c *tally) report(t *testing.T) {
	var faults []string
	for f := range c.count {
		faults = append(faults, f)
	}
	slices.Sort(faults)
	for i, f := range faults {
		if i == 40 {
			t.Errorf("and %d more", len(faults)-i)
			break
		}
		t.Errorf("%d × %s; first in %s", c.count[f], f, c.first[f])
	}
}

// Every text has a contrast of 4.5 with what it lies on, and every edge, line and
// solid mark one of 3, for all visions, in the bytes of real pictures. The edge of
// a tray may be fainter: what lies on it, and the heading, say where it is.
func TestNothingIsFaint(t *testing.T) {
	for _, theme := range svg.Themes {
		t.Run(theme.Name, func(t *testing.T) {
			t.Parallel()
			var faults tally
			checker := NewChecker(theme.Edge(scene.Tray))
			looked := 0
			everyPicture(t, false, func(name string, s *scene.Scene, hidden bool) {
				d, err := measure.Read(svg.Render(s, svg.Options{Theme: theme, Hidden: hidden}))
				if err != nil {
					t.Fatal(name, err)
				}
				looked++
				for _, f := range checker.Faint(d) {
					faults.add(f, name)
				}
			})
			t.Logf("looked at %d pictures with %d pairs of colours", looked, len(checker.seen))
			faults.report(t)
		})
	}
}

func TestFaintCanFail(t *testing.T) {
	for _, c := range []struct {
		name, body string
		faults     int
	}{
		{"dark text on paper", `<text x="50" y="50" font-size="28" fill="#222222">402</text>`, 0},
		{"grey text on paper", `<text x="50" y="50" font-size="28" fill="#777777">402</text>`, 1},
		{"dark text on a dark piece", `<rect x="0" y="0" width="200" height="100" fill="#555555" stroke="none"/><text x="50" y="50" font-size="28" fill="#222222">402</text>`, 1},
		{"dark text on a plate on it", `<rect x="0" y="0" width="200" height="100" fill="#777777" stroke="#222222"/><rect x="40" y="20" width="100" height="40" fill="#ffffff" stroke="#222222"/><text x="50" y="50" font-size="28" fill="#222222">402</text>`, 0},
		{"text half on a dark piece", `<rect x="60" y="0" width="100" height="100" fill="#555555" stroke="none"/><text x="50" y="50" font-size="28" fill="#222222">402</text>`, 1},
		{"a pale line", `<line x1="0" y1="20" x2="100" y2="20" stroke="#999999"/>`, 1},
		{"a line over a piece as dark", `<rect x="0" y="0" width="100" height="100" fill="#777777" stroke="#222222"/><line x1="20" y1="20" x2="80" y2="20" stroke="#555555"/>`, 1},
		{"a pale edge", `<circle cx="100" cy="100" r="40" fill="#dddddd" stroke="#bbbbbb"/>`, 2},
		{"an edge that decorates", `<rect x="0" y="0" width="100" height="100" fill="#eeeeee" stroke="#cccccc"/>`, 0},
		// Red and black are 5.3 to 1 for those who see red, and much less for those
		// who do not.
		{"red on black", `<rect x="0" y="0" width="200" height="100" fill="#000000" stroke="#000000"/><text x="50" y="50" font-size="28" fill="#ff0000">402</text>`, 1},
	} {
		d, err := measure.Read([]byte(`<svg viewBox="0 0 400 200"><rect x="0" y="0" width="400" height="200" fill="#ffffff"/>` + c.body + `</svg>`))
		if err != nil {
			t.Fatal(c.name, err)
		}
		kinds := map[string]bool{}
		for _, f := range NewChecker("#cccccc").Faint(d) {
			kinds[f] = true
		}
		if len(kinds) != c.faults {
			t.Errorf("%s: %d faults, want %d: %v", c.name, len(kinds), c.faults, kinds)
		}
	}
}
