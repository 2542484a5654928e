package hundredths

import (
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// A board has one row of large squares, one square for each of two numbers side by
// side, or two rows under each other. A small square keeps its size for the whole
// lesson. Small squares are counted down the columns, from the left: number 37 is
// the eighth of the fourth column.
//
//	|<- 1 whole ->|
//	+-+-+-+-+-+-+-+        0.3             0.29
//	|#|#|#|#| | | |      +-----+         +-----+
//	|#|#|#|#| | | |      |###  |    >    |##.  |
//	|#|#|#| | | | |      |###  |         |##   |
//	+-+-+-+-+-+-+-+      +-----+         +-----+
const (
	wholeY   = scene.Margin + 18 // middle of the words over the squares
	top      = scene.Margin + 48 // of the squares
	below    = 10                // from a square to the line under it
	moreDown = 38                // height of the line under that
	between  = 84                // between two squares with a sign in the middle
	squares  = 26                // between two squares of one number
	rowGap   = 28                // between two rows
	gutter   = 16                // between a row and its number at the left
)

// Sides of a small square, by how many large squares stand side by side.
var cells = [mostSquares + 1]int{0, 32, 32, 22}

type board struct {
	cell   int
	boxes  [][]scene.Box // of each row, its squares
	beside bool          // the two rows are side by side
	room   int           // width of the numbers at the left of two rows
	tall   int           // height of the line under the squares
}

// layBoard gives every square its place: so many in each row, and labels of the
// given width at the left where two rows stand under each other.
func layBoard(rows, each, labels int) board {
	b := board{}
	at := func(x, y int) scene.Box { return scene.Box{X: x, Y: y, W: 10 * b.cell, H: 10 * b.cell} }
	switch {
	case rows == 1:
		b.cell = cells[each]
		x := (scene.PaperW - each*10*b.cell - (each-1)*squares) / 2
		var row []scene.Box
		for i := range each {
			row = append(row, at(x+i*(10*b.cell+squares), top))
		}
		b.boxes = [][]scene.Box{row}
	case each == 1:
		b.cell, b.beside = 30, true
		x := (scene.PaperW - 20*b.cell - between) / 2
		b.boxes = [][]scene.Box{{at(x, top)}, {at(x+10*b.cell+between, top)}}
	default:
		b.room = labels + gutter
		wide := scene.PaperW - 2*scene.Margin - b.room
		b.cell = min(24, (wide-(each-1)*squares)/(10*each))
		x := scene.Margin + b.room + (wide-each*10*b.cell-(each-1)*squares)/2
		for r := range rows {
			var row []scene.Box
			for i := range each {
				row = append(row, at(x+i*(10*b.cell+squares), top+r*(10*b.cell+rowGap)))
			}
			b.boxes = append(b.boxes, row)
		}
	}
	return b
}

// bottom is the lower edge of the squares.
func (b board) bottom() int {
	last := b.boxes[len(b.boxes)-1]
	return last[0].Bottom()
}

// span is a stretch of small squares of one row that is a rectangle: part of a
// column, a column, or a large square.
type span struct {
	scene.Box
	from, count int64
	cols, rows  int
}

// spans cuts the small squares from one up to another in rectangles.
func (b board) spans(row int, from, to int64) []span {
	var list []span
	for from < to {
		count, square := int64(1), from%100 == 0 && to-from >= 100
		switch {
		case square:
			count = 100
		default:
			count = min(10-from%10, to-from)
		}
		box := b.boxes[row][from/100]
		s := span{from: from, count: count, cols: 1, rows: int(count)}
		s.Box = scene.Box{X: box.X + int(from%100/10)*b.cell, Y: box.Y + int(from%10)*b.cell, W: b.cell, H: int(count) * b.cell}
		if square {
			s.Box, s.cols, s.rows = box, 10, 10
		}
		list = append(list, s)
		from += count
	}
	return list
}

// blocks are the rectangles of a stretch of small squares, with columns that stand
// side by side joined.
func (b board) blocks(row int, from, to int64) []span {
	var list []span
	for _, sp := range b.spans(row, from, to) {
		if n := len(list) - 1; n >= 0 && sp.cols == 1 && list[n].rows == 10 && sp.rows == 10 && sp.X == list[n].Right() {
			list[n].W += sp.W
			list[n].count += sp.count
			continue
		}
		list = append(list, sp)
	}
	return list
}

// wholeMarks says over every square of a row how large one whole is, unless the row
// stands under another.
func (b board) wholeMarks(s *scene.Scene, r int) {
	const tick, gap = 12, 10
	if r > 0 && !b.beside {
		return
	}
	for _, box := range b.boxes[r] {
		label := telling.Text(scene.Note, box.X+box.W/2, wholeY, scene.Small, words.BarWhole)
		room := label.Shape.Box()
		s.Add(label)
		s.Draw(scene.Note, scene.Fine,
			scene.Line{X1: box.X, Y1: wholeY - tick, X2: box.X, Y2: wholeY + tick}, scene.Line{X1: box.Right(), Y1: wholeY - tick, X2: box.Right(), Y2: wholeY + tick},
			scene.Line{X1: box.X, Y1: wholeY, X2: room.X - gap, Y2: wholeY}, scene.Line{X1: room.Right() + gap, Y1: wholeY, X2: box.Right(), Y2: wholeY})
	}
}

// outline goes round the small squares from one up to another of one large square,
// which must hang together.
//
//	   +--+          from in the middle of a column
//	+--+  |
//	|     +--+
//	|        |       to in the middle of another
//	+-----+  |
func (b board) outline(row int, from, to int64) scene.Polygon {
	box := b.boxes[row][from/100]
	at := func(col, down int64) scene.Point {
		return scene.Point{X: box.X + int(col)*b.cell, Y: box.Y + int(down)*b.cell}
	}
	first, start := from%100/10, from%10
	last, end := (to-1)%100/10, (to-1)%10+1
	if first == last {
		return scene.Polygon{at(first, start), at(first+1, start), at(first+1, end), at(first, end)}
	}
	line := scene.Polygon{at(first, start), at(first, 10)}
	if end < 10 {
		line = append(line, at(last, 10), at(last, end))
	} else {
		line = append(line, at(last+1, 10))
	}
	if end < 10 {
		line = append(line, at(last+1, end))
	}
	line = append(line, at(last+1, 0))
	if start > 0 {
		line = append(line, at(first+1, 0), at(first+1, start))
	} else {
		line = append(line, at(first, 0))
	}
	return line
}
