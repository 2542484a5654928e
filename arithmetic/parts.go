package arithmetic

import "errors"

// An array has its first factor as the number of rows and its second as the
// number in each row (CCSS 3.OA.A.1). It is worked by parts: its sides are cut at
// friendly places and every part is found on its own (CCSS 3.MD.C.7c, 4.NBT.B.5).

// LayRows lays out the whole array: Rows rows with Cols in each.
type LayRows struct{ Rows, Cols int64 }

// CountRows counts the array a row at a time: Totals has the total after each
// row. It is empty when there is nothing to count: one row, or none, or rows of
// 0 or 1.
type CountRows struct {
	Rows, Cols int64
	Totals     []int64
	Product    int64
}

// CountTens counts an array of round factors in larger units: 40 × 60 is 4 tens
// times 6 tens, 24 hundreds. Rows × RowUnit and Cols × ColUnit are the factors,
// the units powers of ten.
type CountTens struct {
	Rows, RowUnit int64
	Cols, ColUnit int64
	Count, Unit   int64 // how many of the larger unit there are
	Product       int64
}

// SplitSides cuts the rows and the columns of an array in parts. A side that
// stays whole has one part.
type SplitSides struct{ Rows, Cols []int64 }

// FindPart finds one part of a split array: the Row-th part of the rows by the
// Col-th part of the columns, both from 0.
type FindPart struct {
	Row, Col            int
	Rows, Cols, Product int64
}

// JoinParts adds what was found part by part.
type JoinParts struct {
	Parts []int64
	Sum   int64
}

func (LayRows) move()    {}
func (CountRows) move()  {}
func (CountTens) move()  {}
func (SplitSides) move() {}
func (FindPart) move()   {}
func (JoinParts) move()  {}

// ErrNotWhole says that a procedure for whole numbers met another number.
var ErrNotWhole = errors.New("arithmetic: whole numbers only")

// ProductByArray works a product of two whole numbers as an array. Small facts and
// round factors are counted directly; others are derived from facts that are known
// by heart: 9 × 7 is 10 × 7 less 7; the smaller factor of 6 to 8 is split after its
// fives, so that 7 × 8 is 5 × 8 and 2 × 8; larger factors are split by place value,
// so that no partial product needs more than a fact (CCSS 3.OA.B.5, 4.NBT.B.5).
func ProductByArray(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	return multiply(p, a, b)
}

func multiply(p Problem, a, b int64) (Working, error) {
	product, err := times(a, b)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: whole(product), Moves: []Move{LayRows{a, b}}}
	if p.Kind == Product && max(a, b) == 9 && min(a, b) >= 4 {
		w.Moves, err = tenLessOne(a, b)
		return w, err
	}
	rows, cols := friendlyParts(a, b)
	switch {
	case len(rows)+len(cols) > 2:
		moves, err := byParts(rows, cols)
		if err != nil {
			return Working{}, err
		}
		w.Moves = append(w.Moves, moves...)
	case max(a, b) > 10 && min(a, b) > 1:
		w.Moves = append(w.Moves, countTens(a, b, product))
	default:
		w.Moves = append(w.Moves, countRows(a, b, product))
	}
	return w, nil
}

// friendlyParts says where a person would split a × b.
func friendlyParts(a, b int64) (rows, cols []int64) {
	rows, cols = []int64{a}, []int64{b}
	switch {
	case min(a, b) <= 1:
	case max(a, b) > 10:
		rows, cols = placeParts(a), placeParts(b)
	case max(a, b) == 10 || a < 4 || b < 6:
	case a >= 6 && a < b:
		rows = []int64{5, a - 5}
	default:
		cols = []int64{5, b - 5}
	}
	return rows, cols
}

// placeParts are the values of the digits of n that are not 0, the largest
// first: 406 is 400 and 6. n must be positive.
func placeParts(n int64) []int64 {
	var parts []int64
	for unit := int64(1); n > 0; unit, n = unit*10, n/10 {
		if d := n % 10; d > 0 {
			parts = append([]int64{d * unit}, parts...)
		}
	}
	return parts
}

// byParts splits an array as told, finds every part and adds them.
func byParts(rows, cols []int64) ([]Move, error) {
	moves := []Move{SplitSides{rows, cols}}
	var parts []int64
	sum := int64(0)
	for i, r := range rows {
		for j, c := range cols {
			part, err := times(r, c)
			if err != nil {
				return nil, err
			}
			if sum, err = plus(sum, part); err != nil {
				return nil, err
			}
			parts = append(parts, part)
			moves = append(moves, FindPart{i, j, r, c, part})
		}
	}
	return append(moves, JoinParts{parts, sum}), nil
}

