package svg

import (
	"strconv"
	"strings"

	"modeler/models/scene"
)

// tenths writes a position that is counted in tenths of a unit.
func tenths(n int) string {
	text := strconv.Itoa(n / 10)
	if n < 0 && n/10 == 0 {
		text = "-0"
	}
	if n%10 == 0 {
		return text
	}
	return text + "." + strconv.Itoa(max(n%10, -(n%10)))
}

func place(p scene.Point) string { return tenths(p.X) + " " + tenths(p.Y) }

// rim is an arc from one place to another, clockwise.
func rim(w scene.Wedge, r int) (from, arc string) {
	large := "0"
	if 2*w.Count > w.Parts {
		large = "1"
	}
	w.R = r
	a, b := w.Ends()
	size := strconv.Itoa(r)
	return place(a), "A" + size + " " + size + " 0 " + large + " 1 " + place(b)
}

// wedge draws a part of a disc: from the centre to the rim, round and back.
func (p *painter) wedge(it scene.Item, w scene.Wedge, look colours) {
	p.hatchWedge(it, w)
	p.with(p.surface(it, look))
	from, arc := rim(w, w.R)
	p.Path("M" + strconv.Itoa(w.X) + " " + strconv.Itoa(w.Y) + "L" + from + arc + "Z")
}

// hatchDisc draws the lines of a hatched disc, those of its two halves.
func (p *painter) hatchDisc(it scene.Item, c scene.Circle) {
	for half := range 2 {
		p.hatchWedge(it, scene.Wedge{X: c.X, Y: c.Y, R: c.R, From: half, Count: 1, Parts: 2})
	}
}

// hatchWedge draws the lines of a hatched wedge: arcs where a rectangle has rising
// lines, spokes where it has falling ones, and close arcs for level ones.
func (p *painter) hatchWedge(it scene.Item, w scene.Wedge) {
	h, has := p.theme.hatching(it)
	if !has {
		return
	}
	var d strings.Builder
	if h.rising || h.level {
		apart := h.apart
		if h.level {
			apart /= 2
		}
		for r := apart; r < w.R; r += apart {
			from, arc := rim(w, r)
			d.WriteString("M" + from + arc)
		}
	}
	if h.falling {
		// As many spokes as stand so far apart at the rim; 44/7 radii go round it.
		spokes := max(2, 44*w.R*w.Count/(7*w.Parts*h.apart))
		for i := 1; i < spokes; i++ {
			cut, parts := w.From*spokes+w.Count*i, w.Parts*spokes
			d.WriteString("M" + place(scene.Rim(w.X, w.Y, w.R/3, cut, parts)) + "L" + place(scene.Rim(w.X, w.Y, w.R, cut, parts)))
		}
	}
	p.with(attribute("fill", "none") + " " + attribute("stroke", p.theme.roles[it.Role].edge) + ` stroke-width="1.5"`)
	p.Path(d.String())
}
