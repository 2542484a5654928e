package eyes

import (
	"bytes"
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"os/exec"
	"regexp"
	"strings"
	"testing"

	"modeler/models"
	"modeler/svg"
)

// Two renderers smooth edges each in its own way, so single pixels on an edge
// differ. What may not differ: the colour inside a shape, at all; and how much of
// each colour there is round a pixel, in levels of 255 of the mean of nine pixels.
// An edge of full contrast that is drawn one pixel further on makes 85 levels
// all along, a line that is missing 36 and more, in ink 68 and more. Where thin lines
// cross the three differ by up to 32 levels, and in hatching by up to 51.
const (
	differ = 36   // levels by which no more than a few places may differ
	few    = 100  // pixels, of some 300,000: the edges of a hundred counters
	fewInk = 2000 // with hatching, whose crossings Chromium leaves lighter
	never  = 60   // levels by which no place may differ
)

// drawnByAll are the renderers; librsvg and resvg share no code with the browser
// nor with each other.
var drawnByAll = [3]string{"Chromium", "librsvg", "resvg"}

type drawing [len(drawnByAll)]*image.RGBA

var aText = regexp.MustCompile(`<text [^>]*>[^<]*</text>\n?`)

// shoot draws pictures without their texts, since every renderer brings its own
// fonts.
func shoot(t *testing.T, pictures []picture) []drawing {
	t.Helper()
	browser, librsvg := tool(t, "chromium"), tool(t, "rsvg-convert")
	var shots []struct{ Chromium, Resvg []byte }
	all := make([]drawing, len(pictures))
	runNode(t, "shoot.mjs", func(send func(any)) {
		send(map[string]any{"browser": browser})
		for i, p := range pictures {
			p.SVG = aText.ReplaceAllString(p.SVG, "")
			send(p)
			cmd := exec.Command(librsvg)
			cmd.Stdin = strings.NewReader(p.SVG)
			body, err := cmd.Output()
			if err != nil {
				t.Fatalf("%s: librsvg: %v", p.Name, err)
			}
			all[i][1] = decode(t, body)
		}
	}, &shots)
	if len(shots) != len(pictures) {
		t.Fatalf("%d shots of %d pictures", len(shots), len(pictures))
	}
	for i, s := range shots {
		all[i][0], all[i][2] = decode(t, s.Chromium), decode(t, s.Resvg)
	}
	return all
}

