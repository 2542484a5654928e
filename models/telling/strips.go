package telling

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
)

// The symbols of fractions that are cut, laid and compared, whatever they are laid
// with: strips, discs, other shapes.

// Strips is an amount as a line of terms: 3/4, 2, 1 3/4, and 1 5/4 while the parts
// are loose.
func Strips(a arithmetic.Strips, role scene.Role) notation.Line {
	var line notation.Line
	if a.Wholes > 0 {
		line = append(line, Count(a.Wholes, role))
	}
	if a.Part.Num() > 0 || a.Wholes == 0 {
		line = append(line, Numeral(arithmetic.Frac(a.Part), role)...)
	}
	return line
}

// CutStrips says that a cut amount has another name: 3/4 = 6/8.
func CutStrips(m arithmetic.CutParts, role scene.Role) notation.Line {
	return Join(Strips(m.From, role), notation.S("="), Strips(m.To, role))
}

// OnePart says how many parts make a whole: 4/4 = 1.
func OnePart(den int64) notation.Line {
	n := strconv.FormatInt(den, 10)
	return Join(notation.F(n, n, scene.Ink), notation.S("="), notation.N("1", scene.Ink))
}

// PartByPart builds a number of few pieces from its pieces: 1/4 + 1/4 + 1/4 =
// 3/4. (CCSS 4.NF.B.3b) A number of many pieces stands alone.
func PartByPart(m arithmetic.LayStrips) notation.Line {
	const few = 5
	name := Numeral(m.Number, scene.First)
	pieces := m.Strips.Wholes + m.Strips.Part.Num()
	if pieces < 2 || pieces > few {
		return name
	}
	var links []notation.Line
	for i := range pieces {
		link := notation.F("1", strconv.FormatInt(m.Strips.Part.Den(), 10), scene.Ink)
		if i < m.Strips.Wholes {
			link = Count(1, scene.Ink)
		}
		links = append(links, notation.Line{link})
	}
	return Join(Chain("+", links...), "=", name)
}

// ComparedStrips is what is true of the two numbers of a claim or comparison, by way
// of their common parts: 3/4 = 9/12 < 10/12 = 5/6. Of an equality that is not true
// it says so.
func ComparedStrips(p arithmetic.Problem, m arithmetic.CompareEnds, cuts []arithmetic.CutParts) notation.Line {
	a, b, _ := p.Operands()
	line, last := Numeral(a, scene.First), Numeral(b, scene.Second)
	if p.Rel == arithmetic.Equal && m.Relation != arithmetic.Equal {
		return Join(line, notation.S("≠"), last)
	}
	said := line.Text()
	add := func(sign string, name notation.Line) {
		// A name that stands there already is not said again: 3/4 = 6/8.
		if sign != arithmetic.Equal.String() || name.Text() != said {
			line, said = Join(line, notation.S(sign), name), name.Text()
		}
	}
	sign := m.Relation.String()
	for _, cut := range cuts {
		if cut.Nth == 0 {
			add("=", Strips(cut.To, scene.First))
		}
	}
	for _, cut := range cuts {
		if cut.Nth == 1 {
			add(sign, Strips(cut.To, scene.Second))
			sign = "="
		}
	}
	if sign == "=" && last.Text() == said && len(line) > len(last) {
		line = line[:len(line)-len(last)] // it is the second number now, and looks like it
		return append(line, last...)
	}
	if len(line) == len(last) {
		said = "" // 3/4 = 3/4 needs both
	}
	add(sign, last)
	return line
}
