package api

import (
	"net/http"
	"strings"

	"modeler/models/scene"
	"modeler/svg"
)

// styleSheet is the colours of the themes as variables, and then the sheet that
// uses them: a number has the same colour in a sentence, a picture and symbols
// because there is only one table of colours.
func styleSheet() []byte {
	rules, err := web.ReadFile("web/style.css")
	if err != nil {
		panic("api: " + err.Error()) // it is embedded
	}
	var b strings.Builder
	b.WriteString(":root{" + variables(svg.Themes[0]) + "}\n")
	// A dark screen prints on white paper.
	b.WriteString("@media screen and (prefers-color-scheme:dark){:root{" + variables(svg.Named("dark")) + "}}\n")
	b.WriteString(":root.ink{" + variables(svg.Named("ink")) + "}\n")
	b.Write(rules)
	return []byte(b.String())
}

func variables(t *svg.Theme) string {
	var b strings.Builder
	b.WriteString("--paper:" + t.Paper() + ";")
	for r := scene.Ink; r <= scene.Tray; r++ {
		name := "--" + r.String()
		b.WriteString(name + ":" + t.Text(r) + ";" + name + "-edge:" + t.Edge(r) + ";" + name + "-tint:" + t.Tint(r) + ";" +
			name + "-deep:" + t.Fill(scene.Item{Role: r, Finish: scene.Deep}) + ";")
	}
	return b.String()
}

// icon serves /icon.svg: a bar of four parts, three of them filled.
func (s *site) icon(w http.ResponseWriter, r *http.Request) {
	const part, high, top = 14, 32, 16
	sc := &scene.Scene{W: 4*part + 8, H: high + 2*top, Title: scene.Same("modeler"), Desc: scene.Same("three fourths of a bar")}
	sc.Add(scene.Item{Role: scene.First, Shape: scene.Grid{X: 4, Y: top, W: 3 * part, H: high, Cols: 3, Rows: 1}},
		scene.Item{Role: scene.First, Finish: scene.Outline, Shape: scene.Rect{X: 4 + 3*part, Y: top, W: part, H: high}})
	a := answer{kind: "image/svg+xml", body: svg.Render(sc, svg.Options{}), life: lasting, policy: sealed}
	a.tag = tagOf(string(a.body))
	a.write(w, r)
}
