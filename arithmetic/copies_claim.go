package arithmetic

import (
	"errors"

	"modeler/fraction"
)

var errNotCopies = errors.New("arithmetic: no side is so many times a fraction")

// Copies is one side of a claim: Count amounts of Each, end to end, which are Total; of
// a number alone Count is 1 and Alone is set.
type Copies struct {
	Each  Number
	Count int64
	Alone bool
	Total Strips
}

// LayCopies lays one side of a claim on the whole: Nth is 0 for the left.
type LayCopies struct {
	Nth int
	Copies
}

func (LayCopies) move() {}

// CopiesClaim reads a claim or comparison of which one side or both are a whole number
// times a fraction: 3 × 2/5 = 6 × 1/5; ok is false for every other problem.
func CopiesClaim(p Problem) (sides [2]Copies, ok bool) {
	if p.Kind != Claim && p.Kind != Comparison {
		return sides, false
	}
	products := 0
	for i, e := range []Expr{p.Left, p.Right} {
		switch e := e.(type) {
		case Number:
			if e.Form != Whole && !broken(e) {
				return sides, false
			}
			sides[i] = Copies{Each: e, Count: 1, Alone: true, Total: StripsOf(e)}
		case Operation:
			a, okA := e.Left.(Number)
			b, okB := e.Right.(Number)
			count, whole := a.Int64()
			if e.Op != Multiply || !okA || !okB || a.Form != Whole || !whole || b.Form != Common {
				return sides, false
			}
			sides[i] = Copies{Each: b, Count: count}
			products++
		default:
			return sides, false
		}
	}
	return sides, products > 0
}

// CompareCopies works a claim or comparison that [CopiesClaim] reads: the copies of each
// side are laid end to end from one edge, and the ends are compared. (CCSS 4.NF.B.4b:
// 3 × 2/5 is 6 × 1/5, 6/5.) [ErrNothing] says that a side has nothing to lay.
func CompareCopies(p Problem) (Working, error) {
	sides, ok := CopiesClaim(p)
	if !ok {
		return Working{}, errNotCopies
	}
	var moves []Move
	var values [2]Number
	for i, s := range sides {
		if !s.Alone {
			part := s.Each.Value
			num := s.Count * part.Num()
			if s.Count < 1 || part.Num() < 1 {
				return Working{}, ErrNothing
			}
			if num/s.Count != part.Num() {
				return Working{}, ErrOverflow
			}
			total, err := fraction.New(num, part.Den())
			if err != nil {
				return Working{}, ErrOverflow
			}
			s.Total = Strips{Part: total}
		}
		v, err := s.Total.Value()
		if err != nil {
			return Working{}, err
		}
		values[i] = Frac(v)
		moves = append(moves, LayCopies{i, s})
	}
	gap, err := values[0].Value.Sub(values[1].Value)
	if err != nil {
		return Working{}, ErrOverflow
	}
	a := moves[0].(LayCopies).Total
	b := moves[1].(LayCopies).Total
	ends := CompareEnds{First: a, Second: b, Relation: relationOf(values[0], values[1]), Gap: magnitude(gap).Simplest()}
	answer := Answer{Relation: ends.Relation, Gap: ends.Gap, True: p.Kind == Claim && p.Rel == ends.Relation}
	if p.Kind == Claim && !answer.True {
		ends.Instead = Problem{Kind: Claim, Left: p.Left, Rel: ends.Relation, Right: p.Right}
	}
	return Working{p, answer, append(moves, ends)}, nil
}
