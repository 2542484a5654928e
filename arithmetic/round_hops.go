package arithmetic

// mostNear is how far below a round number a number may be, to be jumped by way of
// that.
const mostNear = 3

// nearRound is the next number with one digit and zeros where n is just below it:
// 20 for 19, 400 for 398. It is for whole numbers and money.
func nearRound(s Scale, n int64) (to, gap int64, near bool) {
	if s.Form != Whole && s.Form != Money || n < 10 {
		return 0, 0, false
	}
	place := int64(1)
	for n/place >= 10 {
		place *= 10
	}
	to = (n + place - 1) / place * place
	return to, to - n, to > n && to-n <= mostNear
}

// byRoundNumber are the hops of a sum of which a number is just below a round one:
// the first number is made round, or the second jumped as a round one and what was
// too much jumped back. nil where neither is.
func byRoundNumber(s Scale, from, by int64) []hop {
	_, short, first := nearRound(s, from)
	_, over, second := nearRound(s, by)
	if second && (!first || over <= short) {
		return overAndBack(s, by)
	}
	if !first || short >= by {
		return nil
	}
	hops := []hop{{by: short, round: true}}
	from, by = from+short, by-short
	if by < 100 && !carries(from, by) {
		return append(hops, hop{by: by})
	}
	for _, part := range byPlaces(by) {
		hops = append(hops, hop{by: part})
	}
	return hops
}

// overAndBack jumps the round number above, and what that is too much the other
// way.
func overAndBack(s Scale, by int64) []hop {
	to, gap, _ := nearRound(s, by)
	return []hop{{by: to}, {by: gap, turn: true}}
}

// carries reports whether a sum has a digit that two of the others do not add up to.
func carries(a, b int64) bool {
	for ; a > 0 && b > 0; a, b = a/10, b/10 {
		if a%10+b%10 > 9 {
			return true
		}
	}
	return false
}

// CloseDifference reports whether p is the difference of two whole numbers that are
// so close that it is found by counting up rather than by taking away: above 20,
// and at most 10 apart.
func CloseDifference(p Problem) bool {
	a, b, ok := p.Operands()
	x, wholeA := a.Int64()
	y, wholeB := b.Int64()
	return p.Kind == Subtraction && ok && wholeA && wholeB && a.Form == Whole && b.Form == Whole && x > 20 && x > y && x-y <= 10
}
