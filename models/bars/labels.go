package bars

import (
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// wholeMark says above the bars how long one whole is.
//
//	|<------- 1 whole ------->|
func (s strip) wholeMark(sc *scene.Scene) {
	const (
		y    = scene.Margin + 18 // middle of the words
		tick = 12                // half the height of the end marks
		gap  = 10                // between the words and the line
		wide = 170               // a whole this long has its own mark, with the words in it
	)
	for k := range s.wholes {
		x1, x2 := s.at(k*s.den), s.at((k+1)*s.den)
		if k > 0 && x2-x1 < wide {
			return
		}
		ends := []scene.Shape{scene.Line{X1: x1, Y1: y - tick, X2: x1, Y2: y + tick}, scene.Line{X1: x2, Y1: y - tick, X2: x2, Y2: y + tick}}
		if x2-x1 < wide {
			sc.Add(scene.Item{Shape: scene.Text{X: x2 + 2*gap, Y: y, Anchor: scene.Left, Size: scene.Small, Runs: []scene.Run{{Text: words.BarWhole}}}, Role: scene.Note})
			sc.Draw(scene.Note, scene.Fine, append(ends, scene.Line{X1: x1, Y1: y, X2: x2, Y2: y})...)
			continue
		}
		label := telling.Text(scene.Note, (x1+x2)/2, y, scene.Small, words.BarWhole)
		box := label.Shape.Box()
		sc.Add(label)
		sc.Draw(scene.Note, scene.Fine, append(ends, scene.Line{X1: x1, Y1: y, X2: box.X - gap, Y2: y}, scene.Line{X1: box.Right() + gap, Y1: y, X2: x2, Y2: y})...)
	}
}

// unsure draws what is asked: a dashed outline between two units, inside the
// outline of the wholes, with a question mark in its first whole. It reports
// whether there was room for them.
func (s strip) unsure(sc *scene.Scene, y, h int, from, to int64) bool {
	const (
		inset = 7
		room  = 50
	)
	box := scene.Rect{X: s.at(from) + inset, Y: y + inset, W: s.at(to) - s.at(from) - 2*inset, H: h - 2*inset}
	if box.W < room {
		return false
	}
	sc.Add(scene.Item{Shape: box, Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly},
		telling.Question((s.at(from)+s.at(min(to, from+s.den)))/2, y+h/2))
	return true
}

// beside writes a number at the left of a bar.
func (s strip) beside(sc *scene.Scene, y int, role scene.Role, line notation.Line, when scene.When) {
	const gap = 16
	sc.Add(scene.Item{
		Shape: scene.Text{X: s.left - gap, Y: y, Anchor: scene.Right, Size: scene.Middle, Runs: line.Runs()},
		Role:  role, When: when,
	})
}

// besideRoom is the room that numbers beside bars need, the gap to the bar
// included.
func besideRoom(lines ...notation.Line) int {
	const gap = 16
	room := 0
	for _, line := range lines {
		room = max(room, telling.Width(line, scene.Middle, false)+gap)
	}
	return room
}

// mark is a brace over or under some units, with the number they make where line
// has one.
type mark struct {
	from, to int64
	line     notation.Line
	role     scene.Role
	when     scene.When
}

// braces draws marks along one side of a bar: up is above it. Labels stand in
// the middle of their braces unless they would touch; then they move apart.
func (s strip) braces(sc *scene.Scene, edge int, up bool, marks []mark) {
	const (
		gap   = 8  // from the bar to the brace
		depth = 10 // of the brace
		tall  = 44 // from the brace to the middle of the label
		inset = 4  // neighbouring braces do not touch
		apart = 14 // between labels
	)
	way := 1
	if up {
		way = -1
	}
	near, far := edge+way*gap, edge+way*(gap+depth)
	labels := make([]scene.Text, len(marks))
	left := scene.Margin
	for i, m := range marks {
		x1, x2 := s.at(m.from)+inset, s.at(m.to)-inset
		if m.to > m.from {
			sc.Add(scene.Item{Shape: scene.Polyline{{X: x1, Y: near}, {X: x1, Y: far}, {X: x2, Y: far}, {X: x2, Y: near}}, Role: m.role, When: m.when})
		}
		if len(m.line) == 0 {
			continue
		}
		labels[i] = scene.Text{X: (s.at(m.from) + s.at(m.to)) / 2, Y: far + way*tall, Size: scene.Middle, Runs: m.line.Runs()}
		labels[i].X += max(0, left-labels[i].Box().X)
		left = labels[i].Box().Right() + apart
	}
	right := scene.PaperW - scene.Margin
	for i := len(marks) - 1; i >= 0; i-- {
		if len(marks[i].line) == 0 {
			continue
		}
		labels[i].X -= max(0, labels[i].Box().Right()-right)
		right = labels[i].Box().X - apart
		sc.Add(scene.Item{Shape: labels[i], Role: marks[i].role, When: marks[i].when})
	}
}
