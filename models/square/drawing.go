package square

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

// The square, with the numbers that are multiplied along two edges:
//
//	×    1    2    3   ...  10
//	   +----+----+----+
//	1  |  1 |  2 |  3 |
//	   +----+----+----+
//	2  |  2 |  4 |  6 |
const (
	side  = arithmetic.OnSquare
	cellW = 66
	cellH = 52
	left  = (scene.PaperW - (side+1)*cellW) / 2
	top   = scene.Margin
)

// bottom is the lower edge of the square.
const bottom = top + (side+1)*cellH

// box is the cell in a row and a column. Row 0 and column 0 are the edges.
func box(row, col int64) scene.Box {
	return scene.Box{X: left + int(col)*cellW, Y: top + int(row)*cellH, W: cellW, H: cellH}
}

// between is all cells from one to another.
func between(row, col, lastRow, lastCol int64) scene.Box {
	a, b := box(row, col), box(lastRow, lastCol)
	return scene.Box{X: a.X, Y: a.Y, W: b.Right() - a.X, H: b.Bottom() - a.Y}
}

func middle(b scene.Box) (x, y int) { return b.X + b.W/2, b.Y + b.H/2 }

// patch lights cells. It is a polygon, so that no lines are drawn under the numbers
// where there is no color.
func patch(b scene.Box, in int, role scene.Role, finish scene.Finish) scene.Item {
	return scene.Item{Role: role, Finish: finish, Shape: scene.Polygon{
		{X: b.X + in, Y: b.Y + in}, {X: b.Right() - in, Y: b.Y + in}, {X: b.Right() - in, Y: b.Bottom() - in}, {X: b.X + in, Y: b.Bottom() - in},
	}}
}

// How far inside a cell its tile and its frame are.
const tileIn, frameIn = 4, 2

// tile lights one cell, which stands for a number.
func tile(row, col int64, role scene.Role, of scene.Of, worth int64) scene.Item {
	it := patch(box(row, col), tileIn, role, scene.Plain)
	it.Of, it.Worth = of, fraction.Whole(worth)
	return it
}

// frame is a heavy outline around one cell.
func frame(row, col int64, role scene.Role) scene.Item {
	return patch(box(row, col), frameIn, role, scene.Bold)
}

// when draws items in one version of the picture only.
func when(w scene.When, items ...scene.Item) []scene.Item {
	for i := range items {
		items[i].When = w
	}
	return items
}

// board is a square while it is told: what lies under the numbers and over them.
type board struct {
	under, over telling.Story
	asked       map[[2]int64]bool // places where a question stands while the answer is hidden
}

// story puts the layers on one another, with every number in its cell.
func (b *board) story() *telling.Story {
	var s telling.Story
	s.Join(&b.under)
	s.Add(0, scene.Item{Shape: scene.Grid{X: left + cellW, Y: top + cellH, W: side * cellW, H: side * cellH, Cols: side, Rows: side}, Role: scene.Guide, Finish: scene.Fine})
	x, y := middle(box(0, 0))
	s.Add(0, telling.Text(scene.Note, x, y, scene.Small, "×"))
	for row := int64(0); row <= side; row++ {
		for col := int64(0); col <= side; col++ {
			if row+col == 0 {
				continue
			}
			x, y := middle(box(row, col))
			number := telling.Text(scene.Ink, x, y, scene.Small, strconv.FormatInt(max(row, 1)*max(col, 1), 10))
			if b.asked[[2]int64{row, col}] {
				number.When = scene.ShownOnly
				asked := telling.Question(x, y)
				asked.Role = scene.Ink // it stands on the colors of a row and a column
				s.Add(0, asked)
			}
			s.Add(0, number)
		}
	}
	s.Join(&b.over)
	return &s
}
