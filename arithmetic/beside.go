package arithmetic

// LookBeside holds a place beside the next one: the same digit is worth 10 times as
// much in the larger of the two.
type LookBeside struct {
	Power, Beside        int // Beside is the place to the right, of the ones the place to the left
	Digit                int64
	Worth, BesideWorth   int64 // what the digit is worth in the two places
	Smaller, Larger, Ten int64 // Ten times the smaller of the two is the larger
}

func (LookBeside) move() {}

// WorthBesideNext finds what the digit of a number in the place To is worth, and
// how much that is beside what the digit would be worth in the next place (CCSS
// 4.NBT.A.1). A digit 0 and a number of one digit have nothing to hold beside. Its
// error is [ErrPlaces].
func WorthBesideNext(p Problem) (Working, error) {
	w, err := WorthByPlace(p)
	if err != nil {
		return Working{}, err
	}
	laid := w.Moves[0].(LayOut)
	find := w.Moves[1].(FindDigit)
	if find.Digit == 0 || laid.Counts.Top() == 0 {
		return w, nil
	}
	beside := find.Power - 1
	if find.Power == 0 {
		beside = 1
	}
	look := LookBeside{Power: find.Power, Beside: beside, Digit: find.Digit, Ten: 10,
		Worth: find.Digit * Power10(find.Power), BesideWorth: find.Digit * Power10(beside)}
	look.Smaller, look.Larger = min(look.Worth, look.BesideWorth), max(look.Worth, look.BesideWorth)
	w.Moves = append(w.Moves, look)
	return w, nil
}
