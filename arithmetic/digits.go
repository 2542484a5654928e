package arithmetic

// WriteParts writes a number as the sum of what its digits are worth.
type WriteParts struct {
	Number int64
	Counts Counts
	Parts  []int64 // the largest first, without zeros
}

// FindDigit finds the digit that stands in a place.
type FindDigit struct {
	Number int64
	Power  int
	Digit  int64
}

// CountDigit counts what the pieces of a digit are worth, one after another:
// 100, 200, 300. A digit 0 is worth 0, and there is nothing to count.
type CountDigit struct {
	Power       int
	Digit, Each int64
	Totals      []int64
	Worth       int64
}

func (WriteParts) move() {}
func (FindDigit) move()  {}
func (CountDigit) move() {}

// ExpandByPlace lays a whole number out digit by digit and writes it as the sum
// of what its digits are worth (CCSS 2.NBT.A.3). The problem is an ExpandedForm.
// Its error is [ErrPlaces].
func ExpandByPlace(p Problem) (Working, error) {
	w, err := ShowByPlace(p)
	if err != nil {
		return Working{}, err
	}
	last := len(w.Moves) - 1
	read := w.Moves[last].(ReadOff)
	parts, err := Expanded(read.Number)
	if err != nil {
		return Working{}, err
	}
	w.Moves[last] = WriteParts{read.Number, read.Counts, parts}
	w.Answer.List = parts
	return w, nil
}

// WorthByPlace finds what the digit of a number in the place To is worth (CCSS
// 2.NBT.A.1, 4.NBT.A.1). The problem is a PlaceValue. Its error is [ErrPlaces],
// also for a place that the number does not reach.
func WorthByPlace(p Problem) (Working, error) {
	n, ok := p.Left.(Number)
	if !ok {
		return Working{}, ErrPlaces
	}
	v, digits, err := placed(n)
	if err != nil {
		return Working{}, err
	}
	power := 0
	for power <= digits.Top() && Power10(power) != p.To {
		power++
	}
	if power > digits.Top() {
		return Working{}, ErrPlaces
	}
	count := CountDigit{Power: power, Digit: digits[power], Each: p.To, Worth: digits[power] * p.To}
	for i := int64(1); i <= count.Digit; i++ {
		count.Totals = append(count.Totals, i*count.Each)
	}
	worth := Int(count.Worth)
	return Working{
		Problem: p,
		Answer:  Answer{Number: worth, Simplest: worth},
		Moves:   []Move{LayOut{0, v, digits}, FindDigit{v, power, count.Digit}, count},
	}, nil
}
