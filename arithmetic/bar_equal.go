package arithmetic

import "modeler/fraction"

// EqualBars is a bar of equal parts.
type EqualBars struct {
	Count, Size, Total Amount // Count × Size is Total without what is left over
	Left               int64  // what is left over behind the last part
	Unit               bool   // a bar of one part stands beside it: times as many
	Taken              int64  // of a fraction of an amount: how many of the parts
	Sum                int64  // and what they come to
}

// CopyBar lays a part again and again, end to end, until there are Count.
type CopyBar struct{ Count, Size Amount }

// AddEqualBars finds the total of equal parts.
type AddEqualBars struct{ Count, Size, Total Amount }

// CutBar cuts the bar of the total in Count equal parts.
type CutBar struct{ Count, Total Amount }

// FindSize finds what each of the equal parts is.
type FindSize struct {
	Count, Size, Total Amount
	Left               int64
}

// MarkUnit marks one part of a known size on the bar of the total.
type MarkUnit struct {
	Size, Total Amount
	Rest        int64 // what is not marked yet
}

// FindCount marks parts of that size until no further one is full.
type FindCount struct {
	Count, Size, Total Amount
	Left               int64
}

// TakeBars takes some of the parts: Taken × Size is Sum.
type TakeBars struct{ Taken, Size, Sum int64 }

func (CopyBar) move()      {}
func (AddEqualBars) move() {}
func (CutBar) move()       {}
func (FindSize) move()     {}
func (MarkUnit) move()     {}
func (FindCount) move()    {}
func (TakeBars) move()     {}

// EqualPartsBar works a Product, a Division or a fraction of an amount, all of whole
// numbers, as a bar of equal parts; where one number is some times as many as
// another, beside a bar of one part (CCSS glossary table 2, 4.OA.A.1, 4.OA.A.2,
// 4.NF.B.4). What is left over stays behind the last part. Its errors are
// [ErrNotWhole], [ErrDivideByZero], [ErrOverflow], and [ErrNoFactor] where the parts
// of a fraction or of a number of times do not come out whole.
func EqualPartsBar(p Problem) (Working, EqualBars, error) {
	switch p.Kind {
	case Product:
		return productBar(p)
	case Division:
		if p.Rest != LeftOver {
			break
		}
		return divisionBar(p)
	case PartOf:
		return partOfBar(p)
	}
	return Working{}, EqualBars{}, ErrNotWhole
}

func productBar(p Problem) (Working, EqualBars, error) {
	a, b, err := wholeOperands(p)
	if err != nil {
		return Working{}, EqualBars{}, err
	}
	total, err := times(a, b)
	if err != nil {
		return Working{}, EqualBars{}, err
	}
	e := EqualBars{Count: Amount{a, 0}, Size: Amount{b, 1}, Total: Amount{total, Asked}, Unit: p.Story == TimesAsMany}
	w := Working{Problem: p, Answer: whole(total), Moves: []Move{
		LayAmount{0, e.Size}, CopyBar{e.Count, e.Size}, AddEqualBars{e.Count, e.Size, e.Total},
	}}
	return w, e, nil
}

func divisionBar(p Problem) (Working, EqualBars, error) {
	total, by, err := wholeOperands(p)
	switch {
	case err != nil:
		return Working{}, EqualBars{}, err
	case by == 0:
		return Working{}, EqualBars{}, ErrDivideByZero
	case p.Story == TimesAsMany && total%by != 0:
		return Working{}, EqualBars{}, ErrNoFactor
	}
	e := EqualBars{Total: Amount{total, 0}, Left: total % by, Unit: p.Story == TimesAsMany}
	w := Working{Problem: p, Answer: whole(total / by), Moves: []Move{LayWhole{e.Total}}}
	w.Answer.Remainder = e.Left
	if p.Grouping {
		e.Size, e.Count = Amount{by, 1}, Amount{total / by, Asked}
		w.Moves = append(w.Moves, MarkUnit{e.Size, e.Total, total - by}, FindCount{e.Count, e.Size, e.Total, e.Left})
		return w, e, nil
	}
	e.Count, e.Size = Amount{by, 1}, Amount{total / by, Asked}
	w.Moves = append(w.Moves, CutBar{e.Count, e.Total}, FindSize{e.Count, e.Size, e.Total, e.Left})
	return w, e, nil
}

func partOfBar(p Problem) (Working, EqualBars, error) {
	o, is := p.Left.(Operation)
	if !is {
		return Working{}, EqualBars{}, ErrNotWhole
	}
	f, isNumber := o.Left.(Number)
	total, ok := wholeNumber(o.Right)
	if !isNumber || !ok || f.Form != Common || f.Value.Sign() <= 0 || f.Value.Cmp(fraction.Whole(1)) > 0 {
		return Working{}, EqualBars{}, ErrNotWhole
	}
	num, den := f.Value.Num(), f.Value.Den()
	if total%den != 0 {
		return Working{}, EqualBars{}, ErrNoFactor
	}
	e := EqualBars{
		Count: Amount{den, 0}, Size: Amount{total / den, Asked}, Total: Amount{total, 1},
		Taken: num, Sum: num * (total / den), // at most the total
	}
	w := Working{Problem: p, Answer: whole(e.Sum), Moves: []Move{
		LayWhole{e.Total}, CutBar{e.Count, e.Total}, FindSize{e.Count, e.Size, e.Total, 0}, TakeBars{num, e.Size.N, e.Sum},
	}}
	return w, e, nil
}
