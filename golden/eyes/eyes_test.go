// Package eyes looks at what the program makes with eyes that are not its own: a
// real browser, other renderers, other libraries of exact arithmetic.
package eyes

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// The widths are a phone, the natural size and a wall.
const phone, natural, wall = 320, 800, 1600

// families are common sans-serif faces, two of which the layout has measured and
// one of which it has not.
var families = []string{`"Liberation Sans"`, `"DejaVu Sans"`, `"Noto Sans"`}

type sight struct {
	Looked  int      `json:"looked"`
	Texts   int      `json:"texts"`
	Missing []string `json:"missing"`
	Faults  []struct {
		Name  string `json:"name"`
		Width int    `json:"width"`
		What  string `json:"what"`
	} `json:"faults"`
}

// look opens the pictures that each makes in the browser.
func look(t *testing.T, each func(see func(picture))) (s sight, pictures int) {
	t.Helper()
	browser := tool(t, "chromium")
	runNode(t, "look.mjs", func(send func(any)) {
		send(map[string]any{"browser": browser, "widths": []int{phone, natural, wall}, "families": families})
		each(func(p picture) {
			pictures++
			send(p)
		})
	}, &s)
	if len(s.Missing) > 0 {
		missing(t, "font", fmt.Errorf("%v are not installed", s.Missing))
	}
	return s, pictures
}

// How many random problems are looked at; every so many-th with all its steps, and
// as many at every width.
const (
	random     = 2000
	everyNth   = 8
	mostFaults = 40 // that are listed
)

// TestNothingTouchesATextOrLeavesThePaper looks at every picture of every example
// in every theme at every width. Random problems are looked at in two themes and,
// but for some, at the natural size: the dark theme is the usual one in other
// colours (the next test), and a width scales everything but the rounding of
// letters to pixels, for which the examples and those some stand in.
func TestNothingTouchesATextOrLeavesThePaper(t *testing.T) {
	t.Parallel()
	s, pictures := look(t, func(see func(picture)) {
		examples(t, func(name string, told models.Telling) {
			scenes(name, told, true, func(name string, s *scene.Scene, hidden bool) {
				for _, theme := range svg.Themes {
					see(drawn(name, s, hidden, theme))
				}
			})
		})
		dealt(t, 6, random, func(i int, name string, told models.Telling) {
			scenes(name, told, i%everyNth == 0, func(name string, s *scene.Scene, hidden bool) {
				for _, theme := range []*svg.Theme{svg.Named("colour"), svg.Named("ink")} {
					p := drawn(name, s, hidden, theme)
					if i%everyNth != 1 {
						p.Widths = []int{natural}
					}
					see(p)
				}
			})
		})
	})
	t.Logf("looked %d times at %d pictures, at %d texts in %d families", s.Looked, pictures, s.Texts, len(families)+1)
	if s.Looked < pictures || s.Texts < pictures {
		t.Errorf("looked only %d times at %d texts", s.Looked, s.Texts)
	}
	for i, f := range s.Faults {
		if i == mostFaults {
			t.Errorf("and %d more", len(s.Faults)-i)
			break
		}
		t.Errorf("%s, %d pixels wide: %s", f.Name, f.Width, f.What)
	}
}

var aColour = regexp.MustCompile(`"#[0-9a-f]{6}"`)

// TestDarkIsTheUsualThemeInOtherColours, so that what is seen of one theme holds
// for the other.
func TestDarkIsTheUsualThemeInOtherColours(t *testing.T) {
	n := 0
	same := func(name string, s *scene.Scene, hidden bool) {
		usual, dark := drawn(name, s, hidden, svg.Named("colour")), drawn(name, s, hidden, svg.Named("dark"))
		if aColour.ReplaceAllString(usual.SVG, "") != aColour.ReplaceAllString(dark.SVG, "") {
			t.Errorf("%s: more than the colours differs", name)
		}
		n++
	}
	examples(t, func(name string, told models.Telling) { scenes(name, told, true, same) })
	dealt(t, 6, random, func(_ int, name string, told models.Telling) { scenes(name, told, false, same) })
	t.Logf("%d pictures", n)
}

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
