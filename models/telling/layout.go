package telling

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// The hand that all pictures share. A picture is scene.PaperW wide with
// scene.Margin around it; the equation of a whole story stands centred at the
// foot, in the colours of the numbers above it.

// footing is the room that an equation takes under a picture: the gap above it
// and the line itself.
const footing = 112

// Equation writes the problem's equation at the foot of a picture whose content
// ends at bottom, and closes the paper under it. asked ends in a question mark
// where answered has the answer. A long equation is written smaller.
func Equation(s *scene.Scene, bottom int, asked, answered notation.Line) {
	y := bottom + footing/2
	size := scene.Large
	written := func(l notation.Line) scene.Text {
		return scene.Text{X: scene.PaperW / 2, Y: y, Size: size, Bold: true, Runs: l.Runs()}
	}
	room := scene.PaperW - 2*scene.Margin
	for size > scene.Small && max(written(asked).Width(), written(answered).Width()) > room {
		size--
	}
	s.Add(scene.Item{Shape: written(answered), When: scene.ShownOnly}, scene.Item{Shape: written(asked), When: scene.HiddenOnly})
	s.W, s.H = scene.PaperW, bottom+footing
}

// Numeral is a number as one or two terms: a fraction has a bar, a mixed number
// its wholes before it.
func Numeral(n arithmetic.Number, role scene.Role) notation.Line {
	fraction := func(num, den int64) notation.Term {
		return notation.F(strconv.FormatInt(num, 10), strconv.FormatInt(den, 10), role)
	}
	switch n.Form {
	case arithmetic.Common:
		return notation.Line{fraction(n.Value.Num(), n.Value.Den())}
	case arithmetic.Mixed:
		wholes, part := n.Value.Mixed()
		return notation.Line{notation.N(arithmetic.Grouped(wholes), role), fraction(part.Num(), part.Den())}
	}
	return notation.Line{notation.N(n.String(), role)}
}

// Join makes one line of terms and lines.
func Join(parts ...any) notation.Line {
	var line notation.Line
	for _, part := range parts {
		switch v := part.(type) {
		case notation.Term:
			line = append(line, v)
		case notation.Line:
			line = append(line, v...)
		case string:
			line = append(line, notation.S(v))
		default:
			panic("telling: not a part of a line")
		}
	}
	return line
}

// Unknown is the question mark that stands for what is asked.
func Unknown() notation.Term { return notation.N("?", scene.Hidden) }

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
