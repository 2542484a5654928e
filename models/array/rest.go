package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

const (
	restGap   = 18 // from the array, or what is named under it, to what lies under that
	restNames = 46 // the name of what waits, over it
)

// rest draws what is still to be placed, or what is left over in the end.
func (d *division) rest(s *scene.Scene, n int64, over bool) {
	w, label := d.wait, words.ArrayLeft(arithmetic.Grouped(n))
	switch {
	case n == 0:
		label = words.ArrayNoneLeft
	case over:
		label = words.ArrayLeftOver(arithmetic.Grouped(n))
	case n == d.set.Total:
		label = words.ArrayWaits(d.set)
	}
	role := scene.First
	if n == 0 {
		role = scene.Note
	}
	switch {
	case w.bowl && n > looseMost:
		d.bowl(s, n, label)
		return
	case w.bowl && n == 0:
		s.Add(telling.Text(role, w.x+bowlWide/2, w.y+bowlTall/2, scene.Small, label))
		return
	case w.bowl:
		d.loose(s, n, label)
		return
	}
	s.Add(telling.Text(role, w.middle, w.y-restNames/2, scene.Small, label))
	if d.look != inCounters {
		d.restSquares(s, w.x, w.y, w.across, int(n))
		return
	}
	for k := range int(n) {
		at := w.seat(k)
		s.Add(worth(scene.Item{Shape: scene.Circle{X: at.X, Y: at.Y, R: d.size / 2}, Role: scene.First, Of: d.of}, 1))
	}
}

// bowl draws many as a bowl with their number on it.
func (d *division) bowl(s *scene.Scene, n int64, label string) {
	const lean = 24
	x, y := d.wait.x, d.wait.y
	s.Add(worth(scene.Item{
		Shape: scene.Polygon{{X: x, Y: y}, {X: x + bowlWide, Y: y}, {X: x + bowlWide - lean, Y: y + bowlTall}, {X: x + lean, Y: y + bowlTall}},
		Role:  scene.First, Of: d.of,
	}, n))
	s.Add(telling.Text(scene.First, x+bowlWide/2, y+bowlTall/2, scene.Small, label))
}

// looseMost are as many as are drawn one by one where the array is drawn without
// single squares.
const looseMost = 20

// restSquares draws squares that wait in full rows and one that is not full, to
// the scale of the array.
func (d *division) restSquares(s *scene.Scene, x, y, across, n int) {
	unit := d.plot.step
	block := func(y, cols, rows int) {
		s.Add(worth(scene.Item{Shape: scene.Grid{X: x, Y: y, W: cols * unit, H: rows * unit, Cols: cols, Rows: rows}, Role: scene.First, Of: d.of}, int64(cols*rows)))
	}
	if rows := n / across; rows > 0 {
		block(y, across, rows)
	}
	if cols := n % across; cols > 0 {
		block(y+n/across*unit, cols, 1)
	}
}

// stepFoot is the height of every step: room for the array and for the whole
// total to wait, which is the most that ever does.
func (d *division) stepFoot() int {
	tall := d.waitTall(int(d.set.Total))
	if d.wait.bowl {
		tall = max(tall, restNames+looseTall)
	}
	return max(d.foot(false), d.free.Bottom()+8, d.wait.y+tall) + d.stripsTall() + scene.Margin
}

// looseTall is the height of a line of loose ones.
const looseTall = 32

