package telling

// Spread puts things that want to stand at given places, in ascending order, side
// by side in the stretch from lo to hi, each as near to where it wants to be as
// the others allow (least squares, by pooling neighbours that violate the order;
// Ayer, Brunk, Ewing, Reid and Silverman 1955, from memory). sides are half
// widths. Neighbours never come nearer than gap and keep their order. ok is false
// when they are wider than the stretch.
func Spread(want, sides []int, gap, lo, hi int) (at []int, ok bool) {
	// Seen from where each would stand if all were pushed to the left, the order
	// is all that is asked.
	offset, end := make([]int, len(want)), 0
	for i := range want {
		if i > 0 {
			end += gap
		}
		offset[i] = end + sides[i]
		end += 2 * sides[i]
	}
	if end > hi-lo {
		return nil, false
	}
	type pool struct{ sum, count int }
	var pools []pool
	for i := range want {
		next := pool{want[i] - offset[i], 1}
		for len(pools) > 0 {
			last := pools[len(pools)-1]
			if last.sum*next.count <= next.sum*last.count {
				break
			}
			next = pool{last.sum + next.sum, last.count + next.count}
			pools = pools[:len(pools)-1]
		}
		pools = append(pools, next)
	}
	for _, p := range pools {
		base := min(max(p.sum/p.count, lo), hi-end)
		for range p.count {
			at = append(at, base+offset[len(at)])
		}
	}
	return at, true
}
