package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
)

// cells is a rectangle of cells on the multiplication square, by its first and its
// last row and column. Row 0 and column 0 are the edges.
type cells struct{ row, col, lastRow, lastCol int64 }

func cellAt(row, col int64) cells { return cells{row, col, row, col} }

// onSquare is what lies on the numbers of a multiplication square.
type onSquare struct {
	s      sight
	filled map[cells]measure.Paint
	framed []cells // heavy outlines
}

// readSquareNumbers finds the square, with every product in its cell and the numbers
// that are multiplied along two edges, and what lies on them.
func (s sight) readSquareNumbers() (q onSquare, err error) {
	var face measure.Face
	for _, f := range s.Faces() {
		if f.Cols() == 10 && f.Rows() == 10 {
			face = f
		}
	}
	if face.W == 0 {
		return q, errors.New("there is no square of ten by ten")
	}
	w, h := face.W/10, face.H/10
	at := func(x, y int) (row, col int64) {
		return int64((y - face.Y + h) / h), int64((x - face.X + w) / w)
	}
	seen := map[cells]bool{}
	for _, line := range s.Lines() {
		for _, word := range line {
			row, col := at(word.X, word.Y-word.Size/3)
			if row > 10 || col > 10 || row+col == 0 {
				continue // beside the square, or its corner
			}
			v, ok := word.Value()
			if !ok || v.Cmp(whole(max(row, 1)*max(col, 1))) != 0 || seen[cellAt(row, col)] {
				return q, fmt.Errorf("%q stands in row %d and column %d", word.Text, row, col)
			}
			seen[cellAt(row, col)] = true
		}
	}
	if len(seen) != 120 {
		return q, fmt.Errorf("%d numbers, not 120", len(seen))
	}
	q.s, q.filled = s, map[cells]measure.Paint{}
	for _, t := range s.tiles() {
		const in = 8 // more than a tile is smaller than its cells
		c := cells{}
		c.row, c.col = at(t.X+1, t.Y+1)
		c.lastRow, c.lastCol = at(t.Right()-1, t.Bottom()-1)
		across, down := int(c.lastCol-c.col+1)*w, int(c.lastRow-c.row+1)*h
		if across-t.W < 0 || across-t.W > in || down-t.H < 0 || down-t.H > in {
			return q, fmt.Errorf("a tile of %d by %d covers no whole cells", t.W, t.H)
		}
		if t.Filled() {
			q.filled[c] = t.Paint
		} else {
			q.framed = append(q.framed, c)
		}
	}
	return q, nil
}

// has reports whether cells are filled in one of the roles.
func (q onSquare) has(c cells, roles ...scene.Role) bool {
	p, ok := q.filled[c]
	return ok && q.s.is(p, roles...)
}

// exactly compares what is filled, and in which role, and what is framed with what
// should be. What has just moved may be in the place of any role.
func (q onSquare) exactly(filled map[cells]scene.Role, framed ...cells) error {
	for c, role := range filled {
		if !q.has(c, role, scene.Moved) {
			return fmt.Errorf("%v is not lit as it should be", c)
		}
	}
	if len(q.filled) != len(filled) {
		return fmt.Errorf("%d rectangles are lit, not %d", len(q.filled), len(filled))
	}
	if len(framed) != len(q.framed) || slices.ContainsFunc(framed, func(c cells) bool { return !slices.Contains(q.framed, c) }) {
		return fmt.Errorf("%v are framed, not %v", q.framed, framed)
	}
	return nil
}

// readSquare reads what the finished square shows.
func readSquare(s sight, t problems.Truth) error {
	q, err := s.readSquareNumbers()
	if err != nil {
		return err
	}
	var n []int64
	for _, v := range t.Numbers {
		n = append(n, v.Num().Int64())
	}
	switch s.problem.Kind {
	case arithmetic.Product:
		return q.exactly(map[cells]scene.Role{{n[0], 0, n[0], 0}: scene.First, {0, n[1], 0, n[1]}: scene.Second, {1, 1, n[0], n[1]}: scene.Result}, cellAt(n[0], n[1]))
	case arithmetic.Division, arithmetic.Missing:
		return q.readLookUp(n, t)
	case arithmetic.Multiples:
		want := map[cells]scene.Role{{n[0], 0, n[0], 0}: scene.First}
		for col, multiple := range t.List {
			if multiple != n[0]*int64(col+1) {
				return errors.New("the multiples are not a row")
			}
			want[cellAt(n[0], int64(col+1))] = scene.Result
		}
		return both(q.exactly(want), s.readList(t.List))
	case arithmetic.Factors:
		return both(q.readPlacesOf(n[0]), s.readFactorsUnder(n[0], t))
	case arithmetic.CommonMultiples:
		return both(q.readTwoRows(n, t), s.readList(t.List))
	}
	return q.exactly(map[cells]scene.Role{
		cellAt(n[0], n[1]): scene.First, cellAt(n[0], 0): scene.First, cellAt(0, n[1]): scene.First,
		cellAt(n[1], n[0]): scene.Second, cellAt(n[1], 0): scene.Second, cellAt(0, n[0]): scene.Second,
	}, cells{1, 1, n[0], n[1]}, cells{1, 1, n[1], n[0]}, cellAt(n[0], n[1]), cellAt(n[1], n[0]))
}

