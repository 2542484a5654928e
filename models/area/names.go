package area

import (
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// name is the label of one of the parts of a rectangle that is split at its wholes.
// Where the part is too narrow it stands at the right of the squares, where it is too
// low under them, and a thin line leads there.
type name struct {
	text        scene.Text
	box         scene.Box // of the part
	narrow, low bool
}

// names are the labels of the parts, row by row.
func (p *plan) names() []name {
	var list []name
	i := 0
	for _, d := range p.stretches(p.down, p.y, p.row()) {
		for _, a := range p.stretches(p.across, p.x, p.column()) {
			part := p.split.Parts[i]
			i++
			line := telling.Numeral(part.Product, scene.Result)
			if n, whole := part.Product.Int64(); a.whole && d.whole && whole {
				if wide := (notation.Line{notation.W(words.AreaPartWholes(n))}); telling.Width(wide, scene.Small, false)+12 < p.unit {
					line = wide
				}
			}
			list = append(list, p.name(line, scene.Box{X: a.from, Y: d.from, W: a.long, H: d.long}))
		}
	}
	return list
}

// name places a label in the first square of its part, or outside.
func (p *plan) name(line notation.Line, part scene.Box) name {
	const (
		air  = 4
		side = 30 // from the squares to a label at the right
		down = 30 // and to one under them
	)
	first := scene.Box{X: part.X, Y: part.Y, W: min(part.W, p.unit), H: min(part.H, p.unit)}
	size := scene.Middle
	if len(line) > 0 && line[0].Kind == notation.Word {
		size = scene.Small
	}
	t := scene.Text{X: first.X + first.W/2, Y: first.Y + first.H/2, Size: size, Runs: line.Runs()}
	b := t.Box()
	n := name{box: part, narrow: b.W+2*air > first.W, low: b.H+2*air > first.H}
	if n.narrow {
		t.X = p.x + p.wide() + side + b.W/2
	}
	if n.low && (!n.narrow || part.Y+part.H/2+b.H/2 > p.bottom()) {
		t.Y = p.bottom() + down + b.H/2
	}
	n.text = t
	return n
}

// draw writes a name with a plate under it, or with a line to its part.
func (n name) draw(s *scene.Scene) {
	const reach = 6
	b := n.text.Box()
	switch {
	case n.narrow:
		end := scene.Point{X: b.X - reach, Y: n.text.Y}
		line := scene.Polyline{{X: n.box.Right(), Y: end.Y}, end}
		if end.Y > n.box.Bottom() || end.Y < n.box.Y {
			line[0].Y = n.box.Y + n.box.H/2
		}
		s.Draw(scene.Guide, scene.Fine, line)
	case n.low:
		s.Draw(scene.Guide, scene.Fine, scene.Polyline{{X: n.text.X, Y: n.box.Bottom()}, {X: n.text.X, Y: b.Y - reach}})
	default:
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: b.X - reach, Y: b.Y, W: b.W + 2*reach, H: b.H, Round: 10})
	}
	s.Add(scene.Item{Shape: n.text, Role: scene.Ink})
}
