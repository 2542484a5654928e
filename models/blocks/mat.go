package blocks

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// A mat has a tray for each place, the largest on the left, and in it one or two
// bands of pieces: the numbers of the problem, one above the other. The upper
// band stands on its lower edge, so that what will be joined lies close. Every
// piece has its slot for the whole lesson.
//
//	      hundreds      tens     ones        names
//	     +----------+ +-------+ +-------+
//	345  | ## ## ## | | ||||  | | ooooo |    band 0
//	 +   |          | |       | |       |
//	278  | ## ##    | | ||||| | | ooooo |    band 1
//	     |          | | ||    | | ooo   |
//	     +----------+ +-------+ +-------+
//	          6           2         3        tally
//
// Pieces of two bands that are pushed together make a full ten in the upper band,
// and the rest stay in the lower one. Fewer than ten close up under the upper band.
const (
	trayTop  = 74 // under the names of the places
	trayPad  = 16 // from the edge of a tray to its pieces
	trayGap  = 10 // between two trays
	bandGap  = 34 // between two bands
	tallyGap = 34 // from the trays to the middle of the first line under them
	tallyRow = 38 // from that line to the next
)

// closedUp is the lower band once its pieces have been pushed up to the upper one.
const closedUp = 2

// places is how many places have a piece: one, ten, hundred, thousand.
const places = 4

// leastCell and mostCell bound the side of a one.
const leastCell, mostCell = 4, 26

// demand is what a mat must have room for.
type demand struct {
	numbers []arithmetic.Counts // of each band
	slots   []arithmetic.Counts // of each band: the most pieces that lie there
	tens    [places]bool        // places in which ten pieces make full rows
	top     int                 // the largest place
	gutter  int                 // width of the labels left of the trays
	floor   [places]int         // the least width of each tray
}

// mat is the layout of a lesson.
type mat struct {
	up     int // how far down the paper the mat begins
	cell   int
	tight  bool // small pieces lie closer, where many must lie there
	top    int
	perRow [places]int
	trays  [places]scene.Box
	left   [places]int    // where the pieces of a place start
	bands  [2]scene.Box   // X and W are those of the labels
	labels [2]int         // the height at which the label of each band stands
	starts [3][places]int // where the pieces of a place start in a band
}

// The height that pieces may take, and what a layout is worth: a larger cell is
// worth a taller picture, and most of all while ones are hard to see.
const (
	highest    = 560
	clearCell  = 8
	perCell    = 60
	perDimCell = 100
	perFive    = 80 // for ones in rows of five: ten of them are seen as two rows
)

// layMat chooses the size of a cell, and how many pieces stand in a row, so that
// everything fits on the paper.
func layMat(d demand) mat {
	var best mat
	worth, perRows := 0, arrangements(d)
	for cell := leastCell; cell <= mostCell; cell++ {
		for _, perRow := range perRows {
			m := mat{cell: cell, top: d.top, perRow: perRow}
			if !m.place(d) {
				continue
			}
			if height := m.trays[0].H - 2*trayPad; height <= highest {
				w := perCell*cell + perDimCell*min(cell, clearCell) - height*(len(d.slots)+1)/2
				if perRow[0] == 5 {
					w += perFive
				}
				if w > worth {
					best, worth = m, w
				}
			}
		}
	}
	return best
}

// arrangements are the numbers of pieces in a row to try, those that are read
// at a glance first. A row longer than there are pieces is not worth a try.
func arrangements(d demand) (list [][places]int) {
	flats, cubes := 1, 1
	if d.top >= 2 {
		flats = min(6, max(1, d.most(2)))
	}
	if d.top >= 3 {
		cubes = min(5, max(1, d.most(3)))
	}
	for _, ones := range []int{5, 10} {
		for _, rods := range []int{5, 10} {
			for f := flats; f >= 1; f-- {
				for c := cubes; c >= 1; c-- {
					list = append(list, [places]int{ones, rods, f, c})
				}
			}
		}
	}
	return list
}

// most is the most pieces that lie in a band of a tray.
func (d demand) most(power int) int {
	most := int64(0)
	for _, slots := range d.slots {
		most = max(most, slots[power])
	}
	return int(most)
}

// place gives every tray and band its place; false when the trays are wider than
// the paper, or a ten has no full rows.
func (m *mat) place(d demand) bool {
	total := d.gutter - trayGap
	var widths, inner [places]int
	for power := range m.top + 1 {
		if d.tens[power] && 10%m.perRow[power] != 0 {
			return false
		}
		inner[power] = m.blockWidth(power, d.most(power))
		widths[power] = max(inner[power]+2*trayPad, d.floor[power])
		total += widths[power] + trayGap
	}
	if total > scene.PaperW-2*scene.Margin {
		return false
	}
	height := m.placeBands(d) + trayPad - m.up - trayTop
	x := (scene.PaperW-total)/2 + d.gutter
	for i := range m.bands {
		m.bands[i].X = x - d.gutter
	}
	for power := m.top; power >= 0; power-- {
		m.trays[power] = scene.Box{X: x, Y: m.up + trayTop, W: widths[power], H: height}
		m.left[power] = x + (widths[power]-inner[power])/2
		x += widths[power] + trayGap
	}
	return true
}

// placeBands gives every band its height and returns where the last one ends.
func (m *mat) placeBands(d demand) (bottom int) {
	y := m.up + trayTop + trayPad
	for band, slots := range d.slots {
		h, row := 2*scene.Small, scene.Small
		for power := range m.top + 1 {
			h = max(h, m.blockHeight(power, int(slots[power])))
			row = max(row, m.blockHeight(power, min(1, int(d.numbers[band][power]))))
		}
		m.labels[band] = y + row/2
		for power := range m.top + 1 {
			m.starts[band][power] = y
			if band == 0 && len(d.slots) > 1 {
				m.starts[band][power] = y + h - m.blockHeight(power, int(slots[power]))
				m.labels[band] = y + h - row/2
			}
		}
		m.bands[band] = scene.Box{Y: y, W: d.gutter, H: h}
		bottom = y + h
		y = bottom + bandGap
	}
	for power := range m.top + 1 {
		_, dy := m.gaps(power)
		m.starts[closedUp][power] = m.bands[0].Bottom() + dy
	}
	return bottom
}

// centred is the mat without the labels of its bands, in the middle of the paper.
func (m mat) centred() mat {
	for power := range m.top + 1 {
		m.trays[power].X -= m.bands[0].W / 2
		m.left[power] -= m.bands[0].W / 2
	}
	return m
}

// bottom is the lower edge of the trays.
func (m *mat) bottom() int { return m.trays[0].Bottom() }

// depth is how far the back of a cube is drawn behind its front, to the right
// and up: half of the edge, slantwise.
func (m *mat) depth() int { return m.cell * 7 / 2 }
