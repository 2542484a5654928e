// Package svg turns a scene into SVG that looks the same wherever it is
// embedded: plain shapes with presentation attributes in whole numbers, no
// style sheets, ids, scripts, patterns or fonts. The same scene and options give
// the same bytes on every machine.
package svg

import (
	"strconv"
	"strings"

	"modeler/models/scene"
)

// Options choose how a scene is drawn.
type Options struct {
	Theme  *Theme // nil is the usual theme
	Width  int    // pixels; 0 is the scene's own width
	Hidden bool   // draw the version that does not give the answer away
}

// fonts have the same metrics where they exist; the layout reserves room for
// wider ones.
const fonts = `Arial, Helvetica, "Liberation Sans", sans-serif`

// Render draws a scene.
func Render(s *scene.Scene, o Options) []byte {
	if o.Theme == nil {
		o.Theme = Themes[0]
	}
	w, h := s.W, s.H
	if o.Width > 0 {
		w, h = o.Width, (s.H*o.Width+s.W/2)/s.W
	}
	c := newCanvas()
	c.buf.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" ` + number("width", w) + " " + number("height", h) +
		` viewBox="0 0 ` + strconv.Itoa(s.W) + " " + strconv.Itoa(s.H) + `" role="img" lang="en" ` +
		attribute("font-family", fonts) + ">\n")
	c.Title(s.Title.Say(o.Hidden))
	c.Desc(s.Desc.Say(o.Hidden))
	c.Rect(0, 0, s.W, s.H, attribute("fill", o.Theme.paper))
	p := painter{canvas: c, theme: o.Theme}
	items := s.View(o.Hidden).Items
	for len(items) > 0 {
		n := p.gridsAlike(items)
		if n >= manyGrids {
			p.grids(items[:n])
			items = items[n:]
			continue
		}
		n = p.hatchedAlike(items)
		if n > 0 {
			p.hatch(items[:n]...)
		}
		n = max(n, 1)
		for _, it := range items[:n] {
			p.item(it)
		}
		items = items[n:]
	}
	c.plain()
	c.End()
	return c.buf.Bytes()
}

type painter struct {
	*canvas
	theme *Theme
}

// hatchedAlike is how many of the first items are hatched rectangles that look the
// same. The lines of all of them are drawn before their edges, so that both share
// a group: they are not filled, so it looks the same in any order.
func (p *painter) hatchedAlike(items []scene.Item) int {
	for i, it := range items {
		_, is := it.Shape.(scene.Rect)
		if !is || !p.theme.hatches(it) || it.Role != items[0].Role {
			return i
		}
	}
	return len(items)
}

func (p *painter) item(it scene.Item) {
	look := p.theme.roles[it.Role]
	switch sh := it.Shape.(type) {
	case scene.Rect:
		p.with(p.surface(it, look)) // the lines of a hatched one have been drawn
		if sh.Round > 0 {
			p.Roundrect(sh.X, sh.Y, sh.W, sh.H, sh.Round, sh.Round)
		} else {
			p.Rect(sh.X, sh.Y, sh.W, sh.H)
		}
	case scene.Grid:
		p.grid(it, sh, look)
	case scene.Circle:
		p.hatchDisc(it, sh)
		p.with(p.surface(it, look))
		p.Circle(sh.X, sh.Y, sh.R)
	case scene.Wedge:
		p.wedge(it, sh, look)
	case scene.Polygon:
		p.hatchPolygon(it, sh)
		p.with(p.surface(it, look))
		p.Path(trace(sh) + "Z")
	case scene.Line:
		p.with(p.stroke(it, look))
		p.Line(sh.X1, sh.Y1, sh.X2, sh.Y2)
	case scene.Polyline:
		p.with(attribute("fill", "none") + " " + p.stroke(it, look))
		p.Path(trace(sh))
	case scene.Hop:
		p.hop(it, sh, look)
	case scene.Text:
		p.text(it, sh)
	}
}

