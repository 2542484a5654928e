package eyes

import (
	"fmt"
	"strings"
	"testing"

	"modeler/arithmetic/reading"
	"modeler/golden/laws"
	"modeler/golden/problems"
	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// picture is one picture as the scripts get it. Where there is a scene, it says
// what the layout keeps free for the texts and what is meant to strike them out.
type picture struct {
	Name   string   `json:"name"`
	SVG    string   `json:"svg"`
	Boxes  [][5]int `json:"boxes,omitempty"`  // left, top, right, bottom, and how many texts are drawn in it
	Struck [][4]int `json:"struck"`           // left, top, right, bottom of strokes that may cross texts
	Widths []int    `json:"widths,omitempty"` // where to look; everywhere when there are none
}

// drawn is a scene in a theme as the scripts get it.
func drawn(name string, s *scene.Scene, hidden bool, theme *svg.Theme) picture {
	if hidden {
		name += ", hidden"
	}
	p := picture{
		Name:   name + ", " + theme.Name,
		SVG:    string(svg.Render(s, svg.Options{Hidden: hidden, Theme: theme})),
		Struck: [][4]int{},
	}
	for _, it := range s.View(hidden).Items {
		text, ok := it.Shape.(scene.Text)
		if !ok {
			if it.Role == scene.Gone && it.Finish == scene.Bold {
				p.Struck = append(p.Struck, edges(it.Shape.Box()))
			}
			continue
		}
		glyphs, bars := text.Typeset()
		n := 0
		for _, g := range glyphs {
			if strings.TrimSpace(g.Text) != "" {
				n++
			}
		}
		e := edges(text.Box())
		p.Boxes = append(p.Boxes, [5]int{e[0], e[1], e[2], e[3], n})
		for _, b := range bars {
			if b.Y1 != b.Y2 { // not the bar of a fraction
				p.Struck = append(p.Struck, edges(b.Box()))
			}
		}
	}
	return p
}

func edges(b scene.Box) [4]int { return [4]int{b.X, b.Y, b.Right(), b.Bottom()} }

// scenes calls see with every picture of a telling: the whole story and, when
// steps is set, every step; each with the answer shown and hidden.
func scenes(name string, told models.Telling, steps bool, see func(name string, s *scene.Scene, hidden bool)) {
	for _, hidden := range []bool{false, true} {
		see(name, told.Whole, hidden)
		if !steps {
			continue
		}
		for i, s := range told.Steps {
			see(fmt.Sprintf("%s, step %d", name, i+1), s.Scene, hidden)
		}
	}
}

// examples calls tell with every example of every model, told by that model.
func examples(t *testing.T, tell func(name string, told models.Telling)) {
	t.Helper()
	for _, m := range models.All {
		for _, example := range m.Examples {
			r, err := reading.Read(example)
			if err != nil || m.Fits(r.Problem) != nil {
				t.Errorf("%s: the example %q does not fit", m.Name, example)
				continue
			}
			tell(m.Name+": "+example, m.Tell(r.Problem))
		}
	}
}

// dealt calls tell with n random problems, each told by every model that fits.
func dealt(t *testing.T, seed uint64, n int, tell func(i int, name string, told models.Telling)) {
	t.Helper()
	d := problems.Deal(seed)
	for i := range n {
		p := d.Next()
		for _, m := range models.All {
			if m.Fits(p) != nil {
				continue
			}
			l, err := laws.Tell(m, p)
			if err != nil {
				t.Error(err)
				continue
			}
			tell(i, m.Name+": "+p.String(), l.Telling)
		}
	}
}
