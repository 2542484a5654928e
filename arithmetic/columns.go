package arithmetic

import "modeler/fraction"

// LayOut puts the pieces of a whole number on the table.
type LayOut struct {
	Nth    int // 0 for the first number of the problem, 1 for the second
	Number int64
	Counts Counts
}

// LayPlace puts the pieces of one digit on the table.
type LayPlace struct {
	Power int
	Count int64
	Worth int64
}

// JoinPlace brings the pieces of one place together: those of the first number,
// of the second, and the one that came out of the trade before.
type JoinPlace struct {
	Power                  int
	First, Second, Carried int64
	Sum                    int64
	On                     Counts // what lies on the table
}

// TradeUp gives 10 pieces of a place for 1 piece of the next larger place.
// FromFirst, FromSecond and FromCarried are the ten that go.
type TradeUp struct {
	From                               int // the place of the ten pieces
	FromFirst, FromSecond, FromCarried int64
	Left                               int64 // pieces that stay in the place
	After                              Counts
}

// TradeDown gives 1 piece of a place for 10 pieces of the next smaller place.
type TradeDown struct {
	From       int
	Short      int   // the place for which it is done
	Have, Need int64 // pieces in that place, and how many are to be taken from it
	After      Counts
}

// TakePlace takes pieces of one place away.
type TakePlace struct {
	Power             int
	From, Count, Left int64
	Leading           bool // what is left is a 0 that nobody writes: only zeros come before it
	After             Counts
}

// ComparePlace holds the digits of one place beside each other.
type ComparePlace struct {
	Power         int
	First, Second int64
	Relation      Relation
}

// WriteSign says what stands between the two numbers of a comparison.
type WriteSign struct {
	First, Second int64
	Relation      Relation
}

// ReadOff reads the number that lies on the table.
type ReadOff struct {
	Number int64
	Counts Counts
}

func (LayOut) move()       {}
func (LayPlace) move()     {}
func (JoinPlace) move()    {}
func (TradeUp) move()      {}
func (TradeDown) move()    {}
func (TakePlace) move()    {}
func (ComparePlace) move() {}
func (WriteSign) move()    {}
func (ReadOff) move()      {}

// ShowByPlace lays a whole number out digit by digit, from the largest place
// down, empty places too. Its error is [ErrPlaces].
func ShowByPlace(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, ErrPlaces
	}
	v, digits, err := placed(n)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: n}}
	for power := digits.Top(); power >= 0; power-- {
		w.Moves = append(w.Moves, LayPlace{power, digits[power], digits[power] * Power10(power)})
	}
	w.Moves = append(w.Moves, ReadOff{v, digits})
	return w, nil
}

// AddByPlace adds two whole numbers by the written procedure: from the ones up,
// join the pieces of a place and trade ten of them for one of the next (CCSS
// 2.NBT.B.7, 4.NBT.B.4). Its error is [ErrPlaces], also for a sum that is too
// large.
func AddByPlace(p Problem) (Working, error) {
	a, b, first, second, err := placedPair(p)
	if err != nil {
		return Working{}, err
	}
	total, err := Places(a + b)
	if err != nil {
		return Working{}, err
	}
	sum := Int(a + b)
	w := Working{Problem: p, Answer: Answer{Number: sum, Simplest: sum}}
	w.Moves = append(w.Moves, LayOut{0, a, first}, LayOut{1, b, second})
	carried, on := int64(0), first.Plus(second)
	for power := 0; power <= max(first.Top(), second.Top()); power++ {
		join := JoinPlace{power, first[power], second[power], carried, on[power], on}
		w.Moves = append(w.Moves, join)
		if carried = join.Sum / 10; carried > 0 {
			on[power] -= 10
			on[power+1]++
			w.Moves = append(w.Moves, tenOf(join, on))
		}
	}
	w.Moves = append(w.Moves, ReadOff{a + b, total})
	return w, nil
}

// tenOf chooses the ten pieces to trade: the first number's before the second's,
// and the one that was traded before only when it is needed. after is what lies
// on the table then.
func tenOf(join JoinPlace, after Counts) TradeUp {
	fromFirst := min(10, join.First)
	fromSecond := min(10-fromFirst, join.Second)
	return TradeUp{join.Power, fromFirst, fromSecond, 10 - fromFirst - fromSecond, after[join.Power], after}
}

// SubtractByPlace subtracts whole numbers by the written procedure in the order
// of the Progressions for grade 2 (from memory): first every trade that is
// needed, from the ones up and across zeros, then the taking away, from the ones
// up to the last place where pieces lie. Its error is [ErrPlaces] or [ErrNegative].
func SubtractByPlace(p Problem) (Working, error) {
	a, b, first, second, err := placedPair(p)
	if err != nil {
		return Working{}, err
	}
	if b > a {
		return Working{}, ErrNegative
	}
	left, err := Places(a - b)
	if err != nil {
		return Working{}, err
	}
	difference := Int(a - b)
	w := Working{Problem: p, Answer: Answer{Number: difference, Simplest: difference}}
	w.Moves = append(w.Moves, LayOut{0, a, first})
	trades, ready := tradesFor(first, second)
	w.Moves = append(w.Moves, trades...)
	on := ready
	for power := 0; power <= ready.Top(); power++ {
		take := TakePlace{Power: power, From: on[power], Count: second[power], Left: on[power] - second[power]}
		on[power] = take.Left
		take.Leading = power > left.Top()
		take.After = on
		w.Moves = append(w.Moves, take)
	}
	w.Moves = append(w.Moves, ReadOff{a - b, left})
	return w, nil
}

// tradesFor are the trades after which every place has enough to take away from,
// and the pieces that lie there then. What is taken away is not more than what
// there is.
func tradesFor(on, take Counts) ([]Move, Counts) {
	var trades []Move
	for short := range on {
		if on[short] >= take[short] {
			continue
		}
		trade := TradeDown{Short: short, Have: on[short], Need: take[short]}
		giver := short + 1
		for on[giver] == 0 {
			giver++
		}
		for ; giver > short; giver-- {
			on[giver]--
			on[giver-1] += 10
			trade.From, trade.After = giver, on
			trades = append(trades, trade)
		}
	}
	return trades, on
}

// CompareByPlace compares two whole numbers from the largest place down, as far
// as the first place that differs (CCSS 2.NBT.A.4). The problem is a Comparison
// or a Claim. Its error is [ErrPlaces].
func CompareByPlace(p Problem) (Working, error) {
	a, b, first, second, err := placedPair(p)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: Answer{
		Relation: between(a, b),
		True:     p.Kind == Claim && p.Rel == between(a, b),
		Gap:      fraction.Whole(max(a-b, b-a)),
	}}
	w.Moves = append(w.Moves, LayOut{0, a, first}, LayOut{1, b, second})
	for power := max(first.Top(), second.Top()); power >= 0; power-- {
		rel := between(first[power], second[power])
		w.Moves = append(w.Moves, ComparePlace{power, first[power], second[power], rel})
		if rel != Equal {
			break
		}
	}
	w.Moves = append(w.Moves, WriteSign{a, b, w.Answer.Relation})
	return w, nil
}

func between(a, b int64) Relation {
	switch {
	case a < b:
		return Less
	case a > b:
		return Greater
	}
	return Equal
}
