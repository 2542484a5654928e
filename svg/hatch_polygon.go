package svg

import (
	"slices"
	"strconv"
	"strings"

	"modeler/models/scene"
)

// hatchPolygon draws the lines of a hatched polygon. Their ends are the whole units
// nearest to its edges.
func (p *painter) hatchPolygon(it scene.Item, corners scene.Polygon) {
	h, has := p.theme.hatching(it)
	if !has {
		return
	}
	var d strings.Builder
	if h.rising {
		across(&d, corners, h.apart, 1, 1)
	}
	if h.falling {
		across(&d, corners, h.apart, 1, -1)
	}
	if h.level {
		across(&d, corners, h.apart, 0, 1)
	}
	if d.Len() == 0 {
		return
	}
	p.with(attribute("fill", "none") + " " + attribute("stroke", p.theme.roles[it.Role].edge) + ` stroke-width="1.5"`)
	p.Path(d.String())
}

// across writes the stretches inside a polygon of the lines on which a·x + b·y is a
// multiple of apart.
func across(d *strings.Builder, corners scene.Polygon, apart, a, b int) {
	height := func(q scene.Point) int { return a*q.X + b*q.Y }
	low, high := height(corners[0]), height(corners[0])
	for _, q := range corners {
		low, high = min(low, height(q)), max(high, height(q))
	}
	first := (low/apart + 1) * apart
	if low < 0 {
		first = low / apart * apart
	}
	for at := first; at < high; at += apart {
		var ends []scene.Point
		for i, q := range corners {
			r := corners[(i+1)%len(corners)]
			from, to := height(q), height(r)
			if from == to || at < min(from, to) || at >= max(from, to) {
				continue // an end is counted with one of its two edges
			}
			ends = append(ends, scene.Point{X: q.X + nearest((r.X-q.X)*(at-from), to-from), Y: q.Y + nearest((r.Y-q.Y)*(at-from), to-from)})
		}
		slices.SortFunc(ends, func(p, q scene.Point) int {
			if p.X != q.X {
				return p.X - q.X
			}
			return p.Y - q.Y
		})
		for i := 0; i+1 < len(ends); i += 2 {
			if ends[i] != ends[i+1] {
				d.WriteString("M" + strconv.Itoa(ends[i].X) + " " + strconv.Itoa(ends[i].Y) + "L" + strconv.Itoa(ends[i+1].X) + " " + strconv.Itoa(ends[i+1].Y))
			}
		}
	}
}

// nearest is the whole number nearest to a/b.
func nearest(a, b int) int {
	if b < 0 {
		a, b = -a, -b
	}
	if a < 0 {
		return -((-a + b/2) / b)
	}
	return (a + b/2) / b
}
