package blocks

import (
	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/models/scene"
)

// strike draws one calm stroke through each row of the pieces from slot from up
// to slot to: slanting, and level through the small ones. A stroke that belongs to a number is worth what it strikes.
func (m *mat) strike(s *scene.Scene, power, band int, from, to int64, of scene.Of) {
	per := int64(m.perRow[power])
	for from < to {
		end := min(to, (from/per+1)*per)
		a, b := m.slot(power, band, int(from)), m.slot(power, band, int(end-1))
		stroke := scene.Line{X1: a.X - 3, Y1: a.Bottom() + 3, X2: b.Right() + 3, Y2: b.Y - 3}
		if power == 0 {
			stroke = scene.Line{X1: a.X - 1, Y1: a.Y + a.H/2, X2: b.Right() + 1, Y2: a.Y + a.H/2}
		}
		it := scene.Item{
			Shape: stroke,
			Role:  scene.Gone, Finish: scene.Bold, Of: of,
		}
		if of != scene.OfNothing {
			it.Worth = fraction.Whole((end - from) * arithmetic.Power10(power))
		}
		s.Add(it)
		from = end
	}
}

// roundRooms is a line round rooms that stand in rows which all start at the left,
// at a distance of air.
func roundRooms(rooms []scene.Box, air int) scene.Polygon {
	list := roomRows(rooms)
	left, top, end := list[0].X-air, list[0].Y-air, list[len(list)-1].Bottom()+air
	line := scene.Polygon{{X: left, Y: end}, {X: left, Y: top}}
	for i, row := range list {
		bottom := end
		if i+1 < len(list) {
			bottom = (row.Bottom() + list[i+1].Y) / 2
		}
		// A corner that is none would shift the dashes in some renderers.
		if last := len(line) - 1; i > 0 && line[last].X == row.Right()+air {
			line[last].Y = bottom
		} else {
			line = append(line, scene.Point{X: row.Right() + air, Y: top}, scene.Point{X: row.Right() + air, Y: bottom})
		}
		top = bottom
	}
	return line
}

// roomRows joins the rooms that stand at one height.
func roomRows(rooms []scene.Box) []scene.Box {
	var out []scene.Box
	for _, r := range rooms {
		if n := len(out); n > 0 && out[n-1].Y == r.Y {
			out[n-1].W = r.Right() - out[n-1].X
			continue
		}
		out = append(out, r)
	}
	return out
}
