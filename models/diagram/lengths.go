package diagram

import (
	"slices"

	"modeler/fraction"
	"modeler/models/scene"
)

// lengths are how long the pieces of a bar are, on a paper with so much room. They
// are exactly in the ratio of their amounts where whole units allow it without
// wasting the paper, and else to half a unit. Where a piece could not be seen, scaled
// is false: short pieces are made longer, and only their order is kept.
func lengths(amounts []int64, room int) (long []int, scaled bool) {
	const enough = 5 // sixths of the room that an exact bar fills at least
	all, shared := int64(0), int64(0)
	for _, n := range amounts {
		all += n
		shared = fraction.GCD(shared, n)
	}
	if all == 0 {
		return make([]int, len(amounts)), true
	}
	unit := int64(room) / (all / shared)
	exact := unit*(all/shared)*6 >= int64(room)*enough
	for _, n := range amounts {
		l := int(unit * (n / shared))
		if !exact {
			l = portion(n, all, room)
		}
		if n > 0 && l < least {
			return sketched(amounts, room), false
		}
		long = append(long, l)
	}
	return long, true
}

// portion is n of all as a part of a length, to the nearest unit.
func portion(n, all int64, length int) int {
	return int((2*n*int64(length) + all) / (2 * all))
}

// sketched are lengths that can all be seen, a longer one for a larger amount and
// equal ones for equal amounts.
func sketched(amounts []int64, room int) []int {
	const shortest, longer = 56, 14 // the shortest piece, and each next one at least
	ranked := slices.Clone(amounts)
	slices.Sort(ranked)
	ranked = slices.Compact(slices.DeleteFunc(ranked, func(n int64) bool { return n == 0 }))
	floor := func(n int64) int { return shortest + longer*slices.Index(ranked, n) }
	long := make([]int, len(amounts))
	for changed := true; changed; {
		changed = false
		left, sum := room, int64(0) // what the pieces share that are long enough
		for i, n := range amounts {
			left -= long[i]
			if long[i] == 0 {
				sum += n
			}
		}
		for i, n := range amounts {
			if n > 0 && long[i] == 0 && portion(n, sum, left) < floor(n) {
				long[i], changed = floor(n), true
			}
		}
		if changed {
			continue
		}
		for i, n := range amounts {
			if n > 0 && long[i] == 0 {
				long[i] = portion(n, sum, left)
			}
		}
	}
	return long
}

// start is where a bar so long begins, in the middle of the paper.
func start(long ...int) int {
	sum := 0
	for _, l := range long {
		sum += l
	}
	return scene.Margin + (full-sum)/2
}
