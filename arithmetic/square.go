package arithmetic

// OnSquare is the last row and column of the multiplication square: the products of
// the numbers from 1 to 10.
const OnSquare = 10

// FindLine finds the row or the column of a number. Nth is which number of the
// problem it is, from 0.
type FindLine struct {
	N      int64
	Nth    int
	Column bool
}

// MeetAt reads the number where a row and a column meet.
type MeetAt struct{ Row, Col, Product int64 }

// SeeArray sees the rectangle from the corner to that place: so many rows and
// columns of cells.
type SeeArray struct{ Rows, Cols, Cells int64 }

// GoAlong goes along a row, or down a column, to a number. Nth is which number of the
// problem it is.
type GoAlong struct {
	Line     FindLine
	Row, Col int64 // where it stands
	Total    int64
	Nth      int
}

// ReadEdge goes from there to the edge, where the unknown number stands: up to the
// head of the column, or left to the head of the row.
type ReadEdge struct {
	Row, Col, Total, Answer int64
	Left                    bool
}

func (FindLine) move() {}
func (MeetAt) move()   {}
func (SeeArray) move() {}
func (GoAlong) move()  {}
func (ReadEdge) move() {}

// MultiplyOnSquare works a Product of two numbers from 1 to [OnSquare]: where their
// row and their column meet (CCSS 3.OA.C.7, 3.OA.D.9). Its errors are [ErrNotWhole]
// and [ErrOverflow] for what is not on the square.
func MultiplyOnSquare(p Problem) (Working, error) {
	o, _ := p.Left.(Operation)
	a, okA := wholeNumber(o.Left)
	b, okB := wholeNumber(o.Right)
	switch {
	case p.Kind != Product || !okA || !okB:
		return Working{}, ErrNotWhole
	case !onSquare(a) || !onSquare(b):
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p, Moves: []Move{
		FindLine{N: a}, FindLine{N: b, Nth: 1, Column: true}, MeetAt{a, b, a * b}, SeeArray{a, b, a * b},
	}}
	return w.ends(Int(a * b)), nil
}

func onSquare(n int64) bool { return n >= 1 && n <= OnSquare }

// LookUpFactor works a Division without a rest, and a Missing that has one product
// with a blank, by looking a product up (CCSS 3.OA.A.4, 3.OA.B.6): along the row of the
// known number, or down its column where the blank stands first. Its errors are
// [ErrNotWhole] for a problem of another form, and [ErrOverflow] for what is not on
// the square.
func LookUpFactor(p Problem) (Working, error) {
	line, total, nth, ok := factorAsked(p)
	switch {
	case !ok:
		return Working{}, ErrNotWhole
	case !onSquare(line.N) || total < 1 || total%line.N != 0 || !onSquare(total/line.N):
		return Working{}, ErrOverflow
	}
	found := total / line.N
	row, col := line.N, found
	if line.Column {
		row, col = found, line.N
	}
	w := Working{Problem: p, Moves: []Move{
		line, GoAlong{line, row, col, total, nth}, ReadEdge{row, col, total, found, line.Column},
	}}
	return w.ends(Int(found)), nil
}

// factorAsked is the known factor and the product of a problem that asks for the
// other factor.
func factorAsked(p Problem) (line FindLine, total int64, nth int, ok bool) {
	if p.Kind == Division {
		o, _ := p.Left.(Operation)
		a, okA := wholeNumber(o.Left)
		b, okB := wholeNumber(o.Right)
		return FindLine{N: b, Nth: 1}, a, 0, okA && okB && b > 0
	}
	side, other, first := p.Left, p.Right, 0
	if _, is := side.(Operation); !is {
		side, other, first = other, side, 1
	}
	o, is := side.(Operation)
	total, whole := wholeNumber(other)
	if p.Kind != Missing || !is || !whole || o.Op != Multiply {
		return line, 0, 0, false
	}
	line.Nth = first
	if n, known := wholeNumber(o.Left); known {
		line.N = n
	} else if n, known := wholeNumber(o.Right); known {
		line.N, line.Column = n, true
	}
	return line, total, 1 - first, line.N > 0
}

