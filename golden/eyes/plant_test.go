package eyes

import (
	"slices"
	"strings"
	"testing"

	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// TestTheEyesCanSee shows that each fault is noticed, and that what is right is
// not. The first number of a box is its left edge, the last how many texts are in it.
func TestTheEyesCanSee(t *testing.T) {
	page := func(body string) string {
		return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="200" viewBox="0 0 800 200" font-family="Arial, sans-serif">` +
			`<rect width="800" height="200" fill="#ffffff" />` + body + `</svg>`
	}
	const (
		number = `<text x="100" y="100" font-size="28">402</text>`
		line   = `<line x1="110" y1="10" x2="110" y2="190" stroke="#000000" stroke-width="2" />`
		plate  = `<rect x="90" y="60" width="100" height="60" fill="#ffffff" stroke="#000000" />`
		cell   = `<rect x="90" y="60" width="100" height="60" fill="none" stroke="#000000" />`
	)
	cases := []struct {
		picture
		want string // what is said of it at every width; nothing when it is right
	}{
		{picture{Name: "two numbers", SVG: page(number + `<text x="200" y="100" font-size="28">178</text>`)}, ""},
		{picture{Name: "a number in its cell", SVG: page(cell + number)}, ""},
		{picture{Name: "a plate over a line", SVG: page(line + plate + number)}, ""},
		{picture{Name: "a line that ends beside a number", SVG: page(`<path d="M110 10V75" fill="none" stroke="#000000" stroke-width="2" />` + number)}, ""},
		{picture{Name: "a number in its room", SVG: page(number), Boxes: [][5]int{{98, 70, 160, 110, 1}}}, ""},
		{picture{Name: "a number that is struck out", SVG: page(number + `<path d="M100 105L150 75" fill="none" stroke="#000000" stroke-width="2" />`), Struck: [][4]int{{100, 75, 150, 105}}}, ""},

		{picture{Name: "touching", SVG: page(number + `<text x="130" y="110" font-size="28">178</text>`)}, "touch"},
		{picture{Name: "touching in a wider face", SVG: page(number + `<text x="150" y="100" font-size="28">178</text>`)}, "touch"},
		{picture{Name: "leaving to the right", SVG: page(`<text x="770" y="100" font-size="28">402</text>`)}, "leaves the paper"},
		{picture{Name: "leaving above", SVG: page(`<text x="100" y="12" font-size="28">402</text>`)}, "leaves the paper"},
		{picture{Name: "a shape leaving", SVG: page(`<rect x="700" y="100" width="120" height="20" fill="#000000" />`)}, "a rect leaves the paper"},
		{picture{Name: "small", SVG: page(`<text x="100" y="100" font-size="27">402</text>`)}, "pixels high"},
		{picture{Name: "crossed by a line", SVG: page(line + number)}, "is crossed by a line"},
		{picture{Name: "crossed by a line over its plate", SVG: page(plate + line + number)}, "is crossed by a line"},
		{picture{Name: "crossed by an edge", SVG: page(`<rect x="120" y="60" width="100" height="60" fill="#eeeeee" stroke="#000000" />` + number)}, "is crossed by a rect"},
		{picture{Name: "crossed by a jump", SVG: page(`<path d="M40 150C60 60 160 60 180 150" fill="none" stroke="#000000" stroke-width="2" />` + number)}, "is crossed by a path"},
		{picture{Name: "crossed by a circle", SVG: page(`<circle cx="100" cy="100" r="30" fill="none" stroke="#000000" />` + number)}, "is crossed by a circle"},
		{picture{Name: "struck elsewhere", SVG: page(number + line), Struck: [][4]int{{100, 75, 150, 105}}}, "is crossed by a line"},
		{picture{Name: "covered", SVG: page(number + plate)}, "is covered by a rect"},
		{picture{Name: "wider than its room", SVG: page(number), Boxes: [][5]int{{98, 70, 146, 110, 1}}}, "needs"},
		{picture{Name: "higher than its room", SVG: page(number), Boxes: [][5]int{{98, 84, 160, 110, 1}}}, "needs"},
		{picture{Name: "a text too many", SVG: page(number + `<text x="200" y="100" font-size="28">178</text>`), Boxes: [][5]int{{98, 70, 160, 110, 1}}}, "texts are drawn"},
		{picture{Name: "moved", SVG: page(`<g transform="translate(5 5)">` + number + `</g>`)}, "transform"},
		{picture{Name: "broken", SVG: `<svg`}, "cannot read"},
	}
	s, _ := look(t, func(see func(picture)) {
		for _, c := range cases {
			if c.Struck == nil {
				c.Struck = [][4]int{}
			}
			see(c.picture)
		}
	})
	for _, c := range cases {
		var said []string
		widths := map[int]bool{}
		for _, f := range s.Faults {
			if f.Name == c.Name {
				said = append(said, f.What)
				widths[f.Width] = true
			}
		}
		switch {
		case c.want == "" && len(said) > 0:
			t.Errorf("%s: %q, and nothing is wrong", c.Name, said)
		case c.want != "" && !slices.ContainsFunc(said, func(what string) bool { return strings.Contains(what, c.want) }):
			t.Errorf("%s: %q, want %q", c.Name, said, c.want)
		case c.want == "pixels high" && !widths[phone], c.want != "" && c.want != "pixels high" && len(widths) != 3:
			t.Errorf("%s: noticed only at %v", c.Name, widths)
		}
	}
}

// TestAFaultInALessonIsSeen plants faults in the first example of every model.
func TestAFaultInALessonIsSeen(t *testing.T) {
	faults := []struct {
		name, want string
		plant      func(s *scene.Scene, over scene.Text)
	}{
		{"a label on a label", "touch", func(s *scene.Scene, over scene.Text) {
			s.Draw(scene.Note, scene.Plain, scene.Words(over.X+5, over.Y+5, scene.Small, "402"))
		}},
		{"a line through a label", "is crossed by a line", func(s *scene.Scene, over scene.Text) {
			b := over.Box()
			s.Draw(scene.Guide, scene.Fine, scene.Line{X1: b.X - 20, Y1: over.Y, X2: b.Right() + 20, Y2: over.Y})
		}},
		{"a label that leaves the paper", "leaves the paper", func(s *scene.Scene, _ scene.Text) {
			s.Draw(scene.Note, scene.Plain, scene.Words(s.W-10, s.H/2, scene.Small, "402"))
		}},
		{"a piece over a label", "is covered by a rect", func(s *scene.Scene, over scene.Text) {
			b := over.Box()
			s.Draw(scene.First, scene.Plain, scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H})
		}},
	}
	var names []string
	sight, _ := look(t, func(see func(picture)) {
		seen := map[string]bool{}
		examples(t, func(name string, told models.Telling) {
			model, _, _ := strings.Cut(name, ":")
			if seen[model] {
				return
			}
			seen[model] = true
			names = append(names, model)
			for _, f := range faults {
				wrong := told.Whole.View(false)
				at := slices.IndexFunc(wrong.Items, func(it scene.Item) bool {
					text, ok := it.Shape.(scene.Text) // a line through the middle of a fraction is its bar
					return ok && !slices.ContainsFunc(text.Runs, func(r scene.Run) bool { return r.Den != "" })
				})
				f.plant(&wrong, wrong.Items[at].Shape.(scene.Text))
				p := drawn(model, &wrong, false, svg.Themes[0])
				p.Name = model + ", " + f.name
				see(p)
			}
		})
	})
	for _, model := range names {
		for _, f := range faults {
			if !slices.ContainsFunc(sight.Faults, func(s fault) bool {
				return s.Name == model+", "+f.name && strings.Contains(s.What, f.want)
			}) {
				t.Errorf("%s, %s: not seen", model, f.name)
			}
		}
	}
	if len(names) == 0 {
		t.Error("there are no examples")
	}
}
