package blocks

import "modeler/models/scene"

// room is where the i-th piece of a place lies in a box.
func (f *floor) room(box, power int, i int64) scene.Box {
	r := f.box.slot(power, 0, int(i))
	r.X += f.boxes[box].X
	r.Y += f.boxes[box].Y
	return r
}

// end is where the floor ends: that of the mat with its lines, or of the labels
// of the last boxes.
func (f *floor) end() int {
	last := f.boxes[len(f.boxes)-1]
	return max(f.tallied(f.rows), last.Bottom()+labelGap+scene.Small/2)
}

// base is the empty floor.
func (f *floor) base() *scene.Scene {
	s := &scene.Scene{W: scene.PaperW, H: f.end() + scene.Margin}
	f.spread(s)
	for _, b := range f.boxes {
		s.Draw(scene.Tray, scene.Plain, scene.Rect{X: b.X, Y: b.Y, W: b.W, H: b.H, Round: 10})
		for power := 1; power <= f.box.top; power++ {
			x := b.X + f.edges[power]
			s.Draw(scene.Guide, scene.Fine, scene.Line{X1: x, Y1: b.Y + boxPad, X2: x, Y2: b.Bottom() - boxPad})
		}
	}
	return s
}

// layBox draws pieces in a box, of one place from one slot to another.
func (f *floor) layBox(s *scene.Scene, box, power int, from, to int64, as laid) {
	var rooms []scene.Box
	for i := from; i < to; i++ {
		rooms = append(rooms, f.room(box, power, i))
	}
	f.layMany(s, power, rooms, as)
}

// manyCame is how many pieces that went elsewhere are drawn one by one, and fewCame
// where there are thousands, and so very many pieces in all.
const manyCame, fewCame = 40, 14

// came draws pieces of a place that went elsewhere, from slot from up to slot to: as
// empty outlines, or where there are many as one line round all down to the last.
func (f *floor) came(s *scene.Scene, power int, from, to int64) {
	many := int64(manyCame)
	if f.top >= 3 {
		many = fewCame
	}
	if to-from <= many {
		f.lay(s, power, 0, from, to, ghost)
		return
	}
	var rooms []scene.Box
	for i := range to {
		rooms = append(rooms, f.slot(power, 0, int(i)))
	}
	s.Draw(scene.Gone, scene.Dashed, roundRooms(rooms, 2))
}
