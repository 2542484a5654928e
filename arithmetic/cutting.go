package arithmetic

import "modeler/fraction"

// Strips is an amount as it lies on the table: whole strips, and parts of which
// Part.Den() make one strip. Part may be more than one whole (5/4) while the
// pieces are still loose.
type Strips struct {
	Wholes int64
	Part   fraction.Fraction
}

// StripsOf lays a number as it is written: 1 3/4 as one whole strip and three
// fourths, 7/4 as seven fourths, 0.3 as three tenths.
func StripsOf(n Number) Strips {
	switch n.Form {
	case Whole:
		wholes, _ := n.Int64()
		return Strips{Wholes: wholes}
	case Mixed:
		wholes, part := n.Value.Mixed()
		return Strips{wholes, part}
	}
	return Strips{Part: n.Value}
}

// Value is the whole amount as one fraction in the parts of Part.
func (s Strips) Value() (fraction.Fraction, error) {
	v, err := fraction.FromMixed(s.Wholes, s.Part)
	if err != nil {
		return v, ErrOverflow
	}
	return v, nil
}

// Number names the amount: parts alone as a fraction, wholes alone as a whole
// number, both as a mixed number. Part must be less than one whole when there
// are wholes beside it.
func (s Strips) Number() Number {
	v, _ := s.Value()
	switch {
	case s.Wholes == 0:
		return Frac(v)
	case s.Part.Num() == 0:
		return Int(s.Wholes)
	}
	return Number{Value: v, Form: Mixed}
}

// The moves that are made with strips. Nth is which number of the problem a move
// touches, from 0.
type (
	// CutWholes makes parts ready: Uncut strips stay whole, Cut strips are each
	// cut in Den equal parts.
	CutWholes struct{ Uncut, Cut, Den int64 }

	// LayStrips lays one number of the problem on the whole.
	LayStrips struct {
		Nth    int
		Number Number
		Strips Strips
	}

	// LayAll lays every number of a list, each on its own whole.
	LayAll struct{ Strips []Strips }

	// CutParts cuts every part of one amount in Into equal ones. The amount does
	// not change. (CCSS 4.NF.A.1)
	CutParts struct {
		Nth      int
		From, To Strips
		Into     int64
	}

	// CutAll cuts the parts of every amount so that all have Den parts to the
	// whole.
	CutAll struct {
		From, To []Strips
		Den      int64
	}

	// CompareEnds looks at where two amounts end. SameCount says that both have
	// as many parts, so that the size of the parts decides and none is cut.
	// Instead is the nearest true statement when the claim is false.
	CompareEnds struct {
		First, Second Strips
		Relation      Relation
		Gap           fraction.Fraction
		SameCount     bool
		Instead       Problem
	}

	// SortByLength puts a list in order: Order[0] is which number is the least.
	// Equal numbers stay as they came.
	SortByLength struct {
		Order     []int
		SameCount bool // all have as many parts; see [CompareEnds]
	}

	// PutTogether lays the second amount after the first, wholes beside wholes.
	PutTogether struct{ First, Second Strips }

	// CountParts counts what there is now.
	CountParts struct{ Total Strips }

	// OpenWholes cuts Wholes whole strips in the parts that are needed. Before
	// strips that stay whole lie before them. Of a difference those are left in the
	// end, so that what is taken away lies in one stretch behind the cut.
	OpenWholes struct {
		Nth      int
		From, To Strips
		Wholes   int64
		Before   int64
	}

	// TakeStrips takes an amount away.
	TakeStrips struct{ From, Taken, Left Strips }

	// MakeWholes joins parts in Wholes new whole strips.
	MakeWholes struct {
		From, To Strips
		Wholes   int64
	}

	// MergeParts joins each Every parts in one larger part. Every is 1 when no
	// larger part fits: the parts are the largest already.
	MergeParts struct {
		From, To Strips
		Every    int64
	}
)

func (CutWholes) move()    {}
func (LayStrips) move()    {}
func (LayAll) move()       {}
func (CutParts) move()     {}
func (CutAll) move()       {}
func (CompareEnds) move()  {}
func (SortByLength) move() {}
func (PutTogether) move()  {}
func (CountParts) move()   {}
func (OpenWholes) move()   {}
func (TakeStrips) move()   {}
func (MakeWholes) move()   {}
func (MergeParts) move()   {}

// cutTo cuts the parts of one amount until den of them make a whole, which must
// be a multiple of what there is. With no parts lying loose nothing is cut and
// ok is false.
func cutTo(nth int, from Strips, den int64) (move CutParts, ok bool, err error) {
	into := den / from.Part.Den()
	part, err := from.Part.CutFiner(into)
	if err != nil {
		return CutParts{}, false, ErrOverflow
	}
	to := Strips{from.Wholes, part}
	if into == 1 || from.Part.Num() == 0 {
		return CutParts{To: to}, false, nil
	}
	return CutParts{nth, from, to, into}, true, nil
}

// finish names a result as far as it can be named: loose parts that fill a whole
// become one, and parts join in the largest that fit.
func finish(s Strips) (moves []Move, last Strips) {
	if wholes, part := s.Part.Mixed(); wholes > 0 {
		to := Strips{s.Wholes + wholes, part}
		moves = append(moves, MakeWholes{s, to, wholes})
		s = to
	}
	if every := fraction.GCD(s.Part.Num(), s.Part.Den()); every > 1 && s.Part.Num() > 0 {
		to := Strips{s.Wholes, s.Part.Simplest()}
		moves = append(moves, MergeParts{s, to, every})
		s = to
	}
	return moves, s
}
