package arithmetic

import "errors"

var errNotOnLine = errors.New("arithmetic: not a problem for a number line")

// hop is a jump in units of a scale.
type hop struct {
	by    int64
	round bool
	turn  bool // it goes the other way, since the hop before it went too far
}

// mostPlaces is how many places are jumped one by one. A longer number is jumped
// as its name is read: the millions, the thousands, the rest.
const mostPlaces = 4

// lost is how many times smaller than the whole way a hop may be before it is
// not worth a hop of its own: beside a jump of 278, the 3 from 620 to 623 could
// hardly be seen.
const lost = 40

// splitJump splits a jump of by units from a number in hops that can be done in
// the head.
func splitJump(s Scale, from, by int64, back bool) []hop {
	if s.Form == Common || s.Form == Mixed {
		var hops []hop
		for _, part := range []int64{by - by%s.Parts, by % s.Parts} {
			if part > 0 {
				hops = append(hops, hop{by: part})
			}
		}
		// A common fraction is one length, also when it is more than a whole.
		if s.Form == Common && len(hops) == 2 {
			return []hop{{by: by}}
		}
		return hops
	}
	var hops []hop
	for _, part := range byPlaces(by) {
		hops = append(hops, hop{by: part})
	}
	if len(hops) == 0 {
		return nil
	}
	last := hops[len(hops)-1].by
	at := from + by - last
	if back {
		at = from - by + last
	}
	if first := bridge(at, last, back); first > 0 && min(first, last-first) >= by/lost {
		hops = append(hops[:len(hops)-1], hop{by: first, round: true}, hop{by: last - first})
	}
	return hops
}

// byPlaces are the places of a count, the largest first, without the zeros.
func byPlaces(n int64) []int64 {
	parts := cutAt(n, 10)
	if len(parts) > mostPlaces {
		parts = cutAt(n, 1000)
	}
	return parts
}

func cutAt(n, base int64) []int64 {
	var parts []int64
	for place := int64(1); n > 0; place *= base {
		if digit := n % base; digit > 0 {
			parts = append([]int64{digit * place}, parts...)
		}
		n /= base
	}
	return parts
}

// bridge is the part of a hop of one place that reaches the next round number,
// or 0 when the hop does not cross one: from 48, 2 of a hop of 7 reach 50.
func bridge(at, by int64, back bool) int64 {
	place := int64(1)
	for by%(place*10) == 0 {
		place *= 10
	}
	if by >= place*10 || at%place != 0 {
		return 0
	}
	first := at % (place * 10)
	if !back {
		first = place*10 - first
	}
	if first == 0 || first >= by {
		return 0
	}
	return first
}

// countUp are the hops from one number up to another, by way of the next ten,
// the next hundred and so on, as change is counted into a hand. What is left
// from the last round number is one hop.
func countUp(from, to int64) []hop {
	var hops []hop
	for place := int64(10); from < to; place *= 10 {
		next := (from + place - 1) / place * place
		if next > to || place > to {
			return append(hops, hop{by: to - from})
		}
		if next > from {
			hops = append(hops, hop{by: next - from, round: true})
			from = next
		}
	}
	return hops
}
