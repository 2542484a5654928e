package arithmetic

import (
	"errors"
	"slices"
)

// PanGroup is what one number, product or difference of a side brings to the pan
// of a balance.
type PanGroup struct {
	Expr  Expr
	Count int64 // what lies there for good; 0 of a blank
	Off   int64 // what is laid and taken off again: 9 − 4 leaves 5 and takes 4 off
	Times int64 // of a product: so many equal groups make the count; 0 of others
	Blank bool  // the unknown number, in a closed bag
	Open  int   // brackets that open before it
	Close int   // and that close after it
}

// Pan is one side of a statement as it lies on a pan.
type Pan struct {
	Side   int // 0 is the left one
	Expr   Expr
	Groups []PanGroup
	Value  int64 // what all groups weigh together, without the blank
}

// LoadPan lays a side on its pan while the beam is held.
type LoadPan struct{ Pan }

// Weigh lets the beam go: the heavier side sinks, and equal sides stay level.
type Weigh struct {
	Left, Right Pan
	Relation    Relation
	Gap         int64
	SameNumbers bool // both sides have the same numbers, in another order
}

// SetLevel lays both sides of an equation with a blank: they weigh the same.
type SetLevel struct{ Left, Right Pan }

// CountPan counts what lies on a pan as one number.
type CountPan struct{ Pan }

// TakeBoth takes as much from one pan as from the other, which keeps the beam
// level.
type TakeBoth struct {
	By    int64
	From  int64 // on the pan without the blank
	Left  int64 // what stays there, against the blank alone
	Blank int   // the side of the blank
}

// OpenBlank finds in the bag what lies on the other pan.
type OpenBlank struct {
	Number int64
	Blank  int
}

func (LoadPan) move()   {}
func (Weigh) move()     {}
func (SetLevel) move()  {}
func (CountPan) move()  {}
func (TakeBoth) move()  {}
func (OpenBlank) move() {}

// ErrNotOnBalance says that a side is more than whole numbers, products and
// differences of two of them, and sums of all these.
var ErrNotOnBalance = errors.New("arithmetic: not a problem for a balance")

// WeighSides works a Claim or Comparison of whole numbers by weighing: both sides
// are laid on a held balance, and it is let go (the equal sign says "the same as",
// CCSS 1.OA.D.7). Its errors are [ErrNotOnBalance], [ErrNegative] and [ErrOverflow].
func WeighSides(p Problem) (Working, error) {
	if p.Kind != Claim && p.Kind != Comparison {
		return Working{}, ErrNotOnBalance
	}
	left, err := panOf(0, p.Left)
	if err != nil {
		return Working{}, err
	}
	right, err := panOf(1, p.Right)
	if err != nil {
		return Working{}, err
	}
	if left.blank() || right.blank() {
		return Working{}, ErrNotOnBalance
	}
	a, err := Judge(p)
	if err != nil {
		return Working{}, err
	}
	gap := max(left.Value-right.Value, right.Value-left.Value)
	look := Weigh{left, right, a.Relation, gap, sameNumbers(left, right)}
	return Working{Problem: p, Answer: a, Moves: []Move{LoadPan{left}, LoadPan{right}, look}}, nil
}

// FindOnBalance works a Missing in which the blank is an addend of a side, or all
// of it, as 8 + 4 = ? + 5: what stands beside the blank is taken from both sides,
// until the blank stands alone (CCSS 1.OA.D.8, 6.EE.B.5 in a form for the hands).
// Its errors are those of [WeighSides]; [ErrNegative] also when less than that lies
// on the other side.
func FindOnBalance(p Problem) (Working, error) {
	if p.Kind != Missing {
		return Working{}, ErrNotOnBalance
	}
	left, err := panOf(0, p.Left)
	if err != nil {
		return Working{}, err
	}
	right, err := panOf(1, p.Right)
	if err != nil {
		return Working{}, err
	}
	if left.blank() == right.blank() {
		return Working{}, ErrNotOnBalance
	}
	blank, known := left, right
	if right.blank() {
		blank, known = right, left
	}
	if known.Value < blank.Value {
		return Working{}, ErrNegative
	}
	w := Working{Problem: p, Moves: []Move{SetLevel{left, right}}}
	if len(known.Groups) > 1 || known.Groups[0].Times > 0 || known.Groups[0].Off > 0 {
		w.Moves = append(w.Moves, CountPan{known})
	}
	found := known.Value - blank.Value
	if blank.Value > 0 {
		w.Moves = append(w.Moves, TakeBoth{By: blank.Value, From: known.Value, Left: found, Blank: blank.Side})
	}
	w.Moves = append(w.Moves, OpenBlank{found, blank.Side})
	return w.ends(Int(found)), nil
}

