package blocks

import "modeler/models/scene"

// size is the room of one piece: a one is 1 cell, a ten 10 cells, a hundred 10
// by 10, a thousand the same with its depth.
func (m *mat) size(power int) (w, h int) {
	switch power {
	case 0:
		return m.cell, m.cell
	case 1:
		return m.cell, 10 * m.cell
	case 2:
		return 10 * m.cell, 10 * m.cell
	}
	return 10*m.cell + m.depth(), 10*m.cell + m.depth()
}

// gaps are the distances between two pieces of a place, sideways and downwards.
func (m *mat) gaps(power int) (dx, dy int) {
	near, far := max(5, (m.cell+1)/2), max(7, m.cell*2/3)
	if m.tight {
		near, far = max(3, (m.cell+1)/2), max(5, m.cell*2/3)
	}
	switch power {
	case 0:
		return near, near
	case 1:
		return near, far
	}
	return far, far
}

// fiveGap sets the fives of a long row apart.
func (m *mat) fiveGap() int {
	if m.tight {
		return max(3, m.cell*2/3)
	}
	return max(6, m.cell)
}

func (m *mat) blockWidth(power, count int) int {
	if count == 0 {
		return 0
	}
	return m.slot(power, 0, min(count, m.perRow[power])-1).Right() - m.left[power]
}

func (m *mat) blockHeight(power, count int) int {
	_, h := m.size(power)
	_, dy := m.gaps(power)
	rows := (count + m.perRow[power] - 1) / m.perRow[power]
	return rows*h + max(0, rows-1)*dy
}

// slot is the room of the i-th piece of a place in a band.
func (m *mat) slot(power, band, i int) scene.Box {
	w, h := m.size(power)
	dx, dy := m.gaps(power)
	col, row := i%m.perRow[power], i/m.perRow[power]
	x, y := m.left[power]+col*(w+dx), row*(h+dy)
	if m.perRow[power] > 6 {
		x += col / 5 * m.fiveGap()
	}
	return scene.Box{X: x, Y: m.starts[band][power] + y, W: w, H: h}
}
