package svg

import (
	"strconv"
	"strings"

	"modeler/models/scene"
)

// hatching is how a hatched theme fills the surfaces of a role: lines that rise
// or fall, or lie level, this far apart.
type hatching struct {
	rising, falling, level bool
	apart                  int
}

var hatchings = map[scene.Role]hatching{
	scene.First:  {rising: true, apart: 14},
	scene.Second: {falling: true, apart: 14},
	scene.Result: {rising: true, falling: true, apart: 20},
	scene.Moved:  {level: true, apart: 12},
}

// String says how the lines run.
func (h hatching) String() string {
	switch {
	case h.rising && h.falling:
		return "crossed"
	case h.rising:
		return "rising"
	case h.falling:
		return "falling"
	}
	return "level"
}

// cellHatchings is how the small cells of a grid are filled: with a line from
// corner to corner of each, or both. Other lines on top of lines would hide the
// count. Those of the first quantity stay plain, so that each role is a shade
// darker where the cells are too small for their lines to be seen.
var cellHatchings = map[scene.Role]hatching{
	scene.Second: {rising: true},
	scene.Result: {falling: true},
	scene.Moved:  {rising: true, falling: true},
}

// leastHatched is the side of the smallest cell that gets the lines of a surface,
// and leastCrossed that of the smallest that gets a line from corner to corner.
const leastHatched, leastCrossed = 20, 4

// leastDisc is the radius of the smallest disc that gets the lines of a surface:
// counters are solid marks, and smaller.
const leastDisc = 40

// hatching is the lines that an item's surface gets: rectangles, wedges, polygons
// that are a part of a whole, grids and large discs do.
func (t *Theme) hatching(it scene.Item) (h hatching, has bool) {
	if !t.hatched || it.Finish != scene.Plain {
		return hatching{}, false
	}
	switch sh := it.Shape.(type) {
	case scene.Rect, scene.Wedge:
		h, has = hatchings[it.Role]
	case scene.Polygon:
		if it.Worth.Sign() > 0 && it.Worth.Num() < it.Worth.Den() { // a part of a shape; on others numbers may stand
			h, has = hatchings[it.Role]
		}
	case scene.Circle:
		if sh.R >= leastDisc {
			h, has = hatchings[it.Role]
		}
	case scene.Grid:
		w, high := sh.W/sh.Cols, sh.H/sh.Rows
		switch {
		case min(w, high) >= leastHatched:
			h, has = hatchings[it.Role]
		case w == high && w >= leastCrossed:
			h, has = cellHatchings[it.Role]
			h.apart = w
		}
	}
	return h, has
}

// hatches reports whether an item's surface gets lines.
func (t *Theme) hatches(it scene.Item) bool {
	_, has := t.hatching(it)
	return has
}

// manyHatched is how many rectangles of the first quantity get no lines, as its
// small cells get none, so that a picture of many stays small.
const manyHatched = 40

// hatch draws the lines of items that look the same, inside their boxes. They are
// drawn one by one, since patterns and clips do not survive embedding.
func (p *painter) hatch(items ...scene.Item) {
	if len(items) >= manyHatched && items[0].Role == scene.First {
		return
	}
	var d strings.Builder
	width := "1.5"
	for _, it := range items {
		h, _ := p.theme.hatching(it)
		if h.apart < smallCell {
			width = "0.8"
		}
		h.lines(&d, it.Shape.Box(), false)
	}
	p.with(attribute("fill", "none") + " " + attribute("stroke", p.theme.roles[items[0].Role].edge) + ` stroke-width="` + width + `"`)
	p.Path(d.String())
}

// hatchMany is hatch for many small cells, written shorter.
func (p *painter) hatchMany(items []scene.Item) {
	var d strings.Builder
	for _, it := range items {
		h, _ := p.theme.hatching(it)
		h.lines(&d, it.Shape.Box(), true)
	}
	p.with(attribute("fill", "none") + " " + attribute("stroke", p.theme.roles[items[0].Role].edge) + ` stroke-width="0.8"`)
	p.Path(d.String())
}

// lines writes the lines inside a box as a path. If it is to be short, every point
// is given as a step from the one before it.
func (h hatching) lines(d *strings.Builder, b scene.Box, short bool) {
	var at scene.Point
	segment := func(x1, y1, x2, y2 int) {
		if short {
			from, to := scene.Point{X: x1, Y: y1}, scene.Point{X: x2, Y: y2}
			if at == (scene.Point{}) {
				d.WriteString("M" + steps(x1, y1))
			} else {
				d.WriteString("m" + steps(x1-at.X, y1-at.Y))
			}
			d.WriteString("l" + steps(to.X-from.X, to.Y-from.Y))
			at = to
			return
		}
		d.WriteString("M" + strconv.Itoa(x1) + " " + strconv.Itoa(y1) + "L" + strconv.Itoa(x2) + " " + strconv.Itoa(y2))
	}
	for k := h.apart; k < b.W+b.H; k += h.apart {
		// The diagonal x + y = k of the box, from its left or bottom edge to its
		// top or right edge.
		x1, y1 := max(0, k-b.H), min(k, b.H)
		x2, y2 := min(k, b.W), max(0, k-b.W)
		if h.rising {
			segment(b.X+x1, b.Y+y1, b.X+x2, b.Y+y2)
		}
		if h.falling {
			segment(b.Right()-x1, b.Y+y1, b.Right()-x2, b.Y+y2)
		}
	}
	if h.level {
		for y := b.Y + h.apart; y < b.Bottom(); y += h.apart {
			segment(b.X, y, b.Right(), y)
		}
	}
}

// steps writes two numbers of a path; the sign of the second may part them.
func steps(x, y int) string {
	if y < 0 {
		return strconv.Itoa(x) + strconv.Itoa(y)
	}
	return strconv.Itoa(x) + " " + strconv.Itoa(y)
}
