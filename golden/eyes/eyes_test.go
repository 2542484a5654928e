// Package eyes looks at what the program makes with eyes that are not its own: a
// real browser, other renderers, other libraries of exact arithmetic.
package eyes

import (
	"fmt"
	"regexp"
	"testing"

	"modeler/models"
	"modeler/models/scene"
	"modeler/svg"
)

// The widths are a phone, the natural size and a wall.
const phone, natural, wall = 320, 800, 1600

// families are the one that a picture asks for and common sans-serif faces. The
// picture's own is Arial or a face with its metrics, as Liberation Sans; with
// DejaVu Sans the layout has measured it. Noto Sans it has not.
var families = []any{nil, `"DejaVu Sans"`, `"Noto Sans"`}

type sight struct {
	Looked  int      `json:"looked"`
	Texts   int      `json:"texts"`
	Missing []string `json:"missing"`
	Faults  []fault  `json:"faults"`
}

type fault struct {
	Name  string `json:"name"`
	Width int    `json:"width"`
	What  string `json:"what"`
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
	again := 0
	s, pictures := look(t, func(open func(picture)) {
		known := map[string]bool{}
		see := func(p picture) {
			p.SVG = aTelling.ReplaceAllString(p.SVG, "")
			if known[p.SVG] {
				again++ // with the answer hidden, most steps look the same
				return
			}
			known[p.SVG] = true
			open(p)
		}
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
	t.Logf("looked %d times at %d pictures, at %d texts in %d families; %d more look like one of these", s.Looked, pictures, s.Texts, len(families), again)
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

// aTelling is what a picture says in words, which is not seen.
var aTelling = regexp.MustCompile(`<(title|desc)>[^<]*</(title|desc)>\n?`)

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
