package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

const (
	restGap   = 18 // from the array, or what is named under it, to what waits
	restNames = 46 // the name of what waits, over it
	restBox   = 64 // height of the box for what waits when it is not counters
)

// restTop is where what waits begins.
func (d *division) restTop() int {
	return d.foot(false) + restGap - 8
}

// heap is the layout of counters that wait: how many stand in a row, and from
// one to the next.
func (d *division) heap() (across, step int) {
	const apart, share = 3, 9 // between two counters: so many units, or one part of them in so many
	step = d.size + max(apart, d.size/share)
	across = (scene.PaperW - 2*scene.Margin - heapGap) / step
	return min(across-across%10, 20), step
}

// heapGap stands between the tenth and the eleventh counter of a row.
const heapGap = 10

// loose is the layout of squares that wait, to the scale of the array: how many
// stand in a row.
func (d *division) loose() int { return (scene.PaperW - 2*scene.Margin) / d.plot.step }

// restTall is the height of what waits when it is n.
func (d *division) restTall(n int64) int {
	across, step := 0, d.plot.step
	switch {
	case n == 0:
		return 0
	case d.look == inSketch:
		return restBox
	case d.look == inCounters:
		across, step = d.heap()
	default:
		across = d.loose()
	}
	return restNames + (int(n)+across-1)/across*step
}

// rest draws what is still to be placed, or what is left over in the end.
func (d *division) rest(s *scene.Scene, n int64, over bool) {
	if n == 0 {
		return
	}
	y, role, label := d.restTop(), scene.First, words.ArrayLeft(arithmetic.Grouped(n))
	switch {
	case over:
		role, label = scene.Moved, words.ArrayLeftOver(arithmetic.Grouped(n))
	case n == d.set.Total:
		label = words.ArrayInAll(arithmetic.Grouped(n))
	}
	if d.look == inSketch {
		const wide = 320
		x := scene.PaperW/2 - wide/2
		s.Add(scene.Item{Shape: scene.Rect{X: x, Y: y, W: wide, H: restBox, Round: 12}, Role: role, Finish: scene.Outline, Of: d.of, Worth: fraction.Whole(n)})
		s.Add(telling.Text(role, scene.PaperW/2, y+restBox/2, scene.Small, label))
		return
	}
	s.Add(telling.Text(role, scene.PaperW/2, y+restNames/2-4, scene.Small, label))
	y += restNames
	if d.look != inCounters {
		d.restSquares(s, y, int(n), role)
		return
	}
	across, step := d.heap()
	x := scene.PaperW/2 - min(across, int(n))*step/2
	if across > 10 && n > 10 {
		x -= heapGap / 2
	}
	for k := range int(n) {
		d.piece(s, x+k%across*step+k%across/10*heapGap+step/2, y+k/across*step+step/2, worth(scene.Item{Role: role, Of: d.of}, 1))
	}
}

// restSquares draws squares that wait in full rows and one that is not full, to
// the scale of the array.
func (d *division) restSquares(s *scene.Scene, y, n int, role scene.Role) {
	across, unit := d.loose(), d.plot.step
	block := func(y, cols, rows int) {
		g := scene.Grid{X: scene.PaperW/2 - min(across, n)*unit/2, Y: y, W: cols * unit, H: rows * unit, Cols: cols, Rows: rows}
		if d.look == inScale {
			g.Cols, g.Rows = 1, 1
		}
		s.Add(scene.Item{Shape: g, Role: role, Of: d.of, Worth: fraction.Whole(int64(cols * rows))})
	}
	if rows := n / across; rows > 0 {
		block(y, across, rows)
	}
	if cols := n % across; cols > 0 {
		block(y+n/across*unit, cols, 1)
	}
}

// stepFoot is the height of every step: room for the whole total to wait, which
// is the most that ever does.
func (d *division) stepFoot() int {
	return d.restTop() + d.restTall(d.set.Total) + scene.Margin
}

// wholeDivision is the one picture. With the answer hidden it is the side and
// the total that are given, and the question mark.
func (d *division) wholeDivision() *scene.Scene {
	s := &scene.Scene{Title: d.title, Desc: d.said.Story(d.read, d.lines)}
	full := &scene.Scene{}
	d.done(full)
	d.rest(full, d.read.Left, true)
	for _, it := range full.Items {
		if it.When != scene.HiddenOnly {
			it.When = scene.ShownOnly
			s.Add(it)
		}
	}
	posed := &scene.Scene{}
	d.sideAsked(posed)
	b := d.box()
	posed.Add(scene.Item{Shape: scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H, Round: 4}, Role: scene.Hidden, Finish: scene.Dashed, Of: d.of, Worth: fraction.Whole(d.set.Total)})
	label := telling.Text(scene.Ink, b.X+b.W/2, b.Y+b.H/2, scene.Small, words.ArrayInAll(arithmetic.Grouped(d.set.Total)))
	if label.Shape.Box().W > b.W-8 || b.H < 40 {
		t := label.Shape.(scene.Text)
		t.Y = b.Bottom() + restGap + 12
		t.X = max(t.X, scene.Margin+t.Width()/2+1)
		label.Shape = t
	}
	posed.Add(label)
	for _, it := range posed.Items {
		it.When = scene.HiddenOnly
		s.Add(it)
	}
	d.known(s)
	line := d.answered
	if len(d.lines) > 1 && d.stem != nil {
		long := telling.Join(d.stem, "=", d.partLine(), "=", line[len(d.stem)+1:])
		if telling.EquationFits(long) {
			line = long
		}
	}
	bottom := d.restTop() + d.restTall(d.read.Left)
	if d.read.Left == 0 {
		bottom -= restGap
	}
	telling.Equation(s, max(bottom, label.Shape.Box().Bottom()), d.asked, line)
	return s
}

func worth(it scene.Item, n int64) scene.Item {
	it.Worth = fraction.Whole(n)
	return it
}
