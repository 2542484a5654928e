package arithmetic

// LayGroups lays out so many groups of one number. Turned says that the problem
// has its numbers the other way round: 24 × 3 is laid out as 3 groups of 24, which
// is the same amount.
type LayGroups struct {
	Groups, Size int64
	Counts       Counts // of each group
	Turned       bool
}

// MultiplyPlace brings the pieces of one place of all groups together: Groups
// times Each is Made, and they are worth Worth. With those that a trade has
// brought they are Sum.
type MultiplyPlace struct {
	Power        int
	Groups, Each int64
	Made, Worth  int64
	Carried, Sum int64
	Last         bool   // there is no larger place to gather
	On           Counts // what has been brought together
}

// GatherPlace brings the pieces of one place of several numbers together, and
// those that a trade has brought.
type GatherPlace struct {
	Power        int
	Parts        []int64
	Carried, Sum int64
	Last         bool
	On           Counts
}

// TradeTens gives ten pieces of a place for one of the next larger place, Made
// times.
type TradeTens struct {
	From              int
	Given, Made, Left int64
	On                Counts
}

func (LayGroups) move()     {}
func (MultiplyPlace) move() {}
func (GatherPlace) move()   {}
func (TradeTens) move()     {}

// MultiplyByPlace multiplies whole numbers one of which is from 1 to 9: that many
// groups are laid out and brought together from the ones up, with trades (CCSS
// 3.NBT.A.3, 4.NBT.B.5). The problem is a Product. Its errors are [ErrPlaces], also
// for a product that is too large, and [ErrNotWhole].
func MultiplyByPlace(p Problem) (Working, error) {
	groups, size, err := wholeOperands(p)
	if err != nil {
		return Working{}, err
	}
	lay := LayGroups{Groups: groups, Size: size}
	if groups > 9 || groups == 0 {
		lay = LayGroups{Groups: size, Size: groups, Turned: true}
	}
	if lay.Groups < 1 || lay.Groups > 9 || lay.Size > MaxPlaced {
		return Working{}, ErrPlaces
	}
	product := Int(lay.Groups * lay.Size)
	if _, err := Places(lay.Groups * lay.Size); err != nil {
		return Working{}, err
	}
	if lay.Counts, err = Places(lay.Size); err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: Answer{Number: product, Simplest: product}, Moves: []Move{lay}}
	top := lay.Counts.Top()
	w.gather(top, func(power int, carried int64, on *Counts) Move {
		m := MultiplyPlace{Power: power, Groups: lay.Groups, Each: lay.Counts[power], Carried: carried, Last: power == top}
		m.Made = m.Groups * m.Each
		m.Worth, m.Sum = m.Made*Power10(power), m.Made+carried
		on[power] = m.Sum
		m.On = *on
		return m
	})
	return w, nil
}

// AddListByPlace adds three or more whole numbers by the written procedure, from
// the ones up (CCSS 2.NBT.B.6). The problem is an Expression of sums. Its error is
// [ErrPlaces], also for a sum that is too large.
func AddListByPlace(p Problem) (Working, error) {
	list, ok := terms(p.Left)
	if p.Kind != Expression || !ok {
		return Working{}, ErrPlaces
	}
	w := Working{Problem: p}
	var numbers []Counts
	total, top := int64(0), 0
	for i, t := range list {
		n, digits, err := placed(t.number)
		if err != nil || t.back {
			return Working{}, ErrPlaces
		}
		if total += n; total > MaxPlaced {
			return Working{}, ErrPlaces
		}
		numbers, top = append(numbers, digits), max(top, digits.Top())
		w.Moves = append(w.Moves, LayOut{i, n, digits})
	}
	w.Answer = whole(total)
	w.gather(top, func(power int, carried int64, on *Counts) Move {
		m := GatherPlace{Power: power, Carried: carried, Sum: carried, Last: power == top}
		for _, n := range numbers {
			m.Parts = append(m.Parts, n[power])
			m.Sum += n[power]
		}
		on[power] = m.Sum
		m.On = *on
		return m
	})
	return w, nil
}

// gather goes through the places from the ones up to top: bring says what comes
// together in a place, and the tens there are traded. After the last place the
// trades go on until no place has ten.
func (w *Working) gather(top int, bring func(power int, carried int64, on *Counts) Move) {
	var on Counts
	for power := 0; power < PlaceNames && (power <= top || on[power] >= 10); power++ {
		if power <= top {
			w.Moves = append(w.Moves, bring(power, on[power], &on))
		}
		if made := on[power] / 10; made > 0 {
			on[power] -= 10 * made
			on[power+1] += made
			w.Moves = append(w.Moves, TradeTens{power, 10 * made, made, on[power], on})
		}
	}
	w.Moves = append(w.Moves, ReadOff{on.Total(), on})
}
