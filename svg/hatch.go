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

// leastHatched is the side of the smallest cell that gets lines: in smaller ones
// lines on top of lines would hide the count.
const leastHatched = 20

// hatches reports whether an item's surface gets lines: rectangles and grids do.
func (t *Theme) hatches(it scene.Item) bool {
	_, has := hatchings[it.Role]
	if !t.hatched || !has || it.Finish != scene.Plain {
		return false
	}
	switch sh := it.Shape.(type) {
	case scene.Rect:
		return true
	case scene.Grid:
		return min(sh.W/sh.Cols, sh.H/sh.Rows) >= leastHatched
	}
	return false
}

// hatch draws the lines of a role inside a box. They are drawn one by one, since
// patterns and clips do not survive embedding.
func (p *painter) hatch(role scene.Role, b scene.Box) {
	h := hatchings[role]
	var d strings.Builder
	segment := func(x1, y1, x2, y2 int) {
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
	p.with(attribute("fill", "none") + " " + attribute("stroke", p.theme.roles[role].edge) + ` stroke-width="1.5"`)
	p.Path(d.String())
}
