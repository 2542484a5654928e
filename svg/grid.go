package svg

import (
	"strconv"
	"strings"

	"modeler/models/scene"
)

// smallCell is the side under which the lines between cells are drawn finer, so
// that the tint still shows between them.
const smallCell = 12

// manyGrids is how many grids of one look are drawn together: first all their
// rectangles and then all their lines, so that a picture of many stays small.
const manyGrids = 12

// gridsAlike is how many of the first items are grids that look the same.
func (p *painter) gridsAlike(items []scene.Item) int {
	for i, it := range items {
		g, is := it.Shape.(scene.Grid)
		first, _ := items[0].Shape.(scene.Grid)
		if !is || it.Role != items[0].Role || it.Finish != items[0].Finish ||
			small(g) != small(first) || p.theme.hatches(it) != p.theme.hatches(items[0]) {
			return i
		}
	}
	return len(items)
}

func small(g scene.Grid) bool { return min(g.W/g.Cols, g.H/g.Rows) < smallCell }

// grid draws a rectangle and the lines between its cells.
func (p *painter) grid(it scene.Item, g scene.Grid, look colours) {
	if p.theme.hatches(it) {
		p.hatch(it)
	}
	p.with(p.surface(it, look))
	p.Rect(g.X, g.Y, g.W, g.H)
	if !ruled(it, g) {
		return
	}
	var d strings.Builder
	for i := 1; i < g.Cols; i++ {
		d.WriteString("M" + strconv.Itoa(g.X+i*(g.W/g.Cols)) + " " + strconv.Itoa(g.Y) + "v" + strconv.Itoa(g.H))
	}
	for i := 1; i < g.Rows; i++ {
		d.WriteString("M" + strconv.Itoa(g.X) + " " + strconv.Itoa(g.Y+i*(g.H/g.Rows)) + "h" + strconv.Itoa(g.W))
	}
	p.rules(g, look, d.String())
}

// ruled reports whether a grid has lines between its cells: not when it has one
// cell, nor when it is only dashed.
func ruled(it scene.Item, g scene.Grid) bool {
	return g.Cols*g.Rows > 1 && it.Finish != scene.Dashed
}

// rules draws the lines between the cells of a grid.
func (p *painter) rules(g scene.Grid, look colours, d string) {
	width := "1.5"
	if small(g) {
		width = "0.8"
	}
	p.with(attribute("fill", "none") + " " + attribute("stroke", look.edge) + ` stroke-width="` + width + `"`)
	p.Path(d)
}

// grids draws many grids that look the same, none of which lies on another. Each
// line starts where the one before it started, by a step: that is the shortest.
func (p *painter) grids(items []scene.Item) {
	look := p.theme.roles[items[0].Role]
	switch {
	case p.theme.hatches(items[0]) && small(items[0].Shape.(scene.Grid)):
		p.hatchMany(items)
	case p.theme.hatches(items[0]):
		p.hatch(items...)
	}
	p.with(p.surface(items[0], look))
	var d strings.Builder
	for _, it := range items {
		g := it.Shape.(scene.Grid)
		p.Rect(g.X, g.Y, g.W, g.H)
		if !ruled(it, g) {
			continue
		}
		wide, high := strconv.Itoa(g.W), strconv.Itoa(g.H)
		if step := g.W / g.Cols; g.Cols > 1 {
			d.WriteString("M" + strconv.Itoa(g.X+step) + " " + strconv.Itoa(g.Y) + "v" + high)
			d.WriteString(strings.Repeat("m"+strconv.Itoa(step)+"-"+high+"v"+high, g.Cols-2))
		}
		if step := g.H / g.Rows; g.Rows > 1 {
			d.WriteString("M" + strconv.Itoa(g.X) + " " + strconv.Itoa(g.Y+step) + "h" + wide)
			d.WriteString(strings.Repeat("m-"+wide+" "+strconv.Itoa(step)+"h"+wide, g.Rows-2))
		}
	}
	if d.Len() > 0 {
		p.rules(items[0].Shape.(scene.Grid), look, d.String())
	}
}
