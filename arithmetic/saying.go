package arithmetic

// SayPeriod says the number that three places make, and the name of their period.
// Nothing is said for three zeros.
type SayPeriod struct {
	Nth    int   // 0 for the ones, 1 for the thousands, 2 for the millions
	Number int64 // from 0 to 999
	Worth  int64
	First  bool // the leftmost: of 0, the only period, zero is said
}

func (SayPeriod) move() {}

// SayByPeriods lays a whole number out and says it period by period from the left:
// so many millions, so many thousands, so many (CCSS 4.NBT.A.2). The problem is an
// InWords. Its error is [ErrPlaces].
func SayByPeriods(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, ErrPlaces
	}
	v, digits, err := placed(n)
	if err != nil {
		return Working{}, err
	}
	w := Working{Problem: p, Answer: Answer{Number: n, Simplest: n}, Moves: []Move{LayOut{0, v, digits}}}
	for nth := digits.Top() / 3; nth >= 0; nth-- {
		unit := Power10(3 * nth)
		number := v / unit % 1000
		w.Moves = append(w.Moves, SayPeriod{nth, number, number * unit, nth == digits.Top()/3})
	}
	w.Moves = append(w.Moves, ReadOff{v, digits})
	return w, nil
}
