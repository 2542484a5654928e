package arithmetic

import (
	"errors"

	"modeler/fraction"
)

var errNotOneSum = errors.New("arithmetic: not a sum of two numbers beside a number")

// SumClaim says where the numbers of a claim or comparison lie that has a sum of
// two numbers on one side and a number on the other. Numbers are in the order in
// which they are written; Left says that the sum stands left of the sign.
type SumClaim struct {
	Numbers [3]Number
	Left    bool
}

// OneSum reads a problem as a [SumClaim]; ok is false for every other problem.
func OneSum(p Problem) (c SumClaim, ok bool) {
	if p.Kind != Claim && p.Kind != Comparison {
		return c, false
	}
	sum, left := p.Left.(Operation)
	alone := p.Right
	if !left {
		sum, ok = p.Right.(Operation)
		if !ok {
			return c, false
		}
		alone = p.Left
	}
	a, okA := sum.Left.(Number)
	b, okB := sum.Right.(Number)
	n, okN := alone.(Number)
	if sum.Op != Add || !okA || !okB || !okN {
		return c, false
	}
	if left {
		return SumClaim{[3]Number{a, b, n}, true}, true
	}
	return SumClaim{[3]Number{n, a, b}, false}, true
}

// Addends are which of the numbers are added, and Alone is the other one.
func (c SumClaim) Addends() (first, second int) {
	if c.Left {
		return 0, 1
	}
	return 1, 2
}

// Alone is which number stands on its own side.
func (c SumClaim) Alone() int {
	if c.Left {
		return 2
	}
	return 0
}

// CompareSumByCutting works a [Claim] or [Comparison] of a sum of two numbers
// with a number: the two lengths are laid end to end and the other under them,
// the parts of the sum are cut until all are the same size and are counted, and
// the ends are compared. Where both sides are equal all parts are cut alike, so
// that they can be counted. (CCSS 5.NF.A.1, 5.NF.A.2)
func CompareSumByCutting(p Problem) (Working, error) {
	c, ok := OneSum(p)
	if !ok {
		return Working{}, errNotOneSum
	}
	i, j := c.Addends()
	k := c.Alone()
	var laid [3]Strips
	for n := range laid {
		laid[n] = StripsOf(c.Numbers[n])
	}
	moves := []Move{LayStrips{i, c.Numbers[i], laid[i]}, LayStrips{j, c.Numbers[j], laid[j]}, LayStrips{k, c.Numbers[k], laid[k]}}
	value, err := c.Numbers[i].Value.Add(c.Numbers[j].Value)
	if err != nil {
		return Working{}, ErrOverflow
	}
	equal := value.Equal(c.Numbers[k].Value)
	den, err := fraction.CommonUnit(laid[i].Part, laid[j].Part)
	if err == nil && equal {
		den, err = fraction.LCM(den, laid[k].Part.Den())
	}
	if err != nil {
		return Working{}, ErrOverflow
	}
	for n, from := range laid {
		if n == k && !equal {
			continue // its end is all that is looked at
		}
		move, cut, err := cutTo(n, from, den)
		if err != nil {
			return Working{}, err
		}
		if laid[n] = move.To; cut {
			moves = append(moves, move)
		}
	}
	part, err := laid[i].Part.Add(laid[j].Part)
	if err != nil {
		return Working{}, ErrOverflow
	}
	total := Strips{laid[i].Wholes + laid[j].Wholes, part}
	ends, answer, err := c.ends(p, total, laid[k], value)
	if err != nil {
		return Working{}, err
	}
	return Working{p, answer, append(moves, CountParts{total}, ends)}, nil
}

// ends compares the sum with the number, as they stand in the problem.
func (c SumClaim) ends(p Problem, total, alone Strips, value fraction.Fraction) (CompareEnds, Answer, error) {
	gap, err := value.Sub(c.Numbers[c.Alone()].Value)
	if err != nil {
		return CompareEnds{}, Answer{}, ErrOverflow
	}
	a, b := AsMixed(value), c.Numbers[c.Alone()]
	ends := CompareEnds{First: total, Second: alone, Gap: magnitude(gap)}
	if !c.Left {
		a, b = b, a
		ends.First, ends.Second = alone, total
	}
	ends.Relation = relationOf(a, b)
	answer := Answer{Relation: ends.Relation, Gap: ends.Gap, True: p.Kind == Claim && p.Rel == ends.Relation}
	if p.Kind == Claim && !answer.True {
		ends.Instead = Problem{Kind: Claim, Left: p.Left, Rel: ends.Relation, Right: p.Right}
		if p.Rel == Equal {
			is := AsMixed(value.Simplest())
			ends.Instead.Rel = Equal
			if ends.Instead.Right = is; !c.Left {
				ends.Instead.Left, ends.Instead.Right = is, p.Right
			}
		}
	}
	return ends, answer, nil
}
