package arithmetic

import "errors"

// A ten frame has two rows of five cells, so that ten is seen without counting and
// every number as so many more than five or fewer than ten. Cells are numbered from
// 0, row by row, and go on in the next frame: 10 is the first cell of the second.
const (
	// TenFrame is how many cells a frame has.
	TenFrame = 10
	// FrameRow is how many of them stand in a row.
	FrameRow = 5
)

// PutCounters puts Count counters of a number in the cells from Cell on. Before and
// Now are how many lie there before and after.
type PutCounters struct {
	Nth         int   // which number of the problem they are; [Asked] for the unknown
	Number      int64 // that number, of which they may be a part
	Count       int64
	Cell        int64
	Before, Now int64
	Larger      bool  // this number comes first because it is the larger one
	Ten         int64 // the number that makes ten with it, and comes next; 0 for none
	Fills       bool  // they are as many as a frame still had room for, and more come
	Apart       bool  // they lie in a frame of their own
	Row         bool  // they lie in a row of their own
}

// FillFrame takes Need counters of a number out of the cells from From on and puts
// them in the cells from To on, which fills the frame of the other number: it had
// Large and has ten. Rest stay where they were.
type FillFrame struct {
	Nth               int
	Large, Need, Rest int64
	From, To          int64
	Total             int64
}

// SeeDouble sees the same number twice, and Extra more of number Nth in the cell
// Cell. Over is by how much each of the two is more than a row of five; 0 where
// there is no full row to look for.
type SeeDouble struct {
	Each, Double, Over int64
	Extra              int64
	Nth                int
	Cell               int64
}

// AddToDouble reads the sum off a double and what is more than it: Extra is 0 for two
// equal addends.
type AddToDouble struct{ Each, Double, Over, Extra, Total int64 }

// TakeCounters takes Count counters away, the last ones: From were there and Left
// stay. Ten says that the frame stays full, and that more go in the next move.
type TakeCounters struct {
	From, Count, Left int64
	All               int64 // how many are taken away in the whole problem
	Ten, Again        bool
}

// ReadFrames reads what lies in the frames: Full frames and Ones more. Of these Over
// are more than a row of five, and Free cells of their frame are empty; a frame with
// nothing in it has ten.
type ReadFrames struct{ Total, Full, Ones, Over, Free int64 }

// ReadFilled adds up the counters that were put in to get to a known total.
type ReadFilled struct {
	Parts      []int64
	Sum, Total int64
}

// PairUp sets counters in pairs, one above the other. Left is 1 or 0.
type PairUp struct{ Total, Pairs, Left int64 }

func (PutCounters) move()  {}
func (FillFrame) move()    {}
func (SeeDouble) move()    {}
func (AddToDouble) move()  {}
func (TakeCounters) move() {}
func (ReadFrames) move()   {}
func (ReadFilled) move()   {}
func (PairUp) move()       {}

// The bounds of what is done in ten frames.
const (
	MostInFrames    = 20 // of sums and differences (CCSS 1.OA.C.6)
	MostShownFrames = 40 // of one number
)

// ErrFrames says that a problem has more than ten frames are good for.
var ErrFrames = errors.New("arithmetic: too many for ten frames")

func readFrames(total int64) ReadFrames {
	ones := total % TenFrame
	return ReadFrames{total, total / TenFrame, ones, max(0, ones-FrameRow), TenFrame - ones}
}

// ShowInFrames lays out a whole number to 40: to 10 by rows of five, above it by
// full frames and ones (CCSS K.NBT.A.1).
func ShowInFrames(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	switch {
	case !ok || p.Kind != Show:
		return Working{}, ErrNotWhole
	case n > MostShownFrames:
		return Working{}, ErrFrames
	}
	unit := int64(TenFrame)
	if n <= TenFrame {
		unit = FrameRow
	}
	w := Working{Problem: p, Answer: whole(n)}
	first := n / unit * unit
	if first == TenFrame && n == TenFrame {
		first = FrameRow
	}
	if first > 0 {
		w.Moves = append(w.Moves, PutCounters{Number: n, Count: first, Now: first})
	}
	if n > first || n == 0 {
		w.Moves = append(w.Moves, PutCounters{Number: n, Count: n - first, Cell: first, Before: first, Now: n})
	}
	w.Moves = append(w.Moves, readFrames(n))
	return w, nil
}

// PairInFrames tells whether a whole number to 40 is even by setting counters in
// pairs (CCSS 2.OA.C.3).
func PairInFrames(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	switch {
	case !ok || p.Kind != Parity:
		return Working{}, ErrNotWhole
	case n > MostShownFrames:
		return Working{}, ErrFrames
	}
	pairs, left := n/2, n%2
	w := Working{Problem: p, Answer: Answer{Even: left == 0}}
	w.Moves = append(w.Moves, PutCounters{Number: n, Count: n, Now: n})
	if n > 0 {
		w.Moves = append(w.Moves, PairUp{n, pairs, left})
	}
	w.Moves = append(w.Moves, ReadPairs{n, pairs, left, left == 0})
	return w, nil
}