// longestCount is how many rows are counted one by one.
const longestCount = 12

func countRows(a, b, product int64) CountRows {
	m := CountRows{Rows: a, Cols: b, Product: product}
	if a >= 2 && a <= longestCount && b >= 2 {
		for i := int64(1); i <= a; i++ {
			m.Totals = append(m.Totals, i*b)
		}
	}
	return m
}

func countTens(a, b, product int64) CountTens {
	m := CountTens{Rows: a, RowUnit: 1, Cols: b, ColUnit: 1, Product: product}
	for ; m.Rows%10 == 0; m.RowUnit *= 10 {
		m.Rows /= 10
	}
	for ; m.Cols%10 == 0; m.ColUnit *= 10 {
		m.Cols /= 10
	}
	m.Count, m.Unit = m.Rows*m.Cols, m.RowUnit*m.ColUnit
	return m
}

// DistributeArray works a product whose one factor is a sum, as in 2 × (8 + 7) or
// (10 + 3) × 4, or the same thing written out, as in 2 × 8 + 2 × 7: the array is
// laid out in the parts that the sum says, and seen as one array at the end
// (CCSS 3.MD.C.7c). ok is false for any other shape.
func DistributeArray(p Problem) (w Working, ok bool, err error) {
	rows, cols, ok := sumAndFactor(p)
	if !ok {
		return Working{}, false, nil
	}
	moves, err := byParts(rows, cols)
	if err != nil {
		return Working{}, true, err
	}
	var lay LayRows
	for _, r := range rows {
		if lay.Rows, err = plus(lay.Rows, r); err != nil {
			return Working{}, true, err
		}
	}
	for _, c := range cols {
		if lay.Cols, err = plus(lay.Cols, c); err != nil {
			return Working{}, true, err
		}
	}
	sum := moves[len(moves)-1].(JoinParts).Sum
	return Working{Problem: p, Answer: whole(sum), Moves: append(moves, lay)}, true, nil
}

func sumAndFactor(p Problem) (rows, cols []int64, ok bool) {
	o, is := p.Left.(Operation)
	if !is || p.Kind != Expression {
		return nil, nil, false
	}
	left, okL := sides(o.Left)
	right, okR := sides(o.Right)
	switch {
	case !okL || !okR:
		return nil, nil, false
	case o.Op == Multiply && (len(left.sum) == 1) != (len(right.sum) == 1):
		return left.sum, right.sum, left.sum != nil && right.sum != nil
	case o.Op == Add && left.rows != nil && right.rows != nil:
		// Two products with the same number of rows, or with rows of one size.
		if *left.rows == *right.rows {
			return []int64{*left.rows}, []int64{*left.cols, *right.cols}, true
		}
		if *left.cols == *right.cols {
			return []int64{*left.rows, *right.rows}, []int64{*left.cols}, true
		}
	}
	return nil, nil, false
}

// side is an expression as a number or a sum of two, or as a product of two.
type side struct {
	sum        []int64
	rows, cols *int64
}

func sides(e Expr) (side, bool) {
	if n, ok := wholeNumber(e); ok {
		return side{sum: []int64{n}}, true
	}
	o, is := e.(Operation)
	if !is {
		return side{}, false
	}
	a, okA := wholeNumber(o.Left)
	b, okB := wholeNumber(o.Right)
	switch {
	case !okA || !okB:
		return side{}, false
	case o.Op == Add:
		return side{sum: []int64{a, b}}, true
	case o.Op == Multiply:
		return side{rows: &a, cols: &b}, true
	}
	return side{}, false
}

func wholeNumber(e Expr) (int64, bool) {
	n, is := e.(Number)
	if !is || n.Form != Whole || n.Value.Sign() < 0 {
		return 0, false
	}
	return n.Int64()
}

func wholeOperands(p Problem) (a, b int64, err error) {
	first, second, ok := p.Operands()
	if !ok {
		return 0, 0, ErrNotWhole
	}
	a, okA := wholeNumber(first)
	b, okB := wholeNumber(second)
	if !okA || !okB {
		return 0, 0, ErrNotWhole
	}
	return a, b, nil
}

func whole(n int64) Answer { return Answer{Number: Int(n), Simplest: Int(n)} }

// times and plus are exact; a result that does not fit is ErrOverflow.
func times(a, b int64) (int64, error) {
	v, err := Evaluate(Operation{Multiply, Int(a), Int(b)})
	return v.Num(), err
}

func plus(a, b int64) (int64, error) {
	v, err := Evaluate(Operation{Add, Int(a), Int(b)})
	return v.Num(), err
}
