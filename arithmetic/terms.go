package arithmetic

import "errors"

// Mixed operations with one kind of picture: a sum of two terms of which one is a
// product, as 2 + 1 × 3; and a difference in which lines of an array are taken
// away, as 20 − 3 × 4, 10 × 7 − 7 and 8 × (10 − 2). Products come before sums and
// differences (CCSS 3.OA.D.8, footnote).

// Term is a product, laid as an array, or a number.
type Term struct {
	IsArray           bool
	Rows, Cols, Total int64
}

// LayTerms lays both terms of a sum.
type LayTerms struct{ Terms [2]Term }

// CountTerm counts the product in the term Nth: Rows of Cols.
type CountTerm struct {
	Nth               int
	Rows, Cols, Total int64
}

// JoinTerms adds the two terms.
type JoinTerms struct {
	Terms [2]int64
	Sum   int64
}

// LayLines lays out what something will be taken from: Rows full rows of Cols, and
// Rest more in a last row that is not full.
type LayLines struct{ Rows, Cols, Rest, Total int64 }

// Lines says which part of an array is taken away.
type Lines uint8

const (
	FirstRows Lines = iota
	LastRows
	LastCols
	LastOnes // single ones at the end of the last row, and of the rows before it
)

// TakeLines takes away so many lines with Each in every one of them; of LastOnes
// there is one line. Kept is how many lines stay, of LastOnes 0.
type TakeLines struct {
	Lines
	Count, Each, Kept   int64
	Before, Taken, Left int64
}

func (LayTerms) move()  {}
func (CountTerm) move() {}
func (JoinTerms) move() {}
func (LayLines) move()  {}
func (TakeLines) move() {}

// ErrNothing says that there would be nothing to lay out.
var ErrNothing = errors.New("arithmetic: nothing to lay out")

// AddTerms works a sum of two terms of which one at least is a product. ok is
// false for any other problem.
func AddTerms(p Problem) (w Working, ok bool, err error) {
	o, is := p.Left.(Operation)
	if !is || p.Kind != Expression || o.Op != Add {
		return w, false, nil
	}
	var lay LayTerms
	join := JoinTerms{}
	for i, e := range [2]Expr{o.Left, o.Right} {
		if lay.Terms[i], ok, err = termOf(e); !ok || err != nil {
			return w, ok, err
		}
		join.Terms[i] = lay.Terms[i].Total
	}
	if !lay.Terms[0].IsArray && !lay.Terms[1].IsArray {
		return w, false, nil
	}
	if join.Sum, err = plus(join.Terms[0], join.Terms[1]); err != nil {
		return w, true, err
	}
	w = Working{Problem: p, Answer: whole(join.Sum), Moves: []Move{lay}}
	for i, t := range lay.Terms {
		if t.IsArray {
			w.Moves = append(w.Moves, CountTerm{i, t.Rows, t.Cols, t.Total})
		}
	}
	w.Moves = append(w.Moves, join)
	return w, true, nil
}

// termOf is a whole number, or a product of two; none of them may be 0.
func termOf(e Expr) (t Term, ok bool, err error) {
	if n, is := wholeNumber(e); is {
		t = Term{Total: n}
	} else if two, is := twoFactors(e); is {
		t = Term{IsArray: true, Rows: two[0], Cols: two[1]}
		t.Total, err = times(t.Rows, t.Cols)
	} else {
		return t, false, nil
	}
	if err == nil && t.Total == 0 {
		err = ErrNothing
	}
	return t, true, err
}

// TakeFromArray works a difference with a product in it. ok is false for any other
// problem; what is taken away must be less than what there is, or [ErrNothing].
func TakeFromArray(p Problem) (w Working, ok bool, err error) {
	o, is := p.Left.(Operation)
	if !is || p.Kind != Expression {
		return w, false, nil
	}
	var moves []Move
	switch o.Op {
	case Multiply:
		moves, ok, err = takeInBrackets(o)
	case Subtract:
		moves, ok, err = takeTerm(o)
	}
	if !ok || err != nil {
		return w, ok, err
	}
	w = Working{Problem: p, Moves: moves}
	for _, m := range moves {
		if take, is := m.(TakeLines); is {
			if take.Left <= 0 || take.Taken == 0 {
				return w, true, ErrNothing
			}
			w.Answer = whole(take.Left)
		}
	}
	return w, true, nil
}

