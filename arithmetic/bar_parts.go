package arithmetic

import "math"

// A bar diagram, which the standards call a tape diagram, shows numbers as lengths
// (CCSS glossary, "tape diagram"). This file works the problems whose bar is a whole
// in parts, from left to right.

// Amount is a number as a length: N, and its place among the numbers of the
// problem, from 0, or [Asked].
type Amount struct {
	N   int64
	Nth int
}

// Asked is the place of a number that the problem does not give.
const Asked = -1

// BarParts is a whole and the parts that make it. One amount is Asked.
type BarParts struct {
	Parts []Amount
	Whole Amount
	Taken bool // the last part is taken away from the whole
}

// LayBar lays a bar, the At-th of its diagram from 0: beside or under the others.
type LayBar struct {
	At     int
	Amount Amount
}

// LayWhole lays one bar for the whole, before it is cut.
type LayWhole struct{ Whole Amount }

// MarkBar marks a known part, the At-th, on the bar of the whole; what is left of
// the bar is asked.
type MarkBar struct {
	At          int
	Part, Whole Amount
}

// AddBars finds the whole: the parts together.
type AddBars struct {
	Parts []Amount
	Whole Amount
}

// FindOther finds the part that is not known: the whole without the other part.
type FindOther struct{ Whole, Known, Other Amount }

func (LayBar) move()    {}
func (LayWhole) move()  {}
func (MarkBar) move()   {}
func (AddBars) move()   {}
func (FindOther) move() {}

// JoinBars works an Addition, a Subtraction or a Missing of these, or a chain of
// sums, as a whole in parts (CCSS 2.OA.A.1, the situations of glossary table 1
// with parts and a whole). All numbers are whole. Its errors are [ErrNotWhole],
// [ErrNegative] and [ErrOverflow].
func JoinBars(p Problem) (Working, BarParts, error) {
	b, err := barParts(p)
	if err != nil {
		return Working{}, b, err
	}
	w := Working{Problem: p}
	if b.Whole.Nth == Asked {
		for i, part := range b.Parts {
			w.Moves = append(w.Moves, LayBar{i, part})
		}
		w.Moves = append(w.Moves, AddBars{b.Parts, b.Whole})
		w.Answer = whole(b.Whole.N)
		return w, b, nil
	}
	at := 0
	if b.Parts[0].Nth == Asked {
		at = 1
	}
	known, other := b.Parts[at], b.Parts[1-at]
	w.Moves = []Move{LayWhole{b.Whole}, MarkBar{at, known, b.Whole}, FindOther{b.Whole, known, other}}
	w.Answer = whole(other.N)
	return w, b, nil
}

func barParts(p Problem) (BarParts, error) {
	switch p.Kind {
	case Addition, Expression:
		return sumParts(p)
	case Subtraction:
		a, b, err := wholeOperands(p)
		if err != nil || p.Story != NoStory {
			return BarParts{}, ErrNotWhole
		}
		return takenParts(Amount{a, 0}, Amount{a - b, Asked}, Amount{b, 1})
	case Missing:
		return missingParts(p)
	}
	return BarParts{}, ErrNotWhole
}

// sumParts are the addends of a sum of two numbers or more.
func sumParts(p Problem) (b BarParts, err error) {
	list, ok := terms(p.Left)
	if !ok || p.Right != nil || len(list) < 2 {
		return b, ErrNotWhole
	}
	b.Whole.Nth = Asked
	for i, t := range list {
		n, ok := wholeNumber(t.number)
		if !ok || t.back {
			return b, ErrNotWhole
		}
		if n > math.MaxInt64-b.Whole.N {
			return b, ErrOverflow
		}
		b.Whole.N += n
		b.Parts = append(b.Parts, Amount{n, i})
	}
	return b, nil
}

// takenParts are what is left of a whole, and what was taken away.
func takenParts(whole, left, taken Amount) (BarParts, error) {
	if left.N < 0 || taken.N < 0 {
		return BarParts{}, ErrNegative
	}
	return BarParts{Parts: []Amount{left, taken}, Whole: whole, Taken: true}, nil
}

// missingParts are those of ? + b = c, a + ? = c, ? − b = c and a − ? = c.
func missingParts(p Problem) (BarParts, error) {
	look, ok := lookFor(p)
	if !ok || p.Rel != Equal {
		return BarParts{}, ErrNotWhole
	}
	k, okK := wholeNumber(look.Known)
	t, okT := wholeNumber(look.Total)
	known, total := Amount{k, 0}, Amount{t, 1}
	if look.OnRight {
		known.Nth, total.Nth = 1, 0
	}
	switch {
	case !okK || !okT:
		return BarParts{}, ErrNotWhole
	case look.Op == Subtract && look.Start: // ? − known = total
		if k > math.MaxInt64-t {
			return BarParts{}, ErrOverflow
		}
		return takenParts(Amount{k + t, Asked}, total, known)
	case look.Op == Subtract: // known − ? = total
		return takenParts(known, total, Amount{k - t, Asked})
	case k > t:
		return BarParts{}, ErrNegative
	}
	other := Amount{t - k, Asked}
	if look.Start {
		return BarParts{Parts: []Amount{other, known}, Whole: total}, nil
	}
	return BarParts{Parts: []Amount{known, other}, Whole: total}, nil
}
