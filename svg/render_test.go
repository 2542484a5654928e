package svg

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"strings"
	"testing"

	"modeler/models/scene"
)

// everything is a scene with every shape in every role and finish.
func everything() *scene.Scene {
	s := &scene.Scene{W: 800, H: 600, Title: scene.Telling{Shown: "3 + 4 = 7", Hidden: "3 + 4 = ?"}, Desc: scene.Same(`<b> & "quotes"`)}
	for role := scene.Ink; role <= scene.Tray; role++ {
		for finish := scene.Plain; finish <= scene.Dotted; finish++ {
			s.Draw(role, finish,
				scene.Rect{X: 1, Y: 2, W: 30, H: 40}, scene.Rect{X: 1, Y: 2, W: 30, H: 40, Round: 5},
				scene.Grid{X: 50, Y: 2, W: 100, H: 100, Cols: 10, Rows: 10}, scene.Grid{X: 50, Y: 2, W: 90, H: 60, Cols: 3, Rows: 2},
				scene.Line{X1: 1, Y1: 2, X2: 3, Y2: 4}, scene.Circle{X: 9, Y: 9, R: 5},
				scene.Polygon{{X: 1, Y: 2}, {X: 3, Y: 4}, {X: 5, Y: 0}}, scene.Polyline{{X: 1, Y: 2}, {X: 3, Y: 4}},
				scene.Hop{X1: 200, X2: 100, Y: 80, Rise: 40},
				scene.Text{X: 300, Y: 80, Size: 34, Runs: []scene.Run{{Text: `a<&>"`}, {Num: "3", Den: "4", Struck: true}}})
		}
	}
	return s
}

func TestRenderIsWellFormedAndTheSameTwice(t *testing.T) {
	for _, theme := range Themes {
		for _, hidden := range []bool{false, true} {
			o := Options{Theme: theme, Hidden: hidden, Width: 320}
			got := Render(everything(), o)
			if !bytes.Equal(got, Render(everything(), o)) {
				t.Errorf("%s: two renderings differ", theme.Name)
			}
			d := xml.NewDecoder(bytes.NewReader(got))
			for {
				_, err := d.Token()
				if err == io.EOF {
					break
				}
				if err != nil {
					t.Fatalf("%s: %v", theme.Name, err)
				}
			}
			for _, never := range []string{"<script", "style", "url(", "href", "<b>", `a<&`, " id="} {
				if bytes.Contains(got, []byte(never)) {
					t.Errorf("%s: output contains %q", theme.Name, never)
				}
			}
		}
	}
}

func TestWidthScalesThePictureAndKeepsItsShape(t *testing.T) {
	got := string(Render(&scene.Scene{W: 800, H: 300}, Options{Width: 320}))
	if !strings.HasPrefix(got, `<svg xmlns="http://www.w3.org/2000/svg" width="320" height="120" viewBox="0 0 800 300"`) {
		t.Error(got[:120])
	}
}

func TestHiddenVersionLeavesTheAnswerOut(t *testing.T) {
	s := &scene.Scene{W: 100, H: 100, Title: scene.Telling{Shown: "1 + 1 = 2", Hidden: "1 + 1 = ?"}}
	s.Add(scene.Item{Shape: scene.Words(50, 50, 28, "two"), When: scene.ShownOnly},
		scene.Item{Shape: scene.Words(50, 50, 28, "what"), When: scene.HiddenOnly})
	shown, hidden := string(Render(s, Options{})), string(Render(s, Options{Hidden: true}))
	for _, c := range []struct {
		in, has, lacks string
	}{{shown, ">two<", ">what<"}, {hidden, ">what<", ">two<"}, {shown, "= 2", "= ?"}, {hidden, "= ?", "= 2"}} {
		if !strings.Contains(c.in, c.has) || strings.Contains(c.in, c.lacks) {
			t.Errorf("want %q and not %q in\n%s", c.has, c.lacks, c.in)
		}
	}
}

func TestNeighboursThatLookTheSameShareAGroup(t *testing.T) {
	s := &scene.Scene{W: 100, H: 100}
	for i := range 20 {
		s.Draw(scene.First, scene.Plain, scene.Rect{X: i, Y: 0, W: 1, H: 1})
	}
	if n := bytes.Count(Render(s, Options{}), []byte("<g ")); n != 1 {
		t.Errorf("20 equal squares stand in %d groups, want 1", n)
	}
}

func ExampleRender() {
	s := &scene.Scene{W: 40, H: 20, Title: scene.Same("1 one"), Desc: scene.Same("One small square.")}
	s.Draw(scene.First, scene.Plain, scene.Rect{X: 10, Y: 5, W: 10, H: 10})
	fmt.Printf("%s", Render(s, Options{}))
	// Output:
	// <svg xmlns="http://www.w3.org/2000/svg" width="40" height="20" viewBox="0 0 40 20" role="img" lang="en" font-family="Arial, Helvetica, &#34;Liberation Sans&#34;, sans-serif">
	// <title>1 one</title>
	// <desc>One small square.</desc>
	// <rect x="0" y="0" width="40" height="20" fill="#ffffff" />
	// <g fill="#bfe2d8" stroke="#0c6657" stroke-width="2.5" stroke-linejoin="round">
	// <rect x="10" y="5" width="10" height="10" />
	// </g>
	// </svg>
}
