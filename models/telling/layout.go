package telling

import (
	"modeler/models/notation"
	"modeler/models/scene"
)

// The hand that all pictures share. A picture is scene.PaperW wide with
// scene.Margin around it; the equation of a whole story stands centred at the
// foot, in the colours of the numbers above it.

// What an equation takes under a picture: at least this much from the content to
// its middle, and air between the two where it is tall because of a fraction.
const (
	footing    = 56
	equationUp = 20
)

// equationRoom is how wide an equation may be.
const equationRoom = scene.PaperW - 2*scene.Margin

// EquationFits reports whether an equation has room at the foot without being
// written smaller.
func EquationFits(l notation.Line) bool { return Width(l, scene.Large, true) <= equationRoom }

// Equation writes the problem's equation at the foot of a picture whose content
// ends at bottom, and closes the paper under it. asked ends in a question mark
// where answered has the answer. A long equation is written smaller.
func Equation(s *scene.Scene, bottom int, asked, answered notation.Line) {
	size := scene.Large
	for size > scene.Small && max(Width(asked, size, true), Width(answered, size, true)) > equationRoom {
		size--
	}
	written := func(l notation.Line, y int) scene.Text {
		return scene.Text{X: scene.PaperW / 2, Y: y, Size: size, Bold: true, Runs: l.Runs()}
	}
	up, down := 0, 0
	for _, l := range []notation.Line{asked, answered} {
		b := written(l, 0).Box()
		up, down = max(up, -b.Y), max(down, b.Bottom())
	}
	y := bottom + max(footing, equationUp+up)
	s.Add(scene.Item{Shape: written(answered, y), When: scene.ShownOnly}, scene.Item{Shape: written(asked, y), When: scene.HiddenOnly})
	s.W, s.H = scene.PaperW, y+max(footing, down+scene.Margin)
}

// Text is a label: words in a role, centred at x with their middle at height y.
func Text(role scene.Role, x, y, size int, words string) scene.Item {
	return scene.Item{Shape: scene.Words(x, y, size, words), Role: role}
}

// AddPart puts the items of a part on a scene, for one version of the picture.
func AddPart(s *scene.Scene, when scene.When, part *scene.Scene) {
	for _, it := range part.Items {
		it.When = when
		s.Add(it)
	}
}

// Question is the question mark that stands, while the answer is hidden, where
// the answer will be.
func Question(x, y int) scene.Item {
	mark := Text(scene.Hidden, x, y, scene.Middle, "?")
	mark.When = scene.HiddenOnly
	return mark
}

// OnPaper moves a text sideways until it is between the margins.
func OnPaper(t scene.Text) scene.Text {
	b := t.Box()
	t.X += max(0, scene.Margin-b.X) - max(0, b.Right()-(scene.PaperW-scene.Margin))
	return t
}