// layWhole places the array by itself, with what is left over under it.
func (d *division) layWhole() *division {
	w := *d
	w.air = 0
	bare := d.plot
	bare.x, bare.y, bare.w, bare.h = nil, nil, nil, nil
	tall := stepsTall - min(200, d.stripsTall()) // the strips stand under it
	for size := largestCounter; ; size -= 4 {
		w.plot = bare
		w.choose(room{height: tall, size: size, plain: d.look != inCounters, right: d.namesRight()})
		w.wait = waiting{across: 10, step: w.size + max(6, w.size/5), gap: 12}
		if w.look != inCounters {
			w.wait = waiting{across: 20, step: w.plot.step}
		}
		if w.look > inSquares {
			w.wait.bowl = true
		}
		if w.look != inCounters || size <= 24 || w.box().H+w.waitTall(int(d.read.Left)) <= tall {
			break
		}
	}
	w.free = w.box()
	left := min(int(d.read.Left), w.wait.across) // in the first line
	if d.more != nil {
		left = int(d.set.Side)
	}
	w.wait.middle = scene.PaperW / 2
	w.wait.x, w.wait.y = w.wait.middle-(left*w.wait.step+max(0, left-1)/5*w.wait.gap)/2, w.foot(false)+restGap+restNames
	if w.wait.bowl {
		w.wait.x, w.wait.y = scene.PaperW/2-bowlWide/2, w.foot(false)+restGap
	}
	return &w
}

// wholeDivision is the one picture. With the answer hidden it is the side and
// the total that are given, and the question mark.
func (d *division) wholeDivision() *scene.Scene {
	w := d.layWhole()
	s := &scene.Scene{Title: d.title, Desc: d.told()}
	full := &scene.Scene{}
	w.known(full)
	w.done(full)
	bottom := w.foot(false) - 8
	if d.read.Left > 0 {
		w.rest(full, d.read.Left, true)
		bottom = w.wait.y + w.waitTall(int(d.read.Left))
		if w.wait.bowl && d.read.Left <= looseMost {
			bottom = w.wait.y + restNames + looseTall
		}
	}
	if d.goesOn() {
		w.after(full, bottom+8, len(d.trades))
		bottom += d.stripsTall()
		if d.stripsTall() > 0 {
			bottom -= stripsEnd
		}
	}
	for _, it := range full.Items {
		if it.When != scene.HiddenOnly {
			it.When = scene.ShownOnly
			s.Add(it)
		}
	}
	bottom = max(bottom, plotTop+askedLeast)
	telling.AddPart(s, scene.HiddenOnly, d.posed(bottom))
	line := d.answered
	if len(d.lines) > 1 {
		long := line
		if d.stem != nil {
			long = telling.Join(d.stem, "=", d.partLine(), "=", line[len(d.stem)+1:])
		}
		// 10 + 2 = 12 r 3 would say that 12 is 12 and something.
		if d.stem != nil && d.read.Left == 0 && !d.goesOn() && telling.EquationFits(long) {
			line = long
		} else {
			parts := d.partTerms()
			parts[len(parts)-1] = telling.Join(parts[len(parts)-1], "=", telling.Count(d.read.Found, scene.Result))
			bottom = sumBelow(s, bottom, parts)
		}
	}
	telling.Equation(s, bottom, d.asked, line)
	return s
}

// askedLeast is the least height of what is asked.
const askedLeast = 110

// posed is what is given and the question: rows of the size that is known, of the
// same length whatever the answer, and open where they might go on.
func (d *division) posed(bottom int) *scene.Scene {
	const left, wide = 200, 440
	s := &scene.Scene{}
	q := *d
	q.plot = plot{rows: []int64{d.set.Side}, cols: []int64{1}, x: []int{left}, w: []int{wide}, y: []int{plotTop}, h: []int{bottom - plotTop}}
	q.free = q.box()
	q.known(s)
	q.sideAsked(s)
	q.open(s, worth(scene.Item{Role: scene.Hidden, Finish: scene.Dashed, Of: d.of}, d.set.Total))
	b := q.free
	s.Add(telling.Text(scene.Ink, b.X+b.W/2, b.Y+b.H/2, scene.Small, words.ArrayInAll(arithmetic.Grouped(d.set.Total))))
	return s
}

func worth(it scene.Item, n int64) scene.Item {
	it.Worth = fraction.Whole(n)
	return it
}
