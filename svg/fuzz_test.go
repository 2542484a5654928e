package svg

import (
	"bytes"
	"encoding/xml"
	"io"
	"testing"

	"modeler/models/scene"
)

// sceneFrom makes a small scene of any bytes: each group of them is one shape in
// some role and finish, with coordinates on and off the paper.
func sceneFrom(data []byte, text string) *scene.Scene {
	s := &scene.Scene{W: 800, H: 300, Title: scene.Same(text), Desc: scene.Same(text)}
	for len(data) >= 7 && len(s.Items) < 40 {
		x, y, w, h := int(data[1])*4, int(data[2])*2, int(data[3])+1, int(data[4])+1
		cols, rows := int(data[5])%12+1, int(data[6])%12+1
		shapes := []scene.Shape{
			scene.Rect{X: x, Y: y, W: w, H: h, Round: cols}, scene.Rect{X: x, Y: y, W: w, H: h},
			scene.Grid{X: x, Y: y, W: w * cols, H: h * rows, Cols: cols, Rows: rows},
			scene.Line{X1: x, Y1: y, X2: w, Y2: h}, scene.Circle{X: x, Y: y, R: w},
			scene.Polygon{{X: x, Y: y}, {X: w, Y: h}, {X: cols, Y: rows}}, scene.Polyline{{X: x, Y: y}, {X: w, Y: h}},
			scene.Hop{X1: x, X2: w, Y: y, Rise: h},
			scene.Wedge{X: x, Y: y, R: w, From: h % (cols + 1), Count: 1 + rows%cols, Parts: cols + 1},
			scene.Text{X: x, Y: y, Size: scene.Small + cols, Anchor: scene.Anchor(rows % 3), Bold: cols%2 == 0, Runs: []scene.Run{{Text: text}, {Num: text, Den: "4", Struck: rows%2 == 0}}},
		}
		s.Add(scene.Item{
			Shape: shapes[int(data[0])%len(shapes)], Role: scene.Role(data[5]) % (scene.Tray + 1),
			Finish: scene.Finish(data[6]) % (scene.Dotted + 1), When: scene.When(data[0]) % 3,
		})
		data = data[7:]
	}
	return s
}

// FuzzRender holds any scene, in every theme and version, to well-formed XML of
// nothing but the plain elements and attributes, the same twice.
func FuzzRender(f *testing.F) {
	f.Add([]byte("abcdefghijklmnopqrstuvwxyz0123456789"), "402 − 178")
	f.Add([]byte{2, 10, 10, 9, 9, 9, 9, 8, 200, 200, 1, 1, 1, 1}, `<script>"&'`)
	f.Fuzz(func(t *testing.T, data []byte, text string) {
		s := sceneFrom(data, text)
		for _, theme := range Themes {
			for _, hidden := range []bool{false, true} {
				o := Options{Theme: theme, Hidden: hidden}
				got := Render(s, o)
				if !bytes.Equal(got, Render(s, o)) {
					t.Fatal("two renderings differ")
				}
				plain(t, got)
			}
		}
	})
}

var elements = map[string]string{
	"svg": "xmlns width height viewBox role lang font-family", "title": "", "desc": "",
	"g":    "fill stroke stroke-width stroke-linejoin stroke-linecap stroke-dasharray fill-opacity stroke-opacity font-size font-weight text-anchor",
	"rect": "x y width height rx ry fill", "circle": "cx cy r", "line": "x1 y1 x2 y2", "path": "d", "text": "x y",
}

// plain fails on markup that is not well formed or goes beyond the elements and
// attributes that are drawn alike wherever a picture is embedded.
func plain(t *testing.T, svg []byte) {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(svg))
	for {
		tok, err := d.Token()
		if err == io.EOF {
			return
		}
		if err != nil {
			t.Fatalf("%v in %s", err, svg)
		}
		start, ok := tok.(xml.StartElement)
		if !ok {
			continue
		}
		allowed, known := elements[start.Name.Local]
		if !known {
			t.Fatalf("the element %s", start.Name.Local)
		}
		for _, a := range start.Attr {
			if !bytes.Contains([]byte(" "+allowed+" "), []byte(" "+a.Name.Local+" ")) {
				t.Fatalf("the attribute %s of %s", a.Name.Local, start.Name.Local)
			}
		}
	}
}
