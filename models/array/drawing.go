package array

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
	"modeler/models/telling"
)

// bands draws the surface that every row lies on; of other looks nothing.
func (p *plot) bands(s *scene.Scene, count int) {
	for _, b := range p.bandBoxes(count) {
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H, Round: 12})
	}
}

// bandBoxes are the bands of the first rows.
func (p *plot) bandBoxes(count int) []scene.Box {
	if p.look > inCrates {
		return nil
	}
	var boxes []scene.Box
	all := p.box()
	for i, r := range p.rows {
		for k := 0; k < int(r) && len(boxes) < count; k++ {
			boxes = append(boxes, scene.Box{X: all.X - bandEdge, Y: p.y[i] + k*p.rise + rowGap/2, W: all.W + 2*bandEdge, H: p.rise - rowGap})
		}
	}
	return boxes
}

// fill draws one part.
func (p *plot) fill(s *scene.Scene, i, j int, it scene.Item) {
	p.fillTo(s, i, j, int(p.rows[i]), int(p.cols[j]), it)
}

// fillTo draws the first rows and columns of one part. it says role, finish,
// number and version; the shapes and their worth are filled in.
func (p *plot) fillTo(s *scene.Scene, i, j, rows, cols int, it scene.Item) {
	b := p.part(i, j)
	switch p.look {
	case inCounters, inCrates:
		it.Worth = fraction.Whole(p.value)
		var plates, names []scene.Item // over all crates, so that what looks the same is written together
		for r := range rows {
			for c := range cols {
				x, y := b.X+c*p.step+p.step/2, b.Y+r*p.rise+p.rise/2
				p.piece(s, x, y, it)
				if p.look == inCrates {
					name := telling.Text(it.Role, x, y, scene.Small, arithmetic.Grouped(p.value))
					name.When = it.When
					plates, names = append(plates, plateUnder(name, 2)), append(names, name)
				}
			}
		}
		s.Add(plates...)
		s.Add(names...)
		return
	case inSquares:
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: cols, Rows: rows}
	case inScale:
		it.Shape = scene.Grid{X: b.X, Y: b.Y, W: b.W, H: b.H, Cols: 1, Rows: 1}
	default:
		it.Shape = scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H}
	}
	it.Worth = fraction.Whole(p.parts[i*len(p.cols)+j])
	s.Add(it)
	if p.look == inScale {
		p.tens(s, b, it.When)
	}
}

// tens marks every ten along the sides of an area: with dotted lines across it,
// or with ticks where a name stands in it.
func (p *plot) tens(s *scene.Scene, b scene.Box, when scene.When) {
	const longest, edge = 9, 3
	across := len(p.parts) == 1
	down, along := min(longest, b.H/3), min(longest, b.W/3)
	add := func(shapes ...scene.Shape) {
		for _, sh := range shapes {
			finish := scene.Fine
			if across {
				finish = scene.Dotted
			}
			s.Add(scene.Item{Shape: sh, Role: scene.First, Finish: finish, When: when})
		}
	}
	for x := b.X + 10*p.step; x < b.Right(); x += 10 * p.step {
		if across {
			add(scene.Line{X1: x, Y1: b.Y + edge, X2: x, Y2: b.Bottom() - edge})
		} else {
			add(scene.Line{X1: x, Y1: b.Y, X2: x, Y2: b.Y + down}, scene.Line{X1: x, Y1: b.Bottom() - down, X2: x, Y2: b.Bottom()})
		}
	}
	for y := b.Y + 10*p.step; y < b.Bottom(); y += 10 * p.step {
		if across {
			add(scene.Line{X1: b.X + edge, Y1: y, X2: b.Right() - edge, Y2: y})
		} else {
			add(scene.Line{X1: b.X, Y1: y, X2: b.X + along, Y2: y}, scene.Line{X1: b.Right() - along, Y1: y, X2: b.Right(), Y2: y})
		}
	}
}

// piece draws one counter or crate with its middle at x, y.
func (p *plot) piece(s *scene.Scene, x, y int, it scene.Item) {
	if p.look == inCounters {
		if it.Role != scene.Moved {
			it.Finish = scene.Deep // what has just arrived keeps the lighter look
		}
		it.Shape = scene.Circle{X: x, Y: y, R: p.size / 2}
		s.Add(it)
		return
	}
	it.Shape = scene.Rect{X: x - p.across/2, Y: y - p.size/2, W: p.across, H: p.size, Round: 6}
	s.Add(it)
}

// plateUnder is what a name on a surface stands on, so that the lines of the
// surface do not run through it; edge is how much wider it is on each side.
func plateUnder(name scene.Item, edge int) scene.Item {
	b := name.Shape.Box()
	return scene.Item{Shape: scene.Rect{X: b.X - edge, Y: b.Y, W: b.W + 2*edge, H: b.H, Round: 6}, Role: scene.Tray, When: name.When}
}

// undivided draws the array before it is split.
func (p *plot) undivided(s *scene.Scene, it scene.Item) {
	if p.look <= inCrates {
		for i := range p.rows {
			for j := range p.cols {
				p.fill(s, i, j, it)
			}
		}
		return
	}
	one := *p
	b := p.box()
	one.rows, one.cols, one.parts = []int64{sumOf(p.rows)}, []int64{sumOf(p.cols)}, []int64{p.sum}
	one.x, one.w, one.y, one.h = []int{b.X}, []int{b.W}, []int{b.Y}, []int{b.H}
	one.fill(s, 0, 0, it)
}

// cuts draws the lines between the parts.
func (p *plot) cuts(s *scene.Scene, role scene.Role) {
	const beyond = 6
	finish := scene.Bold
	if p.look == inScale {
		finish = scene.Plain // a part may be as thin as a heavy line
	}
	b := p.box()
	for j := 1; j < len(p.x); j++ {
		x := (p.x[j-1] + p.w[j-1] + p.x[j]) / 2
		s.Draw(role, finish, scene.Line{X1: x, Y1: b.Y - beyond, X2: x, Y2: b.Bottom() + beyond})
	}
	for i := 1; i < len(p.y); i++ {
		y := (p.y[i-1] + p.h[i-1] + p.y[i]) / 2
		s.Draw(role, finish, scene.Line{X1: b.X - beyond, Y1: y, X2: b.Right() + beyond, Y2: y})
	}
}
