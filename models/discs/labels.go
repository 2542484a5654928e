package discs

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// wholeMark says over the first disc of some groups that it is one whole.
func (s sheet) wholeMark(sc *scene.Scene, groups ...int) {
	const up = 36 // from the rim to the middle of the words, over the marks of new cuts
	for _, i := range groups {
		spot := s.groups[i].spots[0]
		sc.Add(telling.Text(scene.Note, spot.X, spot.Y-s.r-up, scene.Small, words.BarWhole))
	}
}

// name writes a number under the discs of a group.
func (g group) name(sc *scene.Scene, role scene.Role, line notation.Line, when scene.When) {
	sc.Add(scene.Item{Shape: scene.Text{X: g.label.X, Y: g.label.Y, Size: scene.Middle, Runs: line.Runs()}, Role: role, When: when})
}

// sign writes what stands before a group.
func (s sheet) sign(sc *scene.Scene, nth int, role scene.Role, sign string, when scene.When) {
	p := s.signs[nth]
	sc.Add(scene.Item{Shape: scene.Text{X: p.X, Y: p.Y, Size: scene.Large, Bold: true, Runs: []scene.Run{{Text: sign}}}, Role: role, When: when})
}

// unsure draws what is asked: the first disc of a group as a dashed outline with a
// question mark, and one under it.
func (s sheet) unsure(sc *scene.Scene, g group) {
	spot := g.spots[0]
	sc.Add(scene.Item{Shape: scene.Circle{X: spot.X, Y: spot.Y, R: s.r}, Role: scene.Hidden, Finish: scene.Dashed, When: scene.HiddenOnly},
		telling.Question(spot.X, spot.Y))
}

// renamedLine is a number and, where its parts have been cut, its new name: 1/2 =
// 3/6.
func renamedLine(n arithmetic.Number, now arithmetic.Strips, role scene.Role) notation.Line {
	line, name := telling.Numeral(n, role), telling.Strips(now, role)
	if name.Text() == line.Text() {
		return line
	}
	return telling.Join(line, "=", name)
}
