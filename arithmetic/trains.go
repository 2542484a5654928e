package arithmetic

import "modeler/fraction"

// Train is one side of a statement as hops on a line from 0: the first number is
// a length from 0, every other one a hop, back where it is subtracted. End has its
// final name: 1/2 + 1/3 ends on 5/6.
type Train struct {
	First Number
	Hops  []Jump
	End   Number
	Parts CutStretch // for fractions, the common parts of this side; else the zero value
}

// HopTrain goes the hops of one side: 0 is the left side of the statement.
type HopTrain struct {
	Side int
	Train
}

func (HopTrain) move() {}

// CompareTrains works a Claim or Comparison of which a side is a sum or a
// difference, as 8 + 4 = 7 + 5, by hopping both from the same 0 and comparing
// where they end (CCSS 1.OA.D.7). Its errors are [ErrNegative] when a side goes
// below 0 and [ErrOverflow].
func CompareTrains(p Problem) (Working, Scale, error) {
	left, okLeft := terms(p.Left)
	right, okRight := terms(p.Right)
	if p.Kind != Claim && p.Kind != Comparison || !okLeft || !okRight {
		return Working{}, Scale{}, errNotOnLine
	}
	var all []Number
	for _, t := range append(append([]term{}, left...), right...) {
		all = append(all, t.number)
	}
	s, err := CommonScale(all...)
	if err != nil {
		return Working{}, s, err
	}
	first, err := train(s, left)
	if err != nil {
		return Working{}, s, err
	}
	second, err := train(s, right)
	if err != nil {
		return Working{}, s, err
	}
	w := Working{Problem: p, Moves: []Move{HopTrain{0, first}, HopTrain{1, second}}}
	look := compareEndsOf(s, first.End, second.End)
	w.Moves = append(w.Moves, look)
	w.Answer.Relation, w.Answer.Gap = look.Relation, look.Gap.Value
	w.Answer.True = p.Kind == Claim && look.Relation == p.Rel
	return w, s, nil
}

type term struct {
	number Number
	back   bool
}

// terms are the numbers of a chain of sums and differences without brackets.
func terms(e Expr) ([]term, bool) {
	switch e := e.(type) {
	case Number:
		return []term{{number: e}}, true
	case Operation:
		last, ok := e.Right.(Number)
		if e.Op != Add && e.Op != Subtract || !ok {
			return nil, false
		}
		rest, ok := terms(e.Left)
		return append(rest, term{last, e.Op == Subtract}), ok
	}
	return nil, false
}

func train(s Scale, list []term) (Train, error) {
	at := s.Count(list[0].number)
	t := Train{First: list[0].number}
	for _, next := range list[1:] {
		from, by := at, s.Count(next.number)
		if at += by; next.back {
			at = from - by
		}
		if at < 0 && next.back {
			return t, ErrNegative
		}
		if at < 0 {
			return t, ErrOverflow
		}
		t.Hops = append(t.Hops, Jump{From: s.Write(from), By: next.number, To: s.Write(at), Back: next.back})
	}
	t.End = FinalName(s.Write(at))
	if len(list) == 1 {
		t.End = list[0].number
	}
	t.Parts = ownParts(s, list)
	return t, nil
}

// ownParts cuts every whole of a line in the common parts of the fractions of one
// side: sixths for 1/2 + 1/3.
func ownParts(s Scale, list []term) CutStretch {
	if s.Form != Common && s.Form != Mixed {
		return CutStretch{}
	}
	den := int64(1)
	for _, t := range list {
		// It divides the parts of the scale, and so cannot overflow.
		den = den / fraction.GCD(den, t.number.Value.Den()) * t.number.Value.Den()
	}
	if den == 1 {
		return CutStretch{}
	}
	return CutStretch{Parts: den, Each: Frac(fraction.Must(1, den)), Long: Int(1), Of: Frac(fraction.Must(1, den))}
}