func decode(t *testing.T, body []byte) *image.RGBA {
	t.Helper()
	img, err := png.Decode(bytes.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	flat := image.NewRGBA(image.Rectangle{Max: img.Bounds().Size()})
	draw.Draw(flat, flat.Bounds(), img, img.Bounds().Min, draw.Src)
	return flat
}

// compare says where two drawings differ by more than their smoothing. It also
// says by how many levels they differ at most, and at how many pixels by more
// than a little.
func compare(a, b *image.RGBA, few int) (worst, places int, err error) {
	if a.Bounds() != b.Bounds() {
		return 255, 0, fmt.Errorf("one is %v large and one %v", a.Bounds().Size(), b.Bounds().Size())
	}
	size := a.Bounds().Size()
	var at image.Point
	for y := 1; y < size.Y-1; y++ {
		for x := 1; x < size.X-1; x++ {
			i := a.PixOffset(x, y)
			if [4]byte(a.Pix[i:i+4]) == [4]byte(b.Pix[i:i+4]) {
				continue
			}
			p, q := around(a, x, y), around(b, x, y)
			if p.flat && q.flat {
				return 255, 0, fmt.Errorf("inside a shape at %d, %d one is %v and one %v", x, y, a.At(x, y), b.At(x, y))
			}
			d := 0
			for c := range p.mean {
				d = max(d, p.mean[c]-q.mean[c], q.mean[c]-p.mean[c])
			}
			if d > differ {
				places++
			}
			if d > worst {
				worst, at = d, image.Pt(x, y)
			}
		}
	}
	if worst > never || places > few {
		err = fmt.Errorf("they differ at %d pixels, most at %v by %d levels", places, at, worst)
	}
	return worst, places, err
}

// square is a pixel and its eight neighbours: the mean of each colour, and
// whether all nine are the same.
type square struct {
	mean [4]int
	flat bool
}

func around(img *image.RGBA, x, y int) square {
	s := square{flat: true}
	centre := [4]byte(img.Pix[img.PixOffset(x, y):][:4])
	for dy := -1; dy <= 1; dy++ {
		row := img.Pix[img.PixOffset(x-1, y+dy):][:12]
		for i, v := range row {
			s.mean[i%4] += int(v)
			s.flat = s.flat && v == centre[i%4]
		}
	}
	for c := range s.mean {
		s.mean[c] /= 9
	}
	return s
}

// TestThreeRenderersAgree draws the whole story and the last step of every
// example, in every theme for the first of each model, and some random problems.
func TestThreeRenderersAgree(t *testing.T) {
	t.Parallel()
	var pictures []picture
	add := func(name string, told models.Telling, themes []*svg.Theme) {
		last := told.Steps[len(told.Steps)-1].Scene
		for _, theme := range themes {
			pictures = append(pictures, drawn(name, told.Whole, false, theme), drawn(name+", last step", last, false, theme))
		}
	}
	seen := map[string]bool{}
	examples(t, func(name string, told models.Telling) {
		model, _, _ := strings.Cut(name, ":")
		themes := svg.Themes
		if seen[model] {
			themes = themes[:1]
		}
		seen[model] = true
		add(name, told, themes)
	})
	dealt(t, 9, 80, func(i int, name string, told models.Telling) {
		theme := svg.Themes[i%len(svg.Themes)]
		pictures = append(pictures, drawn(name, told.Whole, false, theme))
	})
	var most, placesMost [len(drawnByAll)]int
	for i, d := range shoot(t, pictures) {
		limit := few
		if strings.HasSuffix(pictures[i].Name, ", ink") {
			limit = fewInk
		}
		for other := range d {
			next := (other + 1) % len(d)
			worst, places, err := compare(d[other], d[next], limit)
			if err != nil {
				t.Errorf("%s: %s and %s: %v", pictures[i].Name, drawnByAll[other], drawnByAll[next], err)
			}
			most[other], placesMost[other] = max(most[other], worst), max(placesMost[other], places)
		}
	}
	t.Logf("%d pictures; neighbours differ by at most %v levels, at %v pixels by more than %d", len(pictures), most, placesMost, differ)
}

// TestADifferenceIsSeen gives one renderer another picture than the others and
// shows that they are found to differ.
func TestADifferenceIsSeen(t *testing.T) {
	page := func(body string) string {
		return `<svg xmlns="http://www.w3.org/2000/svg" width="200" height="120" viewBox="0 0 200 120"><rect width="200" height="120" fill="#ffffff" />` + body + `</svg>`
	}
	const (
		cell  = `<rect x="40" y="20" width="60" height="60" fill="#bfe2d8" stroke="#0c6657" stroke-width="2.5" />`
		thin  = `<path d="M60 20v60" fill="none" stroke="#0c6657" stroke-width="0.8" />`
		words = `<text x="100" y="100" font-size="28">402</text>`
	)
	cases := []struct{ name, a, b, want string }{
		{"the same", cell + thin, cell + thin, ""},
		{"another text", cell + words, cell, ""},
		{"another colour", cell, strings.Replace(cell, "bfe2d8", "bfe2d9", 1), "inside a shape"},
		{"one pixel further", cell, strings.Replace(cell, `x="40"`, `x="41"`, 1), "they differ"},
		{"one pixel wider", cell, strings.Replace(cell, `width="60"`, `width="61"`, 1), "they differ"},
		{"a thin line missing", cell + thin, cell, "they differ"},
		{"a shape missing", cell + thin, "", "inside a shape"},
		{"a thicker edge", cell, strings.Replace(cell, `"2.5"`, `"5"`, 1), "they differ"},
	}
	var pictures []picture
	for _, c := range cases {
		pictures = append(pictures, picture{Name: c.name, SVG: page(c.a)}, picture{Name: c.name, SVG: page(c.b)})
	}
	shots := shoot(t, pictures)
	for i, c := range cases {
		a, b := shots[2*i], shots[2*i+1]
		for r := range a {
			_, _, err := compare(a[r], b[(r+1)%len(b)], few)
			switch {
			case c.want == "" && err != nil:
				t.Errorf("%s, %s: %v", c.name, drawnByAll[r], err)
			case c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)):
				t.Errorf("%s, %s: %v, want %q", c.name, drawnByAll[r], err, c.want)
			}
		}
	}
	if _, _, err := compare(image.NewRGBA(image.Rect(0, 0, 64, 64)), image.NewRGBA(image.Rect(0, 0, 64, 32)), few); err == nil {
		t.Error("another size is no difference")
	}
}
