package golden

import (
	"errors"
	"fmt"
	"slices"

	"modeler/arithmetic"
	"modeler/golden/problems"
)

// readLandings: every jump leaves from and lands on a tick, a point or the end of
// a strip, and every point lies where a jump does, if there are jumps in one row.
func readLandings(s sight, _ problems.Truth) error {
	if s.Says("?") {
		return nil // an end that is asked for
	}
	for _, y := range s.lines() {
		places := map[int]bool{}
		for _, c := range s.Circles {
			places[c.X] = places[c.X] || c.Y == y
		}
		for _, r := range s.Rects {
			if r.Y <= y && r.Bottom() >= y {
				places[r.X], places[r.Right()] = true, true
			}
		}
		for _, p := range s.Paths {
			if len(p.Curves) > 0 {
				continue
			}
			if b := p.Box(); b.H == 0 && b.Y == y {
				places[b.X] = true
			}
			for i := range p.Points[1:] {
				q, r := p.Points[i], p.Points[i+1]
				if q.X == r.X && min(q.Y, r.Y) <= y && y <= max(q.Y, r.Y) && !p.Closed {
					places[q.X] = true
				}
			}
		}
		for _, j := range s.Jumps() {
			if j.Y == y && j.Dash == "" && (!places[j.X1] || !places[j.X2]) {
				return fmt.Errorf("a jump from %d to %d without a mark at its ends", j.X1, j.X2)
			}
		}
	}
	return nil
}

// readTicks: the ticks of a line that no jump, point or number belongs to lie
// evenly among the others. That of 1 may stand among those of the tens.
func readTicks(s sight, _ problems.Truth) error {
	for _, y := range s.lines() {
		a, err := s.axis(y)
		if err != nil || !a.sure {
			continue
		}
		own := map[int]bool{}
		for _, x := range a.points {
			own[x] = true
		}
		for _, j := range s.Jumps() {
			own[j.X1], own[j.X2] = true, true
		}
		// Ticks may stand on one side of the line only: those of each side are even.
		for _, side := range []int{-1, 1} {
			places, half, onOther := map[int]bool{}, false, false
			for _, p := range s.Paths {
				for i := range max(0, len(p.Points)-1) {
					q, r := p.Points[i], p.Points[i+1]
					up, down := min(q.Y, r.Y) < y, max(q.Y, r.Y) > y
					if q.X != r.X || min(q.Y, r.Y) > y || max(q.Y, r.Y) < y || p.Closed || len(p.Curves) > 0 {
						continue
					}
					if side < 0 && up || side > 0 && down {
						places[q.X] = true
						half = half || up != down
					} else {
						onOther = true
					}
				}
			}
			if onOther && !half {
				continue
			}
			var ticks []int
			for x := range places {
				unit := len(a.named[x]) == 1 && a.named[x][0].Cmp(whole(1)) == 0 && a.near(x, whole(1))
				if !own[x] && !unit || s.problem.Kind == arithmetic.Show {
					ticks = append(ticks, x)
				}
			}
			slices.Sort(ticks)
			if len(ticks) > 2 && !evenly(ticks, places) {
				return fmt.Errorf("the ticks at %v are not even", ticks)
			}
		}
	}
	return nil
}

// evenly reports whether ticks lie on a grid over the line, to a unit, of which a
// good part of the places is marked. Grids finer than dense are not looked for, and
// a line with places so near each other passes.
func evenly(ticks []int, places map[int]bool) bool {
	const dense = 12
	var all []int
	for x := range places {
		all = append(all, x)
	}
	slices.Sort(all)
	for i := range all[1:] {
		if all[i+1]-all[i] < dense {
			return true
		}
	}
	lo, long := ticks[0], ticks[len(ticks)-1]-ticks[0]
	on := func(x, n int) bool {
		k := ((x-lo)*n + long/2) / long
		off := (x-lo)*n - k*long
		return max(off, -off) <= n+n/4
	}
	for n := 1; n <= long/dense; n++ {
		marked := 0
		for _, x := range all {
			if lo <= x && x <= lo+long && on(x, n) {
				marked++
			}
		}
		if marked*100 >= 38*(n+1) && !slices.ContainsFunc(ticks, func(x int) bool { return !on(x, n) }) {
			return true
		}
	}
	return false
}

// errNoJump says that a line has points and nothing that leads from one to the other.
var errNoJump = errors.New("there is no jump")
