package discs

import "modeler/models/scene"

// sheet says where the discs of one lesson lie. Every disc is one whole and all are
// of one size. The discs of one amount are a group; the groups stand in one row, or
// the last one in a row of its own where they are larger that way.
//
//	1 whole
//	 (( ))   +   (( ))   =   (( )) (( ))      one row
//	  1/2         3/4           1 1/4
type sheet struct {
	r      int           // of every disc
	den    int64         // units of a whole: all parts of the lesson are made of them
	groups []group       // in the order of the numbers
	signs  []scene.Point // of signs[i] stands before groups[i]; that of the first is not used
	bottom int           // of the labels
}

// group is the places of the discs of one amount, and of its label.
type group struct {
	spots []scene.Point
	label scene.Point
}

const (
	apart     = 16  // between the discs of a group
	between   = 72  // between groups, with a sign in it
	mostR     = 160 // a disc is no larger
	mostRowR  = 104 // and no larger in two rows
	wholeRoom = 52  // for the words over the discs
	nameGap   = 20  // from a disc to the room of its label
	nameHalf  = 36  // half the height of a label: a fraction
	rowGap    = 20  // from a label to the next row of discs
)

// layDiscs lays so many discs for each amount.
func layDiscs(den int64, counts ...int) sheet {
	last := len(counts) - 1
	one, two := radius(counts), 0
	if last > 0 {
		two = min(mostRowR, radius(counts[:last]), radius(append([]int{0}, counts[last])))
	}
	s := sheet{r: one, den: den}
	top := scene.Margin + wholeRoom
	if one*10 >= two*7 { // one row reads as one line, and is not much smaller
		s.row(top, counts, false)
		return s
	}
	s.r = two
	s.row(top, counts[:last], false)
	s.row(s.bottom+rowGap, counts[last:], true)
	return s
}

// radius is how large discs can be in a row. A group of no discs stands for the sign
// in front of a second row.
func radius(counts []int) int {
	discs, gaps := 0, (len(counts)-1)*between
	for _, n := range counts {
		discs += n
		gaps += max(0, n-1) * apart
	}
	return min(mostR, (scene.PaperW-2*scene.Margin-gaps)/(2*discs))
}

// row lays a row of groups with its discs below top; signed says that a sign stands
// in front of the first.
func (s *sheet) row(top int, counts []int, signed bool) {
	width := (len(counts) - 1) * between
	if signed {
		width += between
	}
	for _, n := range counts {
		width += 2*s.r*n + (n-1)*apart
	}
	x, y := (scene.PaperW-width)/2, top+s.r
	for i, n := range counts {
		if i > 0 || signed {
			s.signs = append(s.signs, scene.Point{X: x + between/2, Y: y})
			x += between
		} else {
			s.signs = append(s.signs, scene.Point{})
		}
		left := x
		g := group{}
		for k := range n {
			g.spots = append(g.spots, scene.Point{X: x + s.r, Y: y})
			if x += 2 * s.r; k < n-1 {
				x += apart
			}
		}
		g.label = scene.Point{X: (left + x) / 2, Y: y + s.r + nameGap + nameHalf}
		s.groups = append(s.groups, g)
	}
	s.bottom = y + s.r + nameGap + 2*nameHalf
}
