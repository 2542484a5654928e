package array

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/words"
)

// waiting is the place of what is still to be placed, and its order: counters in
// tens of two fives, squares in rows of ten. Of many it is a bowl with their number.
type waiting struct {
	bowl   bool
	x, y   int // the top left corner
	middle int // of the name over it
	across int // how many stand beside each other
	step   int // from one to the next
	gap    int // after every five across, and after every ten down
}

const (
	heapMost  = 100 // counters that are drawn one by one while they wait
	stepsTall = 480 // the most that the array and what waits take in a step
	apartRest = 40  // from the array to what waits beside it
	bowlWide  = 320
	bowlTall  = 64
)

// laySteps places the array and what waits beside it, for all steps, with the
// largest counters or squares that leave room for both; failing that it places
// what waits in a bowl under the array.
func (d *division) laySteps() {
	bare := d.plot
	total := int(d.set.Total)
	beside := func(counters bool, size int, w waiting) bool {
		d.plot, d.wait = bare, w
		return d.layBeside(counters, size) && d.waitTall(total) <= stepsTall
	}
	for size := largestCounter; size >= 18 && total <= heapMost; size -= 2 {
		for _, across := range []int{5, 10} {
			if beside(true, size, waiting{across: across, step: size + max(6, size/5), gap: max(8, size/3)}) {
				return
			}
		}
	}
	for size := 40; size >= 16; size -= 2 {
		if beside(false, size, waiting{across: 10, step: size}) {
			return
		}
	}
	d.plot = bare
	d.wait = waiting{bowl: true}
	d.choose(room{height: 340, size: 40, plain: true, right: d.namesRight(), left: true})
	d.free = d.box()
	if d.look != inSketch && !d.set.Grouping {
		d.free.W = scene.PaperW - scene.Margin - d.free.X
	}
	if d.look != inSketch && d.set.Grouping {
		d.free.H += apartRest
		d.air = apartRest
	}
	d.wait.x, d.wait.y = scene.PaperW/2-bowlWide/2, d.foot(false)+restGap
}

// layBeside places the array with what waits to its right; it fails where the two
// have no room beside each other.
func (d *division) layBeside(counters bool, size int) bool {
	const mostDealt = 10 // more are placed by parts
	wide := d.waitWide()
	for _, name := range []string{words.ArrayWaits(d.set), words.ArrayLeftOver(arithmetic.Grouped(d.read.Left))} {
		wide = max(wide, scene.Advance(name, scene.Small, false))
	}
	right := apartRest + wide
	free := room{height: stepsTall, size: size, plain: !counters, right: d.namesRight() + right, left: true}
	long := d.cols
	if !d.set.Grouping && len(d.lines) == 0 {
		d.cols = []int64{min(mostDealt, max(d.set.Total, long[0]))}
	}
	d.choose(free)
	if counters != (d.look == inCounters) || d.look > inSquares || counters && d.size != size || !counters && d.plot.step != size {
		return false
	}
	d.free = d.box()
	if !d.set.Grouping && len(d.lines) > 0 {
		d.free.W = scene.PaperW - scene.Margin - right - d.free.X
	}
	d.cols, d.w = long, nil
	for _, c := range long {
		d.w = append(d.w, int(c)*d.plot.step)
	}
	d.wait.middle = scene.PaperW - scene.Margin - wide/2
	d.wait.x, d.wait.y = d.wait.middle-d.waitWide()/2, d.y[0]
	if d.set.Grouping {
		d.free.H = max(d.free.H+d.rise, d.waitTall(int(d.set.Total)))
		d.air = d.free.Bottom() - d.box().Bottom()
	}
	return true
}

// namesRight is the room for names between the array and what waits.
func (d *division) namesRight() int {
	const totals = 80
	switch {
	case len(d.lines) > 0:
		return d.partNameRoom()
	case d.set.Grouping:
		return totals
	}
	return 0
}

// waitWide and waitTall are the room that things take while they wait.
func (d *division) waitWide() int {
	return d.wait.across*d.wait.step + (d.wait.across-1)/5*d.wait.gap
}

func (d *division) waitTall(n int) int {
	if d.wait.bowl {
		return bowlTall
	}
	rows := (n + d.wait.across - 1) / d.wait.across
	return rows*d.wait.step + max(0, rows-1)/2*d.wait.gap*5/d.wait.across
}

// seat is the middle of the k-th counter that waits.
func (w waiting) seat(k int) scene.Point {
	row, col := k/w.across, k%w.across
	return scene.Point{
		X: w.x + col*w.step + col/5*w.gap + w.step/2,
		Y: w.y + row*w.step + row/2*w.gap*5/w.across + w.step/2,
	}
}
