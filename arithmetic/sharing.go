package arithmetic

// SharePlace shares the pieces of one place equally among the groups. Each is how
// many every group gets, Left how many stay because they are too few.
type SharePlace struct {
	Power        int
	Have, Groups int64
	Each, Shared int64
	Left         int64
	Leading      bool   // Each is a 0 that nobody writes: no group has anything yet
	On           Counts // what is still to be shared
	Given        Counts // what lies in every group
}

// TradeLeft gives the pieces of a place that were too few to share for ten times
// as many of the next smaller place. Had is how many lay there before, Have how
// many lie there now.
type TradeLeft struct {
	From        int
	Count, Made int64
	Had, Have   int64
	On          Counts
}

// ReadShare reads what lies in each group, and what is left over.
type ReadShare struct {
	Groups, Each int64
	Counts       Counts
	Left         int64
}

func (SharePlace) move() {}
func (TradeLeft) move()  {}
func (ReadShare) move()  {}

// ShareByPlace divides a whole number by the written procedure, as sharing among
// so many groups: from the largest place down, share its pieces and trade what is
// left for pieces of the next place (CCSS 4.NBT.B.6). The problem is a Division
// that shares. Its error is [ErrPlaces], [ErrNotWhole] or [ErrDivideByZero].
func ShareByPlace(p Problem) (Working, error) {
	total, groups, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	if groups == 0 {
		return Working{}, ErrDivideByZero
	}
	on, err := Places(total)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: whole(total / groups)}
	w.Answer.Remainder = total % groups
	w.Moves = append(w.Moves, LayOut{0, total, on})
	var given Counts
	for power := on.Top(); power >= 0; power-- {
		share := SharePlace{Power: power, Have: on[power], Groups: groups, Each: on[power] / groups, Left: on[power] % groups}
		share.Shared = share.Each * groups
		share.Leading = share.Each == 0 && given == Counts{} && power > 0
		on[power], given[power] = share.Left, share.Each
		share.On, share.Given = on, given
		w.Moves = append(w.Moves, share)
		if share.Left > 0 && power > 0 {
			trade := TradeLeft{From: power, Count: share.Left, Made: 10 * share.Left, Had: on[power-1]}
			trade.Have = trade.Had + trade.Made
			on[power], on[power-1] = 0, trade.Have
			trade.On = on
			w.Moves = append(w.Moves, trade)
		}
	}
	w.Moves = append(w.Moves, ReadShare{groups, total / groups, given, total % groups})
	return w, nil
}
