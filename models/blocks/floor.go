package blocks

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// A floor has a mat and the boxes of equal groups, or of the numbers of a sum.
// What is shared lies on the mat first, above the boxes; what is brought together
// comes to the mat, under them. In a box the places stand side by side, with a thin
// line between them, so that an empty one is seen.
//
//	    hundreds     tens     ones
//	   +--------+ +-------+ +------+
//	   | ## ##  | | |||   | | ooo  |         mat
//	   +--------+ +-------+ +------+
//	       2          3         3
//	+-------------+ +-------------+
//	| ## | | | oo | | ## | | | oo |          boxes
//	+-------------+ +-------------+
//	      112             112                labels
const (
	boxPad   = 10 // from the edge of a box to its pieces
	boxGap   = 16 // between two boxes side by side
	placeGap = 18 // between two places in a box
	emptyW   = 14 // width of a place in which nothing lies
	labelGap = 24 // from a box to the middle of its label
	labelH   = 44 // from a box to the next one under it, with its label between
	floorGap = 18 // between the mat and the boxes
)

// The height that a mat and its boxes may take together. Only where nothing else
// has room may it be the second.
const floorHigh, floorHighest = 400, 700

// plan is what a floor must have room for.
type plan struct {
	mat    arithmetic.Counts   // the most pieces that lie on the mat
	top    int                 // the largest place of the mat
	floor  [places]int         // the least width of each tray
	rows   int                 // lines under the mat
	groups []arithmetic.Counts // the most that lies in each box
	labels int                 // the widest label of a box
	above  bool                // the boxes stand above the mat
}

// floor is the layout of a lesson with groups.
type floor struct {
	mat
	rows  int
	box   mat // one box: its pieces lie as seen from its upper left corner
	boxW  int
	boxH  int
	edges [places]int // where a place ends in a box and the next smaller one begins
	boxes []scene.Box
}

// Pieces in a row to try, for a mat and for a box.
var (
	matRows = [places][]int{{5, 10, 20}, {5, 10, 20, 30}, {1, 2, 3, 4, 5, 6, 8, 10, 12, 15}, {1, 2, 3, 4, 5, 9}}
	boxRows = [places][]int{{5, 3, 2}, {5, 10, 3}, {2, 1, 3, 5}, {2, 1, 3}}
)

// layFloor chooses the size of a cell and all arrangements, as layMat does.
// ok is false where there is no room.
func layFloor(p plan) (best floor, ok bool) {
	worth, chosen := 0, false
	for cell := leastCell; cell <= mostCell; cell++ {
		f, height, ok := p.at(cell)
		if !ok || height > floorHighest || chosen && height > floorHigh {
			continue
		}
		if w := perCell*cell + perDimCell*min(cell, clearCell) - height; !chosen || w > worth {
			best, worth, chosen = f, w, true
		}
	}
	return best, chosen
}

// at is the floor with cells of one size, as low as it can be. height is what the
// pieces take.
func (p plan) at(cell int) (f floor, height int, ok bool) {
	f = floor{mat: mat{cell: cell, tight: true, top: p.top}, rows: p.rows}
	const width = scene.PaperW - 2*scene.Margin
	most := arithmetic.Counts{}
	for _, g := range p.groups {
		most = most.Most(g)
	}
	f.box = mat{cell: cell, tight: true, top: most.Top()}
	boxesHigh := 0
	for rows := 1; rows <= len(p.groups); rows++ {
		cols := (len(p.groups) + rows - 1) / rows
		room := (width+boxGap)/cols - boxGap
		perRow, h, fits := f.box.lowest(boxRows, most, room-2*boxPad, func(w [places]int) int {
			sum := -placeGap
			for power := range f.box.top + 1 {
				sum += max(w[power], emptyW) + placeGap
			}
			return max(sum, p.labels)
		})
		total := rows*(h+2*boxPad+labelH) - labelH
		if !fits || (rows-1)*cols >= len(p.groups) || ok && total >= boxesHigh {
			continue
		}
		ok, boxesHigh = true, total
		f.box.perRow, f.boxH = perRow, h+2*boxPad
		f.boxes = make([]scene.Box, 0, len(p.groups))
		f.placeBox(most, p.labels)
		for i := range p.groups {
			row, here := i/cols, min(cols, len(p.groups)-i/cols*cols)
			left := (scene.PaperW - here*(f.boxW+boxGap) + boxGap) / 2
			f.boxes = append(f.boxes, scene.Box{X: left + i%cols*(f.boxW+boxGap), Y: row * (f.boxH + labelH), W: f.boxW, H: f.boxH})
		}
	}
	if !ok {
		return f, 0, false
	}
	d := demand{numbers: []arithmetic.Counts{p.mat}, slots: []arithmetic.Counts{p.mat}, top: p.top, floor: p.floor}
	var h int
	f.perRow, h, ok = f.lowest(matRows, p.mat, width, func(w [places]int) int {
		sum := -trayGap
		for power := range p.top + 1 {
			sum += max(w[power]+2*trayPad, p.floor[power]) + trayGap
		}
		return sum
	})
	if p.above {
		f.up = scene.Margin + boxesHigh + labelH - scene.Margin/2
	}
	if !ok || !f.place(d) {
		return f, 0, false
	}
	down := scene.Margin
	if !p.above {
		down = f.tallied(p.rows) + floorGap
	}
	for i := range f.boxes {
		f.boxes[i].Y += down
	}
	return f, h + boxesHigh, true
}

// lowest finds the arrangement of so many pieces that is as low as the room in the
// width allows. span is how wide all is, given the widths of the places.
func (m mat) lowest(rows [places][]int, count arithmetic.Counts, room int, span func([places]int) int) (perRow [places]int, height int, ok bool) {
	var heights []int
	for power := range m.top + 1 {
		for _, n := range rows[power] {
			m.perRow[power] = n
			heights = append(heights, m.blockHeight(power, int(count[power])))
		}
	}
	slices.Sort(heights)
	for _, height = range slices.Compact(heights) {
		var widths [places]int
		fits := true
		for power := range m.top + 1 {
			found := false
			for _, n := range rows[power] {
				m.perRow[power] = n
				w := m.blockWidth(power, int(count[power]))
				if m.blockHeight(power, int(count[power])) <= height && (!found || w < widths[power]) {
					perRow[power], widths[power], found = n, w, true
				}
			}
			fits = fits && found
		}
		if fits && span(widths) <= room {
			return perRow, height, true
		}
	}
	return perRow, 0, false
}

// placeBox gives every place its room in a box.
func (f *floor) placeBox(most arithmetic.Counts, label int) {
	m := &f.box
	x := boxPad
	for power := m.top; power >= 0; power-- {
		w := m.blockWidth(power, int(most[power]))
		m.left[power] = x + max(0, emptyW-w)/2
		m.starts[0][power] = boxPad
		x += max(w, emptyW) + placeGap
		f.edges[power] = x - placeGap/2
	}
	f.boxW = x - placeGap + boxPad
	if more := label + 2*boxPad - f.boxW; more > 0 {
		for power := range m.top + 1 {
			m.left[power] += more / 2
			f.edges[power] += more / 2
		}
		f.boxW += more
	}
}