// SeeMirror sees that two places of one number lie alike on both sides of the line
// from corner to corner.
type SeeMirror struct{ First, Second MeetAt }

func (SeeMirror) move() {}

// MirrorOnSquare works a Claim that says of two numbers from 1 to [OnSquare] that
// they may be multiplied in either order (CCSS 3.OA.B.5). Its error is [ErrNotWhole]
// for any other claim, and [ErrOverflow] for other numbers.
func MirrorOnSquare(p Problem) (Working, error) {
	l, okL := p.Left.(Operation)
	r, okR := p.Right.(Operation)
	if p.Kind != Claim || p.Rel != Equal || !okL || !okR || l.Op != Multiply || r.Op != Multiply {
		return Working{}, ErrNotWhole
	}
	a, okA := wholeNumber(l.Left)
	b, okB := wholeNumber(l.Right)
	c, okC := wholeNumber(r.Left)
	d, okD := wholeNumber(r.Right)
	switch {
	case !okA || !okB || !okC || !okD || a != d || b != c || a == b:
		return Working{}, ErrNotWhole
	case !onSquare(a) || !onSquare(b):
		return Working{}, ErrOverflow
	}
	first, second := MeetAt{a, b, a * b}, MeetAt{b, a, b * a}
	return Working{Problem: p, Answer: Answer{Relation: Equal, True: true}, Moves: []Move{first, second, SeeMirror{first, second}}}, nil
}

// FindAll finds all places of a number on the square, and which of its factors are
// too large for it.
type FindAll struct {
	Number  int64
	On, Off [][2]int64 // rows and columns; both turns
}

func (FindAll) move() {}

// FactorsOnSquare works Factors by looking for the places of a number on the square
// (CCSS 4.OA.B.4). Its error is [ErrOverflow] where it has none.
func FactorsOnSquare(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	if !ok || p.Kind != Factors {
		return Working{}, ErrNotWhole
	}
	if n < 1 || n > OnSquare*OnSquare {
		return Working{}, ErrOverflow
	}
	w, err := FactorPairs(p)
	if err != nil {
		return Working{}, err
	}
	find := FindAll{Number: n}
	for _, pair := range w.Answer.Pairs {
		if onSquare(pair[0]) && onSquare(pair[1]) {
			find.On = append(find.On, pair)
		} else {
			find.Off = append(find.Off, pair)
		}
	}
	if len(find.On) == 0 {
		return Working{}, ErrOverflow
	}
	w.Moves = nil
	for _, pair := range find.On {
		if pair[0] <= pair[1] {
			w.Moves = append(w.Moves, MeetAt{pair[0], pair[1], n})
		}
	}
	w.Moves = append(w.Moves, find)
	return w, nil
}

// CountOnSquare is [HopEqually] for Multiples as a row of the square. Its error is
// [ErrOverflow] for what is not on the square.
func CountOnSquare(p Problem) (Working, error) {
	if p.Kind != Multiples {
		return Working{}, errNotOnLine
	}
	w, row, err := HopEqually(p)
	if err == nil && (!onSquare(row.By) || !onSquare(row.Count)) {
		err = ErrOverflow
	}
	return w, err
}

// MeetOnSquare is [MeetOnLines] for two different rows of the square, as far as both
// go on.
func MeetOnSquare(p Problem) (Working, error) {
	w, err := meet(p, func(rows [2]HopRow, at []int64) []int64 {
		for len(at) > 0 && at[len(at)-1] > OnSquare*min(rows[0].By, rows[1].By) {
			at = at[:len(at)-1]
		}
		return at
	})
	if err != nil {
		return w, err
	}
	rows := w.Moves[0].(StartBoth).Rows
	if !onSquare(rows[0].By) || !onSquare(rows[1].By) || rows[0].By == rows[1].By {
		return w, ErrOverflow
	}
	return w, nil
}
