package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// nameRoom is the room for the brackets and the names of the rows.
func (p *plot) nameRoom() int {
	wide := max(scene.Advance(rowsName, scene.Small, false), scene.Advance(arithmetic.Grouped(sumOf(p.rows)), scene.Middle, true))
	if p.outerLeft() == 0 {
		wide = max(wide, p.partNamesWide())
	}
	return p.outerLeft() + wide + toName + braceDeep + toBrace + bandEdge
}

// outerLeft is how far left of the names of the parts of the rows the bracket of
// all rows stands.
func (p *plot) outerLeft() int {
	if !p.outerRows || len(p.rows) == 1 {
		return 0
	}
	return p.partNamesWide() + toName + braceDeep
}

// partNamesWide is the room for the numbers of the parts of the rows.
func (p *plot) partNamesWide() int {
	wide := 0
	for _, r := range p.rows {
		wide = max(wide, scene.Advance(arithmetic.Grouped(r), scene.Middle, true))
	}
	return wide
}

// outerUp is how far above the names of the parts of the columns the bracket of
// all columns stands.
func (p *plot) outerUp() int {
	if !p.outer || len(p.cols) == 1 {
		return 0
	}
	return outerTall
}
