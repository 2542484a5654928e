package arithmetic

import "errors"

// Cubes snap together in a row, a train. A train has at most ten cubes where numbers
// are built of them, so that its tens are seen.

// CubeTrain is how many cubes a train of ten has.
const CubeTrain = 10

// BuildTrains builds Count cubes of a number: full trains, or with Ones set the
// cubes that are left for a shorter one. Now lie there then.
type BuildTrains struct {
	Number, Count, Trains, Now int64
	Ones                       bool
}

// LayTrains lays all the cubes of a number out: Tens trains of ten and one of Ones.
type LayTrains struct {
	Nth                int
	Number, Tens, Ones int64
}

// SnapOnes snaps Over cubes of the second number to the First single ones of the
// first number, which come to Sum; Rest of them stay. Ten says that Sum is a train
// of ten. All the cubes of the first number are More then, and those of the second
// Less.
type SnapOnes struct {
	First, Second, Over, Rest, Sum int64
	Ten                            bool
	More, Less                     int64
}

// TakeTrains takes whole trains of ten away: From cubes were there and Left stay.
// Trains stay whole.
type TakeTrains struct{ From, Count, Worth, Left, Trains int64 }

// TakeCubes takes Count single cubes away from a train of Train cubes: Stay of it
// stay, after Trains whole ones. Breaks says that it is a train of ten.
type TakeCubes struct {
	From, Count, Left   int64
	Train, Stay, Trains int64
	Breaks              bool
}

// ReadTrains reads what lies there: Tens trains of ten, which are Worth cubes, and
// Ones more.
type ReadTrains struct{ Total, Tens, Worth, Ones int64 }

// MatchTrains holds two trains side by side from the same end: Short cubes of both
// stand next to each other, and the train of number Longer has Gap more. Gap is 0
// for trains of one length.
type MatchTrains struct {
	First, Second, Short, Gap int64
	Longer                    int
}

// SayTrains says how one train stands to the other.
type SayTrains struct {
	First, Second, Gap int64
	Relation           Relation
}

func (BuildTrains) move() {}
func (LayTrains) move()   {}
func (SnapOnes) move()    {}
func (TakeTrains) move()  {}
func (TakeCubes) move()   {}
func (ReadTrains) move()  {}
func (MatchTrains) move() {}
func (SayTrains) move()   {}

// The bounds of what is built of cubes.
const (
	MostCubes   = 100
	MostMatched = 20 // in each of two trains side by side
	MostPaired  = 40
	MostTrains  = 12 // of a product
)

// ErrCubes says that a problem takes more cubes than a child has; [ErrNoCubes], that
// it takes none.
var (
	ErrCubes   = errors.New("arithmetic: too many cubes")
	ErrNoCubes = errors.New("arithmetic: no cubes")
)

func layTrains(nth int, n int64) LayTrains { return LayTrains{nth, n, n / CubeTrain, n % CubeTrain} }

func readTrains(n int64) ReadTrains {
	return ReadTrains{n, n / CubeTrain, n / CubeTrain * CubeTrain, n % CubeTrain}
}

// ShowWithCubes builds a whole number from 1 to 100 of trains of ten and single cubes
// (CCSS 1.NBT.B.2).
func ShowWithCubes(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	switch {
	case !ok || p.Kind != Show:
		return Working{}, ErrNotWhole
	case n == 0:
		return Working{}, ErrNoCubes
	case n > MostCubes:
		return Working{}, ErrCubes
	}
	w := Working{Problem: p, Answer: whole(n)}
	tens, ones := n/CubeTrain*CubeTrain, n%CubeTrain
	if tens > 0 {
		w.Moves = append(w.Moves, BuildTrains{n, tens, tens / CubeTrain, tens, false})
	}
	if ones > 0 {
		w.Moves = append(w.Moves, BuildTrains{n, ones, 1, n, true})
	}
	w.Moves = append(w.Moves, readTrains(n))
	return w, nil
}

// AddWithCubes works a sum to 100: the single cubes of the second number are snapped
// to those of the first, as many as make a train of ten (CCSS 1.NBT.C.4).
func AddWithCubes(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	switch {
	case err != nil || p.Kind != Addition:
		return Working{}, ErrNotWhole
	case a > MostCubes || b > MostCubes || a+b > MostCubes:
		return Working{}, ErrCubes
	case a+b == 0:
		return Working{}, ErrNoCubes
	}
	first, second := layTrains(0, a), layTrains(1, b)
	w := Working{Problem: p, Answer: whole(a + b), Moves: []Move{first, second}}
	if first.Ones > 0 && second.Ones > 0 {
		over := min(CubeTrain-first.Ones, second.Ones)
		sum := first.Ones + over
		w.Moves = append(w.Moves, SnapOnes{first.Ones, second.Ones, over, second.Ones - over, sum, sum == CubeTrain, a + over, b - over})
	}
	w.Moves = append(w.Moves, readTrains(a+b))
	return w, nil
}

