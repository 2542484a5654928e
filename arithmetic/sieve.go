package arithmetic

// StartSieve begins a sieve on a chart: 1 is crossed out, since it has one factor
// only. It ends with the number that is asked about.
type StartSieve struct{ Number int64 }

// CrossOut keeps a prime and crosses out its other multiples up to the number that
// is asked about. List are those not crossed out before.
type CrossOut struct {
	Prime, Number int64
	List          []int64
	Hit           bool // the number that is asked about is one of them
}

// JudgeSieve says whether the number is still there. By is the prime with which it
// was crossed out, or 0, and Times how many of them it is.
type JudgeSieve struct {
	Number    int64
	Prime     bool
	By, Times int64
	Primes    []int64 // those whose other multiples were crossed out
}

func (StartSieve) move() {}
func (CrossOut) move()   {}
func (JudgeSieve) move() {}

// PrimeBySieve says whether a whole number up to [OnChart] is prime by crossing out
// the multiples of 2, 3, 5 and 7, as far as a prime times itself is not more than the
// number, or until it is crossed out (the sieve of Eratosthenes, from memory).
func PrimeBySieve(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	switch {
	case !ok || p.Kind != Primality || n < 1:
		return Working{}, ErrNotWhole
	case n > OnChart:
		return Working{}, ErrOverflow
	}
	w, err := FactorPairs(Problem{Kind: Factors, Left: p.Left})
	if err != nil {
		return Working{}, err
	}
	w.Problem, w.Moves = p, []Move{StartSieve{n}}
	judge := JudgeSieve{Number: n, Prime: n > 1}
	crossed := map[int64]bool{1: true}
	for prime := int64(2); prime*prime <= n && judge.Prime; prime++ {
		if crossed[prime] {
			continue
		}
		out := CrossOut{Prime: prime, Number: n}
		for m := 2 * prime; m <= n; m += prime {
			if !crossed[m] {
				crossed[m] = true
				out.List = append(out.List, m)
			}
		}
		if crossed[n] {
			out.Hit, judge.Prime = true, false
			judge.By, judge.Times = prime, n/prime
		}
		judge.Primes = append(judge.Primes, prime)
		w.Moves = append(w.Moves, out)
	}
	w.Answer.True = judge.Prime
	w.Moves = append(w.Moves, judge)
	return w, nil
}

// LightEvens lights all even numbers of the chart, as they are counted by twos.
type LightEvens struct{ Number int64 }

// FindEven looks whether the number is one of them, by its last digit.
type FindEven struct {
	Number, End int64
	Even        bool
}

func (LightEvens) move() {}
func (FindEven) move()   {}

// EvenOnChart says whether a whole number from 1 to [OnChart] is even: whether it
// comes when counting by twos (CCSS 2.OA.C.3).
func EvenOnChart(p Problem) (Working, error) {
	n, ok := wholeNumber(p.Left)
	switch {
	case !ok || p.Kind != Parity:
		return Working{}, ErrNotWhole
	case n < 1 || n > OnChart:
		return Working{}, ErrOverflow
	}
	w := Working{Problem: p, Answer: Answer{Even: n%2 == 0}}
	w.Moves = []Move{LightEvens{n}, FindEven{n, n % rowOfChart, n%2 == 0}}
	return w, nil
}