// surface is the look of a filled or outlined area.
func (p *painter) surface(it scene.Item, look colours) string {
	// The lines of a hatched surface are drawn before it, under its edge.
	return attribute("fill", p.theme.Fill(it)) + " " + p.stroke(it, look)
}

// stroke is the look of a line or an edge.
func (p *painter) stroke(it scene.Item, look colours) string {
	colour, width, rest := look.edge, "2.5", ""
	switch it.Finish {
	case scene.Plain, scene.Outline:
		if it.Role == scene.Tray {
			width = "1.5"
		}
	case scene.Bold:
		colour, width, rest = look.bold, "5", ` stroke-linecap="round"`
	case scene.Fine:
		width = "1.5"
	case scene.Dashed:
		rest = ` stroke-dasharray="9 6"`
	case scene.Dotted:
		width, rest = "2", ` stroke-dasharray="3 6"`
	}
	return attribute("stroke", colour) + ` stroke-width="` + width + `" stroke-linejoin="round"` + rest
}

// hop draws a jump: a curve that leaves and lands at the same height, and an
// arrow head where it lands.
//
//	      ___
//	    /     \
//	   /       v
//	--x1------x2--
func (p *painter) hop(it scene.Item, h scene.Hop, look colours) {
	stroke := p.stroke(it, look)
	if it.Role == scene.Moved && it.Finish == scene.Plain {
		// The jump just made is heavier, for eyes and printers without its colour.
		stroke = strings.Replace(stroke, `stroke-width="2.5"`, `stroke-width="4"`, 1)
	}
	p.with(attribute("fill", "none") + " " + stroke)
	// A cubic with both handles at 4/3 of the rise reaches just the rise.
	top := strconv.Itoa(h.Y - h.Rise*4/3)
	in := (h.X2 - h.X1) / 5
	p.Path("M" + strconv.Itoa(h.X1) + " " + strconv.Itoa(h.Y) +
		"C" + strconv.Itoa(h.X1+in) + " " + top + " " + strconv.Itoa(h.X2-in) + " " + top + " " +
		strconv.Itoa(h.X2) + " " + strconv.Itoa(h.Y))
	p.with(attribute("fill", look.bold) + ` stroke="none"`)
	x, y := strconv.Itoa(h.X2), strconv.Itoa(h.Y)
	head := "l-7 -14h14Z"
	if h.Rise < 0 {
		head = "l-7 14h14Z"
	}
	p.Path("M" + x + " " + y + head)
}

func (p *painter) text(it scene.Item, t scene.Text) {
	glyphs, bars := t.Typeset()
	for _, g := range glyphs {
		if strings.TrimSpace(g.Text) == "" {
			continue
		}
		role := g.Role
		if role == scene.Ink {
			role = it.Role
		}
		look := attribute("fill", p.theme.roles[role].text) + " " + number("font-size", t.Size)
		if t.Bold {
			look += ` font-weight="700"`
		}
		switch g.Anchor {
		case scene.Centre:
			look += ` text-anchor="middle"`
		case scene.Right:
			look += ` text-anchor="end"`
		}
		p.with(look)
		p.buf.WriteString("<text " + number("x", g.X) + " " + number("y", g.Y) + ">" + escaped(g.Text) + "</text>\n")
	}
	for _, b := range bars {
		p.with(attribute("stroke", p.theme.roles[it.Role].text) + ` stroke-width="3"`)
		p.Line(b.X1, b.Y1, b.X2, b.Y2)
	}
}

// trace is the path through points.
func trace(points []scene.Point) string {
	var d strings.Builder
	for i, q := range points {
		if i == 0 {
			d.WriteByte('M')
		} else {
			d.WriteByte('L')
		}
		d.WriteString(strconv.Itoa(q.X) + " " + strconv.Itoa(q.Y))
	}
	return d.String()
}

// Width is the greatest width in pixels at which a scene has no more than so many
// pixels.
func Width(s *scene.Scene, pixels int) int {
	w := 1
	for (w+1)*((s.H*(w+1)+s.W/2)/s.W) <= pixels {
		w++
	}
	return w
}
