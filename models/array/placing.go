package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/words"
)

// known names the side that the problem gives.
func (d *division) known(s *scene.Scene) {
	if d.set.Grouping {
		d.aboveAll(s, caption{words: words.ArrayEach(arithmetic.Grouped(d.set.Side))})
		return
	}
	d.rowsBeside(s, caption{words: arithmetic.Grouped(d.set.Side)})
}

// sideAsked puts the question mark at the side that is not known.
func (d *division) sideAsked(s *scene.Scene) {
	if d.set.Grouping {
		d.besideBy(s, d.outerLeft(), d.free.Y, d.free.Bottom(), rowsName, caption{words: "?", role: scene.Hidden})
		return
	}
	d.aboveBy(s, d.outerUp(), d.free.X, d.free.Right(), scene.Small, caption{words: words.ArrayEach("?"), role: scene.Hidden})
}

// sideFound names the side that was found.
func (d *division) sideFound(s *scene.Scene) {
	found := arithmetic.Grouped(d.read.Found)
	if d.set.Grouping {
		d.rowsBeside(s, revealed(found, scene.Result), blanked("?"))
		return
	}
	d.aboveAll(s, revealed(words.ArrayEach(found), scene.Result), blanked(words.ArrayEach("?")))
}

// bothNamed reports whether the side that was asked for has room for its own name
// outside those of its parts.
func (d *division) bothNamed() bool { return d.outerUp() > 0 || d.outerLeft() > 0 }

// frame draws the places before anything is in them: a place for each row when
// the rows are known, the place of one row when they are not, or the outline of
// all of them, open where it may go on.
func (d *division) frame(s *scene.Scene) {
	if d.look != inCounters {
		d.open(s, scene.Item{Role: scene.Hidden, Finish: scene.Dashed})
		d.drawNote(s)
		return
	}
	rows := int(d.set.Side)
	if d.set.Grouping {
		rows = 1
	}
	for k := range rows {
		s.Draw(scene.Note, scene.Outline, scene.Rect{
			X: d.free.X - bandEdge, Y: d.free.Y + k*d.rise + rowGap/2, W: d.free.W + 2*bandEdge, H: d.rise - rowGap, Round: 12,
		})
	}
}

// open draws the outline of the places, open on the side where they may go on.
func (d *division) open(s *scene.Scene, it scene.Item) {
	b := d.free
	it.Shape = scene.Polyline{{X: b.Right(), Y: b.Y}, {X: b.X, Y: b.Y}, {X: b.X, Y: b.Bottom()}, {X: b.Right(), Y: b.Bottom()}}
	if d.set.Grouping {
		it.Shape = scene.Polyline{{X: b.X, Y: b.Bottom()}, {X: b.X, Y: b.Y}, {X: b.Right(), Y: b.Y}, {X: b.Right(), Y: b.Bottom()}}
	}
	s.Add(it)
}

// dealt draws the lines placed one by one: those before from at home, the rest
// as just placed. Where single lines cannot be seen they are one area, worth
// what is placed.
func (d *division) dealt(s *scene.Scene, from, to int, placed int64) {
	if d.set.Grouping {
		d.bands(s, to)
	}
	b := d.box()
	lines := int(max(sumOf(d.rows), 1))
	if !d.set.Grouping {
		lines = int(sumOf(d.cols))
	}
	if d.look != inCounters {
		it := scene.Item{Role: scene.Moved, Of: d.of, Worth: fraction.Whole(placed)}
		shape := scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: 1, Rows: 1}
		if d.set.Grouping {
			shape.H, shape.Rows = b.H/lines*to, to
			shape.Cols = d.ruled()
		} else {
			shape.W, shape.Cols = b.W/lines*to, to
			shape.Rows = d.ruled()
		}
		it.Shape = shape
		s.Add(it)
		return
	}
	for k := range to {
		it := scene.Item{Role: scene.First, Of: d.of}
		if k >= from {
			it.Role = scene.Moved
		}
		for n := range int(d.set.Side) {
			r, c := n, k
			if d.set.Grouping {
				r, c = k, n
			}
			d.piece(s, b.X+c*d.plot.step+d.plot.step/2, b.Y+r*d.rise+d.rise/2, worth(it, 1))
		}
	}
}

// ruled is how many squares a line of the array shows.
func (d *division) ruled() int {
	if d.look == inSquares {
		return int(d.set.Side)
	}
	return 1
}

// placed draws the first parts, the last of them as just placed.
func (d *division) placed(s *scene.Scene, count int, moved bool) {
	if moved {
		d.frame(s)
	} else {
		d.drawNote(s)
	}
	for k, f := range d.found[:count] {
		it := scene.Item{Role: roleAt(f.Row, f.Col), Of: d.of}
		if moved && k == count-1 {
			it.Role = scene.Moved
		}
		d.fill(s, f.Row, f.Col, it)
		if len(d.lines) == 1 && !moved {
			continue // the part is the side, which has been named
		}
		name := caption{words: arithmetic.Grouped(d.lines[k].Part), role: roleAt(f.Row, f.Col)}
		if d.set.Grouping {
			d.beside(s, d.y[k], d.y[k]+d.h[k], "", name)
		} else {
			d.above(s, d.x[k], d.x[k]+d.w[k], scene.Middle, name)
		}
	}
	d.partNames(s, d.found[:count], scene.Always)
}

// done draws everything placed and the side that was found.
func (d *division) done(s *scene.Scene) {
	if len(d.lines) < 2 || d.bothNamed() {
		d.sideFound(s)
	}
	switch {
	case len(d.lines) > 0:
		d.placed(s, len(d.lines), false)
		d.cuts(s, scene.Ink)
	case d.read.Found == 0:
		d.frame(s)
	case d.look == inCounters:
		d.bands(s, int(max(sumOf(d.rows), 1)))
		d.dealt(s, int(d.read.Found), int(d.read.Found), d.sum)
	default:
		d.undivided(s, scene.Item{Role: scene.First, Of: d.of})
		d.drawNote(s)
	}
}
