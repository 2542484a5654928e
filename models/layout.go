package models

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

// equation writes the problem's equation at the foot of a picture whose content
// ends at bottom, and closes the paper under it. asked ends in a question mark
// where answered has the answer. A long equation is written smaller.
func equation(s *scene.Scene, bottom int, asked, answered notation.Line) {
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

// numeral is a number as one or two terms: a fraction has a bar, a mixed number
// its wholes before it.
func numeral(n arithmetic.Number, role scene.Role) notation.Line {
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

// join makes one line of terms and lines.
func join(parts ...any) notation.Line {
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
			panic("models: not a part of a line")
		}
	}
	return line
}

// unknown is the question mark that stands for what is asked.
func unknown() notation.Term { return notation.N("?", scene.Hidden) }

// text is a label: words in a role, centred at x with their middle at height y.
func text(role scene.Role, x, y, size int, words string) scene.Item {
	return scene.Item{Shape: scene.Words(x, y, size, words), Role: role}
}
