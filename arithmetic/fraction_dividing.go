package arithmetic

import (
	"errors"

	"modeler/fraction"
)

// The moves of a division with fractions.
type (
	// MeasureOff marks groups of Each along From, Count of them. Left is what does not
	// make one more group; Part is which part of a group that is. All three are in the
	// same parts.
	MeasureOff struct {
		From, Each, Left Strips
		Size             Number // Each as it is written in the problem
		Count            int64
		Part             fraction.Fraction
	}

	// ShareParts deals the parts of From in Shares equal lengths of Each.
	ShareParts struct {
		From, Each Strips
		Shares     int64
	}
)

func (MeasureOff) move() {}
func (ShareParts) move() {}

// ErrNoGroup says that not even one group can be measured off.
var ErrNoGroup = errors.New("arithmetic: a group is longer than all there is")

// MeasureByCutting works the [Division] of an amount by a fraction as the question how
// many groups of that size there are: both are cut in parts of one size, and the parts
// are counted in groups. What is left is named as the part of a group that it is: of
// 2/3, in groups of 1/4, there are 8/12 ÷ 3/12, 2 groups and 2 of the 3 parts of one
// more, 2 2/3. (CCSS 5.NF.B.7b; division by a fraction by common parts, common practice)
//
// [ErrNothing] says that there is nothing to measure, or nothing to measure with;
// [ErrNoGroup] that a group is more than there is.
func MeasureByCutting(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	if !ok || p.Kind != Division || !broken(b) {
		return Working{}, errNotTwo
	}
	if a.Value.Sign() <= 0 || b.Value.Sign() <= 0 {
		return Working{}, ErrNothing
	}
	if a.Value.Cmp(b.Value) < 0 {
		return Working{}, ErrNoGroup
	}
	den, err := fraction.LCM(a.Value.Den(), b.Value.Den())
	if err != nil {
		return Working{}, ErrOverflow
	}
	moves, all, err := looseParts(a, den)
	if err != nil {
		return Working{}, err
	}
	size, err := b.Value.In(den)
	if err != nil {
		return Working{}, ErrOverflow
	}
	m := MeasureOff{From: all, Each: Strips{Part: size}, Size: b, Count: all.Part.Num() / size.Num()}
	left, err := fraction.New(all.Part.Num()%size.Num(), den)
	if err != nil {
		return Working{}, ErrOverflow
	}
	m.Left = Strips{Part: left}
	if m.Part, err = fraction.New(left.Num(), size.Num()); err != nil {
		return Working{}, ErrOverflow
	}
	m.Part = m.Part.Simplest()
	quotient, err := fraction.FromMixed(m.Count, m.Part)
	if err != nil {
		return Working{}, ErrOverflow
	}
	n := AsMixed(quotient)
	return Working{p, Answer{Number: n, Simplest: n}, append(moves, m)}, nil
}

// ShareByCutting works the [Division] of a fraction by a whole number as sharing: the
// parts are cut until they can be dealt in so many equal shares. A fourth part of 1/3
// is 1/12. (CCSS 5.NF.B.7a) Wholes are shared so where what is left over is cut up too:
// 3 wholes among 4 are 12 fourths, 3/4 for each. (CCSS 5.NF.B.3)
//
// [ErrNothing] says that there is nothing to share; [ErrSame] that there is one share.
func ShareByCutting(p Problem) (Working, error) {
	a, b, ok := p.Operands()
	n, whole := b.Int64()
	wholes := a.Form == Whole && p.Rest == AsPart && !p.Grouping
	if !ok || p.Kind != Division || !broken(a) && !wholes || b.Form != Whole || !whole {
		return Working{}, errNotTwo
	}
	switch {
	case a.Value.Sign() <= 0 || n < 1:
		return Working{}, ErrNothing
	case n == 1:
		return Working{}, ErrSame
	}
	into := n / fraction.GCD(a.Value.Num(), n)
	if wholes && into == 1 {
		return Working{}, ErrSame // they need not be cut
	}
	cut, err := a.Value.CutFiner(into)
	if err != nil {
		return Working{}, ErrOverflow
	}
	moves, all, err := looseParts(a, cut.Den())
	if err != nil {
		return Working{}, err
	}
	share, err := fraction.New(all.Part.Num()/n, cut.Den())
	if err != nil {
		return Working{}, ErrOverflow
	}
	each := Strips{Part: share}
	more, last := finish(each)
	moves = append(append(moves, ShareParts{all, each, n}), more...)
	return Working{p, Answer{Number: Frac(share), Simplest: last.Number()}, moves}, nil
}

// looseParts lays a number and cuts it until all of it lies in loose parts, den of
// which make a whole.
func looseParts(n Number, den int64) (moves []Move, all Strips, err error) {
	all = StripsOf(n)
	moves = []Move{LayStrips{0, n, all}}
	cut, ok, err := cutTo(0, all, den)
	if err != nil {
		return nil, all, err
	}
	if ok {
		moves = append(moves, cut)
	}
	if all = cut.To; all.Wholes > 0 {
		to, err := all.open(all.Wholes)
		if err != nil {
			return nil, all, err
		}
		moves = append(moves, OpenWholes{From: all, To: to, Wholes: all.Wholes})
		all = to
	}
	return moves, all, nil
}

// broken reports whether a number is written with a fraction.
func broken(n Number) bool { return n.Form == Common || n.Form == Mixed }
