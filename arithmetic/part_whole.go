package arithmetic

import "math"

// A number bond and a bar diagram, which the standards call a tape diagram (CCSS
// glossary), show the same thing: a whole and the parts that make it. This file works
// the problems that they pose.

// Amount is a number in such a picture: N, and its place among the numbers of the
// problem, from 0, or [Asked].
type Amount struct {
	N   int64
	Nth int
}

// Asked is the place of a number that the problem does not give.
const Asked = -1

// WholeParts is a whole and the parts that make it. One amount is Asked.
type WholeParts struct {
	Parts []Amount
	Whole Amount
	Taken bool // the last part is taken away from the whole
}

// LayAmount lays out a known number, the At-th of the picture from 0.
type LayAmount struct {
	At     int
	Amount Amount
}

// LayWhole lays out the whole, before it is in parts.
type LayWhole struct{ Whole Amount }

// MarkPart sets a known part, the At-th, apart from the whole; what is left of the
// whole is asked.
type MarkPart struct {
	At          int
	Part, Whole Amount
}

// AddParts finds the whole: the parts together.
type AddParts struct {
	Parts []Amount
	Whole Amount
}

// FindOther finds the part that is not known: the whole without the other part.
type FindOther struct{ Whole, Known, Other Amount }

func (LayAmount) move() {}
func (LayWhole) move()  {}
func (MarkPart) move()  {}
func (AddParts) move()  {}
func (FindOther) move() {}

// PartWhole works an Addition, a Subtraction or a Missing of these, or a chain of
// sums, as a whole in parts (CCSS 2.OA.A.1, the situations of glossary table 1
// with parts and a whole). All numbers are whole. Its errors are [ErrNotWhole],
// [ErrNegative] and [ErrOverflow].
func PartWhole(p Problem) (Working, WholeParts, error) {
	b, err := wholeParts(p)
	if err != nil {
		return Working{}, b, err
	}
	w := Working{Problem: p}
	if b.Whole.Nth == Asked {
		for i, part := range b.Parts {
			w.Moves = append(w.Moves, LayAmount{i, part})
		}
		w.Moves = append(w.Moves, AddParts{b.Parts, b.Whole})
		w.Answer = whole(b.Whole.N)
		return w, b, nil
	}
	at := 0
	if b.Parts[0].Nth == Asked {
		at = 1
	}
	known, other := b.Parts[at], b.Parts[1-at]
	w.Moves = []Move{LayWhole{b.Whole}, MarkPart{at, known, b.Whole}, FindOther{b.Whole, known, other}}
	w.Answer = whole(other.N)
	return w, b, nil
}

func wholeParts(p Problem) (WholeParts, error) {
	switch p.Kind {
	case Addition, Expression:
		return sumParts(p)
	case Subtraction:
		a, b, err := wholeOperands(p)
		if err != nil || p.Story != NoStory {
			return WholeParts{}, ErrNotWhole
		}
		return takenParts(Amount{a, 0}, Amount{a - b, Asked}, Amount{b, 1})
	case Missing:
		return missingParts(p)
	}
	return WholeParts{}, ErrNotWhole
}

// sumParts are the addends of a sum of two numbers or more.
func sumParts(p Problem) (b WholeParts, err error) {
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
func takenParts(whole, left, taken Amount) (WholeParts, error) {
	if left.N < 0 || taken.N < 0 {
		return WholeParts{}, ErrNegative
	}
	return WholeParts{Parts: []Amount{left, taken}, Whole: whole, Taken: true}, nil
}

// missingParts are those of ? + b = c, a + ? = c, ? − b = c and a − ? = c.
func missingParts(p Problem) (WholeParts, error) {
	look, ok := lookFor(p)
	if !ok || p.Rel != Equal {
		return WholeParts{}, ErrNotWhole
	}
	k, okK := wholeNumber(look.Known)
	t, okT := wholeNumber(look.Total)
	known, total := Amount{k, 0}, Amount{t, 1}
	if look.OnRight {
		known.Nth, total.Nth = 1, 0
	}
	switch {
	case !okK || !okT:
		return WholeParts{}, ErrNotWhole
	case look.Op == Subtract && look.Start: // ? − known = total
		if k > math.MaxInt64-t {
			return WholeParts{}, ErrOverflow
		}
		return takenParts(Amount{k + t, Asked}, total, known)
	case look.Op == Subtract: // known − ? = total
		return takenParts(known, total, Amount{k - t, Asked})
	case k > t:
		return WholeParts{}, ErrNegative
	}
	other := Amount{t - k, Asked}
	if look.Start {
		return WholeParts{Parts: []Amount{other, known}, Whole: total}, nil
	}
	return WholeParts{Parts: []Amount{known, other}, Whole: total}, nil
}
