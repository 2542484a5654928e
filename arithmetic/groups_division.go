package arithmetic

import "modeler/fraction"

// DivisionByGroups works a division of whole numbers with groups: dealt out among
// a known number of groups, round by round, or measured off in groups of a known
// size (CCSS 3.OA.A.2). What is done with what is left over goes by [Rest], but it
// is not written as a decimal: that is [ErrNotWhole].
func DivisionByGroups(p Problem) (Working, error) {
	total, by, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	if p.Rest == AsDecimal {
		return Working{}, ErrNotWhole
	}
	story := Sharing
	if p.Grouping {
		story = Measuring
	}
	w, err := divideGroups(p, story, total, by)
	if err != nil || w.Answer.Remainder == 0 {
		return w, err
	}
	switch p.Rest {
	case AsPart:
		return w.splitRest(story, by)
	case OneMore:
		left, found := w.Answer.Remainder, total/by+1
		w.goOn(whole(found), RoundUp{story, left, by - left, found})
	}
	return w, nil
}

// goOn puts moves before the last one, which reads the answer that they reach.
func (w *Working) goOn(answer Answer, moves ...Move) {
	last := len(w.Moves) - 1
	read, _ := w.Moves[last].(ReadGroups)
	w.Answer, read.Found = answer, answer
	w.Moves = append(append(w.Moves[:last:last], moves...), read)
}

// splitRest goes on with what is left over until the answer is a mixed number:
// 14 ÷ 4 is 3 2/4.
func (w Working) splitRest(story GroupStory, by int64) (Working, error) {
	found, _ := w.Answer.Number.Int64()
	left := w.Answer.Remainder
	share := fraction.Must(left, by)
	all, err := fraction.FromMixed(found, share)
	if err != nil {
		return Working{}, ErrOverflow
	}
	answer := Answer{Number: AsMixed(all), Simplest: FinalName(AsMixed(all))}
	if story == Measuring {
		w.goOn(answer, PartGroup{left, by, by - left, Frac(share), AsMixed(all)})
		return w, nil
	}
	pieces, err := times(left, by)
	if err != nil {
		return Working{}, err
	}
	w.goOn(answer, SplitRest{left, by, pieces}, DealParts{by, left, Frac(share), AsMixed(all)})
	return w, nil
}

func divideGroups(p Problem, story GroupStory, total, by int64) (Working, error) {
	if by == 0 {
		return Working{}, ErrDivideByZero
	}
	found, left := total/by, total%by
	if found > mostGroupMoves {
		return Working{}, ErrOverflow
	}
	set := SetGroups{Story: story, Total: total, Groups: by}
	read := ReadGroups{Story: story, Groups: by, Each: found, Total: total, Left: left}
	if story == Measuring {
		set.Groups, set.Each = 0, by
		read.Groups, read.Each = found, by
	}
	w := Working{Problem: p, Answer: whole(found), Moves: []Move{set}}
	w.Answer.Remainder = left
	read.Found = w.Answer
	on := total // the table
	if story == Measuring {
		for _, m := range fullGroups(found, by) {
			on -= m.Took
			m.Left = on
			w.Moves = append(w.Moves, m)
		}
	}
	for before := int64(0); before < found && story == Sharing; {
		m := DealRounds{Groups: by, Before: before, More: min(atATime(found), found-before)}
		m.Each, m.Took = before+m.More, m.More*by
		on -= m.Took
		m.Left = on
		w.Moves = append(w.Moves, m)
		before += m.More
	}
	w.Moves = append(w.Moves, read)
	return w, nil
}

// MissingByGroups works a product or a division with a blank in it. A blank size
// is found by sharing, a blank number of groups by measuring, and a blank total by
// making the groups (CCSS 3.OA.A.4).
func MissingByGroups(p Problem) (Working, error) {
	o, first, k, n, err := blankIn(p)
	switch {
	case err != nil:
		return Working{}, err
	case o.Op == Divide && first: // ? ÷ 3 = 5: 3 groups with 5 in each
		if k == 0 {
			return Working{}, ErrDivideByZero
		}
		return makeGroups(p, k, n)
	case o.Op == Divide: // 48 ÷ ? = 8: 8 in each group
		return evenly(p, Measuring, k, n)
	case first: // ? × 8 = 48: groups of 8
		return evenly(p, Measuring, n, k)
	}
	return evenly(p, Sharing, n, k) // 8 × ? = 48: 8 groups
}

// evenly divides with nothing left over.
func evenly(p Problem, story GroupStory, total, by int64) (Working, error) {
	if err := fillable(p, total, by); err != nil {
		return Working{}, err
	}
	return divideGroups(p, story, total, by)
}

// PartByGroups works a fraction, up to one whole, of a whole amount that comes out
// whole: the amount is shared among as many groups as the denominator says, and as
// many groups are taken as the numerator says (CCSS 4.NF.B.4).
func PartByGroups(p Problem) (Working, error) {
	f, total, err := partOfWhole(p)
	if err != nil {
		return Working{}, err
	}
	w, err := divideGroups(p, Sharing, total, f.Den())
	if err != nil {
		return Working{}, err
	}
	each := total / f.Den()
	take := TakeGroups{f.Num(), f.Den(), each, f.Num() * each} // at most the total
	w.Answer = whole(take.Sum)
	w.Moves = append(w.Moves, take)
	return w, nil
}

// ParityByPairs tells whether a whole number is even by making pairs: one pair,
// then all the others (CCSS 2.OA.C.3).
func ParityByPairs(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	if !ok || p.Kind != Parity {
		return Working{}, ErrNotWhole
	}
	if n > mostGroupMoves {
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p, Moves: []Move{SetGroups{Story: Measuring, Total: n, Each: 2}}}
	pairs := n / 2
	for before := int64(0); before < pairs; {
		m := MakeGroups{Before: before, More: 1, Each: 2}
		if before > 0 {
			m.More = pairs - 1
		}
		m.Groups = before + m.More
		for i := range m.More {
			m.Totals = append(m.Totals, 2*(before+i+1))
		}
		m.Took, m.Left = 2*m.More, n-2*m.Groups
		w.Moves = append(w.Moves, m)
		before += m.More
	}
	w.Answer.Even = n%2 == 0
	w.Moves = append(w.Moves, ReadPairs{n, pairs, n % 2, w.Answer.Even})
	return w, nil
}
