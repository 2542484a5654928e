package discs

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// run is some equal parts that follow one another round the discs of a group.
type run struct {
	from, count int64 // the unit where it begins, and how many parts
	den         int64 // parts to a whole
	old         int64 // parts to a whole before they were cut finer: their edges stay heavy; 0 for none
	fresh       bool  // they have just been cut
	role        scene.Role
	of          scene.Of
}

func (s sheet) each(den int64) int64 { return s.den / den } // units of one part
func (s sheet) end(r run) int64      { return r.from + r.count*s.each(r.den) }

// units is how many units an amount is.
func (s sheet) units(a arithmetic.Strips) int64 {
	return a.Wholes*s.den + a.Part.Num()*s.each(a.Part.Den())
}

// runs are the pieces of an amount from a unit on: whole discs, then parts.
func (s sheet) runs(from int64, a arithmetic.Strips, role scene.Role, of scene.Of) []run {
	wholes := run{from: from, count: a.Wholes, den: 1, role: role, of: of}
	parts := run{from: s.end(wholes), count: a.Part.Num(), den: a.Part.Den(), role: role, of: of}
	return []run{wholes, parts}
}

// cutFiner marks the parts of runs as cut from old to a whole.
func cutFiner(runs []run, old int64, fresh bool) []run {
	for i := range runs {
		if old > 0 && runs[i].den > 1 && old != runs[i].den {
			runs[i].old, runs[i].fresh = old, fresh
		}
	}
	return runs
}

// picture is what lies on the discs of a group.
type picture struct {
	cut  int64 // parts that a disc is cut in where no piece covers it
	runs []run
}

// pictured is an amount on its discs.
func (s sheet) pictured(a arithmetic.Strips, role scene.Role, of scene.Of) picture {
	return picture{a.Part.Den(), s.runs(0, a, role, of)}
}

// piece is one part: which disc it lies on, and its place there in parts.
type piece struct{ disc, at int64 }

func (s sheet) pieces(r run) []piece {
	var list []piece
	each := s.each(r.den)
	for i := range r.count {
		unit := r.from + i*each
		list = append(list, piece{unit / s.den, unit % s.den / each})
	}
	return list
}

// shape is some parts of a disc, from a cut on; the whole disc is a circle.
func (s sheet) shape(p scene.Point, from, count, parts int64) scene.Shape {
	if count == parts {
		return scene.Circle{X: p.X, Y: p.Y, R: s.r}
	}
	return scene.Wedge{X: p.X, Y: p.Y, R: s.r, From: int(from), Count: int(count), Parts: int(parts)}
}

// draw paints a group: the empty parts, the pieces, their old edges over the new
// ones, and the edge of every whole.
func (s sheet) draw(sc *scene.Scene, g group, p picture, when scene.When) {
	s.drawEmpty(sc, g, p, when)
	for _, r := range p.runs {
		item := scene.Item{Role: r.role, Of: r.of, When: when}
		if r.of != scene.OfNothing {
			item.Worth = fraction.Must(1, r.den)
		}
		if r.role == scene.Gone {
			item.Finish = scene.Dashed
		}
		for _, at := range s.pieces(r) {
			item.Shape = s.shape(g.spots[at.disc], at.at, 1, r.den)
			sc.Add(item)
		}
	}
	for _, r := range p.runs {
		s.drawOld(sc, g, r, when)
	}
	for _, spot := range g.spots {
		sc.Add(scene.Item{Shape: scene.Circle{X: spot.X, Y: spot.Y, R: s.r}, Role: scene.Ink, Finish: scene.Bold, When: when})
	}
	for _, r := range p.runs {
		if r.fresh {
			s.drawCuts(sc, g, r, when)
		}
	}
}

// drawEmpty outlines the parts that no piece covers, on the discs on which parts lie;
// of a group without pieces, on the first disc.
func (s sheet) drawEmpty(sc *scene.Scene, g group, p picture, when scene.When) {
	if p.cut < 2 {
		return
	}
	full, open := map[piece]bool{}, map[int64]bool{}
	empty := true
	for _, r := range p.runs {
		empty = empty && r.count == 0
		for _, at := range s.pieces(r) {
			if r.den == p.cut {
				full[at], open[at.disc] = true, true
			}
		}
	}
	for k, spot := range g.spots {
		if !open[int64(k)] && !(empty && k == 0) {
			continue
		}
		for i := range p.cut {
			if !full[piece{int64(k), i}] {
				sc.Add(scene.Item{Shape: s.shape(spot, i, 1, p.cut), Role: scene.Guide, Finish: scene.Fine, When: when})
			}
		}
	}
}

// drawOld goes over the edges that parts had before they were cut finer.
func (s sheet) drawOld(sc *scene.Scene, g group, r run, when scene.When) {
	if r.old == 0 {
		return
	}
	into := r.den / r.old
	for i, at := range s.pieces(r) {
		if int64(i)%into == 0 {
			sc.Add(scene.Item{Shape: s.shape(g.spots[at.disc], at.at/into, 1, r.old), Role: r.role, Finish: scene.Bold, When: when})
		}
	}
}

// drawCuts marks cuts that have just been made: they reach out over the rim.
func (s sheet) drawCuts(sc *scene.Scene, g group, r run, when scene.When) {
	const near, far = 6, 15 // from the rim
	into := int64(1)
	if r.old > 0 {
		into = r.den / r.old
	}
	for _, at := range s.pieces(r) {
		if at.at%into == 0 {
			continue
		}
		spot := g.spots[at.disc]
		a := scene.NearRim(spot.X, spot.Y, s.r+near, int(at.at), int(r.den))
		b := scene.NearRim(spot.X, spot.Y, s.r+far, int(at.at), int(r.den))
		sc.Add(scene.Item{Shape: scene.Line{X1: a.X, Y1: a.Y, X2: b.X, Y2: b.Y}, Role: scene.Moved, Finish: scene.Bold, When: when})
	}
}

// strike puts one stroke through the pieces between two units, disc by disc.
func (s sheet) strike(sc *scene.Scene, g group, from, to int64, when scene.When) {
	const stretches = 7
	for k, spot := range g.spots {
		first := int64(k) * s.den
		a, b := max(from, first)-first, min(to, first+s.den)-first
		if a >= b {
			continue
		}
		item := scene.Item{Role: scene.Gone, Finish: scene.Bold, When: when}
		if b-a == s.den {
			in := s.r * 6 / 10
			item.Shape = scene.Line{X1: spot.X - in, Y1: spot.Y + in, X2: spot.X + in, Y2: spot.Y - in}
			sc.Add(item)
			continue
		}
		var arc scene.Polyline // between the middles of the first and the last twelfth
		for i := range int64(stretches + 1) {
			turn := (a*(stretches*12) + (b-a)*(stretches+i*10))
			arc = append(arc, scene.NearRim(spot.X, spot.Y, s.r*62/100, int(turn), int(s.den*stretches*12)))
		}
		item.Shape = arc
		sc.Add(item)
	}
}