// mostOnPan bounds what is laid on a pan, so that nothing overflows.
const mostOnPan = 1_000_000

func panOf(side int, e Expr) (Pan, error) {
	groups, err := panGroups(e)
	pan := Pan{Side: side, Expr: e, Groups: groups}
	for _, g := range groups {
		pan.Value += g.Count
	}
	return pan, err
}

func panGroups(e Expr) ([]PanGroup, error) {
	switch e := e.(type) {
	case Unknown:
		return []PanGroup{{Expr: e, Blank: true}}, nil
	case Number:
		n, err := onPan(e)
		return []PanGroup{{Expr: e, Count: n}}, err
	case Operation:
		if e.Op != Add {
			return workedGroup(e)
		}
		left, err := panGroups(e.Left)
		if err != nil {
			return nil, err
		}
		right, err := panGroups(e.Right)
		if o, is := e.Right.(Operation); is && o.Op == Add && err == nil {
			right[0].Open++
			right[len(right)-1].Close++
		}
		return append(left, right...), err
	}
	return nil, ErrNotOnBalance
}

// workedGroup is a product or a difference of two numbers.
func workedGroup(o Operation) ([]PanGroup, error) {
	x, okX := o.Left.(Number)
	y, okY := o.Right.(Number)
	if !okX || !okY {
		return nil, ErrNotOnBalance
	}
	a, errA := onPan(x)
	b, errB := onPan(y)
	switch err := errors.Join(errA, errB); {
	case errors.Is(err, ErrNotOnBalance):
		return nil, ErrNotOnBalance
	case err != nil:
		return nil, ErrOverflow
	case o.Op == Multiply && (a*b > mostOnPan || a > mostOnPan):
		return nil, ErrOverflow
	case o.Op == Multiply:
		return []PanGroup{{Expr: o, Count: a * b, Times: a}}, nil
	case o.Op == Subtract && a < b:
		return nil, ErrNegative
	case o.Op == Subtract:
		return []PanGroup{{Expr: o, Count: a - b, Off: b}}, nil
	}
	return nil, ErrNotOnBalance
}

// onPan is a whole number that can be laid.
func onPan(n Number) (int64, error) {
	v, ok := n.Int64()
	if !ok || n.Form != Whole || v < 0 {
		return 0, ErrNotOnBalance
	}
	if v > mostOnPan {
		return 0, ErrOverflow
	}
	return v, nil
}

func (p Pan) blank() bool {
	return slices.ContainsFunc(p.Groups, func(g PanGroup) bool { return g.Blank })
}

// Laid is the most that lies on the pan at a time.
func (p Pan) Laid() int64 {
	laid := p.Value
	for _, g := range p.Groups {
		laid += g.Off
	}
	return laid
}

// sameNumbers reports whether two sides have the same numbers in another order: two
// sums, or two products.
func sameNumbers(a, b Pan) bool {
	x, y := parted(a), parted(b)
	if len(x) < 2 || slices.Equal(x, y) {
		return false
	}
	slices.Sort(x)
	slices.Sort(y)
	return slices.Equal(x, y) && (len(a.Groups) > 1) == (len(b.Groups) > 1)
}

// parted are the numbers of a sum, or the two factors of a product; nil of others.
func parted(p Pan) []int64 {
	var list []int64
	for _, g := range p.Groups {
		switch {
		case g.Off > 0 || g.Blank || g.Times > 0 && len(p.Groups) > 1:
			return nil
		case g.Times > 0:
			return []int64{g.Times, g.Count / g.Times}
		}
		list = append(list, g.Count)
	}
	return list
}