// takeInBrackets are the moves of a × (b − c) and (a − b) × c: the lines are taken
// away first.
func takeInBrackets(o Operation) (moves []Move, ok bool, err error) {
	rows, byCols := wholeNumber(o.Left)
	cols, byRows := wholeNumber(o.Right)
	inner := o.Right
	if byRows {
		inner = o.Left
	}
	d, is := inner.(Operation)
	if byCols == byRows || !is || d.Op != Subtract {
		return nil, false, nil
	}
	all, okAll := wholeNumber(d.Left)
	less, okLess := wholeNumber(d.Right)
	if !okAll || !okLess {
		return nil, false, nil
	}
	if byRows {
		return linesTaken(all, cols, less, LastRows, false)
	}
	return linesTaken(rows, all, less, LastCols, false)
}

// linesTaken takes lines from an array of rows of cols, counted before or after.
func linesTaken(rows, cols, less int64, lines Lines, countFirst bool) ([]Move, bool, error) {
	all, err := times(rows, cols)
	if err != nil {
		return nil, true, err
	}
	take := TakeLines{Lines: lines, Count: less, Each: rows, Kept: cols - less, Before: all}
	count := CountTerm{Rows: rows, Cols: take.Kept}
	if lines != LastCols {
		take.Each, take.Kept = cols, rows-less
		count = CountTerm{Rows: take.Kept, Cols: cols}
	}
	if all == 0 || take.Kept <= 0 {
		return nil, true, ErrNothing
	}
	take.Taken = take.Count * take.Each // less than all
	take.Left = all - take.Taken
	count.Total = take.Left
	if countFirst {
		return []Move{LayLines{rows, cols, 0, all}, CountTerm{Rows: rows, Cols: cols, Total: all}, take}, true, nil
	}
	return []Move{LayLines{rows, cols, 0, all}, take, count}, true, nil
}

// takeTerm are the moves of a × b − a × c, a × c − b × c, a × b − c and a − b × c.
func takeTerm(o Operation) (moves []Move, ok bool, err error) {
	from, okFrom, err := termOf(o.Left)
	if !okFrom || err != nil {
		return nil, okFrom, err
	}
	less, okLess, err := termOf(o.Right)
	if !okLess || err != nil {
		return nil, okLess, err
	}
	switch {
	case !from.IsArray && !less.IsArray:
		return nil, false, nil
	case from.IsArray && less.IsArray && from.Rows == less.Rows:
		return linesTaken(from.Rows, from.Cols, less.Cols, LastCols, true)
	case from.IsArray && less.IsArray && from.Cols == less.Cols:
		return linesTaken(from.Rows, from.Cols, less.Rows, LastRows, true)
	case from.IsArray && less.IsArray:
		return nil, false, nil
	case from.IsArray && less.Total%from.Cols == 0:
		return linesTaken(from.Rows, from.Cols, less.Total/from.Cols, LastRows, true)
	case from.IsArray:
		take := TakeLines{Lines: LastOnes, Count: 1, Each: less.Total, Before: from.Total, Taken: less.Total, Left: from.Total - less.Total}
		return []Move{LayLines{from.Rows, from.Cols, 0, from.Total}, CountTerm{Rows: from.Rows, Cols: from.Cols, Total: from.Total}, take}, true, nil
	}
	lay := LayLines{from.Total / less.Cols, less.Cols, from.Total % less.Cols, from.Total}
	take := TakeLines{FirstRows, less.Rows, less.Cols, lay.Rows - less.Rows, from.Total, less.Total, from.Total - less.Total}
	return []Move{lay, CountTerm{1, less.Rows, less.Cols, less.Total}, take}, true, nil
}

// tenLessOne are the moves of 9 × b and a × 9: ten lines, and one of them taken
// away, so that 9 × 7 is 70 − 7.
func tenLessOne(a, b int64) ([]Move, error) {
	lines, rows, cols := LastRows, int64(10), b
	if a != 9 {
		lines, rows, cols = LastCols, a, 10
	}
	moves, _, err := linesTaken(rows, cols, 1, lines, true)
	return moves, err
}
