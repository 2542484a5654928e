package telling

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

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
		return notation.Line{Count(wholes, role), fraction(part.Num(), part.Den())}
	}
	return notation.Line{notation.N(n.String(), role)}
}

// Count is a whole number as a term, with commas between its thousands.
func Count(n int64, role scene.Role) notation.Term {
	return notation.N(arithmetic.Grouped(n), role)
}

// Unknown is the question mark that stands for what is asked.
func Unknown() notation.Term { return notation.N("?", scene.Hidden) }

// Join makes one line of terms, lines and signs. A sign is a string; a part of
// any other type is a mistake in the program, and it panics.
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

// Chain joins lines by a sign: 200 + 70 + 8.
func Chain(sign string, links ...notation.Line) notation.Line {
	var chain notation.Line
	for i, link := range links {
		if i > 0 {
			chain = append(chain, notation.S(sign))
		}
		chain = append(chain, link...)
	}
	return chain
}

// Counts joins whole numbers in one role by a sign: 8, 16, 24.
func Counts(sign string, role scene.Role, list ...int64) notation.Line {
	links := make([]notation.Line, len(list))
	for i, n := range list {
		links[i] = notation.Line{Count(n, role)}
	}
	return Chain(sign, links...)
}

// InOrder is a list from least to greatest, with what stands between its
// neighbors: 1/2 = 2/4 < 3/4. The list must be in order, and not empty.
func InOrder(list []arithmetic.Number, role scene.Role) notation.Line {
	line := Numeral(list[0], role)
	for i, n := range list[1:] {
		sign := arithmetic.Less
		if n.Value.Equal(list[i].Value) {
			sign = arithmetic.Equal
		}
		line = Join(line, sign.String(), Numeral(n, role))
	}
	return line
}

// Width is the room that a line takes in a picture at a size.
func Width(l notation.Line, size int, bold bool) int {
	return scene.Text{Size: size, Bold: bold, Runs: l.Runs()}.Width()
}
