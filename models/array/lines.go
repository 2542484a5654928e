package array

import (
	"slices"

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

// terms are the parts in their roles.
func (a *story) terms() []notation.Line {
	var parts []notation.Line
	for k, role := range a.roles() {
		parts = append(parts, notation.Line{telling.Count(a.parts[k], role)})
	}
	return parts
}

// sumLine is the sum of the parts in their roles.
func (a *story) sumLine() notation.Line { return telling.Chain("+", a.terms()...) }

// longLine is the equation with its parts, or without them where it would leave
// the paper.
func (a *story) longLine() notation.Line {
	long := telling.Join(a.stem, "=", a.sumLine(), "=", telling.Count(a.sum, scene.Result))
	if a.stem == nil || !telling.EquationFits(long) {
		return a.answered
	}
	return long
}

// sumBelow writes a sum over an equation that has no room for it, on as many
// lines as it needs; with the answer hidden it is asked. It returns where it ends.
func sumBelow(s *scene.Scene, bottom int, parts []notation.Line) int {
	const tall = 50
	var line notation.Line
	wrap := func() {
		bottom += tall
		asked := slices.Clone(line)
		for i, t := range asked {
			if t.Kind == notation.Num {
				asked[i].Text = "?"
			}
		}
		text := scene.Text{X: scene.PaperW / 2, Y: bottom - tall/2 + 6, Size: scene.Middle, Bold: true, Runs: line.Runs()}
		s.Add(scene.Item{Shape: text, When: scene.ShownOnly})
		text.Runs = asked.Runs()
		s.Add(scene.Item{Shape: text, When: scene.HiddenOnly})
		line = nil
	}
	for k, next := range parts {
		if k > 0 {
			next = telling.Join("+", next)
		}
		if len(line) > 0 && telling.Width(telling.Join(line, next), scene.Middle, true) > scene.PaperW-2*scene.Margin {
			wrap()
		}
		line = append(line, next...)
	}
	wrap()
	return bottom - tall/4
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
