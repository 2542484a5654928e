package arithmetic

// A number bond shows a whole and its two parts, and what can be said of them.

// SplitNumber splits one of the two addends so that one piece of it fills up the
// other addend to ten: 6 is 2 and 4, and 8 and 2 make 10.
type SplitNumber struct {
	At         int // which addend is split, from 0
	Kept       int64
	Split      int64
	Need, Rest int64
}

// FillTen puts what is needed with the other addend: that makes ten.
type FillTen struct{ Kept, Need int64 }

// AddToTen adds the rest to ten.
type AddToTen struct{ Rest, Sum int64 }

func (SplitNumber) move() {}
func (FillTen) move()     {}
func (AddToTen) move()    {}

// MakeTen works an Addition of two numbers below ten whose sum is above ten by
// making ten first (CCSS 1.OA.C.6: 8 + 6 = 8 + 2 + 4 = 10 + 4). The smaller addend
// is split, and of two equal ones the second. Its error is [ErrNotWhole] for every
// other problem.
func MakeTen(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	if err != nil || p.Kind != Addition || a > 9 || b > 9 || a+b <= 10 {
		return Working{}, ErrNotWhole
	}
	s := SplitNumber{At: 1, Kept: a, Split: b}
	if a < b {
		s = SplitNumber{At: 0, Kept: b, Split: a}
	}
	s.Need = 10 - s.Kept
	s.Rest = s.Split - s.Need
	return Working{Problem: p, Answer: whole(a + b), Moves: []Move{
		LayAmount{0, Amount{a, 0}}, LayAmount{1, Amount{b, 1}}, s, FillTen{s.Kept, s.Need}, AddToTen{s.Rest, a + b},
	}}, nil
}

// SplitPlaces puts the tens of a number on one side and its ones on the other. Tens
// is what they are worth, TenCount how many there are.
type SplitPlaces struct{ Number, Tens, TenCount, Ones int64 }

func (SplitPlaces) move() {}

// TensAndOnes works an ExpandedForm of a number from 11 to 99 with ones in it as a
// whole in two parts (CCSS 1.NBT.B.2). Its error is [ErrPlaces] for every other
// problem.
func TensAndOnes(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	if !ok || p.Kind != ExpandedForm || n < 11 || n > 99 || n%10 == 0 {
		return Working{}, ErrPlaces
	}
	w := Working{Problem: p, Moves: []Move{LayWhole{Amount{n, 0}}, SplitPlaces{n, n / 10 * 10, n / 10, n % 10}}}
	w.Answer = whole(n)
	w.Answer.List = []int64{n / 10 * 10, n % 10}
	return w, nil
}

// BondFact is a Op b = c, in numbers of a bond.
type BondFact struct {
	Op      Op
	A, B, C Amount
}

// JoinFacts writes the facts that put the two parts together, SplitFacts those that
// take one of them from the whole again. Of two equal parts there is one of each.
type JoinFacts struct{ Facts []BondFact }
type SplitFacts struct{ Facts []BondFact }

func (JoinFacts) move()  {}
func (SplitFacts) move() {}

// Family works a FactFamily: the two numbers, what they make, and the facts that say
// so (CCSS 1.OA.B.4, 3.OA.B.6). Its errors are [ErrNotWhole], [ErrOverflow], and
// [ErrDivideByZero] for a product with 0.
func Family(p Problem) (Working, error) {
	o, is := p.Left.(Operation)
	if p.Kind != FactFamily || !is || o.Op != Add && o.Op != Multiply {
		return Working{}, ErrNotWhole
	}
	x, y, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	back, total := Subtract, int64(0)
	if total, err = plus(x, y); o.Op == Multiply {
		if back = Divide; x == 0 || y == 0 {
			return Working{}, ErrDivideByZero
		}
		total, err = times(x, y)
	}
	if err != nil {
		return Working{}, err
	}
	a, b, c := Amount{x, 0}, Amount{y, 1}, Amount{total, Asked}
	join, split := []BondFact{{o.Op, a, b, c}}, []BondFact{{back, c, b, a}}
	if x != y {
		join, split = append(join, BondFact{o.Op, b, a, c}), append(split, BondFact{back, c, a, b})
	}
	w := Working{Problem: p, Answer: whole(total), Moves: []Move{
		LayAmount{0, a}, LayAmount{1, b}, AddParts{[]Amount{a, b}, c}, JoinFacts{join}, SplitFacts{split},
	}}
	return w, nil
}

// FirstWay puts nothing on one side and all on the other. NextWay moves one across.
// OtherWays goes on until the two sides would only change places. TurnWays turns every
// way with two different parts: All is how many ways there are then.
type FirstWay struct{ Pair [2]int64 }
type NextWay struct{ Pair [2]int64 }
type OtherWays struct{ Pairs [][2]int64 }
type TurnWays struct{ Pairs, All int64 }

func (FirstWay) move()  {}
func (NextWay) move()   {}
func (OtherWays) move() {}
func (TurnWays) move()  {}

// Ways works a WaysToMake of a whole number: every two whole numbers, 0 too, whose
// sum it is, the smaller in front (CCSS K.OA.A.3). Its error is [ErrNotWhole], also
// for a number above 1,000.
func Ways(p Problem) (Working, error) {
	const most = 1000 // as many pairs as anybody may want
	n, ok := wholeNumber(p.Left)
	if p.Kind != WaysToMake || !ok || n > most {
		return Working{}, ErrNotWhole
	}
	w := Working{Problem: p, Answer: whole(n)}
	for i := int64(0); i <= n/2; i++ {
		w.Answer.Pairs = append(w.Answer.Pairs, [2]int64{i, n - i})
	}
	pairs := w.Answer.Pairs
	w.Moves = []Move{LayWhole{Amount{n, 0}}, FirstWay{pairs[0]}}
	if len(pairs) > 1 {
		w.Moves = append(w.Moves, NextWay{pairs[1]})
	}
	if len(pairs) > 2 {
		w.Moves = append(w.Moves, OtherWays{pairs[2:]})
	}
	w.Moves = append(w.Moves, TurnWays{int64(len(pairs)), n + 1})
	return w, nil
}