// readLookUp: the row of the known factor is lit, or its column where it stands
// second; in it the product is framed, and from there cells are lit to the answer at
// the other edge.
func (q onSquare) readLookUp(n []int64, t problems.Truth) error {
	roles := []scene.Role{scene.First, scene.Second}
	known, total := 1, 0
	if q.s.problem.Kind == arithmetic.Missing && q.left() {
		known, total = 0, 1
	}
	answer := t.Value.Num().Int64()
	row, col, head, found := n[known], answer, cellAt(n[known], 0), cellAt(0, answer)
	band, way := cells{n[known], 1, n[known], 10}, cells{1, col, row - 1, col}
	if q.second() {
		row, col, head, found = answer, n[known], cellAt(0, n[known]), cellAt(answer, 0)
		band, way = cells{1, n[known], 10, n[known]}, cells{row, 1, row, col - 1}
	}
	if row*col != n[total] {
		return fmt.Errorf("%d × %d is not %d", row, col, n[total])
	}
	want := map[cells]scene.Role{head: roles[known], band: roles[known], cellAt(row, col): roles[total], found: scene.Result}
	if way.lastRow >= way.row && way.lastCol >= way.col {
		want[way] = scene.Result
	}
	return q.exactly(want, cellAt(row, col))
}

// left reports whether the product with the blank stands before the equal sign.
func (q onSquare) left() bool {
	_, is := q.s.problem.Left.(arithmetic.Operation)
	return is
}

// second reports whether the known factor of a missing one is the second.
func (q onSquare) second() bool {
	o, is := q.s.problem.Left.(arithmetic.Operation)
	if !is {
		o, _ = q.s.problem.Right.(arithmetic.Operation)
	}
	_, open := o.Left.(arithmetic.Unknown)
	return open
}

// readPlacesOf: the cells with the number are lit, no others, and the two numbers at
// the edges of each.
func (q onSquare) readPlacesOf(n int64) error {
	want := map[cells]scene.Role{}
	for row := int64(1); row <= 10; row++ {
		for col := int64(1); col <= 10; col++ {
			if row*col == n {
				want[cellAt(row, col)] = scene.First
				want[cellAt(row, 0)], want[cellAt(0, col)] = scene.Result, scene.Result
			}
		}
	}
	return q.exactly(want)
}

// readFactorsUnder: under the square stand all factors in order, in the largest
// letters, and above them such products of the number as are not on the square.
func (s sight) readFactorsUnder(n int64, t problems.Truth) error {
	lines := s.Lines()
	foot := lines[len(lines)-1]
	var got, want []string
	for _, w := range foot {
		if w.Text != "," {
			got = append(got, w.Text)
		}
	}
	for _, pair := range t.Pairs {
		want = append(want, arithmetic.Grouped(pair[0]))
	}
	if !slices.Equal(got, want) {
		return fmt.Errorf("the factors are said to be %v", got)
	}
	beyond := 0
	for _, line := range lines {
		for i := 1; i+1 < len(line); i++ {
			if line[i].Text != "×" {
				continue
			}
			a, okA := line[i-1].Value()
			b, okB := line[i+1].Value()
			if !okA || !okB || new(big.Rat).Mul(a, b).Cmp(whole(n)) != 0 {
				return fmt.Errorf("%s × %s is not %d", line[i-1].Text, line[i+1].Text, n)
			}
			beyond++
		}
	}
	for _, pair := range t.Pairs {
		if pair[0] <= pair[1] && pair[1] > 10 {
			beyond--
		}
	}
	if beyond != 0 {
		return errors.New("a pair beyond the square is missing, or there twice")
	}
	return nil
}

// readTwoRows: in both rows the multiples are lit as far as the last that both have
// on the square; those that both have are framed.
func (q onSquare) readTwoRows(n []int64, t problems.Truth) error {
	last := int64(0)
	for _, m := range t.List {
		if m <= 10*min(n[0], n[1]) {
			last = m
		}
	}
	want := map[cells]scene.Role{}
	var framed []cells
	for i, role := range []scene.Role{scene.First, scene.Second} {
		want[cellAt(n[i], 0)] = role
		for col := int64(1); col*n[i] <= last; col++ {
			want[cellAt(n[i], col)] = role
			if slices.Contains(t.List, col*n[i]) {
				framed = append(framed, cellAt(n[i], col))
			}
		}
	}
	return q.exactly(want, framed...)
}

// stepsOfSquare: on every step the square is whole and no less is lit than before,
// until the last, which shows what the whole story shows. What is lit on the way is
// lit in the end, but for the row and the column of a product.
func stepsOfSquare(steps []sight, t problems.Truth) error {
	last, err := steps[len(steps)-1].readSquareNumbers()
	if err != nil {
		return err
	}
	before := 0
	for i, s := range steps[:len(steps)-1] {
		q, err := s.readSquareNumbers()
		if err != nil {
			return fmt.Errorf("step %d: %w", i+1, err)
		}
		now := len(q.filled) + len(q.framed)
		if now <= before {
			return fmt.Errorf("step %d shows no more than the one before", i+1)
		}
		before = now
		for c := range q.filled {
			_, stays := last.filled[c]
			inRow, inColumn := cells{}, cells{}
			if s.problem.Kind == arithmetic.Product {
				a, b := t.Numbers[0].Num().Int64(), t.Numbers[1].Num().Int64()
				inRow, inColumn = cells{a, 1, a, 10}, cells{1, b, 10, b}
			}
			if !stays && c != inRow && c != inColumn {
				return fmt.Errorf("step %d lights %v", i+1, c)
			}
		}
	}
	if k := steps[0].problem.Kind; k == arithmetic.Factors {
		return last.readPlacesOf(t.Numbers[0].Num().Int64())
	}
	return readSquare(steps[len(steps)-1], t)
}
