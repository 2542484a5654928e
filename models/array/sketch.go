package array

import (
	"slices"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// sketch makes parts of more worth wider and higher, but not to scale. It fails
// where names of that size, with so much to the edges of their plates, have no
// room.
func (p *plot) sketch(avail, size, edge int, free room) bool {
	const wide, high, most = 200, 110, 480
	p.look = inSketch
	p.h = inOrder(p.rows, slices.Repeat([]int{insideTall}, len(p.rows)), high, free.height)
	p.w = inOrder(p.cols, p.cellsWide(size, edge), wide, avail)
	if len(p.cols) == 1 {
		p.w = []int{min(most, avail)}
	}
	return p.w != nil
}

// cellsWide is the width that each part of the columns needs for its names.
func (p *plot) cellsWide(size, edge int) []int {
	const apart = 8
	var widths []int
	for j, c := range p.cols {
		wide := scene.Advance(arithmetic.Grouped(c), scene.Middle, true) + 2*apart
		for k := j; k < len(p.parts); k += len(p.cols) {
			wide = max(wide, scene.Advance(arithmetic.Grouped(p.parts[k]), size, size == scene.Middle)+2*edge+apart) // small names are not bold
		}
		widths = append(widths, wide)
	}
	return widths
}

// inOrder are lengths for numbers: a larger number has a longer one where there
// is room, and equal ones have equal lengths. The shortest is first at most, none
// is less than its own least, and together they fit in all; nil when they cannot.
func inOrder(numbers []int64, least []int, first, all int) []int {
	ranked := slices.Clone(numbers)
	slices.Sort(ranked)
	ranked = slices.Compact(ranked)
	for grow := 16; grow >= 10; grow-- { // tenths of the next shorter
		for shortest := first; shortest >= first/2; shortest -= 10 {
			lengths, sum := make([]int, len(numbers)), 0
			l := shortest
			for rank, n := range ranked {
				if rank > 0 {
					l = l * grow / 10
				}
				for i := range numbers {
					if numbers[i] == n {
						l = max(l, least[i])
					}
				}
				for i := range numbers {
					if numbers[i] == n {
						lengths[i], sum = l, sum+l
					}
				}
			}
			if sum <= all {
				return lengths
			}
		}
	}
	return nil
}
