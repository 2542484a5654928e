package cubes

import (
	"modeler/arithmetic"
	"modeler/models/scene"
	"modeler/models/telling"
)

// tellMade builds trains of one size.
func (k *story) tellMade() telling.Telling {
	set := k.work.Moves[0].(arithmetic.SetGroups)
	read := k.work.Moves[len(k.work.Moves)-1].(arithmetic.ReadGroups)
	b := column(set.Groups, set.Each)
	k.tall = b.bottom(set.Groups) + scene.Margin
	k.told.Pieces = pieces(read.Total)
	equation := k.operands("×")
	asked := telling.Join(equation, "=", telling.Unknown())
	answered := telling.Join(equation, "=", telling.Count(read.Total, scene.Result))
	it := ofAnswer
	it.Role = scene.First
	for _, m := range k.work.Moves {
		s := &scene.Scene{}
		switch m := m.(type) {
		case arithmetic.SetGroups:
			b.waiting(s, 0, m)
			k.step(k.said.Ready(m), s, nil, asked)
		case arithmetic.MakeGroups:
			b.waiting(s, m.Groups, set)
			for row := range m.Groups {
				piece := it
				if row >= m.Before {
					piece = arrived(it)
				}
				b.train(s, row, m.Each, piece)
			}
			var posed *scene.Scene
			if m.Groups == set.Groups {
				posed = &scene.Scene{Items: append([]scene.Item{}, s.Items...)}
				b.tags(posed, read.Totals[:m.Before], set.Each, false)
			}
			b.tags(s, read.Totals[:m.Groups], set.Each, false)
			k.step(k.said.Make(m), s, posed, telling.Counts(",", scene.Ink, read.Totals[:m.Groups]...))
		case arithmetic.ReadGroups:
			all := &scene.Scene{}
			for row := range m.Groups {
				b.train(s, row, m.Each, ofAnswer)
				b.train(all, row, m.Each, it)
			}
			posed := &scene.Scene{Items: append([]scene.Item{}, all.Items...)}
			b.tags(s, m.Totals, set.Each, true)
			b.tags(all, m.Totals, set.Each, true)
			t := k.said.ReadMade(m)
			k.step(t, s, posed, telling.Counts(",", scene.Ink, m.Totals...), answered)
			k.whole(all, posed, b.bottom(set.Groups), t.Desc, asked, answered, answered.Text())
		}
	}
	return k.told
}

// waiting draws the places of the trains that are not built yet.
func (b bench) waiting(s *scene.Scene, built int64, m arithmetic.SetGroups) {
	for row := built; row < m.Groups; row++ {
		place := b.box(row, m.Each)
		s.Draw(scene.Note, scene.Dashed, scene.Rect{X: place.X, Y: place.Y, W: place.W, H: place.H})
	}
}

// tags writes at every train how many cubes there are down to it; the last one of all
// is the answer.
func (b bench) tags(s *scene.Scene, totals []int64, each int64, all bool) {
	for row, n := range totals {
		role := scene.Note
		if all && row == len(totals)-1 {
			role = scene.Result
		}
		b.label(s, int64(row), each, role, count(n, role))
	}
}
