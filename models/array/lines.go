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
	var parts []notation.Line
	for k, role := range a.roles() {
		parts = append(parts, notation.Line{telling.Count(a.parts[k], role)})
	}
	return telling.Chain("+", parts...)
}

// longLine is the equation with its parts, or without them where it would leave
// the paper.
func (a *story) longLine() notation.Line {
	long := telling.Join(a.stem, "=", a.sumLine(), "=", telling.Count(a.sum, scene.Result))
	if a.stem == nil || !telling.EquationFits(long) {
		return a.answered
	}
	return long
}

// splitLine writes the split: the facts of an array split one way, the sums of
// the sides of one split both ways.
func splitLine(m arithmetic.SplitSides) notation.Line {
	if len(m.Rows) > 1 && len(m.Cols) > 1 {
		return telling.Join(bracketed(m.Rows), "×", bracketed(m.Cols))
	}
	var facts []notation.Line
	for i, r := range m.Rows {
		for j, c := range m.Cols {
			role := roleAt(i, j)
			facts = append(facts, telling.Join(telling.Count(r, role), "×", telling.Count(c, role)))
		}
	}
	return telling.Chain("+", facts...)
}

// bracketed is (20 + 3).
func bracketed(parts []int64) notation.Line {
	return telling.Join("(", telling.Counts("+", scene.Ink, parts...), ")")
}
