package arithmetic

// FindArrays finds all arrays of a number that are as wide as they are high or
// wider, as rows and columns, with 1 row first. Nth is which number of the problem
// it is, from 0.
type FindArrays struct {
	Nth    int
	Number int64
	Pairs  [][2]int64
}

// MatchSides finds the sides that arrays of both numbers have, from 1 up.
type MatchSides struct{ Common []int64 }

// ReadGreatest reads the greatest of them.
type ReadGreatest struct{ Greatest int64 }

// JudgePrime says whether a number is prime: whether 1 row and its turn are all
// its arrays. One itself is not prime, as it has one factor only.
type JudgePrime struct {
	Number int64
	Prime  bool
	Other  [2]int64 // the first other array of a number that is not prime; 0 by 0 of 1
}

func (FindArrays) move()   {}
func (MatchSides) move()   {}
func (ReadGreatest) move() {}
func (JudgePrime) move()   {}

// SharedFactors finds the common factors of two whole numbers from 1 up as the
// sides that their arrays have in common (CCSS 6.NS.B.4; National curriculum in
// England, 2013, year 5).
func SharedFactors(p Problem) (Working, error) {
	w := Working{Problem: p}
	var match MatchSides
	var factors [2]map[int64]bool
	for i, e := range [2]Expr{p.Left, p.Right} {
		one, err := FactorPairs(Problem{Kind: Factors, Left: e})
		if err != nil {
			return Working{}, err
		}
		n, _ := wholeNumber(e)
		find := FindArrays{Nth: i, Number: n}
		factors[i] = map[int64]bool{}
		for _, pair := range one.Answer.Pairs {
			factors[i][pair[0]] = true
			if pair[0] <= pair[1] {
				find.Pairs = append(find.Pairs, pair)
			}
			if i == 1 && factors[0][pair[0]] {
				match.Common = append(match.Common, pair[0])
			}
		}
		w.Moves = append(w.Moves, find)
	}
	greatest := match.Common[len(match.Common)-1]
	w.Moves = append(w.Moves, match, ReadGreatest{greatest})
	w.Answer = whole(greatest)
	w.Answer.List = match.Common
	return w, nil
}

// PrimeByArrays says whether a whole number from 1 up is prime by trying to lay it
// in equal rows (CCSS 4.OA.B.4).
func PrimeByArrays(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	if !ok || p.Kind != Primality {
		return Working{}, ErrNotWhole
	}
	w, err := FactorPairs(Problem{Kind: Factors, Left: p.Left})
	if err != nil {
		return Working{}, err
	}
	w.Problem = p
	judge := JudgePrime{Number: n, Prime: n > 1 && len(w.Answer.Pairs) == 2}
	if n > 1 && !judge.Prime {
		judge.Other = w.Answer.Pairs[1]
	}
	w.Answer.True = judge.Prime
	w.Moves = append(w.Moves, judge)
	return w, nil
}
