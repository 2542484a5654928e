package table

import (
	"modeler/fraction"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// Sizes of a table, in units: cells one under the other, with a heading above.
const (
	headTall = 48
	cellTall = 56
	cellGap  = 10
	pitch    = cellTall + cellGap
)

// column is a column of cells.
type column struct{ x, w int }

func (c column) middle() int { return c.x + c.w/2 }

// rowY is the middle of a row of cells, from 0.
func rowY(row int) int { return scene.Margin + headTall + row*pitch + cellTall/2 }

// bottom is the lower edge of so many rows.
func bottom(rows int) int { return rowY(rows-1) + cellTall/2 }

// heading stands above a column.
func (c column) heading(text string) scene.Item {
	return heading(c.middle(), notation.Line{notation.W(text)})
}

func heading(x int, line notation.Line) scene.Item {
	return scene.Item{Shape: scene.Text{X: x, Y: scene.Margin + headTall/2 - 4, Size: scene.Small, Runs: line.Runs()}, Role: scene.Note}
}

// cell is the edge of a cell, with its tint. It is a polygon, so that no lines are
// drawn under the number where there is no color.
func (c column) cell(row int, role scene.Role, finish scene.Finish) scene.Item {
	y := rowY(row)
	return scene.Item{Role: role, Finish: finish, Shape: scene.Polygon{
		{X: c.x, Y: y - cellTall/2}, {X: c.x + c.w, Y: y - cellTall/2}, {X: c.x + c.w, Y: y + cellTall/2}, {X: c.x, Y: y + cellTall/2},
	}}
}

// number is a number in a cell, which is worth what it says.
func (c column) number(row int, n int64, role scene.Role, of scene.Of) scene.Item {
	text := notation.Line{telling.Count(n, role)}
	return scene.Item{
		Shape: scene.Text{X: c.middle(), Y: rowY(row), Size: scene.Middle, Bold: true, Runs: text.Runs()},
		Role:  role, Of: of, Worth: fraction.Whole(n),
	}
}

// asked is a cell whose number is not known.
func (c column) asked(row int) []scene.Item {
	return []scene.Item{c.cell(row, scene.Hidden, scene.Dashed), telling.Text(scene.Hidden, c.middle(), rowY(row), scene.Middle, "?")}
}

// found draws the number that is found for a cell in a step, marked as new in that
// step and at home from the next one on. Until then, and while the answer is hidden,
// the cell asks.
func (c column) found(s *telling.Story, step, row int, n int64, of scene.Of) {
	s.Until(0, step, c.asked(row)...)
	when := func(w scene.When, items ...scene.Item) []scene.Item {
		for i := range items {
			items[i].When = w
		}
		return items
	}
	fresh := when(scene.ShownOnly, c.cell(row, scene.Moved, scene.Plain), c.number(row, n, scene.Moved, of))
	posed := when(scene.HiddenOnly, c.asked(row)...)
	home := when(scene.Always, c.cell(row, scene.Result, scene.Plain), c.number(row, n, scene.Result, of))
	s.Until(step, step+1, append(fresh, posed...)...)
	s.Only(step+1, home...)
	s.Finally(append(when(scene.ShownOnly, home...), posed...)...)
}

// Arrow heads.
const headLong, headWide = 16, 9

// rightHead is an arrow head that points right, at x.
func rightHead(role scene.Role, x, y int) scene.Item {
	return scene.Item{Role: role, Finish: scene.Deep, Shape: scene.Polygon{{X: x, Y: y}, {X: x - headLong, Y: y - headWide}, {X: x - headLong, Y: y + headWide}}}
}

// leftHead is an arrow head that points left, at x.
func leftHead(role scene.Role, x, y int) scene.Item {
	return scene.Item{Role: role, Finish: scene.Deep, Shape: scene.Polygon{{X: x, Y: y}, {X: x + headLong, Y: y - headWide}, {X: x + headLong, Y: y + headWide}}}
}

// ruleText is what is done, as it stands in a picture: × 3.
func ruleText(sign string, by int64) notation.Line {
	return telling.Join(sign, telling.Count(by, scene.Second))
}