// TakeWithCubes works a difference of whole numbers to 100: whole trains are taken
// first, then single cubes, and where these do not reach a train of ten is broken
// (CCSS 1.NBT.C.6, 2.NBT.B.5). Its error is [ErrNegative] where there are too few.
func TakeWithCubes(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	switch {
	case err != nil || p.Kind != Subtraction:
		return Working{}, ErrNotWhole
	case b > a:
		return Working{}, ErrNegative
	case a > MostCubes:
		return Working{}, ErrCubes
	case a == 0:
		return Working{}, ErrNoCubes
	}
	first, second := layTrains(0, a), layTrains(1, b)
	w := Working{Problem: p, Answer: whole(a - b), Moves: []Move{first}}
	at, trains := a, first.Tens
	if second.Tens > 0 {
		worth := second.Tens * CubeTrain
		at, trains = at-worth, trains-second.Tens
		w.Moves = append(w.Moves, TakeTrains{at + worth, second.Tens, worth, at, trains})
	}
	if n := min(first.Ones, second.Ones); n > 0 || b == 0 {
		at -= n
		w.Moves = append(w.Moves, TakeCubes{From: at + n, Count: n, Left: at, Train: first.Ones, Stay: first.Ones - n, Trains: trains})
	}
	if n := second.Ones - first.Ones; n > 0 {
		at -= n
		w.Moves = append(w.Moves, TakeCubes{From: at + n, Count: n, Left: at, Train: CubeTrain, Stay: CubeTrain - n, Trains: trains - 1, Breaks: true})
	}
	w.Moves = append(w.Moves, readTrains(at))
	return w, nil
}

// MatchWithCubes compares two whole numbers to 20 by two trains side by side: a
// Comparison, a Claim about two numbers, or a Subtraction that asks how many more
// (CCSS K.CC.C.6, 1.OA.A.1). Its error is [ErrNegative] where the number that is to
// be more is less.
func MatchWithCubes(p Problem) (Working, error) {
	a, b, err := wholeOperands(p)
	more := p.Kind == Subtraction && p.Story == HowManyMore
	switch {
	case err != nil || p.Kind != Comparison && p.Kind != Claim && !more:
		return Working{}, ErrNotWhole
	case a > MostMatched || b > MostMatched:
		return Working{}, ErrCubes
	case a+b == 0:
		return Working{}, ErrNoCubes
	case more && a < b:
		return Working{}, ErrNegative
	}
	match := MatchTrains{First: a, Second: b, Short: min(a, b), Gap: max(a, b) - min(a, b)}
	if b > a {
		match.Longer = 1
	}
	w := Working{Problem: p, Answer: whole(match.Gap)}
	if !more {
		if w.Answer, err = Judge(p); err != nil {
			return Working{}, err
		}
	}
	w.Moves = []Move{layTrains(0, a), layTrains(1, b), match, SayTrains{a, b, match.Gap, relationOf(Int(a), Int(b))}}
	return w, nil
}

// PairWithCubes tells whether a whole number to 40 is even by setting cubes in two
// rows (CCSS 2.OA.C.3).
func PairWithCubes(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	switch {
	case !ok || p.Kind != Parity:
		return Working{}, ErrNotWhole
	case n == 0:
		return Working{}, ErrNoCubes
	case n > MostPaired:
		return Working{}, ErrCubes
	}
	pairs, left := n/2, n%2
	return Working{Problem: p, Answer: Answer{Even: left == 0},
		Moves: []Move{layTrains(0, n), PairUp{n, pairs, left}, ReadPairs{n, pairs, left, left == 0}}}, nil
}

// MultiplyWithCubes works a product to 100 as so many trains, at most 12, of a size
// from 1 to 10 (CCSS 3.OA.A.1).
func MultiplyWithCubes(p Problem) (Working, error) {
	n, each, err := wholeOperands(p)
	switch {
	case err != nil || p.Kind != Product:
		return Working{}, ErrNotWhole
	case n == 0 || each == 0:
		return Working{}, ErrNoCubes
	case n > MostTrains || each > CubeTrain || n*each > MostCubes:
		return Working{}, ErrCubes
	}
	return makeGroups(p, n, each)
}
