package places

import (
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// name is what stands over a column: within a period it is hundreds, tens or ones.
func (t *table) name(power int) string {
	if t.places > 0 {
		return words.DecimalColumn(t.places, power)
	}
	if t.periods {
		power %= 3
	}
	return words.Place(power, 2)
}

// row is the middle of a row under the table, from 0.
func (t *table) row(i int) int { return t.bottom() + firstRow + i*rowStep }

// rowsEnd is the lower edge of a number of rows under the table.
func (t *table) rowsEnd(rows int) int {
	if rows == 0 {
		return t.bottom()
	}
	return t.row(rows-1) + scene.Middle/2 + 4
}

// middle is the middle of a column.
func (t *table) middle(power int) int { return t.columns[power].X + t.columns[power].W/2 }

// slot is the counter number i of a place in a band, from 0. What is beyond ten
// goes on in the next band, where there is one.
func (t *table) slot(power, band, i int) scene.Circle {
	line, at := i/fives, i%fives
	across := min(int(t.most[power]), fives) // counters that stand side by side in the lesson
	if !t.wide {
		across = 1 + min(int(t.most[power])-1, fives)/fives
	}
	left := t.middle(power) - (across-1)*t.step/2
	top := t.bands[band].Y + t.r
	if t.wide {
		return scene.Circle{X: left + at*t.step, Y: top + line*t.step, R: t.r}
	}
	return scene.Circle{X: left + line*t.step, Y: top + at*t.step, R: t.r}
}

// base is the empty table on a paper with a number of rows under it.
func (t *table) base(rows int) *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, H: t.rowsEnd(rows) + scene.Margin}
	t.spread(s)
	return s
}

// spread draws the columns with their names.
func (t *table) spread(s *scene.Scene) {
	const round = 8
	for power := t.top; power >= 0; power-- {
		c := t.columns[power]
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: c.X, Y: c.Y, W: c.W, H: c.H, Round: round})
		s.Add(telling.Text(scene.Note, t.middle(power), c.Y-nameH/2-1, scene.Small, t.name(power)))
		if !t.periods || power%3 != 0 {
			continue
		}
		first := t.columns[min(power+2, t.top)]
		bar := scene.Rect{X: first.X, Y: scene.Margin, W: c.Right() - first.X, H: periodH - 6, Round: round}
		s.Draw(scene.Tray, scene.Plain, bar)
		s.Add(telling.Text(scene.Ink, bar.X+bar.W/2, bar.Y+bar.H/2-1, scene.Small, words.Period(power/3)))
	}
}
