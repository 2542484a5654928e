package array

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// roles are the roles of all parts, row by row.
func (a *story) roles() []scene.Role {
	var out []scene.Role
	for i := range a.rows {
		for j := range a.cols {
			out = append(out, roleAt(i, j))
		}
	}
	return out
}

// sumLine is the sum of the parts in their roles.
func (a *story) sumLine() notation.Line {
	var line notation.Line
	for k, role := range a.roles() {
		if k > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(a.parts[k]), role))
	}
	return line
}

// longLine is the equation with its parts, or without them where it would leave
// the paper.
func (a *story) longLine() notation.Line {
	long := telling.Join(a.stem, "=", a.sumLine(), "=", notation.N(arithmetic.Grouped(a.sum), scene.Result))
	t := scene.Text{Size: scene.Large, Bold: true, Runs: long.Runs()}
	if a.stem == nil || t.Width() > scene.PaperW-2*scene.Margin {
		return a.answered
	}
	return long
}

// splitLine writes the split: the facts of an array split one way, the sums of
// the sides of one split both ways.
func splitLine(m arithmetic.SplitSides) notation.Line {
	var line notation.Line
	if len(m.Rows) > 1 && len(m.Cols) > 1 {
		return telling.Join(bracketed(m.Rows), "×", bracketed(m.Cols))
	}
	for i, r := range m.Rows {
		for j, c := range m.Cols {
			if len(line) > 0 {
				line = append(line, notation.S("+"))
			}
			role := roleAt(i, j)
			line = append(line, notation.N(arithmetic.Grouped(r), role), notation.S("×"), notation.N(arithmetic.Grouped(c), role))
		}
	}
	return line
}

// bracketed is (20 + 3).
func bracketed(parts []int64) notation.Line {
	line := notation.Line{notation.S("(")}
	for i, n := range parts {
		if i > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(n), scene.Ink))
	}
	return append(line, notation.S(")"))
}

// addends is n added up as often as there are rows.
func addends(rows, n int64) notation.Line {
	var line notation.Line
	for i := range rows {
		if i > 0 {
			line = append(line, notation.S("+"))
		}
		line = append(line, notation.N(arithmetic.Grouped(n), scene.Ink))
	}
	return line
}
